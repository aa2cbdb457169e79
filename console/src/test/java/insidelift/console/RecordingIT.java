package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.file.LogbookWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** A mechanic writes down a day: through the packaged launcher, in a folder of their own. */
@Execution(ExecutionMode.CONCURRENT)
class RecordingIT {

  private static final String BEFORE = "61.9 52.3 52.4 52.35 52.2 52.31 52.28 52.4 52.33";
  private static final String AFTER =
      "lap;time\n1;1:01,950\n2;51,70\n3;51,80\n4;51,65\n5;51,72\n6;51,70\n7;51,81\n8;51,60\n";

  @TempDir private Path temp;
  private Path data;

  @BeforeEach
  void folderThatIsNotThereYet() {
    data = temp.resolve("mine");
  }

  private Launcher log(String... words) {
    return Launcher.with(words).set("INSIDELIFT_DATA", data.toString());
  }

  private String said(Launcher launcher) {
    Outcome outcome = launcher.run();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    // Where it is stands in every sentence, and may break its line anywhere.
    return outcome.out().replaceAll("\\n\\s*", " ").replace(" (" + file() + ")", "").strip();
  }

  private static void refused(Launcher launcher, int exit, String sentence) {
    Outcome outcome = launcher.run();
    assertThat(outcome.err()).startsWith("insidelift: " + sentence + "\n");
    assertThat(outcome.exit()).isEqualTo(exit);
    assertThat(outcome.out()).isEmpty();
  }

  private Path file() {
    return data.resolve("logbook.jsonl");
  }

  private void begun() {
    said(log("log", "add", "kart", "Heron 7", "--answer", "power=mid"));
    said(log("log", "add", "driver", "Ada Quill", "--answer", "driver-strength=limited"));
    said(log("log", "add", "track", "Larkmoor Bowl"));
  }

  private Launcher firstRun() {
    return log(
        "log",
        "add",
        "run",
        "--date",
        "2026-04-12",
        "--answer",
        "water=dry",
        "--camber",
        "0",
        "--caster",
        "1/1",
        "--times",
        BEFORE,
        "--cold",
        "0,75",
        "--left-tread",
        "61/58/55");
  }

  @Test
  void aDayIsWrittenDownProvedRememberedAndCorrected() throws IOException {
    begun();
    assertThat(said(firstRun()))
        .isEqualTo(
            "Run 6, run 1 of 12 April 2026 at Larkmoor Bowl, Heron 7 driven by Ada Quill, with 9"
                + " laps (best 52.200), is on disk.");
    assertThat(said(log("log", "add", "run", "--date", "2026-04-12", "--camber", "-0.5")))
        .endsWith("with no laps yet, is on disk; what was not told is as in run 6.");
    assertThat(said(log("log", "laps", "last", "--laps", "-", "--feel", "better").typing(AFTER)))
        .contains("with 8 laps (best 51.600), is corrected on disk");
    assertThat(said(log("prove", "run:6", "run:7"))).startsWith("keep: the laps are 0.6");

    String run = said(log("log", "run", "last"));
    assertThat(run)
        .startsWith("Run 7 (corrected): run 2 of 12 April 2026")
        .contains("Camber: left -0.5°, right -0.5° Caster: left +1.0°, right +1.0°, from neutral")
        .contains("1) 61.950", "The driver felt: better");
    assertThat(said(log("log", "run", "6")))
        .contains("Cold pressures:", "Front left tread:", "Answers: water dry");

    Path wide =
        Launcher.file(temp, "case.json", "{\"schema\":1,\"answers\":{\"turn-in\":\"understeer\"}}");
    String advice = said(log("advise", wide.toString(), "--log"));
    assertThat(advice)
        .contains(
            "From your own log, 12 April (run 7): the last change was camber less, and the laps"
                + " were quicker.",
            "Taken from your own log: driver-strength limited, power mid.",
            "The set-up is that of run 7.");
    JsonNode json =
        JsonMapper.builder()
            .build()
            .readTree(log("advise", wide.toString(), "--log", "--json").run().out());
    assertThat(json.get("ownLog")).hasSize(4);
    assertThat(json.has("suggestions")).isTrue();

    byte[] before = Files.readAllBytes(file());
    assertThat(said(log("log", "correct", "run", "7", "--said", "bites", "--because", "forgotten")))
        .endsWith("is corrected on disk; what it said before stays in the file.");
    assertThat(said(log("log", "correct", "track", "4", "--name", "Lark", "--because", "typo")))
        .startsWith("The track Lark (record 4) is corrected on disk");
    assertThat(said(log("log", "withdraw", "7", "--because", "another kart")))
        .isEqualTo("Record 7 is withdrawn on disk; what it said stays in the file.");
    assertThat(Files.readAllBytes(file())).startsWith(before);
    assertThat(said(log("log", "day", "5"))).contains("Lark").doesNotContain("51.60");
  }

