package insidelift.console.asking;

import insidelift.shared.situation.EdgeTemperatures;

/** What the user wants at one point of the dialogue. */
public sealed interface Reply {

  /** One of the choices, or {@code unknown}. */
  record Chosen(String value) implements Reply {}

  /** A number in its range. */
  record Measured(double number) implements Reply {}

  /** The heat across one tyre. */
  record Heat(EdgeTemperatures tread) implements Reply {}

  /** The words are to be explained. */
  record Explain() implements Reply {}

  /** One step back. */
  record Back() implements Reply {}

  /** All answers so far, to change any. */
  record Review() implements Reply {}

  /** How to answer. */
  record Help() implements Reply {}

  /** To leave. */
  record Quit() implements Reply {}

  /** A question in return, as it was typed. */
  record Inquiry(String line) implements Reply {}

  /** Something that was seen or felt, in a sentence. */
  record Told(String line) implements Reply {}

  /** Not understood, and why. */
  record Unclear(String why) implements Reply {}
}
