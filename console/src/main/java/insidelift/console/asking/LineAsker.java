package insidelift.console.asking;

import insidelift.console.asking.Choices.Choice;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import java.util.ArrayList;
import java.util.List;

/** Asks by numbered choices and typed lines: on any terminal, for a screen reader, from a pipe. */
public final class LineAsker implements Asker {

  private final Screen screen;

  LineAsker(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Reply ask(Choices choices) throws UserLeftException {
    screen.say("");
    screen.say(page(choices, screen.width()));
    List<String> words = new ArrayList<>(choices.choices().stream().map(Choice::id).toList());
    words.addAll(List.of("back", "review", "help"));
    while (true) {
      Reply reply = choices.read(screen.ask(choices.label() + ": ", words));
      if (!(reply instanceof Reply.Unclear unclear)) {
        return reply;
      }
      screen.say(unclear.why());
    }
  }

  public static List<String> page(Choices choices, int width) {
    Text text = new Text(width);
    choices.head().stream().filter(line -> !line.isEmpty()).forEach(text::paragraph);
    choices.range().ifPresent(range -> text.item("  ", range.asked()));
    int number = 1;
    for (Choice choice : choices.choices()) {
      text.item("%3d  ".formatted(number++), choice.words());
    }
    choices.nothing().ifPresent(words -> text.item("  u  ", words));
    return text.lines();
  }
}
