package insidelift.engine.consultation;

import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.Answer;
import insidelift.shared.CheckKind;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Alternative;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.FirstCheck;
import insidelift.shared.Contribution.Lead;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Contribution.Unseen;
import insidelift.shared.Finding;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Decision;
import insidelift.shared.advice.Advice.FoundOut;
import insidelift.shared.advice.Advice.Observation;
import insidelift.shared.advice.Advice.Open;
import insidelift.shared.advice.Advice.OtherLever;
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

  private final Vocabulary vocabulary;
  private final NoteBook notes;
  private final OpenQuestions open;
  private final Effects effects;
  private final Situation situation;

  /**
   * The words for one situation.
   *
   * @param open which questions can still matter; null for an outline, which leaves that out
   * @param effects what a change does to the wheels; null for an outline
   */
  Wording(
      Vocabulary vocabulary,
      NoteBook notes,
      OpenQuestions open,
      Effects effects,
      Situation situation) {
    this.vocabulary = vocabulary;
    this.notes = notes;
    this.open = open;
    this.effects = effects;
    this.situation = situation;
  }

  Advice advice(Decided decided) {
    SuggestionWording levers = new SuggestionWording(notes, situation.kart(), decided, effects);
    List<Suggestion> suggestions =
        decided.verdicts().stream()
            .filter(verdict -> worthSaying(verdict, decided))
            .map(levers::suggestion)
            .sorted(Comparator.comparing(suggestion -> !suggestion.first()))
            .toList();
    return new Advice(
        Advice.SCHEMA,
        decided.status(),
        checks(decided),
        findings(decided),
        suggestions,
        decisions(decided),
        alternatives(decided),
        unexplained(decided),
        wouldHelp(),
        assumed(decided, suggestions));
  }

  /** A lever that nothing speaks for is mentioned only where the whole answer is to leave it. */
  private static boolean worthSaying(Verdict verdict, Decided decided) {
    return decided.status() == Status.HOLD
        || !verdict.wishes().isEmpty()
        || !"nothing-asks".equals(verdict.heldBy().orElse(""));
  }

  private List<Check> checks(Decided decided) {
    Map<String, Check> checks = new LinkedHashMap<>();
    decided.entries(FirstCheck.class).stream()
        .sorted(Comparator.comparing(FirstCheck::kind))
        .forEach(entry -> checks.putIfAbsent(entry.by().note(), check(entry)));
    for (Unseen unseen : decided.entries(Unseen.class)) {
      Note note = notes.note(unseen.by().note());
      checks.put(
          note.id() + "." + unseen.question(),
          new Check(
              note.id(),
              CheckKind.LOOK,
              unseen.question(),
              ask(unseen.question()),
              note.text("Claim"),
              note.text("Do"),
              Sources.of(note, notes)));
    }
    return List.copyOf(checks.values());
  }

  private Check check(FirstCheck entry) {
    Note note = notes.note(entry.by().note());
    return new Check(
        note.id(),
        entry.kind(),
        null,
        note.title(),
        note.text("Claim"),
        note.text("Do"),
        Sources.of(note, notes));
  }

  private List<FoundOut> findings(Decided decided) {
    return Weigher.findings(decided.evidence()).stream()
        .filter(finding -> finding.strength() >= Weigher.SLIGHT)
        .sorted(Comparator.comparingInt(Finding::strength).reversed().thenComparing(Finding::id))
        .map(finding -> found(finding, decided.evidence().get(finding.id())))
        .toList();
  }

  private FoundOut found(Finding finding, List<Evidence> evidence) {
    return new FoundOut(
        finding.id(),
        vocabulary.finding(finding.id()).orElseThrow().words(),
        Weigher.word(finding.strength()),
        finding.strength(),
        evidence.stream()
            .map(
                piece ->
                    new Weighed(
                        piece.by().rule(),
                        piece.weight(),
                        SuggestionWording.because(List.of(piece.by())),
                        piece.by().note()))
            .toList());
  }

  private List<Decision> decisions(Decided decided) {
    if (decided.status() == Status.FIX_FIRST) {
      return List.of(decision("fault-first", List.of()));
    }
    Map<String, Decision> said = new LinkedHashMap<>();
    Set<String> wished = new LinkedHashSet<>();
    decided.ledger().stream()
        .filter(entry -> !(entry instanceof SetAside))
        .forEach(entry -> wished.add(entry.by().note()));
    for (SetAside entry : decided.entries(SetAside.class)) {
      List<String> over = entry.claims().stream().filter(wished::contains).toList();
      say(said, entry.by().note(), over);
    }
    decided
        .entries(Contribution.Decision.class)
        .forEach(entry -> say(said, entry.by().note(), List.of()));
    decided.verdicts().forEach(verdict -> heldOver(verdict, said));
    if (decided.entries(Contribution.Fewer.class).stream()
        .anyMatch(entry -> decided.verdicts().stream().anyMatch(v -> v.lever() == entry.lever()))) {
      say(said, "limit-strength", List.of());
    }
    order(decided, said);
    return List.copyOf(said.values());
  }

  private void heldOver(Verdict verdict, Map<String, Decision> said) {
    if (verdict.heldBy().isPresent() && !verdict.wishes().isEmpty()) {
      List<String> over = verdict.wishes().stream().map(Wish::claim).distinct().toList();
      String note = verdict.heldBy().get();
      if (!over.contains(note)) {
        say(said, note, over);
      }
    }
  }

  /** Why the first change is the first, where there was more than one to choose from. */
  private void order(Decided decided, Map<String, Decision> said) {
    List<Verdict> moving = decided.verdicts().stream().filter(Verdict::moves).toList();
    if (moving.size() < 2) {
      return;
    }
    if (decided.first().size() == moving.size()) {
      say(said, "targets-first", List.of());
      return;
    }
    boolean targets =
        moving.stream()
            .anyMatch(
                verdict ->
                    verdict.kind() == Kind.TARGET && decided.first().contains(verdict.lever()));
    if (targets) {
      say(said, "targets-first", List.of());
    } else {
      Lever lever = decided.first().iterator().next();
      decided.entries(Lead.class).stream()
          .filter(entry -> entry.lever() == lever)
          .min(Comparator.comparing(Lead::rank).thenComparing(entry -> entry.by().rule()))
          .ifPresent(entry -> say(said, entry.by().note(), List.of()));
      say(said, "one-correction", List.of());
    }
  }

  private void say(Map<String, Decision> said, String note, List<String> over) {
    said.merge(note, decision(note, over), Wording::together);
  }

  private static Decision together(Decision one, Decision other) {
    Set<String> over = new LinkedHashSet<>(one.over());
    over.addAll(other.over());
    return new Decision(one.note(), one.text(), List.copyOf(over));
  }

  private Decision decision(String note, List<String> over) {
    return new Decision(note, notes.note(note).text("Claim"), over);
  }

  private List<OtherLever> alternatives(Decided decided) {
    Set<String> faults = new LinkedHashSet<>();
    decided.entries(FirstCheck.class).forEach(entry -> faults.add(entry.by().note()));
    Map<String, OtherLever> others = new LinkedHashMap<>();
    for (Alternative entry : decided.entries(Alternative.class)) {
      // With a fault on the kart, the only other levers worth naming are the fault's own.
      if (decided.status() != Status.FIX_FIRST || faults.contains(entry.by().note())) {
        Note lever = notes.note(entry.lever());
        Note reason = notes.note(entry.by().note());
        others.putIfAbsent(
            entry.lever(),
            new OtherLever(
                lever.id(),
                lever.title(),
                lever.text("Do"),
                reason.id().equals(lever.id()) ? lever.text("Claim") : reason.title()));
      }
    }
    return Remedies.ordered(others.keySet().stream().map(Remedies::lever).toList()).stream()
        .map(remedy -> others.get(remedy.id()))
        .toList();
  }

  private List<Observation> unexplained(Decided decided) {
    Set<String> explained = new LinkedHashSet<>();
    decided.entries(FirstCheck.class).forEach(entry -> explain(entry.by(), decided, explained));
    decided.entries(Alternative.class).forEach(entry -> explain(entry.by(), decided, explained));
    decided
        .entries(Contribution.Limit.class)
        .forEach(entry -> explain(entry.by(), decided, explained));
    for (Verdict verdict : decided.verdicts()) {
      verdict
          .wishes()
          .forEach(wish -> wish.origins().forEach(by -> explain(by, decided, explained)));
      verdict.holders().forEach(by -> explain(by, decided, explained));
    }
    // What a claim rests on that a decision sets aside is explained by the decision, aloud.
    Set<String> aside = new LinkedHashSet<>();
    decided.entries(SetAside.class).forEach(entry -> aside.addAll(entry.claims()));
    decided.entries(Contribution.Correction.class).stream()
        .filter(entry -> aside.contains(entry.by().note()))
        .forEach(entry -> explain(entry.by(), decided, explained));
    return situation.facts(vocabulary).stream()
        .filter(Answer::complaint)
        .filter(answer -> !explained.contains(answer.question()))
        .map(this::observation)
        .toList();
  }

  private static void explain(Origin by, Decided decided, Set<String> explained) {
    for (Object premise : by.premises()) {
      if (premise instanceof Answer answer) {
        explained.add(answer.question());
      } else if (premise instanceof Finding finding) {
        decided.evidence().getOrDefault(finding.id(), List.of()).stream()
            .filter(piece -> piece.weight() > 0)
            .forEach(piece -> explain(piece.by(), decided, explained));
      }
    }
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
    if (open == null) {
      return List.of();
    }
    return open.ranked(situation).stream()
        .limit(OPEN_SHOWN)
        .map(question -> new Open(question.id(), question.ask(), question.why()))
        .toList();
  }

  private List<String> assumed(Decided decided, List<Suggestion> suggestions) {
    List<String> assumed = new ArrayList<>();
    if (decided.status() == Status.FIX_FIRST || decided.status() == Status.NOT_ENOUGH) {
      return assumed;
    }
    if (situation.kart().camber().isEmpty()) {
      assumed.add("The kart stands at zero camber on both sides.");
    }
    if (situation.kart().caster().isEmpty()) {
      assumed.add("The kart stands at its neutral caster on both sides.");
    } else if (situation.kart().casterFromNeutral().isEmpty()) {
      assumed.add("The caster given is the kart's neutral, since the neutral was not given.");
    }
    if (!situation.history().isEmpty()) {
      assumed.add("The runs before (history) are read, but only the last change is weighed yet.");
    }
    if (alternatives(decided).size() > 1) {
      assumed.add(
          "The other levers stand in the order of their cost, the quickest and safest first; which"
              + " of them helps most often, nobody has counted (provisional).");
    }
    suggestions.stream()
        .filter(Suggestion::moves)
        .map(suggestion -> SuggestionWording.assumedStep(suggestion.lever(), situation.kart()))
        .filter(Objects::nonNull)
        .forEach(assumed::add);
    return assumed;
  }

  private String ask(String question) {
    return vocabulary.question(question).orElseThrow().ask();
  }
}
