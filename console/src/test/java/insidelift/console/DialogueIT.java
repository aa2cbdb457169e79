package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Visitor.Point;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.use.DemoSeason;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole dialogues on a pseudo-terminal of 80 columns and 24 rows, compared line by line. */
public class DialogueIT {

  @TempDir private Path data;

  /** What a parent knows who has never set up a kart, on a wet morning. */
  static Visitor novice(Paddock paddock) {
    return new Visitor(paddock)
        .knows("water", "wet")
        .knows("trend", "steady")
        .knows("tyres", "wets")
        .knows("turn-in", "understeer")
        .knows("steering-weight", "heavy")
        .knows("driver-strength", "limited")
        .knows("time-left", "45");
  }

  /** What a mechanic knows after a bad session in the dry. */
  public static Visitor mechanic(Paddock paddock) {
    return new Visitor(paddock)
        .knows("water", "dry")
        .knows("trend", "steady")
        .knows("tyres", "slicks")
        .knows("rubber", "normal")
        .knows("turn-in", "good")
        .knows("mid-corner", "understeer")
        .knows("exit", "good")
        .knows("severity", "clear")
        .knows("corners", "both-ways")
        .knows("corner-speed", "mixed")
        .knows("run-phase", "whole-run")
        .knows("inside-rear", "lifts")
        .knows("steering-weight", "fine")
        .knows("driver-strength", "average")
        .knows("power", "mid")
        .knows("adjustable", "both")
        .knows("last-change", "none")
        .knows("time-left", "40")
        .knows("camber left", "0")
        .knows("camber right", "0");
  }

