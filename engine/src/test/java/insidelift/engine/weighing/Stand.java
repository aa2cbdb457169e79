package insidelift.engine.weighing;

/**
 * Where a simulated kart stands.
 *
 * @param camber in positions of half a degree from zero
 * @param caster in positions from neutral
 */
record Stand(int camber, int caster) {

  Stand moved(String lever, int positions) {
    return lever.equals("camber")
        ? new Stand(camber + positions, caster)
        : new Stand(camber, caster + positions);
  }

  /** Whether the eccentrics reach it. */
  boolean reachable() {
    return camber >= -2 && camber <= 4 && caster >= -3 && caster <= 3;
  }
}
