package insidelift.console;

import insidelift.engine.consultation.session.Session;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One screen with every fault that can be seen: the numbers of what is true, or nothing. */
final class SafetyPage {

  /** The name of the step that this screen notes. */
  static final String STEP = "safety";

  private record Fault(Question question, Value value) {}

  private final Screen screen;
  private final Session session;
  private final Talk talk;
  private final List<Question> questions;
  private final List<Fault> faults = new ArrayList<>();

  SafetyPage(Screen screen, Session session, Vocabulary vocabulary, Talk talk) {
    this.screen = screen;
    this.talk = talk;
    this.session = session;
    this.questions = vocabulary.questions().stream().filter(Question::safety).toList();
    for (Question question : questions) {
      question.values().stream()
          .filter(value -> value.said() != null)
          .forEach(value -> faults.add(new Fault(question, value)));
    }
  }

  /** What stands on the screen before the line to answer on. */
  List<String> lines() {
    Text text = new Text(screen.width()).line("").heading("Look at the kart first");
    for (int i = 0; i < faults.size(); i++) {
      text.item("%3d  ".formatted(i + 1), faults.get(i).value().said());
    }
    text.paragraph(
        "Type the numbers of what is true (as in 2 5). Press Enter if you looked and nothing is."
            + " Type u if you have not looked.");
    return text.lines();
  }

  void ask() throws Left {
    screen.say(lines());
    while (true) {
      String line = screen.ask("true: ", List.of());
      if (line.equals("u") || line.equals(Vocabulary.UNKNOWN)) {
        session.begin(STEP);
        questions.forEach(question -> session.note(question.id(), Vocabulary.UNKNOWN));
        return;
      }
      Optional<List<Integer>> numbers = Numbers.of(line, faults.size());
      if (numbers.isPresent()) {
        List<Fault> found = numbers.get().stream().map(number -> faults.get(number - 1)).toList();
        session.begin(STEP);
        questions.forEach(question -> note(question, found));
        return;
      }
      if (talk.hear(line, Optional.empty()) == Talk.Outcome.NOT_UNDERSTOOD) {
        screen.say("Type numbers from 1 to " + faults.size() + ", or press Enter, or type u.");
      }
    }
  }

  /** A fault that was named; or, where nothing was, the sound answer that the look has given. */
  private void note(Question question, List<Fault> found) {
    Optional<Fault> fault =
        found.stream()
            .filter(known -> known.question().equals(question))
            // Of two answers to one question the worse one counts.
            .max(Comparator.comparing(known -> known.value().fault()));
    if (fault.isPresent()) {
      session.note(question.id(), fault.get().value().id());
    } else if (found.isEmpty() && covered(question)) {
      session.note(question.id(), question.values().get(0).id());
    }
  }

  /** Whether the screen asks for everything that can be wrong there. */
  private static boolean covered(Question question) {
    return question.values().stream()
        .allMatch(value -> value.said() != null || !(value.fault() || value.complaint()));
  }
}
