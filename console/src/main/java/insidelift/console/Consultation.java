package insidelift.console;

import insidelift.console.Dialogue.Left;
import insidelift.console.NotesCommand.NoteText;
import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.Session;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The consultation: a screen of safety checks, then one question at a time, then the advice. */
final class Consultation {

  /** The exit code after Ctrl-C, as shells have it: 128 and the signal's number. */
  private static final int INTERRUPTED = 130;

  private static final String SAFETY = "safety";

  private final Dialogue dialogue;
  private final Advisor advisor;
  private final Session session;

  private Consultation(Dialogue dialogue, Advisor advisor) {
    this.dialogue = dialogue;
    this.advisor = advisor;
    this.session = new Session(advisor);
  }

  /** Holds one consultation and returns the exit code. */
  static int start(PrintWriter out) {
    try (Dialogue dialogue = Dialogue.open()) {
      try {
        new Consultation(dialogue, Advisor.load()).hold();
        return 0;
      } catch (Left left) {
        dialogue.say(List.of("", "Left before the end. Nothing was changed."));
        return left.interrupted() ? INTERRUPTED : 0;
      }
    } catch (IOException e) {
      out.println("insidelift: the terminal cannot be opened");
      return Insidelift.FAILED;
    }
  }

  private void hold() throws Left {
    dialogue.say(
        new Text(dialogue.width())
            .paragraph("Insidelift: the next change at the front end of your kart.")
            .blank()
            .paragraph(
                "It asks what the track, the driver, the tyres and the kart are doing, and answers"
                    + " with a camber or caster change: which way, how much and why. It is no"
                    + " substitute for the chassis maker's manual, the rule book or a competent"
                    + " person.")
            .blank()
            .paragraph(
                "Answer with a number or the first letters. ? explains, u is \"I do not know\","
                    + " back goes one step back, Ctrl-C leaves.")
            .lines());
    safety();
    while (true) {
      List<Question> open = session.open();
      if (blocked() || open.isEmpty()) {
        break;
      }
      ask(open.get(0));
    }
    settings();
    dialogue.say(List.of(""));
    dialogue.say(new AdviceText(dialogue.width()).lines(session.advice()));
  }

  private boolean blocked() {
    return session.advice().status() == Status.FIX_FIRST;
  }

  /** One screen with every fault that can be seen: the numbers of what is true, or nothing. */
  private void safety() throws Left {
    List<Question> questions =
        advisor.vocabulary().questions().stream().filter(Question::safety).toList();
    List<Fault> faults = new ArrayList<>();
    for (Question question : questions) {
      question.values().stream()
          .filter(value -> value.said() != null)
          .forEach(value -> faults.add(new Fault(question, value)));
    }
    Text text = new Text(dialogue.width()).blank().heading("Look at the kart first");
    for (int i = 0; i < faults.size(); i++) {
      text.item("%3d  ".formatted(i + 1), faults.get(i).value().said());
    }
    text.blank()
        .paragraph(
            "Type the numbers of what is true (as in 2 5). Press Enter if you looked and nothing"
                + " is, or u if you have not looked.");
    dialogue.say(text.lines());
    while (!safetyAnswered(questions, faults, dialogue.ask("true: "))) {
      dialogue.say(
          List.of("Type numbers from 1 to " + faults.size() + ", press Enter, or type u."));
    }
  }

  private record Fault(Question question, Value value) {}