  @Test
  void adviceTakenAndDeclinedIsKeptWithItsNote() {
    begun();
    String wet = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
    said(log("log", "add", "run", "--advised", wet, "--took", "camber", "--times", BEFORE));
    said(log("log", "add", "run", "--advised", wet, "--declined", "camber=no time"));
    assertThat(said(log("log", "run", "6"))).containsPattern("Advice: camber more by .* taken");
    assertThat(said(log("log", "run", "last"))).containsPattern("Advice: .*declined: no time");
    refused(
        log("log", "add", "run", "--advised", wet, "--took", "caster"),
        2,
        "--took: that advice does not move caster");
    refused(
        log("log", "add", "run", "--took", "camber"),
        2,
        "which advice? There is no finished consultation here; name its case with --advised");
    refused(
        log("log", "add", "run", "--advised", wet),
        2,
        "--advised: say what became of it with --took or --declined");
  }

  @Test
  void wordsThatCannotBeUsedAreNamedAndNothingIsWritten() throws IOException {
    refused(
        log("log", "add", "run"),
        2,
        "there is no track in the logbook yet; add it first: insidelift log add track NAME");
    begun();
    byte[] before = Files.readAllBytes(file());
    refused(log("log", "add"), 2, "Say what to add: kart, driver, track, day or run.");
    refused(
        log("log", "add", "kart", "heron 7"), 2, "kart: the kart \"heron 7\" is record 2 already");
    refused(
        log("log", "add", "run", "--kart", "Moth\u001b[2J"),
        2,
        "there is no kart \"Moth\\u{1b}[2J\" in the logbook; add it first: insidelift log add kart"
            + " \"Moth\\u{1b}[2J\"");
    refused(
        log("log", "add", "run", "--camber", "1/2/3"),
        2,
        "Invalid value for option '--camber': \"1/2/3\" is not a number such as -0.5, or left/right"
            + " such as -0.5/-0.25");
    refused(
        log("log", "add", "run", "--camber", "30"),
        2,
        "kart.camber.left: 30 is outside -10 to 10 degrees");
    refused(
        log("log", "add", "run", "--cold", "12"),
        2,
        "--cold: pressure front left: 12 is not from 0.2 to 3 bar");
    refused(
        log("log", "add", "run", "--answer", "water=soaked"),
        2,
        "answers.water: \"soaked\" is not one of dry, damp, wet, standing");
    refused(
        log("log", "add", "run", "--date", "12.4."),
        2,
        "Invalid value for option '--date': \"12.4.\" is not a date such as 2026-04-12");
    refused(
        log("log", "add", "run", "--feel", "lovely"),
        2,
        "Invalid value for option '--feel': \"lovely\" is not one of better, same, worse, unknown");
    refused(log("log", "laps", "last", "--times", BEFORE), 2, "the logbook has no run yet");
    refused(
        log("log", "withdraw", "99", "--because", "x"),
        2,
        "correction: record 99 is no record that can be corrected");
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void filesThatCannotBeUsedAreNamed() throws IOException {
    begun();
    byte[] before = Files.readAllBytes(file());
    String none = temp.resolve("none.csv").toString();
    refused(log("log", "add", "run", "--laps", none), 1, none + ": there is no such file");
    Path laps = Launcher.file(temp, "laps.csv", "Round,Zeit\n1,62.1\n2,fifty\n");
    refused(
        log("log", "add", "run", "--laps", laps.toString()),
        1,
        "laps.csv, line 1: there is no column \"time\"; the header is Round,Zeit.");
    refused(
        log(
            "log",
            "add",
            "run",
            "--laps",
            laps.toString(),
            "--lap-column",
            "Round",
            "--time-column",
            "Zeit"),
        1,
        "laps.csv, line 3: \"fifty\" is not a lap time such as 62.345 or 1:02.345.");
    refused(
        log("log", "add", "run", "--laps", none, "--times", BEFORE),
        2,
        "--laps and --times: give one of them");
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void aFolderThatCannotBeWrittenIsNamed() {
    Launcher.file(temp, "mine", "in the way");
    refused(
        log("log", "add", "kart", "Heron 7"),
        1,
        "the logbook in "
            + data
            + " cannot be opened for writing (there is a file in its place); nothing in it was"
            + " changed");
  }

  @Test
  void anExportThatTheDiskHasNoRoomForLeavesNoEmptyFile() throws Exception {
    said(log("--version"));
    said(log("log", "demo"));
    Path out = temp.resolve("out");
    String line = "ulimit -f 0; exec ./insidelift log export " + out;
    Outcome full =
        Launcher.shell(line)
            .set("INSIDELIFT_DATA", data.toString())
            .set("_JAVA_OPTIONS", "-XX:-UsePerfData")
            .run();
    assertThat(full.exit()).isEqualTo(1);
    assertThat(full.err())
        .contains("logbook.json: it cannot be written; is the disk full, or the name too long?");
    assertThat(out).isEmptyDirectory();
  }

  /** The system itself refuses: a limit on the size of files stands in for the end of the disk. */
  @Test
  void aFileThatTheSystemLetsGrowNoFurtherIsNamedAndNothingIsLost() throws Exception {
    // The launcher's own archive of classes is larger: let it be there before the limit is.
    said(log("--version"));
    String page = "x".repeat(2_000);
    try (LogbookWriter writer = LogbookWriter.open(data)) {
      for (int i = 0; i < 30; i++) {
        writer.append(new KartEntry("Kart number " + i, Map.of(), page));
      }
    }
    byte[] before = Files.readAllBytes(file());
    assertThat(before.length).isBetween(65_536 - 2_000, 65_536);
    String line = "ulimit -f 128; exec ./insidelift log add kart More --note " + page;
    refused(
        Launcher.shell(line).set("INSIDELIFT_DATA", data.toString()),
        1,
        file()
            + " cannot be written (File too large): what was to be added is not saved, everything"
            + " before it is intact");
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
    assertThat(said(log("log", "add", "kart", "More", "--note", page))).endsWith("is on disk.");
  }

  @Test
  void ofTenAtOnceEachIsWritten() {
    List<CompletableFuture<Outcome>> all =
        IntStream.range(0, 10)
            .mapToObj(
                i ->
                    CompletableFuture.supplyAsync(
                        () -> log("log", "add", "kart", "Kart " + i).run(),
                        command -> new Thread(command).start()))
            .toList();
    assertThat(all).allSatisfy(one -> assertThat(one.join().exit()).isZero());
    assertThat(file()).content().hasLineCount(11);
  }

  @Test
  void theInventedSeasonIsThereForTheAskingAndWritesNothing() {
    assertThat(said(log("log", "--demo"))).contains("Larkmoor Bowl");
    assertThat(said(log("log", "day", "9", "--demo"))).contains("change |");
    assertThat(said(log("prove", "run:10", "run:11", "--demo"))).isNotBlank();
    String wet = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
    assertThat(said(log("advise", wet, "--demo"))).contains("From your own log, 30 August");
    assertThat(data).doesNotExist();
  }
}
