package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.engine.notes.Note;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What there is to say to a trainee: only of moves that were clearly worse than the engine's, each
 * with what the ledger says. Of a good move it says nothing.
 */
public final class Feedback {

  /** A question that gives less than this part of the engine's information was clearly worse. */
  private static final double CLEARLY_WORSE = 0.5;

  /** Bits by which a question must fall behind to be spoken of. */
  private static final double WORTH_SAYING = 0.05;

  /** Questions spoken of: the worst; more would be a lecture. */
  private static final int QUESTIONS = 3;

  /** Lines of what a better question serves: a few claims say enough. */
  private static final int SERVES = 5;

  /**
   * One thing to say.
   *
   * @param what what was worse, in one or two sentences
   * @param ledger what the engine has on it, as lines of at most 80 columns
   */
  public record Remark(String what, List<String> ledger) {}

  private final Advisor advisor;
  private final Judgement judgement;
  private final Conclusion right;
  private final Explanation explanation;

  private Feedback(Advisor advisor, Judgement judgement) {
    this.advisor = advisor;
    this.judgement = judgement;
    this.right = judgement.drill().right();
    this.explanation = new Explanation(advisor, judgement.drill().hidden().hidden());
  }

  /** What there is to say of an attempt, the gravest first. */
  public static List<Remark> on(Advisor advisor, Judgement judgement) {
    Feedback feedback = new Feedback(advisor, judgement);
    List<Remark> remarks = new ArrayList<>();
    feedback.safety(remarks);
    feedback.conclusion(remarks);
    feedback.reason(remarks);
    feedback.questions(remarks);
    return remarks;
  }

  private void safety(List<Remark> remarks) {
    switch (judgement.safety()) {
      case MISSED -> {
        for (String fault : right.reasons()) {
          Note note = advisor.notes().note(fault);
          remarks.add(
              new Remark(
                  "A fault was missed, the worst mistake there is: "
                      + note.title()
                      + ". "
                      + note.text("Do"),
                  rule(fault)));
        }
      }
      case FORBIDDEN ->
          judgement
              .forbidden()
              .forEach(
                  bar ->
                      remarks.add(
                          new Remark(
                              "%s was moved in a way that must not be: %s."
                                  .formatted(
                                      name(bar.lever().id()),
                                      advisor.notes().note(bar.note()).title()),
                              explanation.whyNot(bar.lever(), bar.direction()).lines())));
      case LUCKY ->
          remarks.add(
              new Remark(
                  "Nobody looked the kart over. It was sound this time; that was luck.",
                  List.of()));
      case SAFE -> {
        // Nothing to say of what was done right.
      }
    }
  }

  private void conclusion(List<Remark> remarks) {
    if (right.status() == Status.FIX_FIRST) {
      return;
    }
    if (judgement.fixFirst()) {
      remarks.add(
          new Remark(
              "Nothing had to be put right first. What to do: "
                  + Answers.words(right, advisor.notes())
                  + ".",
              List.of()));
      return;
    }
    if (!judgement.rightFinding() && !right.findings().isEmpty()) {
      String finding = right.findings().iterator().next();
      remarks.add(
          new Remark(
              "The answers said something else: "
                  + advisor.vocabulary().finding(finding).orElseThrow().words()
                  + ".",
              explanation.how(finding).lines()));
    } else if (!judgement.rightFinding()) {
      judgement
          .found()
          .ifPresent(
              name ->
                  remarks.add(
                      new Remark("No finding decides here.", explanation.how(name).lines())));
    }
    first(remarks);
    for (Lever lever : Lever.values()) {
      lever(lever, remarks);
    }
  }

  /** What comes before camber and caster: in three lines at most what, how long and why. */
  private void first(List<Remark> remarks) {
    FirstLever before = judgement.before();
    if (before.keep() && judgement.changed()) {
      remarks.add(
          new Remark(
              "This kart is good, so any change is wrong. " + before.choice().text("Claim"),
              List.of()));
      return;
    }
    judgement
        .firstJudged()
        .filter(judged -> judged != Judgement.First.RIGHT)
        .ifPresent(judged -> remarks.add(first(before, judged, judgement.first().orElseThrow())));
  }

  private Remark first(FirstLever before, Judgement.First judged, String said) {
    Optional<OtherLever> turned =
        judged == Judgement.First.WRONG_WAY ? before.otherWay(said) : Optional.empty();
    Optional<OtherLever> rightLever = turned.filter(other -> before.leads().contains(other.move()));
    String wrong;
    if (said.equals(Drill.NONE)) {
      wrong = "Something was left out.";
    } else if (judged == Judgement.First.HALF) {
      wrong = "Worth a try, but not first.";
    } else if (rightLever.isPresent()) {
      wrong = "Right lever, wrong way.";
    } else if (turned.isPresent()) {
      wrong = "Wrong way, and not first.";
    } else {
      wrong = name(said.substring(0, said.indexOf(' '))) + " does not come first.";
    }
    String instead =
        rightLever
            .or(before::lead)
            .map(Feedback::words)
            .orElse(
                "Nothing comes before camber and caster here: %s."
                    .formatted(before.choice().because()));
    return new Remark(wrong + " " + instead, turned.map(this::otherWay).orElse(List.of()));
  }

