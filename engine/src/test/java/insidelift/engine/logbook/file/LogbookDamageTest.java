package insidelift.engine.logbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.disk.AppendTarget;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.Entry;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Torn, changed, lost and foreign lines. */
class LogbookDamageTest {

  @TempDir private Path temp;
  private Path folder;

  @BeforeEach
  void folderThatIsNotThereYet() {
    folder = temp.resolve("of a user").resolve("insidelift");
  }

  private LogbookWriter open() throws LogbookProblem {
    return LogbookWriter.open(folder, AppendTarget::onDisk, Entries.CLOCK);
  }

  private Logbook written(Entry... entries) throws LogbookProblem {
    try (LogbookWriter writer = open()) {
      if (writer.logbook().isEmpty()) {
        writer.append(Entries.before());
      }
      for (Entry entry : entries) {
        writer.append(entry);
      }
    }
    return Logbook.read(folder);
  }

  private Path file() {
    return folder.resolve("logbook.jsonl");
  }

  @Test
  void cut_at_any_byte_the_last_record_is_whole_or_set_aside_and_all_before_it_is_intact()
      throws Exception {
    written(Entries.run(1), Entries.full(2));
    byte[] whole = Files.readAllBytes(file());
    int last = whole.length - lastLine(whole).length();
    Logbook before = bookOf(Arrays.copyOf(whole, last));
    // Torn while it was written, so never sealed.
    Files.delete(folder.resolve("logbook.seal"));

    // Every cut near the two ends, where the frame is; every nineteenth between.
    for (int cut = last + 1; cut < whole.length - 1; cut += nearAnEnd(whole, last, cut) ? 1 : 19) {
      Files.write(file(), Arrays.copyOf(whole, cut));
      int torn = cut - last;
      assertThat(Logbook.read(folder).notices()).containsExactly(new Notice.Unfinished(torn));
      assertThat(Files.size(file())).isEqualTo(cut);
      try (LogbookWriter writer = open()) {
        assertThat(writer.logbook().notices())
            .containsExactly(new Notice.SetAside(torn, "logbook.torn-1.txt", 6));
      }
      Path aside = folder.resolve("logbook.torn-1.txt");
      assertThat(Files.readAllBytes(aside)).isEqualTo(Arrays.copyOfRange(whole, last, cut));
      assertThat(Files.readAllBytes(file())).isEqualTo(Arrays.copyOf(whole, last));
      Files.delete(aside);
    }
    assertThat(Logbook.read(folder).runs()).isEqualTo(before.runs());
  }

  @Test
  void a_record_that_was_on_the_disk_and_is_cut_now_is_missing() throws Exception {
    written(Entries.run(1));
    byte[] whole = Files.readAllBytes(file());
    Files.write(file(), Arrays.copyOf(whole, whole.length - 9));

    assertThat(Logbook.read(folder).notices()).contains(new Notice.Missing(6, 6));
    assertThat(written(Entries.run(2)).runs()).extracting(Numbered::number).containsExactly(7);
  }

  @Test
  void a_record_that_lacks_only_its_line_end_is_whole() throws Exception {
    written(Entries.full(1));
    byte[] whole = Files.readAllBytes(file());
    Files.write(file(), Arrays.copyOf(whole, whole.length - 1));

    assertThat(Logbook.read(folder).runs()).hasSize(1);
    assertThat(written(Entries.run(2)).runs()).hasSize(2);
    assertThat(Files.readAllBytes(file())).startsWith(whole);
  }

  @Test
  void a_second_torn_record_does_not_take_the_place_of_the_first() throws Exception {
    written();
    for (String torn : List.of("{\"n\":6,", "{\"n\":6,\"at\"")) {
      Files.writeString(file(), torn, java.nio.file.StandardOpenOption.APPEND);
      open().close();
    }
    assertThat(folder.resolve("logbook.torn-1.txt")).hasContent("{\"n\":6,");
    assertThat(folder.resolve("logbook.torn-2.txt")).hasContent("{\"n\":6,\"at\"");
  }

  @Test
  void a_torn_first_line_is_set_aside_too() throws Exception {
    Files.createDirectories(folder);
    Files.writeString(file(), "{\"n\":1,\"at\"");

    assertThat(written(Entries.run(1)).runs()).hasSize(1);
    assertThat(folder.resolve("logbook.torn-1.txt")).hasContent("{\"n\":1,\"at\"");
  }

