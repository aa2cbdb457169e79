package insidelift.console.kart;

import insidelift.console.cli.JsonFileCommand;
import insidelift.engine.geometry.effect.Prediction;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.plausible.LoggedCorners;
import insidelift.engine.geometry.plausible.MeasuredKart;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code predict KART}: what steering and cornering do to the wheels of one kart. */
@Command(
    name = "predict",
    mixinStandardHelpOptions = true,
    header = "Predicts camber, heights and loads as a kart steers and corners.",
    description = {
      "",
      "The answer is a band: the more the file knows of the kart, the narrower.",
      "Without angles and g it takes three usual corners.",
      "What was read as the note fit-my-kart says goes under \"measured\".",
      ""
    })
public final class PredictCommand extends JsonFileCommand {

  @Parameters(paramLabel = "KART", description = "the kart file, or - for standard input")
  private String file;

  @Option(
      names = "--steer",
      paramLabel = "D",
      description = "rotation about the kingpins in degrees, 0 to 45, a left turn")
  private Double steer;

  @Option(
      names = "--lateral-g",
      paramLabel = "G",
      description = "lateral acceleration in g, 0 to 3; 0 if left out")
  private Double lateralG;

  @Option(
      names = "--longitudinal-g",
      paramLabel = "G",
      description = "g along the kart, -1.5 to 1, below 0 when slowing; 0 if left out")
  private double longitudinalG;

  /** A log of this track, and where it has its accelerations. */
  private static final class Logger {

    @Option(
        names = "--logger",
        required = true,
        paramLabel = "FILE",
        description = "a table of text with a header, as a logger exports it: its own corners")
    private Path file;

    @Option(
        names = "--lateral-column",
        required = true,
        paramLabel = "NAME",
        description = "the column with the g to the side")
    private String lateral;

    @Option(
        names = "--longitudinal-column",
        required = true,
        paramLabel = "NAME",
        description = "the column with the g along the kart, below 0 when slowing")
    private String longitudinal;
  }

  @ArgGroup(exclusive = false)
  private Logger logger;

  @Override
  public Result compute() {
    MeasuredKart kart =
        file.equals("-")
            ? MeasuredKart.read(System.in, "standard input")
            : MeasuredKart.read(Path.of(file));
    Prediction prediction =
        logger == null
            ? Prediction.of(kart, list(steer), list(lateralG), longitudinalG)
            : Prediction.of(kart, corners());
    return new Result(prediction.json(), prediction.lines());
  }

  private List<Corner> corners() {
    if (steer != null || lateralG != null || longitudinalG != 0) {
      throw misunderstood("a logger tells the corners: leave out --steer and the g");
    }
    return LoggedCorners.read(logger.file, logger.lateral, logger.longitudinal);
  }

  private static List<Double> list(Double value) {
    return value == null ? List.of() : List.of(value);
  }
}
