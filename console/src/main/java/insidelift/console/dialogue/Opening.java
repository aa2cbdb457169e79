package insidelift.console.dialogue;

import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.SavedConsultation;
import insidelift.engine.consultation.session.SavedConsultation.Unfinished;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.logbook.use.OwnLog;
import insidelift.shared.Vocabulary;
import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a consultation can begin with: one that was left unfinished, and the user's own log. */
final class Opening {

  private static final List<String> GREETING =
      List.of(
          "   O__        Insidelift",
          "      \\__O    the next change at the front end of your kart",
          "");

  private static final List<String> NARROW_GREETING =
      List.of("   O__        Insidelift", "      \\__O    the next front-end change", "");

  private final Screen screen;
  private final Session session;
  private final SavedConsultation saved;
  private final Vocabulary vocabulary;

  Opening(Screen screen, Session session, SavedConsultation saved, Vocabulary vocabulary) {
    this.screen = screen;
    this.session = session;
    this.saved = saved;
    this.vocabulary = vocabulary;
  }

  /** The name of the program, what it does, and how to answer. */
  static List<String> introduction(int width) {
    Text text = new Text(width);
    greeting(width).forEach(text::line);
    return text.paragraph(
            "It asks what the track, the driver, the tyres and the kart are doing, and"
                + " answers with a camber or caster change: which way, how much, why, and"
                + " what to beware of. It is no substitute for the chassis maker's manual,"
                + " the rule book or a competent person.")
        .paragraph(
            "Answer with a number or the first letters, or say it in your own words. ?"
                + " explains, why says what for, back goes back, review shows all answers."
                + " Ctrl-C leaves; your answers are kept.")
        .lines();
  }

  private static List<String> greeting(int width) {
    if (width < 40) {
      return new Text(width).paragraph("Insidelift: the next front-end change").line("").lines();
    }
    return width < 60 ? NARROW_GREETING : GREETING;
  }

  /** Offers to go on where the last consultation was left. */
  boolean resumed() throws UserLeftException {
    Optional<Unfinished> before = saved.unfinished();
    if (!saved.aside().isEmpty()) {
      screen.say(
          new Text(screen.width())
              .line("")
              .paragraph(
                  "There was a consultation that this version cannot read. It is put aside as "
                      + saved.aside()
                      + ".")
              .lines());
    }
    if (before.isEmpty() || before.get().situation().answers().isEmpty()) {
      return false;
    }
    String when =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .format(before.get().when().atZone(ZoneId.systemDefault()));
    screen.say("", "There is an unfinished consultation from " + when + ".");
    while (true) {
      String line =
          screen.confirm("Press Enter to go on with it, or type n for a new one: ", List.of("n"));
      if (line.isEmpty()) {
        session.resume(before.get().situation());
        return true;
      }
      if (line.equals("n")) {
        try {
          saved.forget();
        } catch (IOException e) {
          // Whether this disk can keep anything shows with the first answer.
        }
        return false;
      }
    }
  }

  /**
   * Takes over what the user's own log says, if it is about the same kart, driver and track.
   *
   * @return whether it was taken over
   */
  boolean ownLog(Preparation preparation) throws UserLeftException {
    Optional<OwnLog> own = preparation.log();
    if (!preparation.damage().isEmpty()) {
      Text lost = new Text(screen.width()).line("");
      preparation.damage().forEach(one -> lost.paragraph("Your logbook: " + Text.safe(one)));
      screen.say(lost.lines());
    }
    if (own.isEmpty()) {
      return false;
    }
    Text text = new Text(screen.width()).line("").paragraph("Your last run: " + own.get().about());
    own.get().lines(session.situation(), vocabulary).forEach(text::paragraph);
    screen.say(text.lines());
    while (true) {
      String line =
          screen
              .confirm("Press Enter if it is the same again, or type n: ", List.of("n"))
              .toLowerCase(Locale.ROOT);
      if (line.equals("n") || line.equals("no")) {
        return false;
      }
      if (line.isEmpty() || line.equals("y") || line.equals("yes")) {
        session.resume(own.get().fill(session.situation(), vocabulary));
        return true;
      }
    }
  }
}
