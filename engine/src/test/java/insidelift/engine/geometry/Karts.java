package insidelift.engine.geometry;

import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;

/** Karts to test with. */
public final class Karts {

  private Karts() {}

  /** The typical kart with another front end. */
  public static KartGeometry front(double caster, double inclination, double camber) {
    return KartGeometry.typical()
        .with(Dimension.CASTER, caster)
        .with(Dimension.KINGPIN_INCLINATION, inclination)
        .with(Dimension.CAMBER, camber);
  }

  public static KartGeometry front(
      double caster, double inclination, double hubOffset, double wheelRadius) {
    return front(caster, inclination, 0)
        .with(Dimension.HUB_OFFSET, hubOffset)
        .with(Dimension.WHEEL_RADIUS, wheelRadius);
  }

  /** Any kart that is accepted, with every measure drawn evenly from its range. */
  public static KartGeometry any(Random random) {
    Map<Dimension, Double> given = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      double least = dimension.least();
      if (dimension == Dimension.FRONT_TRACK || dimension == Dimension.REAR_TRACK) {
        least = 2.0 / 3.0 * given.get(Dimension.WHEELBASE);
      }
      given.put(dimension, least + random.nextDouble() * (dimension.most() - least));
    }
    return new KartGeometry(given);
  }

  /** Slowing or speeding up that leaves both axles something to carry. */
  public static double longitudinalG(KartGeometry kart, Random random) {
    double share = kart.value(Dimension.FRONT_SHARE);
    double perHeight = kart.value(Dimension.WHEELBASE) / kart.value(Dimension.CG_HEIGHT);
    double least = Math.max(-1.5, -0.99 * (1 - share) * perHeight);
    double most = Math.min(1, 0.99 * share * perHeight);
    return least + random.nextDouble() * (most - least);
  }
}
