package insidelift.engine.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a shop's own claims can do, what they never can, and that they are shown as theirs. */
class OwnKnowledgeTest {

  private static final Advisor BASE = Advisor.load();
  private static final Path EXAMPLE = Path.of("..", "console", "examples", "own-knowledge.json");

  private static final String CLAIM =
      """
      {"schema": 1, "shop": "Heron Lane Karts", "claims": [{
        "id": "ours", "title": "What we found", "when": {"mid-corner": "understeer"},
        "then": %s, "why": "We saw it.", "source": "our log", "review": "2027-01-31"%s}]}
      """;

  private static final String TEXTS =
      ", \"because\": \"we saw it\", \"caution\": \"Look.\", \"feel\": \"Better.\", \"undo\":"
          + " \"If worse.\", \"do\": \"Do it.\"";

  private static OwnKnowledge read(String json) throws CaseProblem {
    try {
      return OwnKnowledge.read(
          "own.json", new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)), BASE);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Advisor with(String then) throws CaseProblem {
    return read(CLAIM.formatted(then, TEXTS)).beside(BASE);
  }

  private static Advisor example() throws Exception {
    return read(Files.readString(EXAMPLE)).beside(BASE);
  }

  private static Situation situation(String... answers) {
    Situation situation = Situation.UNKNOWN;
    for (int i = 0; i < answers.length; i += 2) {
      situation = situation.with(answers[i], answers[i + 1]);
    }
    return situation;
  }

