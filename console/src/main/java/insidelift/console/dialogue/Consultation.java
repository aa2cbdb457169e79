package insidelift.console.dialogue;

import insidelift.console.asking.Asker;
import insidelift.console.asking.Choices;
import insidelift.console.asking.Choices.Choice;
import insidelift.console.asking.Reply;
import insidelift.console.dialogue.AnswerPage.Wish;
import insidelift.console.report.AdviceText;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.AdvisorLoader;
import insidelift.engine.consultation.session.SavedConsultation;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.logbook.use.OwnLog;
import insidelift.engine.units.Units;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;

/** The consultation: a look at the kart, one question at a time, a review, the advice. */
public final class Consultation {

  /** After so many answers there is advice, whatever is still open: patience ends before doubt. */
  private static final int ANSWERS = 12;

  /** The choice that leads to typing six temperatures. */
  private static final String MEASURED = "measured";

  private final Screen screen;
  private final Asker asker;
  private final Vocabulary vocabulary;
  private final Preparation preparation;
  private final Session session;
  private final SavedConsultation saved;
  private final Opening opening;
  private final SettingsPage settings;
  private final Talk talk;
  private final KeepPage sheet;
  private final Path folder;
  private Optional<String> kart = Optional.empty();
  private boolean saving = true;
  private int asked;
  private int limit = ANSWERS;

  private Consultation(Screen screen, Path folder, AdvisorLoader loader, Units units) {
    this.screen = screen;
    this.folder = folder;
    this.vocabulary = loader.vocabulary();
    this.preparation = new Preparation(loader, folder);
    screen.whenWaiting(preparation::begin);
    this.session = new Session(preparation::advisor);
    this.talk = new Talk(screen, session, vocabulary, loader.notes());
    this.asker = new Answering(Asker.on(screen), screen, talk, vocabulary, loader.notes());
    this.saved = new SavedConsultation(folder, vocabulary);
    this.opening = new Opening(screen, session, saved, vocabulary);
    this.settings = new SettingsPage(asker, session, vocabulary, units);
    this.sheet = new KeepPage(screen, session, vocabulary, folder);
  }

  /** Holds one consultation, or as many as are wanted, and returns the exit code. */
  public static int start(PrintWriter out, Path folder, Units units, Optional<String> said) {
    // Opening a terminal takes as long as reading the words.
    CompletableFuture<AdvisorLoader> words = words(units);
    try (Screen screen = Screen.open(System.getenv())) {
      return hold(screen, folder, words, units, said);
    } catch (IOException | Screen.NoTerminal e) {
      out.println("insidelift: the terminal cannot be opened");
      return ExitCode.FAILED;
    }
  }

  /** The words of a consultation, read in the background. */
  public static CompletableFuture<AdvisorLoader> words(Units units) {
    return CompletableFuture.supplyAsync(() -> AdvisorLoader.later(units));
  }

  /** The same on a given screen. */
  public static int hold(
      Screen screen,
      Path folder,
      CompletableFuture<AdvisorLoader> words,
      Units units,
      Optional<String> said) {
    screen.onLeaving(() -> screen.say("Left. Your answers are kept."));
    screen.say(Opening.introduction(screen.width()));
    Consultation consultation = new Consultation(screen, folder, AdvisorLoader.ready(words), units);
    screen.onLeaving(consultation::farewell);
    try {
      consultation.hold(said);
      return 0;
    } catch (UserLeftException left) {
      screen.say("");
      consultation.farewell();
      return left.interrupted() ? ExitCode.INTERRUPTED : 0;
    } finally {
      consultation.saved.close();
    }
  }

  private void hold(Optional<String> said) throws UserLeftException {
    saving = saved.claimed();
    if (!saving) {
      screen.say(
          new Text(screen.width())
              .line("")
              .paragraph(
                  "Another consultation is running and is kept in the same folder. What is answered"
                      + " here is not kept; everything else works.")
              .lines());
    }
    boolean resumed = saving && opening.resumed();
    if (said.isPresent()) {
      talk.told(said.get());
      keep();
    }
    if (resumed) {
      asked = (int) session.situation().answers().keySet().stream().filter(this::own).count();
    } else {
      int both = Opening.introduction(screen.width()).size() + safetyPage().lines().size() + 1;
      if (screen.keys() && both > screen.height()) {
        // Let the greeting be read before it moves off the screen.
        said();
      }
      safety();
      ownLog();
    }
    String problem = preparation.problem();
    if (!problem.isEmpty()) {
      screen.say(
          new Text(screen.width())
              .line("")
              .paragraph("Your own knowledge is left out. " + Text.safe(problem))
              .lines());
    }
    while (true) {
      questions();
      if (!goesOn(answered())) {
        return;
      }
    }
  }