  @Test
  void a_changed_byte_in_the_middle_is_reported_with_its_line_and_left_there() throws Exception {
    written(Entries.run(1), Entries.run(2));
    String whole = Files.readString(file());
    String damaged = whole.replace("\"run\":1", "\"run\":9");
    Files.writeString(file(), damaged);

    Logbook book = written(Entries.run(3));
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(7, 8);
    assertThat(book.notices())
        .extracting(Notice::sentence)
        .containsExactly(
            "Line 6 is damaged (its check does not match); it is left as it is and not read.");
    assertThat(Files.readString(file())).startsWith(damaged);
  }

  @Test
  void any_changed_byte_anywhere_is_noticed() throws Exception {
    written(Entries.full(1), Entries.run(2));
    byte[] whole = Files.readAllBytes(file());
    for (int i = 0; i < whole.length; i++) {
      byte[] damaged = whole.clone();
      damaged[i] ^= 1;
      Scan scan = Scan.of("a logbook", damaged, 7);
      assertThat(scan.notices().size() + scan.unfinished()).as("byte %d", i).isPositive();
    }
  }

  @Test
  void a_changed_byte_costs_no_line_but_its_own() throws Exception {
    written(Entries.full(1), Entries.run(2));
    byte[] whole = Files.readAllBytes(file());
    int lines = bookOf(whole).lines().size();
    for (int i = 0; i < whole.length; i += i < 500 || i > whole.length - 500 ? 1 : 7) {
      byte[] damaged = whole.clone();
      damaged[i] = (byte) (whole[i] == '\n' ? 'x' : '\n');
      Scan scan = Scan.of("a logbook", damaged, 7);
      long unfit = scan.notices().stream().filter(Notice.DoesNotFit.class::isInstance).count();
      assertThat(scan.records().lines().size() + unfit)
          .as("byte %d", i)
          .isGreaterThanOrEqualTo(lines - 1);
      assertThat(scan.last()).as("byte %d", i).isEqualTo(7);
    }
  }

