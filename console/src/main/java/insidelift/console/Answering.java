package insidelift.console;

import insidelift.engine.notes.NoteBook;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.List;
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
        screen.say(help(screen.width()));
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

  /** How to answer, whatever is asked. */
  static List<String> help(int width) {
    return new Text(width)
        .heading("How to answer")
        .item("  ", "a number or the first letters, then Enter: that choice")
        .item("  ", "u: I do not know (that is an answer too)")
        .item("  ", "?: what the words mean; what is toe: the note on a word")
        .item("  ", "back or undo: one step back; review: all answers, to change any")
        .item(
            "  ",
            "a sentence, as in pushes mid corner, lots of rubber down: it is read back and"
                + " counts once you confirm it")
        .item("  ", "why: what this answer is for; how camber: what speaks for and against")
        .item("  ", "why not caster more: what stands in the way")
        .item("  ", "what if water=wet: what would be different; rule NAME: a rule in words")
        .item("  ", "quit, or Ctrl-D at an empty line: leave; Ctrl-C: leave at once")
        .line("")
        .lines();
  }
}
