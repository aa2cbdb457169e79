package insidelift.engine.audit;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.Decided;
import insidelift.shared.situation.Situation;
import java.util.HashSet;
import java.util.List;

/** Whether the compiled rules say what their index says, in one of so many situations. */
final class Agreement implements Watch {

  private final Advisor compiled;
  private final int every;
  private long seen;
  private Remark difference;

  Agreement(Advisor compiled, int every) {
    this.compiled = compiled;
    this.every = every;
  }

  /** The first situation in which they differ. */
  List<Remark> remarks() {
    return difference == null ? List.of() : List.of(difference);
  }

  @Override
  public void see(Situation situation, Decided plain) {
    if (seen++ % every == 0 && difference == null) {
      Decided other = compiled.decide(situation);
      boolean same =
          other.status() == plain.status()
              && other.first().equals(plain.first())
              && new HashSet<>(other.ledger()).equals(new HashSet<>(plain.ledger()));
      if (!same) {
        difference =
            Remark.of("index", Severity.ERROR, "the compiled rules say other than their index")
                .shownBy(situation.answers());
      }
    }
  }
}
