package insidelift.rules.indexer;

import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.RuleIndex;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The build step: rule folder in, rule index out. */
public final class WriteRuleIndex {

  private WriteRuleIndex() {}

  /**
   * Writes the index.
   *
   * @param args the folder of rule files and the file to write
   */
  public static void main(String[] args) throws IOException {
    RuleIndex index = new DrlIndexer(Vocabulary.load()).index(Path.of(args[0]));
    Path file = Path.of(args[1]);
    Files.createDirectories(file.getParent());
    JsonMapper.builder()
        .enable(SerializationFeature.INDENT_OUTPUT)
        .build()
        .writeValue(file.toFile(), index);
  }
}
