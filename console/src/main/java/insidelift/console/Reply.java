package insidelift.console;

import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.NumberAnswer;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.situation.Printable;
import java.util.List;
import java.util.Locale;

/** What a typed line means as the answer to a question. */
sealed interface Reply {

  /** One of the question's values, or {@code unknown}. */
  record Chosen(String value) implements Reply {}

  /** A number for a question that takes one. */
  record Measured(double number) implements Reply {}

  /** The word that explains the question is wanted. */
  record Explain() implements Reply {}

  /** One step back. */
  record Back() implements Reply {}

  /** Not understood, and why. */
  record Unclear(String why) implements Reply {}

  /** Reads a line as the answer to a question. */
  static Reply read(Question question, String line) {
    String said = line.strip().toLowerCase(Locale.ROOT);
    if (said.equals("?")) {
      return new Explain();
    }
    if (said.equals("back") || said.equals("b")) {
      return new Back();
    }
    if (said.isEmpty() || said.equals("u") || said.equals(Vocabulary.UNKNOWN)) {
      return said.isEmpty()
          ? new Unclear("Type a number or the first letters, u if you do not know.")
          : new Chosen(Vocabulary.UNKNOWN);
    }
    if (question.numberOnly()) {
      return number(question.number(), said);
    }
    return choice(question, said);
  }

  private static Reply number(NumberAnswer range, String said) {
    double number;
    try {
      number = Double.parseDouble(said.replace(',', '.'));
    } catch (NumberFormatException e) {
      return new Unclear(Printable.quoted(said) + " is not a number of " + range.unit() + ".");
    }
    if (!(number >= range.min() && number <= range.max())) {
      return new Unclear(
          "That is outside %.0f to %.0f %s.".formatted(range.min(), range.max(), range.unit()));
    }
    return new Measured(number);
  }

  private static Reply choice(Question question, String said) {
    List<Value> values = question.values();
    if (said.chars().allMatch(Character::isDigit) && said.length() < 4) {
      int number = Integer.parseInt(said);
      if (number >= 1 && number <= values.size()) {
        return new Chosen(values.get(number - 1).id());
      }
      return new Unclear("There are choices 1 to " + values.size() + ".");
    }
    List<Value> meant =
        values.stream()
            .filter(
                value ->
                    value.id().startsWith(said)
                        || value.words().toLowerCase(Locale.ROOT).startsWith(said))
            .toList();
    if (meant.size() == 1) {
      return new Chosen(meant.get(0).id());
    }
    return values.stream()
        .filter(value -> value.id().equals(said))
        .findFirst()
        .<Reply>map(value -> new Chosen(value.id()))
        .orElseGet(
            () ->
                new Unclear(
                    Printable.quoted(said)
                        + (meant.isEmpty() ? " is none of the choices." : " fits more than one.")));
  }
}
