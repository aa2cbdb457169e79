package insidelift.console.asking;

import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;

/** Asks one thing and returns what the user wants. */
public interface Asker {

  /** Asks until something is understood. */
  Reply ask(Choices choices) throws UserLeftException;

  /** The way of asking that fits the screen, which shows when it is first waited for. */
  static Asker on(Screen screen) {
    return choices -> {
      screen.terminal();
      return (screen.keys() ? new KeyAsker(screen) : new LineAsker(screen)).ask(choices);
    };
  }
}
