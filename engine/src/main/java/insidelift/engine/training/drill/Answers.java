package insidelift.engine.training.drill;

import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.training.card.Card;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What to do now as something that can be chosen: without the sizes, an id and words for each. */
final class Answers {

  static final String FIX = "fix";
  static final String LEAVE = "leave";

  /** Everything that is offered as a rule, in this order. */
  private static final List<String> USUAL =
      List.of(
          FIX,
          "camber-more",
          "camber-less",
          "caster-more",
          "caster-less",
          "camber-more+caster-more",
          LEAVE);

  private Answers() {}

  /** The id of what a conclusion comes to. */
  static String of(Conclusion conclusion) {
    return switch (conclusion.status()) {
      case FIX_FIRST -> FIX;
      case CHANGE ->
          new TreeMap<>(conclusion.moves())
              .entrySet().stream()
                  .map(move -> move.getKey().id() + "-" + move.getValue().direction().id())
                  .collect(Collectors.joining("+"));
      case HOLD, NOT_ENOUGH -> LEAVE;
    };
  }

  /** What is offered where this answer is right. */
  static List<Card.Option> offered(String right) {
    List<String> ids = new ArrayList<>(USUAL);
    if (!ids.contains(right)) {
      ids.add(ids.size() - 1, right);
    }
    return ids.stream().map(id -> new Card.Option(id, words(id))).toList();
  }

  /** An answer in words. */
  static String words(String id) {
    if (id.equals(FIX)) {
      return "put something right first, and leave camber and caster alone";
    }
    if (id.equals(LEAVE)) {
      return "leave camber and caster as they are";
    }
    List<String> moves = new ArrayList<>();
    for (String move : id.split("\\+", -1)) {
      String[] parts = move.split("-", -1);
      moves.add(words(Lever.valueOf(parts[0].toUpperCase(Locale.ROOT)), parts[1]));
    }
    return String.join(", and ", moves);
  }

  private static String words(Lever lever, String direction) {
    boolean more = direction.equals(Direction.MORE.id());
    return switch (lever) {
      case CAMBER -> more ? "camber toward positive" : "camber toward negative";
      case CASTER -> more ? "more caster" : "less caster";
    };
  }

  /** A conclusion in words, with its sizes. */
  static String words(Conclusion conclusion, NoteBook notes) {
    return switch (conclusion.status()) {
      case FIX_FIRST ->
          "put right first: "
              + conclusion.reasons().stream()
                  .map(note -> notes.note(note).title())
                  .collect(Collectors.joining("; "));
      case CHANGE ->
          conclusion.moves().entrySet().stream()
              .map(move -> words(move.getKey(), move.getValue()))
              .collect(Collectors.joining(", and "));
      case HOLD, NOT_ENOUGH -> words(LEAVE);
    };
  }

  /** A move in words, with its size. */
  static String words(Lever lever, Conclusion.Step step) {
    return words(lever, step.direction().id()) + ", by " + Degrees.of(step.degrees());
  }
}
