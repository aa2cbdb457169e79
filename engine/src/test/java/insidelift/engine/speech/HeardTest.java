package insidelift.engine.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.speech.Heard.Proposal;
import insidelift.shared.Vocabulary;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeardTest {

  private static JsonNode sentences() throws IOException {
    try (InputStream in = HeardTest.class.getResourceAsStream("/insidelift/sentences.json")) {
      return JsonMapper.builder().build().readTree(in);
    }
  }

  private static List<String> heard(String sentence) {
    return Heard.hear(sentence).proposed().stream()
        .map(proposal -> proposal.question() + "=" + proposal.value())
        .toList();
  }

  @Test
  void sixtySentencesAreUnderstoodAsMeantOrRefused() throws IOException {
    JsonNode sentences = sentences();
    assertThat(sentences).hasSize(60);
    for (JsonNode sentence : sentences) {
      List<String> meant = new ArrayList<>();
      sentence.get("means").forEach(answer -> meant.add(answer.asText()));

      assertThat(heard(sentence.get("says").asText()))
          .as("%s says: %s", sentence.get("voice").asText(), sentence.get("says").asText())
          .containsExactlyInAnyOrderElementsOf(meant);
    }
  }

  @Test
  void noDenialOfAnySentenceIsHeardAsTheSentence() throws IOException {
    for (JsonNode sentence : sentences()) {
      String says = sentence.get("says").asText().replaceAll("[.;?!]|\\bbut\\b", " ");

      assertThat(heard("it is not true, " + says)).as(says).isEmpty();
      assertThat(heard("never " + says)).as(says).isEmpty();
    }
  }

  @Test
  void everyFrameGivesAnAnswerOfTheVocabularyAndIsMadeOfKnownConcepts() {
    Vocabulary vocabulary = Vocabulary.load();
    Set<String> concepts = Lexicon.load().concepts();
    for (Frames.Frame frame : Frames.load().all()) {
      for (String gives : frame.gives()) {
        String[] sides = gives.split("[=@]", -1);
        switch (sides[0]) {
          case "nothing" -> assertThat(sides).hasSize(1);
          case "ask" -> assertThat(vocabulary.question(sides[1])).as(gives).isPresent();
          case "do" ->
              assertThat(vocabulary.question("exit").orElseThrow().value(sides[1]))
                  .as(gives)
                  .isPresent();
          case "effect" ->
              assertThat(vocabulary.question("last-effect").orElseThrow().value(sides[1]))
                  .as(gives)
                  .isPresent();
          default ->
              assertThat(vocabulary.question(sides[0]).flatMap(q -> q.value(sides[1])))
                  .as(gives)
                  .isPresent();
        }
      }
      frame.needs().forEach(need -> assertThat(concepts).containsAll(need));
      frame.may().forEach(may -> assertThat(concepts).containsAll(may));
    }
  }

  @Test
  void everyAnswerOfTheVocabularyCanBeSaidInWords() {
    Set<String> said = new TreeSet<>();
    Frames.load().all().forEach(frame -> said.addAll(frame.gives()));
    Set<String> missing = new TreeSet<>();
    for (Vocabulary.Question question : Vocabulary.load().questions()) {
      question.values().stream()
          .map(value -> question.id() + "=" + value.id())
          .filter(answer -> !said.contains(answer))
          .forEach(missing::add);
    }

    // Phases, severity and what follows from them are put together by the grammar; time by numbers.
    assertThat(missing)
        .allMatch(
            answer ->
                answer.matches(
                    "(turn-in|mid-corner|exit|severity|worst-phase|first-trouble|time-left)=.*|"
                        + "last-change=other"));
  }

  @Test
  void itSaysFromWhichWordsItConcludes() {
    assertThat(Heard.hear("Pushes mid-corner, lots of rubber down.").proposed())
        .containsExactlyInAnyOrder(
            new Proposal("mid-corner", "understeer", "pushes mid corner"),
            new Proposal("rubber", "rubbered", "lots rubber"));
  }

  @Test
  void whatNamesNoPartOfTheCornerIsAskedForAndNotGuessed() {
    Heard heard = Heard.hear("it pushes");

    assertThat(heard.proposed()).isEmpty();
    assertThat(heard.asks()).containsExactly(Heard.PHASE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "it does not push on entry | it says what is not: say what the kart does",
        "yesterday it pushed on entry | it is about another time: say how it is now",
        "if it rains it pushes on entry | it holds under a condition: say how it is now",
        "in the wet it pushes on entry | it holds under a condition: say how it is now",
        "tomorrow it will be wet | it is about what may come: say how it is now",
        "I want less push on entry | it is a wish: say what the kart does",
        "why does it push on entry? | it asks: say what you see or feel",
        "my friend's kart pushes on entry"
            + " | it is about another kart or what others say: say what yours does",
        "maybe it pushes on entry | it is not sure: say it when you know",
        "it pushes more on entry than on exit | it compares: say how it is now",
        "it slides on entry | it does not say which end: say front or rear",
        "the kart is good | it does not say what is good: say in which part of the corner",
        "it made it worse | it does not say what was changed: say it with the change",
        "it pushes and snaps on wobbulation"
            + " | the word \"wobbulation\" is not known here: say it in other words",
        "track is wet, track is dry | it says both for one question: say which one holds now",
        "250 | it does not say what \"250\" measures: say \"12 minutes left\", \"30 hp\" or"
            + " \"camber -1 degree\"",
        "hello | it does not say what the kart, the driver or the track does"
      })
  void whatIsLeftOutSaysWhyAndWhatToSayInstead(String sentence, String why) {
    Heard heard = Heard.hear(sentence);

    assertThat(heard.proposed()).isEmpty();
    assertThat(heard.leftOut()).extracting(Heard.LeftOut::why).contains(why);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 minutes left | {minutes=[12.0]}",
        "half an hour to the final | {minutes=[30.0]}",
        "camber left -1 and right -0.5 | {camber-left=[-1.0], camber-right=[-0.5]}",
        "one degree of negative camber, caster 2 | {camber=[-1.0], caster=[2.0]}",
        "front temps 78 70 61 | {front-temps=[78.0, 70.0, 61.0]}",
        "he is 9 years old | {age=[9.0]}",
        "the chassis is 9 years old | {}",
        "we drove 12 minutes | {}",
        "rear temps 78 70 61 | {}",
        "we added 1 degree of camber | {}"
      })
  void numbersCountWhereItIsSaidWhatTheyMeasure(String sentence, String numbers) {
    assertThat(Heard.hear(sentence).numbers()).hasToString(numbers);
  }

  /** 30 hp of 550 ft lbf/s are 22.37 kW: just below the 23 kW at which high power begins. */
  @Test
  void horsepowerIsPower() {
    Heard heard = Heard.hear("it has 30 hp");

    assertThat(heard.numbers().get("power-kw").get(0)).isCloseTo(22.37, within(0.01));
    assertThat(heard("it has 30 hp")).containsExactly("power=mid");
  }

  @Test
  void aMisspeltWordIsStillTheWordAndAnotherWordIsNone() {
    assertThat(heard("understere at the apex")).containsExactly("mid-corner=understeer");
    assertThat(heard("oversteeer on the entryy")).containsExactly("turn-in=oversteer");
    assertThat(heard("underwear at the apex")).isEmpty();
  }

  @Test
  void aLongLineTakesNoLongerThanASentence() {
    String line = "the front pushes on entry and the rear slides, camber -1, ".repeat(400);

    assertTimeout(Duration.ofSeconds(5), () -> Heard.hear(line));
  }

  @Test
  void controlCharactersAreHarmless() {
    Heard heard = Heard.hear("pushes\u001b[31m on\u0000 entry\u202e, \u0007banana\u0007");

    assertThat(heard.toString()).doesNotContainPattern("[\\p{Cc}\\p{Cf}]");
    assertThat(Heard.hear("").proposed()).isEmpty();
    assertThat(Heard.hear("x".repeat(1_000_000)).proposed()).isEmpty();
  }

  /**
   * Words of the trade, of nobody, and signs, in any order: each is heard or left out, none breaks.
   */
  @Test
  void whateverIsTypedIsHeardOrLeftOut() throws IOException {
    List<String> words =
        new ArrayList<>(List.of("iò", "?", ",", ".", "…", "\u202e", "1,5", "78/70/61", "-", "'"));
    for (JsonNode sentence : sentences()) {
      words.addAll(List.of(sentence.get("says").asText().split(" ", -1)));
    }
    Random random = new Random(20261128);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder said = new StringBuilder();
      for (int many = random.nextInt(12); many >= 0; many--) {
        said.append(words.get(random.nextInt(words.size())))
            .append(random.nextInt(9) == 0 ? "" : " ");
      }
      String line = said.toString();
      assertThatCode(() -> Heard.hear(line)).as(line).doesNotThrowAnyException();
    }
  }
}
