package insidelift.console;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.logbook.Logbook;
import insidelift.engine.logbook.LogbookProblem;
import insidelift.engine.logbook.OwnLog;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * What takes a while at the start, made ready in the background while the user reads the greeting
 * and looks at the kart: the rules, and the user's own log.
 */
final class Preparation {

  private final CompletableFuture<Advisor> advisor;
  private final CompletableFuture<Optional<OwnLog>> log;

  Preparation(Vocabulary vocabulary, NoteBook notes, Path folder) {
    this.advisor =
        CompletableFuture.supplyAsync(() -> new Advisor(vocabulary, RuleBase.load(), notes));
    // After the rules: on a machine of one processor they are what is waited for.
    this.log = advisor.thenApplyAsync(ready -> log(folder));
  }

  private static Optional<OwnLog> log(Path folder) {
    try {
      return OwnLog.ofLastRun(folder, Logbook.read(folder));
    } catch (LogbookProblem e) {
      // A log that cannot be read is the business of "log", which says why; advice does without.
      return Optional.empty();
    }
  }

  /** The advisor, as soon as it is ready. */
  Advisor advisor() {
    return ready(advisor);
  }

  /** What the user's own log says of whoever drove last; empty if there is no such run. */
  Optional<OwnLog> log() {
    return ready(log);
  }

  private static <T> T ready(CompletableFuture<T> future) {
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
