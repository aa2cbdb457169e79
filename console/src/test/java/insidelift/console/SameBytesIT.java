package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Two clones of one state, in folders of different names, build the same jars to the byte. */
@EnabledIfSystemProperty(named = "reproducible", matches = "true")
class SameBytesIT {

  @TempDir private Path folder;

  @Test
  void twoClonesBuildTheSameBytes() throws Exception {
    Map<String, String> one = built(folder.resolve("one"));
    Map<String, String> other = built(folder.resolve("another-and-deeper").resolve("clone"));
    one.forEach((jar, sum) -> System.out.println(sum + "  " + jar));
    assertThat(one).hasSizeGreaterThan(30).isEqualTo(other);
  }

  private static Map<String, String> built(Path clone) throws Exception {
    Path root = Launcher.CONSOLE.getParent();
    run(root, "git", "clone", "-q", root.toString(), clone.toString());
    run(clone, "mvn", "-B", "-q", "-o", "-Dmaven.test.skip=true", "package");
    Map<String, String> sums = new TreeMap<>();
    try (Stream<Path> jars = Files.list(clone.resolve("console/target/lib"))) {
      for (Path jar : jars.filter(path -> path.toString().endsWith(".jar")).toList()) {
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar));
        sums.put(jar.getFileName().toString(), HexFormat.of().formatHex(sum));
      }
    }
    return sums;
  }

  private static void run(Path where, String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).directory(where.toFile()).inheritIO().start();
    assertThat(process.waitFor(15, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(String.join(" ", command)).isZero();
  }
}
