package insidelift.console;

import insidelift.engine.consultation.Session;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One screen with every fault that can be seen: the numbers of what is true, or nothing. */
final class SafetyPage {

  /** The name of the step that this screen notes. */
  static final String STEP = "safety";

  private record Fault(Question question, Value value) {}

  private final Screen screen;
  private final Session session;
  private final List<Question> questions;
  private final List<Fault> faults = new ArrayList<>();

  SafetyPage(Screen screen, Session session, Vocabulary vocabulary) {
    this.screen = screen;
    this.session = session;
    this.questions = vocabulary.questions().stream().filter(Question::safety).toList();
    for (Question question : questions) {
      question.values().stream()
          .filter(value -> value.said() != null)
          .forEach(value -> faults.add(new Fault(question, value)));
    }
  }

  void ask() throws Left {
    Text text = new Text(screen.width()).line("").heading("Look at the kart first");
    for (int i = 0; i < faults.size(); i++) {
      text.item("%3d  ".formatted(i + 1), faults.get(i).value().said());
    }
    text.paragraph(
        "Type the numbers of what is true (as in 2 5). Press Enter if you looked and nothing is."
            + " Type u if you have not looked.");
    screen.say(text.lines());
    while (!noted(screen.ask("true: ", List.of()))) {
      screen.say("Type numbers from 1 to " + faults.size() + ", or press Enter, or type u.");
    }
  }

  private boolean noted(String line) {
    if (line.equals("u") || line.equals(Vocabulary.UNKNOWN)) {
      session.begin(STEP);
      questions.forEach(question -> session.note(question.id(), Vocabulary.UNKNOWN));
      return true;
    }
    List<Fault> found = new ArrayList<>();
    for (String word : line.split("[ ,;]+", -1)) {
      if (word.isEmpty()) {
        continue;
      }
      if (word.length() > 2 || !word.chars().allMatch(Character::isDigit)) {
        return false;
      }
      int number = Integer.parseInt(word);
      if (number < 1 || number > faults.size()) {
        return false;
      }
      found.add(faults.get(number - 1));
    }
    session.begin(STEP);
    questions.forEach(question -> note(question, found));
    return true;
  }

  /** A fault that was named; or, where nothing was, the sound answer that the look has given. */
  private void note(Question question, List<Fault> found) {
    Optional<Fault> fault =
        found.stream().filter(known -> known.question().equals(question)).findFirst();
    if (fault.isPresent()) {
      session.note(question.id(), fault.get().value().id());
    } else if (found.isEmpty() && question.values().stream().noneMatch(Value::complaint)) {
      session.note(question.id(), question.values().get(0).id());
    }
  }
}
