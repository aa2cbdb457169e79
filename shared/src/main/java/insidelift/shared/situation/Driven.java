package insidelift.shared.situation;

import insidelift.shared.Degrees;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A run before the one that is told of.
 *
 * @param camber the camber of both sides, if measured
 * @param caster the caster of both sides from the user's own neutral, if measured
 * @param answers what was said of it: {@code water}, the three parts of the corner, {@code
 *     last-change} and {@code last-effect}, as far as known
 * @param undo whether the change before it took back another
 */
public record Driven(
    Optional<Degrees> camber, Optional<Degrees> caster, Map<String, String> answers, boolean undo) {

  /** What may be told of a run before. */
  public static final List<String> TOLD =
      List.of(
          "water",
          "turn-in",
          "mid-corner",
          "exit",
          "steering-weight",
          "last-change",
          "last-effect");

  /** How many runs are kept: the oldest goes first. */
  public static final int KEPT = 6;

  /** Takes a copy of the answers, in their order. */
  public Driven {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
  }

  /**
   * The newest runs that are worth keeping, at most {@link #KEPT}: a run on which nothing was
   * changed and that was like the one before tells nothing and pushes out no other.
   *
   * @param runs all of them, newest last
   */
  public static List<Driven> newest(List<Driven> runs) {
    List<Driven> telling = new ArrayList<>();
    for (Driven run : runs) {
      if (telling.isEmpty() || run.changed() || !run.like(telling.get(telling.size() - 1))) {
        telling.add(run);
      }
    }
    return List.copyOf(telling.subList(Math.max(0, telling.size() - KEPT), telling.size()));
  }

  /** Whether its change took back that of the run before: its lever, its way back, after worse. */
  public boolean takesBack(Driven before) {
    String change = answers.getOrDefault("last-change", "");
    String back =
        change.endsWith("-more")
            ? change.replaceFirst("-more$", "-less")
            : change.replaceFirst("-less$", "-more");
    return !back.equals(change)
        && "worse".equals(before.answers.get("last-effect"))
        && back.equals(before.answers.get("last-change"));
  }

  private boolean changed() {
    return !answers.getOrDefault("last-change", "none").equals("none");
  }

  private boolean like(Driven before) {
    return camber.equals(before.camber)
        && caster.equals(before.caster)
        && TOLD.stream()
            .filter(question -> !question.startsWith("last-"))
            .allMatch(
                question -> Objects.equals(answers.get(question), before.answers.get(question)));
  }
}
