package insidelift.engine.geometry.kart;

/**
 * The moment about the two kingpins together that the driver must hold, N·m, positive when it turns
 * the wheels back to straight ahead. Steering arms, column and friction are left out, so compare
 * before and after rather than read it as the force at the rim.
 *
 * @param trailNm from the lateral force behind the kingpins: the front axle's share of the lateral
 *     force times R · tan(caster) (textbook form, from memory: Gillespie 1992, chapter 8)
 * @param jackingNm from the wheel loads: − Σ load × slope of the wheel's height over steer (virtual
 *     work, derived); negative when the outer wheel carries so much that it helps the turn
 */
public record SteeringEffort(double trailNm, double jackingNm) {

  private static final double MM_PER_M = 1000;

  static SteeringEffort of(KartGeometry kart, WheelLoads loads) {
    double lateralN =
        kart.value(Dimension.MASS)
            * LoadModel.GRAVITY
            * kart.value(Dimension.FRONT_SHARE)
            * loads.lateralG();
    double jackingNmm =
        -loads.frontInnerN() * FrontWheel.inner(kart).heightSlopeMmPerRad(loads.steerDeg())
            - loads.frontOuterN() * FrontWheel.outer(kart).heightSlopeMmPerRad(loads.steerDeg());
    return new SteeringEffort(lateralN * kart.trailMm() / MM_PER_M, jackingNmm / MM_PER_M);
  }

  /** Both parts together, N·m. */
  public double totalNm() {
    return trailNm + jackingNm;
  }
}
