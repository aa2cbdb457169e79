package insidelift.engine.logbook.learning;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.Tyres;
import insidelift.shared.Degrees;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetupChangeTest {

  private static RunEntry on(Kart kart) {
    return Entries.run(1).with(Situation.UNKNOWN.with(kart));
  }

  private static RunEntry on(double camber, double caster) {
    return on(Kart.UNKNOWN.with(Entries.both(camber), Entries.both(caster)));
  }

  private static Sides sides(double left, double right) {
    return new Sides(Degrees.of(left), Degrees.of(right));
  }

  private static Optional<String> between(Kart before, Kart after) {
    return SetupChange.between(on(before), on(after));
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 0, camber-more",
    "-0.5, 0, camber-less",
    "0, 0.5, caster-more",
    "0, -0.5, caster-less",
    "0, 0, none",
    "0.1, -0.1, none",
    "0.11, 0, camber-more",
    "0.5, 0.5, other",
  })
  void the_lever_that_moved_by_more_than_a_reading_and_which_way(
      double camber, double caster, String change) {
    assertThat(SetupChange.between(on(0, 0), on(camber, caster))).contains(change);
  }

  @Test
  void one_side_alone_moves_the_pair_and_opposite_sides_are_something_else() {
    Kart zero = Kart.UNKNOWN.with(Entries.both(0), null);
    assertThat(between(zero, Kart.UNKNOWN.with(sides(0.5, 0), null))).contains("camber-more");
    assertThat(between(zero, Kart.UNKNOWN.with(sides(0.5, -0.5), null))).contains("other");
    assertThat(between(zero, Kart.UNKNOWN.with(sides(0.75, -0.5), null))).contains("other");
  }

  @Test
  void another_setting_or_pressure_is_something_else() {
    RunEntry before = on(0, 0).withSettings(Map.of("front width", "middle"));
    assertThat(SetupChange.between(before, before)).contains("none");
    assertThat(SetupChange.between(before, before.withSettings(Map.of("front width", "in"))))
        .contains("other");
    assertThat(SetupChange.between(cold(0.75), cold(0.80))).contains("none");
    assertThat(SetupChange.between(cold(0.75), cold(0.81))).contains("other");
  }

  private static RunEntry cold(double bar) {
    return on(0, 0)
        .with(
            new Tyres(
                Optional.of(new Pressures(0.75, bar, 0.75, 0.75)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
  }

  @Test
  void what_was_not_written_down_is_not_guessed() {
    Kart known = Kart.UNKNOWN.with(Entries.both(0), Entries.both(0));
    Kart absolute =
        new Kart(
            Optional.of(Entries.both(0)),
            Optional.of(Entries.both(10)),
            true,
            Optional.empty(),
            Eccentrics.UNKNOWN,
            Optional.empty());
    assertThat(between(Kart.UNKNOWN, Kart.UNKNOWN)).isEmpty();
    assertThat(between(Kart.UNKNOWN, known)).isEmpty();
    assertThat(between(known, absolute)).isEmpty();
    assertThat(between(absolute, absolute)).contains("none");
  }
}
