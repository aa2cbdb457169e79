package insidelift.console.dialogue;

import insidelift.console.asking.Asker;
import insidelift.console.asking.Choices;
import insidelift.console.asking.Reply;
import insidelift.console.report.HowToAnswer;
import insidelift.console.report.NoteText;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.Optional;

/**
 * Asks like another asker, and meanwhile answers whatever the user asks in return: what a word
 * means, how to answer, why, how, what if.
 */
final class Answering implements Asker {

  private final Asker asker;
  private final Screen screen;
  private final Talk talk;
  private final Vocabulary vocabulary;
  private final NoteBook notes;

  Answering(Asker asker, Screen screen, Talk talk, Vocabulary vocabulary, NoteBook notes) {
    this.asker = asker;
    this.screen = screen;
    this.talk = talk;
    this.vocabulary = vocabulary;
    this.notes = notes;
  }

  @Override
  public Reply ask(Choices choices) throws UserLeftException {
    Optional<Question> question = vocabulary.question(choices.label());
    while (true) {
      Reply reply = asker.ask(choices);
      if (reply instanceof Reply.Explain && question.isPresent()) {
        explain(question.get());
      } else if (reply instanceof Reply.Quit) {
        throw new UserLeftException(false);
      } else if (reply instanceof Reply.Help) {
        screen.say(HowToAnswer.lines(screen.width()));
      } else if (reply instanceof Reply.Inquiry inquiry) {
        talk.answer(inquiry.line(), question);
      } else {
        return reply;
      }
    }
  }

  private void explain(Question question) throws UserLeftException {
    Text text = new Text(screen.width());
    for (String note : question.notes()) {
      NoteText.write(notes.note(note), notes, text);
    }
    screen.read(text.lines());
    screen.say("");
  }
}
