package insidelift.engine.logbook.learning;

import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.proof.Proof;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was changed last on a kart with a driver at a track, and what came of it.
 *
 * @param change the answer to {@code last-change}
 * @param effect the answer to {@code last-effect}; empty where the clock cannot tell
 * @param date the day it was driven
 * @param run the number of the run that was the first with it
 * @param proof what the laps say of it; where it took the change before back, what they say of that
 *     one; empty where nothing can be compared
 */
public record LastChange(
    String change, Optional<String> effect, LocalDate date, int run, Optional<Proof> proof) {

  /** Where the answers come from, as in {@code your own log, 12 April}. */
  public String source() {
    return "your own log, " + Plain.day(date);
  }

  /** The answers for the next consultation, by question. */
  public Map<String, String> answers() {
    Map<String, String> answers = new LinkedHashMap<>();
    answers.put("last-change", change);
    effect.ifPresent(known -> answers.put("last-effect", known));
    return answers;
  }
}
