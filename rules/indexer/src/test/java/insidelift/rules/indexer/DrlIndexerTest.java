package insidelift.rules.indexer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Vocabulary;
import insidelift.shared.index.Premise.Complained;
import insidelift.shared.index.Premise.Moved;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build accepts as a rule, and the words in which it refuses the rest. */
class DrlIndexerTest {

  private static final String LEVERS = "[camber, caster]";
  private static final String WATERS = "[damp, dry, standing, wet]";
  private static final String STOP = "insert( new Check( drools.getRule(), \"stop\" ) );";

  private final DrlIndexer indexer = new DrlIndexer(Vocabulary.load());

  private static String rule(String premises, String consequence) {
    return """
        package insidelift.rules;

        rule "heavy"
          @note("caster-heavy-limit")
        when
          %s
        then
          %s
        end
        """
        .formatted(premises, consequence);
  }

  private static String whenever(String premises) {
    return rule(premises, STOP);
  }

  private static String says(String consequence) {
    return rule("Answer( question == \"water\", value == \"wet\" )", consequence);
  }

  private static String says(String fact, String words) {
    return says("insert( new " + fact + "( drools.getRule(), " + words + " ) );");
  }

  private void refused(String drl, String reason) {
    assertThatThrownBy(() -> indexer.index("limits", drl))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessage("limits.drl:3, rule \"heavy\": " + reason);
  }

  @Test
  void aPlainRuleIsIndexedAsItStands() {
    String drl =
        rule(
            """
            Answer( question == "water", value in ( "wet", "standing" ) )
              not Answer( question in ( "turn-in", "exit" ) )
              exists Answer( question == "exit" )
              Answer( complaint == true )
              Step( now == true, lever == "caster", direction == "more" )
              Step( now == true )""",
            "insert( new Barred( drools.getRule(), \"caster\", \"more\", \"all\" ) );\n"
                + "  insert( new Evidence( drools.getRule(), \"heavy\", -10, \"tiring\" ) );");

    assertThat(indexer.index("limits", drl))
        .containsExactly(
            new IndexedRule(
                "heavy",
                "caster-heavy-limit",
                "",
                "limits",
                3,
                "",
                List.of(
                    new Told(List.of("water"), List.of("wet", "standing"), false),
                    new Told(List.of("turn-in", "exit"), List.of(), true),
                    new Told(List.of("exit"), List.of(), false),
                    new Complained(),
                    new Moved("caster", "more"),
                    new Moved("", "")),
                List.of(
                    new Act(Verb.BARRED, List.of("caster", "more", "all")),
                    new Act(Verb.EVIDENCE, List.of("heavy", "-10", "tiring")))));
  }

  @Test
  void aRuleThatThinksIsKnownByWhatItSaysItDoes() {
    String drl =
        whenever(
                """
                $one : Answer() Thing( other > 3 )
                  not ( Thing() and Answer( question == "water", value != "dry" ) )
                  Answer( question == "hop", value == "hops" )""")
            .replace("when", "  @says(\"It thinks.\")\n  salience 3\nwhen");

    IndexedRule rule = indexer.index("choose", drl).get(0);

    assertThat(rule.plain()).isFalse();
    assertThat(rule.says()).isEqualTo("It thinks.");
    assertThat(rule.premises())
        .containsExactly(
            new Told(List.of("water"), List.of(), false),
            new Told(List.of("hop"), List.of("hops"), false));
    assertThat(rule.acts()).isEmpty();
  }

  @Test
  void aLineOfATableIsARule(@TempDir Path folder) throws Exception {
    Files.writeString(
        folder.resolve("evidence.drl.csv"),
        """
        `RuleSet`,`insidelift.rules`

        `RuleTable evidence`
        `NAME`,`METADATA`,`CONDITION`,`CONDITION`,`ACTION`
        ,,`Answer`,`not Answer`,
        ,`note(``$param``)`,`question == ``$1``, value in ( ``$2`` )`,`question == ``rubber``, \
        value == ``$param```,`insert( new Evidence( drools.getRule(), ``$1``, $2, ``$3`` ) );`
        `id`,`note`,`answer`,`rubber not`,`evidence`
        `push`,`caster-entry-push`,`turn-in,understeer`,`dusty`,`entry-push,20,turn-in`
        `slide`,`caster-front-bites`,`turn-in,oversteer`,,`entry-slide,20,turn-in`
        """
            .replace('`', '"'));

    assertThat(indexer.index(folder).rules())
        .containsExactly(
            new IndexedRule(
                "push",
                "caster-entry-push",
                "",
                "evidence.drl.csv",
                8,
                "",
                List.of(
                    new Told(List.of("turn-in"), List.of("understeer"), false),
                    new Told(List.of("rubber"), List.of("dusty"), true)),
                List.of(new Act(Verb.EVIDENCE, List.of("entry-push", "20", "turn-in")))),
            new IndexedRule(
                "slide",
                "caster-front-bites",
                "",
                "evidence.drl.csv",
                9,
                "",
                List.of(new Told(List.of("turn-in"), List.of("oversteer"), false)),
                List.of(new Act(Verb.EVIDENCE, List.of("entry-slide", "20", "turn-in")))));
  }

  @Test
  void anUnknownQuestionIsRefused() {
    assertThatThrownBy(() -> indexer.index("limits", whenever("Answer( question == \"weather\" )")))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageStartingWith(
            "limits.drl:3, rule \"heavy\": \"weather\" is not one of [adjustable, air, alignment,")
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
    refused(
        whenever("Answer( question == \"camber-now\", value == \"steep\" )"),
        "\"steep\" is not one of [far-negative, far-positive, negative, positive, zero]");
  }

