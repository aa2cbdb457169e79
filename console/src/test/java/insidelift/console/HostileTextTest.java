package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher.Outcome;
import insidelift.console.terminal.InProcess;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever stands in a field, a file, a flag or a name: nothing of it reaches a terminal or a page
 * as anything but text.
 */
class HostileTextTest {

  @TempDir private Path folder;

  @BeforeEach
  @AfterEach
  void nothingIsKept() {
    assertThat(InProcess.DATA).hasFileName("data-of-tests");
    InProcess.forget();
  }

  private Outcome run(String... words) {
    Outcome outcome = InProcess.run(words);
    for (String stream : List.of(outcome.out(), outcome.err())) {
      assertThat(Hostile.unsafe(stream)).as(escaped(words, stream)).isEqualTo(-1);
      assertThat(stream).doesNotContain("Exception", "\tat ", "a fault of this program");
    }
    assertThat(outcome.err().length()).isLessThan(4_000);
    assertThat(outcome.exit()).isIn(0, 1, 2);
    return outcome;
  }

  private void refused(String... words) {
    assertThat(run(words).exit()).as(String.join(" ", words)).isIn(1, 2);
  }

  private void done(String... words) {
    Outcome outcome = run(words);
    assertThat(outcome.exit()).as(outcome.err()).isZero();
  }

  private static String escaped(String[] words, String stream) {
    StringBuilder text = new StringBuilder(words[0]).append(" said: ");
    stream
        .codePoints()
        .forEach(
            point -> {
              if (point == '\n' || (point >= ' ' && point <= '~')) {
                text.appendCodePoint(point);
              } else {
                text.append("\\u{").append(Integer.toHexString(point)).append('}');
              }
            });
    return text.toString();
  }

  private Path file(String name, String content) {
    return Launcher.file(folder, name, content);
  }

  /** A text as JSON writes it, its line ends escaped and its other characters as they are. */
  private static String json(String text) {
    return text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\r", "\\r");
  }

  /** A text in which JSON writes every character by its number. */
  private static String escapes(String text) {
    StringBuilder escapes = new StringBuilder();
    text.chars().forEach(c -> escapes.append("\\u%04x".formatted(c)));
    return escapes.toString();
  }

  @Test
  void wordsAndFlagsOfTheCommandLine() {
    String bad = Hostile.all();
    refused(bad);
    refused("--" + bad);
    refused("advise", bad);
    refused("advise", folder.toString(), "--json=" + bad);
    refused("notes", "--out", folder.resolve("none") + "/" + bad);
    run("notes", bad);
    refused("prove", bad, bad, "--feel", bad);
    refused("prove", "run:" + bad, bad);
    refused("gauge", "toe", "--disc", bad, "--total", "1", "--direction", bad);
    refused("toe", "--disc", "280", "--left", bad, "--with", bad);
    refused("toe", bad);
    refused("predict", bad, "--steer", bad);
    refused("positions", bad);
    refused("audit", "--cases", bad);
    refused("audit", "--overlay", bad);
    refused("pictures", bad, "--laps", bad, bad);
  }

  @Test
  void trainees() {
    refused("drill", "--sheet", Hostile.all());
    refused("drill", "--sheet", Hostile.MARKS + Hostile.HTML);
    refused("drill", "--trainee", Hostile.CONTROL, "--cases", folder.toString());
    refused("drill", "--replay", Hostile.MARKS);
    refused("drill", "--case", Hostile.MARKS);
    run("cards", "--progress", "--trainee", Hostile.MARKS + Hostile.TOWER);
    refused("cards", "--progress", "--trainee", Hostile.CONTROL);
    run("lessons", "--list", "--trainee", Hostile.MARKS + Hostile.HTML);
  }

  @Test
  void caseFilesInEveryKeyAndWord() {
    for (String bad : List.of(escapes(Hostile.all()), json(Hostile.MARKS + Hostile.HTML))) {
      for (String content :
          List.of(
              "{\"schema\":1,\"answers\":{\"" + bad + "\":\"wet\"}}",
              "{\"schema\":1,\"answers\":{\"water\":\"" + bad + "\"}}",
              "{\"schema\":\"" + bad + "\"}",
              "{\"schema\":1,\"kart\":{\"geometry\":{\"" + bad + "\":1}}}",
              "{\"schema\":1,\"kart\":{\"eccentrics\":{\"pivots\":\"" + bad + "\"}}}")) {
        Path file = file("case.json", content);
        refused("advise", file.toString());
        refused("card", file.toString(), "--out", folder.resolve("card.html").toString());
      }
    }
    refused("pictures", file("a.json", escapes("\"" + Hostile.MARKS)).toString());
  }

