package insidelift.engine.consultation.explanation;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.advice.Behind;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.ToDo;
import insidelift.engine.consultation.foresight.OpenAnswers;
import insidelift.engine.consultation.foresight.OpenQuestions;
import insidelift.engine.notes.Note;
import insidelift.rules.fact.Barred;
import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken.By;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Explains one situation: views of the same facts that the advice is made from. */
public final class Explanation {

  /** Premises shown of what would speak for a move: a few say enough. */
  private static final int SHOWN = 5;

  private final Advisor advisor;
  private final Situation situation;
  private final Decided decided;
  private final Behind behind;
  private final Said said;

  /** The explanation of what is known. */
  public Explanation(Advisor advisor, Situation situation) {
    this.advisor = advisor;
    this.situation = situation;
    this.decided = advisor.decide(situation);
    this.behind = new Behind(decided, advisor.rules().index(), advisor.vocabulary());
    this.said = new Said(advisor.vocabulary(), advisor.notes());
  }

  /**
   * Why a question is asked.
   *
   * @throws IllegalArgumentException if there is no such question
   */
  public Why why(String id) {
    Question question =
        advisor
            .vocabulary()
            .question(id)
            .orElseThrow(() -> new IllegalArgumentException("there is no question \"" + id + '"'));
    OpenAnswers known = known();
    Set<String> serves = new LinkedHashSet<>();
    Set<String> already = new LinkedHashSet<>();
    for (IndexedRule rule : advisor.open().live(known)) {
      if (rule.premises().stream()
          .anyMatch(premise -> OpenQuestions.questions(premise).contains(id))) {
        serves.add(said.title(rule.note()));
        rule.premises().stream()
            .flatMap(premise -> OpenQuestions.questions(premise).stream())
            .filter(other -> !other.equals(id) && known.has(other))
            .forEach(other -> already.add(said.answer(other, known.value(other))));
      }
    }
    ToDo now = ToDo.of(decided);
    List<Why.Would> would =
        question.values().stream()
            .map(
                value -> {
                  ToDo then = ToDo.of(advisor.decide(with(situation, id, value.id())));
                  return new Why.Would(
                      value.id(), value.words(), !then.equals(now), said.now(then));
                })
            .toList();
    return new Why(
        id, question.ask(), question.why(), List.copyOf(serves), List.copyOf(already), would);
  }

  private OpenAnswers known() {
    return new OpenAnswers(situation, advisor.vocabulary());
  }

  /**
   * How a finding or a lever's fate came about.
   *
   * @param id a finding's id, {@code camber} or {@code caster}
   * @throws IllegalArgumentException if it is neither
   */
  public How how(String id) {
    return advisor.vocabulary().finding(id).isPresent()
        ? finding(id)
        : lever(Named.of(Lever.class, id));
  }

  private How finding(String id) {
    List<How.Part> parts =
        behind.evidence(id).stream()
            .sorted(
                Comparator.comparingInt((Evidence piece) -> -Math.abs(piece.weight()))
                    .thenComparing(piece -> piece.by().rule()))
            .map(
                piece ->
                    part(
                        piece.weight() > 0 ? "for it" : "against it",
                        piece.weight(),
                        piece.by(),
                        behind.answers(piece.by())))
            .toList();
    int sum = parts.stream().mapToInt(How.Part::points).sum();
    int counts =
        decided.reasoned().found().stream()
            .filter(found -> found.finding().equals(id))
            .mapToInt(found -> found.weight())
            .sum();
    String scaled =
        sum == counts || counts == 0 ? "" : ", which count %d for how bad it is".formatted(counts);
    return new How(
        id,
        "%s: %d points in all%s.".formatted(said.finding(id), sum, scaled),
        List.of(new How.Sum("", sum, parts, false)));
  }

  private How lever(Lever lever) {
    String result =
        advisor.outline(situation).suggestions().stream()
            .filter(suggestion -> suggestion.lever() == lever)
            .map(Suggestion::summary)
            .findFirst()
            .orElse(lever.id() + " stays where it is; now: " + said.now(ToDo.of(decided)) + ".");
    return new How(
        lever.id(), result, List.of(sum(lever, Direction.MORE), sum(lever, Direction.LESS)));
  }

  private How.Sum sum(Lever lever, Direction direction) {
    List<Part> parts = decided.reasoned().parts(lever.id(), direction.id());
    int points =
        decided.reasoned().sums().stream()
            .filter(sum -> sum.lever().equals(lever.id()) && sum.direction().equals(direction.id()))
            .mapToInt(sum -> sum.gain())
            .findFirst()
            .orElse(0);
    return new How.Sum(
        Said.move(lever, direction),
        points,
        parts.stream()
            .map(part -> part(says(part), part.points(), part.by(), behind.answers(part)))
            .toList(),
        points != parts.stream().mapToInt(Part::points).sum());
  }

  private String says(Part part) {
    return switch (part.by().rule()) {
      case "minutes" -> "the minutes it takes";
      case "good" ->
          switch (part.finding()) {
            case "entry-open" -> "changes turning in, of which nothing was told";
            case "mid-open" -> "changes mid-corner, of which nothing was told";
            case "exit-open" -> "changes the way out, of which nothing was told";
            default -> "changes what is good: " + said.finding(part.finding());
          };
      case "own-record" -> "this kart's own record, " + said.finding(part.finding());
      default ->
          (part.points() < 0 ? "costs: " : "helps: ")
              + said.finding(part.finding())
              + (part.disputed() ? " (by one camp)" : "");
    };
  }

