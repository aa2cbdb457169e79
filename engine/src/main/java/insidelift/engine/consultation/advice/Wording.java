package insidelift.engine.consultation.advice;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.LeverOutcome;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.fact.Barred;
import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Check;
import insidelift.rules.fact.Spoken.Other;
import insidelift.rules.fact.Spoken.Overruled;
import insidelift.rules.fact.Spoken.Start;
import insidelift.rules.fact.Spoken.Track;
import insidelift.rules.fact.Spoken.Unseen;
import insidelift.rules.fact.Step;
import insidelift.rules.fact.Sum;
import insidelift.shared.Answer;
import insidelift.shared.CheckKind;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Decision;
import insidelift.shared.advice.Advice.FoundOut;
import insidelift.shared.advice.Advice.Kept;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.Observation;
import insidelift.shared.advice.Advice.Open;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.advice.Advice.Weighed;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Puts a decided situation into words. The words of the trade come from the notes. */
final class Wording {

  /** How many open questions an advice names: more would be a form, not a hint. */
  private static final int OPEN_SHOWN = 5;

  /** The least gain that is worth a word where a limit stands in its way. */
  private static final int WORTH_SAYING = 2;

  private final Advisor advisor;
  private final Vocabulary vocabulary;
  private final NoteBook notes;
  private final Decided decided;
  private final Situation situation;
  private final Behind behind;
  private final boolean whole;

  /**
   * The words for one decision.
   *
   * @param whole whether open questions and what a change does to the wheels belong to it
   */
  Wording(Advisor advisor, Decided decided, boolean whole) {
    this.advisor = advisor;
    this.vocabulary = advisor.vocabulary();
    this.notes = advisor.notes();
    this.decided = decided;
    this.situation = decided.situation();
    this.behind = new Behind(decided, advisor.rules().index(), vocabulary);
    this.whole = whole;
  }

  Advice advice() {
    SuggestionWording levers = new SuggestionWording(advisor, decided, behind, whole);
    List<Suggestion> suggestions =
        decided.verdicts().stream()
            .map(levers::suggestion)
            .sorted(Comparator.comparing(suggestion -> !suggestion.first()))
            .toList();
    OtherLevers others = new OtherLevers(decided, vocabulary, notes);
    List<OtherLever> alternatives = others.named();
    return new Advice(
        Advice.SCHEMA,
        decided.status(),
        checks(),
        decided.reasoned().found().stream()
            .filter(found -> vocabulary.finding(found.finding()).isPresent())
            .map(this::found)
            .toList(),
        suggestions,
        decisions(),
        alternatives,
        others.changeover().orElse(null),
        unexplained(),
        wouldHelp(),
        assumed(suggestions, alternatives),
        minutes(suggestions),
        baseline(suggestions));
  }

  private static Minutes minutes(List<Suggestion> suggestions) {
    return suggestions.stream()
        .filter(Suggestion::first)
        .map(Suggestion::minutes)
        .reduce((one, other) -> new Minutes(one.from() + other.from(), one.to() + other.to()))
        .orElse(null);
  }

  /** A kart that is good and measured stands where it should be brought back to one day. */
  private Kept baseline(List<Suggestion> suggestions) {
    boolean keep = decided.reasoned().choice().kind().equals("keep");
    Settings camber = target(suggestions, Lever.CAMBER);
    Settings caster = target(suggestions, Lever.CASTER);
    return decided
        .reasoned()
        .all(Track.class)
        .filter(track -> keep && (camber != null || caster != null))
        .findFirst()
        .map(track -> new Kept(track.condition(), camber, caster))
        .orElse(null);
  }

  private static Settings target(List<Suggestion> suggestions, Lever lever) {
    return suggestions.stream()
        .filter(suggestion -> suggestion.lever() == lever && suggestion.target() != null)
        .findFirst()
        .map(Suggestion::target)
        .orElse(null);
  }

