package insidelift.engine.proof.laps;

import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns the bytes of one file into laps, or says in one sentence why not. */
final class LapTimesReader {

  private static final char NO_DELIMITER = '\0';
  private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");

  /** Minutes (optional), seconds, decimals (optional); the seconds of a minute stay below 60. */
  private static final Pattern TIME =
      Pattern.compile("(?:(\\d{1,2}):(?=[0-5]\\d(?:\\D|$)))?(\\d{1,4})(?:[.,](\\d{1,6}))?");

  private final String name;
  private final LapColumns columns;

  LapTimesReader(String name, LapColumns columns) {
    this.name = name;
    this.columns = columns;
  }

  private record Line(int number, String text) {}

  /** How the lines are divided, and which fields matter; {@code lap} is −1 where there is none. */
  private record Layout(char delimiter, int lap, int time, int columns, boolean header) {

    boolean decimalComma() {
      return delimiter == ';' || delimiter == '\t';
    }
  }

  LapTimes read(byte[] bytes) throws UnreadableLapTimes {
    if (bytes.length > InputLimits.MAX_LAP_BYTES) {
      throw UnreadableLapTimes.inFile(
          name, "the file is larger than 1 MB, which is no list of lap times");
    }
    List<Line> lines = lines(decode(bytes));
    if (lines.isEmpty()) {
      throw UnreadableLapTimes.inFile(name, "there are no lap times in it");
    }
    if (decimalCommas(lines)) {
      lines = lines.stream().map(l -> new Line(l.number(), l.text().replace(',', '.'))).toList();
    }
    Layout layout = layout(lines.get(0));
    List<Line> rows = layout.header() ? lines.subList(1, lines.size()) : lines;
    if (rows.isEmpty()) {
      throw UnreadableLapTimes.inFile(name, "there are no lap times below the header");
    }
    if (rows.size() > LapLimits.LAPS) {
      throw UnreadableLapTimes.inLine(
          name, rows.get(LapLimits.LAPS).number(), "a run has at most 500 laps");
    }
    List<Lap> laps = new ArrayList<>();
    for (Line row : rows) {
      laps.add(lap(row, layout, laps));
    }
    return new LapTimes(name, laps);
  }

  /**
   * Whether the commas of a list without a header stand in the times and not between two columns.
   *
   * @throws UnreadableLapTimes if they may be either
   */
  private boolean decimalCommas(List<Line> lines) throws UnreadableLapTimes {
    boolean times = true;
    boolean columns = true;
    int last = -1;
    String first = "";
    for (Line line : lines) {
      String text = line.text().strip();
      times &= inRange(parse(text));
      String[] pair = text.split(",", -1);
      columns &=
          pair.length == 2
              && WHOLE.matcher(pair[0].strip()).matches()
              && Integer.parseInt(pair[0].strip()) > last
              && inRange(parse(pair[1].strip()));
      last = columns ? Integer.parseInt(pair[0].strip()) : last;
      first = first.isEmpty() ? text : first;
    }
    if (times && columns) {
      throw UnreadableLapTimes.inFile(
          name,
          "%s may be lap %s in %s s or a lap of %s s; write the times with a point, or put ;"
                  .formatted(
                      Printable.quoted(first),
                      first.split(",", -1)[0],
                      first.split(",", -1)[1],
                      first.replace(',', '.'))
              + " between lap and time");
    }
    return times;
  }

  private static boolean inRange(OptionalDouble seconds) {
    return seconds.isPresent()
        && seconds.getAsDouble() >= LapLimits.SHORTEST_SECONDS
        && seconds.getAsDouble() <= LapLimits.LONGEST_SECONDS;
  }

