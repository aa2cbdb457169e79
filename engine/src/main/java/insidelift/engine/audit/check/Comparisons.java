package insidelift.engine.audit.check;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.LeverOutcome;
import insidelift.engine.consultation.decision.ToDo;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What must hold between a situation and its like: mirrored, or wetter. */
public final class Comparisons implements SituationVisitor {

  private static final List<String> WATERS = List.of("damp", "wet", "standing");

  private static final Map<String, String> MIRROR =
      Map.of(
          "left", "right", "right", "left", "left-only", "right-only", "right-only", "left-only");

  private final Advisor advisor;
  private final int every;
  private final Map<String, Remark> broken = new LinkedHashMap<>();
  private long seen;
  private long compared;

  /**
   * Comparisons for one in so many situations, since each one takes some forty decisions.
   *
   * @param every 1 for all of them
   */
  public Comparisons(Advisor advisor, int every) {
    this.advisor = advisor;
    this.every = every;
  }

  public List<Remark> remarks() {
    return new ArrayList<>(broken.values());
  }

  /** How many situations were compared with their like. */
  long compared() {
    return compared;
  }

  @Override
  public void see(Situation situation, Decided decided) {
    if (seen++ % every == 0) {
      compared++;
      mirrored(situation, decided);
      wetter(situation);
    }
  }

  private void breaks(String name, Situation situation) {
    broken.computeIfAbsent(
        name,
        key ->
            Remark.of(name, Severity.ERROR, "it does not hold that " + name)
                .shownBy(situation.answers()));
  }

  private void mirrored(Situation situation, Decided decided) {
    Situation mirror = situation;
    for (String question : List.of("pull", "corners")) {
      Optional<String> said = situation.answer(question);
      if (said.isPresent() && MIRROR.containsKey(said.get())) {
        mirror = mirror.with(question, MIRROR.get(said.get()));
      }
    }
    if (!mirror.equals(situation)) {
      Decided other = advisor.decide(mirror);
      if (!ToDo.of(other).equals(ToDo.of(decided))) {
        breaks("a mirrored kart gets the same advice", situation);
      }
    }
  }

  private void wetter(Situation situation) {
    if (situation.answer("water").filter(WATERS::contains).isEmpty()) {
      return;
    }
    Map<Lever, Double> before = new LinkedHashMap<>();
    for (String water : WATERS) {
      Situation wet =
          situation
              .with("water", water)
              .with("tyres", Vocabulary.UNKNOWN)
              .with("trend", Vocabulary.UNKNOWN);
      for (LeverOutcome verdict : advisor.decide(wet).verdicts()) {
        if (verdict.kind() == Kind.TARGET && verdict.moves() && verdict.first()) {
          double target = verdict.sized().target().left().value();
          if (target < before.getOrDefault(verdict.lever(), target)) {
            breaks("more water never asks for less", situation);
          }
          before.put(verdict.lever(), target);
        }
      }
    }
  }
}
