package insidelift.engine.disk;

import insidelift.shared.situation.Printable;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where a user's own files belong: {@code INSIDELIFT_DATA} where it is set; else on Windows {@code
 * %APPDATA%\insidelift}; else {@code $XDG_DATA_HOME/insidelift} or {@code
 * ~/.local/share/insidelift}, where {@code ~} is {@code HOME} (XDG Base Directory Specification
 * 0.8, which has relative paths ignored).
 */
public final class DataFolder {

  /** The variable that overrides everything else. */
  public static final String OVERRIDE = "INSIDELIFT_DATA";

  private static final String NAME = "insidelift";

  private DataFolder() {}

  /**
   * The folder for this user on this machine; it need not exist yet.
   *
   * @throws LogbookProblem if a variable names no possible folder, or there is no home folder
   */
  public static Path find() throws LogbookProblem {
    return findIfAny()
        .orElseThrow(
            () ->
                new LogbookProblem(
                    "no home folder is known; set " + OVERRIDE + " to a folder of your own"));
  }

  /**
   * The same; empty where nothing names a folder and the user has no home.
   *
   * @throws LogbookProblem if a variable names no possible folder
   */
  public static Optional<Path> findIfAny() throws LogbookProblem {
    Path found =
        find(System.getenv(), System.getProperty("os.name"), System.getProperty("user.home", ""));
    return Optional.of(found).filter(Path::isAbsolute);
  }

  static Path find(Map<String, String> environment, String system, String home)
      throws LogbookProblem {
    String override = environment.getOrDefault(OVERRIDE, "");
    if (!override.isEmpty()) {
      return path(OVERRIDE, override).toAbsolutePath().normalize();
    }
    if (system.toLowerCase(Locale.ROOT).startsWith("windows")) {
      String roaming = environment.getOrDefault("APPDATA", "");
      return roaming.isEmpty()
          ? path("user.home", home).resolve("AppData").resolve("Roaming").resolve(NAME)
          : path("APPDATA", roaming).resolve(NAME);
    }
    // HOME is what the user says; Java's own answer is what the system's list of users says.
    String said = environment.getOrDefault("HOME", "");
    String own = path("HOME", said).isAbsolute() ? said : home;
    String data = environment.getOrDefault("XDG_DATA_HOME", "");
    if (!data.isEmpty() && path("XDG_DATA_HOME", data).isAbsolute()) {
      return path("XDG_DATA_HOME", data).resolve(NAME);
    }
    return path("user.home", own).resolve(".local").resolve("share").resolve(NAME);
  }

  private static Path path(String variable, String value) throws LogbookProblem {
    try {
      return Path.of(value);
    } catch (InvalidPathException e) {
      throw new LogbookProblem(
          variable + ": " + Printable.quoted(value) + " cannot be the name of a folder", e);
    }
  }
}
