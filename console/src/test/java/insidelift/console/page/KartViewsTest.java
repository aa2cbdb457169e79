package insidelift.console.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.console.page.Picture.Shape;
import insidelift.engine.geometry.effect.ChangeCurves;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is drawn is measured on the drawing and compared with what was asked for. */
class KartViewsTest {

  private static final KartGeometry KART =
      new KartGeometry(
          Map.of(
              Dimension.CASTER,
              12.8,
              Dimension.KINGPIN_INCLINATION,
              6.5,
              Dimension.CAMBER,
              0.0,
              Dimension.WHEEL_RADIUS,
              130.0));
  private static final ChangeEffect EFFECT = ChangeEffect.of(KART, 2, 3, List.of(Corner.TURN_IN));
  private static final KartViews VIEWS = new KartViews(EFFECT);

  /** A unit is rounded to a tenth, so over 180 units an angle is known to a twentieth degree. */
  private static final double DEGREES = 0.05;

  private static double[] ends(Picture picture, String look, int which) {
    List<Shape> shapes = picture.shapes().stream().filter(s -> s.look().equals(look)).toList();
    return Arrays.stream(shapes.get(which).path().split("[ML ]+", -1))
        .filter(part -> !part.isEmpty())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  /** Lean of a line from upright, degrees, positive with its upper end to the right. */
  private static double lean(double[] ends) {
    return Math.toDegrees(Math.atan2(ends[2] - ends[0], ends[1] - ends[3]));
  }

  @Test
  void the_wheel_leans_by_the_camber_in_the_front_view() {
    assertThat(lean(ends(VIEWS.front(), "before wide", 0))).isEqualTo(0, within(DEGREES));
    assertThat(lean(ends(VIEWS.front(), "after wide", 0))).isEqualTo(2, within(DEGREES));
  }

  @Test
  void the_kingpin_leans_inward_by_its_inclination_which_camber_takes_from() {
    assertThat(lean(ends(VIEWS.front(), "before", 0))).isEqualTo(-6.5, within(DEGREES));
    assertThat(lean(ends(VIEWS.front(), "after", 0))).isEqualTo(-4.5, within(DEGREES));
  }

  @Test
  void the_kingpin_leans_back_by_the_caster_in_the_side_view() {
    assertThat(lean(ends(VIEWS.side(), "before", 0))).isEqualTo(12.8, within(DEGREES));
    assertThat(lean(ends(VIEWS.side(), "after", 0))).isEqualTo(15.8, within(DEGREES));
  }

  @Test
  void the_words_carry_the_same_numbers() {
    assertThat(VIEWS.front().description())
        .isEqualTo(
            "Left front wheel seen from the front; the right one is its mirror image. Camber goes"
                + " from 0.0° to +2.0°: the top moves 9.1 mm outward.");
    assertThat(VIEWS.side().description())
        .contains("Caster goes from +12.8° to +15.8°")
        .contains("by 29.5 to 36.8 mm, the trail");
  }

  @Test
  void ofAWheelThatNobodyMeasuredNoTenthOfAMillimetreIsTold() {
    KartGeometry unmeasured =
        new KartGeometry(Map.of(Dimension.CASTER, 12.8, Dimension.CAMBER, 0.0));
    KartViews views = new KartViews(ChangeEffect.of(unmeasured, 2, 3, List.of(Corner.TURN_IN)));

    // 130 tan 12.8 = 29.5, 130 tan 15.8 = 36.8, 2 x 130 sin 2 = 9.07.
    assertThat(views.side().description()).contains("by 30 to 37 mm, the trail");
    assertThat(views.front().description()).endsWith("the top moves 9 mm outward.");
  }

  @Test
  void a_lever_that_stays_is_said_to_stay() {
    KartViews caster = new KartViews(ChangeEffect.of(KART, 0, 1, List.of(Corner.TURN_IN)));
    assertThat(caster.front().description())
        .endsWith("Camber stays at 0.0°: the wheel stands as before.");
  }

  @Test
  void the_plots_say_where_the_inside_rear_lifts_with_its_band() {
    ChangeCurves curves = ChangeCurves.of(EFFECT);
    assertThat(CurvePlots.liftOverBraking(curves).description())
        .contains("at 12° of steer, against braking")
        .containsPattern("with 0\\.9 g of braking 0\\.\\d g \\(from 0\\.\\d g to \\d\\.\\d g\\)");
    assertThat(CurvePlots.liftOverSteer(curves).description())
        .contains("slowing by 0.6 g, against the angle of steer")
        .containsPattern("with 30° of steer 0\\.\\d g");
    assertThat(CurvePlots.lean(curves).description()).contains("at 0.9 g. At 30° of steer");
  }
}
