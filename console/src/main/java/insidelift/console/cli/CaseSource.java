package insidelift.console.cli;

import insidelift.engine.consultation.session.SavedConsultation;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Notice;
import insidelift.engine.logbook.file.Numbered;
import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a situation comes from, named the same way by every verb: a case file, {@code -} for
 * standard input, {@code last} for the last finished consultation, {@code run:12} or {@code
 * run:last} for a run of the logbook.
 */
public record CaseSource(String name) {

  /** How help calls it. */
  public static final String LABEL = "CASE";

  /** What help says of it. */
  public static final String WAYS =
      "a case file, - for standard input, last for the last consultation, run:12 for a run";

  static final String LAST = "last";

  private static final String RUN = "run:";
  private static final String OF_THE_LOGBOOK = RUN + "(?:\\d{1,9}|last)";

  /** Where the user's own files are. */
  public interface Folder {
    Path find() throws LogbookProblem;
  }

  /**
   * What was found.
   *
   * @param situation the situation, with the kart's own sheet where the logbook has one
   * @param kart what the user calls the kart; empty where nobody said
   * @param subject driver, kart and day, for the top of a card; empty where nobody said
   * @param notices what is wrong with the logbook that it comes from
   */
  public record Found(Situation situation, String kart, String subject, List<Notice> notices) {
    Found(Situation situation) {
      this(situation, "", "", List.of());
    }
  }

  /** Whether it is a file or standard input, which may hold more than the situation. */
  public boolean isFile() {
    return !name.equals(LAST) && !name.matches(OF_THE_LOGBOOK);
  }

  /** How messages call it. */
  public String shown() {
    return switch (name) {
      case LAST -> "the last consultation";
      case "-" -> "standard input";
      default -> Printable.shown(name, 200);
    };
  }

  /**
   * Reads it.
   *
   * @throws CaseProblem if it is no situation, in the words that stand behind its name
   */
  public Found read(Vocabulary vocabulary, Folder folder) throws CaseProblem, LogbookProblem {
    if (name.equals(LAST)) {
      return new Found(
          new SavedConsultation(folder.find(), vocabulary)
              .finished()
              .orElseThrow(
                  () -> new CaseProblem("there is none yet; start \"insidelift\" and finish one")));
    }
    if (name.matches(OF_THE_LOGBOOK)) {
      return logged(Logbook.read(folder.find()), name.substring(RUN.length()));
    }
    return new Found(InputFile.read(name, in -> new CaseReader(vocabulary).read(in)));
  }

  private static Found logged(Logbook book, String number) throws CaseProblem {
    RunEntry run =
        (number.equals(LAST) ? book.lastWritten() : book.run(Integer.parseInt(number)))
            .map(Numbered::entry)
            .orElseThrow(() -> new CaseProblem("the logbook has no such run"));
    return new Found(
        own(book, run.kart(), run.driver(), run.situation()),
        book.name(run.kart()),
        "%s, %s, %s"
            .formatted(book.name(run.driver()), book.name(run.kart()), book.day(run.day()).date()),
        book.notices());
  }

  /** A kart of the logbook as it stood when it was last driven. */
  public static Found kart(Logbook book, int kart) {
    Situation last = Situation.UNKNOWN;
    int driver = 0;
    for (Numbered<RunEntry> run : book.runs()) {
      if (run.entry().kart() == kart) {
        last = run.entry().situation();
        driver = run.entry().driver();
      }
    }
    return new Found(
        own(book, kart, driver, last), book.name(kart), book.name(kart), book.notices());
  }

  /** A situation with what the logbook knows of its kart, and of whoever drove it. */
  private static Situation own(Logbook book, int kart, int driver, Situation situation) {
    Map<String, String> always =
        new LinkedHashMap<>(book.entry(kart, KartEntry.class).orElseThrow().answers());
    book.entry(driver, DriverEntry.class).map(DriverEntry::answers).ifPresent(always::putAll);
    always.keySet().removeAll(situation.answers().keySet());
    KartRecord past = situation.kart().past();
    for (Map.Entry<String, Baseline> one : book.baselines(kart).entrySet()) {
      past = past.keeping(one.getKey(), one.getValue());
    }
    Situation known = situation.with(situation.kart().with(past));
    for (Map.Entry<String, String> answer : always.entrySet()) {
      known = known.with(answer.getKey(), answer.getValue());
    }
    return known;
  }
}
