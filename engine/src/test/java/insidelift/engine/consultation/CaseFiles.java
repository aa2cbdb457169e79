package insidelift.engine.consultation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.CaseReader;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The files of cases: each case a situation in the form of a case file, and what comes of it. */
final class CaseFiles {

  static final Path FAMILIES = Path.of("..", "rules", "cases", "families");
  static final Path WHOLE = Path.of("..", "rules", "cases", "whole");

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private CaseFiles() {}

  /** One case of a file. */
  record Entry(String file, JsonNode node) {

    String name() {
      return node.path("name").asText();
    }

    List<String> sources() {
      return List.of(node.path("source").asText().split(", "));
    }

    List<String> words(String key) {
      List<String> words = new ArrayList<>();
      node.path(key).forEach(word -> words.add(word.asText()));
      return words;
    }

    Situation situation(Vocabulary vocabulary) {
      ObjectNode file = MAPPER.createObjectNode().put("schema", CaseReader.SCHEMA);
      file.set("answers", node.path("answers"));
      if (node.has("kart")) {
        file.set("kart", node.get("kart"));
      }
      try {
        return new CaseReader(vocabulary).read(file.toString());
      } catch (CaseProblem e) {
        throw new IllegalArgumentException(name() + ": " + e.getMessage(), e);
      }
    }
  }

  static List<Entry> read(Path folder) {
    List<Entry> entries = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString().replace(".json", "");
        MAPPER.readTree(file.toFile()).forEach(node -> entries.add(new Entry(name, node)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return entries;
  }
}
