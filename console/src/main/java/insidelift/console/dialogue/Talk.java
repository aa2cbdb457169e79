package insidelift.console.dialogue;

import insidelift.console.asking.Remark;
import insidelift.console.report.Text;
import insidelift.console.terminal.Numbers;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.speech.Heard;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What can be said at any prompt beside its own answers: a question in return, or what was seen and
 * felt in a sentence. A sentence is read back and counts only once it has been confirmed.
 */
final class Talk {

  /** The name of the step that notes what was told in a sentence. */
  static final String STEP = "told";

  /** What became of a line. */
  enum Outcome {
    /** It was neither a question in return nor a fact. */
    NOT_UNDERSTOOD,
    /** It was dealt with, and nothing new is known. */
    ANSWERED,
    /** Something new is known. */
    NOTED
  }

  private final Screen screen;
  private final Session session;
  private final Vocabulary vocabulary;
  private final Inquiries inquiries;

  Talk(Screen screen, Session session, Vocabulary vocabulary, NoteBook notes) {
    this.screen = screen;
    this.session = session;
    this.vocabulary = vocabulary;
    this.inquiries = new Inquiries(session, vocabulary, notes);
  }

  /** Deals with a line that is no answer to what was asked. */
  Outcome hear(String line, Optional<Question> current) throws UserLeftException {
    if (Remark.asks(line)) {
      answer(line, current);
      return Outcome.ANSWERED;
    }
    return Remark.tells(line) ? told(line) : Outcome.NOT_UNDERSTOOD;
  }

  /** Answers a question in return. */
  void answer(String line, Optional<Question> current) throws UserLeftException {
    screen.say("");
    screen.read(inquiries.answer(line, current));
    screen.say("");
  }

  /** Reads back what was understood of a sentence, and notes what is confirmed. */
  Outcome told(String line) throws UserLeftException {
    Heard heard = Heard.hear(line);
    List<Understood> told = Understood.all(heard, session.situation(), vocabulary);
    Text text = new Text(screen.width()).line("").line("Understood:");
    int number = 1;
    for (Understood one : told) {
      text.item("%3d  ".formatted(number++), one.shown());
    }
    if (told.isEmpty()) {
      text.item("  ", "nothing that is not known already");
    }
    heard
        .leftOut()
        .forEach(one -> text.item("  left out: ", "\"%s\": %s".formatted(one.words(), one.why())));
    if (heard.asks().contains(Heard.PHASE)) {
      text.item("  to be asked: ", "in which part of the corner");
    }
    heard.asks().stream()
        .flatMap(ask -> vocabulary.question(ask).stream())
        .forEach(question -> text.item("  to be asked: ", question.ask()));
    screen.say(text.lines());
    return told.isEmpty() ? Outcome.ANSWERED : confirmed(told);
  }

  private Outcome confirmed(List<Understood> proposed) throws UserLeftException {
    String ask =
        proposed.size() == 1
            ? "Press Enter if that is right, or type n: "
            : "Press Enter if that is right, n for none, or the numbers of what is right: ";
    while (true) {
      String line = screen.confirm(ask, List.of("n")).toLowerCase(Locale.ROOT);
      if (List.of("n", "no", "undo", "back").contains(line)) {
        screen.say("Nothing noted.");
        return Outcome.ANSWERED;
      }
      if (Remark.asks(line)) {
        answer(line, Optional.empty());
        continue;
      }
      List<String> yes = List.of("y", "yes");
      Optional<List<Integer>> numbers = Numbers.of(yes.contains(line) ? "" : line, proposed.size());
      if (numbers.isPresent()) {
        List<Understood> right = new ArrayList<>();
        numbers.get().forEach(number -> right.add(proposed.get(number - 1)));
        session.begin(STEP);
        (right.isEmpty() ? proposed : right).forEach(one -> one.note().accept(session));
        return Outcome.NOTED;
      }
    }
  }
}
