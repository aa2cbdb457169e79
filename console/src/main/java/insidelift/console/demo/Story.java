package insidelift.console.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;

/**
 * An invented day: what happened, what was told, and the laps that were driven. The story holds no
 * advice and no verdict.
 *
 * @param title its title
 * @param opening what it is and that it is invented
 * @param scenes its scenes, in order
 * @param closing its end
 */
public record Story(String title, String opening, List<Scene> scenes, String closing) {

  private static final String RESOURCE = "story.json";

  /**
   * A moment of the day.
   *
   * @param title when and where
   * @param told what happened
   * @param situation what is known then
   * @param drove what they did with the advice; empty if they did not drive
   * @param proof the laps before and after; empty if they did not drive
   */
  public record Scene(
      String title, String told, Situation situation, String drove, Optional<Proof> proof) {}

  /** The story of this build. */
  public static Story read(Vocabulary vocabulary) {
    try (InputStream in = Story.class.getResourceAsStream(RESOURCE)) {
      JsonNode root = JsonMapper.builder().build().readTree(in);
      List<Scene> scenes = new ArrayList<>();
      for (JsonNode scene : root.path("scenes")) {
        scenes.add(scene(scene, vocabulary));
      }
      return new Story(
          root.path("title").asText(),
          root.path("opening").asText(),
          List.copyOf(scenes),
          root.path("closing").asText());
    } catch (IOException e) {
      throw new UncheckedIOException("the story of this build cannot be read", e);
    } catch (CaseProblem e) {
      throw new IllegalStateException("the story of this build is broken", e);
    }
  }

  private static Scene scene(JsonNode node, Vocabulary vocabulary) throws IOException, CaseProblem {
    byte[] situation = node.path("case").toString().getBytes(StandardCharsets.UTF_8);
    return new Scene(
        node.path("title").asText(),
        node.path("told").asText(),
        new CaseReader(vocabulary).read(new ByteArrayInputStream(situation)),
        node.path("drove").asText(""),
        node.has("before") ? Optional.of(proof(node)) : Optional.empty());
  }

  private static Proof proof(JsonNode node) {
    return Proof.of(
        LapTimes.of("before", seconds(node.path("before"))),
        LapTimes.of("after", seconds(node.path("after"))),
        Optional.empty(),
        Feel.of(node.path("feel").asText()).orElse(Feel.UNKNOWN));
  }

  private static double[] seconds(JsonNode laps) {
    return StreamSupport.stream(laps.spliterator(), false)
        .mapToDouble(JsonNode::asDouble)
        .toArray();
  }
}
