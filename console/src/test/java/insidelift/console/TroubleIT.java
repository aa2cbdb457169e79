package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import insidelift.console.Launcher.Outcome;
import insidelift.console.Visitor.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Terminals, disks and machines in trouble: a clear line or a sound consultation, never a hang. */
@DisabledOnOs(OS.WINDOWS)
@Execution(ExecutionMode.CONCURRENT)
class TroubleIT {

  private static final String CASE = "examples/heavy-in-the-rain.json";

  /** A superuser is let through every permission; without these rights he is as others are. */
  private static final String AS_OTHERS =
      "if [ $(id -u) = 0 ]; then as='setpriv --bounding-set=-dac_override,-dac_read_search"
          + " --inh-caps=-all'; else as=''; fi; ";

  @TempDir private Path data;

  private Launcher shell(String line) {
    return Launcher.shell(line).set("INSIDELIFT_DATA", data.toString());
  }

  private static void sound(Outcome outcome) {
    assertThat(outcome.err() + outcome.out())
        .doesNotContain("Exception", "\tat ", "a fault of this program");
  }

  private static void oneLine(Outcome outcome, String line) {
    sound(outcome);
    assertThat(outcome.err()).isEqualTo("insidelift: " + line + "\n");
    assertThat(outcome.exit()).isEqualTo(1);
  }

