package insidelift.engine.consultation;

import insidelift.rules.Reasoning;
import insidelift.rules.Reasoning.Stage;
import insidelift.rules.RuleBase;
import java.util.List;

/**
 * The rules while they are loaded, on a thread of their own. A bare thread: the first future and
 * the first lambda of a start take a tenth of the time of the rules, in which nothing else would
 * happen.
 */
final class LoadingRules extends Thread {

  private RuleBase rules;
  private RuntimeException failure;
  private Error error;

  LoadingRules() {
    super("rules");
    setDaemon(true);
  }

  @Override
  public void run() {
    try {
      RuleBase loaded = RuleBase.load();
      // The first line of reasoning is many times slower than the second.
      try (Reasoning first = loaded.reason()) {
        first.run(Stage.OBSERVE, List.of());
      }
      rules = loaded;
    } catch (RuntimeException e) {
      failure = e;
    } catch (Error e) {
      error = e;
    }
  }

  /** Waits for the rules, and fails as loading them failed. */
  RuleBase rules() {
    boolean interrupted = false;
    while (true) {
      try {
        join();
        break;
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (error != null) {
      throw error;
    }
    if (failure != null) {
      throw failure;
    }
    return rules;
  }
}
