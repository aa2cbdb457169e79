package insidelift.console.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.asking.Remark;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.session.Session;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked in return; the explanations themselves are held elsewhere. */
class InquiriesTest {

  private static final Advisor ADVISOR = Advisor.load();

  private final Session session = new Session(ADVISOR);
  private final Inquiries inquiries = new Inquiries(session, ADVISOR.vocabulary(), ADVISOR.notes());

  @BeforeEach
  void pushesMidCornerInTheDry() {
    session.resume(Situation.of(Map.of("water", "dry", "mid-corner", "understeer")));
  }

  @Test
  void aWordOfTheTradeIsExplained() {
    assertThat(ask("what is caster").get(0))
        .isEqualTo("More caster leans the top of the kingpin further back");
    assertThat(ask("What is the toe?").get(0)).isEqualTo("Toe");
    assertThat(ask("what is understeer").get(0)).isNotBlank();
    assertThat(ask("what is a wing"))
        .containsExactly("There is no note on \"wing\". All of them: insidelift notes");
    assertThat(Remark.asks("what is")).isFalse();
  }

  private List<String> ask(String line) {
    assertThat(Remark.asks(line)).isTrue();
    return inquiries.answer(line, Optional.empty());
  }

  @Test
  void whyIsAboutTheQuestionThatStandsOpen() {
    assertThat(inquiries.answer("why", ADVISOR.vocabulary().question("water")))
        .isEqualTo(session.explain().why("water").lines());
    assertThat(ask("why water")).isEqualTo(session.explain().why("water").lines());
  }

  @Test
  void whyWithoutAQuestionIsAboutTheAdvice() {
    assertThat(ask("why")).isEqualTo(ask("how"));
    assertThat(ask("how")).first().asString().startsWith("How: Set camber 0.5");
  }

  @Test
  void howNamesWhatElseCanBeAsked() {
    assertThat(ask("how")).last().isEqualTo("What it found: mid-push. Ask as in: how mid-push");
  }

  @Test
  void withoutMoreOrLessBothAreAnswered() {
    assertThat(ask("why not caster")).contains("Why not more caster:", "Why not less caster:");
    assertThat(ask("Why NOT caster less")).first().isEqualTo("Why not less caster:");
  }

  @Test
  void whatIfTakesSeveralAnswersAndNotesNone() {
    Situation before = session.situation();
    assertThat(ask("what if water=wet, mid-corner=good"))
        .first()
        .isEqualTo("What if water=wet, mid-corner=good:");
    assertThat(ask("what if mid-corner=unknown")).anyMatch(line -> line.startsWith("  - "));
    assertThat(session.situation()).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "why nonsense | There is no question \"nonsense\".",
        "how nonsense | \"nonsense\" is no finding and no lever. Type how alone to see them.",
        "why not | Say it like this: why not camber more, or: why not caster less.",
        "why not toe more | Say it like this: why not camber more, or: why not caster less.",
        "why not camber sideways | Say it like this: why not camber more, or: why not caster less.",
        "rule x | There is no rule \"x\". The answers to how name the rules.",
        "what if | Say it like this: what if water=wet",
        "what if wet | Say it like this: what if water=wet",
        "what if a=b=c | Say it like this: what if water=wet",
        "what if rain=yes | There is no question \"rain\".",
        "what if water=moist | water takes dry, damp, wet, standing or unknown."
      })
  void whatCannotBeAnsweredSaysWhatCan(String line, String said) {
    assertThat(ask(line)).containsExactly(said);
  }

  @ParameterizedTest
  @CsvSource({"wet", "rule", "what", "what a push", "howl", "2"})
  void anythingElseIsNotAskedInReturn(String line) {
    assertThat(Remark.asks(line)).isFalse();
  }
}
