package insidelift.engine.speech;

import insidelift.engine.speech.Figures.Measured;
import insidelift.shared.Degrees;
import insidelift.shared.situation.Sides;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Camber and caster that are told in degrees, as they stand now. */
final class Angles {

  private static final String DEGREES = "(?: (?:degrees?|degs?|°|º))?";
  private static final String SIGN = "(?: (negative|neg|positive|pos))?";
  private static final String READS =
      "(?: (?:is|are|at|now|set|to|about|around|currently|on|both|sides|each|side|measured|measures"
          + "|shows|reads|have|=|:|i|we|of|front|both sides|per|wheels|same))*? ";
  private static final Pattern SIDES =
      Pattern.compile(
          "(camber|caster|castor)(?: is| :| =)? left(?: side)?(?: is)? "
              + Figures.N
              + DEGREES
              + SIGN
              + "(?: and| ,| /)? right(?: side)?(?: is)? "
              + Figures.N
              + DEGREES
              + SIGN
              + Figures.END);
  private static final Pattern SIDES_AFTER =
      Pattern.compile(
          "(camber|caster|castor)(?: is| :| =)? "
              + Figures.N
              + DEGREES
              + SIGN
              + "(?: on)? left(?: side)?(?: and| ,| /)? "
              + Figures.N
              + DEGREES
              + SIGN
              + "(?: on)? right"
              + Figures.END);
  private static final Pattern READING =
      Pattern.compile(
          "(camber|chamber|caster|castor)" + READS + Figures.N + DEGREES + SIGN + Figures.END);
  private static final Pattern READING_BEFORE =
      Pattern.compile(Figures.N + DEGREES + SIGN + " (camber|chamber|caster|castor)" + Figures.END);
  private static final Pattern NOT_A_READING =
      Pattern.compile(
          "^ (?:positions?|clicks?|holes?|notch\\w*|mm|millimet\\w*|steps?|turns?|difference|differ\\w*|apart|off|between|to|more|less|[-/]"
              + "|or|[-+]?\\d).*");
  private static final Pattern CHANGING =
      Pattern.compile(
          ".*\\b(?:add\\w*|took|take|taken|removed?|more|less|gave|give|put|chang\\w*|went|go|mov\\w*"
              + "|from|increas\\w*|decreas\\w*|reduc\\w*|try|tried|another|extra|plus|dial\\w*|by)\\b.*");

  private Angles() {}

  static Optional<Measured> at(String ahead, String back) {
    for (Pattern pattern : List.of(SIDES, SIDES_AFTER)) {
      Matcher sides = pattern.matcher(ahead);
      if (sides.lookingAt() && sides.group(1).equals("camber")) {
        Map<String, List<Double>> figures = new TreeMap<>();
        double left = signed(sides.group(2), sides.group(3));
        double right = signed(sides.group(4), sides.group(5));
        figures.put("camber-left", List.of(left));
        figures.put("camber-right", List.of(right));
        return Optional.of(
            new Measured(
                new Piece(Set.of("figure"), sides.group(), figures, readings(left, right)),
                Figures.length(sides)));
      }
    }
    Matcher reading = READING.matcher(ahead);
    Matcher before = READING_BEFORE.matcher(ahead);
    if (reading.lookingAt()) {
      return Optional.of(
          angle(
              reading.group(1),
              signed(reading.group(2), reading.group(3)),
              reading,
              ahead.substring(reading.end()),
              back));
    }
    if (before.lookingAt() && CHANGING.matcher(back).matches()) {
      int end = before.group(2) == null ? before.start(3) : before.start(2);
      String step = before.group().substring(0, end).strip();
      return Optional.of(
          new Measured(Piece.of(Set.of("position-word"), step), step.split(" ", -1).length));
    }
    return before.lookingAt()
        ? Optional.of(
            angle(
                before.group(3),
                signed(before.group(1), before.group(2)),
                before,
                ahead.substring(before.end()),
                back))
        : Optional.empty();
  }

  /** Where both sides are alike, their caster is not told with it. */
  private static Map<String, String> readings(double left, double right) {
    boolean alike = new Sides(Degrees.of(left), Degrees.of(right)).equal();
    return alike ? Map.of() : Map.of("readings", "differ");
  }

  private static Measured angle(
      String what, double value, Matcher said, String after, String back) {
    boolean told =
        Math.abs(value) <= 30
            && !NOT_A_READING.matcher(after).matches()
            && !CHANGING.matcher(back).matches();
    String key = what.startsWith("cast") ? "caster" : "camber";
    return new Measured(
        told
            ? Figures.measured(key, List.of(value), Map.of(), said.group())
            : Piece.of(Set.of(Figures.NUMBER), said.group()),
        Figures.length(said));
  }

  private static double signed(String said, String word) {
    double value = Figures.number(said);
    return word != null && word.startsWith("neg") ? -Math.abs(value) : value;
  }
}
