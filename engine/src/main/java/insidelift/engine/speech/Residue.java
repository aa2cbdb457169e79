package insidelift.engine.speech;

import insidelift.engine.speech.Frames.Match;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What is left of a clause when its statements are taken out, and whether it may be left. */
final class Residue {

  /** What may be left over: it only says when, how much or whose. */
  static final Set<String> SOFT =
      Set.of(
          "filler",
          "now",
          "ours",
          "first-word",
          "mostly-word",
          "worst",
          "only",
          "changing",
          "back-filler",
          "after-change",
          "worse-word",
          "slight",
          "clear",
          "severe",
          "and",
          "then",
          "but",
          "join",
          "left-corners",
          "right-corners",
          "last-change-word",
          "rest",
          "first-laps",
          "person",
          "ours-weak",
          "ask-word",
          "setup-word",
          "position-word",
          "bad",
          "change-noun",
          "trend-subject",
          "past-today");

  static final Set<String> BESIDE_FIGURES =
      Set.of(
          "front",
          "temps",
          "all-over",
          "added",
          "both-sides",
          "both-ways",
          "edge-inner",
          "edge-outer",
          "edge-middle",
          "engine",
          "gears");

  static final Set<String> SUBJECTS =
      Set.of(
          "front",
          "rear",
          "steering",
          "inside-rear",
          "tyres",
          "track",
          "engine",
          "arms",
          "pressures",
          "temps",
          "camber",
          "caster",
          "straight",
          "bolts",
          "toe",
          "axle",
          "person",
          "rubber",
          "braking",
          "kingpin",
          "hubs-axle",
          "slicks",
          "wets",
          "speed");

  /** What the kart does as a whole is said of these, so "it is good" after them is said of it. */
  static final Set<String> ENDS = Set.of("front", "rear", "track", "person");

  private Residue() {}

  static boolean isSubject(Piece piece) {
    return piece.concepts().stream().anyMatch(SUBJECTS::contains);
  }

  static boolean isPhase(Piece piece) {
    return piece.concepts().stream().anyMatch(Clause.STRETCHES::containsKey);
  }

  static List<Piece> left(List<Piece> said, List<Match> matches) {
    Set<Integer> used = new HashSet<>();
    matches.forEach(match -> used.addAll(match.places()));
    List<Piece> left = new ArrayList<>();
    for (int at = 0; at < said.size(); at++) {
      if (!used.contains(at)) {
        left.add(said.get(at));
      }
    }
    return left;
  }

  /** What is left over that no statement accounts for; the same said twice is no more. */
  static List<Piece> hard(List<Piece> said, List<Match> matches) {
    Set<String> told = new HashSet<>();
    boolean figures = said.stream().anyMatch(piece -> piece.is("figure"));
    matches.forEach(match -> match.places().forEach(at -> told.addAll(said.get(at).concepts())));
    return left(said, matches).stream()
        .filter(Residue::isHard)
        .filter(piece -> piece.concepts().stream().noneMatch(told::contains))
        .filter(piece -> !figures || piece.concepts().stream().noneMatch(BESIDE_FIGURES::contains))
        .toList();
  }

  static boolean isHard(Piece piece) {
    return !piece.is("figure")
        && piece.concepts().stream()
            .noneMatch(
                one ->
                    SOFT.contains(one)
                        || Clause.STRETCHES.containsKey(one)
                        || Clause.MARKS.contains(one));
  }

  static String why(Piece piece) {
    if (piece.isUnknown()) {
      return "the word \"%s\" is not known here: say it in other words".formatted(piece.words());
    }
    if (piece.is("slide")) {
      return "it does not say which end: say front or rear";
    }
    if (piece.is(Figures.NUMBER)) {
      return "it does not say what \"%s\" measures: say \"12 minutes left\", \"30 hp\" or \"camber -1 degree\""
          .formatted(piece.words());
    }
    return "\"%s\" does not fit what is known here: say one thing at a time"
        .formatted(piece.words());
  }
}
