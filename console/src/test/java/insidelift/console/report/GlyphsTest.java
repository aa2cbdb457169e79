package insidelift.console.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GlyphsTest {

  private static final String LINE = "+1.0° ±0.25° at 8.6 N·m";

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "ISO-8859-1", "windows-1252"})
  void anEncodingThatHasTheSignsShowsThem(String charset) {
    assertThat(Glyphs.forOutput(Charset.forName(charset)).fit(LINE)).isEqualTo(LINE);
  }

  @Test
  void anEncodingWithoutThemGetsWords() {
    assertThat(Glyphs.forOutput(StandardCharsets.US_ASCII).fit(List.of(LINE)))
        .containsExactly("+1.0 deg +/-0.25 deg at 8.6 N m");
    assertThat(Glyphs.forOutput(StandardCharsets.US_ASCII).fit("61 °C or 142 °F, 5° of camber"))
        .isEqualTo("61 deg C or 142 deg F, 5 deg of camber");
  }

  @ParameterizedTest
  @ValueSource(strings = {"IBM850", "IBM437"})
  void theOldWindowsConsolesLoseNothing(String charset) {
    String fitted = Glyphs.forOutput(Charset.forName(charset)).fit(LINE);
    assertThat(Charset.forName(charset).newEncoder().canEncode(fitted)).isTrue();
  }
}
