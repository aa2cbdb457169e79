package insidelift.shared;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of the trade are all there, and nothing that files use can vanish unseen. */
class VocabularyTest {

  private static final String PHASES = "understeer good oversteer";

  /** Every question of the design with its values. */
  private static final Map<String, String> DESIGN =
      Map.ofEntries(
          entry("water", "dry damp wet standing"),
          entry("trend", "steady drying raining"),
          entry("rubber", "dusty normal rubbered"),
          entry("power", "low mid high"),
          entry("driver-strength", "limited average strong"),
          entry("steering-weight", "light fine heavy vague darty"),
          entry("turn-in", PHASES),
          entry("mid-corner", PHASES),
          entry("exit", PHASES),
          entry("severity", "slight clear severe"),
          entry("inside-rear", "lifts stays-down"),
          entry("pull", "none left right"),
          entry("corner-speed", "slow mixed fast"),
          entry("corners", "both-ways left-only right-only"),
          entry("exit-drive", "clean bogs"),
          entry("straight-speed", "matches down"),
          entry("hop", "none hops two-wheels"),
          entry("run-phase", "whole-run first-laps builds-up"),
          entry("front-wear", "even feathered inner-edge outer-edge sides-differ"),
          entry(
              "front-temps",
              "even inner-hot outer-hot middle-hot edges-hot all-hot all-cold sides-differ"),
          entry("tyres", "slicks wets"),
          entry("tyre-life", "used fresh worn"),
          entry("pressures", "set unequal not-set"),
          entry("alignment", "checked hit-something"),
          entry("play", "none some"),
          entry("adjustable", "both camber-only caster-only none"),
          entry(
              "last-change",
              "none camber-more camber-less caster-more caster-less front-width rear-width"
                  + " pressures toe hubs-axle seat other"),
          entry("last-effect", "better same worse"));

  /** What the knowledge needed beyond it. */
  private static final Map<String, String> ADDED =
      Map.ofEntries(
          entry("fixings", "tight loose"),
          entry("kingpin", "true bent"),
          entry("lock", "free binds unequal"),
          entry("axle", "straight bent"),
          entry("brake", "free drags"),
          entry("tyre-set", "matched mixed"),
          entry("readings", "equal differ"),
          entry("worst-phase", "turn-in mid-corner exit"),
          entry("tiring", "no yes"),
          entry("gearbox", "none gears"),
          entry("setup-for", "dry wet"),
          entry("toe-now", "in-range out-of-range not-measured"),
          entry("first-trouble", "one-only slides-then-pushes pushes-then-snaps"),
          entry("braking", "off on locks"),
          entry("grip-overall", "one-end slides-everywhere stuck-everywhere floats"),
          entry("hop-when", "correcting throttle bumps whole-corner"),
          entry("driver-state", "calm uneasy frightened"),
          entry("no-response", "no yes"),
          entry("rear-wear", "even coned"),
          entry("line", "clean corrects holds-lock"),
          entry("gauge", "none simple laser"),
          entry("rear-room", "room at-limit"),
          entry("air", "alike colder hotter"),
          entry("time-left", "short tight enough"));

  private final Vocabulary vocabulary = Vocabulary.load();

  private Map<String, String> table() {
    return vocabulary.questions().stream()
        .collect(
            Collectors.toMap(
                Question::id,
                question ->
                    question.values().stream().map(Value::id).collect(Collectors.joining(" "))));
  }

  private Set<String> values(java.util.function.Predicate<Value> which) {
    return vocabulary.questions().stream()
        .flatMap(
            question ->
                question.values().stream()
                    .filter(which)
                    .map(value -> question.id() + ": " + value.id()))
        .collect(Collectors.toSet());
  }

  @Test
  void everyQuestionOfTheDesignIsThereWithItsValues() {
    assertThat(table()).containsAllEntriesOf(DESIGN);
  }

  @Test
  void nothingIsThereThatIsNotWrittenDownHere() {
    assertThat(table()).containsAllEntriesOf(ADDED).hasSize(DESIGN.size() + ADDED.size());
  }

  @Test
  void unknownIsNoValueOfItsOwn() {
    assertThat(vocabulary.questions())
        .allSatisfy(question -> assertThat(question.value(Vocabulary.UNKNOWN)).isEmpty());
  }

