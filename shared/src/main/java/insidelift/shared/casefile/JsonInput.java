package insidelift.shared.casefile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one JSON document from outside, within {@link InputLimits}. */
public final class JsonInput {

  private static final Pattern DUPLICATE = Pattern.compile("Duplicate [Ff]ield '([^']*)'");

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(InputLimits.json())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .build();

  private JsonInput() {}

  /**
   * The document in a stream.
   *
   * @throws CaseProblem if it is too large, not UTF-8, not JSON, holds a key twice or nests deeply
   * @throws IOException if the stream fails
   */
  public static JsonPlace read(InputStream in) throws IOException, CaseProblem {
    byte[] bytes = in.readNBytes(InputLimits.MAX_BYTES + 1);
    if (bytes.length > InputLimits.MAX_BYTES) {
      throw new CaseProblem("the file is larger than 1 MB, which no case needs");
    }
    return read(decoded(bytes));
  }

  /** The document in a text. */
  static JsonPlace read(String text) throws CaseProblem {
    try {
      return JsonPlace.whole(tree(text.startsWith("\uFEFF") ? text.substring(1) : text));
    } catch (StreamConstraintsException e) {
      throw new CaseProblem(constraint(String.valueOf(e.getMessage())));
    } catch (JsonEOFException e) {
      throw new CaseProblem("the file ends in the middle" + place(e.getLocation()));
    } catch (JsonProcessingException e) {
      throw new CaseProblem(broken(e));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can be read", e);
    }
  }

  private static JsonNode tree(String text) throws IOException, CaseProblem {
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        throw new CaseProblem("the file is empty");
      }
      JsonNode tree = JsonTree.read(parser);
      if (parser.nextToken() != null) {
        throw new CaseProblem("this is not JSON" + place(parser.currentTokenLocation()));
      }
      return tree;
    }
  }

  private static String decoded(byte[] bytes) throws CaseProblem {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new CaseProblem("the file is not UTF-8 text");
    }
  }

  private static String broken(JsonProcessingException e) {
    Matcher twice = DUPLICATE.matcher(String.valueOf(e.getOriginalMessage()));
    if (twice.find()) {
      return "the key "
          + Printable.quoted(twice.group(1))
          + " stands twice"
          + place(e.getLocation());
    }
    return "this is not JSON" + place(e.getLocation());
  }

  private static String constraint(String message) {
    if (message.contains("depth")) {
      return "the file nests deeper than " + InputLimits.MAX_DEPTH + " levels";
    }
    if (message.contains("Number")) {
      return "a number has more than " + InputLimits.MAX_DIGITS + " digits";
    }
    return "a word is longer than " + InputLimits.MAX_STRING + " characters";
  }

  private static String place(JsonLocation location) {
    return location == null || location.getLineNr() < 1
        ? ""
        : " (line %d, column %d)".formatted(location.getLineNr(), location.getColumnNr());
  }
}
