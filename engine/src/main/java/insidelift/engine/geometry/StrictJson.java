package insidelift.engine.geometry;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.casefile.JsonInput;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a small JSON document within the limits that hold for every file from outside. */
public final class StrictJson {

  private StrictJson() {}

  public static JsonNode read(Path file) {
    if (Files.isDirectory(file)) {
      throw new RefusedInputException(file.toString(), "this is a folder, not a file");
    }
    if (!Files.isRegularFile(file)) {
      throw new RefusedInputException(file.toString(), "no such file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(in, file.toString());
    } catch (IOException e) {
      throw refused(file.toString(), "cannot be read", e);
    }
  }

  public static JsonNode read(InputStream in, String name) {
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
