package insidelift.console.cli;

import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file that the user named. It appears whole or not at all. */
public final class OutputFile {

  private OutputFile() {}

  /**
   * Writes text as UTF-8.
   *
   * @param force whether a file of that name may be replaced
   * @throws CaseProblem if it cannot be written, in the words that stand behind its name
   */
  public static Path write(String name, String text, boolean force) throws CaseProblem {
    if (name.isBlank() || name.equals("-")) {
      throw new CaseProblem("this is no name for a file; name one, as in card.html");
    }
    Path file;
    try {
      file = Path.of(name);
    } catch (InvalidPathException e) {
      throw new CaseProblem("this cannot be the name of a file");
    }
    if (Files.isDirectory(file)) {
      throw new CaseProblem("this is a folder; name a file in it");
    }
    if (Files.exists(file) && !force) {
      throw new CaseProblem("this file exists already; --force replaces it");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new CaseProblem("there is no such folder; make it first, or name another");
    }
    try {
      write(file, folder, text);
    } catch (AccessDeniedException e) {
      throw new CaseProblem("there is no permission to write it; name another place");
    } catch (NoSuchFileException e) {
      throw new CaseProblem("there is no such folder; make it first, or name another");
    } catch (IOException e) {
      throw new CaseProblem("it cannot be written; is the disk full, or the name too long?");
    }
    return file;
  }

  private static void write(Path file, Path folder, String text) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      // A pipe or a device: there is nothing to replace.
      Files.writeString(file, text, StandardCharsets.UTF_8);
      return;
    }
    // Not a temporary file of the platform's: nobody but its owner could read the result.
    Path next = folder.resolve("." + file.getFileName() + ".next");
    // Nor through a link that somebody left in its place.
    Files.deleteIfExists(next);
    try {
      Files.writeString(next, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
      Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(next);
    }
  }
}
