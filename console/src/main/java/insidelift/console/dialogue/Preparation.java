package insidelift.console.dialogue;

import insidelift.console.cli.OverlayOption;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.session.AdvisorLoader;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Notice;
import insidelift.engine.logbook.use.OwnLog;
import insidelift.shared.situation.CaseProblem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * What takes a while at the start, made ready in the background while the user reads the greeting
 * and looks at the kart: the rules, and the user's own log.
 */
final class Preparation {

  private final AdvisorLoader loader;
  private final Path folder;
  private CompletableFuture<Advisor> advisor;
  private CompletableFuture<Optional<OwnLog>> log;
  private volatile String problem = "";
  private volatile List<String> damage = List.of();

  Preparation(AdvisorLoader loader, Path folder) {
    this.loader = loader;
    this.folder = folder;
  }

  /** Begins, if it has not begun yet: at the latest when something of it is needed. */
  synchronized void begin() {
    if (advisor == null) {
      advisor = loader.promised().thenApplyAsync(this::withOwn);
      // After the rules: on a machine of one processor they are what is waited for.
      log = advisor.thenApplyAsync(ready -> log(folder));
    }
  }

  /** A shop's own claims are left out, and that is said, where its file cannot be used. */
  private Advisor withOwn(Advisor advisor) {
    try {
      return new OverlayOption().beside(advisor);
    } catch (CaseProblem e) {
      problem = e.getMessage();
      return advisor;
    }
  }

  private Optional<OwnLog> log(Path folder) {
    try {
      Logbook book = Logbook.read(folder);
      Optional<OwnLog> own = OwnLog.ofLastRun(folder, book);
      damage = book.notices().stream().filter(Notice::lost).map(Notice::sentence).toList();
      return own;
    } catch (LogbookProblem e) {
      // A log that cannot be read is the business of "log", which says why; advice does without.
      return Optional.empty();
    }
  }

  /** The advisor, as soon as it is ready. */
  Advisor advisor() {
    begin();
    return AdvisorLoader.ready(advisor);
  }

  /** What is wrong with the shop's own knowledge; empty if nothing is. */
  String problem() {
    advisor();
    return problem;
  }

  /** What of the user's own log is lost, in sentences not yet safe to print. */
  List<String> damage() {
    log();
    return damage;
  }

  /** What the user's own log says of whoever drove last; empty if there is no such run. */
  Optional<OwnLog> log() {
    begin();
    return AdvisorLoader.ready(log);
  }
}
