package insidelift.console.fuzz;

import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The inputs of a target: one a line, as a JSON string whose characters are the bytes (ISO 8859-1),
 * so that a difference between two states of the file can be read.
 */
final class Corpus {

  private static final Path FOLDER = Path.of("src", "test", "resources", "fuzz");

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private Corpus() {}

  private static Path file(Target target) {
    return FOLDER.resolve(target.id() + ".txt");
  }

  static List<byte[]> of(Target target) throws IOException {
    List<byte[]> inputs = new ArrayList<>();
    Path file = file(target);
    if (Files.exists(file)) {
      for (String line : Files.readAllLines(file)) {
        inputs.add(JSON.readValue(line, String.class).getBytes(StandardCharsets.ISO_8859_1));
      }
    }
    return inputs;
  }

  /** Writes inputs anew, the shortest first, none twice. */
  static int keep(Target target, Collection<byte[]> inputs) throws IOException {
    Set<String> lines = new LinkedHashSet<>();
    List<byte[]> sorted = new ArrayList<>(inputs);
    sorted.sort(Comparator.<byte[]>comparingInt(input -> input.length));
    for (byte[] input : sorted) {
      String text = new String(input, StandardCharsets.ISO_8859_1);
      // The fuzzer tries markers and paths of its own, which name the machine it ran on.
      if (!text.contains("jazzer") && !text.contains(Path.of("").toAbsolutePath().toString())) {
        lines.add(JSON.writeValueAsString(text));
      }
    }
    Files.createDirectories(FOLDER);
    Files.write(file(target), lines);
    return lines.size();
  }
}
