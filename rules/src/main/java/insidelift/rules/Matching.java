package insidelift.rules;

import insidelift.rules.Reasoning.Stage;
import java.util.List;

/** A way to match rules against facts without the rule engine. */
interface Matching {

  /** Lets the rules of one stage speak about all facts known by then. */
  void run(Stage stage, List<Object> facts, Ledger ledger);
}
