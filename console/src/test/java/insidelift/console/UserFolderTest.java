package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class UserFolderTest {

  @Test
  void theFolderThatIsNamedComesFirst() {
    assertThat(
            UserFolder.find(
                Map.of("INSIDELIFT_DATA", "/mine", "XDG_DATA_HOME", "/xdg"), on("Linux")))
        .isEqualTo(Path.of("/mine"));
  }

  @Test
  void elseTheDesktopSaysWhere() {
    assertThat(UserFolder.find(Map.of("XDG_DATA_HOME", "/xdg", "APPDATA", "/app"), on("Linux")))
        .isEqualTo(Path.of("/xdg/insidelift"));
    assertThat(
            UserFolder.find(Map.of("XDG_DATA_HOME", "/xdg", "APPDATA", "/app"), on("Windows 11")))
        .isEqualTo(Path.of("/app/insidelift"));
  }

  @Test
  void elseItIsInTheHomeFolder() {
    assertThat(UserFolder.find(Map.of("INSIDELIFT_DATA", ""), on("Linux")))
        .isEqualTo(Path.of("/home/racer/.local/share/insidelift"));
    assertThat(UserFolder.find(Map.of("APPDATA", ""), on("Windows 11")))
        .isEqualTo(Path.of("/home/racer/AppData/Roaming/insidelift"));
  }

  private static Properties on(String system) {
    Properties properties = new Properties();
    properties.setProperty("os.name", system);
    properties.setProperty("user.home", "/home/racer");
    return properties;
  }
}
