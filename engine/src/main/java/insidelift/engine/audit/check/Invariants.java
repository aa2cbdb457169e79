package insidelift.engine.audit.check;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.LeverOutcome;
import insidelift.rules.fact.Barred;
import insidelift.rules.fact.Spoken.Care;
import insidelift.rules.fact.Spoken.Check;
import insidelift.rules.fact.Spoken.Job;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** What must hold in every situation by itself, whatever is told. */
public final class Invariants implements SituationVisitor {

  private static final List<String> PHASES = List.of("turn-in", "mid-corner", "exit");

  private final Vocabulary words;
  private final Map<String, BiPredicate<Situation, Decided>> invariants = new LinkedHashMap<>();
  private final Map<String, Remark> broken = new LinkedHashMap<>();

  public Invariants(Vocabulary words) {
    this.words = words;
    invariants.put("a lever is moved one way only", (s, d) -> oneWay(d));
    invariants.put("a fault moves no lever", this::faultMovesNothing);
    invariants.put("too heavy a steering gets no more caster", Invariants::heavy);
    invariants.put("a move has reasons, cautions and a job", (s, d) -> complete(d));
    invariants.put("a limit is respected", (s, d) -> limited(d));
    invariants.put("a move stays in its lever's range", (s, d) -> inRange(d));
    invariants.put("one correction at a time, targets together", (s, d) -> oneAtATime(d));
    invariants.put("where all is good nothing is corrected", this::good);
  }

  /** What holds, in words. */
  Set<String> names() {
    return invariants.keySet();
  }

  /** Where one did not hold, with the first situation that shows it. */
  public List<Remark> remarks() {
    return new ArrayList<>(broken.values());
  }

  @Override
  public void see(Situation situation, Decided decided) {
    invariants.forEach(
        (name, holds) -> {
          if (!broken.containsKey(name) && !holds.test(situation, decided)) {
            broken.put(
                name,
                Remark.of(name, Severity.ERROR, "it does not hold that " + name)
                    .shownBy(situation.answers()));
          }
        });
  }

  private static Stream<LeverOutcome> moving(Decided decided) {
    return decided.verdicts().stream().filter(LeverOutcome::moves);
  }

  private static boolean oneWay(Decided decided) {
    return decided.verdicts().stream().map(LeverOutcome::lever).distinct().count()
        == decided.verdicts().size();
  }

  private boolean faultMovesNothing(Situation situation, Decided decided) {
    boolean fault =
        situation.answers().entrySet().stream()
            .anyMatch(
                answer ->
                    words
                        .question(answer.getKey())
                        .flatMap(question -> question.value(answer.getValue()))
                        .filter(Value::fault)
                        .isPresent());
    boolean blocked = decided.reasoned().all(Check.class).anyMatch(Check::stops);
    return (!fault || blocked)
        && blocked == (decided.status() == Status.FIX_FIRST)
        && (!blocked || decided.verdicts().isEmpty());
  }

  private static boolean heavy(Situation situation, Decided decided) {
    return situation.answer("steering-weight").filter("heavy"::equals).isEmpty()
        || moving(decided)
            .noneMatch(
                move -> move.lever() == Lever.CASTER && move.sized().direction() == Direction.MORE);
  }

  private static boolean complete(Decided decided) {
    return moving(decided)
        .allMatch(
            move ->
                !(move.by().isEmpty() && move.helps().isEmpty())
                    && decided
                        .reasoned()
                        .all(Care.class)
                        .anyMatch(
                            care ->
                                care.lever().equals("both")
                                    || care.lever().equals(move.lever().id()))
                    && decided.reasoned().all(Job.class).findAny().isPresent());
  }

  private static boolean limited(Decided decided) {
    return moving(decided)
        .allMatch(
            move ->
                decided
                    .reasoned()
                    .all(Barred.class)
                    .filter(limit -> limit.lever().equals(move.lever().id()))
                    .filter(limit -> limit.direction().equals(move.sized().direction().id()))
                    .noneMatch(limit -> limit.binds(choice(move))));
  }

  private static String choice(LeverOutcome move) {
    return switch (move.kind()) {
      case TARGET, RESTORE -> "restore";
      case UNDO -> "undo";
      case CORRECTION -> "move";
    };
  }

  /** For a kart of which nothing is known: zero camber, neutral caster, one degree a position. */
  private static boolean inRange(Decided decided) {
    return moving(decided)
        .allMatch(
            move -> {
              double end = move.sized().target().left().value();
              return move.lever() == Lever.CAMBER
                  ? end >= -1.001 && end <= 2.001
                  : end >= -3.001 && end <= 3.001;
            });
  }

  private static boolean oneAtATime(Decided decided) {
    long now = decided.now().size();
    boolean correction = decided.now().stream().anyMatch(move -> move.kind() == Kind.CORRECTION);
    return (!correction || now == 1)
        && decided.now().stream().map(LeverOutcome::kind).distinct().count() <= (correction ? 1 : 2)
        && (decided.status() == Status.CHANGE) == (now > 0);
  }

  private boolean good(Situation situation, Decided decided) {
    boolean good =
        PHASES.stream()
                .allMatch(phase -> situation.answer(phase).filter("good"::equals).isPresent())
            && situation.facts(words).stream().noneMatch(answer -> answer.complaint())
            && situation.answer("last-effect").filter("worse"::equals).isEmpty();
    return !good || moving(decided).noneMatch(move -> move.kind() == Kind.CORRECTION);
  }

  /** Which way each lever goes. */
  static Map<Lever, Direction> ways(Advisor advisor, Situation situation) {
    Map<Lever, Direction> ways = new LinkedHashMap<>();
    moving(advisor.decide(situation))
        .forEach(move -> ways.put(move.lever(), move.sized().direction()));
    return ways;
  }
}
