package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.notes.NoteBook;
import insidelift.engine.training.card.Lessons;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Everything that is asked and told, measured: the school grade at which a text reads easily, by
 * the formula of Kincaid and others (1975), 0.39 words a sentence + 11.8 syllables a word - 15.59.
 */
class ReadingGradeTest {

  /** What a reader of fourteen takes in at one go, also with cold hands. */
  private static final double PLAIN = 9;

  /** A sentence longer than this is read twice. */
  private static final int LONGEST = 40;

  /**
   * Texts above the grade: claims that are one condition and one change, which is clearer in one
   * sentence than in two. A new text does not come in here without a second look.
   */
  private static final Set<String> ALLOWED =
      Set.of(
          "note camber-dispute: Claim",
          "note camber-front-weak: Claim",
          "note camber-inner-hot: Claim",
          "note camber-outer-hot: Claim",
          "note camber-rear-loose: Claim",
          "note caster-dusty-more: Claim",
          "note caster-heavy-less: Claim",
          "note caster-positive: Why",
          "note caution-defer: Caution",
          "note caution-rules: Caution",
          "title camber-feathered");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern WORD = Pattern.compile("[A-Za-z]+(?:['-][A-Za-z]+)*");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  @Test
  void theMeasureAgreesWithCountingByHand() {
    // 6 words, 6 syllables, 1 sentence: 2.34 + 11.8 - 15.59.
    assertThat(grade("The cat sat on the mat.")).isCloseTo(-1.45, within(0.01));
    assertThat(syllables("oversteer")).isEqualTo(3);
    assertThat(syllables("caster")).isEqualTo(2);
    assertThat(syllables("tyre")).isEqualTo(1);
    assertThat(syllables("table")).isEqualTo(2);
  }

  @Test
  void whatUsersReadIsPlainOrNamedAsAnException() {
    Map<String, String> hard = new TreeMap<>();
    texts()
        .forEach(
            (name, text) -> {
              double grade = grade(text);
              if (words(text) >= 8 && grade > PLAIN) {
                hard.put(name, "%.1f: %s".formatted(grade, text));
              }
            });
    assertThat(hard.keySet()).as("%s", hard).isEqualTo(ALLOWED);
  }

  @Test
  void noSentenceHasToBeReadTwice() {
    texts()
        .forEach(
            (name, text) -> {
              for (String sentence : text.split("(?<=[.!?;:])\\s+", -1)) {
                assertThat(words(sentence)).as("%s: %s", name, sentence).isLessThan(LONGEST);
              }
            });
  }

  @Test
  void everyQuestionFitsTwoLinesAndSaysWhyInFiveWords() {
    for (Question question : Vocabulary.load().questions()) {
      assertThat(question.ask().length()).as(question.ask()).isLessThan(100);
      assertThat(question.ask()).endsWith("?");
      assertThat(words(question.why())).as(question.why()).isBetween(2, 5);
      for (Value value : question.values()) {
        assertThat(value.words().length()).as(value.words()).isLessThan(60);
      }
    }
  }

  /** What stands in the code of the console itself: prompts, errors, help. */
  @Test
  void whatTheConsoleSaysIsPlainOrNamedAsAnException() throws IOException {
    Set<String> hard = new TreeSet<>();
    int seen = 0;
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        String code = Files.readString(file).replace("'\"'", "").replaceAll("\"\\s*\\+\\s*\"", "");
        for (Matcher said = LITERAL.matcher(code); said.find(); ) {
          seen += words(said.group(1)) >= 8 ? 1 : 0;
          if (words(said.group(1)) >= 8 && grade(said.group(1)) > PLAIN) {
            hard.add(said.group(1));
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(100);
    assertThat(hard)
        .containsExactlyInAnyOrder(
            "  insidelift advise my-case.json           answers for a file",
            "Lateral acceleration at which the inside rear leaves the ground, ",
            "It is no substitute for the chassis maker's manual, the rule book or a competent"
                + " person.");
  }

  private static Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (Question question : Vocabulary.load().questions()) {
      texts.put("ask " + question.id(), question.ask());
      for (Value value : question.values()) {
        texts.put("value " + question.id() + "." + value.id(), value.words());
        if (value.said() != null) {
          texts.put("said " + question.id() + "." + value.id(), value.said());
        }
      }
    }
    Vocabulary.load().findings().forEach(f -> texts.put("finding " + f.id(), f.words()));
    NoteBook notes = NoteBook.open();
    for (String id : notes.ids()) {
      texts.put("title " + id, notes.note(id).title());
      notes
          .note(id)
          .sections()
          .forEach(
              (heading, blocks) -> {
                // What is told in a lesson's question is answers, shown in the vocabulary's words.
                if (!heading.equals(Lessons.ASK) && !heading.equals(Lessons.ASK_FIRST)) {
                  texts.put("note " + id + ": " + heading, prose(blocks));
                }
              });
    }
    return texts;
  }

  /** List items are sentences, whether or not they end in a point. */
  private static String prose(Iterable<String> blocks) {
    StringBuilder prose = new StringBuilder();
    for (String block : blocks) {
      prose.append(prose.isEmpty() ? "" : " ").append(block);
      if (!block.matches(".*[.!?:;]$")) {
        prose.append('.');
      }
    }
    return prose.toString();
  }

  private static double grade(String text) {
    int words = 0;
    int syllables = 0;
    for (Matcher word = WORD.matcher(text); word.find(); ) {
      words++;
      syllables += syllables(word.group());
    }
    int sentences = Math.max(1, text.split("[.!?;:](?=\\s|$)").length);
    return words == 0 ? 0 : 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
  }

  private static int words(String text) {
    return (int) WORD.matcher(text).results().count();
  }

  private static int syllables(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    int groups = (int) VOWELS.matcher(small).results().count();
    boolean mute = small.matches(".*[^aeiouyl]e") || small.matches(".*[^aeiouytd]ed");
    return Math.max(1, mute ? groups - 1 : groups);
  }

  private static Offset<Double> within(double offset) {
    return Offset.offset(offset);
  }
}
