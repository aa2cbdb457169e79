package insidelift.engine.logbook.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A track.
 *
 * @param name what the user calls it, at most 80 characters; no two tracks share a name
 * @param answers what is always so and need not be asked again, by question: how fast its corners
 *     are; the words are the vocabulary's, which the caller has checked
 * @param note anything else worth keeping, at most 2,000 characters
 */
public record TrackEntry(String name, Map<String, String> answers, String note) implements Entry {

  /**
   * @throws RefusedEntryException if a text is too long, blank or no text
   */
  public TrackEntry {
    LogLimits.name("track name", name);
    answers =
        Collections.unmodifiableMap(new LinkedHashMap<>(LogLimits.words("track answers", answers)));
    LogLimits.text("track note", note);
  }

  /** A track of which only the name is known. */
  public static TrackEntry named(String name) {
    return new TrackEntry(name, Map.of(), "");
  }
}
