package insidelift.engine.logbook.learning;

import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.Shift;
import insidelift.engine.proof.laps.LapTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A change between two runs in a row, of one kart with one driver on one day, and what the clock
 * says of it.
 *
 * @param before the run on the old setting
 * @param after the run on the new one
 * @param change what was changed, as an answer to {@code last-change}; never {@code none}
 * @param proof the proof; empty where the conditions moved too much for any clock to tell
 * @param effect what came of it
 */
public record DrivenChange(
    Numbered<RunEntry> before,
    Numbered<RunEntry> after,
    String change,
    Optional<Proof> proof,
    Effect effect) {

  /** What a change came to. */
  public enum Effect {
    /** The laps were quicker beyond chance and drift. */
    BETTER,
    /** Whatever the laps changed by, it is too little to matter. */
    SAME,
    /** The laps were slower beyond chance and drift. */
    WORSE,
    /** The clock cannot tell. */
    UNTOLD;

    /** The effect of taking back what had this effect. */
    Effect ofUndoing() {
      return switch (this) {
        case BETTER -> WORSE;
        case WORSE -> BETTER;
        case SAME, UNTOLD -> this;
      };
    }
  }

  /** Conditions that must be the same in both runs, where both tell them. */
  private static final List<String> CONDITIONS = List.of("water", "tyres", "tyre-life", "tyre-set");

  private static final Set<String> MOVING = Set.of("drying", "raining");

  /** A shift that is surely smaller than this is no difference; the proof's own judgement, in s. */
  private static final double WORTH_SECONDS = 0.15;

  /**
   * The changes of a kart with a driver at a track, in order.
   *
   * @param runs its runs in the order driven
   */
  public static List<DrivenChange> of(List<Numbered<RunEntry>> runs) {
    List<DrivenChange> trials = new ArrayList<>();
    for (int i = 1; i < runs.size(); i++) {
      Optional<String> change = change(runs, i);
      if (change.isPresent() && !change.get().equals(SetupChange.NONE)) {
        trials.add(trial(runs, i, change.get()));
      }
    }
    return trials;
  }

  /** What was changed before a run; empty at the first run of a day, and where it is not known. */
  static Optional<String> change(List<Numbered<RunEntry>> runs, int i) {
    RunEntry before = runs.get(i - 1).entry();
    RunEntry after = runs.get(i).entry();
    return before.day() == after.day() ? SetupChange.between(before, after) : Optional.empty();
  }

  /** Whether it took back the one before: its lever, the other way, after worse. */
  public boolean takesBack(DrivenChange last) {
    return last.effect() == Effect.WORSE
        && change.replaceFirst("-.*", "").equals(last.change().replaceFirst("-.*", ""))
        && !change.equals(last.change());
  }

  private static DrivenChange trial(List<Numbered<RunEntry>> runs, int i, String change) {
    // The change takes the one before back: all three runs tell of it better than two.
    if (returns(runs, i - 2)) {
      Optional<Proof> there = proof(runs, i - 1);
      return new DrivenChange(
          runs.get(i - 1), runs.get(i), change, there, effect(there).ofUndoing());
    }
    Optional<Proof> proof = proof(runs, i);
    return new DrivenChange(runs.get(i - 1), runs.get(i), change, proof, effect(proof));
  }

  private static Optional<Proof> proof(List<Numbered<RunEntry>> runs, int i) {
    Numbered<RunEntry> before = runs.get(i - 1);
    Numbered<RunEntry> after = runs.get(i);
    if (!comparable(before.entry(), after.entry())) {
      return Optional.empty();
    }
    Optional<LapTimes> again =
        returns(runs, i - 1) ? Optional.of(laps(runs.get(i + 1))) : Optional.empty();
    Feel feel = after.entry().feel();
    return Optional.of(Proof.of(laps(before), laps(after), again, feel));
  }

  /** Whether from this run on the setting was changed and put back, under the same conditions. */
  private static boolean returns(List<Numbered<RunEntry>> runs, int first) {
    if (first < 0 || first + 2 >= runs.size()) {
      return false;
    }
    RunEntry before = runs.get(first).entry();
    RunEntry after = runs.get(first + 1).entry();
    RunEntry again = runs.get(first + 2).entry();
    return before.day() == again.day()
        && SetupChange.between(before, again).filter(SetupChange.NONE::equals).isPresent()
        && SetupChange.between(before, after).filter(c -> !c.equals(SetupChange.NONE)).isPresent()
        && comparable(before, after)
        && comparable(after, again)
        && comparable(before, again);
  }

  private static boolean comparable(RunEntry before, RunEntry after) {
    return CONDITIONS.stream().noneMatch(question -> differ(before, after, question))
        && steady(before)
        && steady(after);
  }

  private static boolean differ(RunEntry before, RunEntry after, String question) {
    Optional<String> old = before.situation().answer(question);
    Optional<String> now = after.situation().answer(question);
    return old.isPresent() && now.isPresent() && !Objects.equals(old, now);
  }

  private static boolean steady(RunEntry run) {
    return run.situation().answer("trend").filter(MOVING::contains).isEmpty();
  }

  private static LapTimes laps(Numbered<RunEntry> run) {
    return new LapTimes("run " + run.number(), run.entry().laps());
  }

  private static Effect effect(Optional<Proof> proof) {
    if (proof.isEmpty()) {
      return Effect.UNTOLD;
    }
    return switch (proof.get().verdict()) {
      case KEEP -> Effect.BETTER;
      case UNDO -> Effect.WORSE;
      case CANNOT_TELL ->
          proof.get().shift().filter(DrivenChange::tooSmallToMatter).isPresent()
              ? Effect.SAME
              : Effect.UNTOLD;
    };
  }

  private static boolean tooSmallToMatter(Shift shift) {
    return Math.max(Math.abs(shift.low()), Math.abs(shift.high())) < WORTH_SECONDS;
  }
}
