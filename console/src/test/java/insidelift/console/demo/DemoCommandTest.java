package insidelift.console.demo;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.CommandRun;
import insidelift.console.demo.Story.Scene;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final List<Scene> SCENES = Story.read(ADVISOR.vocabulary()).scenes();

  @TempDir private Path folder;

  private static Advice advice(int scene) {
    return ADVISOR.advise(SCENES.get(scene).situation());
  }

  @Test
  void the_day_has_a_fault_a_change_a_hold_and_the_way_back() {
    assertThat(List.of(advice(0).status(), advice(1).status(), advice(2).status()))
        .containsExactly(Status.FIX_FIRST, Status.CHANGE, Status.HOLD);
    assertThat(advice(3).suggestions())
        .filteredOn(Suggestion::first)
        .extracting(Suggestion::lever)
        .containsExactly(Lever.CAMBER, Lever.CASTER);
  }

  @Test
  void each_scene_finds_the_kart_as_the_advice_before_left_it() {
    Situation start = SCENES.get(1).situation();
    assertThat(start.kart().camber().map(Sides::middle)).hasToString("Optional[0.0°]");
    for (int i = 2; i < SCENES.size(); i++) {
      Situation now = SCENES.get(i).situation();
      Situation before = SCENES.get(i - 1).situation();
      assertThat(left(advice(i - 1), Lever.CAMBER, before.kart().camber()))
          .isEqualTo(now.kart().camber().orElseThrow().left().value());
      assertThat(left(advice(i - 1), Lever.CASTER, before.kart().caster()))
          .isEqualTo(now.kart().caster().orElseThrow().left().value());
    }
  }

  private static double left(Advice advice, Lever lever, Optional<Sides> before) {
    return advice.suggestions().stream()
        .filter(suggestion -> suggestion.lever() == lever && suggestion.first())
        .findFirst()
        .map(suggestion -> suggestion.target().left())
        .orElse(before.orElseThrow().left().value());
  }

  @Test
  void the_story_itself_holds_no_advice_and_no_verdict() throws IOException {
    try (var in = Story.class.getResourceAsStream("story.json")) {
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .doesNotContain("summary", "verdict", "toward positive", "toward negative", "quicker");
    }
  }

  @Test
  void it_plays_to_its_end_without_a_question_and_the_same_every_time() {
    CommandRun once = CommandRun.of(new DemoCommand());
    assertThat(once.exit()).isZero();
    assertThat(once.err()).isEmpty();
    assertThat(once.out().lines())
        .allMatch(line -> line.length() <= 80)
        .contains(
            "Fix this first: no camber or caster change yet",
            "Hold: leave camber and caster as they are",
            "keep: the laps are 0.71 s quicker (95 % sure of between 0.52 s and 0.91 s).",
            "That was the day. Your own begins with: insidelift");
    assertThat(once.out()).contains("An invented story").contains("cannot tell: about");
    assertThat(CommandRun.of(new DemoCommand(), "--fast").out()).isEqualTo(once.out());
  }

  @Test
  void it_writes_a_pit_card_for_each_scene_where_it_may() throws IOException {
    CommandRun run = CommandRun.of(new DemoCommand(), "--cards", folder.toString());
    assertThat(run.exit()).isZero();
    assertThat(folder.resolve("card-4.html")).content().contains("15:00, a dry track");
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(4);
    }
  }

  @Test
  void a_folder_that_is_not_there_is_named() {
    Path nowhere = folder.resolve("no");
    CommandRun run = CommandRun.of(new DemoCommand(), "--cards", nowhere.toString());
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err())
        .isEqualTo(
            "insidelift: "
                + nowhere.resolve("card-1.html")
                + ": there is no such folder; make it first, or name another"
                + System.lineSeparator());
  }
}
