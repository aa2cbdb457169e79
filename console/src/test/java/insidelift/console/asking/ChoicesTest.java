package insidelift.console.asking;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.asking.Choices.Choice;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChoicesTest {

  private static final Choices WEAR =
      choices(
          new Choice("even", "even"),
          new Choice("inner-edge", "most at the edge nearest the seat"),
          new Choice("outer-edge", "most at the edge away from the seat"),
          new Choice("rubbered", "a lot of rubber"));

  private static final Choices CAMBER =
      new Choices(
          "camber left",
          List.of("How much?"),
          List.of(),
          Optional.of(new Span(-10, 10, "degrees")),
          Optional.of("not measured"),
          false);

  @ParameterizedTest
  @CsvSource({
    "1, even",
    "4, rubbered",
    "u, unknown",
    "unknown, unknown",
    "I don't know, unknown",
    "no idea, unknown",
    "not sure, unknown",
    "ev, even",
    "INNER, inner-edge",
    "outer-edge, outer-edge",
    "most at the edge n, inner-edge",
    "a lot, rubbered",
    "r, rubbered",
    "'  2  ', inner-edge"
  })
  void aNumberAUniqueBeginningOrAWordChooses(String typed, String value) {
    assertThat(WEAR.read(typed)).isEqualTo(new Reply.Chosen(value));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "most | \"most\" fits more than one choice. Type a little more.",
        "grey | \"grey\" is none of the choices. Type a number or the first letters.",
        "0    | There are choices 1 to 4; u means not known.",
        "5    | There are choices 1 to 4; u means not known.",
        "999  | There are choices 1 to 4; u means not known.",
        "1234 | \"1234\" is none of the choices. Type a number or the first letters.",
        "' '  | Nothing is chosen yet: type a number or the first letters, then Enter."
      })
  void whatFitsNoneOrSeveralIsSaidExactly(String typed, String why) {
    assertThat(WEAR.read(typed)).isEqualTo(new Reply.Unclear(why));
  }

  @Test
  void controlCharactersAreNeverEchoed() {
    assertThat(WEAR.read("w\u001b[2Jet"))
        .isEqualTo(
            new Reply.Unclear(
                "\"w\\u{1b}[2jet\" is none of the choices. Type a number or the first letters."));
  }

  @Test
  void anExactWordChoosesEvenWhereAnotherBeginsLikeIt() {
    Choices corners = choices(new Choice("left", "left"), new Choice("left-only", "left only"));
    assertThat(corners.read("left")).isEqualTo(new Reply.Chosen("left"));
  }

  @Test
  void commandsAreUnderstoodAndTheirFirstLettersWhereNoChoiceBeginsSo() {
    assertThat(WEAR.read("?")).isEqualTo(new Reply.Explain());
    assertThat(WEAR.read("back")).isEqualTo(new Reply.Back());
    assertThat(WEAR.read("b")).isEqualTo(new Reply.Back());
    assertThat(WEAR.read("review")).isEqualTo(new Reply.Review());
    assertThat(WEAR.read("help")).isEqualTo(new Reply.Help());
    assertThat(CAMBER.read("r")).isEqualTo(new Reply.Review());
    assertThat(CAMBER.read("?")).isEqualTo(new Reply.Help());
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "'1,5', 1.5", "-0.25, -0.25", "+2, 2", "10, 10", "-10, -10"})
  void aNumberInRangeIsTakenWithPointOrComma(String typed, double number) {
    assertThat(CAMBER.read(typed)).isEqualTo(new Reply.Measured(number));
    assertThat(CAMBER.check(typed)).isEqualTo(typed + " degrees: in range");
  }

  @ParameterizedTest
  @ValueSource(strings = {"10.01", "-11", "100000"})
  void aNumberOutOfRangeIsRefusedAsItIsTyped(String typed) {
    assertThat(CAMBER.read(typed)).isEqualTo(new Reply.Unclear("It takes -10 to 10 degrees."));
    assertThat(CAMBER.check(typed)).isEqualTo("It takes -10 to 10 degrees.");
  }

  @Test
  void whatIsNoNumberIsNamedWithWhatIsTaken() {
    assertThat(CAMBER.read("1.5.2"))
        .isEqualTo(new Reply.Unclear("\"1.5.2\" is not a number; it takes -10 to 10 degrees."));
    assertThat(CAMBER.read("NaN")).isInstanceOf(Reply.Unclear.class);
    assertThat(CAMBER.read("Infinity")).isInstanceOf(Reply.Unclear.class);
    assertThat(CAMBER.read("")).isEqualTo(new Reply.Unclear("Type a number, -10 to 10 degrees."));
    assertThat(CAMBER.check(" ")).isEmpty();
    assertThat(WEAR.check("9")).isEmpty();
  }

  @Test
  void everyValueOfEveryQuestionIsChosenByItsIdAndByItsNumber() {
    for (Question question : Vocabulary.load().questions()) {
      if (question.numberOnly()) {
        continue;
      }
      Choices choices = Choices.of(question, "", List.of());
      for (int i = 0; i < question.values().size(); i++) {
        Reply chosen = new Reply.Chosen(question.values().get(i).id());
        assertThat(choices.read(question.values().get(i).id())).as(question.id()).isEqualTo(chosen);
        assertThat(choices.read(Integer.toString(i + 1))).as(question.id()).isEqualTo(chosen);
      }
    }
  }

  private static Choices choices(Choice... choices) {
    return new Choices(
        "wear",
        List.of("How do they wear?"),
        List.of(choices),
        Optional.empty(),
        Optional.of("I do not know"),
        true);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"why", "why not camber more", "how", "how caster", "what if water=wet", "rule x"})
  void whatIsAskedInReturnIsNoAnswer(String typed) {
    assertThat(WEAR.read(typed)).isEqualTo(new Reply.Inquiry(typed));
    assertThat(CAMBER.read(typed)).isEqualTo(new Reply.Inquiry(typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"it pushes mid corner", "no understeer any more", "Steering is heavy"})
  void aSentenceIsNoAnswerButIsListenedTo(String typed) {
    assertThat(WEAR.read(typed)).isEqualTo(new Reply.Told(typed));
    assertThat(CAMBER.read(typed)).isEqualTo(new Reply.Told(typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rule", "what", "whyever", "the quick brown fox", "12.5.3"})
  void whatNobodyUnderstandsIsSaidToBeUnclear(String typed) {
    assertThat(WEAR.read(typed)).isInstanceOf(Reply.Unclear.class);
  }
}
