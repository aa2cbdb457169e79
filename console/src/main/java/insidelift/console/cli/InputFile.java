package insidelift.console.cli;

import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Opens a file that the user named, or standard input for {@code -}. */
public final class InputFile {

  /** What reads the opened file. */
  public interface Reader<T> {
    T read(InputStream in) throws IOException, CaseProblem;
  }

  private InputFile() {}

  public static <T> T read(String name, Reader<T> reader) throws CaseProblem {
    try {
      if (name.equals("-")) {
        return reader.read(System.in);
      }
      Path path = Path.of(name);
      if (Files.isDirectory(path)) {
        throw new CaseProblem("this is a folder, not a file");
      }
      try (InputStream in = Files.newInputStream(path)) {
        return reader.read(in);
      }
    } catch (NoSuchFileException | InvalidPathException e) {
      throw new CaseProblem("there is no such file");
    } catch (AccessDeniedException e) {
      throw new CaseProblem("there is no permission to read it");
    } catch (IOException e) {
      throw new CaseProblem("it cannot be read");
    }
  }
}
