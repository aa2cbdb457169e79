package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.AdviceJson;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.casefile.JsonOutput;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The quick writer against data binding, which writes what the records' own shape says. */
class AdviceJsonTest {

  private static final Advisor ADVISOR = Advisor.load();

  private static void same(Advice advice) {
    assertThat(AdviceJson.of(advice)).isEqualTo(JsonOutput.pretty(advice));
  }

  @Test
  void everyCaseIsWrittenAsDataBindingWritesIt() {
    List<Entry> all =
        Stream.of(CaseFiles.WHOLE, CaseFiles.FAMILIES)
            .flatMap(folder -> CaseFiles.read(folder).stream())
            .toList();
    assertThat(all).hasSizeGreaterThan(120);
    for (Entry one : all) {
      same(ADVISOR.advise(one.situation()));
    }
  }

  @Test
  void soIsWhatIsComputedForTheKartsOwnWashers() throws Exception {
    Situation measured =
        new CaseReader(ADVISOR.vocabulary())
            .read(
                """
                {"schema": 1,
                 "answers": {"water": "wet", "steering-weight": "heavy"},
                 "kart": {"camber": {"left": 0.0, "right": 0.0},
                          "caster": {"left": 12, "right": 12, "reference": "absolute", "neutral": 10},
                          "eccentrics": {"pivots": "both", "throwMm": 2.0, "pivotSpacingMm": 60,
                                         "anglesDeg": [0, 45, 90, 135, 180, 225, 270, 315],
                                         "now": {"left": {"top": "1", "bottom": "1"},
                                                 "right": {"top": "1", "bottom": "1"}}}}}
                """);
    Advice advice = ADVISOR.advise(measured);
    assertThat(advice.suggestions()).anyMatch(each -> each.effect() != null);
    assertThat(advice.suggestions()).anyMatch(each -> each.washers() != null);
    same(advice);
  }

  @Test
  void aGoodMeasuredKartIsASettingToKeep() throws Exception {
    Advice advice =
        ADVISOR.advise(
            read(
                """
                {"schema": 1, "answers": {"water": "dry", "turn-in": "good", "mid-corner": "good"},
                 "kart": {"camber": {"left": 0.5, "right": 0.5},
                          "caster": {"left": 1, "right": 1, "reference": "neutral"}}}
                """));
    assertThat(advice.baseline())
        .isEqualTo(
            new Advice.Kept(
                "dry",
                new Advice.Settings(0.5, 0.5, "absolute"),
                new Advice.Settings(1, 1, "neutral")));
    assertThat(advice.minutes()).isNull();
    same(advice);
    String unmeasured =
        "{\"schema\": 1, \"answers\": {\"water\": \"dry\", \"turn-in\": \"good\", \"mid-corner\": \"good\"}}";
    assertThat(ADVISOR.advise(read(unmeasured)).baseline()).isNull();
  }

  @Test
  void twoJobsTakeTheMinutesOfBoth() throws Exception {
    Advice advice =
        ADVISOR.advise(
            read("{\"schema\": 1, \"answers\": {\"water\": \"wet\", \"setup-for\": \"dry\"}}"));
    assertThat(advice.suggestions()).filteredOn(Advice.Suggestion::first).hasSize(2);
    assertThat(advice.minutes()).isEqualTo(new Advice.Minutes(40, 60));
    assertThat(advice.baseline()).isNull();
  }

  private static Situation read(String json) throws Exception {
    return new CaseReader(ADVISOR.vocabulary()).read(json);
  }

  @Test
  void soIsAnEmptySituation() {
    same(ADVISOR.advise(Situation.UNKNOWN));
  }
}