  @Test
  void aNoviceInTheRainIsToldWhatToDoInAtMostTwelveAnswers() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = novice(paddock);
      visitor.readToTheEnd();
      assertThat(visitor.seen()).contains("What to do now", "The job, step by step", "Take care");
      assertThat(visitor.questions()).isBetween(1, 12);
      Transcript.compare("novice-in-the-rain", visitor.seen());
    }
  }

  @Test
  void aMechanicAfterABadSessionIsToldWhatToDoInAtMostTwelveAnswers() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = mechanic(paddock);
      visitor.readToTheEnd();
      assertThat(visitor.seen()).contains("What to do now").anyMatch(l -> l.contains("camber"));
      assertThat(visitor.questions()).isBetween(1, 12);
      Transcript.compare("mechanic-after-a-bad-session", visitor.seen());
    }
  }

  @Test
  void aFaultOnTheSafetyScreenEndsInFixThisFirstWithoutAQuestion() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = novice(paddock).knows("true", "1 6");
      visitor.readToTheEnd();
      assertThat(visitor.answered()).isEmpty();
      assertThat(visitor.seen()).contains("Fix this first: no camber or caster change yet");
      assertThat(visitor.seen()).doesNotContain("What to do now");
      Transcript.compare("fault-found", visitor.seen());
    }
  }

  @Test
  void aChangedAnswerIsTheOnlyOneAskedAgain() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor =
          new Visitor(paddock).knows("water", "wet").knows("mid-corner", "understeer");
      visitor.goOnUntil(
          prompt -> visitor.answered().contains("water") && visitor.answered().size() >= 4);
      visitor.type("review" + Paddock.ENTER).goOnTo(Point.REVIEW);
      String number =
          visitor.seen().stream()
              .filter(line -> line.matches(" *\\d+  water: wet"))
              .map(line -> line.strip().split(" ", 2)[0])
              .findFirst()
              .orElseThrow();
      visitor.knows("water", "dry").type(number + Paddock.ENTER).goOnTo(Point.ANSWER);
      assertThat(visitor.answered().stream().filter(label -> !label.equals("water")))
          .doesNotHaveDuplicates()
          .hasSizeGreaterThan(5);
      assertThat(visitor.answered()).filteredOn("water"::equals).hasSize(2);
      Transcript.compare("change-of-mind", visitor.seen());
    }
  }

  @Test
  void aMechanicSaysItInASentenceAndAsksInReturn() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = mechanic(paddock).goOnTo(Point.QUESTION);
      visitor
          .type("pushes mid corner, bogs off the hairpin, lots of rubber down" + Paddock.ENTER)
          .goOnTo(Point.QUESTION);
      for (String line :
          List.of(
              "why",
              "how camber",
              "how mid-push",
              "why not caster more",
              "what if mid-corner=good",
              "rule nothing-like-it",
              "what if water=moist")) {
        visitor.type(line + Paddock.ENTER).goOnTo(Point.QUESTION);
      }
      visitor.goOnTo(Point.ANSWER);
      visitor.type("why" + Paddock.ENTER).goOnUntil(p -> p.point() == Point.ANSWER);
      visitor.type("no understeer any more" + Paddock.ENTER).goOnTo(Point.ANSWER);
      assertThat(visitor.answered()).doesNotContain("mid-corner", "exit-drive", "rubber");
      Transcript.compare("mechanic-asks-in-return", visitor.seen());
    }
  }

  @Test
  void ofASentenceOnlyWhatIsConfirmedCounts() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = mechanic(paddock).goOnTo(Point.QUESTION);
      visitor
          .type("it is wet, pushes mid corner and the steering is heavy" + Paddock.ENTER)
          .goOnTo(Point.CONFIRM);
      visitor.type("9" + Paddock.ENTER).goOnTo(Point.CONFIRM);
      visitor.type("3" + Paddock.ENTER).goOnTo(Point.REVIEW);
      assertThat(visitor.answered()).contains("water").doesNotContain("mid-corner");
      assertThat(visitor.seen()).anyMatch(line -> line.matches(" *\\d+  mid-corner: pushes.*"));
    }
  }

  @Test
  void aConsultationMayBeginWithWhatIsWrong() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = mechanic(paddock).goOnTo(Point.BEGIN);
      visitor.type("xyz" + Paddock.ENTER);
      paddock.waitFor("That says nothing of the kart: as in it pushes mid corner.");
      visitor.goOnTo(Point.BEGIN);
      visitor.type("it pushes mid corner" + Paddock.ENTER).goOnTo(Point.CONFIRM);
      visitor.goOnTo(Point.SAFETY);
      visitor.goOnTo(Point.ANSWER);
      assertThat(visitor.answered()).contains("water").doesNotContain("mid-corner");
    }
  }

  @Test
  void nothingOfASentenceCountsThatIsNotConfirmed() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = mechanic(paddock).goOnTo(Point.QUESTION);
      visitor.type("there is standing water" + Paddock.ENTER).goOnTo(Point.CONFIRM);
      visitor.type("n" + Paddock.ENTER).goOnTo(Point.REVIEW);
      assertThat(visitor.seen()).contains("Nothing noted.");
      assertThat(visitor.seen()).noneMatch(line -> line.matches(" *\\d+  water: standing water"));
    }
  }

  @Test
  void theOwnLogOfWhoeverDroveLastIsTakenOverOnceItIsConfirmed() throws LogbookProblem {
    DemoSeason.load(data);
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = new Visitor(paddock).goOnTo(Point.CONFIRM);
      assertThat(visitor.seen())
          .contains("Your last run: Heron 7 with Ada Quill at Larkmoor Bowl")
          .anyMatch(line -> line.startsWith("From your own log, 30 August"));
      visitor.goOnTo(Point.QUESTION).type("review" + Paddock.ENTER).goOnTo(Point.REVIEW);
      assertThat(visitor.seen())
          .anyMatch(line -> line.matches(" *\\d+  last-change: camber, toward negative"))
          .anyMatch(line -> line.matches(" *\\d+  last-effect: worse"))
          .anyMatch(line -> line.contains("where it stands: camber left 0.0"));
    }
  }

  @Test
  void theOwnLogOfAnotherKartIsLeftAlone() throws LogbookProblem {
    DemoSeason.load(data);
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = new Visitor(paddock).goOnTo(Point.CONFIRM);
      visitor.type("n" + Paddock.ENTER).goOnTo(Point.QUESTION);
      visitor.type("review" + Paddock.ENTER).goOnTo(Point.REVIEW);
      assertThat(visitor.seen()).noneMatch(line -> line.contains("last-change"));
    }
  }
}
