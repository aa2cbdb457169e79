package insidelift.console.kart;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.console.cli.JsonFileCommand;
import insidelift.console.report.NoteText;
import insidelift.engine.geometry.gauge.Gauge;
import insidelift.engine.geometry.gauge.GaugeReading;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code gauge FILE}, or the reading in words: what a gauge shows. */
@Command(
    name = "gauge",
    mixinStandardHelpOptions = true,
    header = "Reads laser dots, a sweep, toe, a lift test or four scales.",
    description = {
      "",
      "Either give the reading in words (gauge laser --help), or a FILE that holds it.",
      ""
    },
    subcommands = {
      GaugeCommand.Laser.class,
      GaugeCommand.Sweep.class,
      GaugeCommand.Toe.class,
      GaugeCommand.Lift.class,
      GaugeCommand.Scales.class
    })
public final class GaugeCommand extends JsonFileCommand {

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "the reading, or - for standard input")
  private String file;

  @Override
  public Result compute() {
    if (file == null) {
      throw misunderstood(
          "Give a reading (laser, sweep, toe, lift or scales) or a FILE that holds one.");
    }
    return result(
        file.equals("-") ? Gauge.read(System.in, "standard input") : Gauge.read(Path.of(file)));
  }

  private static Result result(GaugeReading reading) {
    if (reading.note().isEmpty()) {
      return new Result(reading.json(), reading.lines());
    }
    NoteBook book = NoteBook.open();
    List<Note> notes = List.of(book.note(reading.note().get()));
    return new Result(reading.json(), NoteText.after(reading.lines(), notes, book));
  }

  private static ObjectNode document() {
    return JsonNodeFactory.instance.objectNode().put("schema", 1);
  }

  /** A laser along each stub axle and a board across the kart. */
  @Command(
      name = "laser",
      mixinStandardHelpOptions = true,
      header = "Laser along the stub axle, board across the kart: dots to camber, and back.")
  static final class Laser extends JsonFileCommand {

    @Option(
        names = "--distance",
        required = true,
        paramLabel = "MM",
        description = "from the wheel to the board, in mm")
    private double distance;

    @Option(
        names = "--beam",
        required = true,
        paramLabel = "WAY",
        description = "inboard (across the kart) or outboard: it decides the sign")
    private String beam;

    @Option(
        names = "--left",
        required = true,
        paramLabel = "MM",
        description = "left wheel's dot above the centre line in mm; below is negative")
    private double left;

    @Option(
        names = "--right",
        required = true,
        paramLabel = "MM",
        description = "right wheel's dot above the centre line in mm; below is negative")
    private double right;

    @Option(
        names = "--change",
        paramLabel = "DEG",
        description = "an advised camber change, to get the dots to aim at")
    private Double change;

    @Override
    public Result compute() {
      ObjectNode document = document();
      ObjectNode laser = document.putObject("laser").put("distanceMm", distance).put("beam", beam);
      laser.putObject("dotMm").put("left", left).put("right", right);
      if (change != null) {
        laser.put("changeDeg", change);
      }
      return result(Gauge.of(document));
    }
  }

  /** Camber read with the wheels turned both ways by the same angle. */
  @Command(
      name = "sweep",
      mixinStandardHelpOptions = true,
      header = "Caster from camber read with the wheels turned left and right by the same angle.")
  static final class Sweep extends JsonFileCommand {

    @Option(
        names = "--steer",
        required = true,
        paramLabel = "DEG",
        description = "how far the wheels were turned each way, seen from above")
    private double steer;

    @Option(
        names = "--turned-left",
        required = true,
        arity = "2",
        paramLabel = "DEG",
        description = "camber of the left and the right wheel, turned left")
    private double[] turnedLeft;

    @Option(
        names = "--turned-right",
        required = true,
        arity = "2",
        paramLabel = "DEG",
        description = "camber of the left and the right wheel, turned right")
    private double[] turnedRight;

    @Override
    public Result compute() {
      ObjectNode document = document();
      ObjectNode sweep = document.putObject("sweep").put("steerDeg", steer);
      sweep.putObject("turnedLeftDeg").put("left", turnedLeft[0]).put("right", turnedLeft[1]);
      sweep.putObject("turnedRightDeg").put("left", turnedRight[0]).put("right", turnedRight[1]);
      return result(Gauge.of(document));
    }
  }

  /** Toe over a disc. */
  @Command(
      name = "toe",
      mixinStandardHelpOptions = true,
      header = "Toe over a disc, in mm, to degrees.")
  static final class Toe extends JsonFileCommand {

    @Option(
        names = "--disc",
        required = true,
        paramLabel = "MM",
        description = "the diameter that the toe was measured over, in mm")
    private double disc;

    @Option(
        names = "--total",
        required = true,
        paramLabel = "MM",
        description = "both wheels together, in mm, without sign")
    private double total;

    @Option(
        names = "--direction",
        required = true,
        paramLabel = "WAY",
        description = "in or out: signs differ in the trade, words do not")
    private String direction;

    @Override
    public Result compute() {
      ObjectNode document = document();
      document
          .putObject("toe")
          .put("discMm", disc)
          .put("totalMm", total)
          .put("direction", direction);
      return result(Gauge.of(document));
    }
  }

  /** Each rear raised with the steering at full lock. */
  @Command(
      name = "lift",
      mixinStandardHelpOptions = true,
      header = "Lift test: does each inside rear come up alike at full lock?")
  static final class Lift extends JsonFileCommand {

    @Option(
        names = "--left",
        required = true,
        paramLabel = "MM",
        description = "height of the left rear, steered fully left")
    private double left;

    @Option(
        names = "--right",
        required = true,
        paramLabel = "MM",
        description = "height of the right rear, steered fully right")
    private double right;

    @Override
    public Result compute() {
      ObjectNode document = document();
      document.putObject("lift").putObject("heightMm").put("left", left).put("right", right);
      return result(Gauge.of(document));
    }
  }

  /** A scale under each wheel. */
  @Command(
      name = "scales",
      mixinStandardHelpOptions = true,
      header = "Four scales: shares, and how far left and right are apart.")
  static final class Scales extends JsonFileCommand {

    @Option(
        names = "--front",
        required = true,
        arity = "2",
        paramLabel = "KG",
        description = "the left and the right front")
    private double[] front;

    @Option(
        names = "--rear",
        required = true,
        arity = "2",
        paramLabel = "KG",
        description = "the left and the right rear")
    private double[] rear;

    @Override
    public Result compute() {
      ObjectNode document = document();
      ObjectNode scales = document.putObject("scales");
      scales.putObject("frontKg").put("left", front[0]).put("right", front[1]);
      scales.putObject("rearKg").put("left", rear[0]).put("right", rear[1]);
      return result(Gauge.of(document));
    }
  }
}