  /** The lever that comes first, how long it takes, and what it helps. */
  public static String words(OtherLever lead) {
    return "First comes, in %d minutes: %s%s.%s"
        .formatted(
            lead.minutes(),
            lead.what().substring(0, 1).toLowerCase(Locale.ROOT) + lead.what().substring(1),
            lead.disputed() ? " (experts split: try it)" : "",
            lead.helps().stream()
                .findFirst()
                .map(finding -> " It helps where " + finding + ".")
                .orElse(""));
  }

  /** What the tables and the lever's note have on the way that it should go. */
  private List<String> otherWay(OtherLever other) {
    Decided decided = advisor.decide(judgement.drill().hidden().hidden());
    return FirstLever.line(advisor, decided, other.move())
        .map(line -> explanation.rule(line).lines())
        .orElseGet(() -> rule(advisor.vocabulary().lever(other.lever()).orElseThrow().note()));
  }

  private void lever(Lever lever, List<Remark> remarks) {
    Step said = judgement.moved().get(lever);
    Step wanted = right.moves().get(lever);
    if (said != null && (wanted == null || said.direction() != wanted.direction())) {
      remarks.add(
          new Remark(
              "%s should not go that way now.".formatted(name(lever.id())),
              explanation.whyNot(lever, said.direction()).lines()));
    } else if (said == null && wanted != null) {
      remarks.add(
          new Remark(
              "%s should be moved now: %s."
                  .formatted(name(lever.id()), Answers.words(lever, wanted)),
              explanation.how(lever.id()).lines()));
    } else if (said != null
        && Math.abs(said.degrees() - wanted.degrees()) >= Judgement.SAME_DEGREES) {
      remarks.add(
          new Remark(
              "%s: the way is right, the size is not; it is %s, not %s."
                  .formatted(
                      name(lever.id()), Degrees.of(wanted.degrees()), Degrees.of(said.degrees())),
              explanation.how(lever.id()).lines()));
    }
  }

  private void reason(List<Remark> remarks) {
    judgement
        .because()
        .filter(note -> !judgement.rightReason())
        .ifPresent(
            note ->
                remarks.add(
                    new Remark(
                        "\"%s\" is not the reason here: its rule did not speak. What holds: %s."
                            .formatted(title(note), title(right.reasons().iterator().next())),
                        rule(note))));
  }

  private void questions(List<Remark> remarks) {
    judgement.questions().stream()
        .filter(asked -> !asked.hinted() && asked.worth() < CLEARLY_WORSE)
        .filter(asked -> asked.betterBits() - asked.bits() >= WORTH_SAYING)
        .sorted(
            (one, other) ->
                Double.compare(other.betterBits() - other.bits(), one.betterBits() - one.bits()))
        .limit(QUESTIONS)
        .forEach(asked -> remarks.add(question(asked)));
    List<String> late =
        judgement.questions().stream()
            .filter(asked -> asked.better().isEmpty())
            .map(Asking.Asked::question)
            .toList();
    if (!late.isEmpty()) {
      remarks.add(
          new Remark(
              "Asked after no answer could change what to do: " + String.join(", ", late) + ".",
              List.of()));
    }
    if (!judgement.leftOut().isEmpty()) {
      remarks.add(
          new Remark(
              "Decided while answers were open that could still change it: "
                  + String.join(", ", judgement.leftOut())
                  + ".",
              List.of()));
    }
  }

  private Remark question(Asking.Asked asked) {
    List<String> ledger = new ArrayList<>();
    String better = "Looking the kart over";
    if (!asked.better().equals(Asking.LOOK)) {
      Question question = advisor.vocabulary().question(asked.better()).orElseThrow();
      better = "\"" + question.ask() + "\"";
      List<String> why = new Explanation(advisor, asked.before()).why(asked.better()).lines();
      ledger.addAll(why.subList(0, Math.min(SERVES, why.size())));
    }
    return new Remark(
        String.format(
            Locale.ROOT,
            "\"%s\" was expected to tell %.2f bits at that point; %s would have told %.2f.",
            asked.question(),
            asked.bits(),
            better,
            asked.betterBits()),
        ledger);
  }

  /** The first rule that stands on a note, in words: what it needs, and so what was missing. */
  private List<String> rule(String note) {
    return advisor.rules().index().rules().stream()
        .filter(rule -> rule.note().equals(note))
        .map(IndexedRule::id)
        .findFirst()
        .map(id -> explanation.rule(id).lines())
        .orElse(List.of());
  }

  private String title(String note) {
    return advisor.notes().note(note).title();
  }

  private static String name(String lever) {
    return lever.substring(0, 1).toUpperCase(Locale.ROOT) + lever.substring(1);
  }
}
