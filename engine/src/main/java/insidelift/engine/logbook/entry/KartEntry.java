package insidelift.engine.logbook.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A kart.
 *
 * @param name what the user calls it, at most 80 characters; no two karts share a name
 * @param answers what is always so and need not be asked again, by question: its class of power, or
 *     which levers can be moved; the words are the vocabulary's, which the caller has checked
 * @param note anything else worth keeping, at most 2,000 characters
 */
public record KartEntry(String name, Map<String, String> answers, String note) implements Entry {

  /**
   * @throws RefusedEntryException if a text is too long, blank or no text
   */
  public KartEntry {
    LogLimits.name("kart name", name);
    answers =
        Collections.unmodifiableMap(new LinkedHashMap<>(LogLimits.words("kart answers", answers)));
    LogLimits.text("kart note", note);
  }

  /** A kart of which only the name is known. */
  public static KartEntry named(String name) {
    return new KartEntry(name, Map.of(), "");
  }
}
