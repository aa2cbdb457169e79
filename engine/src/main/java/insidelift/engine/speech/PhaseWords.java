package insidelift.engine.speech;

import insidelift.engine.speech.Clause.Item;
import insidelift.engine.speech.Heard.LeftOut;
import insidelift.engine.speech.Heard.Proposal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Brings together what the kart does and in which part of the corner, over the clauses of one
 * stretch: "on entry and mid it pushes", "turns in well, then washes out".
 */
final class PhaseWords {

  private static final String GOOD = "good";

  private final List<Proposal> proposed = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private final Set<String> pending = new LinkedHashSet<>();
  private final Set<String> covered = new LinkedHashSet<>();
  private String pendingWords = "";
  private String behaviour;
  private String words = "";
  private boolean open;
  private String waiting;
  private boolean asksPhase;
  private boolean trouble;
  private boolean severityAlone;
  private boolean first;
  private String severity;
  private String lastPhase;

  /** A stretch after "but" goes on from the part of the corner that was spoken of last. */
  PhaseWords(String phaseBefore) {
    lastPhase = phaseBefore;
  }

  String lastPhase() {
    return lastPhase;
  }

  List<Proposal> proposed() {
    return proposed;
  }

  List<LeftOut> leftOut() {
    return leftOut;
  }

  boolean asksPhase() {
    return asksPhase;
  }

  /** A clause was left out: what follows must not be joined to what came before it. */
  void interrupted() {
    closeOpen();
    behaviour = null;
    pending.clear();
  }

  void add(Clause clause) {
    List<Item> behaviours = clause.items.stream().filter(i -> i.behaviour() != null).toList();
    List<Item> phases = clause.items.stream().filter(i -> i.behaviour() == null).toList();
    if (clause.severity != null) {
      severity = clause.severity;
      severityAlone |= clause.content.stream().allMatch(Clause::isSeverity);
    }
    if (behaviours.isEmpty()) {
      if (!phases.isEmpty()) {
        onlyPhases(clause, phases);
      }
      return;
    }
    trouble |= behaviours.stream().anyMatch(item -> !item.behaviour().equals(GOOD));
    if (phases.isEmpty()) {
      onlyBehaviour(clause, behaviours);
      return;
    }
    String before = behaviour;
    String what = behaviours.get(0).behaviour();
    if (clause.link.equals("then")
        && before != null
        && (open || first)
        && !before.equals(what)
        && !before.equals(GOOD)
        && !what.equals(GOOD)) {
      firstTrouble(what, clause);
      open = false;
    }
    first |= clause.all.contains("first-word");
    closeOpen();
    boolean phaseFirst = clause.items.get(0).behaviour() == null;
    Set<String> here = new LinkedHashSet<>();
    if (!pending.isEmpty() && phaseFirst) {
      here.addAll(pending);
      pending.clear();
    }
    pair(clause, behaviours, phaseFirst, here);
  }

  private void pair(Clause clause, List<Item> behaviours, boolean phaseFirst, Set<String> before) {
    boolean one = behaviours.stream().map(Item::behaviour).distinct().count() == 1;
    Set<String> here = new LinkedHashSet<>(before);
    String what = null;
    if (one) {
      clause.items.forEach(item -> here.addAll(item.phases()));
      say(behaviours.get(0).behaviour(), here, clause.words);
      return;
    }
    for (Item item : clause.items) {
      if (item.behaviour() == null) {
        here.addAll(item.phases());
        if (!phaseFirst && what != null) {
          say(what, item.phases(), clause.words);
          here.clear();
        }
      } else if (phaseFirst) {
        say(item.behaviour(), here, clause.words);
        here.clear();
      } else {
        what = item.behaviour();
      }
    }
  }

  private void onlyPhases(Clause clause, List<Item> phases) {
    if (!clause.answers.isEmpty() || !clause.numbers.isEmpty()) {
      return;
    }
    Set<String> here = new LinkedHashSet<>();
    phases.forEach(item -> here.addAll(item.phases()));
    boolean worst = clause.all.contains("worst") || clause.all.contains("mostly-word");
    if (worst && here.size() == 1 && (behaviour == null || covered.containsAll(here))) {
      proposed.add(new Proposal("worst-phase", here.iterator().next(), clause.words));
    } else if (behaviour != null && !(behaviour.equals(GOOD) && isBad(clause))) {
      open = false;
      say(behaviour, here, words + " " + clause.words);
    } else {
      pending.addAll(here);
      pendingWords = clause.words;
    }
  }

  /** "good turn-in, bad exit": what is good ends there. */
  private static boolean isBad(Clause clause) {
    return Set.of("bad", "worse-word", "worst", "mostly-word").stream()
        .anyMatch(clause.all::contains);
  }

  private void onlyBehaviour(Clause clause, List<Item> behaviours) {
    String what = behaviours.get(0).behaviour();
    if (behaviours.stream().anyMatch(item -> !item.behaviour().equals(what))) {
      leftOut.add(
          new LeftOut(
              clause.words, "it says two things at once: say one for each part of the corner"));
      return;
    }
    if (!pending.isEmpty()) {
      Set<String> here = new LinkedHashSet<>(pending);
      pending.clear();
      first |= clause.all.contains("first-word");
      say(what, here, pendingWords + " " + clause.words);
      return;
    }
    boolean then = clause.link.equals("then");
    if (then && behaviour != null && !behaviour.equals(what)) {
      if (open && !behaviour.equals(GOOD) && !what.equals(GOOD)) {
        firstTrouble(what, clause);
        open = false;
        behaviour = what;
        return;
      }
    }
    if (then && lastPhase != null && Clause.PHASES.indexOf(lastPhase) < 2) {
      say(what, List.of(Clause.PHASES.get(Clause.PHASES.indexOf(lastPhase) + 1)), clause.words);
      return;
    }
    boolean there = clause.pieces.get(clause.pieces.size() - 1).words().equals("there");
    if (there && lastPhase != null) {
      say(what, List.of(lastPhase), clause.words);
      return;
    }
    if (behaviour != null && behaviour.equals(what) && !open) {
      return;
    }
    closeOpen();
    first |= clause.all.contains("first-word");
    behaviour = what;
    words = clause.words;
    open = !what.equals(GOOD);
    if (!open) {
      waiting = clause.words;
    }
  }

  private void firstTrouble(String second, Clause clause) {
    proposed.add(
        new Proposal(
            "first-trouble",
            second.equals("understeer") ? "slides-then-pushes" : "pushes-then-snaps",
            Hearing.shown(clause.words)));
  }

  private void say(String what, Iterable<String> phases, String from) {
    for (String phase : phases) {
      waiting = null;
      proposed.add(new Proposal(phase, what, Hearing.shown(from)));
      covered.add(phase);
      lastPhase = phase;
    }
    behaviour = what;
    words = from;
  }

  private void closeOpen() {
    if (open) {
      asksPhase = true;
    }
    open = false;
  }

  void end() {
    closeOpen();
    if (waiting != null) {
      leftOut.add(
          new LeftOut(waiting, "it does not say what is good: say in which part of the corner"));
    }
    if (!pending.isEmpty()) {
      leftOut.add(
          new LeftOut(pendingWords, "it says where and not what: say what the kart does there"));
    }
    if (severity != null && (trouble || severityAlone)) {
      proposed.add(new Proposal("severity", severity, severity));
    }
  }
}
