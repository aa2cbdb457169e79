package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher does in a fresh clone, with a stand-in for Maven on the path. */
class FirstBuildIT {

  @TempDir private Path folder;
  private Path launcher;

  @BeforeEach
  void freshClone() throws IOException {
    Path console = Files.createDirectories(folder.resolve("fresh clone/console"));
    launcher = Files.copy(Launcher.CONSOLE.resolve("insidelift"), console.resolve("insidelift"));
    Files.createDirectory(folder.resolve("bin"));
  }

  @Test
  void aFreshCloneIsBuiltOnceThenStarted() {
    // The stand-in builds nothing: it lends the jars of this build.
    maven(
        """
        echo "in $(pwd): $*" > "%s"
        mkdir -p console/target
        ln -s "%s" console/target/lib
        """
            .formatted(folder.resolve("called"), Launcher.CONSOLE.resolve("target/lib")));
    Outcome first = run();
    assertThat(first.err()).isEqualTo("Building Insidelift once; this takes a minute or two ...\n");
    assertThat(first.exit()).isZero();
    assertThat(first.out()).isEqualTo("insidelift 0.1.0\n");
    assertThat(folder.resolve("called"))
        .content()
        .isEqualTo(
            "in %s: -B -q -Dmaven.test.skip=true package\n"
                .formatted(folder.resolve("fresh clone")));
    Outcome second = run();
    assertThat(second.err()).isEmpty();
    assertThat(second.out()).isEqualTo("insidelift 0.1.0\n");
  }

  @Test
  void aBuildThatFailsIsSaidWithItsLastLines() {
    maven("echo 'the disk is full'; exit 1\n");
    Outcome outcome = run();
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .isEqualTo(
            """
            Building Insidelift once; this takes a minute or two ...
            insidelift: the build failed; its last lines:
            the disk is full
            """);
  }

  private void maven(String body) {
    Path maven = Launcher.file(folder.resolve("bin"), "mvn", "#!/bin/sh\nset -eu\n" + body);
    assertThat(maven.toFile().setExecutable(true)).isTrue();
  }

  private Outcome run() {
    return Launcher.at(launcher, "--version")
        .set("PATH", folder.resolve("bin") + ":" + System.getenv("PATH"))
        .run();
  }
}
