package insidelift.console.asking;

/** What can be measured and typed at a prompt. */
public sealed interface Measurable permits Span, Tread {

  /** What is to be typed, in words that stand behind "type". */
  String asked();

  /** What typed words mean; or what is wrong with them. */
  Reply read(String said);

  /** What is wrong with words as far as they have been typed, or that they are fine. */
  default String check(String typed) {
    return read(typed) instanceof Reply.Unclear unclear
        ? unclear.why()
        : withUnit(typed) + ": in range";
  }

  /** Words as they were typed, with the unit that they were taken for. */
  String withUnit(String typed);

  /** The unit in words. */
  String unit();
}
