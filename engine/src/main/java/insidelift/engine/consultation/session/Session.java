package insidelift.engine.consultation.session;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One consultation: what has been answered, what to ask next, and the way back. Not for several
 * threads.
 */
public final class Session {

  /** What was known before one answer. */
  private record Step(String question, Situation before) {}

  private final Supplier<Advisor> loading;
  private Advisor advisor;
  private NextQuestion next;
  private final Deque<Step> steps = new ArrayDeque<>();
  private Situation situation = Situation.UNKNOWN;
  private int bound = Integer.MAX_VALUE;

  /** A consultation with nothing known yet. */
  public Session(Advisor advisor) {
    this(() -> advisor);
  }

  /**
   * A consultation with nothing known yet, whose advisor may still be loading: answers can be noted
   * before it is there, and it is waited for when it is first needed.
   */
  public Session(Supplier<Advisor> loading) {
    this.loading = loading;
  }

  /** Goes on with another advisor. */
  public void consult(Advisor other) {
    advisor = other;
    next = null;
    bound = Integer.MAX_VALUE;
  }

  private Advisor advisor() {
    if (advisor == null) {
      advisor = loading.get();
    }
    return advisor;
  }

  private NextQuestion.Outlook outlook() {
    if (next == null) {
      next = new NextQuestion(advisor().decider());
    }
    return next.outlook(situation);
  }

  /** Goes on with what was known before. */
  public void resume(Situation before) {
    situation = settled(before);
    bound = Integer.MAX_VALUE;
    steps.clear();
  }

  /** What is known so far. */
  public Situation situation() {
    return situation;
  }

  /**
   * The questions still worth asking, the best first. The safety checks come before all others and
   * are one screen. Where it is empty, no answer still open could change what to do now.
   */
  public List<Question> open() {
    return outlook().open();
  }

  /**
   * How many more questions will be asked at most, the screen of safety checks counted as one. It
   * never grows while nothing is taken back or changed: every answer leaves fewer completions, and
   * what matters in none of many matters in none of fewer.
   */
  public int atMost() {
    bound = Math.min(bound, outlook().atMost());
    return bound;
  }

  /** How many more answers would change nothing in what to do now. */
  public int spared() {
    return outlook().spared();
  }

  /** Notes one answer; {@code unknown} is one too, and is not asked for again. */
  public void answer(String question, String value) {
    begin(question);
    note(question, value);
  }

  /** Notes a number for a question that takes one. */
  public void answer(Question question, double number) {
    begin(question.id());
    note(question, number);
  }

  /** Notes a number within the step that is open. */
  public void note(Question question, double number) {
    loosen(question.id());
    situation = settled(situation.with(question, number));
  }

  /** Opens a step that may note several answers, as the screen of safety checks does. */
  public void begin(String name) {
    steps.push(new Step(name, situation));
  }

  /** Notes an answer within the step that is open. */
  public void note(String question, String value) {
    loosen(question);
    situation = settled(situation.with(question, value));
  }

  private Situation settled(Situation told) {
    return told.settled(() -> advisor().vocabulary());
  }

  /** An answer that is changed may open questions again, so the bound has to be found anew. */
  private void loosen(String question) {
    if (situation.answer(question).isPresent() || situation.declined().contains(question)) {
      bound = Integer.MAX_VALUE;
    }
  }

  /** Notes the kart's settings within the step that is open. */
  public void note(Kart kart) {
    situation = settled(situation.with(kart));
    bound = Integer.MAX_VALUE;
  }

  /** Takes the last step back, and says which it was. */
  public Optional<String> back() {
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    Step step = steps.pop();
    bound = Integer.MAX_VALUE;
    situation = step.before();
    return Optional.of(step.question());
  }

  /**
   * Goes on with the next heat of the same kart and driver: what was felt is forgotten, and what
   * was told of this run counts as the newest of those before.
   *
   * @param made whether what was advised was done to camber and caster
   * @param sameTrack whether the track is as it was
   */
  public void nextHeat(boolean made, boolean sameTrack) {
    Advice given = advice();
    resume(new NextHeat(situation, advisor().vocabulary()).after(given, made, sameTrack));
  }

  /** What the advice would come to by now, without its words. */
  public Status status() {
    return advisor().decide(situation).status();
  }

  /** The explanation of what is known so far. */
  public Explanation explain() {
    return new Explanation(advisor(), situation);
  }

  /** The advice on what is known so far. */
  public Advice advice() {
    return advisor().advise(situation);
  }
}
