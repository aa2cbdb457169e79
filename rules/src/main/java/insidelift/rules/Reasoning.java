package insidelift.rules;

import java.util.Collection;

/** A way to reason by the rules: facts go in, and what the rules make of them comes out. */
interface Reasoning {

  /** All that is known and all that follows from it. Serves any number of threads. */
  Reasoned reason(Collection<?> facts);
}
