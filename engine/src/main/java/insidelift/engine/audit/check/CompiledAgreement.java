package insidelift.engine.audit.check;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.rules.fact.Spoken;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether the compiled rules say what their index says, in one of so many situations. */
public final class CompiledAgreement implements SituationVisitor {

  private final Advisor compiled;
  private final int every;
  private long seen;
  private Remark difference;

  public CompiledAgreement(Advisor compiled, int every) {
    this.compiled = compiled;
    this.every = every;
  }

  /** The first situation in which they differ. */
  public List<Remark> remarks() {
    return difference == null ? List.of() : List.of(difference);
  }

  @Override
  public void see(Situation situation, Decided plain) {
    if (seen++ % every == 0 && difference == null) {
      Decided other = compiled.decide(situation);
      boolean same =
          other.status() == plain.status()
              && other.verdicts().equals(plain.verdicts())
              && said(other).equals(said(plain))
              && other.reasoned().sums().equals(plain.reasoned().sums());
      if (!same) {
        difference =
            Remark.of("index", Severity.ERROR, "the compiled rules say other than their index")
                .shownBy(situation.answers());
      }
    }
  }

  private static Set<Spoken> said(Decided decided) {
    return decided.reasoned().all(Spoken.class).collect(Collectors.toSet());
  }
}
