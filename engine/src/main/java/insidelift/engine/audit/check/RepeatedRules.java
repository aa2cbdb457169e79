package insidelift.engine.audit.check;

import insidelift.shared.index.Premise;
import insidelift.shared.index.Premise.Moved;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * Rules that say the same twice: redundant where the premises are the same, subsumed where one rule
 * speaks whenever the other does (T. A. Nguyen, W. A. Perkins, T. J. Laffey and D. Pecora, Checking
 * an expert system's knowledge base for consistency and completeness, IJCAI 1985; from memory).
 */
public final class RepeatedRules {

  private final Knowledge knowledge;

  public RepeatedRules(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  /** Rules with the same premises and acts as another. */
  public List<Remark> redundant() {
    List<Remark> remarks = new ArrayList<>();
    List<IndexedRule> rules = knowledge.rules();
    for (int i = 0; i < rules.size(); i++) {
      for (int j = i + 1; j < rules.size(); j++) {
        IndexedRule one = rules.get(i);
        IndexedRule other = rules.get(j);
        if (subsumes(one, other) && subsumes(other, one)) {
          remarks.add(
              Remark.of(
                  other,
                  one.id() + " " + other.id(),
                  Severity.ERROR,
                  "rule \"%s\" says what rule \"%s\" says".formatted(other.id(), one.id())));
        }
      }
    }
    return remarks;
  }

  /** Rules that another, more general one makes needless. */
  public List<Remark> subsumed() {
    List<Remark> remarks = new ArrayList<>();
    for (IndexedRule special : knowledge.rules()) {
      for (IndexedRule general : knowledge.rules()) {
        if (!special.id().equals(general.id())
            && subsumes(general, special)
            && !subsumes(special, general)) {
          remarks.add(
              Remark.of(
                  special,
                  special.id() + " " + general.id(),
                  Severity.ERROR,
                  "rule \"%s\" adds nothing: rule \"%s\" says it whenever it speaks"
                      .formatted(special.id(), general.id())));
        }
      }
    }
    return remarks;
  }

  /** Premises of a rule that another premise of the same rule makes needless. */
  public List<Remark> needlessPremises() {
    List<Remark> remarks = new ArrayList<>();
    for (IndexedRule rule : knowledge.rules().stream().filter(IndexedRule::plain).toList()) {
      for (int i = 0; i < rule.premises().size(); i++) {
        Premise premise = rule.premises().get(i);
        List<Premise> others = new ArrayList<>(rule.premises());
        others.remove(i);
        if (others.stream().anyMatch(other -> implies(other, premise))) {
          remarks.add(
              Remark.of(
                  rule,
                  rule.id() + " premise " + (i + 1),
                  Severity.WARNING,
                  "premise %d of rule \"%s\" follows from another one"
                      .formatted(i + 1, rule.id())));
        }
      }
    }
    return remarks;
  }

  /** Whether the general rule speaks whenever the special one does, and says all it says. */
  private static boolean subsumes(IndexedRule general, IndexedRule special) {
    return general.plain()
        && special.plain()
        && general.note().equals(special.note())
        && new HashSet<Act>(general.acts()).containsAll(special.acts())
        && general.premises().stream()
            .allMatch(
                needed -> special.premises().stream().anyMatch(given -> implies(given, needed)));
  }

  /** Whether one premise cannot hold without the other. */
  static boolean implies(Premise given, Premise needed) {
    if (given instanceof Told one && needed instanceof Told other) {
      return one.absent() == other.absent()
          && (one.absent() ? narrower(other, one) : narrower(one, other));
    }
    if (given instanceof Moved one && needed instanceof Moved other) {
      return within(one.lever(), other.lever()) && within(one.direction(), other.direction());
    }
    return given.equals(needed);
  }

  private static boolean within(String narrow, String wide) {
    return wide.isEmpty() || wide.equals(narrow);
  }

  /** Whether every answer that fits the narrow premise fits the wide one. */
  private static boolean narrower(Told narrow, Told wide) {
    return wide.questions().containsAll(narrow.questions())
        && (wide.values().isEmpty()
            || (!narrow.values().isEmpty() && wide.values().containsAll(narrow.values())));
  }
}