  /** Why a lever is not moved that way, or that it is. */
  public WhyNot whyNot(Lever lever, Direction direction) {
    boolean advised = decided.now().stream().anyMatch(v -> v.lever() == lever && v.goes(direction));
    return new WhyNot(
        lever,
        direction,
        advised,
        sum(lever, direction),
        advised ? List.of() : stopped(lever, direction),
        advised ? List.of() : open(lever, direction));
  }

  private List<String> stopped(Lever lever, Direction direction) {
    Set<String> stopped = new LinkedHashSet<>();
    if (decided.status() == Status.FIX_FIRST) {
      stopped.add("Before any lever: " + said.now(ToDo.of(decided)) + ".");
    }
    decided.reasoned().spoken(Barred.class).stream()
        .filter(bar -> bar.lever().equals(lever.id()) && bar.direction().equals(direction.id()))
        .forEach(bar -> stopped.add("Barred: " + said.title(bar.by().note()) + "."));
    if (!decided.now().isEmpty()) {
      stopped.add("First comes: " + said.now(ToDo.of(decided)) + ".");
    } else if (decided.status() == Status.HOLD) {
      stopped.add(said.title(decided.reasoned().choice().by().note()) + ".");
    }
    return List.copyOf(stopped);
  }

  /** What nobody has answered yet that evidence for a finding which this move helps hangs on. */
  private List<String> open(Lever lever, Direction direction) {
    OpenAnswers known = known();
    Set<String> helped = new LinkedHashSet<>();
    List<IndexedRule> rules = advisor.rules().index().rules();
    for (IndexedRule rule : rules) {
      rule.acts(Verb.CLAIM)
          .filter(act -> act.word(0).equals(lever.id()) && rule.in(known) != Truth.FALSE)
          .forEach(act -> rules.forEach(term -> helps(act, direction, term, helped)));
    }
    Set<String> open = new LinkedHashSet<>();
    for (IndexedRule rule : rules) {
      boolean evidence =
          rule.acts(Verb.EVIDENCE)
              .anyMatch(act -> act.number(1) > 0 && helped.contains(act.word(0)));
      if (evidence && rule.in(known) == Truth.OPEN) {
        rule.premises().stream()
            .filter(premise -> premise.in(known) == Truth.OPEN)
            .map((Premise premise) -> said.premise(premise))
            .forEach(open::add);
      }
    }
    return open.stream().limit(SHOWN).toList();
  }

  /** Notes the finding of a term that a claim helps by a move that way. */
  private static void helps(Act claim, Direction direction, IndexedRule term, Set<String> helped) {
    boolean same = claim.word(1).equals(direction.id());
    if (!same && !claim.word(6).equals("both")) {
      return;
    }
    int says = same ? claim.number(3) : -claim.number(3);
    term.acts(Verb.TERM)
        .filter(word -> word.word(1).equals(claim.word(2)) && word.word(4).equals("true"))
        .filter(word -> says * (word.number(2) == 0 ? 1 : word.number(2)) > 0)
        .forEach(word -> helped.add(word.word(0)));
  }

  /**
   * A rule in words.
   *
   * @throws IllegalArgumentException if there is no such rule
   */
  public RuleInWords rule(String id) {
    IndexedRule rule =
        advisor
            .rules()
            .index()
            .rule(id)
            .orElseThrow(() -> new IllegalArgumentException("there is no rule \"" + id + '"'));
    Note note = advisor.notes().note(rule.note());
    return new RuleInWords(
        id,
        rule.says(),
        rule.premises().stream().map(said::premise).toList(),
        rule.acts().stream().map(said::act).toList(),
        note.id(),
        note.text("Claim"),
        note.disputed(),
        said.sources(note.id()));
  }

  /**
   * What other answers would change; nothing is noted.
   *
   * @throws IllegalArgumentException if an answer is not of the vocabulary
   */
  public WhatIf whatIf(Map<String, String> answers) {
    Situation other = situation;
    for (Map.Entry<String, String> answer : answers.entrySet()) {
      if (!answer.getValue().equals(Vocabulary.UNKNOWN)) {
        advisor.vocabulary().answer(answer.getKey(), answer.getValue());
      }
      other = with(other, answer.getKey(), answer.getValue());
    }
    Advice before = advisor.advise(situation);
    Advice after = advisor.advise(other);
    List<String> gone = results(before);
    List<String> come = results(after);
    List<String> stays = List.copyOf(gone);
    gone.removeAll(come);
    come.removeAll(stays);
    return new WhatIf(
        Collections.unmodifiableMap(new LinkedHashMap<>(answers)), before, after, gone, come);
  }

  private Situation with(Situation known, String question, String value) {
    return known.with(question, value).settled(advisor::vocabulary);
  }

  /** What a difference is made of: the status, the levers, the checks and the findings. */
  private static List<String> results(Advice advice) {
    List<String> results = new ArrayList<>();
    results.add("status: " + advice.status().id());
    advice.suggestions().forEach(one -> results.add((one.first() ? "now: " : "") + one.summary()));
    advice.firstChecks().forEach(one -> results.add("check: " + one.what()));
    advice
        .findings()
        .forEach(one -> results.add("finding: " + one.words() + " (" + one.strength() + ")"));
    return results;
  }

  private How.Part part(String says, int points, By by, List<String> because) {
    return new How.Part(
        says,
        points,
        by.rule(),
        because,
        by.note(),
        said.title(by.note()),
        said.sources(by.note()));
  }
}
