package insidelift.engine.logbook.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A driver.
 *
 * @param name the name or nickname, at most 80 characters; no two drivers share a name
 * @param answers what is always so and need not be asked again, by question: the driver's strength;
 *     the words are the vocabulary's, which the caller has checked
 * @param note anything else worth keeping, at most 2,000 characters
 */
public record DriverEntry(String name, Map<String, String> answers, String note) implements Entry {

  /**
   * @throws RefusedEntryException if a text is too long, blank or no text
   */
  public DriverEntry {
    LogLimits.name("driver name", name);
    answers =
        Collections.unmodifiableMap(
            new LinkedHashMap<>(LogLimits.words("driver answers", answers)));
    LogLimits.text("driver note", note);
  }

  /** A driver of which only the name is known. */
  public static DriverEntry named(String name) {
    return new DriverEntry(name, Map.of(), "");
  }
}
