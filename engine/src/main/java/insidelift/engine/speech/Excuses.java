package insidelift.engine.speech;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Why a clause does not count: denial, another time, another kart, a condition, a wish, a question,
 * a doubt or a comparison, and how far each of them reaches.
 */
final class Excuses {

  static final Map<String, String> REASONS =
      Map.ofEntries(
          Map.entry("not", "it says what is not: say what the kart does"),
          Map.entry("untrue", "it says what is not: say what the kart does"),
          Map.entry("past", "it is about another time: say how it is now"),
          Map.entry("if", "it holds under a condition: say how it is now"),
          Map.entry("future", "it is about what may come: say how it is now"),
          Map.entry("wish", "it is a wish: say what the kart does"),
          Map.entry("ask", "it asks: say what you see or feel"),
          Map.entry("hearsay", "it is about another kart or what others say: say what yours does"),
          Map.entry("hedge", "it is not sure: say it when you know"),
          Map.entry("compare", "it compares: say how it is now"));

  /** These hold for the whole stretch, the others from where they stand. */
  private static final Set<String> WHOLE = Set.of("if", "compare", "untrue");

  /** A clause that is nothing but one of these speaks of what was said before it. */
  static final Set<String> BACKWARD = Set.of("if", "past", "hearsay", "hedge", "future");

  /** These hold for all that follows in the stretch, a denial or a doubt only for what it joins. */
  private static final Set<String> LASTING = Set.of("ask", "wish", "future", "hedge");

  private static final Set<String> VERBS =
      Set.of("does", "do", "is", "are", "can", "has", "have", "did", "am", "will", "was", "were");
  private static final Set<String> PRONOUNS =
      Set.of("it", "i", "we", "you", "he", "she", "they", "there", "my", "our");
  private static final Set<String> SPEAKS =
      Set.of("is", "are", "it", "he", "she", "we", "has", "have", "i", "it is", "there is");

  private boolean anothersKart;
  private boolean thePast;

  /** For each clause what puts it aside, or "" for nothing. */
  List<String> of(List<Clause> clauses, boolean mark) {
    Set<String> marks = new LinkedHashSet<>();
    clauses.forEach(clause -> marks.addAll(clause.marks));
    String whole =
        Clause.MARKS.stream()
            .filter(one -> WHOLE.contains(one) && marks.contains(one))
            .findFirst()
            .orElse("");
    if (whole.isEmpty()) {
      whole = ofTheWhole(clauses);
    }
    if (whole.isEmpty() && mark && clauses.stream().noneMatch(clause -> asks(clause, true))) {
      whole = "ask";
    }
    thePast = startsInThePast(clauses);
    boolean verbOfThePast = true;
    String running = "";
    List<String> excuses = new ArrayList<>();
    for (Clause clause : clauses) {
      if (clause.marks.contains("hearsay")) {
        anothersKart = true;
      } else if (clause.all.contains("ours") || clause.all.contains("ours-weak")) {
        anothersKart = false;
      }
      if (clause.marks.contains("past")) {
        thePast = true;
        verbOfThePast = clause.isOfThePast();
      } else if (clause.isContrast() || (verbOfThePast && clause.isPresent())) {
        thePast = false;
      }
      String own = own(clause, mark);
      if (!own.isEmpty()) {
        running = LASTING.contains(own) || running.isEmpty() ? own : running;
        if (own.equals("not") && clause.deniesBefore() && bare(clauses, clause)) {
          excuses.set(excuses.size() - 1, "not");
        }
      } else if ((!LASTING.contains(running) && !goesOn(clause))
          || (running.equals("future") && clause.all.contains("now"))) {
        running = "";
      }
      excuses.add(
          !whole.isEmpty()
              ? whole
              : anothersKart ? "hearsay" : !own.isEmpty() ? own : thePast ? "past" : running);
    }
    return excuses;
  }

  private static String own(Clause clause, boolean mark) {
    return asks(clause, mark)
        ? "ask"
        : Clause.MARKS.stream().filter(clause.marks::contains).findFirst().orElse("");
  }

  /** "it pushes at exit, says my friend": what has no statement of its own is about the rest. */
  private static String ofTheWhole(List<Clause> clauses) {
    boolean never =
        clauses.stream()
            .limit(1)
            .flatMap(clause -> clause.pieces.stream().limit(1))
            .anyMatch(piece -> piece.words().equals("never"));
    if (never) {
      return "not";
    }
    boolean ours =
        clauses.stream()
            .anyMatch(
                clause ->
                    !clause.marks.contains("hearsay")
                        && (clause.all.contains("ours") || clause.all.contains("ours-weak")));
    if (!ours && clauses.stream().anyMatch(clause -> clause.marks.contains("hearsay"))) {
      return "hearsay";
    }
    return clauses.stream()
        .filter(clause -> !clause.says() && !clause.hasPhases())
        .filter(clause -> clause.notUnderstood.isEmpty())
        .flatMap(clause -> BACKWARD.stream().filter(clause.marks::contains))
        .findFirst()
        .filter(mark -> clauses.stream().skip(1).noneMatch(Clause::isContrast))
        .orElse("");
  }

  /** A question: a word that asks, or a verb before what it is said of. */
  private static boolean asks(Clause clause, boolean mark) {
    List<String> words =
        clause.pieces.stream()
            .limit(3)
            .flatMap(piece -> List.of(piece.words().split(" ")).stream())
            .toList();
    return clause.marks.contains("ask")
        || (mark && clause.all.contains("ask-word"))
        || (mark && clause.marks.contains("wish"))
        || (words.size() > 1
            && VERBS.contains(words.get(0))
            && (mark || (PRONOUNS.contains(words.get(1)) && clause.behaves())));
  }

  /** "no push on entry and exit": a denial goes on over what has no verb of its own. */
  private static boolean goesOn(Clause clause) {
    return !clause.says()
        || (clause.link.equals("and")
            && clause.pieces.stream().noneMatch(piece -> SPEAKS.contains(piece.words())));
  }

  private boolean startsInThePast(List<Clause> clauses) {
    return !clauses.isEmpty()
        && !clauses.get(0).isPresent()
        && thePast
        && clauses.stream().anyMatch(Clause::isOfThePast);
  }

  /** Whether what stands before is only joined to it, with no verb of its own. */
  private static boolean bare(List<Clause> clauses, Clause clause) {
    int at = clauses.indexOf(clause);
    return at > 0
        && clause.link.equals("and")
        && clauses.get(at - 1).behaves()
        && clauses.get(at - 1).pieces.stream().noneMatch(piece -> SPEAKS.contains(piece.words()));
  }
}
