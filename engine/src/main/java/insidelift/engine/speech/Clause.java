package insidelift.engine.speech;

import insidelift.engine.speech.Frames.Match;
import insidelift.engine.speech.Heard.Proposal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** What one clause says by itself: its statements, and the words that none of them accounts for. */
final class Clause {

  static final List<String> PHASES = List.of("turn-in", "mid-corner", "exit");

  static final Map<String, List<String>> STRETCHES =
      Map.of(
          "turn-in", List.of("turn-in"),
          "mid-corner", List.of("mid-corner"),
          "exit", List.of("exit"),
          "all-phases", PHASES,
          "two-phases", List.of("turn-in", "mid-corner"),
          "two-late", List.of("mid-corner", "exit"));

  /** Words that change what the rest of the clause means, unless a statement takes them up. */
  static final List<String> MARKS =
      List.of(
          "hearsay", "ask", "wish", "if", "future", "past", "compare", "hedge", "untrue", "not");

  private static final Pattern PAST =
      Pattern.compile(".*\\b(?:was|were|had|did|has been|have been)\\b.*");

  /** A behaviour or a part of the corner, and where it stands. */
  record Item(int at, String behaviour, List<String> phases) {}

  final String link;
  final String words;
  final List<Piece> content;
  final List<Proposal> answers = new ArrayList<>();
  final List<Item> items = new ArrayList<>();
  final List<Piece> pieces;
  final Set<String> asks = new HashSet<>();
  final Map<String, List<Double>> numbers = new TreeMap<>();
  final Set<String> marks = new HashSet<>();
  final Set<String> all = new HashSet<>();
  String effect;
  String severity;
  Optional<String> notUnderstood = Optional.empty();
  Optional<Piece> subject = Optional.empty();

  Clause(Frames frames, List<Piece> pieces, String link, Optional<Piece> before) {
    this.link = link;
    this.words = String.join(" ", pieces.stream().map(Piece::words).toList());
    this.pieces = pieces;
    List<Piece> said =
        pieces.stream().filter(piece -> !piece.concepts().equals(Set.of("filler"))).toList();
    pieces.forEach(piece -> all.addAll(piece.concepts()));
    List<Match> matches = frames.in(said);
    if (before.isPresent() && wantsSubject(said, matches, before.get())) {
      List<Piece> longer = new ArrayList<>(List.of(before.get()));
      longer.addAll(said);
      List<Match> again = frames.in(longer);
      if (Residue.hard(longer, again).isEmpty() && !again.isEmpty()) {
        said = longer;
        matches = again;
      }
    }
    this.content = said;
    take(matches);
    leftOver(matches);
    deniesByPraise(matches);
    this.subject =
        content.stream()
            .filter(piece -> Residue.isSubject(piece) && !piece.is("person"))
            .findFirst()
            .or(() -> content.stream().filter(Residue::isSubject).findFirst());
  }

  /** "the steering is heavy and vague", "the toe was measured and it is good". */
  private static boolean wantsSubject(List<Piece> said, List<Match> matches, Piece subject) {
    boolean onlyGood =
        matches.size() == 1
            && matches.get(0).frame().gives().equals(List.of("do=good"))
            && said.stream().noneMatch(piece -> Residue.isSubject(piece) || Residue.isPhase(piece))
            && subject.concepts().stream().noneMatch(Residue.ENDS::contains);
    boolean ofBolts =
        subject.is("bolts")
            && said.size() == 1
            && (said.get(0).is("tight-fix") || said.get(0).is("loose-fix"));
    return onlyGood || ofBolts || matches.isEmpty() || !Residue.hard(said, matches).isEmpty();
  }

  static boolean isSeverity(Piece piece) {
    return piece.is("clear") || piece.is("severe");
  }

  /** Nothing but what something can be said of: "wheel nuts, hubs, column bolt". */
  boolean isOnlySubjects() {
    return answers.isEmpty()
        && items.isEmpty()
        && numbers.isEmpty()
        && effect == null
        && asks.isEmpty()
        && marks.isEmpty()
        && subject.isPresent()
        && content.stream().allMatch(piece -> Residue.isSubject(piece) || !Residue.isHard(piece));
  }

