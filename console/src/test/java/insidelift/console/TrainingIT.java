package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons, cards and cases through the packaged launcher, as a trainee and a coach have them. */
class TrainingIT {

  private static final String QUIT = "type quit:";

  @TempDir private Path data;

  private Trainee trainee(Paddock paddock) {
    return new Trainee(paddock);
  }

  private Paddock start(String... words) {
    return Paddock.in(data).words(words).start();
  }

  private Outcome run(String... words) {
    return Launcher.with(words).set("INSIDELIFT_DATA", data.toString()).run();
  }

  /** Looks, asks too little, and takes the wrong lever. */
  private List<String> badlyPlayed() {
    try (Paddock paddock = start("drill", "--case", "1", "--trainee", "Ida Vento")) {
      return trainee(paddock)
          .at("do:", "look")
          .at("do:", "feel")
          .at("ask:", "mid-corner")
          .at("do:", "hint")
          .at("do:", "decide")
          .at("found:", "the front pushes at")
          .at("first:", "none")
          .at("camber:", "more")
          .at("degrees:", "0.5")
          .at("caster:", "hold")
          .at("because:", "1")
          .turnTo(QUIT, "quit")
          .shown(0);
    }
  }

  @Test
  void aCaseIsPlayedToItsEndKeptAndReplayed() {
    List<String> shown = badlyPlayed();
    assertThat(shown).contains("Case 1", "How it went", "What the rules say");
    assertThat(shown).contains("Kept as attempt 2. Again: insidelift drill --replay 2");
    Transcript.compare("drill-case-1", shown);

    Outcome replay = run("drill", "--replay", "2");
    assertThat(replay.exit()).isZero();
    assertThat(replay.out())
        .contains("Attempt 2, Ida Vento, on ")
        .contains("  said: camber more by 0.5°\n");
    String scores = String.join("\n", shown.stream().filter(l -> l.contains(" of 100")).toList());
    assertThat(replay.out()).contains(scores);

    Outcome sheet = run("drill", "--sheet", "ida vento");
    assertThat(sheet.exit()).isZero();
    assertThat(sheet.out())
        .startsWith("Result sheet of Ida Vento\n")
        .contains("Faults missed: 0 (the worst mistake there is).");

    Path page = data.resolve("sheet.html");
    Outcome written = run("drill", "--sheet", "ida vento", "--out", page.toString());
    assertThat(written.exit()).as(written.err()).isZero();
    assertThat(written.out()).isEqualTo("The result sheet is in " + page + ".\n");
    assertThat(page)
        .content()
        .contains("Insidelift: Drill: result sheet", "<strong>Ida Vento</strong>", "One case.")
        .contains("Faults missed: 0 (the worst mistake there is).");
    Outcome again = run("drill", "--sheet", "ida vento", "--out", page.toString());
    assertThat(again.exit()).isEqualTo(1);
    assertThat(again.err())
        .isEqualTo(
            "insidelift: %s: this file exists already; --force replaces it\n".formatted(page));
    assertThat(run("drill", "--sheet", "ida vento", "--out", page.toString(), "--force").exit())
        .isZero();
  }

