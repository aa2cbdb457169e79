package insidelift.engine.consultation;

import insidelift.engine.notes.NoteBook;
import insidelift.engine.units.Units;
import insidelift.rules.Reasoning;
import insidelift.rules.Reasoning.Stage;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Loads an advisor while its user goes on with something else. The rules take longest and need
 * nothing of the rest, so they are begun first, in the background; words and notes are there at
 * once.
 */
public final class AdvisorLoader {

  private final CompletableFuture<RuleBase> rules =
      CompletableFuture.supplyAsync(AdvisorLoader::load);
  private final Vocabulary vocabulary = Vocabulary.load();
  private final NoteBook notes;

  /** Begins to load an advisor who speaks in these units. */
  public AdvisorLoader(Units units) {
    this.notes = NoteBook.open(units);
  }

  private static RuleBase load() {
    RuleBase loaded = RuleBase.load();
    // The first line of reasoning is many times slower than the second.
    try (Reasoning first = loaded.reason()) {
      first.run(Stage.OBSERVE, List.of());
    }
    return loaded;
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
    // There is nothing else to do meanwhile, and the index is needed next.
    RuleBase.shipped();
    try {
      return new Advisor(vocabulary, rules.join(), notes);
    } catch (CompletionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }

  /** The advisor, some time later, without taking a second processor from whoever asks. */
  public CompletableFuture<Advisor> later() {
    return rules.thenApply(loaded -> new Advisor(vocabulary, loaded, notes));
  }
}
