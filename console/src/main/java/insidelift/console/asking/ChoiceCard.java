package insidelift.console.asking;

import insidelift.console.asking.Choices.Choice;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.training.card.Card;
import insidelift.engine.training.drill.Examiner;
import insidelift.engine.training.drill.Examiner.Judged;
import java.util.List;
import java.util.Optional;

/** Asks one question that the rules judge, and shows what they have on a wrong answer. */
public final class ChoiceCard {

  /** Lines of the ledger that are shown: what comes first weighs most. */
  private static final int SHOWN = 12;

  private final Screen screen;
  private final Asker asker;
  private final Examiner examiner;

  public ChoiceCard(Screen screen, Examiner examiner) {
    this.screen = screen;
    this.asker = Asker.on(screen);
    this.examiner = examiner;
  }

  /** Asks, judges, says how it was; and returns the quality of the answer. */
  public int ask(Card.Choice card) throws UserLeftException {
    List<String> ask = examiner.ask(card);
    Text told = new Text(screen.width()).line("");
    ask.subList(0, ask.size() - 1).forEach(told::paragraph);
    // What is told stays on the screen when the choices are taken off it.
    screen.say(told.lines());
    List<String> question = ask.subList(ask.size() - 1, ask.size());
    String answer = choose(screen, asker, "answer", question, options(card));
    Judged judged = examiner.judge(card, answer);
    Text text = new Text(screen.width());
    if (judged.right()) {
      text.paragraph("Right: " + judged.answer() + ".");
    } else {
      text.paragraph("No. The rules say: " + judged.answer() + ".");
      if (!judged.because().isEmpty()) {
        text.paragraph("Why: " + judged.because());
      }
      text.blank();
      shortened(judged.shown()).forEach(text::line);
    }
    screen.say(text.lines());
    return judged.right() ? Examiner.RIGHT : Examiner.WRONG;
  }

  private List<Choice> options(Card.Choice card) {
    return examiner.options(card).stream()
        .map(option -> new Choice(option.id(), option.words()))
        .toList();
  }

  public static List<String> shortened(List<String> ledger) {
    return ledger.subList(0, Math.min(SHOWN, ledger.size()));
  }

  /** One of some choices; every other wish is answered with how to answer. */
  public static String choose(
      Screen screen, Asker asker, String label, List<String> head, List<Choice> choices)
      throws UserLeftException {
    Choices all = new Choices(label, head, choices, Optional.empty(), Optional.empty(), false);
    while (true) {
      Reply reply = asker.ask(all);
      if (reply instanceof Reply.Chosen chosen) {
        return chosen.value();
      }
      if (reply instanceof Reply.Quit) {
        throw new UserLeftException(false);
      }
      screen.say("Choose by a number or the first letters. quit or Ctrl-C leaves.");
    }
  }
}
