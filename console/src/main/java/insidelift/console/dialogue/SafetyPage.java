package insidelift.console.dialogue;

import insidelift.console.report.Text;
import insidelift.console.terminal.Numbers;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.Session;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The faults that can be seen, the six that hurt most first: the numbers of what is true, or that
 * nothing is. Nobody has looked before that was typed: Enter alone certifies nothing.
 */
final class SafetyPage {

  /** The name of the step that this screen notes. */
  static final String STEP = "safety";

  /** What is looked at first: play, what is loose, brake, pressures, tyres, damage; and the hop. */
  private static final List<String> FIRST =
      List.of("play", "fixings", "brake", "pressures", "tyre-life", "alignment", "hop");

  private static final Set<String> OK = Set.of("ok", "all looked at", "nothing");

  private record Fault(Question question, Value value) {}

  private final Screen screen;
  private final Session session;
  private final Talk talk;
  private final List<Question> questions;
  private final List<Fault> faults = new ArrayList<>();
  private final int first;
  private int shown;

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
    faults.sort(Comparator.comparingInt(fault -> place(fault.question())));
    this.first =
        (int) faults.stream().filter(fault -> FIRST.contains(fault.question().id())).count();
    this.shown = ticked().stream().anyMatch(number -> number > first) ? faults.size() : first;
  }

  private static int place(Question question) {
    int place = FIRST.indexOf(question.id());
    return place < 0 ? FIRST.size() : place;
  }

  /** What stands on the screen before the line to answer on. */
  List<String> lines() {
    List<Integer> ticked = ticked();
    Text text = new Text(screen.width()).line("").heading("Look at the kart first");
    for (int i = 0; i < shown; i++) {
      String mark = ticked.contains(i + 1) ? "x%2d  " : "%3d  ";
      text.item(mark.formatted(i + 1), faults.get(i).value().said());
    }
    text.paragraph(
        "Type the numbers of what is true (as in 2 5), or ok if you looked at all of this and"
            + " nothing is, or u if you have not looked."
            + (shown < faults.size()
                ? " more shows %d more to look at.".formatted(faults.size() - shown)
                : "")
            + (ticked.isEmpty() ? "" : " Enter keeps what is marked x."));
    return text.lines();
  }

  /** The numbers of the faults that are known. */
  private List<Integer> ticked() {
    List<Integer> ticked = new ArrayList<>();
    for (int i = 0; i < faults.size(); i++) {
      Fault fault = faults.get(i);
      if (session
          .situation()
          .answer(fault.question().id())
          .equals(Optional.of(fault.value().id()))) {
        ticked.add(i + 1);
      }
    }
    return ticked;
  }

  private boolean told() {
    return questions.stream()
        .anyMatch(
            question ->
                session.situation().answer(question.id()).isPresent()
                    || session.situation().declined().contains(question.id()));
  }

  void ask() throws UserLeftException {
    screen.say(lines());
    while (true) {
      String line = screen.ask("true: ", List.of("ok", "more"));
      String said = line.toLowerCase(Locale.ROOT);
      if (said.isEmpty() && told()) {
        return;
      } else if (said.isEmpty()) {
        screen.say("Enter alone certifies nothing: type ok, numbers, or u.");
      } else if (OK.contains(said)) {
        session.begin(STEP);
        questions.forEach(this::sound);
        return;
      } else if (said.equals("u") || said.equals(Vocabulary.UNKNOWN)) {
        session.begin(STEP);
        questions.forEach(question -> session.note(question.id(), Vocabulary.UNKNOWN));
        return;
      } else if (said.equals("more") && shown < faults.size()) {
        shown = faults.size();
        screen.say(lines());
      } else if (numbers(line)) {
        return;
      } else if (talk.hear(line, Optional.empty()) == Talk.Outcome.NOT_UNDERSTOOD) {
        screen.say("Type numbers from 1 to " + shown + ", or ok, or u.");
      }
    }
  }

  private boolean numbers(String line) {
    Optional<List<Integer>> numbers = Numbers.of(line, shown);
    if (numbers.isEmpty()) {
      return false;
    }
    List<Fault> found = numbers.get().stream().map(number -> faults.get(number - 1)).toList();
    List<Integer> before = ticked();
    session.begin(STEP);
    // What was marked and is not named any more is not true any more.
    before.stream()
        .map(number -> faults.get(number - 1).question())
        .forEach(question -> session.note(question.id(), question.values().get(0).id()));
    for (Question question : questions) {
      found.stream()
          .filter(known -> known.question().equals(question))
          // Of two answers to one question the worse one counts.
          .max(Comparator.comparing(known -> known.value().fault()))
          .ifPresent(fault -> session.note(question.id(), fault.value().id()));
    }
    return true;
  }

  /** The sound answer that a look at everything on the screen has given. */
  private void sound(Question question) {
    boolean looked =
        faults.subList(0, shown).stream().anyMatch(fault -> fault.question().equals(question));
    boolean covered =
        question.values().stream()
            .allMatch(value -> value.said() != null || !(value.fault() || value.complaint()));
    if (looked && covered) {
      session.note(question.id(), question.values().get(0).id());
    } else if (!looked
        && session.situation().answer(question.id()).isEmpty()
        && question.values().stream().noneMatch(Value::complaint)) {
      // Not looked at, and not asked again one by one; the advice says what nobody has seen.
      session.note(question.id(), Vocabulary.UNKNOWN);
    }
  }
}
