package insidelift.console.learning;

import insidelift.console.asking.ChoiceCard;
import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.Text;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.notes.Note;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.DrillCase;
import insidelift.engine.training.drill.DrillMove;
import insidelift.engine.training.drill.Feedback;
import insidelift.engine.training.drill.Feedback.Remark;
import insidelift.engine.training.drill.Judgement;
import insidelift.shared.CheckKind;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Kart;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A case, its moves and what they came to, as text: the same for a live drill and a replay. */
final class DrillText {

  private final int width;
  private final Advisor advisor;

  DrillText(int width, Advisor advisor) {
    this.width = width;
    this.advisor = advisor;
  }

  /** What is told at the start. */
  List<String> opening(String title, DrillCase hidden) {
    Text text = new Text(width).line("").heading(title);
    text.paragraph(
        "A driver comes in and wants a better kart. Find out what you need, then decide what comes"
            + " first and what to do with the front end now.");
    text.paragraph(settings(hidden.hidden().kart()));
    return text.lines();
  }

  private static String settings(Kart kart) {
    if (kart.camber().isEmpty() && kart.caster().isEmpty()) {
      return "The kart stands at zero camber and neutral caster, as far as anybody knows.";
    }
    String camber =
        kart.camber()
            .map(
                sides ->
                    "camber %s left, %s right"
                        .formatted(sides.left().signed(), sides.right().signed()))
            .orElse("camber not measured");
    String caster =
        kart.caster()
            .map(
                sides ->
                    "caster %s left, %s right"
                        .formatted(sides.left().signed(), sides.right().signed()))
            .orElse("caster not measured");
    String reference = kart.absolute() ? " (absolute)" : " (from neutral)";
    return "The kart was measured: "
        + camber
        + "; "
        + caster
        + (kart.caster().isPresent() ? reference : "")
        + ".";
  }

  /** What one position of a lever moves on a kart. */
  static String step(Drill drill, Lever lever) {
    return "one position moves %s, %s"
        .formatted(
            Degrees.of(drill.position(lever)),
            drill.measured(lever) ? "measured" : "as far as anybody knows");
  }

  /** A move, and what came back. */
  List<String> move(DrillMove move, String back) {
    String said =
        move instanceof DrillMove.Look
            ? "  the kart: " + back
            : move instanceof DrillMove.Ask ask
                ? "  " + ask.question() + ": " + back
                : move instanceof DrillMove.Hint ? "  hint: " + back : "";
    return said.isEmpty() ? List.of() : new Text(width).item("  ", said.strip()).lines();
  }

  /** The whole of a move, as a replay shows it. */
  List<String> replayed(DrillMove move, String back) {
    Text text = new Text(width);
    if (move instanceof DrillMove.FixFirst) {
      text.item("  said: ", "put something right first");
    } else if (move instanceof DrillMove.Found found) {
      text.item(
          "  said: ",
          advisor
              .vocabulary()
              .finding(found.finding())
              .map(word -> word.words())
              .orElse("no finding decides"));
    } else if (move instanceof DrillMove.First first) {
      text.item("  first: ", firstWords(first.step()));
    } else if (move instanceof DrillMove.Move set) {
      text.item("  said: ", set.lever().id() + " " + words(set.step()));
    } else if (move instanceof DrillMove.Because because) {
      text.item(
          "  because: ",
          advisor.notes().find(because.note()).map(Note::title).orElse(because.note()));
    } else {
      move(move, back).forEach(text::line);
    }
    return text.lines();
  }

  private String firstWords(String step) {
    int space = step.indexOf(' ');
    return space < 0
        ? "no other lever"
        : advisor
            .vocabulary()
            .lever(step.substring(0, space))
            .orElseThrow()
            .step(Named.of(Direction.class, step.substring(space + 1)));
  }

  private static String words(Step step) {
    return step.direction() == Direction.HOLD
        ? "hold"
        : step.direction().id() + " by " + Degrees.of(step.degrees());
  }

