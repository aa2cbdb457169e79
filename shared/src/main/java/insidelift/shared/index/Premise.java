package insidelift.shared.index;

import java.util.List;

/** What a rule needs. Each kind says by itself whether it holds of what is known. */
public sealed interface Premise {

  /** Whether it holds. */
  Truth in(Known known);

  /** The questions it reads by name. */
  default List<String> questions() {
    return List.of();
  }

  /**
   * One of these questions is answered with one of these values, or none of them is.
   *
   * @param questions the questions
   * @param values the values; none stands for any answer
   * @param absent whether no such answer may be known
   */
  record Told(List<String> questions, List<String> values, boolean absent) implements Premise {
    /** Takes copies of the lists. */
    public Told {
      questions = List.copyOf(questions);
      values = List.copyOf(values);
    }

    @Override
    public Truth in(Known known) {
      Truth any = Truth.FALSE;
      for (String question : questions) {
        any = any.or(known.answered(question, values));
      }
      return absent ? any.not() : any;
    }
  }

  /** Something is complained of. */
  record Complained() implements Premise {
    @Override
    public Truth in(Known known) {
      return known.complaint();
    }
  }

  /**
   * A lever is moved now.
   *
   * @param lever its id; empty for any
   * @param direction which way; empty for either
   */
  record Moved(String lever, String direction) implements Premise {
    @Override
    public Truth in(Known known) {
      return known.moved(lever, direction);
    }
  }
}