  private List<Advice.Check> checks() {
    Map<String, Advice.Check> checks = new LinkedHashMap<>();
    decided.reasoned().spoken(Check.class).stream()
        .sorted(Comparator.comparing(check -> Named.of(CheckKind.class, check.kind())))
        .forEach(check -> checks.putIfAbsent(check.by().note(), check(check)));
    for (Unseen unseen : decided.reasoned().spoken(Unseen.class)) {
      Note note = notes.note(unseen.by().note());
      checks.put(
          note.id() + "." + unseen.question(),
          new Advice.Check(
              note.id(),
              CheckKind.LOOK,
              unseen.question(),
              vocabulary.question(unseen.question()).orElseThrow().ask(),
              note.text("Claim"),
              note.text("Do"),
              Sources.of(note, notes)));
    }
    return List.copyOf(checks.values());
  }

  private Advice.Check check(Check check) {
    Note note = notes.note(check.by().note());
    return new Advice.Check(
        note.id(),
        Named.of(CheckKind.class, check.kind()),
        null,
        note.title(),
        note.text("Claim"),
        note.text("Do"),
        Sources.of(note, notes));
  }

  private FoundOut found(Found found) {
    return new FoundOut(
        found.finding(),
        vocabulary.finding(found.finding()).orElseThrow().words(),
        Strength.word(found.weight()),
        found.weight(),
        behind.evidence(found.finding()).stream().map(this::weighed).toList());
  }

  private Weighed weighed(Evidence piece) {
    return new Weighed(
        piece.by().rule(), piece.weight(), behind.answers(piece.by()), piece.by().note());
  }

  /** What decided, and over what: the choice itself, and the limits that something worth it met. */
  private List<Decision> decisions() {
    Map<String, Set<String>> said = new LinkedHashMap<>();
    switch (decided.reasoned().choice().kind()) {
      case "fix" -> said.put("fault-first", new LinkedHashSet<>());
      case "not-enough" -> {
        // There is nothing to say but what to tell.
      }
      case "keep", "again", "undo" ->
          said.put(decided.reasoned().choice().by().note(), new LinkedHashSet<>());
      case "restore" -> {
        said.put(decided.reasoned().choice().by().note(), new LinkedHashSet<>());
        decided
            .reasoned()
            .all(Step.class)
            .filter(
                step -> !step.now() && (step.by().equals("start") || step.by().equals("baseline")))
            .forEach(
                step ->
                    limits(step.lever(), step.direction(), "restore", starts(step.lever()), said));
        decided.verdicts().stream()
            .filter(verdict -> !verdict.first())
            .forEach(
                verdict ->
                    verdict
                        .heldBy()
                        .filter("limit-time"::equals)
                        .ifPresent(note -> said.putIfAbsent(note, new LinkedHashSet<>())));
      }
      default -> {
        for (Sum sum : decided.reasoned().sums()) {
          if (sum.gain() >= WORTH_SAYING && Lever.isOne(sum.lever())) {
            List<String> over =
                decided.reasoned().parts(sum.lever(), sum.direction()).stream()
                    .filter(part -> part.points() > 0)
                    .map(part -> part.by().note())
                    .distinct()
                    .toList();
            limits(sum.lever(), sum.direction(), "move", over, said);
          }
        }
        if (decided.verdicts().stream().filter(LeverOutcome::moves).count() > 1) {
          said.putIfAbsent("one-correction", new LinkedHashSet<>());
        }
        decided.verdicts().stream()
            .flatMap(verdict -> verdict.heldBy().stream())
            .filter(note -> !note.equals("nothing-asks"))
            .forEach(note -> said.putIfAbsent(note, new LinkedHashSet<>()));
      }
    }
    if (decided.status() == Status.CHANGE || decided.status() == Status.HOLD) {
      decided.reasoned().spoken(Overruled.class).stream()
          .forEach(
              one ->
                  said.computeIfAbsent(one.by().note(), key -> new LinkedHashSet<>())
                      .add(one.claim()));
    }
    return said.entrySet().stream()
        .map(
            entry ->
                new Decision(
                    entry.getKey(),
                    notes.note(entry.getKey()).text("Claim"),
                    List.copyOf(entry.getValue())))
        .toList();
  }

