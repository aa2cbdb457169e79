package insidelift.shared.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JsonOutputTest {

  @Test
  void whateverStandsInATextTheJsonIsPrintableAsciiAndExact() throws Exception {
    String all =
        IntStream.rangeClosed(0, 0xffff)
            .filter(point -> point < 0xd800 || point > 0xdfff)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .append("\uD83D\uDE00")
            .toString();
    String json = JsonOutput.pretty(List.of(all));
    assertThat(json.replace("\r\n", "\n").chars())
        .allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'));
    assertThat(JsonMapper.builder().build().readTree(json).get(0).textValue()).isEqualTo(all);
  }

  @Test
  void whatIsNoPlainValueIsAFaultOfTheProgram() {
    assertThatThrownBy(() -> JsonOutput.pretty(new Object()))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("what is written is plain words and numbers");
  }
}
