package insidelift.shared.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the same library's reader of trees. */
class JsonTreeTest {

  private static final JsonMapper DATA_BINDING = JsonMapper.builder().build();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "[]",
        "\"\"",
        "null",
        "true",
        "-0",
        "2147483647",
        "2147483648",
        "-9223372036854775809",
        "1e3",
        "-0.0",
        "1.10",
        "1e400",
        "{\"a\": [1, {\"b\": null}, [], [[false]]], \"\": {\"\": 0.5}, \"c\": \"\\u001b\\\"\"}"
      })
  void isTheTreeThatDataBindingReads(String json) throws Exception {
    JsonNode read = JsonInput.read(json).node();
    assertThat(read).isEqualTo(DATA_BINDING.readTree(json));
    assertThat(read.toString()).isEqualTo(DATA_BINDING.readTree(json).toString());
  }
}
