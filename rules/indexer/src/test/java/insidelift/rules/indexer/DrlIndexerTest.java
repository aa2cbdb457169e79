package insidelift.rules.indexer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Vocabulary;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build accepts as a rule, and the words in which it refuses the rest. */
class DrlIndexerTest {

  private static final String LEVERS = "[camber, caster]";
  private static final String WATERS = "[damp, dry, standing, wet]";

  private final DrlIndexer indexer = new DrlIndexer(Vocabulary.load());

  private static String rule(String premises, String consequence) {
    return """
        package insidelift.rules;

        rule "wet-more"
          @note("caster-wet-more")
          agenda-group "advise"
        when
          %s
        then
          %s
        end
        """
        .formatted(premises, consequence);
  }

  private static String whenever(String premises) {
    return rule(premises, "ledger.target( \"caster\", \"wet\" );");
  }

  private static String records(String consequence) {
    return rule("Answer( question == \"water\", value == \"wet\" )", consequence);
  }

  private void refused(String drl, String reason) {
    assertThatThrownBy(() -> indexer.index("targets", drl))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessage("targets.drl:3, rule \"wet-more\": " + reason);
  }

  @Test
  void aPlainRuleIsIndexedAsItStands() {
    String drl =
        rule(
            """
            Answer( question == "water", value in ( "wet", "standing" ) )
              Finding( id == "heavy", strength >= 5 )
              not Answer( complaint == true )""",
            "ledger.target( \"caster\", \"wet\" );\n  ledger.hold( \"camber\" );");

    assertThat(indexer.index("targets", drl))
        .containsExactly(
            new IndexedRule(
                "wet-more",
                "caster-wet-more",
                "",
                "targets",
                3,
                "advise",
                List.of(
                    new Premise(
                        "Answer",
                        false,
                        List.of(
                            new Constraint("question", "==", List.of("water")),
                            new Constraint("value", "in", List.of("wet", "standing")))),
                    new Premise(
                        "Finding",
                        false,
                        List.of(
                            new Constraint("id", "==", List.of("heavy")),
                            new Constraint("strength", ">=", List.of("5")))),
                    new Premise(
                        "Answer",
                        true,
                        List.of(new Constraint("complaint", "==", List.of("true"))))),
                List.of(
                    new Act("target", List.of("caster", "wet")),
                    new Act("hold", List.of("camber")))));
  }

  @Test
  void aRuleWithoutAStageSpeaksFirst() {
    String drl =
        """
        package insidelift.rules;
        rule "play"
          @note("check-play")
        when
          Answer( question == "play", value == "some" )
        then
          ledger.check( "stop" );
        end
        """;

    assertThat(indexer.index("first-checks", drl).get(0).stage()).isEqualTo("MAIN");
  }

  @Test
  void aNegativeWeightIsKept() {
    assertThat(
            indexer.index("targets", records("ledger.evidence( \"heavy\", -10 );")).get(0).acts())
        .containsExactly(new Act("evidence", List.of("heavy", "-10")));
  }

  @Test
  void anUnknownQuestionIsRefused() {
    assertThatThrownBy(
            () -> indexer.index("targets", whenever("Answer( question == \"weather\" )")))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageStartingWith(
            "targets.drl:3, rule \"wet-more\": \"weather\" is not one of [adjustable, alignment,")
        .hasMessageEndingWith("water, worst-phase]");
  }

  @Test
  void anIllegalValueIsRefused() {
    refused(
        whenever("Answer( question == \"water\", value == \"soaked\" )"),
        "\"soaked\" is not one of " + WATERS);
    refused(
        whenever("not Answer( question == \"water\", value in ( \"wet\", \"soaked\" ) )"),
        "\"soaked\" is not one of " + WATERS);
  }

  @Test
  void aValueThatNotEveryNamedQuestionHasIsRefused() {
    refused(
        whenever("Answer( question in ( \"turn-in\", \"hop\" ), value == \"good\" )"),
        "\"good\" is not one of []");
  }

  @Test
  void aValueWithoutItsQuestionIsRefused() {
    refused(whenever("Answer( value == \"wet\" )"), "an answer's value has no question");
  }

  @Test
  void anUnknownFindingIsRefused() {
    assertThatThrownBy(
            () -> indexer.index("targets", whenever("Finding( id == \"tired\", strength >= 5 )")))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageStartingWith(
            "targets.drl:3, rule \"wet-more\": \"tired\" is not one of [binding, class-drag,");
    assertThatThrownBy(() -> indexer.index("targets", records("ledger.evidence( \"tired\", 5 );")))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageContaining(": \"tired\" is not one of [binding, class-drag,");
  }

  @Test
  void anUnknownLeverDirectionKindOrTruthIsRefused() {
    refused(whenever("Barred( lever == \"toe\" )"), "\"toe\" is not one of " + LEVERS);
    refused(
        whenever("Move( lever == \"camber\", direction == \"up\" )"),
        "\"up\" is not one of [hold, less, more]");
    refused(
        whenever("Proposal( kind == \"wish\" )"), "\"wish\" is not one of [correction, target]");
    refused(whenever("Answer( complaint == \"maybe\" )"), "\"maybe\" is not one of [false, true]");
  }

  @Test
  void anUnknownFactOrFieldIsRefused() {
    refused(whenever("Weather()"), "no fact is called Weather");
    refused(whenever("Answer( mood == \"wet\" )"), "no fact has Answer.mood");
  }

  @Test
  void anUnknownVerbOfTheLedgerIsRefused() {
    refused(records("ledger.shout( \"caster\" );"), "the ledger has no \"shout\"");
  }

