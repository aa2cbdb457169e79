package insidelift.engine.consultation;

import insidelift.engine.sizing.Sizer;
import insidelift.shared.Answer;
import insidelift.shared.Column;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what kept a lever from being moved one way. */
final class Unmoved {

  private static final Set<String> ASKING = Set.of("correction", "undo", "carryOn");

  private final Advisor advisor;
  private final Situation situation;
  private final Decided decided;
  private final Said said;

  Unmoved(Advisor advisor, Situation situation, Decided decided, Said said) {
    this.advisor = advisor;
    this.situation = situation;
    this.decided = decided;
    this.said = said;
  }

  /** Why a lever is not moved that way, or that it is. */
  WhyNot whyNot(Lever lever, Direction direction) {
    Set<String> spoke =
        decided.ledger().stream().map(entry -> entry.by().rule()).collect(Collectors.toSet());
    List<WhyNot.Asks> rules = new ArrayList<>();
    Set<String> claims = new LinkedHashSet<>();
    for (IndexedRule rule : advisor.rules().index().rules()) {
      if (rule.acts().stream().anyMatch(act -> asks(act, lever, direction))) {
        boolean did = spoke.contains(rule.id());
        if (did) {
          claims.add(rule.note());
        }
        rules.add(asks(rule, did));
      }
    }
    rules.sort(
        Comparator.comparing((WhyNot.Asks asks) -> !asks.spoke())
            .thenComparingInt(asks -> asks.contradicted().size())
            .thenComparingInt(asks -> asks.missing().size())
            .thenComparing(WhyNot.Asks::rule));
    boolean advised =
        decided.verdicts().stream()
            .anyMatch(
                verdict ->
                    verdict.lever() == lever
                        && verdict.sized().direction() == direction
                        && decided.first().contains(lever));
    return new WhyNot(lever, direction, advised, rules, stopped(lever, direction, claims));
  }

  private List<String> stopped(Lever lever, Direction direction, Set<String> claims) {
    Set<String> stopped = new LinkedHashSet<>();
    if (Now.of(decided).status() == Status.FIX_FIRST) {
      stopped.add("Before any lever: " + said.now(Now.of(decided)) + ".");
    }
    for (Limit limit : decided.entries(Limit.class)) {
      if (limit.lever() == lever && limit.direction() == direction) {
        stopped.add("Barred: " + said.title(limit.by().note()) + ".");
      }
    }
    for (SetAside aside : decided.entries(SetAside.class)) {
      if (aside.claims().stream().anyMatch(claims::contains)) {
        stopped.add("Set aside: " + said.title(aside.by().note()) + ".");
      }
    }
    for (Verdict verdict : decided.verdicts()) {
      if (verdict.lever() == lever && verdict.moves()) {
        if (verdict.sized().direction() != direction) {
          stopped.add(
              "Outweighed: %s %s has evidence of %d."
                  .formatted(lever.id(), verdict.sized().direction().id(), verdict.strength()));
        } else if (!decided.first().contains(lever)) {
          stopped.add("It waits its turn: " + said.now(Now.of(decided)) + " comes first.");
        }
      }
    }
    return List.copyOf(stopped);
  }

  private WhyNot.Asks asks(IndexedRule rule, boolean spoke) {
    List<String> missing = new ArrayList<>();
    List<String> contradicted = new ArrayList<>();
    Map<String, Answer> known = known();
    for (Premise premise : rule.premises()) {
      if (!spoke) {
        Optional<Boolean> holds = holds(premise, known);
        if (holds.isEmpty()) {
          missing.add(said.premise(premise));
        } else if (!holds.get()) {
          contradicted.add(said.premise(premise));
        }
      }
    }
    return new WhyNot.Asks(rule.id(), said.title(rule.note()), spoke, missing, contradicted);
  }

  /** Whether a premise holds; empty where it is not known. */
  private Optional<Boolean> holds(Premise premise, Map<String, Answer> known) {
    if (premise.fact().equals("Finding")) {
      String id = premise.field("id").orElseThrow().values().get(0);
      int least =
          premise.field("strength").map(field -> Integer.parseInt(field.values().get(0))).orElse(1);
      int sum =
          decided.evidence().getOrDefault(id, List.of()).stream().mapToInt(Evidence::weight).sum();
      return sum >= least
          ? Optional.of(true)
          : decided.evidence().containsKey(id) ? Optional.of(false) : Optional.empty();
    }
    if (premise.fact().equals("Barred")) {
      boolean barred =
          decided.entries(Limit.class).stream()
              .anyMatch(
                  limit ->
                      premise.field("lever").orElseThrow().values().contains(limit.lever().id())
                          && premise
                              .field("direction")
                              .orElseThrow()
                              .values()
                              .contains(limit.direction().id()));
      return Optional.of(barred != premise.absent());
    }
    if (!premise.fact().equals("Answer")) {
      return Optional.of(true);
    }
    List<String> values = premise.field("value").map(Constraint::values).orElse(List.of());
    boolean any = false;
    boolean open = false;
    List<String> questions = questions(premise);
    for (String question : questions) {
      any |= known.containsKey(question) && values.contains(known.get(question).value());
      open |= !known.containsKey(question);
    }
    any |= questions.isEmpty() && known.values().stream().anyMatch(Answer::complaint);
    if (premise.absent()) {
      return Optional.of(!any);
    }
    return any ? Optional.of(true) : open ? Optional.empty() : Optional.of(false);
  }

  private boolean asks(Act act, Lever lever, Direction direction) {
    if (act.words().isEmpty() || !act.words().get(0).equals(lever.id())) {
      return false;
    }
    if (act.verb().equals("target")) {
      return new Sizer(situation.kart())
              .target(lever, Named.of(Column.class, act.words().get(1)), false)
              .direction()
          == direction;
    }
    return ASKING.contains(act.verb()) && act.words().get(1).equals(direction.id());
  }

  private Map<String, Answer> known() {
    return situation.facts(advisor.vocabulary()).stream()
        .collect(Collectors.toMap(Answer::question, answer -> answer));
  }

  private static List<String> questions(Premise premise) {
    return premise.field("question").map(Constraint::values).orElse(List.of());
  }
}
