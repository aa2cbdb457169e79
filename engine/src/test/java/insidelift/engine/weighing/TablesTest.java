package insidelift.engine.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.decision.Facts;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.Reasoned;
import insidelift.rules.RuleBase;
import insidelift.rules.fact.Claim;
import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken.Term;
import insidelift.rules.fact.Sum;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What must hold of the tables as a whole, and of every sum. */
class TablesTest {

  private static final Vocabulary WORDS = Vocabulary.load();
  private static final RuleBase WEIGHING = RuleBase.load();

  private static Reasoned weigh(Map<String, String> answers) {
    return WEIGHING.reason(Facts.of(Situation.of(answers), WORDS));
  }

  /** Answers drawn at random; the same ones each time. */
  private static List<Map<String, String>> some(int count) {
    Random random = new Random(7);
    List<Map<String, String>> some = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<String, String> answers = new LinkedHashMap<>();
      for (Question question : WORDS.questions()) {
        if (random.nextInt(3) > 0) {
          answers.put(
              question.id(), question.values().get(random.nextInt(question.values().size())).id());
        }
      }
      answers.remove("readings");
      some.add(answers);
    }
    return some;
  }

  @Test
  void everyLineStandsOnANoteThatIsThere() {
    NoteBook notes = NoteBook.open(insidelift.engine.units.Units.METRIC);
    assertThat(WEIGHING.index().rules()).hasSizeGreaterThan(200);
    assertThat(WEIGHING.index().rules())
        .allSatisfy(rule -> assertThat(notes.find(rule.note())).as(rule.id()).isPresent());
  }

  @Test
  void claimsAndEvidenceAreAboutFindingsThatAreThere() {
    Set<String> findings = new HashSet<>();
    Set<String> about = new HashSet<>();
    Set<String> on = new HashSet<>();
    Set<String> evidence = new HashSet<>();
    for (Map<String, String> answers : some(200)) {
      Reasoned weighed = weigh(answers);
      weighed.all(Term.class).forEach(term -> findings.add(term.finding()));
      weighed.all(Term.class).forEach(term -> on.add(term.on()));
      weighed.all(Claim.class).forEach(claim -> about.add(claim.on()));
      weighed.all(Evidence.class).forEach(piece -> evidence.add(piece.finding()));
    }
    assertThat(on).containsAll(about);
    assertThat(findings).containsAll(evidence);
    assertThat(evidence).containsAll(without(findings, "far"));
  }

  private static Set<String> without(Set<String> all, String one) {
    return all.stream().filter(word -> !word.equals(one)).collect(Collectors.toSet());
  }

  /** One observation counts once for a finding: it is never told by two lines at a time. */
  @Test
  void noTwoLinesTellOneFindingFromOneObservation() {
    for (Map<String, String> answers : some(300)) {
      List<String> told =
          weigh(answers)
              .all(Evidence.class)
              .map(piece -> piece.finding() + " by " + piece.observation())
              .toList();
      assertThat(told).doesNotHaveDuplicates();
    }
  }

  /** A sum is what its parts come to, but for the loss of a wrong trial, which is capped. */
  @Test
  void everySumIsTheSumOfItsParts() {
    for (Map<String, String> answers : some(300)) {
      Reasoned weighed = weigh(answers);
      for (Sum sum : weighed.sums()) {
        int sure = 0;
        int promised = 0;
        int denied = 0;
        for (Part part : weighed.parts(sum.lever(), sum.direction())) {
          sure += part.disputed() ? 0 : part.points();
          promised += part.disputed() ? Math.max(0, part.points()) : 0;
          denied += part.disputed() ? Math.min(0, part.points()) : 0;
        }
        assertThat(sum.gain()).isEqualTo(sure + promised + Math.max(-Sum.WRONG_TRIAL, denied));
      }
    }
  }

  /** More evidence for a finding never lowers what helps it: here by naming the worst phase. */
  @Test
  void moreEvidenceForAFindingNeverLowersWhatHelpsIt() {
    int seen = 0;
    for (Map<String, String> answers : some(400)) {
      for (String phase : List.of("turn-in", "mid-corner", "exit")) {
        String said = answers.getOrDefault(phase, "good");
        if (said.equals("good")) {
          continue;
        }
        Map<String, String> without = new LinkedHashMap<>(answers);
        without.remove("worst-phase");
        Map<String, String> with = new LinkedHashMap<>(without);
        with.put("worst-phase", phase);
        Reasoned less = weigh(without);
        Reasoned more = weigh(with);
        String finding =
            (phase.equals("turn-in") ? "entry" : phase.equals("exit") ? "exit" : "mid")
                + (said.equals("understeer") ? "-push" : "-slide");
        for (Sum sum : less.sums()) {
          int before = on(finding, less, sum);
          int gain = gain(more, sum);
          if (before > 0) {
            seen++;
            assertThat(gain).as("%s for %s", sum, finding).isGreaterThanOrEqualTo(sum.gain());
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(100);
  }

  private static int on(String finding, Reasoned weighed, Sum sum) {
    return weighed.parts(sum.lever(), sum.direction()).stream()
        .filter(part -> part.finding().equals(finding))
        .mapToInt(Part::points)
        .sum();
  }

  private static int gain(Reasoned weighed, Sum like) {
    return weighed.sums().stream()
        .filter(sum -> sum.lever().equals(like.lever()) && sum.direction().equals(like.direction()))
        .findFirst()
        .orElseThrow()
        .gain();
  }
}
