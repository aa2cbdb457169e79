package insidelift.engine.geometry.kart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;

/** How the three measures of the calibration kart that nobody published were found. */
class CalibrationTest {

  private static final KartGeometry CALIBRATED = PublishedLoads.KART;

  @Test
  void the_calibration_kart_meets_the_published_loads_within_30_N_and_in_fact_6() {
    assertThat(PublishedLoads.rmsN(CALIBRATED)).isLessThan(6);
  }

  @Test
  void the_mass_in_the_papers_text_meets_them_too() {
    assertThat(PublishedLoads.rmsN(CALIBRATED.with(Dimension.MASS, 140))).isLessThan(12);
  }

  @Test
  void the_front_share_of_roll_is_the_one_at_which_lateral_acceleration_does_not_twist_the_frame() {
    double front =
        CALIBRATED.value(Dimension.TYRE_STIFFNESS_FRONT)
            * Math.pow(CALIBRATED.value(Dimension.FRONT_TRACK), 2);
    double rear =
        CALIBRATED.value(Dimension.TYRE_STIFFNESS_REAR)
            * Math.pow(CALIBRATED.value(Dimension.REAR_TRACK), 2);

    assertThat(CALIBRATED.value(Dimension.ROLL_SHARE_FRONT))
        .isCloseTo(front / (front + rear), within(0.005));
  }

  @Test
  void with_that_share_a_fit_gives_the_hub_offset_and_the_height_of_the_centre_of_gravity() {
    double[] fitted =
        new SimplexOptimizer(1e-9, 1e-9)
            .optimize(
                new MaxEval(2000),
                GoalType.MINIMIZE,
                new InitialGuess(new double[] {100, 250}),
                new NelderMeadSimplex(2, 10),
                new ObjectiveFunction(
                    p ->
                        PublishedLoads.rmsN(
                            CALIBRATED
                                .with(Dimension.HUB_OFFSET, p[0])
                                .with(Dimension.CG_HEIGHT, p[1]))))
            .getPoint();

    assertThat(fitted[0]).isCloseTo(CALIBRATED.value(Dimension.HUB_OFFSET), within(1.0));
    assertThat(fitted[1]).isCloseTo(CALIBRATED.value(Dimension.CG_HEIGHT), within(0.5));
  }

  @Test
  void freeing_the_share_as_well_gains_next_to_nothing() {
    double best = Double.POSITIVE_INFINITY;
    for (double share = 0.2; share <= 0.5; share += 0.01) {
      for (double hub = 60; hub <= 100; hub += 1) {
        best =
            Math.min(
                best,
                PublishedLoads.rmsN(
                    CALIBRATED
                        .with(Dimension.ROLL_SHARE_FRONT, share)
                        .with(Dimension.HUB_OFFSET, hub)));
      }
    }

    assertThat(PublishedLoads.rmsN(CALIBRATED) - best).isLessThan(0.1);
  }

  @Test
  void the_front_inner_wheel_carries_more_than_the_outer_up_to_065_g() {
    for (PublishedLoads.Row row : PublishedLoads.ROWS) {
      WheelLoads loads = LoadModel.loads(CALIBRATED, row.steerDeg(), row.lateralG(), 0);
      assertThat(loads.frontInnerN()).isGreaterThan(loads.frontOuterN());
    }
  }

  @Test
  void frame_twist_follows_steer_and_not_lateral_acceleration() {
    double twist = LoadModel.loads(CALIBRATED, 20, 0, 0).frameTwistDeg();

    assertThat(LoadModel.loads(CALIBRATED, 20, 0.6, 0).frameTwistDeg())
        .isCloseTo(twist, within(0.01));
    assertThat(LoadModel.loads(CALIBRATED, 40, 0, 0).frameTwistDeg()).isGreaterThan(1.8 * twist);
  }
}
