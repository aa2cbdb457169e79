package insidelift.console;

import java.util.List;

/** Somebody at a lesson, a card or a case: waits for what is asked, and types. */
final class Trainee {

  private final Paddock paddock;
  private int written = -1;

  Trainee(Paddock paddock) {
    this.paddock = paddock;
  }

  /** Waits until the line before the cursor ends in a text, and types a word with Enter. */
  Trainee at(String prompt, String word) {
    paddock.waitUntil(
        "\"" + prompt + "\"",
        screen ->
            screen.raw().length() > written && screen.beforeCursor().strip().endsWith(prompt));
    written = paddock.raw().length();
    paddock.type(word + Paddock.ENTER);
    return this;
  }

  /** Turns pages until a line to answer on comes up, and types. */
  Trainee turnTo(String prompt, String word) {
    while (true) {
      paddock.waitUntil(
          "the next page",
          screen ->
              screen.raw().length() > written
                  && (screen.beforeCursor().strip().endsWith("next page")
                      || screen.beforeCursor().strip().endsWith(prompt)));
      if (paddock.beforeCursor().strip().endsWith(prompt)) {
        return at(prompt, word);
      }
      written = paddock.raw().length();
      paddock.type(Paddock.ENTER);
    }
  }

  /** Turns pages until the program ends. */
  Trainee turnPages() {
    while (true) {
      paddock.waitUntil(
          "the next page or the end",
          screen ->
              screen.raw().length() > written
                  && (screen.beforeCursor().strip().endsWith("next page") || screen.ended()));
      if (paddock.ended()) {
        return this;
      }
      written = paddock.raw().length();
      paddock.type(Paddock.ENTER);
    }
  }

  /** Everything that was shown, when the program has ended with that code. */
  List<String> shown(int code) {
    int ended = paddock.exit();
    if (ended != code) {
      throw new AssertionError("ended with " + ended + ":\n" + String.join("\n", paddock.all()));
    }
    return paddock.all();
  }
}
