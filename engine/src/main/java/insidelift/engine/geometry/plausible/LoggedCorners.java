package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.kart.Corner;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/**
 * The corners of a track, as a logger saw them: a table of text with a header, from which two
 * columns in g are read whose names the user tells.
 *
 * <p>What counts as turn-in and apex is ours (provisional). Cornering is what exceeds 0.2 g to
 * either side; the hardest is its 95th percentile, so that one kerb does not decide. Turn-in is
 * every sample slowing by at least 0.2 g with at least half of the hardest, the apex every sample
 * with at least nine tenths of it; both are told by their medians. The steer is not in such a log:
 * that of {@link Corner#TURN_IN} and {@link Corner#APEX} stands in.
 */
public final class LoggedCorners {

  private static final double CORNERING_G = 0.2;
  private static final double BRAKING_G = -0.2;
  private static final double TURNING_IN = 0.5;
  private static final double AT_THE_APEX = 0.9;
  private static final double MOST_G = 4;
  private static final int FEWEST = 50;

  private record Sample(double lateralG, double longitudinalG) {}

  private final Path file;
  private final List<Sample> samples = new ArrayList<>();

  private LoggedCorners(Path file) {
    this.file = file;
  }

  /**
   * Reads the corners of a log: the turn-in, if anybody braked into one, and the apex.
   *
   * @param file text in UTF-8, columns divided by a tab, a semicolon or a comma; a decimal comma is
   *     understood where the comma divides nothing
   * @param lateral the name of the column with the lateral acceleration in g, either sign
   * @param longitudinal the name of the column with the longitudinal acceleration in g, negative
   *     when slowing
   * @throws RefusedInputException if there is no such file or column, a value is no number within
   *     -4 to 4 g, or there is too little cornering in it; the message names the file and the line
   */
  public static List<Corner> read(Path file, String lateral, String longitudinal) {
    LoggedCorners log = new LoggedCorners(file);
    log.read(lateral, longitudinal);
    return log.corners();
  }

  private List<Corner> corners() {
    double[] cornering =
        samples.stream()
            .mapToDouble(Sample::lateralG)
            .filter(lateralG -> lateralG > CORNERING_G)
            .toArray();
    if (cornering.length < FEWEST) {
      throw refused("there are fewer than " + FEWEST + " samples of cornering in it");
    }
    double hardest = band(cornering).high();
    List<Sample> turnIn =
        samples.stream()
            .filter(s -> s.longitudinalG() <= BRAKING_G && s.lateralG() >= TURNING_IN * hardest)
            .toList();
    List<Sample> apex =
        samples.stream().filter(s -> s.lateralG() >= AT_THE_APEX * hardest).toList();
    List<Corner> corners = new ArrayList<>();
    if (!turnIn.isEmpty()) {
      corners.add(corner(Corner.TURN_IN, turnIn));
    }
    corners.add(corner(Corner.APEX, apex));
    return List.copyOf(corners);
  }

  private static Corner corner(Corner like, List<Sample> samples) {
    return new Corner(
        like.name(),
        like.steerDeg(),
        median(samples, Sample::lateralG),
        median(samples, Sample::longitudinalG));
  }

  /** To a hundredth of a g, which no logger shows better. */
  private static double median(List<Sample> samples, ToDoubleFunction<Sample> quantity) {
    return Math.round(100 * band(samples.stream().mapToDouble(quantity).toArray()).mid()) / 100.0;
  }

  private static Band band(double[] values) {
    double[] alike = new double[values.length];
    Arrays.fill(alike, 1);
    return Band.of(values, alike);
  }

  private void read(String lateral, String longitudinal) {
    List<String> lines = lines();
    if (lines.isEmpty()) {
      throw refused("the file is empty");
    }
    String header = lines.get(0);
    String divider = header.indexOf('\t') >= 0 ? "\t" : header.indexOf(';') >= 0 ? ";" : ",";
    List<String> names = fields(header, divider);
    int lateralAt = position(names, lateral);
    int longitudinalAt = position(names, longitudinal);
    for (int i = 1; i < lines.size(); i++) {
      if (lines.get(i).isBlank()) {
        continue;
      }
      List<String> fields = fields(lines.get(i), divider);
      if (i == 1 && !isNumber(field(fields, lateralAt, i))) {
        // Some programs write the units below the names.
        continue;
      }
      samples.add(
          new Sample(
              Math.abs(number(field(fields, lateralAt, i), i)),
              number(field(fields, longitudinalAt, i), i)));
    }
  }

  private List<String> lines() {
    try {
      if (Files.size(file) > InputLimits.MAX_LOGGER_BYTES) {
        throw refused("the file is larger than 32 MB");
      }
      return Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (NoSuchFileException e) {
      throw refused("no such file");
    } catch (MalformedInputException e) {
      throw refused("this is not plain text (UTF-8)");
    } catch (IOException e) {
      throw refused("it cannot be read");
    }
  }

  private static List<String> fields(String line, String divider) {
    return Arrays.stream(line.split(divider, -1))
        .map(field -> field.replace("\"", "").strip())
        .map(field -> divider.equals(",") ? field : field.replace(',', '.'))
        .toList();
  }

  private int position(List<String> names, String wanted) {
    OptionalInt at = OptionalInt.empty();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equalsIgnoreCase(wanted.strip())) {
        at = OptionalInt.of(i);
      }
    }
    return at.orElseThrow(
        () ->
            refused(
                "there is no column "
                    + Printable.quoted(wanted)
                    + "; the header has "
                    + Printable.shown(String.join(", ", names), 200)));
  }

  private String field(List<String> fields, int at, int line) {
    if (at >= fields.size()) {
      throw refused("line " + (line + 1) + ": there are too few columns");
    }
    return fields.get(at);
  }

  private double number(String field, int line) {
    double value = isNumber(field) ? Double.parseDouble(field) : Double.NaN;
    if (!(Math.abs(value) <= MOST_G)) {
      throw refused(
          "line %d: %s is no acceleration from -4 to 4 g"
              .formatted(line + 1, Printable.quoted(field)));
    }
    return value;
  }

  private static boolean isNumber(String field) {
    return field.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
  }

  private RefusedInputException refused(String why) {
    return new RefusedInputException(file.toString(), why);
  }
}
