package insidelift.engine.weighing;

import java.util.List;
import java.util.Map;

/**
 * What the crew is told after a run.
 *
 * @param answers the driver's answers, in the words of the vocabulary
 * @param stand where the kart stands, measured
 * @param before where it stood before the last change; null where it was not changed
 * @param baseline the kart's own good settings, by {@code dry} and {@code wet}
 * @param history the runs of the day before, newest last
 * @param minutes the minutes to the next run
 */
record Report(
    Map<String, String> answers,
    Stand stand,
    Stand before,
    Map<String, Stand> baseline,
    List<Past> history,
    int minutes) {

  /**
   * A run before.
   *
   * @param answers what was said of it
   * @param stand where the kart stood
   * @param undo whether the change before it took back another
   */
  record Past(Map<String, String> answers, Stand stand, boolean undo) {}

  boolean water() {
    return !answers.get("water").equals("dry");
  }
}
