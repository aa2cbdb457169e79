package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Visitor.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Keys that cannot hurt: nothing is answered that was not typed and confirmed. */
@Execution(ExecutionMode.CONCURRENT)
class KeysIT {

  private static final String CTRL_U = "\u0015";
  private static final String CTRL_W = "\u0017";
  private static final String CTRL_A = "\u0001";

  @TempDir private Path data;

  private String kept() throws IOException {
    return Files.readString(data.resolve(Kept.FILE));
  }

  @Test
  void aHabitualEnterAnswersNothing() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo("water");
      paddock.type("2").waitFor(" > 2  damp");
      assertThat(kept()).doesNotContain("water");
      paddock.type(Paddock.ENTER).waitFor("water: damp");
      paddock.waitUntil("the next question", p -> p.beforeCursor().matches("[a-z-]+: "));
      String next = paddock.beforeCursor();
      paddock.type(Paddock.ENTER).waitFor("Nothing is chosen yet");
      assertThat(paddock.beforeCursor()).isEqualTo(next);
      assertThat(paddock.screenText()).doesNotContain(" > ");
      assertThat(kept()).contains("\"water\" : \"damp\"").doesNotContain("trend");
    }
  }

  @Test
  void keysThatCameBeforeTheQuestionAreDropped() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo("water");
      paddock.type("2" + Paddock.ENTER + "1" + Paddock.ENTER).waitFor("water: damp");
      paddock.waitUntil("the next question", p -> p.beforeCursor().matches("[a-z-]+: "));
      paddock.settle();
      assertThat(kept()).contains("\"water\" : \"damp\"");
      assertThat(kept()).doesNotContain("trend", "steering-weight", "turn-in");
    }
  }

  @Test
  void aNumberThatIsNoChoiceIsRefusedAndTakenAway() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = new Visitor(paddock).knows("water", "damp").goOnTo("trend");
      paddock.type("30" + Paddock.ENTER).waitFor("There are choices 1 to 3; u means not known.");
      paddock.settle();
      assertThat(paddock.beforeCursor()).isEqualTo("trend: ");
      paddock.type("0" + Paddock.ENTER).waitFor("There are choices 1 to 3; u means not known.");
      assertThat(kept()).doesNotContain("trend", "time-left");
      visitor.goOnTo(Point.REVIEW);
    }
  }

  @Test
  void enterAloneCertifiesNothingOnTheLookPage() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.SAFETY);
      paddock.type(Paddock.ENTER).waitFor("Enter alone certifies nothing: type ok, numbers, or u.");
      paddock.type("help" + Paddock.ENTER).waitFor("How to answer");
      paddock.type("what is play" + Paddock.ENTER).waitFor("Sources");
      assertThat(data.resolve(Kept.FILE)).doesNotExist();
      paddock.type("3" + Paddock.ENTER).waitFor("Fix this first");
      paddock.type("change" + Paddock.ENTER).waitFor("the look at the kart: the brake drags");
      paddock.type("1" + Paddock.ENTER).waitFor("x 3  the brake drags");
      assertThat(paddock.screenText()).contains("keeps what is marked x.");
      paddock
          .type(Paddock.ENTER)
          .waitUntil("the answers", p -> p.beforeCursor().equals("change: "));
      assertThat(kept()).contains("\"brake\" : \"drags\"");
    }
  }

  @Test
  void okStandsForWhatWasShownAndNoMore() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.SAFETY);
      paddock.type("ok" + Paddock.ENTER).waitFor("Question 1 of");
      assertThat(kept()).contains("\"play\" : \"none\"", "\"axle\" : \"unknown\"");
    }
  }

  @Test
  void moreShowsTheRestAndOkStandsForAll() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.SAFETY);
      paddock.type("more" + Paddock.ENTER).waitFor("17  left and right camber or caster differ");
      paddock.type("ok" + Paddock.ENTER).waitFor("Question 1 of");
      assertThat(kept()).contains("\"play\" : \"none\"", "\"axle\" : \"straight\"");
    }
  }

  @Test
  void lettersAreTakenBackByWordAndByLine() {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo("water");
      paddock.type("one two").waitUntil("the words", p -> p.beforeCursor().endsWith("one two"));
      paddock.type(CTRL_W).waitUntil("one word", p -> p.beforeCursor().endsWith("water: one "));
      paddock.type(CTRL_U).waitUntil("no word", p -> p.beforeCursor().equals("water: "));
      paddock.type("et" + CTRL_A + "w" + Paddock.ENTER).waitFor("water: wet");
    }
  }

  @Test
  void quitAndAWordOfTheTradeWorkWhereANumberIsAsked() {
    Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo("camber left");
      paddock.type("what is camber" + Paddock.ENTER).waitFor("Press Enter to read on");
      paddock.type("q" + Paddock.ENTER);
      paddock.waitUntil("the number", p -> p.beforeCursor().equals("camber left: "));
      paddock.type("0" + Paddock.ENTER).waitFor("camber left: 0");
      paddock.type("quit" + Paddock.ENTER);
      assertThat(paddock.exit()).isZero();
    }
  }

  @Test
  void helpAndQuitWorkAlsoWhereALineIsToBeConfirmed() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo("water");
      paddock
          .type("it pushes in mid corner" + Paddock.ENTER)
          .waitFor("Press Enter if that is right");
      paddock.type("help" + Paddock.ENTER).waitFor("How to answer");
      paddock.settle();
      paddock.type("what is caster" + Paddock.ENTER).waitFor("read on, or type q:");
      paddock.type("q" + Paddock.ENTER);
      paddock.waitUntil("the same", p -> p.beforeCursor().endsWith("or type n: "));
      paddock.type("quit" + Paddock.ENTER);
      assertThat(paddock.exit()).isZero();
      assertThat(kept()).doesNotContain("mid-corner");
    }
  }

  @Test
  void beginningAnewAsksFirst() throws IOException {
    Kept.in(data, Kept.GOOD);
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.ANSWER);
      paddock.type("again" + Paddock.ENTER).waitFor("Begin anew, with no answers?");
      paddock
          .type(Paddock.ENTER)
          .waitUntil("the advice", p -> p.beforeCursor().endsWith("number: "));
    }
    assertThat(Files.readString(data.resolve("last-consultation.json"))).contains("\"water\"");
  }

  @Test
  void aLongPasteIsReadAtOnce() {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo("water");
      paddock.type("x".repeat(20_000)).waitFor("A line holds no more than that.");
      paddock.type(CTRL_U).waitUntil("an empty line", p -> p.beforeCursor().equals("water: "));
    }
  }

  @Test
  void aListLongerThanTheScreenKeepsItsTopAndMovesWithTheMark() {
    try (Paddock paddock = Paddock.in(data).words("drill", "--case", "1").start()) {
      paddock.waitFor("What do you do next?").type("8" + Paddock.ENTER);
      paddock.waitFor("more: arrows, or the first letters");
      assertThat(paddock.screenText()).contains("What is it?", "   1  a fault, or something");
      paddock.type("\t".repeat(25)).waitFor(" >25  ");
      assertThat(paddock.screenText()).contains("What is it?").doesNotContain("   1  a fault");
    }
  }
}