  @Test
  void kartsWashersAndGauges() {
    String bad = escapes(Hostile.MARKS);
    refused("predict", file("k.json", "{\"schema\":1,\"" + bad + "\":1}").toString());
    refused("predict", file("k.json", "{\"schema\":\"" + bad + "\"}").toString());
    refused(
        "positions", file("p.json", "{\"schema\":1,\"eccentrics\":\"" + bad + "\"}").toString());
    String table =
        "{\"schema\":1,\"eccentrics\":{\"table\":[{\"name\":\"\\u202eA\",\"camberDeg\":0,"
            + "\"casterDeg\":0}]},\"want\":{\"camberDeg\":0.5,\"casterDeg\":0}}";
    refused("positions", file("p.json", table).toString());
    refused(
        "gauge", file("g.json", "{\"schema\":1,\"laser\":{\"beam\":\"" + bad + "\"}}").toString());
    refused(
        "toe", file("t.json", "{\"schema\":1,\"toeJob\":{\"left\":\"" + bad + "\"}}").toString());
  }

  @Test
  void lapTimesAndTheNamesOfTheirFiles() throws IOException {
    String name = "day\u001b[2J\u202e<b>.csv";
    Path laps = file(name, "lap,\u001b]0;x\u0007time\u202e\n1,\u001b[31m62\n");
    refused("prove", laps.toString(), laps.toString());
    StringBuilder good = new StringBuilder("lap,time\n");
    for (int i = 1; i < 12; i++) {
      good.append(i).append(',').append(52 + i % 3 / 10.0).append('\n');
    }
    Files.writeString(laps, good.toString());
    done("prove", laps.toString(), laps.toString());
    done("prove", laps.toString(), laps.toString(), "--json");
    done(
        "pictures",
        Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString(),
        "--laps",
        laps.toString(),
        laps.toString());
  }

  @Test
  void aShopsOwnClaims() throws IOException {
    String example = Files.readString(Launcher.CONSOLE.resolve("examples/own-knowledge.json"));
    String rain = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
    for (String key : List.of("shop", "id", "title", "why", "source", "because", "caution")) {
      String field = "\"" + key + "\": \"";
      assertThat(example).contains(field);
      String spoilt = example.replace(field, field + escapes(Hostile.MARKS));
      refused("advise", rain, "--overlay", file("own\u202e\u001b[2J.json", spoilt).toString());
    }
    String html = example.replace("\"shop\": \"", "\"shop\": \"<b>'\\\"&");
    Path page = folder.resolve("own.html");
    Path own = file("own.json", html);
    done("card", rain, "--overlay", own.toString(), "--out", page.toString());
    assertThat(Files.readString(page)).doesNotContain("<b>'");
  }

  @Test
  void casesOfACoachAndOfTheAudit() throws IOException {
    Path cases = Files.createDirectory(folder.resolve("cases\u001b[2J\u202e"));
    String bad = escapes(Hostile.CONTROL + Hostile.MARKS + Hostile.HTML + Hostile.TOWER);
    String library =
        "[{\"name\":\"%s\",\"source\":\"%s\",\"answers\":{\"water\":\"wet\"},".formatted(bad, bad)
            + "\"expect\":{\"status\":\"hold\",\"checks\":[\"%s\"],\"over\":{\"%s\":[\"%s\"]}},"
                .formatted(bad, bad, bad)
            + "\"fires\":[\"%s\"],\"silent\":[\"%s\"]}]".formatted(bad, bad);
    Files.writeString(cases.resolve("a\u202e\u001b[2J<b>.json"), library);
    assertThat(run("audit", "--cases", cases.toString()).exit()).isEqualTo(1);
    assertThat(run("audit", "--cases", cases.toString(), "--json").exit()).isEqualTo(1);
    String untold = "[{\"name\":\"%s\",\"source\":\"%s\",\"answers\":{}}]".formatted(bad, bad);
    Files.writeString(cases.resolve("a\u202e\u001b[2J<b>.json"), untold);
    refused("drill", "--cases", cases.toString());
  }