  private void take(List<Match> matches) {
    for (Match match : matches) {
      String from =
          String.join(
              " ", match.places().stream().sorted().map(at -> content.get(at).words()).toList());
      for (String gives : match.frame().gives()) {
        String[] sides = gives.split("=", 2);
        switch (sides[0]) {
          case "nothing" -> {}
          case "ask" -> asks.add(sides[1]);
          case "effect" -> effect = sides[1];
          case "severity" -> severity = sides[1];
          case "do" -> {
            String[] what = sides[1].split("@", -1);
            items.add(new Item(match.from(), what[0], List.of()));
            if (what.length > 1) {
              items.add(new Item(match.from(), null, List.of(what[1])));
            }
          }
          default -> answers.add(new Proposal(sides[0], sides[1], from));
        }
      }
    }
  }

  /** "no trouble with tired arms" denies what it stands with. */
  private void deniesByPraise(List<Match> matches) {
    boolean praise =
        content.stream()
            .anyMatch(
                piece -> piece.is("good") && piece.words().matches("(?:no|nothing|without) .*"));
    if (praise && matches.size() > 1) {
      marks.add("not");
    }
  }

  private void leftOver(List<Match> matches) {
    Set<Integer> used = new HashSet<>();
    matches.forEach(match -> used.addAll(match.places()));
    for (int at = 0; at < content.size(); at++) {
      Piece piece = content.get(at);
      numbers.putAll(piece.figures());
      piece.answers().forEach((q, v) -> answers.add(new Proposal(q, v, piece.words())));
      if (used.contains(at)) {
        continue;
      }
      for (Map.Entry<String, List<String>> stretch : STRETCHES.entrySet()) {
        if (piece.is(stretch.getKey())) {
          items.add(new Item(at, null, stretch.getValue()));
        }
      }
      MARKS.stream().filter(piece::is).findFirst().ifPresent(marks::add);
      for (String how : List.of("slight", "clear", "severe")) {
        if (piece.is(how)) {
          severity = how;
        }
      }
    }
    last(used);
    items.sort((a, b) -> Integer.compare(a.at(), b.at()));
    notUnderstood = Residue.hard(content, matches).stream().map(Residue::why).findFirst();
  }

  /** "loose in, tight out": a bare word at the end is a part of the corner. */
  private void last(Set<Integer> used) {
    String end = pieces.get(pieces.size() - 1).words();
    boolean alone = pieces.size() == 1;
    boolean behaves = items.stream().anyMatch(item -> item.behaviour() != null) && !hasPhases();
    if ((alone && used.isEmpty()) || behaves) {
      if (end.equals("in")) {
        items.add(new Item(content.size(), null, List.of("turn-in")));
      } else if (end.equals("out") || end.equals("off")) {
        items.add(new Item(content.size(), null, List.of("exit")));
      }
    }
  }

  /** "oversteer gone": the denial stands after what it denies. */
  boolean deniesBefore() {
    return !content.isEmpty() && content.get(content.size() - 1).is("not");
  }

  boolean says() {
    return !answers.isEmpty()
        || !numbers.isEmpty()
        || !asks.isEmpty()
        || items.stream().anyMatch(i -> i.behaviour() != null)
        || effect != null;
  }

  boolean hasPhases() {
    return items.stream().anyMatch(item -> item.behaviour() == null);
  }

  /** Whether it speaks of the present by its verb. */
  boolean isPresent() {
    return all.contains("now")
        || pieces.stream().anyMatch(piece -> piece.words().matches(".*\\b(?:is|are|am)\\b.*"));
  }

  boolean isOfThePast() {
    return PAST.matcher(withoutReference()).matches()
        || pieces.stream()
            .anyMatch(
                piece ->
                    (piece.is("us-word") || piece.is("os-word") || piece.is("slide"))
                        && piece.words().matches(".*(?:ed|slid|went|ran|came|spun|broke)\\b.*"));
  }

  /** "the day it was good" is what today is compared with, and says nothing of today. */
  private String withoutReference() {
    return String.join(
        " ", pieces.stream().filter(piece -> !piece.is("ref-day")).map(Piece::words).toList());
  }

  /** "now it holds its line": what was said in the past tense before is over. */
  boolean isContrast() {
    return all.contains("now");
  }

  /** "the first laps are good": when it is good is not when it troubles. */
  boolean praises() {
    return behaves()
        && items.stream().allMatch(i -> i.behaviour() == null || i.behaviour().equals("good"));
  }

  boolean behaves() {
    return items.stream().anyMatch(item -> item.behaviour() != null);
  }
}
