package insidelift.console.kart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.console.cli.JsonFileCommand;
import insidelift.console.report.NoteText;
import insidelift.engine.geometry.toe.ToeJob;
import insidelift.engine.geometry.toe.ToeMethod;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code toe [FILE]}: the toe job step by step, and how far each tie-rod is to be turned. */
@Command(
    name = "toe",
    mixinStandardHelpOptions = true,
    header = "Tells the toe job step by step, and how far to turn each tie-rod.",
    description = {
      "",
      "Without a reading it tells how much toe, and every step. With one, in words or in"
          + " a FILE, it tells first what to turn. Each rod has its own line, longer or shorter.",
      "",
      "  insidelift toe --disc 280 --left 1.5 out --right 0.5 in --arm 95 --pitch 1",
      "  insidelift toe --disc 280 --total 3 out --target 1 out",
      "  insidelift toe --sweep 612 618 --beam 1000",
      "",
      "TOE is a number, mm or deg (mm if left out), and out or in: 1.5 out, 0.2 deg in, 0.",
      ""
    })
public final class ToeCommand extends JsonFileCommand {

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "the reading, or - for standard input")
  private String file;

  @Option(
      names = "--with",
      paramLabel = "WHAT",
      description = "how it is measured: laser, discs, straight-edge or tape")
  private String with;

  @Option(
      names = "--disc",
      paramLabel = "MM",
      description = "the length that mm of toe are over, such as the disc's diameter")
  private Double disc;

  @Option(
      names = "--left",
      arity = "1..3",
      paramLabel = "TOE",
      hideParamSyntax = true,
      description = "the left wheel by itself")
  private List<String> left;

  @Option(
      names = "--right",
      arity = "1..3",
      paramLabel = "TOE",
      hideParamSyntax = true,
      description = "the right wheel by itself")
  private List<String> right;

  @Option(
      names = "--total",
      arity = "1..3",
      paramLabel = "TOE",
      hideParamSyntax = true,
      description = "both wheels together, if neither was read by itself")
  private List<String> total;

  @Option(
      names = "--target",
      arity = "1..3",
      paramLabel = "TOE",
      hideParamSyntax = true,
      description = "what is wanted of each wheel; 1 out if left out (provisional)")
  private List<String> target;

  @Option(
      names = "--target-total",
      arity = "1..3",
      paramLabel = "TOE",
      hideParamSyntax = true,
      description = "what is wanted of both wheels together")
  private List<String> targetTotal;

  @Option(
      names = "--sweep",
      arity = "2",
      paramLabel = "MM",
      description = "farthest point of the left beam steered left, of the right steered right")
  private double[] sweep;

  @Option(
      names = "--beam",
      paramLabel = "MM",
      description = "how far the tapes of the sweep are from the wheels")
  private Double beam;

  @Option(
      names = "--arm",
      paramLabel = "MM",
      description = "from the kingpin square to the line of the rod; typical if left out")
  private Double arm;

  @Option(
      names = "--arm-points",
      paramLabel = "WAY",
      description = "behind or ahead of the kingpin; behind if left out")
  private String armPoints;

  @Option(
      names = "--pitch",
      paramLabel = "MM",
      description = "from one thread of the rod to the next; without it no turns are told")
  private Double pitch;

  @Option(
      names = "--threads",
      paramLabel = "ENDS",
      description = "both: the rod turns, right-hand and left-hand; one: one joint turns")
  private String threads;

  @Override
  public Result compute() {
    ObjectNode typed = typed();
    if (file != null && !typed.isEmpty()) {
      throw misunderstood("Give a FILE or the reading in words, not both.");
    }
    ToeJob job =
        file == null
            ? ToeJob.of(JsonNodeFactory.instance.objectNode().put("schema", 1).set("toeJob", typed))
            : file.equals("-")
                ? ToeJob.read(System.in, "standard input")
                : ToeJob.read(Path.of(file));
    NoteBook book = NoteBook.open();
    List<Note> notes = notes(job).stream().map(book::note).toList();
    ObjectNode json = job.json();
    ArrayNode told = json.putArray("notes");
    notes.forEach(note -> told.add(json(note)));
    return new Result(json, NoteText.after(job.lines(), notes, book));
  }

  /** What was typed, in the form of a file. */
  private ObjectNode typed() {
    if (sweep == null && beam != null) {
      throw misunderstood("Give --sweep with --beam: what both tapes show.");
    }
    ObjectNode typed = JsonNodeFactory.instance.objectNode();
    put(typed, "with", with);
    put(typed, "discMm", disc);
    put(typed, "left", left);
    put(typed, "right", right);
    put(typed, "total", total);
    put(typed, "wanted", target);
    put(typed, "wantedTotal", targetTotal);
    put(typed, "armMm", arm);
    put(typed, "arm", armPoints);
    put(typed, "pitchMm", pitch);
    put(typed, "threads", threads);
    if (sweep != null) {
      if (beam == null) {
        throw misunderstood("Give --beam with --sweep: how far the tapes are from the wheels.");
      }
      typed.putObject("sweep").put("beamMm", beam).put("left", sweep[0]).put("right", sweep[1]);
    }
    return typed;
  }

  private static void put(ObjectNode node, String key, Object typed) {
    if (typed instanceof Double number) {
      node.put(key, number);
    } else if (typed instanceof List<?> words) {
      node.put(key, String.join(" ", words.stream().map(String::valueOf).toList()));
    } else if (typed != null) {
      node.put(key, typed.toString());
    }
  }

  /**
   * Which notes are told: with a reading the job goes on, so its steps come first, and of the ways
   * to measure only the one that was used.
   */
  private static List<String> notes(ToeJob job) {
    boolean read = !job.lines().isEmpty();
    List<String> ids = new ArrayList<>();
    if (!read) {
      ids.add("toe-target");
    }
    ids.add("toe-job");
    Stream.of(ToeMethod.values())
        .filter(way -> job.method().map(way::equals).orElse(!read))
        .forEach(way -> ids.add(way.note()));
    if (read) {
      ids.add("toe-target");
    }
    ids.add("toe-words");
    return ids;
  }

  private static ObjectNode json(Note note) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("id", note.id()).put("title", note.title()).put("disputed", note.disputed());
    ObjectNode sections = node.putObject("sections");
    note.sections().forEach((heading, blocks) -> blocks.forEach(sections.putArray(heading)::add));
    note.sources().forEach(node.putArray("sources")::add);
    return node;
  }
}