  private String decode(byte[] bytes) throws UnreadableLapTimes {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw UnreadableLapTimes.inFile(name, "this is not plain text (UTF-8)");
    }
  }

  private static List<Line> lines(String text) {
    List<Line> lines = new ArrayList<>();
    int number = 0;
    for (String line : LINE_END.split(text, -1)) {
      number++;
      if (!line.isBlank() && !line.strip().startsWith("#")) {
        lines.add(new Line(number, line));
      }
    }
    return lines;
  }

  private Layout layout(Line first) throws UnreadableLapTimes {
    char delimiter = delimiter(first.text());
    List<String> fields = fields(first, delimiter);
    boolean header = fields.stream().noneMatch(f -> !f.isEmpty() && Character.isDigit(f.charAt(0)));
    if (!header) {
      boolean named = !columns.equals(LapColumns.STANDARD);
      if (named) {
        throw UnreadableLapTimes.inLine(
            name, first.number(), "columns were named, but there is no header to find them in");
      }
      if (fields.size() > 2) {
        throw UnreadableLapTimes.inLine(
            name,
            first.number(),
            "there are " + fields.size() + " columns and no header that says which is the time");
      }
      return new Layout(
          delimiter, fields.size() == 2 ? 0 : -1, fields.size() - 1, fields.size(), false);
    }
    int time = position(fields, columns.time());
    if (time < 0) {
      throw UnreadableLapTimes.inLine(
          name,
          first.number(),
          "there is no column "
              + Printable.quoted(columns.time())
              + "; the header is "
              + Printable.shown(first.text().strip()));
    }
    return new Layout(delimiter, position(fields, columns.lap()), time, fields.size(), true);
  }

  private static int position(List<String> header, String column) {
    for (int i = 0; i < header.size(); i++) {
      if (header.get(i).equalsIgnoreCase(column)) {
        return i;
      }
    }
    return -1;
  }

  private static char delimiter(String line) {
    for (char candidate : new char[] {'\t', ';', ','}) {
      if (line.indexOf(candidate) >= 0) {
        return candidate;
      }
    }
    return NO_DELIMITER;
  }

  /** The fields of a line; a field may stand in double quotes, as spreadsheets write it. */
  private List<String> fields(Line line, char delimiter) throws UnreadableLapTimes {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (char c : line.text().toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == delimiter && delimiter != NO_DELIMITER && !quoted) {
        fields.add(field.toString().strip());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    if (quoted) {
      throw UnreadableLapTimes.inLine(name, line.number(), "a quotation mark is not closed");
    }
    fields.add(field.toString().strip());
    return fields;
  }

  private Lap lap(Line row, Layout layout, List<Lap> before) throws UnreadableLapTimes {
    List<String> fields = fields(row, layout.delimiter());
    int needed = Math.max(layout.lap(), layout.time());
    if (fields.size() <= needed) {
      throw UnreadableLapTimes.inLine(
          name,
          row.number(),
          "there are too few columns: " + fields.size() + " where " + (needed + 1) + " are needed");
    }
    if (fields.stream().skip(layout.columns()).anyMatch(field -> !field.isEmpty())) {
      throw UnreadableLapTimes.inLine(
          name,
          row.number(),
          "there are more columns than in the first line"
              + (layout.decimalComma() ? "" : " (a decimal comma needs ; or a tab between them)"));
    }
    int last = before.isEmpty() ? -1 : before.get(before.size() - 1).number();
    int number = layout.lap() < 0 ? before.size() + 1 : number(row, fields.get(layout.lap()), last);
    return new Lap(number, seconds(row, fields.get(layout.time()), layout));
  }

  private int number(Line row, String text, int last) throws UnreadableLapTimes {
    if (!WHOLE.matcher(text).matches() || Integer.parseInt(text) > LapLimits.LAP_NUMBER) {
      throw UnreadableLapTimes.inLine(
          name, row.number(), Printable.quoted(text) + " is not a lap number from 0 to 9999");
    }
    int number = Integer.parseInt(text);
    if (number <= last) {
      throw UnreadableLapTimes.inLine(
          name,
          row.number(),
          "lap "
              + number
              + " follows lap "
              + last
              + ", but laps count upward (a decimal comma needs ; or a tab between the columns)");
    }
    return number;
  }

  private double seconds(Line row, String text, Layout layout) throws UnreadableLapTimes {
    OptionalDouble seconds = parse(text);
    if (seconds.isEmpty()) {
      throw UnreadableLapTimes.inLine(
          name,
          row.number(),
          Printable.quoted(text)
              + " is not a lap time such as 62.345 or 1:02.345"
              + (layout.decimalComma() ? " or 62,345" : ""));
    }
    double value = seconds.getAsDouble();
    if (value < LapLimits.SHORTEST_SECONDS || value > LapLimits.LONGEST_SECONDS) {
      throw UnreadableLapTimes.inLine(
          name,
          row.number(),
          Printable.quoted(text) + " is out of range: a lap takes from 10 s to 3600 s");
    }
    return value;
  }

  /** The seconds that a text such as {@code 1:02.345} stands for. */
  static OptionalDouble parse(String text) {
    Matcher time = TIME.matcher(text);
    if (!time.matches()) {
      return OptionalDouble.empty();
    }
    // Read the digits as one decimal number, so that 62.345 is the nearest double to 62.345.
    int minutes = time.group(1) == null ? 0 : Integer.parseInt(time.group(1));
    int whole = 60 * minutes + Integer.parseInt(time.group(2));
    String decimals = time.group(3) == null ? "0" : time.group(3);
    return OptionalDouble.of(Double.parseDouble(whole + "." + decimals));
  }
}
