package insidelift.engine.speech;

import insidelift.engine.speech.Heard.LeftOut;
import insidelift.engine.speech.Heard.Proposal;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Listens to one text. It falls into stretches (up to a full stop, a question mark or "but"), a
 * stretch into clauses. A clause counts only where every word of it is accounted for, and where
 * nothing puts it into another time, another kart, a condition, a wish, a question or a denial.
 */
final class Hearing {

  private static final Set<String> OF_THE_DAY = Set.of("water", "trend", "rubber", "air", "tyres");

  /** What is said of a behaviour, or alone; beside anything else it only says how often. */
  private static final Set<String> OF_THE_CORNER =
      Set.of(
          "run-phase=first-laps",
          "run-phase=builds-up",
          "run-phase=whole-run",
          "corner-speed=mixed");

  private static final Set<String> DENIED = Set.of("not");

  private final Grammar grammar;
  private final List<Proposal> proposed = new ArrayList<>();
  private final Map<String, List<Double>> numbers = new TreeMap<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private final Set<String> asks = new LinkedHashSet<>();
  private final Excuses excuses = new Excuses();
  private boolean wasPast;
  private boolean changed;
  private boolean tells;
  private Optional<Piece> subject = Optional.empty();
  private String phase;

  Hearing(Grammar grammar) {
    this.grammar = grammar;
  }

  Heard hear(String sentence) {
    List<Piece> stretch = new ArrayList<>();
    String link = Grammar.FULL_STOP;
    for (Piece piece : grammar.pieces(sentence)) {
      boolean ends =
          piece.is(Grammar.FULL_STOP) || piece.is(Grammar.QUESTION_MARK) || piece.is("but");
      if (ends) {
        stretch(stretch, link, piece.is(Grammar.QUESTION_MARK));
        stretch = new ArrayList<>();
        link = piece.is("but") ? "but" : Grammar.FULL_STOP;
      } else {
        stretch.add(piece);
      }
    }
    stretch(stretch, link, false);
    contradictions();
    if (proposed.isEmpty() && numbers.isEmpty() && leftOut.isEmpty() && asks.isEmpty()) {
      leftOut.add(
          new LeftOut(
              shown(sentence), "it does not say what the kart, the driver or the track does"));
    }
    return new Heard(
        List.copyOf(proposed),
        Collections.unmodifiableMap(numbers),
        List.copyOf(leftOut),
        List.copyOf(asks),
        tells);
  }

  /** What a stretch added, so that a later one can take it back. */
  private record Before(int proposed, Map<String, List<Double>> numbers, Set<String> asks) {}

  private Before last = new Before(0, Map.of(), Set.of());

  private void stretch(List<Piece> pieces, String link, boolean asks) {
    if (pieces.stream().allMatch(piece -> piece.is(Grammar.COMMA))) {
      return;
    }
    List<Clause> clauses = clauses(pieces, link.equals("but") ? subject : Optional.empty());
    List<String> aside = excuses.of(clauses, asks);
    boolean says = clauses.stream().anyMatch(clause -> clause.says() || clause.hasPhases());
    Optional<String> backward = aside.stream().filter(Excuses.BACKWARD::contains).findFirst();
    if (!says && backward.isPresent()) {
      takeBack(words(pieces), Excuses.REASONS.get(backward.get()));
      return;
    }
    if (!clauses.isEmpty() && clauses.get(0).isContrast() && wasPast) {
      takeBack(words(pieces), Excuses.REASONS.get("past"));
    }
    wasPast = clauses.stream().anyMatch(clause -> clause.isOfThePast() && !clause.isPresent());
    last = new Before(proposed.size(), new TreeMap<>(numbers), new LinkedHashSet<>(this.asks));
    PhaseWords corner = new PhaseWords(link.equals("but") || pointsBack(pieces) ? phase : null);
    for (int at = 0; at < clauses.size(); at++) {
      listen(clauses.get(at), aside.get(at), corner);
    }
    corner.end();
    phase = corner.lastPhase();
    proposed.addAll(corner.proposed());
    leftOut.addAll(corner.leftOut());
    if (corner.asksPhase()) {
      this.asks.add(Heard.PHASE);
    }
  }

  private void takeBack(String words, String why) {
    leftOut.add(new LeftOut(shown(words), why));
    while (proposed.size() > last.proposed()) {
      proposed.remove(proposed.size() - 1);
    }
    numbers.keySet().retainAll(last.numbers().keySet());
    asks.retainAll(last.asks());
  }

  private List<Clause> clauses(List<Piece> pieces, Optional<Piece> before) {
    List<Clause> clauses = new ArrayList<>();
    List<Piece> clause = new ArrayList<>();
    List<Piece> subjects = new ArrayList<>();
    String link = "";
    subject = before;
    for (int at = 0; at <= pieces.size(); at++) {
      String ends = at < pieces.size() ? end(pieces.get(at)) : "";
      if (ends == null) {
        clause.add(pieces.get(at));
        continue;
      }
      if (!clause.isEmpty()) {
        Clause made = new Clause(grammar.frames(), clause, link, subject);
        if (made.isOnlySubjects() && at < pieces.size()) {
          subjects.addAll(clause);
        } else {
          if (!subjects.isEmpty()) {
            List<Piece> longer = new ArrayList<>(subjects);
            longer.addAll(clause);
            Clause together = new Clause(grammar.frames(), longer, link, Optional.empty());
            List<Clause> each = eachOf(subjects, clause, link);
            if (together.notUnderstood.isPresent() && !each.isEmpty()) {
              clauses.addAll(each);
            } else {
              made = together;
            }
            subjects.clear();
          }
          Optional<Clause> joined = joined(clauses, made);
          if (joined.isPresent()) {
            clauses.remove(clauses.size() - 1);
            made = joined.get();
          }
          if (made.notUnderstood.isPresent()) {
            subject = Optional.empty();
          } else if (made.subject.isPresent()) {
            subject = made.subject;
          }
          clauses.add(made);
        }
        clause = new ArrayList<>();
        link = ends;
      } else if (!ends.equals(Grammar.COMMA) || link.isEmpty()) {
        link = ends;
      }
    }
    return clauses;
  }

