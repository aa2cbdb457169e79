package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table in what-ships.md is what ships. */
class ShippedIT {

  private static final Pattern ROW =
      Pattern.compile(
          "\\| ([a-z0-9.-]+) \\| ([0-9.]+) \\| (some )?(\\d+) \\| (\\S+) \\| (\\S.*) \\|");

  /** Our own jars grow with every change: their sizes are told by and by. */
  private static final double OWN_MAY_DIFFER = 0.3;

  @Test
  void everyJarStandsInTheTableWithItsSizeItsLicenceAndItsReason() throws IOException {
    Map<String, Matcher> rows = new TreeMap<>();
    for (String line : Files.readAllLines(Launcher.CONSOLE.resolve("what-ships.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        rows.put(row.group(1) + "-" + row.group(2) + ".jar", row);
      }
    }
    List<Path> jars;
    try (Stream<Path> all = Files.list(Launcher.CONSOLE.resolve("target/lib"))) {
      jars = all.filter(path -> path.toString().endsWith(".jar")).toList();
    }
    assertThat(jars)
        .extracting(jar -> jar.getFileName().toString())
        .containsExactlyInAnyOrderElementsOf(rows.keySet());
    for (Path jar : jars) {
      Matcher row = rows.get(jar.getFileName().toString());
      double told = Double.parseDouble(row.group(4));
      double size = Files.size(jar) / 1000.0;
      boolean own = row.group(3) != null;
      assertThat(own).isEqualTo(row.group(1).startsWith("insidelift-"));
      assertThat(Math.abs(size - told))
          .as("%s has %.0f kB, told %.0f", jar.getFileName(), size, told)
          .isLessThanOrEqualTo(own ? OWN_MAY_DIFFER * told : 0.5);
    }
  }
}
