package insidelift.engine.proof;

import insidelift.engine.proof.laps.LapTimes;
import java.util.Optional;
import java.util.Random;

/**
 * Invented days at a kart track, for trying the proof on pairs whose truth is known.
 *
 * <p>A day has a track that gets quicker lap by lap and in the pauses; tyres that go off within a
 * run and recover in part; cold tyres in the first laps; a level of its own for each run; noise
 * that carries over from lap to lap; and laps in traffic. All sizes are judgement.
 */
final class SimulatedDay {

  /** The sizes; every one in seconds unless it says otherwise, drawn evenly up to the given one. */
  record Sizes(
      double noise,
      double carryOver,
      double trackPerLap,
      double pauseLaps,
      double tyresPerLap,
      double cold,
      double runLevel,
      double trafficShare) {

    static final Sizes REALISTIC = new Sizes(0.15, 0.4, 0.010, 10, 0.020, 0.5, 0.02, 0.10);
    static final Sizes CLEAN = new Sizes(0.15, 0, 0, 0, 0, 0, 0, 0);
  }

  private final Random random;
  private final Sizes sizes;
  private final double rho;
  private final double track;
  private final double tyres;
  private final double kept;
  private final double cold;
  private double trackGain;
  private double tyreWear;

  SimulatedDay(Random random, Sizes sizes) {
    this.random = random;
    this.sizes = sizes;
    this.rho = sizes.carryOver() * random.nextDouble();
    this.track = sizes.trackPerLap() * random.nextDouble();
    this.tyres = sizes.tyresPerLap() * random.nextDouble();
    this.kept = random.nextDouble();
    this.cold = sizes.cold() * random.nextDouble();
  }

  /** A run of so many laps, the out-lap and, half of the time, a slow in-lap among them. */
  LapTimes run(String name, int laps, double shift) {
    double level = 55 + shift + sizes.runLevel() * random.nextGaussian();
    double[] seconds = new double[laps];
    double noise = random.nextGaussian();
    double worn = 0;
    for (int lap = 0; lap < laps; lap++) {
      noise = rho * noise + Math.sqrt(1 - rho * rho) * random.nextGaussian();
      double time = level - trackGain + tyreWear + worn + sizes.noise() * noise;
      time += cold * Math.exp(1 - lap);
      if (lap == 0) {
        time += 8 + 5 * random.nextDouble();
      } else if (random.nextDouble() < sizes.trafficShare()) {
        time += 0.2 + 1.5 * random.nextDouble();
      }
      if (lap == laps - 1 && sizes.trafficShare() > 0 && random.nextBoolean()) {
        time += 3 + 4 * random.nextDouble();
      }
      seconds[lap] = Math.round(time * 1000) / 1000.0;
      trackGain += track;
      worn += tyres;
    }
    tyreWear += kept * worn;
    trackGain += track * sizes.pauseLaps() * random.nextDouble();
    return LapTimes.of(name, seconds);
  }

  static Proof proof(long seed, Sizes sizes, int laps, double shift, boolean returnRun) {
    SimulatedDay day = new SimulatedDay(new Random(seed), sizes);
    LapTimes before = day.run("before", laps, 0);
    LapTimes after = day.run("after", laps, shift);
    Optional<LapTimes> again =
        returnRun ? Optional.of(day.run("again", laps, 0)) : Optional.empty();
    return Proof.of(before, after, again, Feel.UNKNOWN);
  }

  /** The share of days with this verdict. */
  static double share(
      Verdict verdict, int days, Sizes sizes, int laps, double shift, boolean returnRun) {
    int hits = 0;
    for (int day = 0; day < days; day++) {
      // Spread the seeds: neighbouring ones start java.util.Random alike.
      long seed = (day + 1) * 0x9E3779B97F4A7C15L + laps;
      if (proof(seed, sizes, laps, shift, returnRun).verdict() == verdict) {
        hits++;
      }
    }
    return hits / (double) days;
  }
}
