package insidelift.engine.logbook.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.logbook.json.EntryJson;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.InputLimits;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * One line of the file: a JSON object that ends in {@code ,"check":"9a3b12cd"}}, the CRC-32 of the
 * bytes before that comma. The first line names the format and its version.
 */
public final class LineFormat {

  /** The version of the file that this build writes, and the newest that it reads. */
  static final int VERSION = 1;

  private static final String HEADER = "logbook";
  private static final String SEAL = "seal";
  private static final Set<String> KEYS = Set.of("n", "at", "kind", "entry", "check");
  private static final Set<String> HEADER_KEYS = Set.of("version", "about");
  private static final String ABOUT =
      "Insidelift's logbook: a record a line, only ever added to; n is the line, check its CRC-32";

  private static final byte[] BEGINNING = "{\"n\":".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] CHECK_KEY = ",\"check\":\"".getBytes(StandardCharsets.US_ASCII);
  private static final int CHECK_DIGITS = 8;
  private static final int CHECK_LENGTH = CHECK_KEY.length + CHECK_DIGITS + 2;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(JsonFactory.builder().streamReadConstraints(InputLimits.logLine()).build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .build();

  /** No file that may be read has room for more lines. */
  private static final int MAX_NUMBER = InputLimits.MAX_LOG_BYTES / CHECK_LENGTH;

  private LineFormat() {}

  /** The line as bytes, with its line end. */
  public static byte[] write(Line line) {
    return framed(
        line.number(),
        line.at(),
        EntryJson.kind(line.held().kind()),
        EntryJson.write(line.entry()));
  }

  /** The first line of a new file. */
  public static byte[] header(String at) {
    return framed(1, at, HEADER, EntryJson.object().put("version", VERSION).put("about", ABOUT));
  }

  private static byte[] framed(int number, String at, String kind, ObjectNode entry) {
    ObjectNode json = EntryJson.object().put("n", number).put("at", at).put("kind", kind);
    json.set("entry", entry);
    try {
      byte[] whole = MAPPER.writeValueAsBytes(json);
      int body = whole.length - 1;
      ByteBuffer line = ByteBuffer.allocate(body + CHECK_LENGTH + 1);
      line.put(whole, 0, body).put(CHECK_KEY);
      line.put(check(whole, 0, body).getBytes(StandardCharsets.US_ASCII));
      line.put((byte) '"').put((byte) '}').put((byte) '\n');
      return line.array();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an entry is plain numbers and text", e);
    }
  }

  /** The line that seals a logbook whose last line has this number. */
  static byte[] seal(int last, String at) {
    return framed(last, at, SEAL, EntryJson.object());
  }

  /**
   * Where the next line begins, or {@code to}. It is never within a line: there the quotation marks
   * of a text are escaped, and no entry has that key.
   */
  static int beginning(byte[] file, int from, int to) {
    int at = find(BEGINNING, file, from, to);
    return at < 0 ? to : at;
  }

  /** Where the first check that stands there ends, or {@code from} if there is none. */
  static int end(byte[] file, int from, int to) {
    int at = find(CHECK_KEY, file, from, to);
    return at < 0 ? from : Math.min(to, at + CHECK_LENGTH);
  }

  private static int find(byte[] what, byte[] file, int from, int to) {
    for (int i = from; i <= to - what.length; i++) {
      if (Arrays.equals(file, i, i + what.length, what, 0, what.length)) {
        return i;
      }
    }
    return -1;
  }

  /** The number that a line begins with, damaged or not. */
  static OptionalInt number(byte[] file, int from, int to) {
    if (find(BEGINNING, file, from, Math.min(to, from + BEGINNING.length)) < 0) {
      return OptionalInt.empty();
    }
    int number = 0;
    int at = from + BEGINNING.length;
    while (at < to && file[at] >= '0' && file[at] <= '9' && number <= MAX_NUMBER) {
      number = 10 * number + file[at++] - '0';
    }
    boolean ended = at < to && file[at] == ',';
    return ended && number > 0 && number <= MAX_NUMBER
        ? OptionalInt.of(number)
        : OptionalInt.empty();
  }

  /**
   * Whether these bytes are a line whose check is right. No beginning of a line passes, since the
   * quotation marks of a check within a text are escaped.
   */
  static boolean intact(byte[] file, int from, int to) {
    int body = to - CHECK_LENGTH;
    if (body <= from || file[to - 1] != '}' || file[to - 2] != '"') {
      return false;
    }
    for (int i = 0; i < CHECK_KEY.length; i++) {
      if (file[body + i] != CHECK_KEY[i]) {
        return false;
      }
    }
    String said =
        new String(file, body + CHECK_KEY.length, CHECK_DIGITS, StandardCharsets.US_ASCII);
    return said.equals(check(file, from, body));
  }

  /**
   * The version that the first line names.
   *
   * @throws CaseProblem if it is no first line of a logbook
   */
  static int version(byte[] file, int from, int to) throws CaseProblem {
    JsonPlace line = json(file, from, to);
    if (!line.need("kind").word().equals(HEADER)) {
      throw line.problem("it does not name the format");
    }
    JsonPlace entry = line.need("entry");
    int version = entry.need("version").integer();
    if (version == VERSION) {
      entry.object(HEADER_KEYS);
    }
    return version;
  }

  /**
   * The line that these bytes are; their check has been looked at. Of a run only what it is found
   * by is read: the rest is read from the same bytes when it is asked for.
   *
   * @throws CaseProblem if it is no line that this version writes
   */
  static Line read(byte[] file, int from, int to) throws CaseProblem {
    Optional<Line> run = run(file, from, to);
    Line line = run.isPresent() ? run.get() : whole(file, from, to);
    if (line.number() < 2 || line.number() > MAX_NUMBER) {
      throw new CaseProblem("no record can have the number " + line.number());
    }
    return line;
  }

  private static Line whole(byte[] file, int from, int to) throws CaseProblem {
    JsonPlace line = json(file, from, to).object(KEYS);
    return new Line(
        line.need("n").integer(),
        line.need("at").word(),
        EntryJson.read(line.need("kind").word(), line.need("entry")));
  }

  /** The line of a run whose keys stand in the order in which this version writes them. */
  private static Optional<Line> run(byte[] file, int from, int to) {
    try (JsonParser line = MAPPER.getFactory().createParser(file, from, to - from)) {
      line.nextToken();
      int number = integer(line, "n");
      String at = text(line, "at");
      if (!text(line, "kind").equals("run")
          || !"entry".equals(line.nextFieldName())
          || line.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      RunKey key =
          new RunKey(
              integer(line, "day"),
              integer(line, "kart"),
              integer(line, "driver"),
              integer(line, "run"));
      return Optional.of(
          new Line(number, at, RecordContent.run(key, () -> whole(file, from, to).entry())));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static int integer(JsonParser line, String key) throws IOException {
    boolean there =
        key.equals(line.nextFieldName()) && line.nextToken() == JsonToken.VALUE_NUMBER_INT;
    // A line in any other order is read as a whole, which finds what is wrong with it.
    if (!there) {
      throw new IOException(key);
    }
    return line.getIntValue();
  }

  private static String text(JsonParser line, String key) throws IOException {
    String text = key.equals(line.nextFieldName()) ? line.nextTextValue() : null;
    if (text == null) {
      throw new IOException(key);
    }
    return text;
  }

  private static JsonPlace json(byte[] file, int from, int to) throws CaseProblem {
    try {
      JsonNode node = MAPPER.readTree(file, from, to - from);
      return JsonPlace.whole(node);
    } catch (IOException e) {
      throw new CaseProblem("it is not JSON");
    }
  }

  private static String check(byte[] bytes, int from, int to) {
    CRC32 crc = new CRC32();
    crc.update(bytes, from, to - from);
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }
}
