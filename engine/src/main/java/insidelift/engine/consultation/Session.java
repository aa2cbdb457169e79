package insidelift.engine.consultation;

import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * One consultation: what has been answered, what to ask next, and the way back. Not for several
 * threads.
 */
public final class Session {

  /** What was known before one answer. */
  private record Step(String question, Situation before) {}

  private final Advisor advisor;
  private final NextQuestion next;
  private final Deque<Step> steps = new ArrayDeque<>();
  private Situation situation = Situation.UNKNOWN;

  /** A consultation with nothing known yet. */
  public Session(Advisor advisor) {
    this.advisor = advisor;
    this.next = new NextQuestion(advisor);
  }

  /** Goes on with what was known before. */
  public void resume(Situation before) {
    situation = before;
    steps.clear();
  }

  /** What is known so far. */
  public Situation situation() {
    return situation;
  }

  /** The questions still worth asking, the best first. */
  public List<Question> open() {
    return next.worthAsking(situation, situation.declined());
  }

  /** Notes one answer; {@code unknown} is one too, and is not asked for again. */
  public void answer(String question, String value) {
    begin(question);
    note(question, value);
  }

  /** Notes a number for a question that takes one. */
  public void answer(Question question, double number) {
    begin(question.id());
    situation = situation.with(question, number);
  }

  /** Opens a step that may note several answers, as the screen of safety checks does. */
  public void begin(String name) {
    steps.push(new Step(name, situation));
  }

  /** Notes an answer within the step that is open. */
  public void note(String question, String value) {
    situation = situation.with(question, value);
  }

  /** Notes the kart's settings within the step that is open. */
  public void note(Kart kart) {
    situation = situation.with(kart);
  }

  /** Takes the last step back, and says which it was. */
  public Optional<String> back() {
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    Step step = steps.pop();
    situation = step.before();
    return Optional.of(step.question());
  }

  /** What the advice would come to by now, without its words. */
  public Status status() {
    return advisor.decide(situation).status();
  }

  /** The advice on what is known so far. */
  public Advice advice() {
    return advisor.advise(situation);
  }
}
