package insidelift.console.advice;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher.Outcome;
import insidelift.console.terminal.InProcess;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of a kart, and its sheet, on the command line. */
class SheetCommandTest {

  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  @TempDir private Path folder;

  @BeforeEach
  @AfterEach
  void nothingIsKept() {
    InProcess.forget();
  }

  private static Outcome done(String... words) {
    Outcome outcome = InProcess.run(words);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    return outcome;
  }

  private static void refused(String message, int exit, String... words) {
    Outcome outcome = InProcess.run(words);
    assertThat(outcome.err().lines().findFirst().orElse("")).isEqualTo("insidelift: " + message);
    assertThat(outcome.exit()).isEqualTo(exit);
  }

  private static List<String> sheet(String... words) {
    return DATE.matcher(done(words).out()).replaceAll("DATE").lines().toList();
  }

  /** A kart, a driver and a track, and a dry run that was good: record 6. */
  private static void logged() {
    done("log", "add", "kart", "Heron 7", "--answer", "power=mid");
    done("log", "add", "driver", "Ada");
    done("log", "add", "track", "Larkmoor Bowl");
    done(
        "log",
        "add",
        "run",
        "--answer",
        "water=dry",
        "--camber",
        "0.5/0.25",
        "--caster",
        "1",
        "--cold",
        "0.75",
        "--setting",
        "front width=two spacers a side");
  }

  @Test
  void aKartOfWhichNothingIsKnownHasASheetThatSaysSo() throws IOException {
    Path nothing = folder.resolve("nothing.json");
    Files.writeString(nothing, "{\"schema\": 1, \"answers\": {}}");

    List<String> sheet = sheet("sheet", nothing.toString());

    assertThat(sheet)
        .containsExactly(
            "Front-end sheet: this kart, DATE",
            "--------------------------------------",
            "                        now     dry    damp     wet  standing",
            "camber, degrees           -   0.00*  +0.50*  +1.00*    +2.00*",
            "  laser dot at 1 m, mm    -    0.0*   +8.7*  +17.5*    +34.9*",
            "caster, degrees           -   0.00*  +1.00*  +2.00*    +3.00*",
            "toe a side, mm            -  1 out*       -  3 out*         -",
            "  toe a wheel, degrees    -   0.20*       -   0.61*         -",
            "  * where we would start (provisional; wet camber is disputed), not of this kart",
            "  - nobody told it. Two figures are left/right; camber + has the top outward;",
            "  caster is from the kart's own neutral; dot + is above the line, beam across",
            "  the kart; toe over 280 mm, in or out is disputed.",
            "Nobody told: pressures, rear pressure, seat height, front width, bars, struts,",
            "rear width, hubs, front height, rear height, ballast, seat, axle.",
            "Read on the stand. What the driver's weight adds was not read yet.",
            "On the back (--back): the changeover, and how to do without a gauge.");
  }

  @Test
  void aGoodRunIsKeptAndTheSheetFitsOneScreen() {
    logged();

    assertThat(done("log", "keep", "run:6", "toe=0.8", "disc=280", "by=Ada").out())
        .startsWith("The dry setting of Heron 7 (record 7) is on disk");
    done(
        "log",
        "keep",
        "--kart",
        "heron 7",
        "--for",
        "wet",
        "camber=1",
        "caster=3",
        "toe=3",
        "laden-camber=0.5",
        "front-width=widest",
        "checked-by=Tom");
    List<String> sheet = sheet("sheet", "run:last");

    assertThat(sheet).hasSizeLessThanOrEqualTo(23).allMatch(line -> line.length() <= 80);
    assertThat(sheet)
        .contains(
            "Front-end sheet: Heron 7, DATE",
            "camber, degrees         +0.50/+0.25  +0.50/+0.25  +0.75~  +1.00    +1.75~",
            "Dry / wet: front width two spacers a side / widest.",
            "dry: cold 0.75 bar, by Ada, date DATE, track Larkmoor Bowl.",
            "Read on the stand. The driver aboard adds: camber -0.5°.");
    assertThat(sheet("sheet", "--kart", "Heron 7")).isEqualTo(sheet);
  }

