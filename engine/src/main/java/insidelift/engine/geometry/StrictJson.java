package insidelift.engine.geometry;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.casefile.JsonInput;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;

/** Reads a small JSON document within the limits that hold for every file from outside. */
public final class StrictJson {

  private StrictJson() {}

  /**
   * What a file holds, made by a reader; whatever is refused is refused by the file's name.
   *
   * @throws RefusedInputException if it cannot be read, is not strict JSON, or the reader refuses
   *     it
   */
  public static <T> T read(Path file, Function<JsonNode, T> reader) {
    return made(node(file), file.toString(), reader);
  }

  /** The same from a stream, which stays open and is called by a name. */
  public static <T> T read(InputStream in, String name, Function<JsonNode, T> reader) {
    return made(node(in, name), name, reader);
  }

  private static <T> T made(JsonNode node, String name, Function<JsonNode, T> reader) {
    try {
      return reader.apply(node);
    } catch (RefusedInputException e) {
      throw refused(name, e.getMessage(), e);
    }
  }

  private static JsonNode node(Path file) {
    if (Files.isDirectory(file)) {
      throw new RefusedInputException(file.toString(), "this is a folder, not a file");
    }
    if (!Files.isRegularFile(file)) {
      throw new RefusedInputException(file.toString(), "no such file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return node(in, file.toString());
    } catch (IOException e) {
      throw refused(file.toString(), "cannot be read", e);
    }
  }

  private static JsonNode node(InputStream in, String name) {
    try {
      return JsonInput.read(in).node();
    } catch (CaseProblem e) {
      throw refused(name, e.getMessage(), e);
    } catch (IOException e) {
      throw refused(name, "cannot be read", e);
    }
  }

  private static RefusedInputException refused(String place, String reason, Exception cause) {
    RefusedInputException refused = new RefusedInputException(place, reason);
    refused.initCause(cause);
    return refused;
  }
}
