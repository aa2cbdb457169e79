package insidelift.console;

/** Asks one thing and returns what the user wants. */
interface Asker {

  /** Asks until something is understood. */
  Reply ask(Choices choices) throws Left;

  /** The way of asking that fits the screen. */
  static Asker on(Screen screen) {
    return screen.keys() ? new KeyAsker(screen) : new LineAsker(screen);
  }
}