  /** What is wrong, in the user's own words, or Enter alone to be asked. */
  private void said() throws UserLeftException {
    screen.say("");
    while (true) {
      String line = screen.ask("Say what is wrong, or Enter to begin.", List.of());
      if (line.isBlank()) {
        return;
      }
      Talk.Outcome outcome = talk.hear(line, Optional.empty());
      if (outcome == Talk.Outcome.NOTED) {
        keep();
        return;
      }
      if (outcome == Talk.Outcome.NOT_UNDERSTOOD) {
        screen.say("That says nothing of the kart: as in it pushes mid corner.");
      }
    }
  }

  /** Shows the answer for as long as it stays what it is, and says what is wished then. */
  private Wish answered() throws UserLeftException {
    boolean more = !blocked() && !session.open().isEmpty();
    List<Wish> wishes = new ArrayList<>(List.of(Wish.CARD, Wish.LOG, Wish.NEXT));
    if (sheet.offered()) {
      wishes.add(Wish.KEEP);
    }
    wishes.addAll(List.of(Wish.CHANGE, Wish.AGAIN));
    if (more) {
      wishes.add(0, Wish.MORE);
    }
    Advice advice = advice();
    AdviceText words = new AdviceText(screen.width());
    AnswerPage page =
        new AnswerPage(
            screen,
            talk,
            words.answer(advice, session.situation()),
            words.sections(advice),
            wishes);
    Wish wish = page.show();
    while (stays(wish)) {
      wish = page.ask();
    }
    return wish;
  }

  /** Does what changes nothing in the answer; whether it was such a wish. */
  private boolean stays(Wish wish) throws UserLeftException {
    return switch (wish) {
      case KEEP -> {
        sheet.ask(kart);
        // The kart is known better now: kept on disk as the advice was.
        advice();
        yield true;
      }
      case CARD -> {
        new CardPage(screen).ask(session.situation(), session.advice(), kart.orElse(""));
        yield true;
      }
      case LOG -> {
        new LogPage(screen, folder).ask(session.situation());
        yield true;
      }
      case AGAIN -> !anew();
      default -> false;
    };
  }

  /** Whether there are questions to ask again. */
  private boolean goesOn(Wish wish) throws UserLeftException {
    switch (wish) {
      case MORE -> limit = asked + ANSWERS;
      case CHANGE -> review();
      case AGAIN -> {
        session.resume(Situation.UNKNOWN);
        kart = Optional.empty();
        begin();
        ownLog();
      }
      case NEXT -> next();
      case BACK -> back();
      case QUIT -> {
        return false;
      }
      default -> {
        // Something new is known.
      }
    }
    return true;
  }

  private void begin() throws UserLeftException {
    settings.back();
    asked = 0;
    limit = ANSWERS;
    safety();
  }

  /** The same kart's next heat: only what is of one run is asked again. */
  private void next() throws UserLeftException {
    String levers =
        session.advice().suggestions().stream()
            .filter(Suggestion::first)
            .map(suggestion -> suggestion.lever().id())
            .collect(Collectors.joining(" and "));
    boolean moved =
        !levers.isEmpty() && yes("Was %s changed as advised? Type y or n:".formatted(levers));
    boolean track = yes("Is the track as it was? Type y or n:");
    session.nextHeat(moved, track);
    screen.say("", "The next heat. Look at the kart again: bolts work loose.");
    begin();
  }

  private boolean yes(String ask) throws UserLeftException {
    while (true) {
      String line = screen.ask(ask, List.of("y", "n")).toLowerCase(Locale.ROOT);
      if (line.equals("y") || line.equals("yes")) {
        return true;
      }
      if (line.equals("n") || line.equals("no")) {
        return false;
      }
      talk.hear(line, Optional.empty());
    }
  }

  /**
   * Whether everything is to be asked anew: one letter typed too much must not cost the answers.
   */
  private boolean anew() throws UserLeftException {
    String line =
        screen.ask("Begin anew, with no answers? Type y, or Enter to stay:", List.of("y"));
    return line.equals("y") || line.equals("yes");
  }

  private Advice advice() {
    if (saving) {
      try {
        saved.keep(session.situation());
        saved.finish();
      } catch (IOException e) {
        cannotSave();
      }
    }
    return session.advice();
  }

