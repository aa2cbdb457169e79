package insidelift.shared.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Answer;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import org.junit.jupiter.api.Test;

/** What a case file may say, and the sentence that answers everything else. */
class CaseReaderTest {

  private static final Vocabulary VOCABULARY = Vocabulary.load();
  private static final String KART_KEYS =
      "baseline, before, camber, caster, eccentrics, geometry, levers";

  private static Situation read(String text) throws CaseProblem {
    return new CaseReader(VOCABULARY).read(text);
  }

  private static String answers(String answers) {
    return "{\"schema\": 1, \"answers\": {" + answers + "}}";
  }

  private static String kart(String kart) {
    return "{\"schema\": 1, \"kart\": {" + kart + "}}";
  }

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(CaseProblem.class).hasMessage(message);
  }

  @Test
  void answersAreReadByTheirWords() throws Exception {
    Situation wet = read(answers("\"water\": \"wet\", \"turn-in\": \"good\""));

    assertThat(wet.answer("water")).contains("wet");
    assertThat(wet.facts(VOCABULARY))
        .containsExactly(new Answer("water", "wet", false), new Answer("turn-in", "good", false));
  }

  @Test
  void unknownIsNoAnswer() throws Exception {
    Situation nothing = read(answers("\"water\": \"unknown\", \"powerKw\": \"unknown\""));

    assertThat(nothing.facts(VOCABULARY)).isEmpty();
    assertThat(nothing.declined()).containsExactly("water");
  }

  @Test
  void aFileWithoutAnswersOrKartIsLegal() throws Exception {
    assertThat(read("{\"schema\": 1}")).isEqualTo(Situation.UNKNOWN);
  }

  @Test
  void everyQuestionTakesUnknownAndRefusesANumberOrAnotherWord() throws Exception {
    for (Question question : VOCABULARY.questions()) {
      String key = question.id();
      assertThat(read(answers('"' + key + "\": \"unknown\"")).answers()).isEmpty();
      if (!question.numberOnly()) {
        refused(
            answers('"' + key + "\": 3"),
            "answers." + key + ": this must be a word in quotation marks, but it is the number 3");
        refused(
            answers('"' + key + "\": \"soaked\""),
            "answers.%s: \"soaked\" is not one of %s"
                .formatted(
                    key, String.join(", ", question.values().stream().map(v -> v.id()).toList())));
      }
    }
  }

  @Test
  void anUnknownValueIsRefusedWithTheLegalOnes() {
    refused(
        answers("\"water\": \"soaked\""),
        "answers.water: \"soaked\" is not one of dry, damp, wet, standing");
    refused(
        answers("\"water\": \"Wet\""),
        "answers.water: \"Wet\" is not one of dry, damp, wet, standing");
    refused(
        answers("\"water\": \"\""), "answers.water: \"\" is not one of dry, damp, wet, standing");
  }

  @Test
  void anUnknownKeyIsRefusedAtItsPlace() {
    assertThatThrownBy(() -> read(answers("\"weather\": \"wet\"")))
        .isInstanceOf(CaseProblem.class)
        .hasMessageStartingWith(
            "answers: \"weather\" is not a key here; the keys are adjustable, air, alignment, axle,")
        .hasMessageEndingWith("tyres, water, worst-phase");
    refused(
        "{\"schema\": 1, \"answer\": {}}",
        "\"answer\" is not a key here; the keys are answers, history, kart, schema");
    refused(kart("\"toe\": 1"), "kart: \"toe\" is not a key here; the keys are " + KART_KEYS);
    refused(
        kart("\"camber\": {\"left\": 0, \"right\": 0, \"mid\": 0}"),
        "kart.camber: \"mid\" is not a key here; the keys are left, right");
    refused(
        kart("\"caster\": {\"left\": 0, \"right\": 0, \"zero\": 0}"),
        "kart.caster: \"zero\" is not a key here; the keys are left, neutral, reference, right");
    refused(
        kart("\"eccentrics\": {\"camber\": 1}"),
        "kart.eccentrics: \"camber\" is not a key here; the keys are anglesDeg, bottomTable,"
            + " camberOnly, camberPerPosition, casterPerPosition, now, pivotSpacingMm, pivots,"
            + " positions, table, throwMm");
  }

  @Test
  void everyWrongTypeIsNamedAsItIs() {
    String word = "answers.water: this must be a word in quotation marks, but it is ";
    refused(answers("\"water\": true"), word + "true");
    refused(answers("\"water\": null"), word + "null");
    refused(answers("\"water\": 1.5"), word + "the number 1.5");
    refused(answers("\"water\": [\"wet\"]"), word + "a list");
    refused(answers("\"water\": {}"), word + "an object");
    refused(
        answers("\"powerKw\": \"20\""), "answers.powerKw: this must be a number, but it is \"20\"");
    refused(
        answers("\"time-left\": [20]"),
        "answers.time-left: this must be a number, but it is a list");
    refused("[]", "this must be an object in braces, but it is a list");
    refused("7", "this must be an object in braces, but it is the number 7");
    refused("\"wet\"", "this must be an object in braces, but it is \"wet\"");
    refused("null", "this must be an object in braces, but it is null");
    refused(
        "{\"schema\": 1, \"answers\": []}",
        "answers: this must be an object in braces, but it is a list");
    refused(
        "{\"schema\": 1, \"answers\": null}",
        "answers: this must be an object in braces, but it is null");
    refused(
        "{\"schema\": 1, \"kart\": \"blue\"}",
        "kart: this must be an object in braces, but it is \"blue\"");
    refused(
        kart("\"camber\": 1"),
        "kart.camber: this must be an object in braces, but it is the number 1");
    refused(
        kart("\"camber\": {\"left\": \"0\", \"right\": 0}"),
        "kart.camber.left: this must be a number, but it is \"0\"");
    refused(kart("\"geometry\": 1"), "kart.geometry: this must be an object in braces");
    refused(
        kart("\"eccentrics\": []"),
        "kart.eccentrics: this must be an object in braces, but it is a list");
  }

  @Test
  void anotherSchemaIsRefused() {
    refused("{\"schema\": 2}", "schema: 2 is not known; this build reads schema 1");
    refused("{\"schema\": \"1\"}", "schema: \"1\" is not known; this build reads schema 1");
    refused("{\"schema\": 1.0}", "schema: 1.0 is not known; this build reads schema 1");
    refused(
        "{\"schema\": 18446744073709551617}",
        "schema: 18446744073709551617 is not known; this build reads schema 1");
    refused("{\"schema\": null}", "schema: null is not known; this build reads schema 1");
  }

  @Test
  void theSchemaMayBeLeftOut() throws CaseProblem {
    CaseReader reader = new CaseReader(Vocabulary.load());
    assertThat(reader.read("{}")).isEqualTo(Situation.UNKNOWN);
    assertThat(reader.read("{\"answers\": {\"water\": \"wet\"}}"))
        .isEqualTo(reader.read("{\"schema\": 1, \"answers\": {\"water\": \"wet\"}}"));
  }

  @Test
  void numbersOutOfRangeAreRefusedWithTheirRange() {
    refused(answers("\"powerKw\": 0.9"), "answers.powerKw: 0.9 is outside 1 to 60 kW");
    refused(answers("\"powerKw\": 61"), "answers.powerKw: 61 is outside 1 to 60 kW");
    refused(answers("\"powerKw\": 1e999"), "answers.powerKw: Infinity is outside 1 to 60 kW");
    refused(answers("\"time-left\": -1"), "answers.time-left: -1 is outside 0 to 1440 minutes");
    refused(answers("\"time-left\": 1441"), "answers.time-left: 1441 is outside 0 to 1440 minutes");
    refused(
        kart("\"camber\": {\"left\": 10.5, \"right\": 0}"),
        "kart.camber.left: 10.5 is outside -10 to 10 degrees");
    refused(
        kart("\"caster\": {\"left\": 0, \"right\": -41}"),
        "kart.caster.right: -41 is outside -40 to 40 degrees");
    refused(
        kart("\"caster\": {\"left\": 0, \"right\": 0, \"neutral\": 99}"),
        "kart.caster.neutral: 99 is outside -40 to 40 degrees");
    refused(
        kart("\"eccentrics\": {\"casterPerPosition\": 0}"),
        "kart.eccentrics.casterPerPosition: 0 is outside 0.05 to 5 degrees");
    refused(
        kart("\"eccentrics\": {\"camberPerPosition\": 6}"),
        "kart.eccentrics.camberPerPosition: 6 is outside 0.05 to 5 degrees");
  }

  @Test
  void bothEndsOfARangeAreLegal() throws Exception {
    assertThat(read(answers("\"powerKw\": 1")).numbers()).containsEntry("power", 1.0);
    assertThat(read(answers("\"powerKw\": 60")).answer("power")).contains("high");
    assertThat(read(kart("\"camber\": {\"left\": -10, \"right\": -10}")).kart().camber())
        .contains(Sides.both(Degrees.of(-10)));
  }

  @Test
  void aPairNeedsBothSides() {
    refused(kart("\"camber\": {\"left\": 0}"), "kart.camber: the key \"right\" is missing");
    refused(
        kart("\"caster\": {\"reference\": \"neutral\", \"right\": 0}"),
        "kart.caster: the key \"left\" is missing");
  }

  @Test
  void theReferenceOfCasterIsNeutralOrAbsolute() throws Exception {
    refused(
        kart("\"caster\": {\"left\": 0, \"right\": 0, \"reference\": \"ground\"}"),
        "kart.caster.reference: \"ground\" is not one of neutral, absolute");
    Kart kart =
        read(kart(
                "\"caster\": {\"left\": 14, \"right\": 14, \"reference\": \"absolute\","
                    + " \"neutral\": 12}"))
            .kart();
    assertThat(kart.absolute()).isTrue();
    assertThat(kart.casterFromNeutral()).contains(Degrees.of(2));
    assertThat(read(kart("\"caster\": {\"left\": 1, \"right\": 1}")).kart().absolute()).isFalse();
  }

  @Test
  void theKartsOwnStepsAndGeometryAreKept() throws Exception {
    Kart kart =
        read(kart("\"eccentrics\": {\"camberPerPosition\": 0.4}, \"geometry\": {\"any\": 1}"))
            .kart();
    assertThat(kart.eccentrics()).isEqualTo(new Eccentrics(Degrees.of(0.4), null));
    assertThat(kart.geometry().orElseThrow().path("any").asInt()).isEqualTo(1);
    assertThat(kart.camber()).isEmpty();
  }

  @Test
  void kilowattsCountAsAClassOfPower() throws Exception {
    assertThat(read(answers("\"powerKw\": 12.9")).answer("power")).contains("low");
    assertThat(read(answers("\"powerKw\": 13")).answer("power")).contains("mid");
    assertThat(read(answers("\"powerKw\": 22.9")).answer("power")).contains("mid");
    assertThat(read(answers("\"powerKw\": 23")).answer("power")).contains("high");
    assertThat(read(answers("\"power\": \"mid\", \"powerKw\": 20")).answer("power"))
        .contains("mid");
  }

  @Test
  void aClassThatContradictsItsKilowattsIsRefused() {
    refused(
        answers("\"power\": \"low\", \"powerKw\": 23"),
        "answers.power: \"low\" contradicts powerKw 23, which counts as \"high\"");
  }

  @Test
  void aGearboxCountsAsHighPower() throws Exception {
    assertThat(read(answers("\"gearbox\": \"gears\"")).answer("power")).contains("high");
    assertThat(read(answers("\"gearbox\": \"gears\", \"powerKw\": 12")).answer("power"))
        .contains("high");
    assertThat(read(answers("\"gearbox\": \"none\", \"powerKw\": 12")).answer("power"))
        .contains("low");
    refused(
        answers("\"gearbox\": \"gears\", \"power\": \"mid\""),
        "answers.power: \"mid\" contradicts gearbox \"gears\", which counts as \"high\"");
  }

  @Test
  void minutesCountAsTimeLeft() throws Exception {
    assertThat(read(answers("\"time-left\": 19")).answer("time-left")).contains("short");
    assertThat(read(answers("\"time-left\": 20")).answer("time-left")).contains("tight");
    assertThat(read(answers("\"time-left\": 29")).answer("time-left")).contains("tight");
    assertThat(read(answers("\"time-left\": 30")).answer("time-left")).contains("enough");
    refused(
        answers("\"time-left\": \"short\""),
        "answers.time-left: this must be a number, but it is \"short\"");
  }

  @Test
  void theKartsReadingsAnswerWhetherItsSidesAreEqual() throws Exception {
    assertThat(readings("0.25")).contains(new Answer("readings", "equal", false));
    assertThat(readings("0.26")).contains(new Answer("readings", "differ", false));
    assertThat(read(kart("\"eccentrics\": {}")).facts(VOCABULARY)).isEmpty();
  }

  private static java.util.List<Answer> readings(String right) throws CaseProblem {
    return read(kart("\"camber\": {\"left\": 0, \"right\": " + right + "}")).facts(VOCABULARY);
  }

  @Test
  void anEqualThatTheReadingsContradictIsRefused() {
    refused(
        "{\"schema\": 1, \"answers\": {\"readings\": \"equal\"},"
            + " \"kart\": {\"caster\": {\"left\": 0, \"right\": 0.5}}}",
        "answers.readings: \"equal\" contradicts the kart's own readings, whose sides differ by"
            + " more than 0.25°");
  }
}
