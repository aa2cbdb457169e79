package insidelift.engine.geometry.plausible;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.kart.Corner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A track made up: what a log of it must come to is known beforehand. */
class LoggedCornersTest {

  @TempDir private Path folder;

  private Path log(String divider, boolean decimalComma, String units) throws IOException {
    StringBuilder text = new StringBuilder("Time;GLat;GLong\n".replace(";", divider) + units);
    for (int i = 0; i < 100; i++) {
      row(text, divider, decimalComma, i, 0.02, 0.3);
      // Left and right in turn; one kerb that must not decide.
      row(text, divider, decimalComma, i, i % 2 == 0 ? 0.9 : -0.9, -0.6);
      row(text, divider, decimalComma, i, i == 50 ? 3.5 : 1.4, -0.1);
    }
    Path file = folder.resolve("log.csv");
    Files.writeString(file, text);
    return file;
  }

  private static void row(
      StringBuilder text, String divider, boolean decimalComma, double... values) {
    StringBuilder line = new StringBuilder();
    for (double value : values) {
      line.append(line.isEmpty() ? "" : divider)
          .append(String.format(Locale.ROOT, "%.2f", value).replace('.', decimalComma ? ',' : '.'));
    }
    text.append(line).append('\n');
  }

  @Test
  void turnInAndApexAreThoseOfTheTrackWithTheUsualSteer() throws IOException {
    List<Corner> expected =
        List.of(
            new Corner("turn-in on the brake", 12, 0.9, -0.6), new Corner("apex", 8, 1.4, -0.1));

    assertThat(LoggedCorners.read(log(",", false, ""), "glat", "GLong")).isEqualTo(expected);
    assertThat(LoggedCorners.read(log(";", true, "s;g;g\n"), "GLat", "GLong")).isEqualTo(expected);
    assertThat(LoggedCorners.read(log("\t", true, ""), "GLat", "GLong")).isEqualTo(expected);
  }

  @Test
  void withoutBrakingThereIsNoTurnIn() throws IOException {
    Path file = folder.resolve("flat.csv");
    Files.writeString(file, "GLat,GLong\n" + "1.2,0.1\n".repeat(60));

    assertThat(LoggedCorners.read(file, "GLat", "GLong"))
        .extracting(Corner::name)
        .containsExactly("apex");
  }

  @Test
  void whatCannotBeReadIsRefusedWithFileAndLine() throws IOException {
    Path file = log(",", false, "");

    refused(file, "Lateral", "there is no column \"Lateral\"; the header has Time, GLat, GLong");
    refused(folder.resolve("none.csv"), "GLat", "no such file");
    Files.writeString(file, "GLat,GLong\n0.5,0\n9.81,0\n");
    refused(file, "GLat", "line 3: \"9.81\" is no acceleration from -4 to 4 g");
    Files.writeString(file, "GLat,GLong\n0.5,0\n0.5\n");
    refused(file, "GLat", "line 3: there are too few columns");
    Files.writeString(file, "GLat,GLong\n0.5,0\n");
    refused(file, "GLat", "there are fewer than 50 samples of cornering in it");
    Files.writeString(file, "");
    refused(file, "GLat", "the file is empty");
    Files.write(file, new byte[] {'G', (byte) 0xff, '\n'});
    refused(file, "GLat", "this is not plain text (UTF-8)");
  }

  private static void refused(Path file, String lateral, String why) {
    assertThatThrownBy(() -> LoggedCorners.read(file, lateral, "GLong"))
        .isInstanceOf(RefusedInputException.class)
        .hasMessage(file + ": " + why);
  }
}
