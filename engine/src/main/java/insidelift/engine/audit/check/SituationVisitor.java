package insidelift.engine.audit.check;

import insidelift.engine.consultation.decision.Decided;
import insidelift.shared.situation.Situation;

/** Something that is looked at in every situation visited. */
public interface SituationVisitor {

  /** Looks at one situation and what it comes to. */
  void see(Situation situation, Decided decided);
}
