package insidelift.engine.own;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.CheckKind;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Scope;
import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a shop's claim contributes. */
final class OwnContributions {

  private static final Set<String> KEYS =
      Set.of(
          "evidence",
          "correction",
          "limit",
          "hold",
          "check",
          "alternative",
          "caution",
          "overrules");

  /** Words for the weights that this build gives its own evidence, a quarter of a deciban each. */
  private static final Map<String, Integer> WEIGHTS =
      Map.of("slight", 8, "clear", 20, "strong", 40);

  /** A shop says what it has seen itself: strongly, and believed as the best of this build. */
  private static final String STRENGTH = "3";

  private static final String CREDENCE = "90";

  /** A shop's cautions come before those that go with every change. */
  private static final String PLACE = "5";

  private static final List<String> WAYS = List.of("more", "less");

  private final String id;
  private final String file;
  private final int line;
  private final List<Premise> premises;
  private final Advisor base;
  private final List<IndexedRule> rules = new ArrayList<>();
  private final Set<String> needs = new LinkedHashSet<>();
  private Lever lever;

  OwnContributions(String id, String file, int line, List<Premise> premises, Advisor base) {
    this.id = id;
    this.file = file;
    this.line = line;
    this.premises = premises;
    this.base = base;
  }

  List<IndexedRule> rules() {
    return rules;
  }

  /** The texts without which such a claim is not complete. */
  Set<String> needs() {
    return needs;
  }

  /** The lever that it moves, if it moves one. */
  Optional<Lever> lever() {
    return Optional.ofNullable(lever);
  }

  boolean checks() {
    return rules.stream().anyMatch(rule -> rule.acts(Verb.CHECK).findAny().isPresent());
  }

  void read(JsonPlace then) throws CaseProblem {
    then.object(KEYS);
    if (then.node().isEmpty()) {
      throw then.problem("a claim contributes at least one thing");
    }
    if (then.at("evidence").isPresent()) {
      evidence(then.need("evidence"));
    }
    if (then.at("correction").isPresent()) {
      correction(then.need("correction"));
    }
    if (then.at("limit").isPresent()) {
      JsonPlace limit = then.need("limit").object(Set.of("lever", "direction"));
      rule("limit", premises, act(Verb.BARRED, lever(limit), way(limit), Scope.ALL.id()));
    }
    if (then.at("hold").isPresent()) {
      String held = Words.oneOf(then.need("hold"), OwnClaimReader.ids(Lever.class));
      rule(
          "hold",
          premises,
          act(Verb.BARRED, held, Direction.MORE.id(), Scope.MOVE.id()),
          act(Verb.BARRED, held, Direction.LESS.id(), Scope.MOVE.id()));
    }
    if (then.at("check").isPresent()) {
      needs.add("do");
      String kind = Words.oneOf(then.need("check"), OwnClaimReader.ids(CheckKind.class));
      rule("check", premises, act(Verb.CHECK, kind));
    }
    if (then.at("alternative").isPresent()) {
      JsonPlace other = then.need("alternative").object(Set.of("lever", "direction"));
      rule("alternative", premises, act(Verb.OTHER, other(other), way(other)));
    }
    if (then.at("caution").isPresent()) {
      caution(then.need("caution"));
    }
    if (then.at("overrules").isPresent()) {
      overrules(then.need("overrules"));
    }
  }

  private void evidence(JsonPlace evidence) throws CaseProblem {
    evidence.object(Set.of("finding", "weight", "against"));
    int weight =
        WEIGHTS.get(
            Words.oneOf(evidence.need("weight"), WEIGHTS.keySet().stream().sorted().toList()));
    boolean against = false;
    if (evidence.at("against").isPresent()) {
      if (!evidence.need("against").node().isBoolean()) {
        throw evidence.need("against").problem("this must be true or false");
      }
      against = evidence.need("against").node().booleanValue();
    }
    rule(
        "evidence",
        premises,
        act(
            Verb.EVIDENCE,
            finding(evidence),
            "" + (against ? -weight : weight),
            ((Premise.Told) premises.get(0)).questions().get(0)));
  }

  /** A correction always answers a finding: that is what gives it its strength. */
  private void correction(JsonPlace correction) throws CaseProblem {
    correction.object(Set.of("lever", "direction", "finding"));
    needs.addAll(List.of("because", "caution", "feel", "undo"));
    Act term = term(finding(correction));
    // What is wanted less is helped by what takes it away.
    String strength = term.number(2) < 0 ? "-" + STRENGTH : STRENGTH;
    lever = Named.of(Lever.class, lever(correction));
    rule(
        "correction",
        premises,
        act(
            Verb.CLAIM,
            lever.id(),
            way(correction),
            term.word(1),
            strength,
            CREDENCE,
            "none",
            "one"));
  }

  /** What the table of findings says of one. */
  private Act term(String finding) {
    return base.rules().index().rules().stream()
        .flatMap(rule -> rule.acts(Verb.TERM))
        .filter(act -> act.word(0).equals(finding))
        .findFirst()
        .orElseThrow();
  }

  private void caution(JsonPlace caution) throws CaseProblem {
    caution.object(Set.of("lever", "direction"));
    needs.add("caution");
    String with = lever(caution);
    List<Premise> all = new ArrayList<>(premises);
    all.add(new Premise.Moved(with, way(caution)));
    rule("caution", all, act(Verb.CARE, with, PLACE));
  }

  private void overrules(JsonPlace overrules) throws CaseProblem {
    List<String> claims = new ArrayList<>();
    for (JsonPlace claim : Words.list(overrules)) {
      claims.add(overruled(claim));
    }
    if (claims.isEmpty()) {
      throw overrules.problem("this must name at least one claim");
    }
    rule(
        "overrules",
        premises,
        claims.stream().map(claim -> act(Verb.OVERRULED, claim)).toArray(Act[]::new));
  }

  /** Only what asks for a move can be overruled: no first check, no limit, no caution, no undo. */
  private String overruled(JsonPlace place) throws CaseProblem {
    String claim = place.word();
    boolean asks =
        base.rules().index().rules().stream()
            .filter(rule -> rule.note().equals(claim))
            .flatMap(rule -> rule.acts().stream())
            .anyMatch(act -> act.verb() == Verb.CLAIM || act.verb() == Verb.START);
    if (asks) {
      return claim;
    }
    throw place.problem(
        base.notes().find(claim).isPresent()
            ? Printable.quoted(claim)
                + " cannot be overruled: only a claim that asks for a move can, never a first"
                + " check, a limit or a caution"
            : "there is no claim " + Printable.quoted(claim));
  }

  private String other(JsonPlace place) throws CaseProblem {
    return Words.oneOf(
        place.need("lever"), base.vocabulary().levers().stream().map(LeverWord::id).toList());
  }

  private String finding(JsonPlace place) throws CaseProblem {
    return Words.oneOf(
        place.need("finding"), base.vocabulary().findings().stream().map(FindingWord::id).toList());
  }

  private static String lever(JsonPlace place) throws CaseProblem {
    return Words.oneOf(place.need("lever"), OwnClaimReader.ids(Lever.class));
  }

  private static String way(JsonPlace place) throws CaseProblem {
    String way = Words.oneOf(place.need("direction"), WAYS);
    return Named.of(Direction.class, way).id();
  }

  private static Act act(Verb verb, String... words) {
    return new Act(verb, List.of(words));
  }

  private void rule(String part, List<Premise> needed, Act... acts) {
    rules.add(new IndexedRule(id + "." + part, id, "", file, line, "", needed, List.of(acts)));
  }
}
