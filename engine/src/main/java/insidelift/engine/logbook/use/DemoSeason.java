package insidelift.engine.logbook.use;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.disk.Disk;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.file.Line;
import insidelift.engine.logbook.file.LineFormat;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.file.Scan;
import insidelift.engine.logbook.json.EntryJson;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented season to explore: three karts, two drivers, two tracks, six days, dry, wet and
 * drying. Nobody drove it; its lap times are simulated.
 */
public final class DemoSeason {

  private static final String RESOURCE = "demo-season.jsonl";

  /** When its lines count as written where nobody writes them. */
  private static final Instant DATE = Instant.EPOCH;

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

  /** The season as it would be read from a folder, without one. */
  public static Logbook book() {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    String at = DATE.toString();
    file.writeBytes(LineFormat.header(at));
    int number = 1;
    for (Entry entry : entries()) {
      number++;
      file.writeBytes(LineFormat.write(new Line(number, at, entry)));
    }
    try {
      return new Logbook(Scan.of(RESOURCE, file.toByteArray(), 0).records(), List.of());
    } catch (LogbookProblem e) {
      throw new IllegalStateException("the demo season of this build is broken", e);
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
        entries.add(
            EntryJson.read(node.path("kind").asText(), JsonPlace.whole(node.path("entry"))));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the demo season of this build cannot be read", e);
    } catch (CaseProblem e) {
      throw new IllegalStateException("the demo season of this build is broken", e);
    }
    return entries;
  }
}