  /** "the axle, the brake and the kingpins are fine": the same is said of each of them. */
  private List<Clause> eachOf(List<Piece> subjects, List<Piece> clause, String link) {
    List<Piece> said = clause.stream().filter(piece -> !Residue.isSubject(piece)).toList();
    List<Clause> each = new ArrayList<>();
    for (Piece one : subjects.stream().filter(Residue::isSubject).toList()) {
      List<Piece> pieces = new ArrayList<>(List.of(one));
      pieces.addAll(said);
      each.add(new Clause(grammar.frames(), pieces, link, Optional.empty()));
    }
    boolean all = each.stream().allMatch(made -> made.notUnderstood.isEmpty());
    return all ? each : List.of();
  }

  /** "it does not hop, nor go on two wheels": a denial that makes sense together only. */
  private Optional<Clause> joined(List<Clause> clauses, Clause next) {
    Clause before = clauses.isEmpty() ? null : clauses.get(clauses.size() - 1);
    if (before == null || !(before.marks.equals(DENIED) || goesWith(before, next))) {
      return Optional.empty();
    }
    List<Piece> both = new ArrayList<>(before.pieces);
    both.addAll(next.pieces);
    Clause made = new Clause(grammar.frames(), both, before.link, Optional.empty());
    return made.marks.isEmpty() && made.notUnderstood.isEmpty() && !made.answers.isEmpty()
        ? Optional.of(made)
        : Optional.empty();
  }

  /** "a wobble, play it is called, in the steering": neither makes sense without the other. */
  private static boolean goesWith(Clause before, Clause next) {
    return before.marks.isEmpty()
        && (next.marks.isEmpty() || next.marks.equals(DENIED))
        && before.notUnderstood.isPresent()
        && !before.says()
        && !next.says();
  }

  /** "now it holds its line there": the part of the corner that was spoken of before. */
  private static boolean pointsBack(List<Piece> pieces) {
    return pieces.get(pieces.size() - 1).words().equals("there");
  }

  /** How a piece joins the clauses on both sides of it; null if it is part of one. */
  private static String end(Piece piece) {
    return piece.is(Grammar.COMMA)
        ? Grammar.COMMA
        : List.of("and", "then", "join").stream().filter(piece::is).findFirst().orElse(null);
  }

  private void listen(Clause clause, String excuse, PhaseWords corner) {
    boolean says = clause.says() || clause.hasPhases();
    tells |= says || clause.subject.isPresent();
    if (!excuse.isEmpty()) {
      leftOut.add(new LeftOut(shown(clause.words), Excuses.REASONS.get(excuse)));
      corner.interrupted();
      return;
    }
    if (clause.notUnderstood.isPresent()) {
      leftOut.add(new LeftOut(shown(clause.words), clause.notUnderstood.get()));
      corner.interrupted();
      return;
    }
    boolean wasSaid = clause.isOfThePast();
    asks.addAll(clause.asks);
    changed |= clause.asks.contains("last-change");
    boolean runAlone = clause.answers.stream().map(Proposal::question).distinct().count() == 1;
    for (Proposal answer : clause.answers) {
      boolean ofTheCorner = OF_THE_CORNER.contains(answer.question() + "=" + answer.value());
      if (ofTheCorner && ((!runAlone && !clause.behaves()) || clause.praises())) {
        continue;
      }
      if (wasSaid && OF_THE_DAY.contains(answer.question())) {
        leftOut.add(new LeftOut(shown(answer.words()), Excuses.REASONS.get("past")));
      } else {
        proposed.add(answer);
        changed |= answer.question().equals("last-change");
      }
    }
    numbers.putAll(clause.numbers);
    if (clause.effect != null || (clause.all.contains("worse-word") && changed)) {
      String effect = clause.effect != null ? clause.effect : "worse";
      if (changed && !clause.hasPhases()) {
        proposed.add(new Proposal("last-effect", effect, shown(clause.words)));
      } else if (!effect.equals("worse") || !clause.hasPhases()) {
        leftOut.add(
            new LeftOut(
                shown(clause.words), "it does not say what was changed: say it with the change"));
      }
    }
    if (says || clause.severity != null) {
      corner.add(clause);
    }
  }

  private void contradictions() {
    for (Proposal one : List.copyOf(proposed)) {
      List<Proposal> same =
          proposed.stream().filter(other -> other.question().equals(one.question())).toList();
      if (same.stream().map(Proposal::value).distinct().count() > 1) {
        same.forEach(
            other ->
                leftOut.add(
                    new LeftOut(
                        shown(other.words()),
                        "it says both for one question: say which one holds now")));
        proposed.removeAll(same);
      } else if (same.size() > 1) {
        List<Proposal> rest = new ArrayList<>(proposed);
        rest.removeAll(same);
        rest.add(same.get(0));
        proposed.clear();
        proposed.addAll(rest);
      }
    }
  }

  private static String words(List<Piece> pieces) {
    return String.join(" ", pieces.stream().map(Piece::words).toList());
  }

  static String shown(String words) {
    return Printable.shown(words.strip(), 200);
  }
}
