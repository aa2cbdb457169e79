package insidelift.engine.consultation.session;

import insidelift.shared.Degrees;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is known of the same kart with the same driver before its next heat: what stays with the
 * two, how the front end stands after the change, and the run that was told of as the newest of
 * those before. What was felt, and the look at the kart, are of one run and are asked again.
 */
final class NextHeat {

  private final Situation before;
  private final Vocabulary vocabulary;

  NextHeat(Situation before, Vocabulary vocabulary) {
    this.before = before;
    this.vocabulary = vocabulary;
  }

  /**
   * The situation to begin with.
   *
   * @param advice what was advised
   * @param made whether that was done to camber and caster
   * @param sameTrack whether the track is as it was
   */
  Situation after(Advice advice, boolean made, boolean sameTrack) {
    List<Suggestion> moves =
        made ? advice.suggestions().stream().filter(Suggestion::first).toList() : List.of();
    Map<String, String> answers = new LinkedHashMap<>(before.answers());
    answers.keySet().removeIf(question -> !stays(question, sameTrack));
    Map<String, Double> numbers = new LinkedHashMap<>(before.numbers());
    numbers.keySet().retainAll(answers.keySet());
    change(advice, moves).ifPresent(change -> answers.put("last-change", change));
    if (moves.stream().anyMatch(NextHeat::turnsOver)) {
      before
          .answer("water")
          .ifPresent(water -> answers.put("setup-for", water.equals("dry") ? "dry" : "wet"));
    }
    List<Driven> runs = new ArrayList<>(before.history());
    Driven told = told(false);
    runs.add(!runs.isEmpty() && told.takesBack(runs.get(runs.size() - 1)) ? told(true) : told);
    return new Situation(answers, numbers, kart(moves), Set.of(), Driven.newest(runs));
  }

  private boolean stays(String id, boolean sameTrack) {
    Question question = vocabulary.question(id).orElseThrow();
    return question.stays() || (sameTrack && question.group().equals("track"));
  }

  /** Whether a move is one of a set-up for another condition. */
  private static boolean turnsOver(Suggestion move) {
    return move.kind() == Kind.TARGET || move.kind() == Kind.RESTORE;
  }

  /**
   * What was changed; empty where only the user knows: another lever came first, or camber and
   * caster were left and something else may have been done.
   */
  private static Optional<String> change(Advice advice, List<Suggestion> moves) {
    if (moves.isEmpty() || advice.lead().isPresent()) {
      return Optional.empty();
    }
    Suggestion one = moves.get(0);
    return Optional.of(moves.size() == 1 ? one.lever().id() + "-" + one.direction().id() : "other");
  }

  private Driven told(boolean undo) {
    Map<String, String> answers = new LinkedHashMap<>(before.answers());
    answers.keySet().retainAll(Driven.TOLD);
    return new Driven(
        before.kart().camber().map(Sides::middle),
        before.kart().casterFromNeutral(),
        answers,
        undo);
  }

  private Kart kart(List<Suggestion> moves) {
    if (moves.isEmpty()) {
      return before.kart();
    }
    Kart now = before.kart();
    return now.with(
            stand(Lever.CAMBER, now.camber(), moves), stand(Lever.CASTER, now.caster(), moves))
        .after(now.front());
  }

  /** Where a lever stands after the moves; null where that was never measured. */
  private static Sides stand(Lever lever, Optional<Sides> now, List<Suggestion> moves) {
    return moves.stream()
        .filter(move -> move.lever() == lever)
        .findFirst()
        .map(move -> now.isEmpty() ? null : sides(move.target()))
        .orElseGet(() -> now.orElse(null));
  }

  private static Sides sides(Settings target) {
    return new Sides(Degrees.of(target.left()), Degrees.of(target.right()));
  }
}
