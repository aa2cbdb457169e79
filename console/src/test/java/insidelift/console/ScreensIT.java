package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Visitor.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The same consultation wherever it is held. */
@Execution(ExecutionMode.CONCURRENT)
class ScreensIT {

  private static final String ESCAPE = "\033";

  @TempDir private Path data;

  @Test
  void onFortyColumnsNoWordIsCutAndNoLineIsLost() {
    try (Paddock paddock = Paddock.in(data).columns(40).start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.readToTheEnd();
      assertThat(visitor.seen()).contains("What to do now", "Take care");
      Transcript.compare("novice-on-40-columns", visitor.seen());
    }
  }

  @Test
  void theTerminalIsOpenedWithoutStartingAProgram() throws IOException {
    Path list = data.resolve("classes.txt");
    try (Paddock paddock =
        Paddock.in(data.resolve("kept"))
            .set("_JAVA_OPTIONS", "-Xlog:class+load:file=" + list)
            .start()) {
      new Visitor(paddock).goOnTo(Point.BEGIN);
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
    }
    assertThat(Files.readAllLines(list))
        .anyMatch(line -> line.contains(" org.jline.terminal.impl.AbstractUnixSysTerminal "))
        .noneMatch(line -> line.contains(" java.lang.ProcessImpl "));
  }

