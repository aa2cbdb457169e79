package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.Map;

/**
 * Hints, each rung telling more than the one before: while a question can still matter, the part of
 * the job it belongs to, then the question; when none can, that none can, then what the answers
 * say, then what to do. A new answer leads back to the first rung.
 */
final class Ladder {

  /** What a rung gives away. */
  enum Rung {
    /** Which part of the job to look at. */
    PART,
    /** The next question. */
    QUESTION,
    /** That it is time to decide. */
    ENOUGH,
    /** What the answers say. */
    FINDING,
    /** What to do. */
    ANSWER
  }

  private static final Map<String, String> PARTS =
      Map.of(
          "safety", "the kart itself, before anything else",
          "track", "the track",
          "feel", "what the kart does in the corner",
          "driver", "the driver and the class",
          "tyres", "the tyres",
          "history", "what was changed before the last run",
          "kart", "what can be moved on this front end",
          "time", "the time that is left");

  private final Advisor advisor;
  private final NextQuestion next;

  Ladder(Advisor advisor, NextQuestion next) {
    this.advisor = advisor;
    this.next = next;
  }

  /** The rung that a hint at this point would be on. */
  static Rung rung(List<DrillMove> before, boolean open) {
    int taken = 0;
    for (int i = before.size() - 1; i >= 0 && before.get(i) instanceof DrillMove.Hint; i--) {
      taken++;
    }
    if (open) {
      return taken == 0 ? Rung.PART : Rung.QUESTION;
    }
    return switch (taken) {
      case 0 -> Rung.ENOUGH;
      case 1 -> Rung.FINDING;
      default -> Rung.ANSWER;
    };
  }

  String rung(Situation known, List<DrillMove> before) {
    List<Question> open = next.worthAsking(known);
    return switch (rung(before, !open.isEmpty())) {
      case PART -> "Look next at " + PARTS.get(open.get(0).group()) + ".";
      case QUESTION ->
          open.get(0).safety()
              ? "Look the kart over: a fault comes before any lever."
              : "Ask: " + open.get(0).ask() + " (" + open.get(0).why() + ")";
      case ENOUGH -> "No answer still open can change what to do now: decide.";
      case FINDING -> finding(known);
      case ANSWER -> answer(known);
    };
  }

  private String finding(Situation known) {
    Conclusion now = Conclusion.of(advisor.decider(), known);
    if (now.status() == Status.FIX_FIRST) {
      return "Something has to be put right before a lever is touched.";
    }
    if (now.findings().isEmpty()) {
      return "No finding decides here: the track, the last change or a limit does.";
    }
    return "What the answers say: "
        + String.join("; ", now.findings().stream().map(this::words).toList())
        + ".";
  }

  private String words(String finding) {
    return advisor.vocabulary().finding(finding).orElseThrow().words();
  }

  private String answer(Situation known) {
    Conclusion now = Conclusion.of(advisor.decider(), known);
    String first = advisor.outline(known).lead().map(lead -> " " + Feedback.words(lead)).orElse("");
    return "What to do: " + Answers.words(now, advisor.notes()) + "." + first;
  }
}