  @Test
  void aWrongNumberOfArgumentsIsRefused() {
    refused(records("ledger.target( \"caster\" );"), "\"target\" takes [lever, column]");
    refused(records("ledger.setsAside();"), "\"setsAside\" takes [note...]");
    refused(records("ledger.decides( \"caster\" );"), "\"decides\" takes nothing");
  }

  @Test
  void aWrongWordForTheLedgerIsRefused() {
    refused(records("ledger.hold( \"toe\" );"), "\"toe\" is not one of " + LEVERS);
    refused(
        records("ledger.caution( \"toe\", 1 );"), "\"toe\" is not one of [both, camber, caster]");
    refused(
        records("ledger.check( \"maybe\" );"),
        "\"maybe\" is not one of [fault, look, set-first, stop]");
    refused(
        records("ledger.target( \"caster\", \"icy\" );"),
        "\"icy\" is not one of [damp, dry, standing, wet]");
    refused(
        records("ledger.bar( \"caster\", \"more\", \"some\" );"),
        "\"some\" is not one of [all, corrections]");
    refused(
        records("ledger.cap( \"camber\", \"less\", \"a-lot\" );"),
        "\"a-lot\" is not one of [a-little-negative]");
  }

  @Test
  void freeCodeInAConsequenceIsRefused() {
    String reason = "a consequence does more than write in the ledger";
    refused(records("System.out.println( \"hello\" );"), reason);
    refused(records("ledger.hold( \"camber\" ); insert( new Object() );"), reason);
    refused(records("if (true) { ledger.hold( \"camber\" ); }"), reason);
    refused(records("int i = 0; ledger.hold( \"camber\" );"), reason);
    refused(records(""), reason);
  }

  @Test
  void anArgumentThatIsNotLiteralIsRefused() {
    String reason = "a consequence does more than write in the ledger";
    refused(records("ledger.hold( \"camber\" + suffix );"), reason);
    refused(records("ledger.evidence( \"heavy\", 5 * 2 );"), reason);
    refused(records("ledger.hold( lever );"), reason);
  }

  @Test
  void aBindingAnEvalOrAnyMoreThanAFactIsRefused() {
    String reason = "a premise is more than a fact or its absence";
    refused(whenever("$a : Answer( question == \"water\" )"), reason);
    refused(whenever("eval( true )"), reason);
    refused(whenever("exists Answer( question == \"water\" )"), reason);
    refused(whenever("( Answer( question == \"water\" ) or Finding( id == \"heavy\" ) )"), reason);
    refused(whenever("not ( not Answer( question == \"water\" ) )"), reason);
    refused(whenever("Answer( question == \"water\" ) from answers"), reason);
  }

  @Test
  void aConditionThatIsMoreThanAComparisonIsRefused() {
    refused(
        whenever("Answer( question != \"water\" )"),
        "a premise is not plain: question != \"water\"");
    refused(
        whenever("Answer( question.length() == 5 )"),
        "a premise is not plain: question.length() == 5");
    refused(
        whenever("Answer( question in ( \"water\", other ) )"),
        "a premise is not plain: question in ( \"water\", other )");
    refused(whenever("Finding( strength > 5 )"), "a premise is not plain: strength > 5");
    refused(whenever("Answer( $q : question )"), "a premise is not plain: $q : question");
  }

  @Test
  void aMissingNoteIsRefused() {
    refused(whenever("Move()").replace("  @note(\"caster-wet-more\")\n", ""), "it names no note");
  }

  @Test
  void anUnknownStageIsRefused() {
    refused(whenever("Move()").replace("\"advise\"", "\"shout\""), "no stage is called \"shout\"");
  }

  @Test
  void saliencesAndParentsAreRefused() {
    String reason = "it has more than a note and a stage";
    refused(whenever("Move()").replace("when", "  salience 10\nwhen"), reason);
    refused(whenever("Move()").replace("\"wet-more\"", "\"wet-more\" extends \"wet\""), reason);
  }

  @Test
  void aFileThatHoldsMoreThanRulesIsRefused() {
    assertThatThrownBy(
            () -> indexer.index("targets", whenever("Move()") + "function int f() { return 1; }"))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessage("targets.drl: it holds more than rules");
  }

  @Test
  void aFileThatDoesNotParseIsRefusedWithItsName() {
    assertThatThrownBy(() -> indexer.index("targets", "rule \"x\" when Answer( then end"))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageStartingWith("targets.drl: ");
  }

  @Test
  void aNameThatStandsInTwoFilesIsRefused(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("limits.drl"), whenever("Move()"));
    Files.writeString(folder.resolve("targets.drl"), whenever("Move()"));

    assertThatThrownBy(() -> indexer.index(folder))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessage("targets.drl:3, rule \"wet-more\": the same name stands in limits");
  }

  @Test
  void aFolderIsReadInTheOrderOfItsFiles(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("b.drl"), whenever("Move()"));
    Files.writeString(folder.resolve("a.drl"), whenever("Move()").replace("wet-more", "dry"));
    Files.writeString(folder.resolve("notes.txt"), "not a rule file");

    RuleIndex index = indexer.index(folder);

    assertThat(index.schema()).isEqualTo(1);
    assertThat(index.rules()).extracting(IndexedRule::id).containsExactly("dry", "wet-more");
    assertThat(index.rules()).extracting(IndexedRule::family).containsExactly("a", "b");
    assertThat(index.rule("dry")).isPresent();
    assertThat(index.rule("none")).isEmpty();
  }
}