  @Test
  void aPageNeedsASheet() {
    Outcome outcome = run("drill", "--case", "1", "--out", "sheet.html");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err())
        .startsWith("insidelift: --out writes a result sheet: say whose, with --sheet TRAINEE\n");
  }

  @Test
  void aMissedFaultInACoachsCaseIsSaidFirst() throws IOException {
    Path folder = Files.createDirectory(data.resolve("cases"));
    Files.copy(
        Launcher.CONSOLE.resolve("examples/cases/2-loose-hub.json"),
        folder.resolve("2-loose-hub.json"));
    try (Paddock paddock = start("drill", "--cases", folder.toString())) {
      List<String> shown =
          trainee(paddock)
              .at("do:", "decide")
              .at("found:", "the rear slides at")
              .at("first:", "none")
              .at("camber:", "less")
              .at("degrees:", "0.5")
              .at("caster:", "hold")
              .at("because:", "1")
              .turnPages()
              .shown(0);
      assertThat(String.join("\n", shown))
          .contains("safety      0 of 100 (a fault was missed)")
          .contains("A fault was missed, the worst mistake there is:");
      Transcript.compare("drill-missed-fault", shown);
    }
    Outcome again = run("drill", "--cases", folder.toString());
    assertThat(again.exit()).isZero();
    assertThat(again.out()).isEqualTo("The one case of this folder is done.\n");
  }

  /** The lever by its id, its way by the vocabulary's words; another is quicker. */
  @Test
  void anotherLeverIsNamedBeforeCamberAndCaster() throws IOException {
    Path folder = Files.createDirectory(data.resolve("entry"));
    Files.writeString(
        folder.resolve("entry-push.json"),
        """
        {"schema": 1, "answers": {"play": "none", "fixings": "tight", "water": "dry",
          "turn-in": "understeer", "mid-corner": "good", "exit": "good"}}
        """);
    try (Paddock paddock = start("drill", "--cases", folder.toString())) {
      List<String> shown =
          trainee(paddock)
              .at("do:", "look")
              .at("do:", "decide")
              .at("found:", "the front pushes at")
              .at("first:", "front-height")
              .at("front-height:", "front one step higher")
              .at("camber:", "hold")
              .at("caster:", "more")
              .at("degrees:", "1")
              .at("because:", "1")
              .turnPages()
              .shown(0);
      assertThat(String.join("\n", shown))
          .contains("conclusion  90 of 100 (what comes first: half right)")
          .contains("  > First comes, in 8 minutes: front one thin spacer wider, both sides");
      Transcript.compare("drill-another-lever-first", shown);
    }
    assertThat(run("drill", "--replay", "2").out())
        .contains("  first: Front one step higher, both sides\n");
  }

  @Test
  void whatComesFirstIsALesson() {
    try (Paddock paddock = start("lessons", "11")) {
      List<String> shown =
          trainee(paddock)
              .at("for one question.", "")
              .at("answer:", "front one thin spacer")
              .shown(0);
      assertThat(shown).contains("Rule hubs-exit");
      Transcript.compare("lesson-eleven", shown);
    }
  }

  @Test
  void aLessonIsReadCheckedAndAsked() {
    try (Paddock paddock = start("lessons")) {
      List<String> shown =
          trainee(paddock)
              .at("for one question.", "")
              .at("answer:", "put something")
              .at(QUIT, "")
              .at("for one question.", "")
              .at("answer:", "less caster")
              .at(QUIT, "quit")
              .shown(0);
      assertThat(shown).contains("Why not less caster:");
      Transcript.compare("lessons-one-and-two", shown);
    }
    Outcome list = run("lessons", "--list");
    assertThat(list.out().lines())
        .hasSize(11)
        .contains(" 1  done  Faults first", " 2        Why a kart turns at all");
  }

  @Test
  void cardsAreAskedAndKept() {
    try (Paddock paddock = start("cards")) {
      List<String> shown =
          trainee(paddock)
              .at("press Enter:", "")
              .at("how:", "it came at once")
              .at("press Enter:", Paddock.CTRL_D)
              .shown(0);
      assertThat(shown.get(0)).startsWith("0 due and 10 new today.");
      Transcript.compare("cards-first-day", shown);
    }
    Outcome progress = run("cards", "--progress");
    assertThat(progress.exit()).isZero();
    assertThat(progress.out()).endsWith("Due today: 0\n");
    assertThat(progress.out().lines().filter(line -> line.matches(".* 1 +0$"))).hasSize(1);
  }

  @Test
  void aCaseIsLeftAtAnyPointWithCtrlC() {
    try (Paddock paddock = start("drill", "--case", "3")) {
      trainee(paddock).at("do:", "look");
      paddock.waitUntil("the menu", p -> p.beforeCursor().strip().equals("do:"));
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertThat(paddock.all())
          .contains("Left. Finished cases are kept; an unfinished one comes back by its number.");
    }
    assertThat(run("drill", "--sheet", "me").err())
        .isEqualTo("insidelift: no attempt of \"me\" is kept here\n");
  }

  @Test
  void everyMistakeIsSaidInOneSentence() throws IOException {
    refused(1, "no attempt of \"Nobody\" is kept here", "drill", "--sheet", "Nobody");
    refused(1, "there is no attempt 7; a result sheet has their numbers", "drill", "--replay", "7");
    refused(1, "there is no lesson 12; there are 1 to 11", "lessons", "12");
    refused(1, "there is no lesson 0; there are 1 to 11", "lessons", "0");
    refused(2, "--trainee: a name is missing", "cards", "--trainee", " ");
    refused(
        2,
        "--trainee: 81 characters are too many; the most is 80",
        "cards",
        "--trainee",
        "x".repeat(81));
    refused(2, "Invalid value for option '--case': 'x' is not a long", "drill", "--case", "x");
    Path folder = Files.createDirectory(data.resolve("empty"));
    refused(
        1,
        folder + ": the folder holds no case: put files that end in .json there",
        "drill",
        "--cases",
        folder.toString());
    Files.writeString(folder.resolve("a\u001b[2J.json"), "{");
    refused(
        1,
        folder + ": a\\u{1b}[2J.json: the file ends in the middle (line 1, column 2)",
        "drill",
        "--cases",
        folder.toString());
  }

  private void refused(int code, String sentence, String... words) {
    Outcome outcome = run(words);
    assertThat(outcome.exit()).as(sentence).isEqualTo(code);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().findFirst()).contains("insidelift: " + sentence);
  }

  @Test
  void notesAreFoundByWords() {
    Outcome many = run("notes", "camber");
    assertThat(many.exit()).isZero();
    assertThat(many.out().lines()).hasSizeGreaterThan(20).anyMatch(l -> l.startsWith("by-phase "));
    Outcome drawing = run("notes", "inside-rear");
    assertThat(drawing.out()).contains("it stays down: it drags");
    assertThat(run("notes", "no", "such", "words").err())
        .isEqualTo(
            "insidelift: there is no note \"no such words\"; \"insidelift notes\" lists them all\n");
  }
}
