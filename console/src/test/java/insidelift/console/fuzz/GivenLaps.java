package insidelift.console.fuzz;

import insidelift.engine.logbook.use.LapImport;
import insidelift.engine.proof.laps.LapColumns;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;

/** Lap times. */
final class GivenLaps {

  private GivenLaps() {}

  static void file(byte[] bytes) throws IOException, UnreadableLapTimes {
    LapTimes laps = LapTimes.read("day.csv", GivenFiles.in(bytes), LapColumns.STANDARD);
    String written =
        "lap,time\n"
            + laps.laps().stream()
                .map(lap -> String.format(Locale.ROOT, "%d,%.6f", lap.number(), lap.seconds()))
                .collect(Collectors.joining("\n"));
    if (!laps.laps().isEmpty()) {
      LapTimes again =
          LapTimes.read(
              "day.csv",
              GivenFiles.in(written.getBytes(StandardCharsets.UTF_8)),
              LapColumns.STANDARD);
      if (!again.laps().equals(laps.laps())) {
        throw new AssertionError("written and read again they are others");
      }
    }
    LapTimes.read("day.csv", GivenFiles.in(bytes), new LapColumns("Runde", "Zeit"));
  }

  static void pasted(byte[] bytes) throws UnreadableLapTimes {
    LapImport.pasted(new String(bytes, StandardCharsets.UTF_8));
  }
}
