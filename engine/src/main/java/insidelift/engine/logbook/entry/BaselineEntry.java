package insidelift.engine.logbook.entry;

import insidelift.shared.situation.Baseline;
import java.util.Optional;
import java.util.Set;

/**
 * A kart's own good setting for one condition, as it was recorded once. The newest of a kart and a
 * condition counts; the older ones stay.
 *
 * @param kart the number of the kart's record
 * @param condition {@code dry} or {@code wet}
 * @param run the number of the run that it was good in, if it came from one
 * @param kept the setting, whole
 */
public record BaselineEntry(int kart, String condition, Optional<Integer> run, Baseline kept)
    implements Entry {

  static final Set<String> CONDITIONS = Set.of("dry", "wet");

  /**
   * @throws RefusedEntryException if the condition is no such word or a text is too long or no text
   */
  public BaselineEntry {
    if (!CONDITIONS.contains(condition)) {
      throw new RefusedEntryException("condition", "it must be dry or wet");
    }
    LogLimits.words("other levers", kept.levers());
    LogLimits.words("noted", kept.noted());
  }
}