  @Test
  void theSubjectOfACardIsTextOnThePage() throws IOException {
    String rain = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
    for (String bad :
        List.of(Hostile.HTML, Hostile.MARKS, Hostile.CONTROL, Hostile.TOWER, Hostile.all())) {
      Path page = folder.resolve("card\u202e\u001b[2J.html");
      done("card", rain, "--for", bad, "--out", page.toString(), "--force");
      String html = Files.readString(page);
      assertThat(Hostile.unsafe(html)).isEqualTo(-1);
      assertThat(html).doesNotContain("<script>x", "<img", "onerror=x()>\"", "'>");
    }
  }

  @Test
  void theLogbookRefusesControlCharactersInEveryField() {
    String bad = Hostile.CONTROL;
    refused("log", "add", "kart", bad);
    refused("log", "add", "driver", "Ada", "--note", bad);
    done("log", "add", "kart", "Heron 7");
    done("log", "add", "driver", "Ada Quill");
    done("log", "add", "track", "Larkmoor Bowl");
    refused("log", "add", "day", "--note", bad, "--date", "2026-04-12");
    refused("log", "add", "day", "--date", bad);
    refused("log", "add", "day", "--track", bad);
    done("log", "add", "day", "--date", "2026-04-12");
    for (String field :
        List.of(
            "--said", "--setting=a", "--feel", "--cold", "--times", "--answer=water", "--kart")) {
      String[] pair = field.split("=", -1);
      String value = pair.length == 2 ? pair[1] + "=" + bad : bad;
      refused("log", "add", "run", "--date", "2026-04-12", pair[0], value);
    }
    refused("log", "correct", "kart", "2", "--because", bad, "--note", "x");
    refused("log", "withdraw", "2", "--because", bad);
    refused("log", "day", bad);
    refused("log", "run", bad);
    refused("log", "learned", bad, bad);
  }

  @Test
  void whatTheLogbookTakesIsOnlyEverShownWithCare() throws IOException {
    String all = Hostile.MARKS + Hostile.HTML + Hostile.FORMULA;
    String name = Hostile.MARKS + "<b>" + Hostile.TOWER.substring(0, 9);
    done("log", "add", "kart", name, "--note", Hostile.FORMULA + all + Hostile.TOWER);
    done("log", "add", "driver", "=" + name, "--note", all);
    done("log", "add", "track", "@" + name, "--note", all);
    done("log", "add", "day", "--date", "2026-04-12", "--note", all + "\nand a line");
    done(
        "log",
        "add",
        "run",
        "--date",
        "2026-04-12",
        "--said",
        all,
        "--setting",
        Hostile.MARKS + "=" + Hostile.HTML,
        "--times",
        "61.2 52.3 52.1 52.4 52.2 52.3 52.5");
    done("log", "correct", "kart", "2", "--because", all, "--note", all);
    done("log");
    done("log", "day", "5");
    done("log", "run", "6");
    done("log", "learned", name, "@" + name);
    String rain = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
    done("advise", rain, "--log");
    done("advise", rain, "--log", "--json");
    refused("log", "add", "kart", name);
    Path export = folder.resolve("export\u202e");
    done("log", "export", export.toString());
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all9 = Files.list(export)) {
      all9.forEach(files::add);
    }
    assertThat(files).hasSize(10);
    for (Path file : files) {
      String text = Files.readString(file).replace("\r\n", "\n").replace("\t", "");
      assertThat(Hostile.unsafe(text)).as(file.toString()).isEqualTo(-1);
      // No cell begins as a formula does, also within quotation marks.
      if (file.toString().endsWith(".csv")) {
        assertThat(text).doesNotContainPattern("(?m)(^|,)\"?[=@+]");
      }
    }
  }

  @Test
  void anotherProgramsLogbookIsShownWithCareToo() throws IOException {
    Path data = Files.createDirectory(InProcess.DATA);
    Files.writeString(data.resolve("logbook.jsonl"), Hostile.all() + "\n" + Hostile.all() + "\n");
    refused("log");
    refused("log", "add", "kart", "Heron");
    Files.writeString(data.resolve("own-knowledge.json"), "{\"" + Hostile.MARKS + "\":1}");
    String rain = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
    refused("advise", rain);
    Files.delete(data.resolve("own-knowledge.json"));
    Files.write(
        data.resolve("last-consultation.json"), Hostile.all().getBytes(StandardCharsets.UTF_8));
    refused("card", "last", "--out", folder.resolve("c.html").toString());
  }
}