  @Test
  void everyQuestionIsAskedInOneSentenceThatFitsALine() {
    assertThat(vocabulary.questions())
        .allSatisfy(
            question ->
                assertThat(question.ask())
                    .as(question.id())
                    .endsWith("?")
                    .hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void everyQuestionSaysWhyInFiveWordsAtMost() {
    assertThat(vocabulary.questions())
        .allSatisfy(
            question ->
                assertThat(question.why().split(" ")).as(question.id()).hasSizeBetween(2, 5));
  }

  @Test
  void everyValueHasPlainWords() {
    assertThat(vocabulary.questions())
        .flatExtracting(Question::values)
        .allSatisfy(value -> assertThat(value.words()).as(value.id()).isNotBlank());
  }

  @Test
  void everyQuestionsFirstNoteIsItsOwnAndAllItsNotesExist() {
    Path terms = Path.of("..", "knowledge-notes", "terms");
    assertThat(vocabulary.questions())
        .allSatisfy(
            question -> {
              assertThat(question.notes()).first().isEqualTo(question.id());
              assertThat(question.notes())
                  .allSatisfy(note -> assertThat(terms.resolve(note + ".md")).exists());
            });
  }

  @Test
  void everyTermIsAQuestionsOrOneOfItsWords() throws Exception {
    Set<String> asked =
        vocabulary.questions().stream()
            .flatMap(question -> question.notes().stream())
            .collect(Collectors.toSet());
    try (Stream<Path> terms = Files.list(Path.of("..", "knowledge-notes", "terms"))) {
      assertThat(terms.map(file -> file.getFileName().toString().replace(".md", "")))
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(
                      asked.stream(),
                      Stream.of("powerKw", "toe-words", "load-model", "fit-my-kart"))
                  .toList());
    }
  }

  @Test
  void theSafetyScreenHoldsTheFaultsThatCanBeSeenOnTheStand() {
    assertThat(vocabulary.questions().stream().filter(Question::safety).map(Question::id))
        .containsExactly(
            "play",
            "fixings",
            "hop",
            "alignment",
            "pull",
            "kingpin",
            "lock",
            "axle",
            "brake",
            "tyre-set",
            "tyre-life",
            "pressures",
            "readings");
  }

  @Test
  void everyFaultOnTheSafetyScreenIsSaidAsAStatement() {
    assertThat(vocabulary.questions().stream().filter(Question::safety))
        .flatExtracting(Question::values)
        .filteredOn(Value::fault)
        .allSatisfy(value -> assertThat(value.said()).as(value.words()).isNotBlank());
  }

  @Test
  void theComplaintsAreTheseAndNoOthers() {
    assertThat(values(Value::complaint))
        .containsExactlyInAnyOrder(
            "hop: hops",
            "turn-in: understeer",
            "turn-in: oversteer",
            "mid-corner: understeer",
            "mid-corner: oversteer",
            "exit: understeer",
            "exit: oversteer",
            "exit-drive: bogs",
            "straight-speed: down",
            "steering-weight: heavy",
            "tiring: yes",
            "grip-overall: slides-everywhere",
            "grip-overall: stuck-everywhere",
            "grip-overall: floats",
            "steering-weight: vague",
            "steering-weight: darty",
            "rear-wear: coned",
            "front-wear: feathered",
            "front-wear: inner-edge",
            "front-wear: outer-edge",
            "front-temps: inner-hot",
            "front-temps: outer-hot",
            "front-temps: middle-hot",
            "front-temps: edges-hot",
            "front-temps: all-hot",
            "front-temps: all-cold");
  }

  @Test
  void anAnswerKnowsWhetherItIsAComplaint() {
    assertThat(vocabulary.answer("exit", "oversteer"))
        .isEqualTo(new Answer("exit", "oversteer", true));
    assertThat(vocabulary.answer("exit", "good")).isEqualTo(new Answer("exit", "good", false));
  }

  @Test
  void anAnswerOutsideTheVocabularyIsRefused() {
    assertThatThrownBy(() -> vocabulary.answer("exit", "soaked"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no such answer: exit: soaked");
    assertThatThrownBy(() -> vocabulary.answer("weather", "wet"))
        .hasMessage("no such answer: weather: wet");
  }

  @Test
  void everyFindingHasWordsOfItsOwn() {
    assertThat(vocabulary.findings()).extracting(FindingWord::words).doesNotHaveDuplicates();
    assertThat(vocabulary.findings())
        .extracting(FindingWord::id)
        .containsExactly(
            "entry-push",
            "entry-slide",
            "entry-good",
            "mid-push",
            "mid-slide",
            "mid-good",
            "exit-push",
            "exit-slide",
            "exit-good",
            "heavy",
            "inner-edge",
            "outer-edge",
            "overworked",
            "even",
            "cold",
            "hop",
            "slow-straight",
            "binding",
            "far",
            "middle-hot",
            "edges-hot",
            "under-gripped",
            "over-gripped",
            "cold-day",
            "hot-day",
            "grows",
            "rear-coned",
            "vague",
            "darty");
    assertThat(vocabulary.finding("heavy")).isPresent();
    assertThat(vocabulary.finding("tired")).isEmpty();
  }

  @Test
  void numbersFallIntoTheirBands() {
    // Bands of power: provisional; class powers as reported in kartracingonline.com.
    List<String> power = Stream.of(1, 12.9, 13, 22.9, 23, 60).map(this::power).toList();
    assertThat(power).containsExactly("low", "low", "mid", "mid", "high", "high");
    List<String> time = Stream.of(0, 19, 20, 29, 30, 1440).map(this::timeLeft).toList();
    assertThat(time).containsExactly("short", "short", "tight", "tight", "enough", "enough");
  }

  private String power(Number kilowatts) {
    return band("power", kilowatts);
  }

  private String timeLeft(Number minutes) {
    return band("time-left", minutes);
  }

  private String band(String question, Number number) {
    return vocabulary.question(question).orElseThrow().number().valueFor(number.doubleValue());
  }

  @Test
  void theWordsOfTheBandsSayTheirLimits() {
    assertThat(vocabulary.question("power").orElseThrow().values())
        .extracting(Value::words)
        .satisfies(words -> assertThat(words.get(0)).contains("under 13 kW"))
        .satisfies(words -> assertThat(words.get(1)).contains("13 to 23 kW"));
    assertThat(vocabulary.question("time-left").orElseThrow().values())
        .extracting(Value::words)
        .containsExactly("under 20 minutes", "20 to 29 minutes", "30 minutes or more");
  }
}