  @Test
  void aValueThatNotEveryNamedQuestionHasIsRefused() {
    refused(
        whenever("Answer( question in ( \"turn-in\", \"hop\" ), value == \"good\" )"),
        "\"good\" is not one of [hops, none, two-wheels]");
  }

  @Test
  void aPremiseOfAnotherFormIsRefused() {
    refused(whenever("Answer( value == \"wet\" )"), "no premise is Answer by [value]");
    refused(whenever("Answer( mood == \"wet\" )"), "no premise is Answer by [mood]");
    refused(whenever("Weather()"), "no premise is Weather by []");
    refused(whenever("Step()"), "no premise is Step by []");
    refused(
        whenever("not Answer( complaint == true )"),
        "a premise is more than a fact or its absence");
  }

  @Test
  void anUnknownLeverOrDirectionIsRefused() {
    refused(whenever("Step( now == true, lever == \"toe\" )"), "\"toe\" is not one of " + LEVERS);
    refused(
        whenever("Step( now == true, lever == \"camber\", direction == \"up\" )"),
        "\"up\" is not one of [hold, less, more]");
  }

  @Test
  void anUnknownFactIsRefused() {
    refused(says("Shout", "\"caster\""), "no plain rule says Shout");
  }

  @Test
  void aWrongNumberOfWordsIsRefused() {
    refused(says("Start", "\"dry\", \"caster\""), "\"start\" takes [water, lever, number]");
    refused(says("insert( new Check( drools.getRule() ) );"), "\"check\" takes [check]");
  }

  @Test
  void aWrongWordIsRefused() {
    refused(says("Care", "\"toe\", 1"), "\"toe\" is not one of [both, camber, caster]");
    refused(says("Care", "\"both\", \"first\""), "\"first\" is no whole number");
    refused(says("Check", "\"maybe\""), "\"maybe\" is not one of [fault, look, set-first, stop]");
    refused(
        says("Barred", "\"caster\", \"more\", \"some\""),
        "\"some\" is not one of [all, move, restore]");
    refused(
        says("Claim", "\"caster\", \"more\", \"mid\", 3, 90, \"none\", \"twice\""),
        "\"twice\" is not one of [both, one]");
    refused(says("Track", "\"icy\""), "\"icy\" is not one of " + WATERS);
    assertThatThrownBy(() -> indexer.index("limits", says("Evidence", "\"tired\", 5, \"tiring\"")))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageContaining(": \"tired\" is not one of [binding, cold,");
  }

  @Test
  void freeCodeInAConsequenceIsRefused() {
    String reason = "a consequence does more than say plain words";
    refused(says("System.out.println( \"hello\" );"), reason);
    refused(says(STOP + " insert( new Object() );"), reason);
    refused(says("if (true) { " + STOP + " }"), reason);
    refused(says("int i = 0; " + STOP), reason);
    refused(says(""), reason);
    refused(says("Care", "\"both\" + suffix, 1"), reason);
    refused(says("Care", "\"both\", 5 * 2"), reason);
    refused(says("Care", "lever, 1"), reason);
  }

  @Test
  void aBindingAnEvalOrAnyMoreThanAFactIsRefused() {
    String reason = "a premise is more than a fact or its absence";
    refused(whenever("$a : Answer( question == \"water\" )"), reason);
    refused(whenever("eval( true )"), reason);
    refused(whenever("exists ( not Answer( question == \"water\" ) )"), reason);
    refused(whenever("( Answer( question == \"water\" ) or Step( now == true ) )"), reason);
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
    refused(whenever("Answer( $q : question )"), "a premise is not plain: $q : question");
  }

  @Test
  void aMissingNoteIsRefused() {
    refused(
        whenever("Step( now == true )").replace("  @note(\"caster-heavy-limit\")\n", ""),
        "it names no note");
  }

  @Test
  void saliencesAndParentsArePlainNoMore() {
    String reason = "it has more than a note and a group";
    String plain = whenever("Step( now == true )");
    refused(plain.replace("when", "  salience 10\nwhen"), reason);
    refused(plain.replace("\"heavy\"", "\"heavy\" extends \"wet\""), reason);
  }

  @Test
  void aFileThatHoldsMoreThanRulesIsRefused() {
    assertThatThrownBy(
            () ->
                indexer.index(
                    "limits", whenever("Step( now == true )") + "function int f() { return 1; }"))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessage("limits.drl: it holds more than rules");
  }

  @Test
  void aFileThatDoesNotParseIsRefusedWithItsName() {
    assertThatThrownBy(() -> indexer.index("limits", "rule \"x\" when Answer( then end"))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessageStartingWith("limits.drl: ");
  }

  @Test
  void aNameThatStandsInTwoFilesIsRefused(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("limits.drl"), whenever("Step( now == true )"));
    Files.writeString(folder.resolve("unseen.drl"), whenever("Step( now == true )"));

    assertThatThrownBy(() -> indexer.index(folder))
        .isInstanceOf(UnplainRuleException.class)
        .hasMessage("unseen.drl:3, rule \"heavy\": the same name stands in limits");
  }

  @Test
  void aFolderIsReadInTheOrderOfItsFiles(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("b.drl"), whenever("Step( now == true )"));
    Files.writeString(
        folder.resolve("a.drl"), whenever("Step( now == true )").replace("\"heavy\"", "\"dry\""));
    Files.writeString(folder.resolve("notes.txt"), "not a rule file");

    RuleIndex index = indexer.index(folder);

    assertThat(index.schema()).isEqualTo(1);
    assertThat(index.rules()).extracting(IndexedRule::id).containsExactly("dry", "heavy");
    assertThat(index.rules()).extracting(IndexedRule::family).containsExactly("a", "b");
    assertThat(index.rule("dry")).isPresent();
    assertThat(index.rule("none")).isEmpty();
  }
}