  @Test
  void aTerminalThatIsClosedEndsTheProgramAndLosesNoAnswer() throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = DialogueIT.novice(paddock);
      visitor.goOnUntil(prompt -> visitor.answered().size() == 3);
      paddock.signal("HUP");
      assertThat(paddock.exit()).isEqualTo(129);
      assertThat(paddock.raw()).doesNotContain("Exception");
    }
    assertThat(Files.readString(data.resolve(Kept.FILE))).contains("\"water\" : \"wet\"");
  }

  @Test
  void aTerminalThatIsClosedOnAPagerOrALineEndsTheProgramToo() {
    for (Point point : List.of(Point.BEGIN, Point.REVIEW)) {
      Kept.in(data, Kept.ALL_BUT_THE_SETTINGS);
      try (Paddock paddock = Paddock.in(data).start()) {
        new Visitor(paddock).goOnTo(point == Point.BEGIN ? Point.RESUME : point);
        paddock.signal("HUP");
        assertThat(paddock.exit()).isEqualTo(129);
      }
    }
  }

  @Test
  void aPasteOfTenThousandLinesIsReadAndTheProgramStillListens() {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.SAFETY);
      for (int i = 0; i < 100; i++) {
        paddock.type("what is this\r".repeat(100));
      }
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertThat(paddock.raw()).doesNotContain("Exception");
    }
  }

  @Test
  void tenThousandLinesFromAPipeEndWithTheirLastOne() {
    Outcome outcome = shell("./insidelift").typing("what is this\n".repeat(10_000)).run();
    sound(outcome);
    assertThat(outcome.exit()).isIn(0, 1);
  }

  @Test
  void onTwentyColumnsEveryWordIsThere() {
    try (Paddock paddock = Paddock.in(data).columns(20).rows(50).start()) {
      paddock.waitFor("front-end change").settle();
      for (int i = 0; i < 4; i++) {
        paddock.type(Paddock.ENTER).settle();
        assertThat(paddock.screen()).allMatch(line -> line.length() <= 20);
      }
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertThat(paddock.raw()).doesNotContain("Exception");
    }
  }

  @Test
  void aUserWithoutAHomeIsAdvisedAndToldWhereToKeepThings() throws IOException {
    assumeTrue("root".equals(System.getProperty("user.name")), "only a superuser can be another");
    String nobody = "setpriv --reuid=54321 --clear-groups env -u HOME -u XDG_DATA_HOME ";
    Path lib = Files.createDirectory(data.resolve("lib"));
    // Where another user may read it.
    Outcome copied =
        shell(
                "cp target/lib/*.jar "
                    + lib
                    + " && cp "
                    + CASE
                    + " "
                    + data
                    + "; chmod -R a+rX "
                    + data)
            .run();
    assertThat(copied.exit()).isZero();
    assumeTrue(
        shell(nobody + "ls " + lib).run().exit() == 0
            && shell(nobody + "java -version").run().exit() == 0,
        "another user cannot reach this folder or this Java");
    String java = nobody + "java -cp '" + lib + "/*' insidelift.console.start.Main ";
    Launcher advise = Launcher.shell("cd " + data + " && " + java + "advise *.json");
    Outcome outcome = advise.run();
    sound(outcome);
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    oneLine(
        Launcher.shell("cd " + data + " && " + java + "log").run(),
        "no home folder is known; set INSIDELIFT_DATA to a folder of your own");
    assertThat(data.resolve("?")).doesNotExist();
  }

  @Test
  void aFolderThatMayOnlyBeReadIsSaidAndAdviceIsGiven() throws IOException {
    assumeTrue(shell(AS_OTHERS + "$as true").run().exit() == 0, "rights cannot be dropped here");
    Path folder = Files.createDirectory(data.resolve("fixed"));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    Outcome add =
        Launcher.shell(AS_OTHERS + "$as ./insidelift log add kart 'Heron 7'")
            .set("INSIDELIFT_DATA", folder.toString())
            .run();
    sound(add);
    assertThat(add.exit()).isEqualTo(1);
    assertThat(add.err()).contains("no permission").hasLineCount(1);
    Outcome talk =
        Launcher.shell(AS_OTHERS + "$as ./insidelift")
            .set("INSIDELIFT_DATA", folder.toString())
            .typing("\n\n1\n1\n1\n1\n")
            .run();
    sound(talk);
    assertThat(talk.out()).contains("Your answers cannot be kept on this disk");
  }

  @Test
  void aFullDiskIsSaidAndWhatWasThereStaysWhole() throws IOException {
    assertThat(shell("./insidelift log add kart 'Heron 7'").run().exit()).isZero();
    byte[] before = Files.readAllBytes(data.resolve("logbook.jsonl"));
    String full = "ulimit -f 0; export _JAVA_OPTIONS=-XX:-UsePerfData; ";
    Outcome add = shell(full + "./insidelift log add kart 'Moth 12'").run();
    sound(add);
    assertThat(add.exit()).isEqualTo(1);
    assertThat(add.err()).contains("insidelift: ", "logbook.jsonl");
    assertThat(Files.readAllBytes(data.resolve("logbook.jsonl"))).isEqualTo(before);
    Outcome card = shell(full + "./insidelift card " + CASE + " --out " + data + "/c.html").run();
    sound(card);
    assertThat(card.err())
        .contains("it cannot be written; is the disk full, or the name too long?");
    assertThat(data.resolve("c.html")).doesNotExist();
    Outcome talk = shell(full + "./insidelift").typing("\n\n1\n1\n1\n").run();
    sound(talk);
    assertThat(talk.out()).contains("Your answers cannot be kept on this disk");
    oneLine(
        shell("./insidelift advise " + CASE + " > /dev/full").run(),
        "the output cannot be written; is the disk full?");
  }

  @ParameterizedTest
  @ValueSource(strings = {"xx_BROKEN", "C", "de_DE.ISO-8859-1", "tr_TR.UTF-8"})
  void whateverTheLocaleAdviceIsGivenAndNamesAreFoundOrNot(String locale) {
    Outcome advice = shell("./insidelift advise " + CASE).set("LC_ALL", locale).run();
    sound(advice);
    assertThat(advice.exit()).isZero();
    assertThat(advice.out()).startsWith("What to do now");
    for (String verb : List.of("advise", "predict", "positions", "gauge", "toe")) {
      Outcome none = shell("./insidelift " + verb + " 'nö 🏁.json'").set("LC_ALL", locale).run();
      sound(none);
      assertThat(none.exit()).isEqualTo(1);
      assertThat(none.err()).contains("no such file").hasLineCount(1);
    }
  }

  @Test
  void withoutTermItIsAskedByLines() {
    try (Paddock paddock = Paddock.in(data).unset("TERM").start()) {
      new Visitor(paddock).goOnTo(Point.QUESTION);
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertThat(paddock.raw()).doesNotContain("Exception");
    }
  }

  @Test
  void withClosedStandardInputItEndsAtOnce() {
    Outcome talk = shell("./insidelift <&-").run();
    sound(talk);
    assertThat(talk.out()).contains("Left.");
    Outcome advise = shell("./insidelift advise - <&-").run();
    sound(advise);
    assertThat(advise.exit()).isEqualTo(1);
    assertThat(advise.err()).contains("standard input: ").hasLineCount(1);
    sound(shell("./insidelift cards <&-").run());
    sound(shell("./insidelift drill <&-").run());
    sound(shell("./insidelift lessons <&-").run());
  }

  @Test
  void whoeverStopsReadingIsNotShoutedAt() {
    Outcome head = shell("./insidelift notes 'camber' | head -1").run();
    assertThat(head.err()).isEmpty();
    assertThat(head.out()).isNotEmpty();
    oneLine(
        shell("./insidelift advise " + CASE + " >&-").run(),
        "the output cannot be written; is the disk full?");
    Outcome talk = shell("./insidelift >&- 2>&1").typing("\n\n").run();
    sound(talk);
    sound(shell("./insidelift advise nothing.json 2>&-").run());
  }
}
