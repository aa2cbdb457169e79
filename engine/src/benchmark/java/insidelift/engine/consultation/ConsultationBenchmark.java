package insidelift.engine.consultation;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decider;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.engine.consultation.explanation.WhatIf;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.training.drill.Imagined;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One consultation, its parts and its yardsticks, over imagined situations. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ConsultationBenchmark {

  /** Whole situations in which everything that makes sense is answered. */
  @State(Scope.Benchmark)
  public static class Answered {

    private static final int COUNT = 512;

    private final Advisor advisor = Advisor.load();
    private final Decider plain =
        new Decider(advisor.vocabulary(), advisor.rules().plain());
    private final List<Situation> situations = new ArrayList<>();
    private int next;

    /** Draws the situations, the same ones every time. */
    @Setup
    public void draw() {
      Imagined imagined = new Imagined(advisor.decider());
      for (int i = 0; i < COUNT; i++) {
        situations.add(imagined.whole(i));
      }
    }

    Situation situation() {
      next = (next + 1) % COUNT;
      return situations.get(next);
    }
  }

  /** Consultations in progress: every state between the first question and the last. */
  @State(Scope.Thread)
  public static class Underway {

    private static final int CONSULTATIONS = 150;

    private final List<Situation> states = new ArrayList<>();
    private NextQuestion next;
    private int at;

    /** Plays consultations to their ends and keeps what was known at each question. */
    @Setup
    public void play(Answered answered) {
      next = new NextQuestion(answered.advisor.decider());
      for (int i = 0; i < CONSULTATIONS; i++) {
        Situation truth = answered.situations.get(i);
        Situation known = Situation.UNKNOWN;
        List<Question> open = next.worthAsking(known);
        while (!open.isEmpty()) {
          states.add(known);
          List<Question> safety = open.stream().filter(Question::safety).toList();
          for (Question question : safety.isEmpty() ? open.subList(0, 1) : safety) {
            known =
                known.with(
                    question.id(), truth.answer(question.id()).orElse(Vocabulary.UNKNOWN));
          }
          open = next.worthAsking(known);
        }
      }
    }

    /** Forgets what was chosen before: it is the choice that is measured, not the memory. */
    @Setup(Level.Iteration)
    public void forget(Answered answered) {
      next = new NextQuestion(answered.advisor.decider());
      at = 0;
    }
  }

  /** What to do now by the rule engine, from full answers. */
  @Benchmark
  public Object decide(Answered answered) {
    return answered.advisor.decide(answered.situation());
  }

  /** The same decisions off the rule index, without the rule engine. */
  @Benchmark
  public Object decideOffTheIndex(Answered answered) {
    return answered.plain.decide(answered.situation());
  }

  /** The whole advice with its words. */
  @Benchmark
  public Advice advise(Answered answered) {
    return answered.advisor.advise(answered.situation());
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
    underway.at = (underway.at + 1) % underway.states.size();
    return underway.next.worthAsking(underway.states.get(underway.at));
  }
}
