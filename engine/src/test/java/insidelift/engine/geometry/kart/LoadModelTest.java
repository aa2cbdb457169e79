package insidelift.engine.geometry.kart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.Karts;
import insidelift.engine.geometry.RefusedInputException;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LoadModelTest {

  private static final KartGeometry CALIBRATED = PublishedLoads.KART;

  @Test
  void the_loads_carry_the_weight_and_balance_every_moment() {
    Random random = new Random(1);
    for (int i = 0; i < 1000; i++) {
      KartGeometry kart = Karts.any(random);
      double longitudinalG = Karts.longitudinalG(kart, random);
      double lateralG = 0.99 * Math.min(3, kart.tipsOverAtG(longitudinalG)) * random.nextDouble();
      double weight = kart.value(Dimension.MASS) * 9.81;
      // About the rear contact: front × wheelbase = weight × (share × wheelbase − g × height).
      double front =
          weight
              * (kart.value(Dimension.FRONT_SHARE)
                  - longitudinalG
                      * kart.value(Dimension.CG_HEIGHT)
                      / kart.value(Dimension.WHEELBASE));

      WheelLoads loads = LoadModel.loads(kart, 45 * random.nextDouble(), lateralG, longitudinalG);

      assertThat(loads.frontInnerN() + loads.frontOuterN()).isCloseTo(front, within(1e-6));
      assertThat(loads.rearInnerN() + loads.rearOuterN()).isCloseTo(weight - front, within(1e-6));
      assertThat(rollMomentNmm(kart, loads))
          .isCloseTo(weight * lateralG * overturnMm(kart), within(1e-3));
      assertThat(loads.rearInnerN()).isNotNegative();
      assertThat(loads.frontInnerN()).isNotNegative();
      assertThat(loads.frontOuterN()).isNotNegative();
    }
  }

  /**
   * The same loads from the other side: statics leaves one unknown, how much of the moment the rear
   * takes, and the complementary energy over it is a parabola, cut off where a wheel lifts.
   */
  @Test
  void the_balance_agrees_with_the_complementary_energy() {
    Random random = new Random(2);
    for (int i = 0; i < 1000; i++) {
      KartGeometry kart = Karts.any(random);
      double steer = 45 * random.nextDouble();
      double longitudinalG = Karts.longitudinalG(kart, random);
      double lateralG = 0.99 * Math.min(3, kart.tipsOverAtG(longitudinalG)) * random.nextDouble();

      WheelLoads loads = LoadModel.loads(kart, steer, lateralG, longitudinalG);

      assertThat(loads.rearOuterN() - loads.rearInnerN())
          .isCloseTo(rearDifferenceN(kart, steer, lateralG, longitudinalG), within(1e-5));
    }
  }

  /** The energy is convex: where it has no slope it is least, and nowhere else. */
  @Test
  void no_corner_of_the_frame_is_out_of_balance() {
    Random random = new Random(3);
    for (int i = 0; i < 10_000; i++) {
      KartGeometry kart = Karts.any(random);
      double longitudinalG = Karts.longitudinalG(kart, random);
      double lateralG = 0.999 * Math.min(3, kart.tipsOverAtG(longitudinalG)) * random.nextDouble();
      LoadModel model = new LoadModel(kart, 45 * random.nextDouble(), lateralG, longitudinalG);

      for (double newtons : new LeastEnergy(model).slope(model.corners())) {
        assertThat(newtons).isCloseTo(0, within(1e-7));
      }
    }
  }

  /** Compared with Hipparchus 4.0.3, which ends within half the digits of a double. */
  @Test
  void an_optimiser_finds_no_lower_energy_and_the_same_attitude() {
    Random random = new Random(4);
    int lifted = 0;
    for (int i = 0; i < 300; i++) {
      KartGeometry kart = Karts.any(random);
      double longitudinalG = Karts.longitudinalG(kart, random);
      double lateralG = 0.95 * Math.min(3, kart.tipsOverAtG(longitudinalG)) * random.nextDouble();
      double steer = 45 * random.nextDouble();
      LoadModel model = new LoadModel(kart, steer, lateralG, longitudinalG);
      LeastEnergy energy = new LeastEnergy(model);
      double[] found = energy.corners();

      double least = energy.value(model.corners());
      assertThat(least).isLessThanOrEqualTo(energy.value(found) + 1e-9 * Math.abs(least));
      for (int corner = 0; corner < LoadModel.CORNERS; corner++) {
        assertThat(model.corners()[corner]).isCloseTo(found[corner], within(0.01));
      }
      if (LoadModel.loads(kart, steer, lateralG, longitudinalG).rearInnerLiftMm() > 0) {
        lifted++;
      }
    }
    assertThat(lifted).isBetween(30, 270);
  }

  private static double overturnMm(KartGeometry kart) {
    return kart.value(Dimension.CG_HEIGHT) + kart.value(Dimension.OVERTURN);
  }

  private static double rearDifferenceN(
      KartGeometry kart, double steer, double lateralG, double longitudinalG) {
    double weight = kart.value(Dimension.MASS) * 9.81;
    double front =
        weight
            * (kart.value(Dimension.FRONT_SHARE)
                - longitudinalG
                    * kart.value(Dimension.CG_HEIGHT)
                    / kart.value(Dimension.WHEELBASE));
    double moment = weight * lateralG * overturnMm(kart);
    double a = kart.value(Dimension.FRONT_TRACK) / 2;
    double b = kart.value(Dimension.REAR_TRACK) / 2;
    double frontSpring = kart.value(Dimension.TYRE_STIFFNESS_FRONT);
    double rearSpring = kart.value(Dimension.TYRE_STIFFNESS_REAR);
    double twistSpring = kart.value(Dimension.FRAME_STIFFNESS) * 1000 * 180 / Math.PI;
    double difference = SteeredWheels.of(kart, steer).heightDifferenceMm();
    double share = kart.value(Dimension.ROLL_SHARE_FRONT);
    // roll front = (d_f/k_f + difference)/2a, roll rear = d_r/k_r/2b, their twist × spring = s·M −
    // a·d_f,
    // and a·d_f + b·d_r = M.
    double free = (moment / a / frontSpring + difference) / (2 * a);
    double perRear = -b / a / frontSpring / (2 * a) - 1 / rearSpring / (2 * b);
    double rear = (share * moment - moment - twistSpring * free) / (twistSpring * perRear - b);
    double least = Math.max(-(weight - front), (moment - a * front) / b);
    double most = Math.min(weight - front, (moment + a * front) / b);
    return Math.max(least, Math.min(most, rear));
  }

  @Test
  void with_the_inside_rear_in_the_air_statics_alone_gives_the_loads() {
    double steer = 25;
    double lateralG = 1.4;
    WheelLoads loads = LoadModel.loads(CALIBRATED, steer, lateralG, 0);
    WheelLoads stiffer =
        LoadModel.loads(
            CALIBRATED
                .with(Dimension.FRAME_STIFFNESS, 400)
                .with(Dimension.TYRE_STIFFNESS_FRONT, 90)
                .with(Dimension.TYRE_STIFFNESS_REAR, 310)
                .with(Dimension.ROLL_SHARE_FRONT, 0.9)
                .with(Dimension.HUB_OFFSET, 140),
            steer,
            lateralG,
            0);
    double weight = 143.6 * 9.81;
    double frontDifference = (weight * lateralG * 303 - weight * 0.57 * 580) / 480;

    assertThat(loads.rearInnerN()).isZero();
    assertThat(loads.rearInnerLiftMm()).isPositive();
    assertThat(loads.rearOuterN()).isCloseTo(weight * 0.57, within(1e-6));
    assertThat(loads.frontOuterN() - loads.frontInnerN()).isCloseTo(frontDifference, within(1e-6));
    assertThat(stiffer.rearInnerN()).isZero();
    assertThat(stiffer.frontInnerN()).isCloseTo(loads.frontInnerN(), within(1e-6));
    assertThat(stiffer.frontOuterN()).isCloseTo(loads.frontOuterN(), within(1e-6));
  }

  @Test
  void at_the_lift_off_the_inside_rear_carries_nothing_and_touches() {
    double lateralG = LoadModel.liftOffG(CALIBRATED, 20, 0).orElseThrow();

    assertThat(LoadModel.loads(CALIBRATED, 20, lateralG, 0).rearInnerN())
        .isCloseTo(0, within(1e-4));
    assertThat(LoadModel.loads(CALIBRATED, 20, lateralG - 0.01, 0).rearInnerN()).isPositive();
    assertThat(LoadModel.loads(CALIBRATED, 20, lateralG + 0.01, 0).rearInnerLiftMm()).isPositive();
  }

  @Test
  void a_kart_that_jacks_enough_lifts_its_inside_rear_by_steer_alone() {
    KartGeometry jacking =
        CALIBRATED
            .with(Dimension.CASTER, 25)
            .with(Dimension.FRONT_SHARE, 0.6)
            .with(Dimension.HUB_OFFSET, 160)
            .with(Dimension.FRAME_STIFFNESS, 600);

    assertThat(LoadModel.liftOffG(jacking, 45, 0)).isEqualTo(OptionalDouble.of(0));
  }

  @Test
  void where_the_kart_rocks_from_its_outer_front_to_its_inner_rear_wheel_is_the_lift_off() {
    KartGeometry rocking =
        CALIBRATED
            .with(Dimension.CASTER, 25)
            .with(Dimension.HUB_OFFSET, 200)
            .with(Dimension.FRAME_STIFFNESS, 600);

    double lateralG = LoadModel.liftOffG(rocking, 45, 0).orElseThrow();

    assertThat(lateralG).isCloseTo((580 * 0.57 - 480 * 0.43) / 303, within(1e-6));
    assertThat(LoadModel.loads(rocking, 45, lateralG - 0.01, 0).frontOuterN()).isZero();
  }

  @Test
  void a_kart_with_a_soft_frame_and_no_jacking_tips_before_its_inside_rear_lifts() {
    KartGeometry stubborn =
        CALIBRATED.with(Dimension.CASTER, 0).with(Dimension.ROLL_SHARE_FRONT, 1);

    assertThat(LoadModel.liftOffG(stubborn.with(Dimension.FRAME_STIFFNESS, 20), 0, 0)).isEmpty();
  }

  @Test
  void more_caster_lifts_earlier_at_every_steer() {
    for (double steer : new double[] {5, 10, 20, 30, 40}) {
      double before = Double.POSITIVE_INFINITY;
      for (double caster = 6; caster <= 22; caster += 2) {
        double lift =
            LoadModel.liftOffG(CALIBRATED.with(Dimension.CASTER, caster), steer, 0)
                .orElse(Double.MAX_VALUE);
        assertThat(lift).as("caster %s, steer %s", caster, steer).isLessThan(before);
        before = lift;
      }
    }
  }

  @Test
  void the_calibration_kart_tips_over_at_about_1_8_g() {
    assertThat(CALIBRATED.tipsOverAtG(0)).isCloseTo(1.8, within(0.05));
    assertThat(LoadModel.loads(CALIBRATED, 20, 1.77, 0).frontInnerN()).isPositive();
    assertThatThrownBy(() -> LoadModel.loads(CALIBRATED, 20, 1.9, 0))
        .isInstanceOf(RefusedInputException.class)
        .hasMessage(
            "lateral-g: 1.9 g: this kart tips over; both its inner wheels lift at 1.77 g, by its"
                + " tracks, weight shares and height of the centre of gravity");
  }

  @Test
  void braking_straight_loads_left_and_right_alike() {
    WheelLoads loads = LoadModel.loads(KartGeometry.typical(), 0, 0, -0.6);

    assertThat(loads.frontInnerN()).isEqualTo(loads.frontOuterN());
    assertThat(loads.rearInnerN()).isEqualTo(loads.rearOuterN());
    assertThat(loads.frameTwistDeg()).isZero();
  }

  @Test
  void the_lift_off_is_bracketed_by_the_loads_just_below_and_above() {
    Random random = new Random(5);
    int seen = 0;
    for (int i = 0; i < 300; i++) {
      KartGeometry kart = Karts.any(random);
      double steer = 45 * random.nextDouble();
      double longitudinalG = Karts.longitudinalG(kart, random);
      double lifts = LoadModel.liftOffG(kart, steer, longitudinalG).orElse(0);
      if (lifts > 0 && lifts * 1.001 < Math.min(3, kart.tipsOverAtG(longitudinalG))) {
        seen++;
        assertThat(LoadModel.loads(kart, steer, lifts * 0.999, longitudinalG).rearInnerN())
            .isPositive();
        assertThat(LoadModel.loads(kart, steer, lifts * 1.001, longitudinalG).rearInnerLiftMm())
            .isPositive();
      }
    }
    assertThat(seen).isGreaterThan(100);
  }

  @Test
  void below_the_least_lift_off_no_steer_and_no_caster_lifts_the_inside_rear() {
    for (double steer : new double[] {10, 30, 45}) {
      for (double caster : new double[] {5, 16, 35}) {
        KartGeometry kart = KartGeometry.typical().with(Dimension.CASTER, caster);
        assertThat(LoadModel.loads(kart, steer, 0.44, 0).rearInnerLiftMm()).isZero();
        assertThat(LoadModel.loads(kart, steer, 0.15, -0.3).rearInnerLiftMm()).isZero();
      }
    }
    // (0.58 × 1180 − 0.42 × 1050) ÷ 2 ÷ 270 = 0.4507.
    assertThat(KartGeometry.typical().leastLiftG(0)).isCloseTo(0.4507, within(5e-5));
    assertThat(KartGeometry.typical().leastLiftG(-0.6)).isZero();
  }

  @Test
  void slowing_or_speeding_up_beyond_the_range_or_the_axle_is_refused() {
    assertThatThrownBy(() -> LoadModel.loads(CALIBRATED, 20, 0, -1.6))
        .hasMessage(
            "longitudinal-g: -1.6 is outside -1.5 to 1 g (below nought when slowing;"
                + " provisional)");
    KartGeometry tall = CALIBRATED.with(Dimension.CG_HEIGHT, 480);
    assertThatThrownBy(() -> LoadModel.liftOffG(tall, 20, -1.4))
        .hasMessage(
            "longitudinal-g: -1.4 g: the rear axle would carry nothing, by the wheelbase, weight"
                + " shares and height of the centre of gravity");
    assertThatThrownBy(() -> LoadModel.loads(tall, 20, 0, 1))
        .hasMessageStartingWith("longitudinal-g: 1 g: the front axle would carry nothing");
  }

  @Test
  void a_lateral_acceleration_outside_the_range_is_refused() {
    assertThatThrownBy(() -> LoadModel.loads(CALIBRATED, 20, -0.1, 0))
        .hasMessage("lateral-g: -0.1 is outside 0 to 3 g (left turn; provisional)");
    assertThatThrownBy(() -> LoadModel.loads(CALIBRATED, 20, Double.NaN, 0))
        .hasMessage("lateral-g: NaN is outside 0 to 3 g (left turn; provisional)");
  }

  private static double rollMomentNmm(KartGeometry kart, WheelLoads loads) {
    return kart.value(Dimension.FRONT_TRACK) / 2 * (loads.frontOuterN() - loads.frontInnerN())
        + kart.value(Dimension.REAR_TRACK) / 2 * (loads.rearOuterN() - loads.rearInnerN());
  }
}
