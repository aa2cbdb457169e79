package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Visitor.Point;
import insidelift.console.Visitor.Prompt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** A consultation is kept as it goes, whatever ends the program. */
@Execution(ExecutionMode.CONCURRENT)
class KeepingIT {

  @TempDir private Path data;

  @Test
  void killedInMidDialogueItGoesOnWithOneEnterAndAsksNothingTwice() throws IOException {
    String next;
    Visitor before;
    try (Paddock paddock = Paddock.in(data).start()) {
      before = DialogueIT.novice(paddock);
      before.goOnUntil(prompt -> before.answered().size() == 3);
      next = before.prompt().label();
      paddock.kill();
    }
    Path kept = data.resolve(Kept.FILE);
    assertThat(Files.readString(kept)).contains("\"water\" : \"wet\"");
    Launcher.Outcome advice = Launcher.with("advise", kept.toString(), "--json").run();
    assertThat(advice.err()).isEmpty();
    assertThat(advice.exit()).isZero();

    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor after = DialogueIT.novice(paddock);
      after.goOnTo(Point.RESUME);
      assertThat(paddock.screenText()).contains("There is an unfinished consultation from ");
      Prompt prompt = after.type(Paddock.ENTER).next();
      assertThat(prompt.label()).isEqualTo(next);
      after.goOnTo(Point.ANSWER);
      assertThat(after.answered()).doesNotContainAnyElementsOf(before.answered());
    }
  }

  @Test
  void aFinishedConsultationIsACaseThatAdviseTakesAndIsNotOfferedAgain() {
    Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).knows("camber left", "0,5").knows("camber right", "0.5").readToTheEnd();
    }
    assertThat(data.resolve(Kept.FILE)).doesNotExist();
    Launcher.Outcome advice =
        Launcher.with("advise", data.resolve("last-consultation.json").toString()).run();
    assertThat(advice.err()).isEmpty();
    assertThat(advice.exit()).isZero();
    assertThat(advice.out()).startsWith("What to do now");
  }

  @Test
  void anUnfinishedConsultationThatIsNotWantedIsForgotten() {
    Kept.in(data, Kept.BEGUN);
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = new Visitor(paddock).goOnTo(Point.RESUME);
      visitor.type("n" + Paddock.ENTER).goOnTo(Point.BEGIN);
      assertThat(data.resolve(Kept.FILE)).doesNotExist();
    }
  }

  @Test
  void aGoodSettingIsKeptAsTheKartsOwnSheet() {
    Kept.in(data, Kept.GOOD);
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.ANSWER);
      assertThat(paddock.screenText()).contains("next, keep, change, again, quit");
      paddock.type("keep" + Paddock.ENTER).waitFor("What do you call this kart?");
      assertThat(paddock.screenText())
          .contains("Keep it as this kart's own for the dry: camber +0.5");
      paddock.type("Heron 7" + Paddock.ENTER).waitFor("names lists the names");
      paddock.type("disc=280" + Paddock.ENTER + Paddock.ENTER).waitFor("tell that too");
      paddock
          .type("tow=1" + Paddock.ENTER)
          .waitFor("is not NAME=VALUE with one of the names camber");
      paddock.type("toe=0.8" + Paddock.ENTER + "by=Ada" + Paddock.ENTER + Paddock.ENTER);
      paddock.waitFor("The dry setting of Heron 7 (record 3) is on disk");
    }
    assertThat(Launcher.with("sheet", "last").set("INSIDELIFT_DATA", data.toString()).run().out())
        .contains("camber, degrees         +0.50    +0.50", "0.8 out", "dry: by Ada, date ");
    assertThat(
            Launcher.with("sheet", "--kart", "heron 7")
                .set("INSIDELIFT_DATA", data.toString())
                .run()
                .out())
        .contains("Front-end sheet: Heron 7");
  }

  @Test
  void aFaultIsNoSettingToKeep() {
    Kept.in(data, Kept.GOOD.with("play", "some"));
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.ANSWER);
      assertThat(paddock.screenText()).doesNotContain("keep, change");
      paddock.type("keep" + Paddock.ENTER);
      paddock.waitFor("A fault comes first: put it right, then keep a setting.");
    }
    assertThat(data.resolve("logbook.jsonl")).doesNotExist();
  }

  @Test
  void aFileOfAnotherTimeIsNoReasonNotToStart() {
    Launcher.file(data, Kept.FILE, "{\"schema\": 99");
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.BEGIN);
      assertThat(paddock.raw()).doesNotContain("unfinished", "Exception");
      assertThat(paddock.screenText()).contains("cannot read. It is put", "open-consultation-20");
    }
    assertThat(data.toFile().list((folder, name) -> name.startsWith("open-consultation-20")))
        .hasSize(1);
  }

  @Test
  void aDiskThatCannotBeWrittenIsSaidOnceAndTheConsultationGoesOn() {
    // A file where the folder should be keeps even the superuser from writing there.
    Path blocked = Launcher.file(data, "taken", "").resolve("insidelift");
    try (Paddock paddock = Paddock.in(blocked).rows(60).start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.goOnUntil(prompt -> visitor.answered().size() == 3);
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertThat(paddock.all())
          .containsOnlyOnce("Your answers cannot be kept on this disk; everything else works.")
          .last()
          .isEqualTo("Left. Your answers are not kept.");
    }
  }
}
