package insidelift.engine.consultation;

import insidelift.engine.consultation.foresight.Consistent;
import insidelift.engine.consultation.foresight.Completions;
import insidelift.engine.consultation.foresight.Grid;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.consultation.foresight.Chances;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.engine.consultation.explanation.WhatIf;
import insidelift.engine.sizing.Sizer;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One consultation, its parts and its yardsticks, over random situations that make sense. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ConsultationBenchmark {

  /** Whole situations in which everything that makes sense is answered. */
  @State(Scope.Benchmark)
  public static class Answered {

    private static final int COUNT = 512;

    final Advisor advisor = Advisor.load();
    final Grid grid = new Grid(advisor.vocabulary());
    final List<Situation> situations = new ArrayList<>();
    final List<int[]> points = new ArrayList<>();
    private int next;

    /** Draws the situations, the same ones every time. */
    @Setup
    public void draw() {
      Consistent consistent = new Consistent(grid);
      Completions completions = new Completions(grid, consistent, new Chances(grid), 1);
      SplittableRandom random = new SplittableRandom(7);
      int[] box = new int[grid.size()];
      boolean[] open = new boolean[grid.size()];
      Arrays.fill(open, true);
      Arrays.setAll(box, grid::full);
      while (situations.size() < COUNT) {
        int[] point = completions.draw(random.doubles(grid.size()).toArray(), box, open);
        points.add(point);
        situations.add(grid.situation(point, Situation.UNKNOWN));
      }
    }

    Situation situation() {
      next = (next + 1) % COUNT;
      return situations.get(next);
    }

    int[] point() {
      next = (next + 1) % COUNT;
      return points.get(next);
    }
  }

  /** The rule table, which belongs to one thread. */
  @State(Scope.Thread)
  public static class Table {

    private TableDecision decision;

    /** Reads the table off the index. */
    @Setup
    public void read(Answered answered) {
      RuleTable table = new RuleTable(answered.advisor.rules().index(), answered.grid);
      decision =
          new TableDecision(
              new RuleStates(table, new Sizer(Kart.UNKNOWN)), answered.grid, TrackRecord.NONE);
    }
  }

  /** Consultations in progress: every state between the first question and the last. */
  @State(Scope.Thread)
  public static class Underway {

    private static final int CONSULTATIONS = 150;

    private record At(Situation known, Set<String> skipped) {}

    private final List<At> states = new ArrayList<>();
    private NextQuestion next;
    private int at;

    /** Plays consultations to their ends and keeps what was known at each question. */
    @Setup
    public void play(Answered answered) {
      next = new NextQuestion(answered.advisor);
      for (int i = 0; i < CONSULTATIONS; i++) {
        Situation truth = answered.situations.get(i);
        Situation known = Situation.UNKNOWN;
        Set<String> skipped = new LinkedHashSet<>();
        List<Question> open = next.worthAsking(known, skipped);
        while (!open.isEmpty()) {
          states.add(new At(known, Set.copyOf(skipped)));
          List<Question> safety = open.stream().filter(Question::safety).toList();
          for (Question question : safety.isEmpty() ? open.subList(0, 1) : safety) {
            String answer = truth.answer(question.id()).orElse(Vocabulary.UNKNOWN);
            known = known.with(question.id(), answer);
            if (answer.equals(Vocabulary.UNKNOWN)) {
              skipped.add(question.id());
            }
          }
          open = next.worthAsking(known, skipped);
        }
      }
    }

    /** Forgets what was chosen before: it is the choice that is measured, not the memory. */
    @Setup(Level.Invocation)
    public void forget() {
      next.chosen.clear();
      at = (at + 1) % states.size();
    }
  }

  /** What to do now by the rule engine, from full answers. */
  @Benchmark
  public Object decide(Answered answered) {
    return answered.advisor.decide(answered.situation());
  }

  /** The whole advice with its words. */
  @Benchmark
  public Advice advise(Answered answered) {
    return answered.advisor.advise(answered.situation());
  }

  /** The same decisions off the rule table, without the rule engine. */
  @Benchmark
  public Object decideOffTheTable(Answered answered, Table table) {
    return table.decision.decide(answered.point());
  }

  /** One other answer tried on a copy, and the difference in words. */
  @Benchmark
  public WhatIf whatIf(Answered answered) {
    return new Explanation(answered.advisor, answered.situation()).whatIf(Map.of("water", "wet"));
  }

  /** From an answer to the next question. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  public List<Question> nextQuestion(Underway underway) {
    Underway.At state = underway.states.get(underway.at);
    return underway.next.worthAsking(state.known(), state.skipped());
  }
}
