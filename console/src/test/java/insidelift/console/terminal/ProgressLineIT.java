package insidelift.console.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher;
import insidelift.console.Launcher.Outcome;
import insidelift.console.Paddock;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The audit takes some seconds on any machine: what is shown meanwhile. */
class ProgressLineIT {

  @TempDir private Path folder;

  @Test
  void aTerminalShowsHowLongItTakesAndNothingOfItStays() {
    try (Paddock audit = Paddock.in(folder).words("audit").rows(200).start()) {
      audit.waitFor("Audit of ");
      audit.settle();
      // The blanks are as many as the last line is long: one more from the tenth second on.
      assertThat(audit.raw()).contains("Working ... 1 s").containsPattern("\r {15,}\r");
      assertThat(String.join("\n", audit.all())).startsWith("Audit of ").doesNotContain("Working");
    }
  }

  @Test
  void aDumbTerminalGetsOnePlainLine() {
    try (Paddock audit = Paddock.in(folder).words("audit").rows(200).set("TERM", "dumb").start()) {
      audit.waitFor("Audit of ");
      audit.settle();
      assertThat(audit.all().get(0)).isEqualTo("Working ...");
      assertThat(String.join("\n", audit.all())).containsOnlyOnce("Working");
    }
  }

  @Test
  void aVerbThatOpensNoTerminalUnpacksNoLibrary() throws Exception {
    Path temporary = Files.createDirectory(folder.resolve("temporary"));
    Outcome audit =
        Launcher.with("audit").set("JAVA_TOOL_OPTIONS", "-Djava.io.tmpdir=" + temporary).run();
    assertThat(audit.out()).startsWith("Audit of ");
    assertThat(temporary).isEmptyDirectory();
  }

  @Test
  void aPipeGetsNothing() {
    Outcome audit = Launcher.with("audit").run();
    assertThat(audit.out()).startsWith("Audit of ");
    assertThat(audit.err()).isEmpty();
  }
}
