package insidelift.engine.geometry.kart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.Karts;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrontWheelTest {

  @ParameterizedTest
  @CsvSource({
    "5, 0, 0, -20, -1.7082", "5, 0, 0, -10, -0.8672",
    "5, 0, 0, 10, 0.8672", "5, 0, 0, 20, 1.7082",
    "0, 10, 0, -20, 0.5909", "0, 10, 0, -10, 0.1489",
    "0, 10, 0, 10, 0.1489", "0, 10, 0, 20, 0.5909",
    "12.8, 6.5, 0, -20, -3.9483", "12.8, 6.5, 0, -10, -2.0981",
    "12.8, 6.5, 0, 10, 2.2845", "12.8, 6.5, 0, 20, 4.6900",
    "18, 11, 0, -20, -5.3751", "18, 11, 0, -10, -2.8765",
    "18, 11, 0, 10, 3.1729", "18, 11, 0, 20, 6.5564",
  })
  void camber_over_kingpin_rotation_is_the_reference(
      double caster, double inclination, double camber, double steer, double expected) {
    KartGeometry kart = Karts.front(caster, inclination, camber);

    assertThat(FrontWheel.inner(kart).at(steer).camberDeg()).isCloseTo(expected, within(5e-5));
  }

  @ParameterizedTest
  @CsvSource({
    "9, 11, -20, -2.4207", "9, 11, -10, -1.4030", "9, 11, 10, 1.7497", "9, 11, 20, 3.7943",
    "18, 11, -20, -5.6236", "18, 11, -10, -3.0449", "18, 11, 10, 3.4177", "18, 11, 20, 7.0883",
  })
  void camber_over_steer_seen_from_above_is_the_reference(
      double caster, double inclination, double seenFromAbove, double expected) {
    KartGeometry kart = Karts.front(caster, inclination, 0);
    FrontWheel wheel = FrontWheel.inner(kart);

    double steer = kingpinRotationFor(wheel, seenFromAbove);

    assertThat(wheel.at(steer).camberDeg()).isCloseTo(expected, within(5e-5));
  }

  @ParameterizedTest
  @CsvSource({
    "12.8, 6.5, 100, 10, -3.88, 3.75, 7.63",
    "12.8, 6.5, 100, 20, -7.74, 7.19, 14.94",
    "18, 11, 160, 20, -17.42, 15.56, 32.98",
    "18, 0, 160, 20, -16.18, 17.64, 33.82",
  })
  void the_lowest_points_move_as_in_the_reference(
      double caster,
      double inclination,
      double hubOffset,
      double steer,
      double inner,
      double outer,
      double difference) {
    SteeredWheels wheels =
        SteeredWheels.of(Karts.front(caster, inclination, hubOffset, 130), steer);

    assertThat(wheels.inner().heightMm()).isCloseTo(inner, within(5e-3));
    assertThat(wheels.outer().heightMm()).isCloseTo(outer, within(5e-3));
    assertThat(wheels.heightDifferenceMm()).isCloseTo(difference, within(5e-3));
  }

  @ParameterizedTest
  @CsvSource({"12, 13", "13, 14", "14, 15", "15, 16", "16, 17", "17, 18"})
  void one_degree_of_caster_does_what_the_reference_says(double before, double after) {
    SteeredWheels less = SteeredWheels.of(Karts.front(before, 11, 160, 130), 15);
    SteeredWheels more = SteeredWheels.of(Karts.front(after, 11, 160, 130), 15);

    assertThat(more.heightDifferenceMm() - less.heightDifferenceMm()).isBetween(1.345, 1.385);
    assertThat(less.outer().camberDeg() - more.outer().camberDeg()).isCloseTo(0.25, within(0.01));
    assertThat(
            Karts.front(after, 11, 160, 130).trailMm()
                - Karts.front(before, 11, 160, 130).trailMm())
        .isBetween(2.35, 2.55);
  }

  @Test
  void any_wheel_agrees_with_a_rotation_from_another_library() {
    Random random = new Random(20251125);
    for (int i = 0; i < 2000; i++) {
      KartGeometry kart = Karts.any(random);
      double steer = 45 * random.nextDouble();
      int side = random.nextBoolean() ? 1 : -1;
      FrontWheel wheel = side > 0 ? FrontWheel.inner(kart) : FrontWheel.outer(kart);

      WheelState state = wheel.at(steer);

      double radius = kart.value(Dimension.WHEEL_RADIUS);
      double hub = kart.value(Dimension.HUB_OFFSET);
      double camber = Math.toRadians(kart.value(Dimension.CAMBER));
      QuaternionRotation turn = secondOpinion(kart, side, steer);
      Vector3D spindle = turn.apply(Vector3D.of(0, side * Math.cos(camber), -Math.sin(camber)));
      Vector3D centre = turn.apply(Vector3D.of(0, side * hub, 0));
      double lean = Math.asin(-spindle.getZ());
      assertThat(state.camberDeg()).isCloseTo(Math.toDegrees(lean), within(1e-9));
      assertThat(state.heightMm())
          .isCloseTo(
              centre.getZ() - radius * Math.cos(lean) + radius * Math.cos(camber), within(1e-9));
    }
  }

  @Test
  void any_wheel_agrees_with_the_closed_formula() {
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      KartGeometry kart = Karts.any(random);
      double delta = Math.toRadians(90 * random.nextDouble() - 45);
      double tanC = Math.tan(kart.radians(Dimension.CASTER));
      double tanS = Math.tan(kart.radians(Dimension.KINGPIN_INCLINATION));
      double camber = kart.radians(Dimension.CAMBER);
      double n2 = 1 + tanC * tanC + tanS * tanS;
      double sin =
          Math.sin(camber) * Math.cos(delta)
              + tanC / Math.sqrt(n2) * Math.cos(camber) * Math.sin(delta)
              + (tanS * Math.cos(camber) + Math.sin(camber)) / n2 * (1 - Math.cos(delta));

      assertThat(FrontWheel.inner(kart).at(Math.toDegrees(delta)).camberDeg())
          .isCloseTo(Math.toDegrees(Math.asin(sin)), within(1e-9));
    }
  }

  @Test
  void left_and_right_are_mirror_images() {
    Random random = new Random(7);
    for (int i = 0; i < 500; i++) {
      KartGeometry kart = Karts.any(random);
      double steer = 90 * random.nextDouble() - 45;

      WheelState left = FrontWheel.inner(kart).at(steer);
      WheelState right = FrontWheel.outer(kart).at(-steer);

      assertThat(left.camberDeg()).isCloseTo(right.camberDeg(), within(1e-9));
      assertThat(left.heightMm()).isCloseTo(right.heightMm(), within(1e-9));
    }
  }

  @Test
  void straight_ahead_nothing_has_moved() {
    SteeredWheels wheels = SteeredWheels.of(Karts.front(12.8, 6.5, 1.5), 0);

    assertThat(wheels.inner().camberDeg()).isCloseTo(1.5, within(1e-12));
    assertThat(wheels.outer().camberDeg()).isCloseTo(1.5, within(1e-12));
    assertThat(wheels.heightDifferenceMm()).isZero();
  }

  @Test
  void the_slope_straight_ahead_is_caster_times_hub_offset() {
    KartGeometry kart = PublishedLoads.KART;
    double tanC = Math.tan(Math.toRadians(12.8));
    double tanS = Math.tan(Math.toRadians(6.5));
    double expected = -tanC * 75 / Math.sqrt(1 + tanC * tanC + tanS * tanS);

    assertThat(FrontWheel.inner(kart).heightSlopeMmPerRad(0)).isCloseTo(expected, within(1e-9));
    assertThat(FrontWheel.outer(kart).heightSlopeMmPerRad(0)).isCloseTo(-expected, within(1e-9));
  }

  @Test
  void the_slope_is_the_derivative_of_the_height() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      FrontWheel wheel = FrontWheel.outer(Karts.any(random));
      double steer = 45 * random.nextDouble();
      double step = 1e-4;
      double numeric =
          (wheel.at(steer + step).heightMm() - wheel.at(steer - step).heightMm())
              / Math.toRadians(2 * step);

      assertThat(wheel.heightSlopeMmPerRad(steer)).isCloseTo(numeric, within(1e-4));
    }
  }

  @Test
  void roll_to_the_outside_takes_lean_from_the_inner_wheel_and_gives_it_to_the_outer() {
    KartGeometry kart = KartGeometry.typical();

    assertThat(FrontWheel.inner(kart).groundCamberDeg(0, 1)).isCloseTo(-1, within(1e-9));
    assertThat(FrontWheel.outer(kart).groundCamberDeg(0, 1)).isCloseTo(1, within(1e-9));
  }

  private static QuaternionRotation secondOpinion(KartGeometry kart, int side, double steer) {
    return QuaternionRotation.fromAxisAngle(
        Vector3D.of(
            -Math.tan(kart.radians(Dimension.CASTER)),
            -side * Math.tan(kart.radians(Dimension.KINGPIN_INCLINATION)),
            1),
        Math.toRadians(steer));
  }

  private static double kingpinRotationFor(FrontWheel wheel, double seenFromAbove) {
    double low = -40;
    double high = 40;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      Vector3D spindle =
          QuaternionRotation.fromAxisAngle(
                  Vector3D.of(
                      wheel.kingpin().getX(), wheel.kingpin().getY(), wheel.kingpin().getZ()),
                  Math.toRadians(middle))
              .apply(
                  Vector3D.of(
                      wheel.spindle().getX(), wheel.spindle().getY(), wheel.spindle().getZ()));
      double above = Math.toDegrees(Math.atan2(-spindle.getX(), spindle.getY()));
      if (above < seenFromAbove) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
