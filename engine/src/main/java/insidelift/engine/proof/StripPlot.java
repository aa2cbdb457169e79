package insidelift.engine.proof;

import insidelift.engine.proof.laps.CleanRun;
import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.engine.proof.laps.SetAside;
import insidelift.engine.proof.statistics.Sample;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The laps of all runs as strips over one time scale: {@code o} a lap, a digit so many in one place
 * ({@code #} for ten and more), {@code x} a lap set aside, {@code <} and {@code >} laps set aside
 * beyond the scale, {@code ^} the middle lap.
 */
final class StripPlot {

  /** The label, two bars and the strip make 78 columns. */
  private static final int WIDTH = 69;

  /** So that equal laps do not leave a scale without length. */
  private static final double LEAST_HALF_SECONDS = 0.05;

  private final double from;
  private final double to;

  private StripPlot(double from, double to) {
    this.from = from;
    this.to = to;
  }

  static List<String> of(List<CleanRun> runs) {
    double[] counted =
        runs.stream().flatMapToDouble(run -> Arrays.stream(run.seconds())).sorted().toArray();
    if (counted.length == 0) {
      return List.of("(no laps that count)");
    }
    double middle = (counted[0] + counted[counted.length - 1]) / 2;
    double half =
        Math.max(LEAST_HALF_SECONDS, 1.05 * (counted[counted.length - 1] - counted[0]) / 2);
    StripPlot plot = new StripPlot(middle - half, middle + half);
    List<String> lines = new ArrayList<>();
    lines.add(plot.scale());
    for (CleanRun run : runs) {
      lines.add(String.format(Locale.ROOT, "%-6s |%s|", run.role(), plot.strip(run)));
      lines.add(String.format(Locale.ROOT, "%-6s |%s|", "", plot.middle(run)));
    }
    lines.add("o lap  2-9 so many  x set aside  <> set aside, off the scale  ^ middle lap");
    return lines;
  }

  private int column(double seconds) {
    return (int) Math.round((seconds - from) / (to - from) * (WIDTH - 1));
  }

  private String strip(CleanRun run) {
    char[] strip = blank();
    for (SetAside lap : run.setAside()) {
      int column = column(lap.seconds());
      if (column < 0) {
        strip[0] = '<';
      } else if (column >= WIDTH) {
        strip[WIDTH - 1] = '>';
      } else {
        strip[column] = 'x';
      }
    }
    int[] counts = new int[WIDTH];
    for (Lap lap : run.laps()) {
      int column = column(lap.seconds());
      strip[column] = mark(++counts[column]);
    }
    return new String(strip);
  }

  private static char mark(int count) {
    if (count == 1) {
      return 'o';
    }
    return count < 10 ? (char) ('0' + count) : '#';
  }

  private String middle(CleanRun run) {
    char[] strip = blank();
    if (run.counted() > 0) {
      strip[column(Sample.median(run.seconds()))] = '^';
    }
    return new String(strip);
  }

  private String scale() {
    String low = String.format(Locale.ROOT, "%.2f", from);
    String middle = String.format(Locale.ROOT, "%.2f", (from + to) / 2);
    String high = String.format(Locale.ROOT, "%.2f s", to);
    StringBuilder line = new StringBuilder(" ".repeat(8)).append(low);
    line.append(" ".repeat(Math.max(1, 8 + (WIDTH - middle.length()) / 2 - line.length())));
    line.append(middle);
    line.append(" ".repeat(Math.max(1, 8 + WIDTH - high.length() - line.length())));
    return line.append(high).toString();
  }

  private static char[] blank() {
    char[] strip = new char[WIDTH];
    Arrays.fill(strip, ' ');
    return strip;
  }
}