  /** The notes on which the trade starts a lever on this track. */
  private List<String> starts(String lever) {
    return decided.reasoned().spoken(Start.class).stream()
        .filter(start -> start.lever().equals(lever))
        .filter(
            start ->
                decided
                    .reasoned()
                    .all(Track.class)
                    .anyMatch(track -> track.water().equals(start.water())))
        .map(start -> start.by().note())
        .toList();
  }

  private void limits(
      String lever,
      String direction,
      String choice,
      List<String> over,
      Map<String, Set<String>> said) {
    decided.reasoned().spoken(Barred.class).stream()
        .filter(bar -> bar.lever().equals(lever) && bar.direction().equals(direction))
        .filter(bar -> bar.binds(choice))
        .forEach(
            bar ->
                said.computeIfAbsent(bar.by().note(), key -> new LinkedHashSet<>()).addAll(over));
  }

  /** Complaints that no check, no other lever, no limit and no sum takes up. */
  private List<Observation> unexplained() {
    Set<String> explained = new LinkedHashSet<>();
    decided.reasoned().all(Check.class).forEach(check -> explain(check.by(), explained));
    decided.reasoned().all(Other.class).forEach(other -> explain(other.by(), explained));
    decided.reasoned().all(Barred.class).forEach(bar -> explain(bar.by(), explained));
    decided
        .reasoned()
        .all(Part.class)
        .filter(part -> part.points() > 0)
        .map(Part::finding)
        .distinct()
        .flatMap(finding -> behind.evidence(finding).stream())
        .filter(piece -> piece.weight() > 0)
        .forEach(piece -> explain(piece.by(), explained));
    // In the order of the questions: the order of a file's keys says nothing.
    List<String> order = vocabulary.questions().stream().map(Question::id).toList();
    return situation.facts(vocabulary).stream()
        .filter(Answer::complaint)
        .sorted(Comparator.comparingInt(answer -> order.indexOf(answer.question())))
        .filter(answer -> !explained.contains(answer.question()))
        .map(this::observation)
        .toList();
  }

  private void explain(By by, Set<String> explained) {
    explained.addAll(behind.questions(by));
  }

  private Observation observation(Answer answer) {
    return new Observation(
        answer.question(),
        answer.value(),
        vocabulary
            .question(answer.question())
            .flatMap(question -> question.value(answer.value()))
            .orElseThrow()
            .words());
  }

  private List<Open> wouldHelp() {
    if (!whole) {
      return List.of();
    }
    return advisor.open().ranked(situation).stream()
        .limit(OPEN_SHOWN)
        .map(question -> new Open(question.id(), question.ask(), question.why(), question.first()))
        .toList();
  }

  private List<String> assumed(List<Suggestion> suggestions, List<OtherLever> alternatives) {
    List<String> assumed = new ArrayList<>();
    if (decided.status() == Status.FIX_FIRST || decided.status() == Status.NOT_ENOUGH) {
      return assumed;
    }
    boolean place =
        decided.now().stream()
            .anyMatch(now -> now.kind() == Kind.TARGET || now.kind() == Kind.RESTORE);
    if (place && situation.kart().camber().isEmpty()) {
      assumed.add("The camber is taken to stand where this set-up usually starts: measure it.");
    }
    if (place && situation.kart().caster().isEmpty()) {
      assumed.add("The caster is taken to stand where this set-up usually starts: measure it.");
    } else if (situation.kart().caster().isPresent()
        && situation.kart().casterFromNeutral().isEmpty()) {
      assumed.add("The caster given is the kart's neutral, since the neutral was not given.");
    }
    if (!alternatives.isEmpty()) {
      assumed.add(
          "The other levers stand in the order of what they gain less what they take; how much each"
              + " gains and how long it takes is ours, not measured (provisional).");
    }
    suggestions.stream()
        .filter(Suggestion::moves)
        .map(suggestion -> SuggestionWording.assumedStep(suggestion.lever(), situation.kart()))
        .filter(Objects::nonNull)
        .forEach(assumed::add);
    return assumed;
  }
}
