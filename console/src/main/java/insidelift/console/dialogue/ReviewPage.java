package insidelift.console.dialogue;

import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.Session;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All answers so far, numbered, any of which can be changed. */
final class ReviewPage {

  /** What the user wants after looking at the answers. */
  sealed interface Wish {
    /** They are right. */
    record GoOn() implements Wish {}

    /** This one is to be asked again. */
    record Change(Question question) implements Wish {}

    /** The screen of safety checks is to be shown again. */
    record Safety() implements Wish {}

    /** Where the levers stand is to be asked again. */
    record Settings() implements Wish {}

    /** Something new was told. */
    record Understood() implements Wish {}
  }

  private final Screen screen;
  private final Session session;
  private final Vocabulary vocabulary;
  private final SettingsPage settings;
  private final Talk talk;

  ReviewPage(
      Screen screen, Session session, Vocabulary vocabulary, SettingsPage settings, Talk talk) {
    this.talk = talk;
    this.screen = screen;
    this.session = session;
    this.vocabulary = vocabulary;
    this.settings = settings;
  }

  Wish ask() throws UserLeftException {
    List<Question> answered = answered();
    Text text = new Text(screen.width()).line("").heading("Your answers");
    text.item("  1  ", "the look at the kart: " + safety());
    for (int i = 0; i < answered.size(); i++) {
      Question question = answered.get(i);
      text.item("%3d  ".formatted(i + 2), question.id() + ": " + words(question));
    }
    int last = answered.size() + 1;
    if (settings.answered()) {
      text.item("%3d  ".formatted(++last), "where it stands: " + settings.words());
    }
    text.paragraph("Press Enter if they are right, or type the number of one to change it.");
    screen.say(text.lines());
    while (true) {
      String line = screen.confirm("change: ", List.of());
      Optional<Wish> wish = wish(line, answered);
      if (wish.isPresent()) {
        return wish.get();
      }
      switch (talk.hear(line, Optional.empty())) {
        case NOTED -> {
          return new Wish.Understood();
        }
        case NOT_UNDERSTOOD -> screen.say("Type a number from 1 to " + last + ", or press Enter.");
        case ANSWERED -> {
          // Ask again.
        }
      }
    }
  }

  private Optional<Wish> wish(String line, List<Question> answered) {
    if (line.isEmpty()) {
      return Optional.of(new Wish.GoOn());
    }
    if (line.length() > 2 || !line.chars().allMatch(Character::isDigit)) {
      return Optional.empty();
    }
    int number = Integer.parseInt(line);
    if (number == 1) {
      return Optional.of(new Wish.Safety());
    }
    if (number == answered.size() + 2 && settings.answered()) {
      return Optional.of(new Wish.Settings());
    }
    return number >= 2 && number <= answered.size() + 1
        ? Optional.of(new Wish.Change(answered.get(number - 2)))
        : Optional.empty();
  }

  private List<Question> answered() {
    List<Question> answered = new ArrayList<>();
    for (Question question : vocabulary.questions()) {
      boolean known = session.situation().answer(question.id()).isPresent();
      boolean declined = session.situation().declined().contains(question.id());
      // Hopping is not a fault by itself: it is asked on its own, two wheels on the safety screen.
      boolean own = !question.safety() || question.values().stream().anyMatch(v -> v.complaint());
      if (own && (known || declined)) {
        answered.add(question);
      }
    }
    return answered;
  }

  private String safety() {
    List<String> faults = new ArrayList<>();
    boolean looked = false;
    for (Question question : vocabulary.questions()) {
      if (question.safety()) {
        Optional<String> answer = session.situation().answer(question.id());
        looked |= answer.isPresent();
        answer
            .flatMap(question::value)
            .filter(value -> value.fault() && value.said() != null)
            .ifPresent(value -> faults.add(value.said()));
      }
    }
    if (!faults.isEmpty()) {
      return String.join("; ", faults);
    }
    return looked ? "nothing found" : "not done";
  }

  private String words(Question question) {
    Double number = session.situation().numbers().get(question.id());
    if (number != null) {
      return "%.0f %s".formatted(number, question.number().unit());
    }
    return session
        .situation()
        .answer(question.id())
        .flatMap(question::value)
        .map(value -> value.words())
        .orElse("not known");
  }
}
