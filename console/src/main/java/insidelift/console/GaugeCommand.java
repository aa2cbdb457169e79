package insidelift.console;

import insidelift.engine.geometry.Gauge;
import insidelift.engine.geometry.GaugeReading;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code gauge FILE}: what a garage gauge's reading means. */
@Command(
    name = "gauge",
    mixinStandardHelpOptions = true,
    header = "Turns laser dots, a camber sweep or toe readings into degrees, and back.",
    description = {
      "",
      "The file holds one of \"laser\", \"sweep\" or \"toe\"; the guide in README.md shows each.",
      ""
    })
final class GaugeCommand extends JsonFileCommand {

  @Parameters(paramLabel = "FILE", description = "the reading, or - for standard input")
  private String file;

  @Override
  Result compute() {
    GaugeReading reading =
        file.equals("-") ? Gauge.read(System.in, "standard input") : Gauge.read(Path.of(file));
    return new Result(reading.json(), reading.lines());
  }
}
