package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.Plain;
import insidelift.shared.situation.Printable;
import java.util.List;
import java.util.StringTokenizer;
import java.util.stream.Collectors;

/**
 * A table as RFC 4180 has it: fields divided by commas, lines ended by CR LF, quotation marks where
 * they are needed and doubled within.
 */
final class Csv {

  /** What makes a spreadsheet take a cell for a formula, in half and full width. */
  private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private final StringBuilder text = new StringBuilder();

  Csv(String... header) {
    row(List.of(header));
  }

  void row(List<?> cells) {
    text.append(cells.stream().map(Csv::cell).collect(Collectors.joining(","))).append("\r\n");
  }

  /** A number as it is; a text so that no spreadsheet runs it. */
  private static String cell(Object value) {
    if (value instanceof Double number) {
      return Plain.number(number);
    }
    return value instanceof String outside ? quoted(harmless(visible(outside))) : value.toString();
  }

  /** Marks that turn the reading direction are spelt out; line ends and tabs stay. */
  private static String visible(String outside) {
    StringBuilder visible = new StringBuilder();
    for (StringTokenizer parts = new StringTokenizer(outside, "\n\t", true);
        parts.hasMoreTokens(); ) {
      String part = parts.nextToken();
      visible.append(part.equals("\n") || part.equals("\t") ? part : all(part));
    }
    return visible.toString();
  }

  private static String all(String part) {
    return Printable.shown(part, part.length());
  }

  /** An apostrophe before what would be a formula makes it text; the JSON export is exact. */
  static String harmless(String outside) {
    String visible = outside.strip();
    boolean formula =
        (!visible.isEmpty() && FORMULA.indexOf(visible.charAt(0)) >= 0)
            || outside.startsWith("\t")
            || outside.startsWith("\n");
    return formula ? "'" + outside : outside;
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
