package insidelift.console.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.effect.ChangeCurves;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.units.KnownUnit;
import insidelift.shared.situation.EdgeTemperatures;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TextPicturesTest {

  private static final ChangeEffect CHANGE =
      ChangeEffect.of(KartGeometry.typical(), 1, 0, List.of(Corner.TURN_IN));
  private static final ChangeEffect NONE =
      ChangeEffect.of(KartGeometry.typical(), 0, 0, List.of(Corner.TURN_IN));
  private static final EdgeTemperatures LEFT = new EdgeTemperatures(61.5, 66, 72.5);
  private static final EdgeTemperatures RIGHT = new EdgeTemperatures(60, 64.5, 70);

  private static List<TextPicture> all() {
    return List.of(
        TextPictures.sweep(CHANGE, ChangeCurves.of(CHANGE)),
        TextPictures.sweep(NONE, ChangeCurves.of(NONE)),
        TextPictures.liftOverBraking(CHANGE, ChangeCurves.of(CHANGE)),
        TextPictures.liftOverSteer(NONE, ChangeCurves.of(NONE)),
        TextPictures.faces(LEFT, RIGHT, KnownUnit.CELSIUS),
        TextPictures.laps(
            Proof.of(
                LapTimes.of("before", 61, 50.3, 50.1, 50.2, 50.4, 50.2),
                LapTimes.of("after", 61, 49.8, 49.9, 49.7, 49.8, 49.9),
                Optional.empty(),
                Feel.UNKNOWN)));
  }

  @Test
  void every_picture_fits_a_screen_of_80_by_24_with_its_title_and_sentence() {
    assertThat(all())
        .allSatisfy(
            picture -> {
              assertThat(picture.lines()).hasSizeLessThanOrEqualTo(19);
              assertThat(picture.lines()).allMatch(line -> line.length() <= 80);
              assertThat(String.join("", picture.lines())).matches("[ -~°]*");
              assertThat(picture.sentence().length()).isLessThan(240);
            });
  }

  @Test
  void the_sweep_puts_each_wheel_where_its_lean_is() {
    TextPicture sweep = TextPictures.sweep(CHANGE, ChangeCurves.of(CHANGE));
    String scale = sweep.lines().get(0);
    double least = Double.parseDouble(scale.substring(9, scale.indexOf('°', 9)).strip());
    String most = scale.stripTrailing();
    double highest =
        Double.parseDouble(most.substring(most.lastIndexOf(' ') + 1, most.length() - 1));
    String full = sweep.lines().get(7);
    double perColumn = (highest - least) / 65;

    assertThat(full).startsWith("     30 |");
    CornerState is = CornerState.of(CHANGE.after(), 30, 0.9, -0.6);
    CornerState was = CornerState.of(CHANGE.before(), 30, 0.9, -0.6);
    assertThat(least + (full.indexOf('I') - 9) * perColumn)
        .isEqualTo(is.innerLeanDeg(), within(perColumn));
    assertThat(least + (full.indexOf('O') - 9) * perColumn)
        .isEqualTo(is.outerLeanDeg(), within(perColumn));
    assertThat(least + (full.indexOf('i') - 9) * perColumn)
        .isEqualTo(was.innerLeanDeg(), within(perColumn));
    assertThat(sweep.sentence())
        .matches(
            "Steered from straight ahead to 30°, the inner front wheel goes from \\+?[01]° to"
                + " \\+\\d° of lean and the outer from \\+?[01]° to -\\d°; before the change they"
                + " ended at \\+\\d° and -\\d°\\.");
  }

  @Test
  void a_kart_that_stays_as_it_is_is_drawn_once() {
    assertThat(String.join("\n", TextPictures.sweep(NONE, ChangeCurves.of(NONE)).lines()))
        .doesNotContain("small letters")
        .doesNotContain("o |");
    assertThat(TextPictures.liftOverSteer(NONE, ChangeCurves.of(NONE)).lines())
        .noneMatch(l -> l.contains(":"));
  }

  @Test
  void the_lift_off_stands_between_its_bounds_and_moves_with_the_change() {
    TextPicture braking = TextPictures.liftOverBraking(CHANGE, ChangeCurves.of(CHANGE));

    assertThat(braking.lines().subList(1, 11))
        .allSatisfy(line -> assertThat(line).matches(" +0\\.\\d \\|[^#*]*\\[.*[#*].*\\].*\\|"));
    assertThat(braking.sentence())
        .matches(
            "With 0\\.0 g of braking the inside rear lifts at 1\\.\\d g .*, with 0\\.9 g of braking at"
                + " 0\\.\\d g .*\\.");
    assertThat(TextPictures.liftOverSteer(CHANGE, ChangeCurves.of(CHANGE)).lines().get(7))
        .startsWith("     30 |");
  }

  @Test
  void a_wheel_off_the_ground_has_no_bar() {
    assertThat(new Strip(10, 0, 100).bar(0, '#')).hasToString(" ".repeat(10));
    assertThat(new Strip(10, 0, 100).bar(1, '#')).hasToString("#" + " ".repeat(9));
  }

  @Test
  void two_marks_in_one_place_are_both_owned_up_to() {
    assertThat(new Strip(3, 0, 2).mark(1, 'I').mark(1, 'O')).hasToString(" * ");
    assertThat(new Strip(3, 0, 2).rule(1).mark(1, 'O')).hasToString(" O ");
  }

  @Test
  void tyre_faces_are_told_from_edge_to_edge() {
    assertThat(TextPictures.faces(LEFT, RIGHT, KnownUnit.CELSIUS).sentence())
        .isEqualTo(
            "Left front tyre: outer edge 72.5 °C, middle 66.0 °C, inner edge 61.5 °C; right front"
                + " tyre: outer edge 70.0 °C, middle 64.5 °C, inner edge 60.0 °C.");
  }
}
