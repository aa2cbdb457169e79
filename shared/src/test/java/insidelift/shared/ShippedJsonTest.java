package insidelift.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is read token by token, held against the same file read by data binding. */
class ShippedJsonTest {

  private static final String WORDS = "/insidelift/vocabulary.json";

  @Test
  void aFileSaysTheSameAsWhenItIsBound() throws IOException {
    ShippedJson read = ShippedJson.read(Vocabulary.class, WORDS);
    JsonNode bound;
    try (InputStream in = Vocabulary.class.getResourceAsStream(WORDS)) {
      bound = JsonMapper.builder().build().readTree(in);
    }
    List<ShippedJson> questions = read.objects("questions");
    assertThat(questions).hasSize(bound.get("questions").size());
    for (int q = 0; q < questions.size(); q++) {
      ShippedJson question = questions.get(q);
      JsonNode same = bound.get("questions").get(q);
      assertThat(question.text("ask")).isEqualTo(same.get("ask").asText());
      assertThat(question.number("effort")).isEqualTo(same.get("effort").asDouble());
      assertThat(question.has("number")).isEqualTo(same.has("number"));
      assertThat(question.texts("notes")).hasSize(same.get("notes").size());
      List<ShippedJson> values = question.objects("values");
      assertThat(values).hasSize(same.get("values").size());
      for (int v = 0; v < values.size(); v++) {
        JsonNode value = same.get("values").get(v);
        assertThat(values.get(v).text("words")).isEqualTo(value.get("words").asText());
        assertThat(values.get(v).flag("fault")).isEqualTo(value.path("fault").asBoolean());
        assertThat(values.get(v).number("chance"))
            .isEqualTo(value.has("chance") ? value.get("chance").asDouble() : null);
      }
    }
  }

  @Test
  void whatIsNotThereIsNullOrFalse() {
    ShippedJson read = ShippedJson.read(Vocabulary.class, WORDS);
    assertThat(read.has("nothing")).isFalse();
    assertThat(read.text("nothing")).isNull();
    assertThat(read.number("nothing")).isNull();
    assertThat(read.at("nothing")).isNull();
    assertThat(read.flag("nothing")).isFalse();
  }

  @Test
  void aBuildWithoutTheFileOrWithAnotherKindOfFileSaysSo() {
    assertThatThrownBy(() -> ShippedJson.read(Vocabulary.class, "/insidelift/none.json"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("this build holds no \"/insidelift/none.json\": build it again");
    assertThatThrownBy(
            () -> ShippedJson.read(Vocabulary.class, "/insidelift/shared/Vocabulary.class"))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessage("\"/insidelift/shared/Vocabulary.class\" of this build cannot be read");
  }
}