  private boolean own(String question) {
    return vocabulary.question(question).map(q -> !q.safety()).orElse(false);
  }

  private void questions() throws UserLeftException {
    boolean reviewed = false;
    boolean said = false;
    while (true) {
      List<Question> open = blocked() || asked >= limit ? List.of() : session.open();
      if (!open.isEmpty()) {
        reviewed = false;
        said = false;
        int most = Math.min(limit, asked + Math.max(1, session.atMost()));
        question(open.get(0), "Question %d of at most %d".formatted(asked + 1, most));
      } else if (blocked()) {
        return;
      } else {
        if (!said) {
          said = true;
          spared();
        }
        Optional<Reply> interrupted = settings.levers();
        keep();
        if (interrupted.isPresent()) {
          command(interrupted.get());
        } else if (reviewed) {
          return;
        } else {
          review();
          reviewed = true;
        }
      }
    }
  }

  /** Says why it asks no more. */
  private void spared() {
    int spared = session.spared();
    if (session.open().isEmpty() && spared > 0) {
      screen.say(
          new Text(screen.width())
              .line("")
              .paragraph(
                  spared == 1
                      ? "Enough: one more answer would not change this."
                      : "Enough: %d more answers would not change this.".formatted(spared))
              .lines());
    }
  }

  private boolean blocked() {
    return session.status() == Status.FIX_FIRST;
  }

  private void ownLog() throws UserLeftException {
    if (!blocked() && opening.ownLog(preparation)) {
      kart = preparation.log().map(OwnLog::kartName);
      keep();
    }
  }

  private void safety() throws UserLeftException {
    safetyPage().ask();
    keep();
  }

  private SafetyPage safetyPage() {
    return new SafetyPage(screen, session, vocabulary, talk);
  }

  private void question(Question question, String progress) throws UserLeftException {
    List<Choice> more =
        question.id().equals("front-temps")
            ? List.of(new Choice(MEASURED, "I have measured: let me type the numbers"))
            : List.of();
    Choices choices = Choices.of(question, progress, more);
    Reply reply = asker.ask(choices);
    if (reply instanceof Reply.Chosen chosen && chosen.value().equals(MEASURED)) {
      Optional<Reply> interrupted = settings.temperatures();
      if (interrupted.isPresent()) {
        command(interrupted.get());
        keep();
        return;
      }
      asked++;
    } else if (reply instanceof Reply.Chosen chosen) {
      session.answer(question.id(), chosen.value());
      asked++;
    } else if (reply instanceof Reply.Measured measured) {
      session.answer(question, measured.number());
      asked++;
    } else {
      command(reply);
    }
    keep();
  }

  private void command(Reply reply) throws UserLeftException {
    if (reply instanceof Reply.Back) {
      back();
    } else if (reply instanceof Reply.Review) {
      review();
    } else if (reply instanceof Reply.Told told) {
      talk.told(told.line());
    }
  }

  private void back() throws UserLeftException {
    String step = session.back().orElse(SafetyPage.STEP);
    switch (step) {
      case SettingsPage.STEP -> settings.back();
      case SafetyPage.STEP -> safety();
      case KeepPage.STEP -> screen.say("What was kept stays in the logbook.");
      case Talk.STEP -> screen.say("Taken back what was told last.");
      default -> asked = Math.max(0, asked - 1);
    }
  }

  /** Shows the answers until they are found right. */
  private void review() throws UserLeftException {
    while (!reviewed()) {
      keep();
    }
  }

  /** Whether the answers were found right. */
  private boolean reviewed() throws UserLeftException {
    ReviewPage.Wish wish = new ReviewPage(screen, session, vocabulary, settings, talk).ask();
    if (wish instanceof ReviewPage.Wish.Safety) {
      safety();
    } else if (wish instanceof ReviewPage.Wish.Change change) {
      asked = Math.max(0, asked - 1);
      question(change.question(), "To change this answer:");
    } else if (wish instanceof ReviewPage.Wish.Settings) {
      settings.forget();
    }
    return wish instanceof ReviewPage.Wish.GoOn;
  }

  private void keep() {
    if (saving) {
      try {
        saved.keep(session.situation());
      } catch (IOException e) {
        cannotSave();
      }
    }
  }

  private void farewell() {
    screen.say(saving ? "Left. Your answers are kept." : "Left. Your answers are not kept.");
  }

  private void cannotSave() {
    saving = false;
    screen.say("Your answers cannot be kept on this disk; everything else works.");
  }
}
