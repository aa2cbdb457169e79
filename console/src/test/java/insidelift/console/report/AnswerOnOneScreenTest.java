package insidelift.console.report;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What has to be read to act fits on one screen and is easily read, whatever the case. */
class AnswerOnOneScreenTest {

  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  private static final List<List<String>> ANSWERS = new ArrayList<>();
  private static final List<String> NAMES = new ArrayList<>();

  @BeforeAll
  static void answerAllCases() throws IOException, CaseProblem {
    Advisor advisor = Advisor.load();
    for (String folder : List.of("whole", "families")) {
      Path cases = Path.of("..", "rules", "cases", folder);
      for (Entry one : CaseLibrary.read(cases, advisor.vocabulary()).entries()) {
        ANSWERS.add(
            new AdviceText(Text.WIDTH)
                .answer(advisor.advise(one.situation()), one.situation())
                .lines());
        NAMES.add(one.name());
      }
    }
  }

  @Test
  void theAnswerToEveryCaseHasTwentyLinesAtMost() {
    assertThat(ANSWERS).hasSizeGreaterThan(300);
    for (int i = 0; i < ANSWERS.size(); i++) {
      // The heading and its rule stand above.
      assertThat(ANSWERS.get(i)).as(NAMES.get(i)).hasSizeLessThanOrEqualTo(AnswerScreen.LINES - 2);
    }
  }

  @Test
  void noLineOfAnAnswerRepeatsAnother() {
    for (int i = 0; i < ANSWERS.size(); i++) {
      Set<String> met = new HashSet<>();
      for (String line : ANSWERS.get(i)) {
        assertThat(met.add(line.substring(Math.min(line.length(), 9)).strip()))
            .as(NAMES.get(i) + ": " + line)
            .isTrue();
      }
    }
  }

  /**
   * The grade of J. P. Kincaid and others, "Derivation of new readability formulas", Naval
   * Technical Training Command, 1975: 0.39 words a sentence + 11.8 syllables a word - 15.59
   * (formula from memory). Syllables are counted as groups of vowels, a silent e at the end not.
   */
  @Test
  void anAnswerReadsLikeASchoolBook() {
    double worst = 0;
    double sum = 0;
    for (List<String> answer : ANSWERS) {
      double grade = grade(answer);
      sum += grade;
      worst = Math.max(worst, grade);
    }
    assertThat(sum / ANSWERS.size()).as("in the middle").isLessThan(6);
    assertThat(worst).as("the hardest").isLessThan(9);
  }

  private static double grade(List<String> answer) {
    String text = String.join(" ", answer.stream().map(line -> line.substring(9)).toList());
    long sentences = text.chars().filter(c -> ".?!:;".indexOf(c) >= 0).count();
    List<String> words = List.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+"));
    double syllables = words.stream().mapToInt(AnswerOnOneScreenTest::syllables).sum();
    return 0.39 * words.size() / Math.max(1, sentences) + 11.8 * syllables / words.size() - 15.59;
  }

  private static int syllables(String word) {
    String spoken = word.replaceFirst("(?<=[^aeiouy])e$", "");
    return (int) Math.max(1, VOWELS.matcher(spoken).results().count());
  }
}
