package insidelift.shared.index;

/** Whether something holds of all that is known: it does, it does not, or an answer is wanting. */
public enum Truth {
  /** It does not hold, whatever else is answered. */
  FALSE,
  /** It hangs on what nobody has answered yet. */
  OPEN,
  /** It holds, whatever else is answered. */
  TRUE;

  /** Whether both hold. */
  public Truth and(Truth other) {
    return compareTo(other) < 0 ? this : other;
  }

  /** Whether one of them holds. */
  public Truth or(Truth other) {
    return compareTo(other) > 0 ? this : other;
  }

  /** The contrary. */
  public Truth not() {
    return switch (this) {
      case TRUE -> FALSE;
      case OPEN -> OPEN;
      case FALSE -> TRUE;
    };
  }

  /** What is known for certain. */
  public static Truth of(boolean holds) {
    return holds ? TRUE : FALSE;
  }
}
