package insidelift.console.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private ProgressLine on(boolean terminal, Map<String, String> environment) {
    return new ProgressLine(
        "Working", new PrintStream(err, true, StandardCharsets.UTF_8), environment, () -> terminal);
  }

  private String said() {
    return err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }

  @Test
  void aTerminalSeesOneLineThatIsErasedInTheEnd() {
    ProgressLine progress = on(true, Map.of("TERM", "xterm"));
    assertThat(progress.tick(1)).isTrue();
    assertThat(progress.tick(12)).isTrue();
    progress.close();
    assertThat(said()).isEqualTo("\rWorking ... 1 s\rWorking ... 12 s\r                \r");
    assertThat(progress.tick(13)).isFalse();
    progress.close();
    assertThat(said()).endsWith("12 s\r                \r");
  }

  @Test
  void aPipeGetsNothing() {
    ProgressLine progress = on(false, Map.of("TERM", "xterm"));
    assertThat(progress.tick(1)).isFalse();
    progress.close();
    assertThat(said()).isEmpty();
  }

  @Test
  void aTerminalThatOnlyGoesForwardAndAScreenReaderGetItOnce() {
    ProgressLine dumb = on(true, Map.of("TERM", "dumb"));
    assertThat(dumb.tick(1)).isFalse();
    dumb.close();
    assertThat(said()).isEqualTo("Working ...\n");
    ProgressLine aloud = on(true, Map.of("TERM", "xterm", "ACCESSIBLE", "1"));
    assertThat(aloud.tick(1)).isFalse();
    aloud.close();
    assertThat(said()).isEqualTo("Working ...\nWorking ...\n");
  }

  @Test
  void whatEndsWithinASecondLeavesNoTrace() {
    ProgressLine progress = on(true, Map.of("TERM", "xterm"));
    progress.close();
    assertThat(progress.tick(1)).isFalse();
    assertThat(said()).isEmpty();
  }

  @Test
  void theFirstByteOfAnOutputComesAfterTheLineIsGone() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ProgressLine begun = ProgressLine.begin("Working");
    try (OutputStream output = ProgressLine.before(out)) {
      output.write("done".getBytes(StandardCharsets.UTF_8));
    }
    assertThat(begun.tick(1)).isFalse();
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("done");
  }
}