  @Test
  void aStartIsThatOfTheDriverWhoDrove() {
    logged();
    done("log", "correct", "driver", "3", "--answer", "driver-strength=limited", "--because", "x");

    assertThat(sheet("sheet", "run:6"))
        .anyMatch(line -> line.matches("caster, degrees +\\+1.00 +0.00\\* +0.00\\* +\\+1.00\\*.*"));
  }

  @Test
  void figuresHaveAPointWhateverTheCountry() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      logged();
      assertThat(sheet("sheet", "run:6"))
          .anyMatch(line -> line.matches(" +toe a wheel.* 0\\.20\\*.*"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theBackIsTheChangeoverBothWays() {
    logged();
    done("log", "keep", "run:6", "toe=0.8");

    List<String> back = sheet("sheet", "run:6", "--back");

    assertThat(back)
        .contains(
            "Dry to wet",
            "  [ ] 17 min: Bars out",
            "Wet to dry",
            "  [ ] 2 min: Pressures: 0.75 bar cold, as on its own sheet",
            "  [ ] 25 min: Front width: two spacers a side, as on its own sheet",
            "  [ ] 66 min: Toe: 0.8 mm out a side, as on its own sheet",
            "Without a gauge count positions from its own marks, both sides alike (one is",
            "  Do a line on both sides or not at all. Half a line is never driven.");
  }

  @Test
  void whatIsKeptIsRefusedInPlainWords() {
    refused("name the run that was good, as in run:7, or the kart with --kart", 2, "log", "keep");
    logged();
    refused("record 5 is no run", 2, "log", "keep", "run:5");
    refused("say what it is for: --for dry or --for wet", 2, "log", "keep", "--kart", "Heron 7");
    refused(
        "there is nothing to keep yet: no camber, no caster, no toe and no other lever is told",
        2,
        "log",
        "keep",
        "--kart",
        "Heron 7",
        "--for",
        "wet",
        "by=Ada");
    refused(
        "toe: \"far\" is not a number such as -0.5, or left/right such as -0.5/-0.25",
        2,
        "log",
        "keep",
        "run:6",
        "toe=far");
    refused("toe.left: 21 is outside -20 to 20 mm", 2, "log", "keep", "run:6", "toe=21");
    refused("disc: \"big\" is not a number such as 280", 2, "log", "keep", "run:6", "disc=big");
    refused(
        "disc says what toe means, and neutral what caster means: tell that too",
        2,
        "log",
        "keep",
        "run:6",
        "disc=280");
    refused(
        "hubs: a word is missing; leave the key out where nothing is known",
        2,
        "log",
        "keep",
        "run:6",
        "hubs=");
    assertThat(InProcess.run("log", "keep", "run:6", "tow=1").err())
        .startsWith(
            "insidelift: \"tow=1\" is not NAME=VALUE with one of the names camber, caster,");
    done("log", "add", "run", "--camber", "0");
    refused(
        "the run does not tell the water: say --for dry or --for wet",
        2,
        "log",
        "keep",
        "run:last");
  }

  @Test
  void aLaterRecordKeepsWhatItDoesNotTellButNotWhoseItWas() {
    logged();
    done("log", "keep", "run:6", "toe=0.8", "hubs=long", "by=Ada", "laden-toe=0.4");
    done("log", "add", "run", "--answer", "water=dry", "--camber", "0");
    done("log", "keep", "run:last");

    assertThat(sheet("sheet", "run:last"))
        .contains(
            "Dry / wet: front width two spacers a side / -; hubs long / -.",
            "dry: date DATE, track Larkmoor Bowl.",
            "Read on the stand. What the driver's weight adds was not read yet.")
        .anyMatch(line -> line.startsWith("toe a side") && line.contains("0.8 out"));
    done("log", "withdraw", "9", "--because", "read at another kart");
    assertThat(sheet("sheet", "--kart", "Heron 7"))
        .contains("Read on the stand. The driver aboard adds: toe -0.40 mm out a side.");
  }

  @Test
  void oneSourceIsNamed() {
    refused("name one of SOURCE, --kart NAME and --all FOLDER", 2, "sheet");
    refused(
        "name one of SOURCE, --kart NAME and --all FOLDER", 2, "sheet", "last", "--kart", "Heron");
    refused(
        "the last consultation: there is none yet; start \"insidelift\" and finish one",
        1,
        "sheet",
        "last");
    refused("run:12: the logbook has no such run", 1, "sheet", "run:12");
    refused("nowhere.json: there is no such file", 1, "sheet", "nowhere.json");
    refused(
        "there is no kart \"Heron 7\" in the logbook; add it first: insidelift log add kart"
            + " \"Heron 7\"",
        2,
        "sheet",
        "--kart",
        "Heron 7");
  }

  @Test
  void aShopHasAPageForEveryKartAndABoard() throws IOException {
    refused(
        folder + ": there is no kart in the logbook yet; insidelift log add kart NAME",
        1,
        "sheet",
        "--all",
        folder.toString());
    logged();
    done("log", "keep", "run:6");
    done("log", "add", "kart", "<b>Moth</b> 12");
    done("log", "add", "run", "--kart", "Heron 7", "--answer", "water=dry", "--camber", "1");

    Outcome shop = done("sheet", "--all", folder.toString());

    assertThat(shop.out())
        .contains(
            "Heron 7, dry: camber +0.63° off (kart-2.html)",
            "<b>Moth</b> 12, dry: no sheet for it yet (kart-8.html)");
    assertThat(Files.readString(folder.resolve("board.html")))
        .contains("&lt;b&gt;Moth&lt;/b&gt; 12", "camber +0.63° off");
    assertThat(folder.resolve("kart-2.html")).isNotEmptyFile();
    assertThat(folder.resolve("kart-8.html")).isNotEmptyFile();
    refused(
        folder + ": this file exists already; --force replaces it",
        1,
        "sheet",
        "--all",
        folder.toString());
    refused(
        folder.resolve("no") + ": there is no such folder; make it first, or name another",
        1,
        "sheet",
        "--all",
        folder.resolve("no").toString());
  }

  @Test
  void aSheetIsOneFile() throws IOException {
    logged();
    Path page = folder.resolve("heron.html");

    assertThat(done("sheet", "run:6", "--out", page.toString()).out())
        .isEqualToIgnoringNewLines("The sheet is in " + page + ".");
    assertThat(Files.readString(page)).contains("<h1>Heron 7</h1>", "Dry to wet");
    refused(
        page + ": this file exists already; --force replaces it",
        1,
        "sheet",
        "run:6",
        "--out",
        page.toString());
  }

  @Test
  void whatAUserWroteIsTextOnAPage() throws IOException {
    Path hostile = folder.resolve("hostile.json");
    Files.writeString(
        hostile,
        """
        {"schema": 1, "kart": {"baseline": {"dry": {"hubs": "<script>alert(1)</script>",
         "noted": {"by": "\\u202eAda\\u001b[31m"}}}}}
        """);
    Path page = folder.resolve("hostile.html");

    done("sheet", hostile.toString(), "--out", page.toString(), "--for", "<img src=x>");

    assertThat(Files.readString(page))
        .contains("&lt;script&gt;alert(1)&lt;/script&gt;", "&lt;img src=x&gt;")
        .doesNotContain("<script>", "\u202e", "\u001b");
    assertThat(sheet("sheet", hostile.toString())).contains("dry: by \\u{202e}Ada\\u{1b}[31m.");
  }
}