  private static Suggestion suggestion(Advice advice, Lever lever) {
    return advice.suggestions().stream()
        .filter(one -> one.lever() == lever)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aShopsCorrectionMovesTheLeverAndIsShownAsTheirsEverywhere() throws Exception {
    Situation push = situation("corner-speed", "slow", "turn-in", "understeer");
    Advisor advisor = example();
    Suggestion caster = suggestion(advisor.advise(push), Lever.CASTER);

    assertThat(caster.direction()).isEqualTo(Direction.MORE);
    assertThat(caster.reasons()).extracting(Reason::note).contains("own-hairpin-push");
    assertThat(caster.reasons())
        .filteredOn(reason -> reason.note().equals("own-hairpin-push"))
        .allSatisfy(
            reason -> {
              assertThat(reason.text()).startsWith("Own rule of Heron Lane Karts: A push in");
              assertThat(reason.sources())
                  .containsExactly(
                      "own-hairpin-push: Own rule of Heron Lane Karts: our own log, 14 days in"
                          + " 2026");
            });
    assertThat(caster.cautions()).anyMatch(caution -> caution.startsWith("The hands tire sooner"));
    Explanation explained = new Explanation(advisor, push);
    assertThat(String.join("\n", explained.how("caster").lines()))
        .contains("own-hairpin-push: Own rule of Heron Lane Karts");
    assertThat(String.join("\n", explained.how("entry-push").lines()))
        .contains("Own rule of Heron Lane Karts");
    assertThat(String.join(" ", explained.rule("own-hairpin-push.correction").lines()))
        .contains("Own rule of Heron Lane Karts");
  }

  @Test
  void aMoveOnTheShopsWordAloneSaysSoInItsSummary() throws Exception {
    Advisor advisor =
        with(
            "{\"correction\": {\"lever\": \"caster\", \"direction\": \"less\", \"finding\":"
                + " \"mid-push\"}}");
    Suggestion caster =
        suggestion(advisor.advise(situation("mid-corner", "understeer")), Lever.CASTER);

    assertThat(caster.direction()).isEqualTo(Direction.LESS);
    assertThat(caster.summary())
        .contains("by this shop's own rule, we saw it")
        .hasSizeLessThan(140);
    assertThat(caster.cautions()).contains("Look.");
    assertThat(caster.confirm()).containsExactly("Better.");
    assertThat(caster.undo()).containsExactly("If worse.");
  }

  @Test
  void aShopsOwnCheckComesFirst() throws Exception {
    Situation sand = situation("rubber", "dusty", "run-phase", "builds-up");
    assertThat(BASE.advise(sand).status()).isNotEqualTo(Status.FIX_FIRST);
    Advice advice = example().advise(sand);
    assertThat(advice.status()).isEqualTo(Status.FIX_FIRST);
    assertThat(advice.firstChecks().get(0).what())
        .startsWith("Own rule of Heron Lane Karts: After sand");
  }

  @Test
  void aClaimThatAsksForAMoveCanBeOverruledAndTheAdviceSaysByWhom() throws Exception {
    Situation drag =
        situation("water", "dry", "power", "low", "straight-speed", "down", "turn-in", "good");
    assertThat(drag(BASE, drag)).isPositive();
    assertThat(drag(example(), drag)).isZero();
    assertThat(example().advise(drag).decisions())
        .anySatisfy(
            decision -> {
              assertThat(decision.text()).startsWith("Own rule of Heron Lane Karts");
              assertThat(decision.over()).contains("camber-low-power-drag");
            });
  }

  /** What drag on the straight adds to camber toward negative. */
  private static int drag(Advisor advisor, Situation situation) {
    return advisor.decide(situation).reasoned().parts("camber", "less").stream()
        .filter(part -> part.finding().equals("slow-straight"))
        .mapToInt(part -> part.points())
        .sum();
  }

  @Test
  void nothingOfAShopsOverrulesAFaultALimitOrACaution() throws Exception {
    Advisor advisor =
        with(
            "{\"correction\": {\"lever\": \"caster\", \"direction\": \"more\", \"finding\":"
                + " \"mid-push\"}, \"evidence\": {\"finding\": \"mid-push\", \"weight\":"
                + " \"strong\"}}");
    Situation push = situation("mid-corner", "understeer");
    assertThat(suggestion(advisor.advise(push), Lever.CASTER).cautions())
        .containsAll(cautions(situation("turn-in", "understeer")));
    assertThat(advisor.advise(push.with("play", "some")).status()).isEqualTo(Status.FIX_FIRST);
    for (Map.Entry<String, String> limit :
        Map.of("steering-weight", "heavy", "hop", "hops", "time-left", "short").entrySet()) {
      assertThat(
              advisor.advise(push.with(limit.getKey(), limit.getValue())).suggestions().stream()
                  .filter(one -> one.lever() == Lever.CASTER)
                  .filter(Suggestion::moves))
          .as(limit.toString())
          .isEmpty();
    }
  }

  /** The cautions that any move to more caster comes with. */
  private static List<String> cautions(Situation situation) {
    Suggestion ours = suggestion(BASE.advise(situation), Lever.CASTER);
    String claim = BASE.notes().note("caster-entry-push").text("Caution");
    return ours.cautions().stream().filter(caution -> !caution.equals(claim)).toList();
  }

  @Test
  void aShopCanForbidHoldWarnAndNameAnotherLever() throws Exception {
    Situation push = situation("water", "dry", "mid-corner", "understeer");
    assertThat(suggestion(BASE.advise(push), Lever.CAMBER).moves()).isTrue();
    Advisor limits = with("{\"limit\": {\"lever\": \"camber\", \"direction\": \"more\"}}");
    Suggestion barred = suggestion(limits.advise(push), Lever.CAMBER);
    assertThat(barred.moves()).isFalse();
    assertThat(barred.heldBy()).isEqualTo("own-ours");
    Advisor holds = with("{\"hold\": \"camber\"}");
    assertThat(suggestion(holds.advise(push), Lever.CAMBER).heldBy()).isEqualTo("own-ours");
    Advisor warns = with("{\"caution\": {\"lever\": \"camber\", \"direction\": \"more\"}}");
    assertThat(suggestion(warns.advise(push), Lever.CAMBER).cautions()).contains("Look.");
    Advisor names = with("{\"alternative\": {\"lever\": \"seat\", \"direction\": \"more\"}}");
    assertThat(names.advise(push).alternatives()).anyMatch(one -> one.lever().equals("seat"));
    Advisor against =
        with(
            "{\"evidence\": {\"finding\": \"mid-push\", \"weight\": \"strong\", \"against\":"
                + " true}}");
    assertThat(against.advise(push).findings()).noneMatch(found -> found.id().equals("mid-push"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'overrules': ['check-play']} | claims[1].then.overrules[1]: \"check-play\" cannot be"
            + " overruled: only a claim that asks for a move can, never a first check, a limit or"
            + " a caution",
        "{'overrules': ['caster-heavy-limit']} | claims[1].then.overrules[1]:"
            + " \"caster-heavy-limit\" cannot be overruled: only a claim that asks for a move can,"
            + " never a first check, a limit or a caution",
        "{'overrules': ['caution-torque']} | claims[1].then.overrules[1]: \"caution-torque\""
            + " cannot be overruled: only a claim that asks for a move can, never a first check, a"
            + " limit or a caution",
        "{'overrules': ['undo-worse']} | claims[1].then.overrules[1]: \"undo-worse\" cannot be"
            + " overruled: only a claim that asks for a move can, never a first check, a limit or"
            + " a caution",
        "{'overrules': ['nobody']} | claims[1].then.overrules[1]: there is no claim \"nobody\"",
        "{'overrules': []} | claims[1].then.overrules: this must name at least one claim",
        "{'overrules': 'all'} | claims[1].then.overrules: this must be a list in square brackets",
        "{} | claims[1].then: a claim contributes at least one thing",
        "{'run': 'it'} | claims[1].then: \"run\" is not a key here; the keys are alternative,"
            + " caution, check, correction, evidence, hold, limit, overrules",
        "{'hold': 'toe'} | claims[1].then.hold: \"toe\" is not one of camber, caster",
        "{'check': 'never'} | claims[1].then.check: \"never\" is not one of stop, fault,"
            + " set-first, look",
        "{'evidence': {'finding': 'mid-push', 'weight': 'huge'}} |"
            + " claims[1].then.evidence.weight: \"huge\" is not one of clear, slight, strong",
        "{'evidence': {'finding': 'mid-push', 'weight': 'clear', 'against': 1}} |"
            + " claims[1].then.evidence.against: this must be true or false",
        "{'correction': {'lever': 'camber', 'direction': 'hold', 'finding': 'mid-push'}} |"
            + " claims[1].then.correction.direction: \"hold\" is not one of more, less",
        "{'limit': {'lever': 'camber'}} | claims[1].then.limit: the key \"direction\" is missing",
      })
  void aContributionThatIsNoneIsRefusedWithItsPlace(String then, String sentence) {
    assertThatThrownBy(() -> with(then.replace('\'', '"')))
        .isInstanceOf(CaseProblem.class)
        .hasMessage(sentence);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"id\": \"ours\" | \"id\": \"Ours!\" | claims[1].id: an id is small letters, digits and"
            + " single hyphens",
        "\"title\": \"What we found\" | \"title\": \" \" | claims[1].title: this must not be empty",
        "\"title\": \"What we found\" | \"title\": \"a\\u001b[2Jb\" | claims[1].title: this holds"
            + " characters that cannot be shown",
        "{\"mid-corner\": \"understeer\"} | {} | claims[1].when: a claim rests on at least one"
            + " answer",
        "{\"mid-corner\": \"understeer\"} | {\"mid-corner\": []} | claims[1].when.mid-corner: this"
            + " must name at least one word",
        "{\"mid-corner\": \"understeer\"} | {\"mid-corner\": \"fast\"} | claims[1].when.mid-corner:"
            + " \"fast\" is not one of understeer, good, oversteer",
        "2027-01-31 | soon | claims[1].review: this must be a day as in 2027-03-31",
        "\"source\": \"our log\" | \"sauce\": \"our log\" | claims[1]: \"sauce\" is not a key"
            + " here; the keys are because, caution, do, feel, id, review, source, then, title,"
            + " undo, unless, when, why",
        "\"undo\": \"If worse.\", | `` | claims[1]: the key \"undo\" is missing",
        "\"schema\": 1 | \"schema\": 2 | schema: 2 is not known; this build reads schema 1",
        "\"shop\": \"Heron Lane Karts\" | \"shop\":"
            + " \"A shop whose name is far too long for a screen\" | shop: this is longer than 30"
            + " characters",
      })
  void aClaimThatIsNotCompleteIsRefusedWithItsPlace(String part, String other, String sentence) {
    String claim =
        CLAIM.formatted(
            "{\"correction\": {\"lever\": \"caster\", \"direction\": \"less\", \"finding\":"
                + " \"mid-push\"}}",
            TEXTS);
    assertThat(claim).contains(part);
    assertThatThrownBy(() -> read(claim.replace(part, other == null ? "" : other)))
        .isInstanceOf(CaseProblem.class)
        .hasMessage(sentence);
  }

  @Test
  void theSameIdTwiceIsRefused() throws Exception {
    String claim = CLAIM.formatted("{\"hold\": \"camber\"}", "");
    String one = claim.substring(claim.indexOf('['), claim.lastIndexOf(']')).substring(1);
    String twice = claim.replace(one, one + "," + one);
    assertThatThrownBy(() -> read(twice))
        .isInstanceOf(CaseProblem.class)
        .hasMessage("claims[2].id: the same id stands twice");
  }

  @Test
  void everyRuleKnowsItsFileAndLine() throws Exception {
    assertThat(read(Files.readString(EXAMPLE)).rules())
        .filteredOn(rule -> rule.id().startsWith("own-sand-on-the-line"))
        .singleElement()
        .satisfies(
            rule -> {
              assertThat(rule.family()).isEqualTo("own.json");
              assertThat(rule.line()).isEqualTo(23);
            });
  }
}
