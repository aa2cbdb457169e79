package insidelift.engine.consultation;

import insidelift.engine.consultation.RuleTable.Asked;
import insidelift.engine.consultation.RuleTable.BarredTest;
import insidelift.engine.consultation.RuleTable.Found;
import insidelift.engine.consultation.RuleTable.Line;
import insidelift.engine.consultation.RuleTable.Proposed;
import insidelift.engine.consultation.RuleTable.Seen;
import insidelift.shared.Kind;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.List;

/** Reads the premises of an indexed rule as lines of the rule table need them. */
final class Premises {

  private final Grid grid;
  private final RuleTable table;

  /** Premises for a table that knows already what its rules ask for. */
  Premises(Grid grid, RuleTable table) {
    this.grid = grid;
    this.table = table;
  }

  /** A rule as a line of the table. */
  Line line(IndexedRule rule) {
    List<Seen> answers = new ArrayList<>();
    List<Found> findings = new ArrayList<>();
    List<BarredTest> barred = new ArrayList<>();
    List<Proposed> proposals = new ArrayList<>();
    for (Premise premise : rule.premises()) {
      switch (premise.fact()) {
        case "Answer" -> answers.add(seen(premise));
        case "Finding" ->
            findings.add(
                new Found(table.finding(only(premise, "id")), least(premise), premise.absent()));
        case "Barred" ->
            barred.add(
                new BarredTest(
                    RuleTable.lever(only(premise, "lever")),
                    RuleTable.direction(only(premise, "direction")),
                    premise.absent()));
        case "Proposal" -> proposals.add(proposed(premise));
        default ->
            throw new IllegalStateException(
                "no bound can be put on a premise of rule \"" + rule.id() + '"');
      }
    }
    return new Line(
        rule,
        answers,
        findings,
        barred,
        proposals,
        rule.acts().stream().filter(RuleTable::heard).toList(),
        rule.acts().stream()
            .filter(act -> act.verb().equals("evidence"))
            .map(act -> table.finding(act.words().get(0)))
            .toList());
  }

  private Seen seen(Premise premise) {
    boolean complaint = premise.field("complaint").isPresent();
    List<Integer> questions = new ArrayList<>();
    List<Integer> masks = new ArrayList<>();
    for (int q = 0; q < grid.size(); q++) {
      String id = grid.question(q).id();
      if (premise.field("question").map(field -> field.values().contains(id)).orElse(true)) {
        int at = q;
        int mask =
            premise
                .field("value")
                .map(field -> grid.mask(at, field.values()))
                .orElse(grid.full(q) & ~Grid.ABSENT);
        mask &= complaint ? grid.complaints(q) : mask;
        if (mask != 0) {
          questions.add(q);
          masks.add(mask);
        }
      }
    }
    return new Seen(
        questions.stream().mapToInt(Integer::intValue).toArray(),
        masks.stream().mapToInt(Integer::intValue).toArray(),
        premise.absent());
  }

  private Proposed proposed(Premise premise) {
    List<Asked> candidates =
        table.asked().stream()
            .filter(one -> allows(premise, "claim", one.claim()))
            .filter(one -> allows(premise, "lever", one.lever().id()))
            .filter(
                one -> allows(premise, "kind", (one.target() ? Kind.TARGET : Kind.CORRECTION).id()))
            .toList();
    return new Proposed(
        candidates,
        premise
            .field("direction")
            .map(way -> RuleTable.direction(way.values().get(0)))
            .orElse(null),
        least(premise),
        premise.absent());
  }

  private static boolean allows(Premise premise, String field, String value) {
    return premise.field(field).map(one -> one.values().contains(value)).orElse(true);
  }

  private static int least(Premise premise) {
    return premise
        .field("strength")
        .map(strength -> Integer.parseInt(strength.values().get(0)))
        .orElse(Integer.MIN_VALUE);
  }

  private static String only(Premise premise, String field) {
    List<String> values = premise.field(field).map(Constraint::values).orElse(List.of());
    if (values.size() != 1) {
      throw new IllegalStateException(
          premise.fact() + " must name one " + field + ", not " + values);
    }
    return values.get(0);
  }
}
