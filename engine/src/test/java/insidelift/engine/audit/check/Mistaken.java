package insidelift.engine.audit.check;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.notes.Note;
import insidelift.rules.RuleBase;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Knowledge with a mistake made on purpose, and what is asked of it. */
final class Mistaken {

  static final Advisor ADVISOR = Advisor.load();
  static final LocalDate DAY = LocalDate.parse("2026-11-25");
  static final Knowledge SOUND = new Knowledge(ADVISOR, DAY);

  private Mistaken() {}

  static Premise answer(String question, String... values) {
    return new Premise.Told(List.of(question), List.of(values), false);
  }

  static IndexedRule rule(String id, String note, List<Premise> premises, Act... acts) {
    return new IndexedRule(id, note, "", "made-up", 7, "", premises, List.of(acts));
  }

  static Act act(Verb verb, String... words) {
    return new Act(verb, List.of(words));
  }

  /** The knowledge of this build with other rules beside its own. */
  static Knowledge with(IndexedRule... more) {
    List<IndexedRule> rules = new ArrayList<>(SOUND.rules());
    rules.addAll(List.of(more));
    return knowledge(rules);
  }

  static Knowledge without(String id) {
    return knowledge(SOUND.rules().stream().filter(rule -> !rule.id().equals(id)).toList());
  }

  static Knowledge knowledge(List<IndexedRule> rules) {
    return new Knowledge(
        ADVISOR.with(RuleBase.plain(new RuleIndex(1, rules)), ADVISOR.notes()), DAY);
  }

  static Knowledge withNote(Note note) {
    return new Knowledge(
        ADVISOR.with(ADVISOR.rules(), ADVISOR.notes().with(List.of(note), Map.of())), DAY);
  }

  static Note note(
      String id, List<String> sources, boolean disputed, String review, String section) {
    return new Note(
        id,
        "claim",
        "camber",
        "Made up",
        "",
        sources,
        disputed,
        review,
        Map.of("Claim", List.of("Made up."), section, List.of("One side: a", "Other side: b")),
        List.of());
  }

  static void found(List<Remark> remarks, String id, String what) {
    assertThat(remarks)
        .filteredOn(remark -> remark.id().equals(id))
        .singleElement()
        .satisfies(remark -> assertThat(remark.what()).isEqualTo(what));
  }

  static Decided decided(Knowledge knowledge, Situation situation) {
    return knowledge.advisor().decide(situation);
  }

  static Situation situation(String... answers) {
    Situation situation = Situation.UNKNOWN;
    for (int i = 0; i < answers.length; i += 2) {
      situation = situation.with(answers[i], answers[i + 1]);
    }
    return situation;
  }
}
