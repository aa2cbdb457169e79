package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Units by flag, by the number typed and by the country; files in one unit always. */
@Execution(ExecutionMode.CONCURRENT)
class UnitsIT {

  private static final String HOT = Launcher.CONSOLE.resolve("examples/hot-edges.json").toString();

  @TempDir private Path folder;

  @BeforeEach
  void aKartADriverAndATrack() {
    done(log("log", "add", "kart", "Heron 7"));
    done(log("log", "add", "driver", "Ada"));
    done(log("log", "add", "track", "Larkmoor Bowl"));
  }

  private Launcher log(String... words) {
    return Launcher.with(words).set("INSIDELIFT_DATA", folder.resolve("data").toString());
  }

  private static Outcome done(Launcher launcher) {
    Outcome outcome = launcher.run();
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    return outcome;
  }

  @Test
  void aRunIsTypedInPsiAndFahrenheitAndKeptInBarAndCelsius() throws IOException {
    done(
        log(
                "log",
                "add",
                "run",
                "--cold",
                "11.5",
                "--left-tread",
                "142/136/131",
                "--answer",
                "power=28hp")
            .set("LC_ALL", "en_US.UTF-8"));
    assertThat(done(log("log", "run", "last", "--units", "us")).out())
        .contains("Cold pressures: front 11.5 11.5, rear 11.5 11.5 psi")
        .contains("Front left tread: nearest the seat 142, middle 136, outer 131 °F");
    assertThat(done(log("log", "run", "last")).out())
        .contains("Cold pressures: front 0.79 0.79, rear 0.79 0.79 bar")
        .contains("Front left tread: nearest the seat 61, middle 58, outer 55 °C")
        .contains("power mid");
    Path written = folder.resolve("export");
    done(log("log", "export", written.toString()).set("LC_ALL", "en_US.UTF-8"));
    JsonNode json = JsonMapper.builder().build().readTree(written.resolve("logbook.json").toFile());
    JsonNode tyres = json.findValue("coldBar");
    assertThat(tyres.get("frontLeft").asDouble()).isEqualTo(0.7929);
    assertThat(Files.readString(written.resolve("runs.csv"))).contains("0.7929", "61.11");
  }

  @Test
  void aWrongNumberSaysInWhichUnitItWasRead() {
    Outcome outcome = log("log", "add", "run", "--units", "us", "--hot", "60").run();
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err())
        .startsWith(
            "insidelift: --hot: pressure front left: 4.1369 is not from 0.2 to 3 bar (\"60\" was"
                + " read as psi)\n");
  }

  @Test
  void notesAndPicturesSpeakTheUnitsOfTheReader() {
    assertThat(done(Launcher.with("notes", "front-temps", "--units", "us")).out())
        .contains("9 °F counts as a difference");
    assertThat(done(Launcher.with("notes", "lever-pressures").set("LC_ALL", "en_GB.UTF-8")).out())
        .contains("Move 0.7\n  psi at a time");
    assertThat(done(Launcher.with("notes", "lever-pressures").set("LC_ALL", "en_IE.UTF-8")).out())
        .contains("Move 0.05\n  bar at a time");
    assertThat(done(Launcher.with("--units", "us", "pictures", HOT)).out())
        .contains("°F")
        .doesNotContain("°C");
    assertThat(done(Launcher.with("pictures", HOT, "--sentences")).out())
        .contains("°C")
        .doesNotContain("°F");
  }

  @Test
  void datesAndNumbersAreTypedAsTheCountryWritesThemAndKeptAsIso() {
    assertThat(
            done(log("log", "add", "day", "--date", "25.11.2026").set("LC_ALL", "de_DE.UTF-8"))
                .out())
        .contains("25 November 2026");
    assertThat(done(log("log")).out()).contains("2026-11-25");
    Outcome two = log("log", "add", "day", "--date", "11/12/2026").run();
    assertThat(two.exit()).isEqualTo(2);
    assertThat(two.err())
        .startsWith(
            "insidelift: Invalid value for option '--date': \"11/12/2026\" may be two days: write"
                + " 2026-12-11 or 2026-11-12\n");
    String kart = Launcher.CONSOLE.resolve("examples/heron.kart.json").toString();
    assertThat(done(Launcher.with("predict", kart, "--steer", "20", "--lateral-g", "0,4")).out())
        .isEqualTo(
            done(Launcher.with("predict", kart, "--steer", "20", "--lateral-g", "0.4")).out());
    Outcome wrong = Launcher.with("predict", kart, "--steer", "far").run();
    assertThat(wrong.exit()).isEqualTo(2);
    assertThat(wrong.err())
        .startsWith(
            "insidelift: Invalid value for option '--steer': \"far\" is not a number such as 0.4 or"
                + " 0,4\n");
  }

  @Test
  void aLoggedRunBecomesAPitCard() {
    done(log("log", "add", "run", "--answer", "water=wet", "--camber", "0", "--caster", "1"));
    Path card = folder.resolve("run.html");
    String number = done(log("log", "run", "last")).out().replaceFirst("(?s)^Run (\\d+).*", "$1");
    assertThat(done(log("card", "run:" + number, "--out", card.toString())).out())
        .isEqualTo("The pit card is in " + card + ".\n");
    assertThat(card).content().contains("Ada, Heron 7, ").contains("Set camber");
    Outcome none = log("card", "run:4711", "--out", card.toString(), "--force").run();
    assertThat(none.exit()).isEqualTo(1);
    assertThat(none.err()).isEqualTo("insidelift: run:4711: the logbook has no such run\n");
    Outcome last = log("card", "run:last", "--out", card.toString(), "--force").run();
    assertThat(last.exit()).as(last.err()).isZero();
  }

  @Test
  void jsonIsTheSameEverywhere() {
    String here = done(Launcher.with("advise", HOT, "--json")).out();
    assertThat(done(Launcher.with("advise", HOT, "--json", "--units", "us")).out()).isEqualTo(here);
  }

  @Test
  void unknownUnitsAreRefused() {
    Outcome outcome = Launcher.with("notes", "--units", "imperial").run();
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err())
        .startsWith(
            "insidelift: Invalid value for option '--units': use metric, us or uk, or units such"
                + " as psi,F,hp\n");
  }
}
