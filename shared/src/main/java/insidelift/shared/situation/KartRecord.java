package insidelift.shared.situation;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is known of a kart beyond how its front end stands now.
 *
 * @param before how the front end stood before the last change, if it was measured
 * @param baseline its own good settings, by the condition that they are for: {@code dry}, {@code
 *     wet}
 * @param levers the other levers that stand at an end, or for which there is no other part, and the
 *     word for it
 */
public record KartRecord(
    Optional<FrontEnd> before, Map<String, Baseline> baseline, Map<String, String> levers) {

  /** The word for a lever that cannot be moved at all. */
  public static final String FIXED = "fixed";

  /** Nothing is known. */
  public static final KartRecord NONE = new KartRecord(Optional.empty(), Map.of(), Map.of());

  /** Takes a copy of the maps, in the order of their keys. */
  public KartRecord {
    baseline = Collections.unmodifiableMap(new TreeMap<>(baseline));
    levers = Collections.unmodifiableMap(new TreeMap<>(levers));
  }

  /** The same with its own good setting for a condition. */
  public KartRecord keeping(String condition, Baseline kept) {
    Map<String, Baseline> all = new TreeMap<>(baseline);
    all.put(condition, kept);
    return new KartRecord(before, all, levers);
  }
}
