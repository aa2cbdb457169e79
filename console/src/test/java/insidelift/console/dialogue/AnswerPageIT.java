package insidelift.console.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.DialogueIT;
import insidelift.console.Kept;
import insidelift.console.Launcher;
import insidelift.console.Paddock;
import insidelift.console.Visitor;
import insidelift.console.Visitor.Point;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** What can be read and done once the answer stands on the screen. */
@Execution(ExecutionMode.CONCURRENT)
class AnswerPageIT {

  @TempDir private Path data;

  @Test
  void theAnswerIsOneScreenOfTwentyFourLinesWithAllThatCanBeAskedUnderIt() {
    try (Paddock paddock = Paddock.in(data).start()) {
      DialogueIT.mechanic(paddock).goOnTo(Point.ANSWER);
      List<String> screen = paddock.screen();
      assertThat(screen).contains("What to do now");
      assertThat(paddock.screenText())
          .contains("  do     Set camber 0.5° toward positive on both sides, to +0.5°")
          .contains("  how    About 1 position a side: turn the top eccentric outward")
          .contains("  time   ", "  care   ", "  feel   ", "  undo   ", "  look   ")
          .contains("read 1 steps, 2 why, 3 care, 4 other, 5 numbers, 6 sources");
    }
  }

  @Test
  void whatStandsBehindItOpensByNumberNameOrFirstLetters() {
    Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.ANSWER);
      paddock.type("2" + Paddock.ENTER).waitFor("\nWhy\n---");
      back(paddock);
      paddock.type("s" + Paddock.ENTER).waitFor("Which one: steps or sources?");
      paddock.type("sou" + Paddock.ENTER).waitFor("\nSources\n---");
      back(paddock);
      paddock.type("?" + Paddock.ENTER).waitFor("steps has the job, why the reasons");
      paddock.type("7" + Paddock.ENTER).waitFor("Press Enter, or type one of the words.");
      paddock.type("answer" + Paddock.ENTER).waitFor("  do     Set ");
    }
  }

  @Test
  void theCardIsWrittenOnceAndNeverOverAnother() {
    Kept.in(data, Kept.GOOD);
    Path card = data.resolve("card.html");
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.ANSWER);
      paddock.type("card" + Paddock.ENTER).waitFor("In which file?");
      paddock.type(card + Paddock.ENTER).waitFor("The pit card is in");
      paddock.type("card" + Paddock.ENTER).waitFor("In which file?");
      paddock.type(card + Paddock.ENTER).waitFor("There is a file of that name");
      paddock.type("no" + Paddock.ENTER).waitFor("read 1 ");
    }
    assertThat(card).content().contains("<!DOCTYPE html>");
  }

  @Test
  void theRunIsWrittenIntoTheLogbookWithItsLaps() {
    Kept.in(data, Kept.GOOD);
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.ANSWER);
      paddock.type("log" + Paddock.ENTER).waitFor("Which kart? (Enter: leave it)");
      paddock.type(Paddock.ENTER).waitFor("Nothing is written.");
      paddock.type("log" + Paddock.ENTER).waitFor("Which kart?");
      paddock.type("Heron 7" + Paddock.ENTER).waitFor("Who drove?");
      paddock.type("Ada" + Paddock.ENTER).waitFor("Which track?");
      paddock.type("Lake ring" + Paddock.ENTER).waitFor("Lap times, the out-lap first");
      paddock.type("52.1 quick" + Paddock.ENTER).waitFor("is not a lap time");
      paddock.type("61.2 52.3 52.1" + Paddock.ENTER);
      paddock.waitFor("Heron 7 driven by Ada, with 3");
      paddock.type("log" + Paddock.ENTER).waitFor("Which kart? (Enter: Heron 7)");
    }
    assertThat(Launcher.with("log", "run", "6").set("INSIDELIFT_DATA", data.toString()).run().out())
        .contains("Heron 7", "Ada", "52.1");
  }

  @Test
  void theNextHeatAsksOnlyWhatIsOfOneRun() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = DialogueIT.mechanic(paddock).goOnTo(Point.ANSWER);
      int before = visitor.answered().size();
      visitor.type("next" + Paddock.ENTER);
      paddock.waitFor("Was camber changed as advised?");
      visitor.type("y" + Paddock.ENTER);
      paddock.waitFor("Is the track as it was?");
      visitor.type("y" + Paddock.ENTER).goOnTo(Point.SAFETY);
      assertThat(paddock.screenText()).contains("Look at the kart again: bolts work loose.");
      visitor.knows("last-effect", "better").knows("mid-corner", "good").goOnTo(Point.ANSWER);
      List<String> asked = visitor.answered().subList(before, visitor.answered().size());
      assertThat(asked)
          .contains("last-effect")
          .doesNotContain("water", "power", "driver-strength", "last-change", "gauge");
      assertThat(paddock.screenText()).contains("Keep it as this kart's own for the dry");
    }
  }

  @Test
  void backAtTheAnswerTakesTheLastAnswerBack() {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = DialogueIT.mechanic(paddock).goOnTo(Point.ANSWER);
      visitor.type("undo" + Paddock.ENTER).goOnTo("camber left");
      visitor.goOnTo(Point.ANSWER);
      assertThat(paddock.screenText()).contains("  do     Set camber 0.5° toward positive");
    }
  }

  /** Reads on to the end of what was opened. */
  private static void back(Paddock paddock) {
    Visitor reader = new Visitor(paddock);
    while (reader.next().point() == Point.PAGE) {
      reader.type(Paddock.ENTER);
    }
  }
}
