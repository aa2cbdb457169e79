package insidelift.engine.logbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.disk.AppendTarget;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.proof.laps.LapTimes;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogbookTest {

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

  private List<String> lines() throws Exception {
    return Files.readAllLines(file());
  }

  private static void refused(Runnable entry, String message) {
    assertThatThrownBy(entry::run).isInstanceOf(RefusedEntryException.class).hasMessage(message);
  }

  private void refusedByTheBook(Entry entry, String message) throws Exception {
    byte[] before = Files.readAllBytes(file());
    try (LogbookWriter writer = open()) {
      refused(
          () -> {
            try {
              writer.append(entry);
            } catch (LogbookProblem e) {
              throw new AssertionError(e);
            }
          },
          message);
    }
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void a_folder_without_a_logbook_is_an_empty_one_and_stays_as_it_is() throws Exception {
    assertThat(Logbook.read(folder).isEmpty()).isTrue();
    assertThat(folder).doesNotExist();
  }

  @Test
  void every_kind_of_record_comes_back_as_it_was_written() throws Exception {
    RunEntry wrong = Entries.run(2);
    RunEntry right = wrong.with(LapTimes.of("run", 70.5, 62.25));
    Logbook book =
        written(Entries.full(1), wrong, Correction.of(7, right, "the laps were missing"));

    assertThat(book.notices()).isEmpty();
    assertThat(book.karts()).containsExactly(new Numbered<>(2, Entries.KART, false));
    assertThat(book.drivers()).containsExactly(new Numbered<>(3, Entries.DRIVER, false));
    assertThat(book.tracks()).containsExactly(new Numbered<>(4, Entries.TRACK, false));
    assertThat(book.days()).containsExactly(new Numbered<>(5, Entries.DAY, false));
    assertThat(book.runs())
        .containsExactly(new Numbered<>(6, Entries.full(1), false), new Numbered<>(7, right, true));
    assertThat(book.lapTimes(7)).contains(LapTimes.of("run 7", 70.5, 62.25));
    assertThat(book.name(2)).isEqualTo("Heron 7");
  }

  @Test
  void a_line_is_json_that_a_person_can_read() throws Exception {
    written();

    assertThat(lines().get(0))
        .isEqualTo(
            "{\"n\":1,\"at\":\"2026-04-12T09:14:05Z\",\"kind\":\"logbook\",\"entry\":{\"version\":1,"
                + "\"about\":\"Insidelift's logbook: a record a line, only ever added to; n is the"
                + " line, check its CRC-32\"},\"check\":\"a601a817\"}");
    assertThat(lines().get(4))
        .isEqualTo(
            "{\"n\":5,\"at\":\"2026-04-12T09:14:05Z\",\"kind\":\"day\",\"entry\":{\"date\":"
                + "\"2026-04-12\",\"track\":4,\"note\":\"practice\"},\"check\":\"5d25aafb\"}");
  }

  @Test
  void writing_only_ever_adds_to_the_file() throws Exception {
    written(Entries.run(1));
    byte[] before = Files.readAllBytes(file());
    written(Correction.withdrawn(6, "another kart's"), Entries.run(1));
    byte[] after = Files.readAllBytes(file());

    assertThat(Arrays.copyOf(after, before.length)).isEqualTo(before);
    assertThat(after.length).isGreaterThan(before.length);
  }

  @Test
  void of_two_corrections_the_last_counts_and_a_withdrawn_run_is_gone() throws Exception {
    Logbook book =
        written(
            Entries.run(1),
            Correction.of(6, Entries.run(2), "it was the second run"),
            Correction.of(6, Entries.run(3), "no, the third"),
            Entries.run(1),
            Correction.withdrawn(9, "never driven"));

    assertThat(book.runs()).containsExactly(new Numbered<>(6, Entries.run(3), true));
    assertThat(book.run(9)).isEmpty();
  }

  @Test
  void runs_stand_in_the_order_driven_whatever_the_order_of_writing() throws Exception {
    DayEntry earlier = new DayEntry(LocalDate.of(2026, 4, 11), Entries.TRACK_RECORD, "");
    Logbook book = written(Entries.run(2), Entries.run(1), earlier, RunEntry.started(8, 2, 3, 1));

    assertThat(book.runs()).extracting(Numbered::number).containsExactly(9, 7, 6);
    assertThat(book.runsOf(2, 3, 4)).isEqualTo(book.runs());
    assertThat(book.nextRunOfDay(5, 2)).isEqualTo(3);
    assertThat(book.nextRunOfDay(8, 2)).isEqualTo(2);
  }

  @Test
  void what_does_not_fit_the_records_before_it_is_refused_and_not_written() throws Exception {
    written(Entries.run(1), Correction.of(6, Entries.run(1), "no change"));

    refusedByTheBook(
        KartEntry.named(" heron 7"), "kart: the kart \" heron 7\" is record 2 already");
    refusedByTheBook(Entries.DAY, "day: 2026-04-12 at that track is record 5 already");
    refusedByTheBook(new DayEntry(LocalDate.of(2026, 4, 13), 3, ""), "day: record 3 is no track");
    refusedByTheBook(Entries.run(1), "run: run 1 of that kart on that day is record 6 already");
    refusedByTheBook(RunEntry.started(4, 2, 3, 2), "run: record 4 is no day");
    refusedByTheBook(RunEntry.started(5, 3, 3, 2), "run: record 3 is no kart");
    refusedByTheBook(RunEntry.started(5, 2, 99, 2), "run: record 99 is no driver");
    refusedByTheBook(
        Correction.withdrawn(7, "x"), "correction: record 7 is no record that can be corrected");
    refusedByTheBook(
        Correction.of(2, Entries.TRACK, "x"),
        "correction: record 2 is a kart and cannot become a track");
    refusedByTheBook(
        Correction.withdrawn(4, "x"),
        "correction: record 4 cannot be withdrawn while record 5 refers to it");
  }

  @Test
  void of_several_records_none_is_added_if_one_does_not_fit() throws Exception {
    written();
    byte[] before = Files.readAllBytes(file());
    try (LogbookWriter writer = open()) {
      List<Entry> entries = List.of(Entries.run(1), Entries.run(1));
      assertThatThrownBy(() -> writer.append(entries)).isInstanceOf(RefusedEntryException.class);
      assertThat(writer.logbook().runs()).isEmpty();
      assertThat(writer.append(Entries.run(1))).isEqualTo(6);
    }
    assertThat(new String(Files.readAllBytes(file()), StandardCharsets.UTF_8))
        .startsWith(new String(before, StandardCharsets.UTF_8));
    assertThat(Logbook.read(folder).runs()).hasSize(1);
  }

  @Test
  void every_limit_of_an_entry_has_its_message() {
    refused(() -> KartEntry.named(" "), "kart name: a name is missing");
    refused(
        () -> KartEntry.named("x".repeat(10_000)),
        "kart name: 10000 characters are too many; the most is 80");
    assertThat(KartEntry.named("x".repeat(80)).name()).hasSize(80);
    refused(
        () -> DriverEntry.named("\u001b[2J"),
        "driver name: it holds the control character \\u{1b}");
    refused(
        () -> TrackEntry.named("half \ud83c"),
        "track name: it holds the control character \\u{d83c}");
    refused(
        () -> new DayEntry(LocalDate.of(202, 4, 12), 4, ""),
        "date: 0202-04-12 is not from 1960 to 2199");
    refused(() -> Entries.run(0), "run of the day: 0 is not from 1 to 200");
    refused(() -> Entries.run(201), "run of the day: 201 is not from 1 to 200");
    refused(
        () -> new Pressures(0.8, 12, 0.8, 0.8),
        "pressure front right: 12 is not from 0.2 to 3 bar");
    refused(
        () -> new Pressures(0.8, Double.NaN, 0.8, 0.8),
        "pressure front right: NaN is not from 0.2 to 3 bar");
    refused(
        () ->
            new AdviceTaken(
                insidelift.shared.Lever.CAMBER,
                insidelift.shared.Direction.LESS,
                0.5,
                "camber-front-weak",
                false,
                " "),
        "advice: say why it was declined");
    refused(() -> Correction.withdrawn(2, ""), "correction: a reason is missing");
    refused(
        () -> Entries.run(1).felt(insidelift.engine.proof.Feel.SAME, "x".repeat(2_001)),
        "what the driver said: 2001 characters are too many; the most is 2000");
  }

  @Test
  void a_hostile_name_is_kept_as_it_is_and_makes_no_file() throws Exception {
    List<String> names =
        List.of("../../etc/passwd", "a\"},\"check\":\"00000000\"}", "\u202Ekcab", "=1+1", "C:\\x");
    List<Entry> karts = new ArrayList<>();
    names.forEach(name -> karts.add(KartEntry.named(name)));
    Logbook book = written(karts.toArray(Entry[]::new));

    assertThat(book.karts()).extracting(kart -> kart.entry().name()).containsAll(names);
    assertThat(book.notices()).isEmpty();
    try (var files = Files.walk(temp)) {
      assertThat(files.filter(Files::isRegularFile).map(path -> path.getFileName().toString()))
          .containsExactlyInAnyOrder("logbook.jsonl", "logbook.lock", "logbook.seal");
    }
  }

  @Test
  void a_reader_sees_what_is_there_while_a_writer_is_at_work() throws Exception {
    try (LogbookWriter writer = open()) {
      writer.append(Entries.before());
      writer.append(Entries.run(1));
      assertThat(Logbook.read(folder).runs()).isEqualTo(writer.logbook().runs());
    }
  }
}
