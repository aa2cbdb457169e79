package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** {@code say}: a sentence on the command line. */
class SayIT {

  @Test
  void whatWasUnderstoodIsPrintedAsJson() throws IOException {
    Outcome said =
        Launcher.with(
                "say",
                "--json",
                "the tail steps out on the power, camber -1, 12 minutes left, it rained this morning")
            .run();
    JsonNode json = JsonMapper.builder().build().readTree(said.out());

    assertThat(said.exit()).isZero();
    assertThat(json.get("answers")).hasToString("{\"time-left\":\"short\",\"exit\":\"oversteer\"}");
    assertThat(json.get("numbers")).hasToString("{\"camber\":-1.0,\"minutes\":12.0}");
    assertThat(json.at("/leftOut/0/why").asText())
        .isEqualTo("it is about another time: say how it is now");
    assertThat(json.get("ask")).isEmpty();
  }

  @Test
  void whereThePartOfTheCornerIsMissingItIsAsked() throws IOException {
    Outcome said = Launcher.with("say", "--json", "it", "pushes").run();

    assertThat(JsonMapper.builder().build().readTree(said.out()).get("ask"))
        .hasToString("[\"phase\"]");
  }

  @Test
  void withoutASentenceItSaysSo() {
    Outcome said = Launcher.with("say").run();

    assertThat(said.exit()).isEqualTo(2);
    assertThat(said.err()).contains("SENTENCE");
  }
}
