package insidelift.engine.consultation.advice;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.Facts;
import insidelift.engine.consultation.decision.LeverOutcome;
import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Track;
import insidelift.rules.fact.Trial;
import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Which answers stand behind what the rules said, read off the premises that held. */
public final class Behind {

  /** Under this name the kart's own record takes part in a sum. */
  private static final String OWN_RECORD = "own-record";

  private final Decided decided;
  private final RuleIndex index;
  private final Map<String, String> known = new LinkedHashMap<>();

  /** The answers behind a decision by the rules of an index. */
  public Behind(Decided decided, RuleIndex index, Vocabulary vocabulary) {
    this.decided = decided;
    this.index = index;
    for (Object fact : Facts.of(decided.situation(), vocabulary)) {
      if (fact instanceof Answer answer) {
        known.put(answer.question(), answer.value());
      }
    }
  }

  /** The questions whose answers made a rule speak. */
  public Set<String> questions(By by) {
    Set<String> questions = new LinkedHashSet<>();
    index
        .rule(by.rule())
        .ifPresent(
            rule ->
                rule.premises()
                    .forEach(
                        premise -> {
                          if (premise instanceof Premise.Told told && !told.absent()) {
                            told.questions().stream()
                                .filter(id -> fits(told, id))
                                .forEach(questions::add);
                          }
                        }));
    return questions;
  }

  private boolean fits(Premise.Told told, String question) {
    String value = known.get(question);
    return value != null && (told.values().isEmpty() || told.values().contains(value));
  }

  /** The same as "question: value". */
  public List<String> answers(By by) {
    return questions(by).stream().map(id -> id + ": " + known.get(id)).toList();
  }

  /** What the place that a lever goes to rests on: the track, or the last change. */
  public List<String> answers(LeverOutcome verdict) {
    return switch (verdict.kind()) {
      case TARGET, RESTORE ->
          decided.reasoned().spoken(Track.class).stream()
              .flatMap(track -> answers(track.by()).stream())
              .toList();
      case UNDO ->
          Stream.of("last-change", "last-effect")
              .filter(known::containsKey)
              .map(id -> id + ": " + known.get(id))
              .toList();
      case CORRECTION -> List.of();
    };
  }

  /** What a term of a sum rests on: the evidence for its finding, and what its claim needs. */
  public List<String> answers(Part part) {
    if (part.by().rule().equals(OWN_RECORD)) {
      return List.of(tried(part));
    }
    Set<String> answers = new LinkedHashSet<>();
    evidence(part.finding()).stream()
        .filter(piece -> piece.weight() > 0)
        .forEach(piece -> answers.addAll(answers(piece.by())));
    answers.addAll(answers(part.by()));
    return List.copyOf(answers);
  }

  /** The evidence for and against a finding. */
  public List<Evidence> evidence(String finding) {
    return decided.reasoned().spoken(Evidence.class).stream()
        .filter(piece -> piece.finding().equals(finding))
        .toList();
  }

  /** How often a lever was moved on this kart, and how often that way of it was better. */
  private String tried(Part part) {
    Optional<String> condition =
        decided.reasoned().all(Track.class).map(Track::condition).findFirst();
    List<Trial> trials =
        decided
            .reasoned()
            .all(Found.class)
            .filter(found -> found.finding().equals(part.finding()))
            .flatMap(found -> votes(part.lever(), found.on()))
            .filter(trial -> condition.filter(trial.condition()::equals).isPresent())
            .toList();
    long better =
        trials.stream()
            .filter(
                trial ->
                    trial.effect().equals("better") == trial.direction().equals(part.direction()))
            .count();
    return "on this kart tried %d %s, better %d"
        .formatted(trials.size(), trials.size() == 1 ? "time" : "times", better);
  }

  private Stream<Trial> votes(String lever, String on) {
    return decided
        .reasoned()
        .all(Trial.class)
        .filter(trial -> trial.lever().equals(lever) && trial.vote(on) != 0);
  }
}
