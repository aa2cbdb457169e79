package insidelift.console.fuzz;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.engine.training.drill.Cases;
import insidelift.shared.situation.CaseProblem;
import java.util.Locale;

/**
 * Everything that reads what comes from outside. Each reads bytes that may be anything; it may only
 * refuse them, in one printable sentence, or work with them to the end.
 */
enum Target {
  /** A case file, and that it is the same when it was written and read again. */
  CASE(GivenFiles::caseFile),
  /** The whole advice for a case file, with its words. */
  ADVICE(GivenFiles::advice),
  /** The kart of {@code predict}. */
  KART(GivenFiles::kart),
  /** The washers of {@code positions}. */
  POSITIONS(GivenFiles::positions),
  /** The readings of {@code gauge}. */
  GAUGE(GivenFiles::gauge),
  /** The readings of {@code toe}. */
  TOE(GivenFiles::toe),
  /** A shop's own claims, and advice beside them. */
  OWN(GivenFiles::own),
  /** A folder of cases, for the audit and for the drill. */
  CASES(GivenFiles::cases),
  /** A file of lap times, its columns named or not. */
  LAPS(GivenLaps::file),
  /** Lap times as typed or pasted. */
  PASTED(GivenLaps::pasted),
  /** What the driver says, in a sentence. */
  SENTENCE(GivenWords::sentence),
  /** Measures, dates and choices as typed. */
  TYPED(GivenWords::typed),
  /** A logbook with the right check on each line, and every table and export of it. */
  LOGBOOK(GivenLog::framed),
  /** A logbook of any bytes. */
  RAW_LOGBOOK(GivenLog::raw),
  /** What a trainee did, replayed and judged. */
  ATTEMPT(GivenLog::attempt),
  /** A consultation that was kept, and a training log, found in the data folder. */
  KEPT(GivenLog::kept);

  /** Reads bytes. */
  private interface Reader {
    void read(byte[] bytes) throws Exception;
  }

  private static final class Loaded {
    private static final Advisor ADVISOR = Advisor.load();
    private static final NextQuestion NEXT = new NextQuestion(ADVISOR.decider());
    private static final Cases CASES = new Cases(ADVISOR);
  }

  // Method references keep nothing.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Reader reader;

  Target(Reader reader) {
    this.reader = reader;
  }

  static Advisor advisor() {
    return Loaded.ADVISOR;
  }

  static NextQuestion next() {
    return Loaded.NEXT;
  }

  static Cases drillCases() {
    return Loaded.CASES;
  }

  /** The name of its file of inputs. */
  String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Target of(String id) {
    return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** Reads bytes; whatever is thrown from here is a fault of the program. */
  void read(byte[] bytes) {
    try {
      reader.read(bytes);
    } catch (CaseProblem
        | RefusedInputException
        | UnreadableLapTimes
        | RefusedEntryException
        | LogbookProblem refusal) {
      Shown.message(refusal);
    } catch (RuntimeException | Error fault) {
      throw fault;
    } catch (Exception fault) {
      throw new AssertionError("a refusal that nobody announced", fault);
    }
  }
}
