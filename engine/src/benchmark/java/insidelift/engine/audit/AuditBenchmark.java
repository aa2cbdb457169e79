package insidelift.engine.audit;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.foresight.Witness;
import insidelift.engine.consultation.foresight.Grid;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;

/** How many situations the audit visits in a second, every invariant held, on one thread and two. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class AuditBenchmark {

  /** Situations in which every rule speaks at least once. */
  @State(Scope.Benchmark)
  public static class Visits {

    private final Advisor advisor = new Knowledge(Advisor.load(), LocalDate.MIN).plain();
    private List<Situation> situations;

    /** Draws them off the rule index. */
    @Setup
    public void draw() {
      Grid grid = new Grid(advisor.vocabulary());
      situations =
          Witness.all(advisor.rules().index(), grid).stream()
              .map(point -> grid.situation(point, Situation.UNKNOWN))
              .toList();
    }
  }

  /** What one thread watches. */
  @State(Scope.Thread)
  public static class Watching {

    private Invariants invariants;
    private int next;

    /** Forgets what an earlier round saw. */
    @Setup
    public void begin(Visits visits) {
      invariants = new Invariants(visits.advisor.vocabulary());
    }
  }

  private static Decided visit(Visits visits, Watching watching) {
    watching.next = (watching.next + 1) % visits.situations.size();
    Situation situation = visits.situations.get(watching.next);
    Decided decided = visits.advisor.decide(situation);
    watching.invariants.see(situation, decided);
    return decided;
  }

  /** On one thread. */
  @Benchmark
  @Threads(1)
  public Object auditOnOneThread(Visits visits, Watching watching) {
    return visit(visits, watching);
  }

  /** On two. */
  @Benchmark
  @Threads(2)
  public Object auditOnTwoThreads(Visits visits, Watching watching) {
    return visit(visits, watching);
  }
}