  @Test
  void a_damaged_line_end_costs_no_line_at_all() throws Exception {
    written(Entries.run(1), Entries.run(2));
    String text = Files.readString(file());
    for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
      String joined = text.substring(0, at) + "#" + text.substring(at + 1);
      Logbook book = bookOf(joined.getBytes(StandardCharsets.UTF_8));
      assertThat(book.runs()).as("byte %d", at).extracting(Numbered::number).containsExactly(6, 7);
      assertThat(book.notices()).as("byte %d", at).hasSize(1).noneMatch(Notice::lost);
    }
  }

  @Test
  void the_last_line_end_damaged_is_mended_by_the_next_writer_and_costs_nothing() throws Exception {
    written(Entries.run(1));
    String text = Files.readString(file());
    Files.writeString(file(), text.substring(0, text.length() - 1) + "#");

    Logbook book = written(Entries.run(2));
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(6, 7);
    assertThat(book.notices()).isEmpty();
    assertThat(folder.resolve("logbook.torn-1.txt")).hasContent("#");
  }

  @Test
  void a_line_taken_out_is_missing_and_costs_only_itself() throws Exception {
    written(Entries.run(1), Entries.run(2), Entries.run(3));
    List<String> lines = new ArrayList<>(Files.readAllLines(file()));
    lines.remove(5);

    Logbook book = bookOf(lines);
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(7, 8);
    assertThat(book.notices())
        .extracting(Notice::sentence)
        .containsExactly(
            "Line 6 is missing; what was written there is lost, unless you have a copy of the"
                + " file.");
    assertThat(book.notices()).allMatch(Notice::lost);
  }

  @Test
  void lines_doubled_moved_or_blank_cost_nothing() throws Exception {
    written(Entries.run(1), Entries.run(2));
    List<String> lines = Files.readAllLines(file());
    List<String> mixed = new ArrayList<>(lines);
    java.util.Collections.swap(mixed, 5, 6);
    mixed.add(3, "");
    mixed.add(3, "  ");
    mixed.add(lines.get(4));

    Logbook book = bookOf(mixed);
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(6, 7);
    assertThat(book.notices())
        .extracting(Notice::sentence)
        .containsExactly(
            "Line 5 is there more than once; it counts once.",
            "Lines have changed places; they are read by their numbers, and nothing is lost.");
    assertThat(book.notices()).noneMatch(Notice::lost);
  }

  @Test
  void every_order_of_the_lines_says_the_same() throws Exception {
    Logbook before = written(Entries.run(1), Entries.full(2));
    List<String> lines = new ArrayList<>(Files.readAllLines(file()));
    java.util.Random random = new java.util.Random(20260412);
    for (int i = 0; i < 200; i++) {
      java.util.Collections.shuffle(lines, random);
      assertThat(bookOf(lines).runs()).as("order %d", i).isEqualTo(before.runs());
    }
  }

  @Test
  void two_lines_of_one_number_that_say_different_things_are_reported_as_a_loss() throws Exception {
    written(Entries.run(1));
    List<String> mine = new ArrayList<>(Files.readAllLines(file()));
    byte[] other =
        LineFormatTest.checked(
            "{\"n\":6,\"at\":\"2026-04-12T09:14:05Z\",\"kind\":\"track\",\"entry\":{\"name\":\"Fen\"}");
    mine.add(new String(other, StandardCharsets.UTF_8).strip());

    Logbook book = bookOf(mine);
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(6);
    assertThat(book.notices()).containsExactly(new Notice.Twice(6, false));
    assertThat(book.notices().get(0).sentence())
        .isEqualTo(
            "Line 6 is there more than once, and each says something else; the first is read.");
    assertThat(book.notices()).allMatch(Notice::lost);
  }

  @Test
  void a_foreign_line_between_costs_nothing_and_is_reported() throws Exception {
    written(Entries.run(1), Entries.run(2));
    List<String> lines = new ArrayList<>(Files.readAllLines(file()));
    lines.add(6, "ask Ada about the wind");

    Logbook book = bookOf(lines);
    assertThat(book.runs()).hasSize(2);
    assertThat(book.notices()).hasSize(1);
  }

  @Test
  void lines_cut_off_at_the_end_are_noticed_and_their_numbers_never_used_again() throws Exception {
    written(Entries.run(1), Entries.run(2), Entries.run(3));
    List<String> lines = Files.readAllLines(file());
    Files.writeString(file(), String.join("\n", lines.subList(0, 6)) + "\n");

    Logbook cut = Logbook.read(folder);
    assertThat(cut.notices()).containsExactly(new Notice.Missing(7, 8));
    assertThat(cut.notices().get(0).sentence())
        .isEqualTo(
            "Lines 7 to 8 are missing; what was written there is lost, unless you have a copy of"
                + " the file.");
    Logbook book = written(Entries.run(4));
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(6, 9);
    assertThat(book.notices()).containsExactly(new Notice.Missing(7, 8));
  }

  @Test
  void a_logbook_that_is_gone_is_noticed_and_a_new_one_may_be_begun() throws Exception {
    written(Entries.run(1));
    Files.delete(file());

    assertThat(Logbook.read(folder).notices())
        .extracting(Notice::sentence)
        .containsExactly(
            file()
                + " is gone or empty; it had 6 lines when it was last written to. Put it back"
                + " before you add to it: the next record begins a new one.");
    assertThat(written(Entries.run(1)).notices()).isEmpty();
  }

  @Test
  void a_seal_that_is_damaged_or_lags_behind_does_no_harm() throws Exception {
    written(Entries.run(1));
    Path seal = folder.resolve("logbook.seal");
    byte[] behind = Files.readAllBytes(seal);
    written(Entries.run(2));
    Files.write(seal, behind);
    assertThat(Logbook.read(folder).notices()).isEmpty();
    Files.writeString(seal, "{\"n\":999999,");
    assertThat(Logbook.read(folder).notices()).isEmpty();
    assertThat(written(Entries.run(3)).runs()).hasSize(3);
  }

  @Test
  void a_run_whose_day_is_damaged_is_left_out_and_reported() throws Exception {
    written(Entries.run(1));
    Files.writeString(file(), Files.readString(file()).replace("practice", "praktice"));

    Logbook book = Logbook.read(folder);
    assertThat(book.runs()).isEmpty();
    assertThat(book.notices())
        .extracting(Notice::sentence)
        .containsExactly(
            "Line 5 is damaged (its check does not match); it is left as it is and not read.",
            "Line 6 does not fit the lines before it (record 5 is no day); it is left as it is and"
                + " not read.");
  }

  @Test
  void a_run_that_is_no_run_behind_its_first_keys_is_left_out_and_reported_when_it_is_read()
      throws Exception {
    written(Entries.run(1));
    byte[] foreign =
        LineFormatTest.checked(
            "{\"n\":7,\"at\":\"2026-04-12T09:14:05Z\",\"kind\":\"run\",\"entry\":"
                + "{\"day\":5,\"kart\":2,\"driver\":3,\"run\":2,\"mood\":1}");
    Files.write(file(), foreign, java.nio.file.StandardOpenOption.APPEND);

    Logbook book = Logbook.read(folder);
    assertThat(book.countOf(Entries.DAY_RECORD)).isEqualTo(2);
    assertThat(book.runs()).extracting(Numbered::number).containsExactly(6);
    assertThat(book.run(7)).isEmpty();
    assertThat(book.lines()).hasSize(5);
    assertThat(book.notices())
        .extracting(Notice::sentence)
        .singleElement(org.assertj.core.api.InstanceOfAssertFactories.STRING)
        .startsWith("Line 7 is damaged (entry: \"mood\" is not a key here; the keys are");
    // It still has its place in the day, so that nothing new is written over it.
    assertThat(written(Entries.run(3)).runs()).extracting(Numbered::number).containsExactly(6, 8);
  }

  @Test
  void a_damaged_first_line_does_not_cost_the_rest() throws Exception {
    written(Entries.run(1));
    Files.writeString(file(), Files.readString(file()).replace("Insidelift's", "My"));

    assertThat(written(Entries.run(2)).runs()).hasSize(2);
    assertThat(Logbook.read(folder).notices())
        .containsExactly(new Notice.Damaged(1, "its check does not match"));
  }

  @Test
  void line_ends_of_another_system_do_no_harm() throws Exception {
    written(Entries.run(1));
    Files.writeString(file(), Files.readString(file()).replace("\n", "\r\n"));

    Logbook book = written(Entries.run(2));
    assertThat(book.runs()).hasSize(2);
    assertThat(book.notices()).isEmpty();
  }

  @Test
  void a_file_that_is_no_logbook_is_not_touched() throws Exception {
    Files.createDirectories(folder);
    Files.writeString(file(), "milk\neggs\n");

    assertThatThrownBy(() -> Logbook.read(folder))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(file() + " is no logbook; nothing in it was changed");
    assertThatThrownBy(this::open)
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(file() + " is no logbook; nothing in it was changed");
    assertThat(file()).hasContent("milk\neggs\n");
  }

  @Test
  void a_format_that_there_never_was_is_not_called_newer() throws Exception {
    written();
    Files.write(
        file(),
        LineFormatTest.checked(
            "{\"n\":1,\"at\":\"2031-01-01T00:00:00Z\",\"kind\":\"logbook\",\"entry\":{\"version\":0}"));

    assertThatThrownBy(this::open)
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            file()
                + " names format 0, which there never was (this Insidelift knows 1); nothing in it"
                + " was changed");
  }

  @Test
  void a_logbook_of_a_newer_version_is_not_touched() throws Exception {
    written();
    String newer =
        new String(
            LineFormatTest.checked(
                "{\"n\":1,\"at\":\"2031-01-01T00:00:00Z\",\"kind\":\"logbook\",\"entry\":{\"version\":2}"),
            StandardCharsets.UTF_8);
    Files.writeString(file(), newer);

    assertThatThrownBy(this::open)
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            file()
                + " was written by a newer Insidelift (format 2, this one knows 1); nothing in it"
                + " was changed");
    assertThat(file()).hasContent(newer);
  }

  private static boolean nearAnEnd(byte[] whole, int last, int cut) {
    return cut < last + 12 || cut > whole.length - 40;
  }

  private Logbook bookOf(List<String> lines) throws Exception {
    return bookOf((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private Logbook bookOf(byte[] bytes) throws Exception {
    Path other = Files.createDirectories(temp.resolve("other"));
    Files.write(other.resolve("logbook.jsonl"), bytes);
    return Logbook.read(other);
  }

  private static String lastLine(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return text.substring(text.lastIndexOf('\n', text.length() - 2) + 1);
  }
}
