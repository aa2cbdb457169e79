package insidelift.console;

import insidelift.shared.CheckKind;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Suggestion;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * An advice as text: what to do, then why, then cautions, then the job, then what else could be.
 */
final class AdviceText {

  private final Text text;

  AdviceText(int width) {
    this.text = new Text(width);
  }

  List<String> lines(Advice advice) {
    whatToDo(advice);
    why(advice);
    care(advice);
    job(advice);
    whatElse(advice);
    return text.lines();
  }

  private void whatToDo(Advice advice) {
    text.heading(
        switch (advice.status()) {
          case FIX_FIRST -> "Fix this first: no camber or caster change yet";
          case CHANGE -> "What to do now";
          case HOLD -> "Leave camber and caster as they are";
          case NOT_ENOUGH -> "Not enough to go on yet";
        });
    advice.firstChecks().stream()
        .filter(check -> check.kind() != CheckKind.LOOK)
        .forEach(this::blockingCheck);
    if (advice.status() == Status.NOT_ENOUGH) {
      text.paragraph("Nothing known so far asks for a change or rules one out.");
      advice.wouldHelp().stream()
          .limit(1)
          .forEach(open -> text.paragraph("What would help most: " + open.ask()));
    }
    List<Suggestion> now = advice.suggestions().stream().filter(Suggestion::first).toList();
    now.forEach(this::suggestion);
    List<Suggestion> later =
        advice.suggestions().stream().filter(s -> !s.first() && s.moves()).toList();
    if (!later.isEmpty()) {
      text.blank().paragraph("Not now. Drive first, then, if it is still needed:");
      later.forEach(s -> text.item("  - ", s.summary()));
    }
    List<Suggestion> held = advice.suggestions().stream().filter(s -> !s.moves()).toList();
    if (!held.isEmpty()) {
      text.blank();
      held.forEach(s -> text.item("  = ", s.summary()));
    }
  }

  private void blockingCheck(Check check) {
    text.item("  ! ", check.what() + ".");
    text.item("    ", check.action());
  }

  private void suggestion(Suggestion suggestion) {
    text.item("  > ", suggestion.summary());
    String unsure = suggestion.disputes().isEmpty() ? "" : "; the trade disputes this (see below)";
    text.item(
        "    ",
        "How sure: %s%s. It takes %d to %d minutes with toe."
            .formatted(
                suggestion.strength(),
                unsure,
                suggestion.minutes().from(),
                suggestion.minutes().to()));
  }

  private void why(Advice advice) {
    if (advice.suggestions().isEmpty() && advice.decisions().isEmpty()) {
      return;
    }
    text.heading("Why");
    for (Suggestion suggestion : advice.suggestions()) {
      for (Advice.Reason reason : suggestion.reasons()) {
        text.item("  " + suggestion.lever().id() + ": ", reason.text() + " " + reason.why());
        if (!reason.because().isEmpty()) {
          text.item("    you said: ", String.join("; ", reason.because()));
        }
        text.item("    from: ", String.join("; ", reason.sources()) + " [" + reason.note() + "]");
      }
      for (Advice.Dispute dispute : suggestion.disputes()) {
        text.item("  ", "The trade does not agree on this:");
        dispute.sides().forEach(side -> text.item("    - ", side));
      }
    }
    if (!advice.decisions().isEmpty()) {
      text.blank().paragraph("What decided:");
      advice
          .decisions()
          .forEach(
              decision ->
                  text.item(
                      "  - ",
                      decision.text()
                          + (decision.over().isEmpty()
                              ? ""
                              : " (over " + String.join(", ", decision.over()) + ")")));
    }
  }

  private void care(Advice advice) {
    Set<String> cautions = new LinkedHashSet<>();
    advice.suggestions().forEach(suggestion -> cautions.addAll(suggestion.cautions()));
    List<Check> looks =
        advice.firstChecks().stream().filter(check -> check.kind() == CheckKind.LOOK).toList();
    if (cautions.isEmpty() && looks.isEmpty()) {
      return;
    }
    text.heading("Take care");
    cautions.forEach(caution -> text.item("  ! ", caution));
    looks.stream()
        .filter(check -> check.question() == null)
        .forEach(check -> text.item("  ? ", check.what() + ". " + check.action()));
    List<Check> unseen = looks.stream().filter(check -> check.question() != null).toList();
    if (!unseen.isEmpty()) {
      text.blank().paragraph("Not answered yet: check before you drive.");
      unseen.forEach(check -> text.item("  ? ", check.what()));
    }
  }

  private void job(Advice advice) {
    advice.suggestions().stream()
        .filter(Suggestion::first)
        .findFirst()
        .ifPresent(
            suggestion -> {
              text.heading("The job, step by step");
              int number = 1;
              for (String step : suggestion.steps()) {
                text.item("%3d. ".formatted(number++), step);
              }
            });
    for (Suggestion suggestion : advice.suggestions()) {
      if (suggestion.first()) {
        text.heading("Did it work? (" + suggestion.lever().id() + ")");
        suggestion.confirm().forEach(feel -> text.item("  yes: ", feel));
        suggestion.undo().forEach(undo -> text.item("  no:  ", undo));
      }
    }
  }

  private void whatElse(Advice advice) {
    if (!advice.alternatives().isEmpty()) {
      text.heading("What else could be");
      advice
          .alternatives()
          .forEach(
              other ->
                  text.item("  - ", other.what() + " (" + other.why() + "). " + other.action()));
    }
    if (!advice.unexplained().isEmpty()) {
      text.heading("Not explained by this");
      advice
          .unexplained()
          .forEach(seen -> text.item("  - ", seen.question() + ": " + seen.words()));
    }
    if (!advice.wouldHelp().isEmpty()) {
      text.heading("What would help to know");
      advice.wouldHelp().forEach(open -> text.item("  - ", open.ask() + " (" + open.why() + ")"));
    }
    if (!advice.assumed().isEmpty()) {
      text.heading("Taken for granted");
      advice.assumed().forEach(assumed -> text.item("  - ", assumed));
    }
  }
}
