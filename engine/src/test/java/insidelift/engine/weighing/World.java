package insidelift.engine.weighing;

import java.util.Random;

/**
 * A kart, its driver and two tracks that nobody on the outside can see into: for the dry and for
 * the wet it has a best camber and caster, and round them a band in which it is good.
 *
 * @param dry the best in the dry
 * @param wet the best in the wet
 * @param camberSign 1 where camber toward positive adds front bite, -1 where it takes it
 * @param casterSign the same for more caster
 * @param tolerance how far off the balance may be and still be good
 * @param power the power class
 * @param strength the driver's strength
 * @param heavyFrom the caster from which the steering is too heavy for the driver
 * @param start where the kart stands at first
 */
record World(
    Stand dry,
    Stand wet,
    int camberSign,
    int casterSign,
    double tolerance,
    String power,
    String strength,
    int heavyFrom,
    Stand start) {

  /** How often a lever answers the other way round than the trade believes. */
  private static final double REVERSED = 0.1;

  static World random(Random chance) {
    String strength = pick(chance, "limited", "average", "average", "strong");
    return new World(
        new Stand(chance.nextInt(4) - 1, chance.nextInt(5) - 2),
        new Stand(1 + chance.nextInt(3), 1 + chance.nextInt(3)),
        chance.nextDouble() < REVERSED ? -1 : 1,
        chance.nextDouble() < REVERSED ? -1 : 1,
        2.0 + 1.2 * chance.nextDouble(),
        pick(chance, "low", "mid", "high"),
        strength,
        strength.equals("limited") ? 2 + chance.nextInt(2) : 9,
        new Stand(chance.nextInt(3) - 1, chance.nextInt(4) - 2));
  }

  private static String pick(Random chance, String... words) {
    return words[chance.nextInt(words.length)];
  }

  /** Front bite beyond what is wanted, at turn-in, mid-corner and exit; negative pushes. */
  double[] balance(Stand stand, boolean water) {
    Stand best = water ? wet : dry;
    double camber = camberSign * (stand.camber() - best.camber());
    double caster = casterSign * (stand.caster() - best.caster());
    return new double[] {
      3 * caster + camber, caster + 3 * camber, 0.5 * caster + 0.5 * camber,
    };
  }

  /** How far off it is, all in all. */
  double off(Stand stand, boolean water) {
    double[] balance = balance(stand, water);
    return Math.abs(balance[0]) + Math.abs(balance[1]);
  }

  boolean heavy(Stand stand) {
    return stand.caster() >= heavyFrom;
  }

  /** Whether it is truly good there: in balance, and the driver can hold it. */
  boolean good(Stand stand, boolean water) {
    double[] balance = balance(stand, water);
    return Math.abs(balance[0]) <= tolerance && Math.abs(balance[1]) <= tolerance && !heavy(stand);
  }

  /** Whether any setting that the eccentrics reach is good. */
  boolean curable(boolean water) {
    for (int camber = -2; camber <= 4; camber++) {
      for (int caster = -3; caster <= 3; caster++) {
        if (good(new Stand(camber, caster), water)) {
          return true;
        }
      }
    }
    return false;
  }
}
