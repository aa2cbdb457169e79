package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The gauge in words, and the logbook, through the packaged launcher. */
class GaugeAndLogIT {

  @TempDir private Path data;

  private record Ended(int code, String out) {}

  private Ended run(String... words) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of(Path.of("insidelift").toAbsolutePath().toString()));
    line.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    builder.environment().put("INSIDELIFT_DATA", data.toString());
    Process process = builder.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), out);
  }

  @Test
  void aLaserReadingInWordsSaysWhereToAim() throws Exception {
    Ended laser =
        run(
            "gauge",
            "laser",
            "--distance",
            "1000",
            "--beam",
            "inboard",
            "--left",
            "0",
            "--right",
            "0",
            "--change",
            "0.5");

    assertThat(laser.code()).isZero();
    // 1 m times tan 0.5 degrees is 8.727 mm.
    assertThat(laser.out()).contains("dot 8.7 mm above the line on a board 1.0 m away, both sides");
  }

  @Test
  void theBeamsDirectionIsAlwaysAskedFor() throws Exception {
    Ended laser = run("gauge", "laser", "--distance", "1000", "--left", "0", "--right", "0");

    assertThat(laser.code()).isEqualTo(2);
    assertThat(laser.out()).contains("--beam");
  }

  @Test
  void aGaugeWithoutAReadingIsNotUnderstood() throws Exception {
    Ended gauge = run("gauge");

    assertThat(gauge.code()).isEqualTo(2);
    assertThat(gauge.out())
        .contains("Give a reading (laser, sweep, toe, lift or scales) or a FILE that holds one.");
  }

  @Test
  void theInventedSeasonCanBeLookedAtAndProved() throws Exception {
    assertThat(run("log", "demo").code()).isZero();
    assertThat(run("log", "day", "9").out()).contains("run");
    assertThat(run("log", "day", "7").out())
        .isEqualToIgnoringNewLines("insidelift: record 7 is not what was asked for");
    Ended learned = run("log", "learned", "Lapwing 3", "Larkmoor Bowl");
    assertThat(learned.code()).isEqualTo(1);
    assertThat(learned.out())
        .isEqualToIgnoringNewLines(
            "insidelift: there is no kart \"Lapwing 3\" in the logbook; add it first: insidelift log"
                + " add kart \"Lapwing 3\"");
    assertThat(run("prove", "run:10", "run:11").code()).isZero();
    assertThat(run("prove", "run:9999", "run:2").out())
        .contains("run:9999: the logbook has no lap times of such a run");
  }
}