  private boolean safetyAnswered(List<Question> questions, List<Fault> faults, String line) {
    if (line.equals("u") || line.equals("unknown")) {
      session.begin(SAFETY);
      questions.forEach(question -> session.note(question.id(), "unknown"));
      return true;
    }
    List<Fault> found = new ArrayList<>();
    for (String word : line.split("[ ,;]+", -1)) {
      if (!word.isEmpty()) {
        if (!word.chars().allMatch(Character::isDigit) || word.length() > 2) {
          return false;
        }
        int number = Integer.parseInt(word);
        if (number < 1 || number > faults.size()) {
          return false;
        }
        found.add(faults.get(number - 1));
      }
    }
    session.begin(SAFETY);
    for (Question question : questions) {
      Optional<Fault> fault =
          found.stream().filter(known -> known.question().equals(question)).findFirst();
      if (fault.isPresent()) {
        session.note(question.id(), fault.get().value().id());
      } else if (found.isEmpty() && question.values().stream().noneMatch(Value::complaint)) {
        session.note(question.id(), question.values().get(0).id());
      }
    }
    return true;
  }

  private void ask(Question question) throws Left {
    show(question);
    while (true) {
      Reply reply = Reply.read(question, dialogue.ask(question.id() + ": "));
      if (reply instanceof Reply.Chosen chosen) {
        session.answer(question.id(), chosen.value());
        return;
      } else if (reply instanceof Reply.Measured measured) {
        session.answer(question, measured.number());
        return;
      } else if (reply instanceof Reply.Back) {
        back();
        return;
      } else if (reply instanceof Reply.Explain) {
        explain(question);
      } else if (reply instanceof Reply.Unclear unclear) {
        dialogue.say(List.of(unclear.why()));
      }
    }
  }

  private void back() throws Left {
    if (session.back().filter(SAFETY::equals).isPresent()) {
      safety();
    }
  }

  private void show(Question question) {
    Text text = new Text(dialogue.width()).blank();
    text.line("");
    text.paragraph(question.ask() + " (" + question.why() + ")");
    if (question.numberOnly()) {
      text.item(
          "  ",
          "a number from %.0f to %.0f %s, or u"
              .formatted(
                  question.number().min(), question.number().max(), question.number().unit()));
    } else {
      for (int i = 0; i < question.values().size(); i++) {
        text.item("%3d  ".formatted(i + 1), question.values().get(i).words());
      }
    }
    dialogue.say(text.lines());
  }

  private void explain(Question question) {
    Text text = new Text(dialogue.width());
    for (String note : question.notes()) {
      NoteText.write(advisor.notes().note(note), advisor.notes(), text);
    }
    dialogue.say(text.lines());
    show(question);
  }

  /** Asks where the levers that are to be moved stand now, since the size depends on it. */
  private void settings() throws Left {
    Advice advice = session.advice();
    Sides camber = null;
    Sides caster = null;
    for (Suggestion suggestion : advice.suggestions()) {
      if (suggestion.first() && suggestion.lever() == Lever.CAMBER) {
        camber = sides("camber", "degrees, + with the top of the wheel outward");
      } else if (suggestion.first()) {
        caster = sides("caster", "degrees from your own neutral, + with the top further back");
      }
    }
    if (camber != null || caster != null) {
      session.begin("settings");
      session.note(Kart.UNKNOWN.with(camber, caster));
    }
  }

  private Sides sides(String lever, String unit) throws Left {
    dialogue.say(
        new Text(dialogue.width())
            .blank()
            .line("")
            .paragraph("Where does the %s stand now, left and right? (%s)".formatted(lever, unit))
            .item("  ", "two numbers, as in 0.5 0.5; Enter if it is at zero or not measured")
            .lines());
    while (true) {
      String line = dialogue.ask(lever + ": ").replace(',', '.').replace("+", "");
      if (line.isEmpty() || line.equals("u")) {
        return null;
      }
      String[] words = line.split("\\s+", -1);
      try {
        double left = Double.parseDouble(words[0]);
        double right = Double.parseDouble(words[words.length - 1]);
        if (words.length <= 2 && Math.abs(left) <= 10 && Math.abs(right) <= 10) {
          return new Sides(Degrees.of(left), Degrees.of(right));
        }
      } catch (IllegalArgumentException e) {
        // Not numbers: said below.
      }
      dialogue.say(List.of("Type two numbers between -10 and 10, or press Enter."));
    }
  }
}
