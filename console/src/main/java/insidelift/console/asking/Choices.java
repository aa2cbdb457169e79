package insidelift.console.asking;

import insidelift.engine.units.Amount;
import insidelift.engine.units.KnownUnit;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.NumberAnswer;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What can be answered at one point of the dialogue: some choices, or a number within a range.
 *
 * @param label the short word before the cursor
 * @param head what is asked, as paragraphs
 * @param choices the choices, in order; empty for a number
 * @param range what is to be measured; empty for choices
 * @param beside the range of a number that may be typed in place of a choice, with its unit
 * @param nothing the words for "I do not know"; empty where that is no answer
 * @param explained whether {@code ?} has something to show
 */
public record Choices(
    String label,
    List<String> head,
    List<Choice> choices,
    Optional<Measurable> range,
    Optional<Span> beside,
    Optional<String> nothing,
    boolean explained) {

  /** One choice: its id, and its words. */
  public record Choice(String id, String words) {}

  /** What people type for not knowing. */
  private static final Set<String> UNKNOWN =
      Set.of(
          Vocabulary.UNKNOWN,
          "u",
          "i do not know",
          "i don't know",
          "don't know",
          "dont know",
          "do not know",
          "no idea",
          "i have no idea",
          "no clue",
          "i have no clue",
          "not sure",
          "i am not sure",
          "dunno");

  /** Without a number beside the choices. */
  public Choices(
      String label,
      List<String> head,
      List<Choice> choices,
      Optional<Measurable> range,
      Optional<String> nothing,
      boolean explained) {
    this(label, head, choices, range, Optional.empty(), nothing, explained);
  }

  /** What a question of the vocabulary can be answered with. */
  public static Choices of(Question question, String progress, List<Choice> more) {
    List<Choice> choices = new ArrayList<>();
    Optional<Measurable> range = Optional.empty();
    Optional<Span> beside = Optional.empty();
    NumberAnswer number = question.number();
    if (question.numberOnly()) {
      range = Optional.of(new Span(number.min(), number.max(), number.unit()));
    } else {
      question.values().forEach(value -> choices.add(new Choice(value.id(), value.words())));
      choices.addAll(more);
      if (number != null) {
        beside =
            KnownUnit.spelt(number.unit()).map(unit -> Span.of(number.min(), number.max(), unit));
      }
    }
    return new Choices(
        question.id(),
        List.of(progress, question.ask() + " (" + question.why() + ")"),
        choices,
        range,
        beside,
        Optional.of("I do not know"),
        true);
  }

  /** What a typed line means here. */
  Reply read(String line) {
    String said = line.strip().toLowerCase(Locale.ROOT);
    if (said.isEmpty()) {
      return new Reply.Unclear(
          range.isPresent()
              ? "Type " + range.get().asked() + "."
              : "Nothing is chosen yet: type a number or the first letters, then Enter.");
    }
    Optional<Reply> command = command(said);
    if (command.isPresent()) {
      return command.get();
    }
    if (fitting(said).isEmpty() && Remark.asks(said)) {
      return new Reply.Inquiry(line.strip());
    }
    if (beside.isPresent() && Amount.of(said).flatMap(Amount::unit).isPresent()) {
      return beside.get().read(said);
    }
    Reply reply = range.isPresent() ? range.get().read(said) : choice(said);
    return reply instanceof Reply.Unclear && Remark.tells(said)
        ? new Reply.Told(line.strip())
        : reply;
  }

  private Optional<Reply> command(String said) {
    if (nothing.isPresent() && UNKNOWN.contains(said)) {
      return Optional.of(new Reply.Chosen(Vocabulary.UNKNOWN));
    }
    if (said.length() == 1 && !fitting(said).isEmpty()) {
      // The first letter of a choice means that choice; the command has its whole word.
      return Optional.empty();
    }
    return switch (said) {
      case "?" -> Optional.of(explained ? new Reply.Explain() : new Reply.Help());
      case "back", "b", "undo" -> Optional.of(new Reply.Back());
      case "quit" -> Optional.of(new Reply.Quit());
      case "review", "r" -> Optional.of(new Reply.Review());
      case "help", "h" -> Optional.of(new Reply.Help());
      default -> Optional.empty();
    };
  }

  /** What is wrong with a number as far as it has been typed, or that it is fine. */
  String check(String typed) {
    return range.isEmpty() || typed.isBlank() ? "" : range.get().check(typed.strip());
  }

  private Reply choice(String said) {
    if (numbers(said)) {
      int number = Integer.parseInt(said);
      if (number >= 1 && number <= choices.size()) {
        return new Reply.Chosen(choices.get(number - 1).id());
      }
      return new Reply.Unclear(
          "There are choices 1 to %d%s."
              .formatted(choices.size(), nothing.isEmpty() ? "" : "; u means not known"));
    }
    List<Choice> meant = fitting(said);
    if (meant.size() == 1) {
      return new Reply.Chosen(meant.get(0).id());
    }
    Optional<Choice> exact =
        choices.stream().filter(choice -> choice.id().equals(said)).findFirst();
    if (exact.isPresent()) {
      return new Reply.Chosen(exact.get().id());
    }
    return new Reply.Unclear(
        Printable.quoted(said)
            + (meant.isEmpty()
                ? " is none of the choices. Type a number or the first letters."
                : " fits more than one choice. Type a little more."));
  }

  /** Whether what is typed is the number of a choice, and not a number to be told. */
  boolean numbers(String said) {
    return range.isEmpty() && said.matches("\\d{1,3}");
  }

  /** The choices whose word or words begin like that. */
  List<Choice> fitting(String said) {
    String start = said.strip().toLowerCase(Locale.ROOT);
    return choices.stream()
        .filter(
            choice ->
                choice.id().startsWith(start)
                    || choice.words().toLowerCase(Locale.ROOT).startsWith(start))
        .toList();
  }
}