  @Test
  void whatIsSaidFirstStandsThereBeforeTheTerminalIsOpened() {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.BEGIN);
      // What an opened terminal is told begins with an escape.
      assertThat(paddock.raw()).contains(ESCAPE);
      assertThat(paddock.raw().substring(0, paddock.raw().indexOf(ESCAPE)))
          .contains(
              "the next change at the front end of your kart",
              "Say what is wrong, or Enter to begin. ");
      assertThat(paddock.all())
          .filteredOn(line -> line.contains("Say what is wrong, or Enter to begin."))
          .hasSize(1);
    }
  }

  @Test
  void whatIsTypedBeforeTheTerminalIsOpenedIsNotLost() {
    try (Paddock paddock = Paddock.in(data).start()) {
      paddock.type(Paddock.ENTER + "1" + Paddock.ENTER).waitFor("Fix this first");
    }
  }

  @Test
  void aHighTerminalShowsTheGreetingAndTheFirstQuestionAtOnce() {
    try (Paddock paddock = Paddock.in(data).rows(50).start()) {
      assertThat(new Visitor(paddock).next().point()).isEqualTo(Point.SAFETY);
      assertThat(paddock.screen())
          .contains("   O__        Insidelift", "Look at the kart first")
          .noneMatch(line -> line.contains("to begin"));
    }
  }

  @Test
  void aDumbTerminalIsAskedByLinesAndGetsNoControlCharacters() {
    try (Paddock paddock = Paddock.in(data).set("TERM", "dumb").start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.readToTheEnd();
      assertThat(paddock.raw()).doesNotContain(ESCAPE);
      Transcript.compare("novice-on-a-dumb-terminal", visitor.seen());
    }
  }

  @Test
  void aScreenReaderGetsNumberedChoicesAndNoRedraw() {
    try (Paddock paddock = Paddock.in(data).set("ACCESSIBLE", "1").start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.readToTheEnd();
      // Neither the cursor is moved to another row nor anything taken off the screen.
      assertThat(paddock.raw()).doesNotContainPattern(ESCAPE + "\\[\\d*(;\\d*)?[ABHJKf]");
      assertThat(paddock.raw()).doesNotContain("arrows");
      Transcript.compare("novice-with-a-screen-reader", visitor.seen());
    }
  }

  @Test
  void controlCOnADumbTerminalLeavesWithOneLineToo() {
    Kept.in(data, Kept.BEGUN);
    try (Paddock paddock = Paddock.in(data).set("TERM", "dumb").start()) {
      new Visitor(paddock).goOnTo(Point.QUESTION);
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertThat(paddock.all()).last().isEqualTo("Left. Your answers are kept.");
    }
  }

  @Test
  void controlZStopsAndComingBackDrawsTheQuestionAnewWithWhatWasTyped() {
    Kept.in(data, Kept.BEGUN);
    try (Paddock paddock = Paddock.in(data).shell().start()) {
      new Visitor(paddock).goOnTo(Point.QUESTION);
      String label = paddock.beforeCursor();
      paddock.type("dr").waitUntil("what was typed", p -> p.beforeCursor().equals(label + "dr"));
      paddock.type(Paddock.CTRL_Z).waitFor("Stopped");
      paddock.waitUntil("the shell", p -> p.beforeCursor().equals("ready> "));
      paddock.type("fg" + Paddock.ENTER);
      paddock.waitUntil("the question", p -> p.beforeCursor().equals(label + "dr"));
      assertThat(page(paddock)).hasSizeGreaterThan(3);
      paddock.type(Paddock.CTRL_C).waitFor("Left. Your answers are kept.");
    }
  }

  @Test
  void controlZAtALineStopsAndComesBackToTheLine() {
    Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
    try (Paddock paddock = Paddock.in(data).shell().start()) {
      new Visitor(paddock).goOnTo(Point.REVIEW);
      paddock.type(Paddock.CTRL_Z).waitFor("Stopped");
      paddock.waitUntil("the shell", p -> p.beforeCursor().equals("ready> "));
      paddock.type("fg" + Paddock.ENTER);
      paddock.waitUntil("the line", p -> p.beforeCursor().equals("change: "));
      paddock.type(Paddock.CTRL_C).waitFor("Left. Your answers are kept.");
    }
  }

  @Test
  void withoutColourTheWholeDialogueIsTheSame() {
    try (Paddock paddock = Paddock.in(data).set("NO_COLOR", "1").start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.readToTheEnd();
      Transcript.compare("novice-in-the-rain", visitor.seen());
    }
  }

  @Test
  void withoutUtf8TheWholeDialogueIsInPlainLetters() {
    try (Paddock paddock = Paddock.in(data).set("LC_ALL", "C").start()) {
      Visitor visitor = DialogueIT.mechanic(paddock);
      visitor.readToTheEnd();
      assertThat(paddock.raw().chars()).allMatch(c -> c < 128);
      Transcript.compare("mechanic-without-utf-8", visitor.seen());
    }
  }

  @Test
  void aPipeGetsTheSameAdviceWithoutAKeyAndEndsCleanly() {
    try (Paddock paddock = Paddock.in(data).pipe().start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.readToTheEnd();
      assertThat(paddock.raw()).doesNotContain(ESCAPE);
      Transcript.compare("novice-through-a-pipe", visitor.seen());
    }
  }

  @Test
  void theEndOfAPipeLeaves() {
    try (Paddock paddock = Paddock.in(data).pipe().start()) {
      new Visitor(paddock).goOnTo(Point.QUESTION);
      paddock.endOfInput();
      assertThat(paddock.exit()).isZero();
      assertThat(paddock.all()).last().isEqualTo("Left. Your answers are kept.");
    }
  }

  @Test
  void noColourIsEverWrittenWithOrWithoutNoColor() {
    Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
    try (Paddock paddock = Paddock.in(data).set("NO_COLOR", "1").start()) {
      new Visitor(paddock).readToTheEnd();
      // 30 to 48 and 90 to 107 are the colours; what is marked is marked by a character.
      assertThat(paddock.raw())
          .doesNotContainPattern(ESCAPE + "\\[([\\d;]*;)?([34][0-8]|9\\d|10\\d)[;m]");
    }
  }

  @Test
  void aTerminalThatKnowsNoUtf8GetsWordsForSigns() {
    Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
    try (Paddock paddock = Paddock.in(data).set("LC_ALL", "C").start()) {
      Visitor visitor = new Visitor(paddock);
      visitor.readToTheEnd();
      assertThat(String.join("\n", visitor.seen())).containsPattern("\\d deg ").doesNotContain("°");
      assertThat(paddock.raw().chars()).allMatch(c -> c < 128);
    }
  }

  @Test
  void resizedInMidQuestionThePageIsDrawnAnewWithoutRests() {
    Kept.in(data, Kept.BEGUN);
    try (Paddock paddock = Paddock.in(data).columns(100).rows(30).start()) {
      Visitor visitor = new Visitor(paddock).goOnTo(Point.QUESTION);
      List<String> wide = page(paddock);
      assertThat(wide).hasSizeGreaterThan(3);
      paddock
          .resize(40, 30)
          .waitUntil("the narrow page", p -> p.screenText().contains("letters, then Enter\n"));
      assertThat(page(paddock)).allMatch(line -> line.length() < 40);
      assertThat(paddock.screen()).filteredOn(line -> line.startsWith("Question ")).hasSize(1);
      paddock
          .resize(100, 30)
          .waitUntil("the wide page", p -> p.screenText().contains("then Enter   Esc: back"));
      assertThat(page(paddock)).isEqualTo(wide);
      assertThat(paddock.screen()).filteredOn(line -> line.startsWith("Question ")).hasSize(1);
      visitor.goOnTo(Point.REVIEW);
    }
  }

  /** The rows from the question's number on. */
  private static List<String> page(Paddock paddock) {
    return paddock.all().stream().dropWhile(line -> !line.startsWith("Question ")).toList();
  }
}
