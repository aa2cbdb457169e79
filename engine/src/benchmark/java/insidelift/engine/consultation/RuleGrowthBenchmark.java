package insidelift.engine.consultation;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.ConsultationBenchmark.Answered;
import insidelift.rules.GeneratedRules;
import insidelift.rules.RuleBase;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.kie.api.KieBase;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What one decision costs as rules and answers become more, against the rule engine's usual way and
 * against the same rules as plain Java.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RuleGrowthBenchmark {

  private static final Path RULES = Path.of("..", "rules/src/main/resources/insidelift/rules");

  /**
   * The rules so many times over, all of which speak: synthetic, for their copies agree with them.
   */
  @State(Scope.Benchmark)
  public static class Rules {

    @Param({"1", "2", "10"})
    private int times;

    private Advisor pooled;
    private Advisor usual;

    /** Compiles the rules from their files. */
    @Setup
    public void compile(Answered answered) throws IOException {
      KieBase compiled = CompiledRules.of(RULES, times);
      Advisor known = answered.advisor;
      pooled = new Advisor(known.vocabulary(), RuleBase.of(compiled), known.notes());
      usual = new Advisor(known.vocabulary(), RuleBase.ofNewSessions(compiled), known.notes());
    }
  }

  /** The same rules as nested conditions in plain Java, held against the rule engine's. */
  @State(Scope.Benchmark)
  public static class Floor {

    private Advisor advisor;

    /** Writes, compiles and checks them. */
    @Setup
    public void generate(Answered answered) {
      Advisor known = answered.advisor;
      advisor =
          new Advisor(
              known.vocabulary(), GeneratedRules.of(known.rules().index()), known.notes());
      for (Situation situation : answered.situations) {
        if (!same(advisor.decide(situation), known.decide(situation))) {
          throw new IllegalStateException("another decision in " + situation.answers());
        }
      }
    }

    /** A rule that matches twice may do so in either order; nothing else may differ. */
    private static boolean same(Decided one, Decided other) {
      return one.status() == other.status()
          && one.first().equals(other.first())
          && Set.copyOf(one.ledger()).equals(Set.copyOf(other.ledger()))
          && moves(one).equals(moves(other));
    }

    private static List<Object> moves(Decided decided) {
      return decided.verdicts().stream()
          .<Object>map(verdict -> List.of(verdict.lever(), verdict.sized(), verdict.kind()))
          .toList();
    }
  }

  /** Situations in which only so many questions are answered. */
  @State(Scope.Benchmark)
  public static class Partly {

    @Param({"5", "10", "20", "30"})
    private int answers;

    private final List<Situation> situations = new ArrayList<>();
    private int next;

    /** Leaves out answers at random, the same ones every time. */
    @Setup
    public void leaveOut(Answered answered) {
      Random random = new Random(7);
      for (Situation whole : answered.situations) {
        List<Map.Entry<String, String>> all = new ArrayList<>(whole.answers().entrySet());
        Collections.shuffle(all, random);
        Situation part = Situation.UNKNOWN;
        for (Map.Entry<String, String> one : all.subList(0, Math.min(answers, all.size()))) {
          part = part.with(one.getKey(), one.getValue());
        }
        situations.add(part);
      }
    }
  }

  /** With sessions that are used again, as this program has it. */
  @Benchmark
  public Object decideByRules(Answered answered, Rules rules) {
    return rules.pooled.decide(answered.situation());
  }

  /** Rule files compiled by the running program, and a new session for each decision. */
  @Benchmark
  public Object decideTheUsualWay(Answered answered, Rules rules) {
    return rules.usual.decide(answered.situation());
  }

  /** The floor. */
  @Benchmark
  public Object decideInPlainJava(Answered answered, Floor floor) {
    return floor.advisor.decide(answered.situation());
  }

  /** The more that is known, the more rules speak. */
  @Benchmark
  public Object decideByAnswers(Answered answered, Partly partly) {
    partly.next = (partly.next + 1) % partly.situations.size();
    return answered.advisor.decide(partly.situations.get(partly.next));
  }
}
