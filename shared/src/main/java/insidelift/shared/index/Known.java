package insidelift.shared.index;

import java.util.List;

/** What is known, as premises ask for it. */
public interface Known {

  /**
   * Whether a question is answered with one of these values.
   *
   * @param values the values; none stands for any answer
   */
  Truth answered(String question, List<String> values);

  /** Whether anything is complained of. */
  Truth complaint();

  /**
   * Whether a lever is moved now.
   *
   * @param lever the lever's id; empty for any
   * @param direction which way; empty for either
   */
  Truth moved(String lever, String direction);
}
