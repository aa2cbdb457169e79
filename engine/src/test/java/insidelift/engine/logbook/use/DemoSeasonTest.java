package insidelift.engine.logbook.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.learning.Experience;
import insidelift.engine.logbook.learning.LastChange;
import insidelift.engine.logbook.learning.Rate;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.units.Units;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoSeasonTest {

  @TempDir private Path folder;
  private Logbook book;

  @BeforeEach
  void loaded() throws Exception {
    DemoSeason.load(folder);
    book = Logbook.read(folder);
  }

  @Test
  void it_is_a_club_season_with_rain_and_a_drying_day() {
    assertThat(book.notices()).isEmpty();
    assertThat(book.karts()).hasSize(3);
    assertThat(book.drivers()).hasSize(2);
    assertThat(book.drivers().get(0).entry().answers())
        .isEqualTo(Map.of("driver-strength", "limited"));
    assertThat(book.tracks()).hasSize(2);
    assertThat(book.runs()).hasSize(26).allMatch(run -> run.entry().laps().size() == 12);
    assertThat(answers("water")).containsExactlyInAnyOrder("dry", "damp", "wet");
    assertThat(answers("trend")).contains("drying");
  }

  @Test
  void in_memory_it_is_the_same_as_on_disk() {
    assertThat(DemoSeason.book().runs()).isEqualTo(book.runs());
    assertThat(DemoSeason.book().notices()).isEmpty();
  }

  private Set<String> answers(String question) {
    return book.runs().stream()
        .flatMap(run -> run.entry().situation().answer(question).stream())
        .collect(Collectors.toSet());
  }

  @Test
  void every_answer_is_of_the_vocabulary_and_every_claim_has_its_note() {
    Vocabulary vocabulary = Vocabulary.load();
    NoteBook notes = NoteBook.open();
    for (Numbered<RunEntry> run : book.runs()) {
      assertThat(run.entry().situation().facts(vocabulary)).isNotEmpty();
      run.entry().advice().forEach(d -> assertThat(notes.note(d.claim())).isNotNull());
    }
    book.karts().forEach(kart -> known(vocabulary, kart.entry().answers()));
    book.drivers().forEach(driver -> known(vocabulary, driver.entry().answers()));
    book.tracks().forEach(track -> known(vocabulary, track.entry().answers()));
  }

  private static void known(Vocabulary vocabulary, Map<String, String> answers) {
    answers.forEach(
        (question, value) ->
            assertThat(vocabulary.question(question).orElseThrow().value(value)).isPresent());
  }

  @Test
  void it_has_something_to_learn_from_good_bad_and_undecided() {
    Experience experience = Experience.of(book);
    int heron = book.kart("Heron 7").orElseThrow();
    int bittern = book.kart("Bittern 3").orElseThrow();
    int ada = book.driver("Ada Quill").orElseThrow();
    int larkmoor = book.track("Larkmoor Bowl").orElseThrow();
    int saltpan = book.track("Saltpan Ring").orElseThrow();

    assertThat(experience.rates(heron, larkmoor))
        .contains(new Rate("camber-front-weak", Lever.CAMBER, Direction.MORE, 2, 2, 1));
    assertThat(experience.rates(bittern, saltpan))
        .contains(new Rate("caster-entry-push", Lever.CASTER, Direction.MORE, 0, 1, 0));
    LastChange last = experience.lastChange(heron, ada, larkmoor).orElseThrow();
    assertThat(last.source()).isEqualTo("your own log, 30 August");
    assertThat(last.answers())
        .isEqualTo(Map.of("last-change", "camber-less", "last-effect", "worse"));
  }

  @Test
  void a_slip_of_the_pen_is_corrected() {
    assertThat(book.runs())
        .filteredOn(Numbered::corrected)
        .singleElement()
        .extracting(run -> run.entry().tyres().cold().orElseThrow().frontRight())
        .isEqualTo(0.75);
  }

  @Test
  void all_of_it_can_be_shown_in_eighty_columns() {
    List<String> lines = new java.util.ArrayList<>(LogTables.days(book));
    book.days().forEach(day -> lines.addAll(LogTables.day(book, day.number())));
    book.runs().forEach(run -> lines.addAll(LogTables.run(book, run.number(), Units.METRIC)));
    lines.addAll(TrendPlot.lines(book.runs()));
    assertThat(lines).hasSizeGreaterThan(300).allMatch(line -> line.length() <= 80);
  }

  @Test
  void it_does_not_mix_with_records_that_are_there() throws Exception {
    byte[] before = Files.readAllBytes(folder.resolve("logbook.jsonl"));
    assertThatThrownBy(() -> DemoSeason.load(folder))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            "the demo season goes into an empty logbook, but the one in "
                + folder
                + " holds records already");
    assertThat(Files.readAllBytes(folder.resolve("logbook.jsonl"))).isEqualTo(before);
  }
}
