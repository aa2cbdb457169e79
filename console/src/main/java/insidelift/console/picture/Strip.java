package insidelift.console.picture;

import java.util.Arrays;

/** One line of characters along a scale. */
final class Strip {

  private final char[] cells;
  private final double from;
  private final double to;

  /**
   * An empty strip.
   *
   * @param from what its left end stands for
   * @param to what its right end stands for
   */
  Strip(int width, double from, double to) {
    this.cells = new char[width];
    this.from = from;
    this.to = to;
    Arrays.fill(cells, ' ');
  }

  private int column(double value) {
    long column = Math.round((value - from) / (to - from) * (cells.length - 1));
    return (int) Math.max(0, Math.min(cells.length - 1, column));
  }

  /** Puts a mark; where another mark stands already, both are shown as {@code *}. */
  Strip mark(double value, char mark) {
    int at = column(value);
    cells[at] = cells[at] == ' ' || cells[at] == '|' || cells[at] == mark ? mark : '*';
    return this;
  }

  /** A line across at a value, under the marks. */
  Strip rule(double value) {
    int at = column(value);
    cells[at] = cells[at] == ' ' ? '|' : cells[at];
    return this;
  }

  /** A bar from the left end to a value; nothing at all for the left end itself. */
  Strip bar(double value, char filling) {
    if (value > from) {
      Arrays.fill(cells, 0, column(value) + 1, filling);
    }
    return this;
  }

  @Override
  public String toString() {
    return new String(cells);
  }
}
