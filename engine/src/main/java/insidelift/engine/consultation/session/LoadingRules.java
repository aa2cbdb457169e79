package insidelift.engine.consultation.session;

import insidelift.rules.RuleBase;

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
      rules = RuleBase.load();
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
