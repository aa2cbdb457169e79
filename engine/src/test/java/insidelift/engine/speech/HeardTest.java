package insidelift.engine.speech;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.speech.Heard.Proposal;
import insidelift.shared.Vocabulary;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

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
  void everySynonymStandsForAnAnswerOfTheVocabulary() {
    Vocabulary vocabulary = Vocabulary.load();
    for (List<String> answer : Ear.ofThisBuild().answers()) {
      assertThat(vocabulary.question(answer.get(0)).flatMap(q -> q.value(answer.get(1))))
          .as("%s", answer)
          .isPresent();
    }
  }

  /** A phrase that the grammar takes apart before it is looked up would be dead. */
  @Test
  void everyPhraseOfTheNewerQuestionsIsHeardAsItsAnswer() {
    Set<String> questions =
        Set.of(
            "first-trouble",
            "grip-overall",
            "hop-when",
            "braking",
            "line",
            "driver-state",
            "rear-wear",
            "air",
            "toe-now",
            "no-response",
            "rear-room");
    JsonNode answers = Ear.data().get("answers");
    for (String question : questions) {
      assertThat(answers.get(question)).as(question).isNotNull();
      answers
          .get(question)
          .properties()
          .forEach(
              value ->
                  value
                      .getValue()
                      .forEach(
                          phrase ->
                              assertThat(heard(phrase.asText()))
                                  .as(phrase.asText())
                                  .containsExactly(question + "=" + value.getKey())));
    }
  }

  @Test
  void itSaysFromWhichWordsItConcludes() {
    assertThat(Heard.hear("Pushes mid-corner, lots of rubber down.").proposed())
        .containsExactly(
            new Proposal("mid-corner", "understeer", "pushes mid-corner"),
            new Proposal("rubber", "rubbered", "rubber down"));
  }

  @Test
  void whatNamesNoPartOfTheCornerIsAskedForAndNotGuessed() {
    Heard heard = Heard.hear("it pushes");

    assertThat(heard.proposed()).isEmpty();
    assertThat(heard.refused().get(0).why())
        .isEqualTo("it does not say in which part of the corner");
  }

  @Test
  void whatItDoesNotKnowItSays() {
    assertThat(Heard.hear("the banana is ripe").notUnderstood())
        .containsExactly("the banana is ripe");
  }

  @Test
  void controlCharactersAreHarmless() {
    Heard heard = Heard.hear("pushes\u001b[31m on\u0000 entry\u202e, \u0007banana\u0007");

    assertThat(heard.toString()).doesNotContainPattern("[\\p{Cc}\\p{Cf}]");
    assertThat(Heard.hear("").proposed()).isEmpty();
    assertThat(Heard.hear("x".repeat(1_000_000)).proposed()).isEmpty();
  }
}
