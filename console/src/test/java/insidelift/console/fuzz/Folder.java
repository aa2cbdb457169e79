package insidelift.console.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder for what is only read from a folder; its files are written anew for each input. */
final class Folder {

  private static final ThreadLocal<Path> OWN = ThreadLocal.withInitial(Folder::make);

  private Folder() {}

  private static Path make() {
    try {
      Path folder = Files.createTempDirectory("read");
      folder.toFile().deleteOnExit();
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The folder, with a file of that content in it. */
  static Path with(String name, byte[] content) throws IOException {
    Path file = OWN.get().resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, content);
    file.toFile().deleteOnExit();
    return OWN.get();
  }
}