  /** What the trainee knows so far. */
  List<String> known(Drill drill) {
    Text text = new Text(width).line("").heading("What you know so far");
    drill
        .known()
        .answers()
        .forEach(
            (question, value) ->
                text.item(
                    "  ",
                    question
                        + ": "
                        + advisor
                            .vocabulary()
                            .question(question)
                            .flatMap(known -> known.value(value))
                            .map(Value::words)
                            .orElse(value)));
    if (drill.known().answers().isEmpty()) {
      text.paragraph("Nothing yet.");
    }
    return text.lines();
  }

  /** What it came to, part by part. */
  List<Part> result(Judgement judged) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("How it went", scores(judged)));
    List<Remark> remarks = Feedback.on(advisor, judged);
    if (!remarks.isEmpty()) {
      Text text = new Text(width);
      for (Remark remark : remarks) {
        text.blank().item("  - ", remark.what());
        ChoiceCard.shortened(remark.ledger()).forEach(line -> fitted(line, text));
      }
      parts.add(new Part("What was clearly worse", text.lines()));
    }
    parts.add(new Part("What the rules say", rules(judged)));
    return parts;
  }

  /** A line of the ledger as it is; on a narrow screen broken, with its own indent. */
  private void fitted(String line, Text text) {
    if (line.length() <= width) {
      text.line(line);
    } else {
      text.item(" ".repeat(line.length() - line.stripLeading().length()), line);
    }
  }

  private List<String> scores(Judgement judged) {
    int asked = judged.questions().size();
    int left = judged.leftOut().size();
    Text text = new Text(width);
    text.item(
        "  economy     ",
        "%d of 100 (%d %s, %d left out)"
            .formatted(judged.economy(), asked, asked == 1 ? "question" : "questions", left));
    text.item("  conclusion  ", judged.conclusion() + " of 100" + first(judged));
    text.item("  reason      ", judged.reason() + " of 100");
    text.item(
        "  safety      ",
        "%d of 100 (%s)"
            .formatted(
                judged.safety().points(),
                switch (judged.safety()) {
                  case SAFE -> "nothing that can hurt";
                  case LUCKY -> "sound by luck: nobody looked";
                  case FORBIDDEN -> "a move that a limit forbids";
                  case MISSED -> "a fault was missed";
                }));
    if (judged.hints() > 0) {
      text.item("  hints       ", judged.hints() + "; what they gave away counts nought");
    }
    return text.lines();
  }

  /** What the conclusion hangs on beside the front end. */
  private static String first(Judgement judged) {
    boolean fault = judged.fixFirst() || judged.drill().right().status() == Status.FIX_FIRST;
    if (fault || judged.firstJudged().isEmpty()) {
      return "";
    }
    if (judged.goodKart().isPresent()) {
      return judged.changed() ? " (a good kart, changed)" : " (a good kart, left alone)";
    }
    return switch (judged.firstJudged().get()) {
      case RIGHT -> " (what comes first: right)";
      case HALF -> " (what comes first: half right)";
      case WRONG_WAY -> " (what comes first: wrong way)";
      case WRONG -> " (what comes first: wrong)";
    };
  }

  private List<String> rules(Judgement judged) {
    Advice advice = advisor.advise(judged.drill().hidden().hidden());
    Text text = new Text(width);
    advice.firstChecks().stream()
        .filter(check -> check.kind() != CheckKind.LOOK)
        .forEach(check -> text.item("  ! ", check.what() + ". " + check.action()));
    advice.lead().ifPresent(lead -> text.item("  > ", Feedback.words(lead)));
    advice.suggestions().stream()
        .filter(Suggestion::first)
        .forEach(suggestion -> text.item("  > ", suggestion.summary()));
    judged
        .goodKart()
        .map(note -> List.of(note.text("Claim")))
        .orElseGet(
            () ->
                advice.suggestions().stream()
                    .filter(suggestion -> !suggestion.moves())
                    .map(Suggestion::summary)
                    .toList())
        .forEach(line -> text.item("  = ", line));
    Stream.concat(
            advice.lead().stream().map(OtherLever::cautions),
            advice.suggestions().stream().filter(Suggestion::first).map(Suggestion::cautions))
        .flatMap(List::stream)
        .distinct()
        .forEach(caution -> text.item("  ! ", caution));
    return text.lines();
  }
}
