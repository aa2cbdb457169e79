package insidelift.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LoadModelTest {

  private static final KartGeometry TYPICAL = KartGeometry.typical();

  @Test
  void the_loads_carry_the_weight_and_balance_every_moment() {
    Random random = new Random(1);
    for (int i = 0; i < 1000; i++) {
      KartGeometry kart = Karts.any(random);
      double lateralG = 0.99 * Math.min(3, kart.tipsOverAtG()) * random.nextDouble();
      double weight = kart.value(Dimension.MASS) * 9.81;

      WheelLoads loads = LoadModel.loads(kart, 45 * random.nextDouble(), lateralG);

      assertThat(loads.frontInnerN() + loads.frontOuterN())
          .isCloseTo(weight * kart.value(Dimension.FRONT_SHARE), within(1e-6));
      assertThat(loads.rearInnerN() + loads.rearOuterN())
          .isCloseTo(weight * (1 - kart.value(Dimension.FRONT_SHARE)), within(1e-6));
      assertThat(rollMomentNmm(kart, loads))
          .isCloseTo(weight * lateralG * kart.value(Dimension.CG_HEIGHT), within(1e-2));
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
      double lateralG = 0.99 * Math.min(3, kart.tipsOverAtG()) * random.nextDouble();

      WheelLoads loads = LoadModel.loads(kart, steer, lateralG);

      assertThat(loads.rearOuterN() - loads.rearInnerN())
          .isCloseTo(rearDifferenceN(kart, steer, lateralG), within(1e-5));
    }
  }

  /** The energy is convex: where it has no slope it is least, and nowhere else. */
  @Test
  void no_corner_of_the_frame_is_out_of_balance() {
    Random random = new Random(3);
    for (int i = 0; i < 10_000; i++) {
      KartGeometry kart = Karts.any(random);
      double lateralG = 0.999 * Math.min(3, kart.tipsOverAtG()) * random.nextDouble();
      LoadModel model = new LoadModel(kart, 45 * random.nextDouble(), lateralG);

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
      double lateralG = 0.95 * Math.min(3, kart.tipsOverAtG()) * random.nextDouble();
      double steer = 45 * random.nextDouble();
      LoadModel model = new LoadModel(kart, steer, lateralG);
      LeastEnergy energy = new LeastEnergy(model);
      double[] found = energy.corners();

      double least = energy.value(model.corners());
      assertThat(least).isLessThanOrEqualTo(energy.value(found) + 1e-9 * Math.abs(least));
      for (int corner = 0; corner < LoadModel.CORNERS; corner++) {
        assertThat(model.corners()[corner]).isCloseTo(found[corner], within(0.01));
      }
      if (LoadModel.loads(kart, steer, lateralG).rearInnerLiftMm() > 0) {
        lifted++;
      }
    }
    assertThat(lifted).isBetween(30, 270);
  }

  private static double rearDifferenceN(KartGeometry kart, double steer, double lateralG) {
    double weight = kart.value(Dimension.MASS) * 9.81;
    double front = weight * kart.value(Dimension.FRONT_SHARE);
    double moment = weight * lateralG * kart.value(Dimension.CG_HEIGHT);
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
    WheelLoads loads = LoadModel.loads(TYPICAL, steer, lateralG);
    WheelLoads stiffer =
        LoadModel.loads(
            TYPICAL
                .with(Dimension.FRAME_STIFFNESS, 400)
                .with(Dimension.TYRE_STIFFNESS_FRONT, 90)
                .with(Dimension.TYRE_STIFFNESS_REAR, 310)
                .with(Dimension.ROLL_SHARE_FRONT, 0.9)
                .with(Dimension.HUB_OFFSET, 140),
            steer,
            lateralG);
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
    double lateralG = LoadModel.liftOffG(TYPICAL, 20).orElseThrow();

    assertThat(LoadModel.loads(TYPICAL, 20, lateralG).rearInnerN()).isCloseTo(0, within(1e-4));
    assertThat(LoadModel.loads(TYPICAL, 20, lateralG - 0.01).rearInnerN()).isPositive();
    assertThat(LoadModel.loads(TYPICAL, 20, lateralG + 0.01).rearInnerLiftMm()).isPositive();
  }

  @Test
  void a_kart_that_jacks_enough_lifts_its_inside_rear_by_steer_alone() {
    KartGeometry jacking =
        TYPICAL
            .with(Dimension.CASTER, 25)
            .with(Dimension.FRONT_SHARE, 0.6)
            .with(Dimension.HUB_OFFSET, 160)
            .with(Dimension.FRAME_STIFFNESS, 600);

    assertThat(LoadModel.liftOffG(jacking, 45)).isEqualTo(OptionalDouble.of(0));
  }

  @Test
  void where_the_kart_rocks_from_its_outer_front_to_its_inner_rear_wheel_is_the_lift_off() {
    KartGeometry rocking =
        TYPICAL
            .with(Dimension.CASTER, 25)
            .with(Dimension.HUB_OFFSET, 200)
            .with(Dimension.FRAME_STIFFNESS, 600);

    double lateralG = LoadModel.liftOffG(rocking, 45).orElseThrow();

    assertThat(lateralG).isCloseTo((580 * 0.57 - 480 * 0.43) / 303, within(1e-6));
    assertThat(LoadModel.loads(rocking, 45, lateralG - 0.01).frontOuterN()).isZero();
  }

  @Test
  void a_kart_with_a_soft_frame_and_no_jacking_tips_before_its_inside_rear_lifts() {
    KartGeometry stubborn = TYPICAL.with(Dimension.CASTER, 0).with(Dimension.ROLL_SHARE_FRONT, 1);

    assertThat(LoadModel.liftOffG(stubborn.with(Dimension.FRAME_STIFFNESS, 20), 0)).isEmpty();
  }

  @Test
  void more_caster_lifts_earlier_at_every_steer() {
    for (double steer : new double[] {5, 10, 20, 30, 40}) {
      double before = Double.POSITIVE_INFINITY;
      for (double caster = 6; caster <= 22; caster += 2) {
        double lift =
            LoadModel.liftOffG(TYPICAL.with(Dimension.CASTER, caster), steer)
                .orElse(Double.MAX_VALUE);
        assertThat(lift).as("caster %s, steer %s", caster, steer).isLessThan(before);
        before = lift;
      }
    }
  }

  @Test
  void the_typical_kart_tips_over_at_about_1_8_g() {
    assertThat(TYPICAL.tipsOverAtG()).isCloseTo(1.8, within(0.05));
    assertThat(LoadModel.loads(TYPICAL, 20, 1.77).frontInnerN()).isPositive();
    assertThatThrownBy(() -> LoadModel.loads(TYPICAL, 20, 1.9))
        .isInstanceOf(RefusedInputException.class)
        .hasMessage(
            "lateral-g: 1.9 g: this kart tips over; both its inner wheels lift at 1.77 g, by its"
                + " tracks, weight shares and height of the centre of gravity");
  }

  @Test
  void a_lateral_acceleration_outside_the_range_is_refused() {
    assertThatThrownBy(() -> LoadModel.loads(TYPICAL, 20, -0.1))
        .hasMessage("lateral-g: -0.1 is outside 0 to 3 g (left turn; provisional)");
    assertThatThrownBy(() -> LoadModel.loads(TYPICAL, 20, Double.NaN))
        .hasMessage("lateral-g: NaN is outside 0 to 3 g (left turn; provisional)");
  }

  private static double rollMomentNmm(KartGeometry kart, WheelLoads loads) {
    return kart.value(Dimension.FRONT_TRACK) / 2 * (loads.frontOuterN() - loads.frontInnerN())
        + kart.value(Dimension.REAR_TRACK) / 2 * (loads.rearOuterN() - loads.rearInnerN());
  }
}
