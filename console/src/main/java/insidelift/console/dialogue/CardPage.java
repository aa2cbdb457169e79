package insidelift.console.dialogue;

import insidelift.console.cli.OutputFile;
import insidelift.console.page.Pages;
import insidelift.console.page.PitCardMaker;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.io.File;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** Writes the pit card of an answer under a name that is asked for. */
final class CardPage {

  private static final String NAME = "card.html";

  private final Screen screen;

  CardPage(Screen screen) {
    this.screen = screen;
  }

  /**
   * Asks and writes.
   *
   * @param subject whom and what it is for; may be empty
   */
  void ask(Situation situation, Advice advice, String subject) throws UserLeftException {
    String page =
        new Pages()
            .pitCard(
                PitCardMaker.card(
                    situation, advice, subject, LocalDate.now(ZoneId.systemDefault())));
    while (true) {
      String line =
          screen.ask("In which file? (Enter: %s, no: leave it)".formatted(NAME), List.of());
      if (line.equals("no")) {
        return;
      }
      String file = line.isEmpty() ? NAME : line;
      String shown = Printable.shown(file, 200);
      if (new File(file).exists()) {
        screen.say("There is a file of that name already: name another.");
        continue;
      }
      try {
        OutputFile.write(file, page, false);
        screen.say("The pit card is in " + shown + ". Print it, or open it in a browser.");
        return;
      } catch (CaseProblem e) {
        screen.say(shown + ": " + e.getMessage());
      }
    }
  }
}
