package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.sizing.Sizer;
import insidelift.engine.training.card.Card.Option;
import insidelift.shared.Answer;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * One case while somebody works on it: the engine answers as driver, kart and tyres would, and
 * every move is written down. Not for several threads.
 */
public final class Drill {

  /**
   * What stands for "no finding": the kart is good, or the track or the last change decides by
   * itself; and for "no other lever".
   */
  public static final String NONE = "none";

  private final Advisor advisor;
  private final Ladder ladder;
  private final DrillCase hidden;
  private final Map<String, String> truth;
  private final Conclusion right;
  private final List<DrillMove> moves = new ArrayList<>();
  private Situation known;

  /**
   * A case at its start.
   *
   * @throws IllegalArgumentException if too little is known in it for the rules to say anything
   */
  public Drill(Advisor advisor, NextQuestion next, DrillCase hidden) {
    this.advisor = advisor;
    this.ladder = new Ladder(advisor, next);
    this.hidden = hidden;
    this.known = Situation.UNKNOWN.with(hidden.hidden().kart());
    this.truth = new HashMap<>();
    for (Answer answer : hidden.hidden().facts(advisor.vocabulary())) {
      truth.put(answer.question(), answer.value());
    }
    this.right = Conclusion.of(advisor.decider(), hidden.hidden());
    if (right.status() == Status.NOT_ENOUGH) {
      throw new IllegalArgumentException("too little is known in this case to say anything");
    }
  }

  /** The case. */
  public DrillCase hidden() {
    return hidden;
  }

  /** What the trainee knows so far. */
  public Situation known() {
    return known;
  }

  /** What the rules make of the whole case. */
  public Conclusion right() {
    return right;
  }

  /** What one position of a lever moves on this kart, in degrees. */
  public double position(Lever lever) {
    return new Sizer(hidden.hidden().kart()).step(lever).value();
  }

  /** Whether that was measured on this kart rather than taken for granted. */
  public boolean measured(Lever lever) {
    return new Sizer(hidden.hidden().kart()).measured(lever);
  }

  /** The moves so far. */
  public List<DrillMove> moves() {
    return List.copyOf(moves);
  }

  /** Whether the kart has been looked over. */
  public boolean looked() {
    return moves.contains(new DrillMove.Look());
  }

  /** Whether a question has been asked, or answered by looking the kart over. */
  public boolean asked(Question question) {
    return moves.contains(new DrillMove.Ask(question.id())) || (looked() && question.safety());
  }

  /** What was found by looking the kart over, as statements; nothing if it is sound. */
  public List<String> look() {
    moves.add(new DrillMove.Look());
    known = looked(known, truth, advisor.vocabulary());
    return advisor.vocabulary().questions().stream()
        .filter(Question::safety)
        .flatMap(
            question ->
                known.answer(question.id()).flatMap(question::value).stream()
                    .filter(value -> value.fault() || value.complaint())
                    .map(value -> value.said() == null ? value.words() : value.said()))
        .toList();
  }

  /** What is known after the kart has been looked over. */
  static Situation looked(Situation before, Map<String, String> truth, Vocabulary vocabulary) {
    Situation after = before;
    for (Question question : vocabulary.questions()) {
      if (question.safety()) {
        after = after.with(question.id(), truth.getOrDefault(question.id(), Vocabulary.UNKNOWN));
      }
    }
    return after;
  }

  /**
   * The answer to a question: a value's id, or {@code unknown} where the case does not say.
   *
   * @throws IllegalArgumentException if there is no such question
   */
  public String ask(String question) {
    if (advisor.vocabulary().question(question).isEmpty()) {
      throw new IllegalArgumentException("there is no question \"" + question + '"');
    }
    moves.add(new DrillMove.Ask(question));
    String answer = truth.getOrDefault(question, Vocabulary.UNKNOWN);
    known = known.with(question, answer);
    return answer;
  }

  /** The next rung of the ladder of hints for what is known now. */
  public String hint() {
    String hint = ladder.rung(known, moves);
    moves.add(new DrillMove.Hint());
    return hint;
  }

  /** Says something of the conclusion. */
  public void say(DrillMove move) {
    moves.add(move);
  }

  /**
   * Makes any move, and returns what comes back in words; nothing comes back of a conclusion.
   *
   * @throws IllegalArgumentException if it names a question, a finding, a lever or a note that
   *     there is not
   */
  public String take(DrillMove move) {
    check(move);
    if (move instanceof DrillMove.Look) {
      List<String> found = look();
      return found.isEmpty() ? "nothing is wrong with it" : String.join("; ", found);
    }
    if (move instanceof DrillMove.Ask ask) {
      String value = ask(ask.question());
      return advisor
          .vocabulary()
          .question(ask.question())
          .flatMap(question -> question.value(value))
          .map(Value::words)
          .orElse("nobody can say");
    }
    if (move instanceof DrillMove.Hint) {
      return hint();
    }
    say(move);
    return "";
  }

  /** A log outlives vocabularies: what it names need not be there any more. */
  private void check(DrillMove move) {
    boolean there = true;
    if (move instanceof DrillMove.Ask ask) {
      there = advisor.vocabulary().question(ask.question()).isPresent();
    } else if (move instanceof DrillMove.Found found) {
      there =
          found.finding().equals(NONE)
              || advisor.vocabulary().findings().stream()
                  .anyMatch(finding -> finding.id().equals(found.finding()));
    } else if (move instanceof DrillMove.First first) {
      there = first.step().equals(NONE) || FirstLever.steps(advisor).containsKey(first.step());
    } else if (move instanceof DrillMove.Because because) {
      there = advisor.notes().find(because.note()).isPresent();
    }
    if (!there) {
      throw new IllegalArgumentException(
          Printable.quoted(move.words()) + " names something that this build does not have");
    }
  }

  /**
   * What is accepted as the finding and as the reason.
   *
   * @param findings the findings, or {@link #NONE}
   * @param reasons the notes
   */
  record Accepted(Set<String> findings, Set<String> reasons) {}

  /**
   * What the rules make of the whole case; and, where it leads to the same moves, what they make of
   * the part that is known: nobody has to name what no question worth asking would have shown.
   */
  Accepted accepted() {
    Set<String> findings = new TreeSet<>(named(right));
    Set<String> reasons = new TreeSet<>(right.reasons());
    Conclusion heard = Conclusion.of(advisor.decider(), known);
    if (sameNow(heard)) {
      findings.addAll(named(heard));
      reasons.addAll(heard.reasons());
    }
    return new Accepted(findings, reasons);
  }

  private static Set<String> named(Conclusion conclusion) {
    return conclusion.findings().isEmpty() ? Set.of(NONE) : conclusion.findings();
  }

  boolean sameNow(Conclusion heard) {
    return heard.status() == right.status() && heard.moves().equals(right.moves());
  }

  /**
   * What can be said to be the reason: one note behind what the rules make of the case, and others
   * whose rules did not speak. The same case, with the same answers, always has the same list.
   */
  public List<Option> reasons() {
    return Reasons.offered(advisor, this);
  }
}
