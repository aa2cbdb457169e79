package insidelift.engine.proof.statistics;

/**
 * The share of the drift within a run that shows in the next run: unknown, so a mean and a
 * deviation.
 */
public record Carry(double mean, double deviation) {

  /**
   * The share that carries on, by how the times drift within the run.
   *
   * @param slope seconds a lap; negative is getting quicker
   */
  public static Carry of(double slope) {
    return slope < 0
        ? new Carry(Assumptions.QUICKER_CARRY, Assumptions.QUICKER_CARRY_SD)
        : new Carry(Assumptions.SLOWER_CARRY, Assumptions.SLOWER_CARRY_SD);
  }
}
