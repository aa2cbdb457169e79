package insidelift.engine.training.drill;

import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.situation.Printable;
import java.util.Locale;

/** Something that a trainee does in a case. */
public sealed interface DrillMove {

  /** The move as the log of attempts has it. */
  String words();

  /** Looks the kart over: all safety checks at once. */
  record Look() implements DrillMove {
    @Override
    public String words() {
      return "look";
    }
  }

  /** Asks the driver, or measures: one question of the vocabulary. */
  record Ask(String question) implements DrillMove {
    @Override
    public String words() {
      return "ask " + question;
    }
  }

  /** Takes the next rung of the ladder of hints. */
  record Hint() implements DrillMove {
    @Override
    public String words() {
      return "hint";
    }
  }

  /** Says that something has to be put right before a lever is touched. */
  record FixFirst() implements DrillMove {
    @Override
    public String words() {
      return "fix-first";
    }
  }

  /** Names what the answers say: a finding, or {@link Drill#NONE}. */
  record Found(String finding) implements DrillMove {
    @Override
    public String words() {
      return "found " + finding;
    }
  }

  /**
   * Says what comes before camber and caster.
   *
   * @param step another lever and its way, such as {@code front-width more}, or {@link Drill#NONE}
   */
  record First(String step) implements DrillMove {
    @Override
    public String words() {
      return "first " + step;
    }
  }

  /** Says what to do with a lever. */
  record Move(Lever lever, Step step) implements DrillMove {
    @Override
    public String words() {
      return String.format(
          Locale.ROOT, "set %s %s %.2f", lever.id(), step.direction().id(), step.degrees());
    }
  }

  /** Says why: a note. */
  record Because(String note) implements DrillMove {
    @Override
    public String words() {
      return "because " + note;
    }
  }

  /**
   * The move that words stand for.
   *
   * @throws IllegalArgumentException if they stand for none
   */
  static DrillMove of(String words) {
    String[] parts = words.split(" ", -1);
    try {
      return switch (parts[0] + " " + parts.length) {
        case "look 1" -> new Look();
        case "hint 1" -> new Hint();
        case "fix-first 1" -> new FixFirst();
        case "ask 2" -> new Ask(parts[1]);
        case "found 2" -> new Found(parts[1]);
        case "because 2" -> new Because(parts[1]);
        case "first 2" -> new First(parts[1]);
        case "first 3" -> new First(parts[1] + " " + parts[2]);
        case "set 4" ->
            new Move(
                Named.of(Lever.class, parts[1]),
                new Step(Named.of(Direction.class, parts[2]), degrees(words, parts[3])));
        default -> throw none(words);
      };
    } catch (IllegalArgumentException e) {
      throw none(words);
    }
  }

  private static double degrees(String words, String number) {
    if (!number.matches("\\d{1,2}\\.\\d{2}")) {
      throw none(words);
    }
    return Double.parseDouble(number);
  }

  private static IllegalArgumentException none(String words) {
    return new IllegalArgumentException(Printable.quoted(words) + " is no move");
  }
}
