package insidelift.engine.own;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.notes.Note;
import insidelift.shared.CheckKind;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Scope;
import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.JsonPlace;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a shop's claim contributes, turned into rules of the stages in which they may speak. */
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

  /** Words for the weights that this build gives its own evidence, in decibans. */
  private static final Map<String, Integer> WEIGHTS = Map.of("slight", 2, "clear", 5, "strong", 10);

  /** Clear evidence is what a finding needs before it moves a lever, here as in this build. */
  private static final String CLEAR = "5";

  /** A shop's cautions come before those that go with every change. */
  private static final String PLACE = "5";

  private static final List<String> WAYS = List.of("more", "less");
  private static final Set<String> ASKING = Set.of("target", "correction", "carryOn");

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
    return rules.stream().anyMatch(rule -> rule.acts().get(0).verb().equals("check"));
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
      rule("limit", "MAIN", premises, act("bar", lever(limit), way(limit), Scope.ALL.id()));
    }
    if (then.at("hold").isPresent()) {
      String held = Words.oneOf(then.need("hold"), OwnClaimReader.ids(Lever.class));
      rule("hold", "decide", premises, act("hold", held));
    }
    if (then.at("check").isPresent()) {
      needs.add("do");
      String kind = Words.oneOf(then.need("check"), OwnClaimReader.ids(CheckKind.class));
      rule("check", "MAIN", premises, act("check", kind));
    }
    if (then.at("alternative").isPresent()) {
      rule("alternative", "advise", premises, act("alternative", other(then.need("alternative"))));
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
        "MAIN",
        premises,
        act("evidence", finding(evidence), "" + (against ? -weight : weight)));
  }

  /** A correction always answers a finding: that is what gives it its strength. */
  private void correction(JsonPlace correction) throws CaseProblem {
    correction.object(Set.of("lever", "direction", "finding"));
    needs.addAll(List.of("because", "caution", "feel", "undo"));
    String finding = finding(correction);
    List<Premise> all = new ArrayList<>();
    all.add(
        new Premise(
            "Finding",
            false,
            List.of(
                new Constraint("id", "==", List.of(finding)),
                new Constraint("strength", ">=", List.of(CLEAR)))));
    all.addAll(premises);
    lever = Named.of(Lever.class, lever(correction));
    rule("correction", "advise", all, act("correction", lever.id(), way(correction), finding));
  }

  private void caution(JsonPlace caution) throws CaseProblem {
    caution.object(Set.of("lever", "direction"));
    needs.add("caution");
    String with = lever(caution);
    List<Premise> all = new ArrayList<>(premises);
    all.add(
        new Premise(
            "Move",
            false,
            List.of(
                new Constraint("lever", "==", List.of(with)),
                new Constraint("direction", "==", List.of(way(caution))))));
    rule("caution", "care", all, act("caution", with, PLACE));
  }

  private void overrules(JsonPlace overrules) throws CaseProblem {
    List<String> claims = new ArrayList<>();
    for (JsonPlace claim : Words.list(overrules)) {
      claims.add(overruled(claim));
    }
    if (claims.isEmpty()) {
      throw overrules.problem("this must name at least one claim");
    }
    List<Premise> all = new ArrayList<>(premises);
    all.add(
        new Premise(
            "Proposal",
            false,
            List.of(new Constraint("claim", claims.size() == 1 ? "==" : "in", claims))));
    rule("overrules", "decide", all, new Act("setsAside", claims));
  }

  /** Only what asks for a move can be overruled: no first check, no limit, no caution, no undo. */
  private String overruled(JsonPlace place) throws CaseProblem {
    String claim = place.word();
    boolean asks =
        base.rules().index().rules().stream()
            .anyMatch(
                rule ->
                    rule.note().equals(claim)
                        && rule.acts().stream().anyMatch(act -> ASKING.contains(act.verb())));
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
    List<String> levers =
        base.notes().ids().stream()
            .filter(note -> note.startsWith("lever-"))
            .filter(note -> base.notes().find(note).map(Note::kind).orElse("").equals("lever"))
            .toList();
    return Words.oneOf(place, levers);
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

  private static Act act(String verb, String... words) {
    return new Act(verb, List.of(words));
  }

  private void rule(String part, String stage, List<Premise> needed, Act act) {
    rules.add(new IndexedRule(id + "." + part, id, "", file, line, stage, needed, List.of(act)));
  }
}
