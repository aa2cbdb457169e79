package insidelift.engine.consultation;

import insidelift.engine.notes.NoteBook;
import insidelift.engine.sizing.Sizer;
import insidelift.engine.units.Units;
import insidelift.rules.Reasoning;
import insidelift.rules.Reasoning.Stage;
import insidelift.rules.RuleBase;
import insidelift.shared.Barred;
import insidelift.shared.CheckKind;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.FirstCheck;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Finding;
import insidelift.shared.Lever;
import insidelift.shared.Move;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gives advice on a situation. One advisor serves any number of threads.
 *
 * <p>Facts flow one way: answers, first checks, findings and limits; then targets, corrections and
 * alternatives; then who outranks whom; then sizes; then cautions.
 */
public final class Advisor {

  /** One of these known is enough to say something, and so is any answer of the safety checks. */
  private static final Set<String> ENOUGH =
      Set.of(
          "water",
          "turn-in",
          "mid-corner",
          "exit",
          "steering-weight",
          "exit-drive",
          "straight-speed",
          "hop",
          "front-wear",
          "front-temps");

  private final Vocabulary vocabulary;
  private final RuleBase rules;
  private final NoteBook notes;
  private final Effects effects;
  private final TrackRecord record;
  private final OpenQuestions open;

  /** An advisor by the given words, rules and notes. */
  public Advisor(Vocabulary vocabulary, RuleBase rules, NoteBook notes) {
    this(
        vocabulary,
        rules,
        notes,
        TrackRecord.NONE,
        new OpenQuestions(vocabulary, rules.index()),
        new Effects());
  }

  private Advisor(
      Vocabulary vocabulary,
      RuleBase rules,
      NoteBook notes,
      TrackRecord record,
      OpenQuestions open,
      Effects effects) {
    this.vocabulary = vocabulary;
    this.rules = rules;
    this.notes = notes;
    this.record = record;
    this.open = open;
    this.effects = effects;
  }

  /** Which questions can still matter by its words and rules. */
  OpenQuestions open() {
    return open;
  }

  /** How advice has done before, as far as this advisor knows. */
  TrackRecord record() {
    return record;
  }

  /** The same advisor, who knows how advice has done before. */
  public Advisor knowing(TrackRecord known) {
    return new Advisor(vocabulary, rules, notes, known, open, effects);
  }

  /**
   * The same advisor by the same rules in another form: what follows from their index alone, and
   * what was computed for a kart, is not found out again.
   */
  Advisor by(RuleBase sameRules) {
    return new Advisor(vocabulary, sameRules, notes, record, open, effects);
  }

  /** An advisor by the words, rules and notes of this build. */
  public static Advisor load() {
    return load(Units.METRIC);
  }

  /** An advisor by the words, rules and notes of this build, who speaks in these units. */
  public static Advisor load(Units units) {
    return AdvisorLoader.now(units).advisor();
  }

  /** The same advisor with a shop's own rules and notes beside its own. */
  public Advisor with(RuleBase moreRules, NoteBook moreNotes) {
    return new Advisor(vocabulary, moreRules, moreNotes);
  }

  /** The words it understands. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** The rules it reasons by. */
  public RuleBase rules() {
    return rules;
  }

  /** The notes it speaks from. */
  public NoteBook notes() {
    return notes;
  }

  /** What to do in a situation, and why. */
  public Advice advise(Situation situation) {
    Effects.check(situation.kart());
    return new Wording(vocabulary, notes, open, effects, situation).advice(decide(situation));
  }

  /**
   * The advice without what is computed for the kart's wheels and without open questions: what
   * holding many cases against the rules needs.
   */
  public Advice outline(Situation situation) {
    return new Wording(vocabulary, notes, null, null, situation).advice(decide(situation));
  }

  /** The decisions on a situation without the words: what comparing many of them needs. */
  public Decided decide(Situation situation) {
    Sizer sizer = new Sizer(situation.kart());
    try (Reasoning reasoning = rules.reason()) {
      List<Contribution> seen =
          sorted(List.of(), reasoning.run(Stage.OBSERVE, situation.facts(vocabulary)));
      Map<String, List<Evidence>> evidence = Weigher.counted(seen);
      List<Finding> findings = Weigher.findings(evidence);
      List<Contribution> asked =
          sorted(seen, reasoning.run(Stage.ADVISE, both(findings, barred(seen))));
      Status blocked = blocked(asked, situation);
      if (blocked != null) {
        return new Decided(blocked, asked, evidence, List.of(), Set.of());
      }
      List<Wish> wishes = Wishes.of(asked, findings, sizer);
      List<Contribution> ranked =
          sorted(asked, reasoning.run(Stage.DECIDE, wishes.stream().map(Wish::fact).toList()));
      Arbiter arbiter = new Arbiter(ranked, wishes, sizer, record);
      List<Verdict> verdicts = arbiter.verdicts();
      Set<Lever> first = arbiter.first(verdicts);
      Status status = first.isEmpty() ? Status.HOLD : Status.CHANGE;
      List<Contribution> ledger = sorted(ranked, reasoning.run(Stage.CARE, moves(verdicts)));
      return new Decided(status, ledger, evidence, verdicts, first);
    }
  }

  private Status blocked(List<Contribution> ledger, Situation situation) {
    boolean fault =
        ledger.stream()
            .anyMatch(entry -> entry instanceof FirstCheck check && check.kind() != CheckKind.LOOK);
    if (fault) {
      return Status.FIX_FIRST;
    }
    return situation.answers().keySet().stream()
            .anyMatch(id -> enough(vocabulary.question(id).orElseThrow()))
        ? null
        : Status.NOT_ENOUGH;
  }

  /** Whether an answer to that question alone is enough to say something. */
  public static boolean enough(Question question) {
    return ENOUGH.contains(question.id()) || question.safety();
  }

  private static List<Move> moves(List<Verdict> verdicts) {
    return verdicts.stream()
        .filter(Verdict::moves)
        .map(verdict -> new Move(verdict.lever().id(), verdict.sized().direction().id()))
        .toList();
  }

  private static List<Barred> barred(List<Contribution> ledger) {
    return ledger.stream()
        .filter(entry -> entry instanceof Limit)
        .map(entry -> (Limit) entry)
        .map(limit -> new Barred(limit.lever().id(), limit.direction().id()))
        .distinct()
        .toList();
  }

  /**
   * The whole ledger in the order of rule names, so that no result depends on the order in which
   * rules spoke.
   *
   * @param before the same at an earlier stage, which has that order already
   */
  private static List<Contribution> sorted(List<Contribution> before, Reasoning reasoning) {
    List<Contribution> spoken = reasoning.contributions();
    List<Contribution> ledger = new ArrayList<>(before);
    ledger.addAll(spoken.subList(before.size(), spoken.size()));
    ledger.sort(Comparator.comparing(entry -> entry.by().rule()));
    return ledger;
  }

  private static List<Object> both(List<?> one, List<?> other) {
    return java.util.stream.Stream.<Object>concat(one.stream(), other.stream()).toList();
  }
}
