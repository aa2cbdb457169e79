package insidelift.console.kart;

import insidelift.console.cli.JsonFileCommand;
import insidelift.engine.geometry.positions.Positions;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code positions FILE}: where to turn the eccentrics for a wanted change. */
@Command(
    name = "positions",
    mixinStandardHelpOptions = true,
    header = "Finds the eccentric positions nearest to a wanted change.",
    description = {
      "",
      "One washer moves camber and caster together: this finds the pair that comes nearest to both.",
      ""
    })
public final class PositionsCommand extends JsonFileCommand {

  @Parameters(
      paramLabel = "FILE",
      description = "the eccentrics and the change wanted, or - for standard input")
  private String file;

  @Override
  public Result compute() {
    Positions positions =
        file.equals("-")
            ? Positions.read(System.in, "standard input")
            : Positions.read(Path.of(file));
    return new Result(positions.json(), positions.lines());
  }
}
