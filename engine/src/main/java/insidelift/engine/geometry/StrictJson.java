package insidelift.engine.geometry;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Reads a small JSON document and refuses whatever is not strictly one: keys written twice,
 * anything after the end, and more than a kart can need.
 */
final class StrictJson {

  /** A kart file with every key takes about 600 bytes; a table of positions a few thousand. */
  private static final int MOST_BYTES = 64 * 1024;

  /** The deepest document here is a table row in a table in a side in a kart in a file. */
  private static final int DEEPEST = 8;

  /** The longest text is the name of a position. */
  private static final int LONGEST_TEXT = 200;

  /** A double needs at most 25 characters; users paste spreadsheets' 30. */
  private static final int LONGEST_NUMBER = 40;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxDocumentLength(MOST_BYTES)
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(LONGEST_TEXT)
                          .maxNameLength(LONGEST_TEXT)
                          .maxNumberLength(LONGEST_NUMBER)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private StrictJson() {}

  static JsonNode read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new RefusedInputException(file.toString(), "no such file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(in, file.toString());
    } catch (IOException e) {
      throw refused(file.toString(), "cannot be read", e);
    }
  }

  static JsonNode read(InputStream in, String name) {
    try {
      // One byte more than allowed tells a document of exactly that size from a longer one.
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new RefusedInputException(name, "longer than " + MOST_BYTES + " bytes");
      }
      JsonNode root = MAPPER.readTree(bytes);
      if (root == null || root.isMissingNode()) {
        throw new RefusedInputException(name, "empty");
      }
      return root;
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      String where =
          at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
      throw refused(name, "not valid JSON: " + where + firstLine(e.getOriginalMessage()), e);
    } catch (IOException e) {
      throw refused(name, "cannot be read", e);
    }
  }

  private static String firstLine(String message) {
    String line = message.lines().findFirst().orElse("");
    // What follows tells a programmer which switch to throw.
    int advice = line.indexOf(": enable ");
    return advice < 0 ? line : line.substring(0, advice);
  }

  private static RefusedInputException refused(String place, String reason, Exception cause) {
    RefusedInputException refused = new RefusedInputException(place, reason);
    refused.initCause(cause);
    return refused;
  }
}
