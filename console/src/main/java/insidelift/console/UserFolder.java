package insidelift.console;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;

/** The folder that the user's own files are kept in. */
final class UserFolder {

  private UserFolder() {}

  /**
   * What {@code INSIDELIFT_DATA} names; else by the desktop's rules ({@code XDG_DATA_HOME}, {@code
   * %APPDATA%}); else a folder in the home folder.
   */
  static Path find(Map<String, String> environment, Properties system) {
    String own = environment.getOrDefault("INSIDELIFT_DATA", "");
    if (!own.isEmpty()) {
      return Path.of(own);
    }
    boolean windows = system.getProperty("os.name", "").startsWith("Windows");
    String base = environment.getOrDefault(windows ? "APPDATA" : "XDG_DATA_HOME", "");
    Path home = Path.of(system.getProperty("user.home", "."));
    if (!base.isEmpty()) {
      return Path.of(base).resolve("insidelift");
    }
    return windows
        ? home.resolve("AppData").resolve("Roaming").resolve("insidelift")
        : home.resolve(".local").resolve("share").resolve("insidelift");
  }
}
