package insidelift.engine.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.shared.situation.CaseProblem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented season to explore: three karts, two drivers, two tracks, six days, dry, wet and
 * drying. Nobody drove it; its lap times are simulated.
 */
public final class DemoSeason {

  private static final String RESOURCE = "demo-season.jsonl";

  private DemoSeason() {}

  /**
   * Writes the season into the logbook of a folder.
   *
   * @throws LogbookProblem if that logbook holds records already, or cannot be written
   */
  public static Logbook load(Path folder) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      if (!writer.logbook().isEmpty()) {
        throw new LogbookProblem(
            "the demo season goes into an empty logbook, but the one in "
                + Disk.shown(folder)
                + " holds records already");
      }
      writer.append(entries());
      return writer.logbook();
    }
  }

  /** Its entries; they refer to each other by the numbers they get in a new logbook. */
  static List<Entry> entries() {
    JsonMapper mapper = JsonMapper.builder().build();
    List<Entry> entries = new ArrayList<>();
    try (InputStream in = DemoSeason.class.getResourceAsStream(RESOURCE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        JsonNode node = mapper.readTree(line);
        entries.add(EntryJson.read(node.path("kind").asText(), Place.line(node.path("entry"))));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the demo season of this build cannot be read", e);
    } catch (CaseProblem e) {
      throw new IllegalStateException("the demo season of this build is broken", e);
    }
    return entries;
  }
}
