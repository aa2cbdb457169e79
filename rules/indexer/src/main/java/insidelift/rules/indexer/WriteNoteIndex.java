package insidelift.rules.indexer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The build step that lists the notes, since a jar cannot be asked what it holds. */
public final class WriteNoteIndex {

  private static final List<String> FOLDERS =
      List.of("terms", "checks", "claims", "deciders", "levers", "job", "lessons");

  private WriteNoteIndex() {}

  /**
   * Writes the list.
   *
   * @param args the folder of notes and the file to write
   */
  public static void main(String[] args) throws IOException {
    Path notes = Path.of(args[0]);
    StringBuilder list = new StringBuilder();
    for (String folder : FOLDERS) {
      try (Stream<Path> files = Files.list(notes.resolve(folder))) {
        files
            .map(file -> file.getFileName().toString())
            .filter(name -> name.endsWith(".md"))
            .sorted()
            .forEach(name -> list.append(folder).append('/').append(name).append('\n'));
      }
    }
    Path file = Path.of(args[1]);
    Files.createDirectories(file.getParent());
    Files.writeString(file, list);
  }
}
