package insidelift.engine.audit;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.Decided;
import insidelift.engine.consultation.Verdict;
import insidelift.shared.Answer;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.Fewer;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What must hold between a situation and its like: mirrored, wetter, or with one answer fewer. */
final class Comparisons implements Watch {

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
  Comparisons(Advisor advisor, int every) {
    this.advisor = advisor;
    this.every = every;
  }

  List<Remark> remarks() {
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
      lessKnown(situation, decided);
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
      if (other.status() != decided.status() || !other.first().equals(decided.first())) {
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
      for (Verdict verdict : advisor.decide(wet).verdicts()) {
        if (verdict.kind() == Kind.TARGET && verdict.moves()) {
          double target = verdict.sized().target().left().value();
          if (target < before.getOrDefault(verdict.lever(), target)) {
            breaks("more water never asks for less", situation);
          }
          before.put(verdict.lever(), target);
        }
      }
    }
  }

  /**
   * An answer taken back may turn a direction round only where the ledger says that it counted: by
   * a decision, a limit, as evidence for or against a finding, or as a reason of the move.
   */
  private void lessKnown(Situation situation, Decided decided) {
    Map<Lever, Direction> with = ways(decided);
    if (with.isEmpty()) {
      return;
    }
    for (String question : situation.answers().keySet()) {
      Decided less = advisor.decide(situation.with(question, Vocabulary.UNKNOWN));
      ways(less)
          .forEach(
              (lever, way) -> {
                Direction before = with.get(lever);
                if (before != null && before != way && !said(decided, lever, question)) {
                  breaks("an answer not given never turns a move round unsaid", situation);
                }
              });
    }
  }

  private static Map<Lever, Direction> ways(Decided decided) {
    Map<Lever, Direction> ways = new LinkedHashMap<>();
    decided.verdicts().stream()
        .filter(Verdict::moves)
        .forEach(verdict -> ways.put(verdict.lever(), verdict.sized().direction()));
    return ways;
  }

  private static boolean said(Decided decided, Lever lever, String question) {
    boolean decision =
        decided.ledger().stream()
            .anyMatch(
                entry ->
                    entry instanceof SetAside
                        || entry instanceof Limit
                        || entry instanceof Fewer
                        || entry instanceof Contribution.Decision);
    boolean weighed =
        decided.entries(Evidence.class).stream()
            .anyMatch(piece -> piece.observation().equals(question));
    return decision
        || weighed
        || decided.verdicts().stream()
            .filter(verdict -> verdict.lever() == lever)
            .flatMap(verdict -> verdict.wishes().stream())
            .flatMap(wish -> wish.origins().stream())
            .flatMap(origin -> origin.premises().stream())
            .anyMatch(
                premise -> premise instanceof Answer answer && answer.question().equals(question));
  }
}
