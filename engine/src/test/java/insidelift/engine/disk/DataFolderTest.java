package insidelift.engine.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {

  private static final String HOME = Path.of("home").toAbsolutePath().toString();
  private static final String DATA = Path.of("data").toAbsolutePath().toString();

  private static Path find(Map<String, String> environment, String system) throws LogbookProblem {
    return DataFolder.find(environment, system, HOME);
  }

  @Test
  void on_unix_it_is_below_the_home_folder() throws Exception {
    assertThat(find(Map.of(), "Linux"))
        .isEqualTo(Path.of(HOME, ".local", "share", "insidelift"))
        .isEqualTo(find(Map.of("XDG_DATA_HOME", "", "INSIDELIFT_DATA", ""), "Mac OS X"));
  }

  @Test
  void xdg_data_home_counts_on_unix_unless_it_is_relative() throws Exception {
    assertThat(find(Map.of("XDG_DATA_HOME", DATA), "Linux")).isEqualTo(Path.of(DATA, "insidelift"));
    assertThat(find(Map.of("XDG_DATA_HOME", "data"), "Linux"))
        .isEqualTo(Path.of(HOME, ".local", "share", "insidelift"));
  }

  @Test
  void home_is_where_HOME_says_and_else_where_the_system_does() throws Exception {
    Map<String, String> environment = Map.of("HOME", DATA);
    assertThat(DataFolder.find(environment, "Linux", "?"))
        .isEqualTo(Path.of(DATA, ".local", "share", "insidelift"))
        .isEqualTo(DataFolder.find(environment, "Linux", ""))
        .isEqualTo(DataFolder.find(environment, "Linux", HOME));
    assertThat(DataFolder.find(Map.of("HOME", "here"), "Linux", HOME))
        .isEqualTo(Path.of(HOME, ".local", "share", "insidelift"));
    // Not absolute, so it is never used: no folder called "?" is ever made.
    assertThat(DataFolder.find(Map.of(), "Linux", "?").isAbsolute()).isFalse();
  }

  @Test
  void on_windows_it_is_in_the_roaming_data() throws Exception {
    assertThat(find(Map.of("APPDATA", DATA, "XDG_DATA_HOME", HOME), "Windows 11"))
        .isEqualTo(Path.of(DATA, "insidelift"));
    assertThat(find(Map.of(), "Windows 11"))
        .isEqualTo(Path.of(HOME, "AppData", "Roaming", "insidelift"));
  }

  @Test
  void a_variable_of_its_own_overrides_all_and_may_be_relative() throws Exception {
    Map<String, String> all =
        Map.of("INSIDELIFT_DATA", "my/../log", "XDG_DATA_HOME", DATA, "APPDATA", DATA);
    assertThat(find(all, "Linux"))
        .isEqualTo(Path.of("log").toAbsolutePath())
        .isEqualTo(find(all, "Windows 11"));
  }

  @Test
  void a_name_that_no_folder_can_have_is_refused() {
    assertThatThrownBy(() -> find(Map.of("INSIDELIFT_DATA", "a\0b"), "Linux"))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage("INSIDELIFT_DATA: \"a\\u{0}b\" cannot be the name of a folder");
  }
}
