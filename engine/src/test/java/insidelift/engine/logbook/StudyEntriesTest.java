package insidelift.engine.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.file.Numbered;
import insidelift.shared.Degrees;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers to cards and attempts at cases, in the same kind of file as runs. */
class StudyEntriesTest {

  private static final LocalDate DAY = LocalDate.of(2026, 4, 12);
  private static final ReviewEntry REVIEW =
      new ReviewEntry("Ida Vento", "now:camber-front-weak.mid", 4, DAY);
  private static final AttemptEntry ATTEMPT =
      new AttemptEntry(
          "Ida Vento",
          "4711",
          Situation.of(Map.of("water", "dry", "mid-corner", "understeer"))
              .with(Kart.UNKNOWN.with(Sides.both(Degrees.of(0.5)), Sides.both(Degrees.of(1)))),
          List.of("look", "ask water", "set camber more 0.50"),
          DAY);

  @TempDir private Path folder;

  @Test
  void whatIsWrittenIsReadBackInOrderAndTheSameMayComeAgain() throws Exception {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(List.of(REVIEW, ATTEMPT));
      writer.append(REVIEW);
    }
    Logbook book = Logbook.read(folder);
    assertThat(book.notices()).isEmpty();
    assertThat(book.reviews()).extracting(Numbered::entry).containsExactly(REVIEW, REVIEW);
    assertThat(book.attempts()).extracting(Numbered::entry).containsExactly(ATTEMPT);
    assertThat(book.attempts().get(0).number()).isEqualTo(3);
    assertThat(book.runs()).isEmpty();
  }

  @Test
  void aTornAnswerIsSetAsideAndTheOthersStand() throws Exception {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(List.of(REVIEW, ATTEMPT));
    }
    Files.write(
        folder.resolve(Logbook.FILE),
        "{\"n\":4,\"at\":".getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.APPEND);
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      assertThat(writer.logbook().notices()).hasSize(1);
      writer.append(REVIEW);
    }
    assertThat(Logbook.read(folder).reviews()).hasSize(2);
    assertThat(Logbook.read(folder).attempts()).hasSize(1);
  }

  @Test
  void aReviewIsCorrectedLikeAnythingElse() throws Exception {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      int number = writer.append(REVIEW);
      writer.append(REVIEW);
      writer.append(Correction.withdrawn(number, "somebody else answered"));
    }
    assertThat(Logbook.read(folder).reviews()).hasSize(1);
  }

  @Test
  void whatIsOutOfRangeIsRefusedWithItsPart() {
    assertThatThrownBy(() -> new ReviewEntry("Ida Vento", "water", 6, DAY))
        .isInstanceOf(RefusedEntryException.class)
        .hasMessageStartingWith("quality: 6 is not from 0 to 5");
    assertThatThrownBy(() -> new ReviewEntry(" ", "water", 5, DAY))
        .hasMessage("trainee: a name is missing");
    assertThatThrownBy(
            () ->
                new AttemptEntry(
                    "Ida Vento", "1", Situation.UNKNOWN, Collections.nCopies(201, "look"), DAY))
        .hasMessage("moves: there are more than 200");
    assertThat(
            new AttemptEntry(
                    "Ida Vento", "1", Situation.UNKNOWN, Collections.nCopies(200, "look"), DAY)
                .moves())
        .hasSize(200);
  }
}
