package insidelift.console;

import insidelift.engine.geometry.KartGeometry;
import insidelift.engine.geometry.Prediction;
import java.nio.file.Path;
import java.util.List;
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
      "What the file leaves out is taken from a typical kart and marked \"typical\".",
      ""
    })
final class PredictCommand extends JsonFileCommand {

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

  @Override
  Result compute() {
    KartGeometry kart =
        file.equals("-")
            ? KartGeometry.read(System.in, "standard input")
            : KartGeometry.read(Path.of(file));
    Prediction prediction = Prediction.of(kart, list(steer), list(lateralG));
    return new Result(prediction.json(), prediction.lines());
  }

  private static List<Double> list(Double value) {
    return value == null ? List.of() : List.of(value);
  }
}
