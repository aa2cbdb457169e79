package insidelift.engine.consultation.session;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.units.Units;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Loads an advisor while its user goes on with something else. Words and notes are there at once;
 * the rules take longest and need nothing of the rest, so they are loaded in the background.
 */
public final class AdvisorLoader {

  private static LoadingRules ahead;

  private LoadingRules rules;
  private final Vocabulary vocabulary;
  private final NoteBook notes;

  private AdvisorLoader(Units units, boolean now) {
    if (now) {
      begin();
    }
    this.vocabulary = Vocabulary.load();
    this.notes = NoteBook.open(units);
  }

  /** Begins with the rules before anything is known but that they will be wanted. */
  public static synchronized void ahead() {
    if (ahead == null) {
      ahead = new LoadingRules();
      ahead.start();
    }
  }

  private static synchronized LoadingRules taken() {
    ahead();
    LoadingRules taken = ahead;
    ahead = null;
    return taken;
  }

  /** Begins with the rules, for an advisor who speaks in these units. */
  public static AdvisorLoader now(Units units) {
    return new AdvisorLoader(units, true);
  }

  /** The same with the rules left until they are begun, or wanted. */
  public static AdvisorLoader later(Units units) {
    return new AdvisorLoader(units, false);
  }

  /** Begins to load the rules, if that has not begun yet. */
  public synchronized void begin() {
    if (rules == null) {
      rules = taken();
    }
  }

  private synchronized LoadingRules rules() {
    begin();
    return rules;
  }

  /** The words of this build. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** The notes of this build. */
  public NoteBook notes() {
    return notes;
  }

  /**
   * Waits for the advisor; a new one each time, all on the same rules.
   *
   * @throws IllegalStateException if the build holds no compiled rules
   */
  public Advisor advisor() {
    LoadingRules loading = rules();
    // There is nothing else to do meanwhile, and the index is needed next.
    RuleBase.shipped();
    return new Advisor(vocabulary, loading.rules(), notes);
  }

  /** The advisor, some time later, without taking a second processor from whoever asks. */
  public CompletableFuture<Advisor> promised() {
    LoadingRules loading = rules();
    return CompletableFuture.supplyAsync(() -> new Advisor(vocabulary, loading.rules(), notes));
  }

  /** Waits for something, and fails as it failed: not wrapped in the waiting. */
  public static <T> T ready(CompletableFuture<T> future) {
    try {
      return future.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }
}
