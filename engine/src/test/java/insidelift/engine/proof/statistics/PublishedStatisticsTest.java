package insidelift.engine.proof.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.proof.Trend;
import insidelift.engine.proof.laps.CleanRun;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.statistics.ClassicTests.RankSum;
import insidelift.engine.proof.statistics.ClassicTests.Welch;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.hipparchus.stat.inference.MannWhitneyUTest;
import org.hipparchus.stat.inference.TTest;
import org.junit.jupiter.api.Test;

/** Results that others published, and the opinion of a second library. */
class PublishedStatisticsTest {

  /** Extra sleep in hours, Student (1908), as in R's data set {@code sleep}. */
  private static final double[] SLEEP_1 = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};

  private static final double[] SLEEP_2 = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

  /** Permeability, Hollander &amp; Wolfe (1973), the example of R's {@code wilcox.test}. */
  private static final double[] TERM = {0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46};

  private static final double[] EARLY = {1.15, 0.88, 0.90, 0.74, 1.21};

  /** Age at diagnosis, the worked example in the documentation of SciPy's mannwhitneyu. */
  private static final double[] MALES = {19, 22, 16, 29, 24};

  private static final double[] FEMALES = {20, 11, 17, 12};

  @Test
  void welchOnTheSleepData() {
    Welch welch = Welch.of(SLEEP_1, SLEEP_2);
    assertThat(welch.t()).isCloseTo(-1.8608, within(5e-5));
    assertThat(welch.df()).isCloseTo(17.776, within(5e-4));
    assertThat(welch.p()).isCloseTo(0.07939, within(5e-6));
  }

  @Test
  void rankSumOnThePermeabilityData() {
    RankSum greater = RankSum.of(TERM, EARLY, AlternativeHypothesis.GREATER_THAN);
    assertThat(greater.u()).isEqualTo(35);
    assertThat(greater.p()).isCloseTo(0.1272, within(5e-5));
  }

  @Test
  void hodgesLehmannOnThePermeabilityData() {
    // R's wilcox.test with conf.int gives 0.305 and -0.15 to 0.76 (from memory).
    HodgesLehmann shift = HodgesLehmann.of(EARLY, TERM, 0.95);
    assertThat(shift.shift()).isCloseTo(0.305, within(1e-12));
    assertThat(shift.low()).isCloseTo(-0.15, within(1e-12));
    assertThat(shift.high()).isCloseTo(0.76, within(1e-12));
  }

  @Test
  void rankSumOnTheExampleOfSciPy() {
    RankSum rank = RankSum.of(MALES, FEMALES);
    assertThat(rank.u()).isEqualTo(17);
    assertThat(rank.p()).isCloseTo(0.1111111111111111, within(1e-12));
  }

  @Test
  void aSecondLibraryAgrees() {
    assertThat(Welch.of(SLEEP_1, SLEEP_2).t())
        .isCloseTo(new TTest().t(SLEEP_1, SLEEP_2), within(1e-12));
    assertThat(Welch.of(SLEEP_1, SLEEP_2).p())
        .isCloseTo(new TTest().tTest(SLEEP_1, SLEEP_2), within(1e-12));
    assertThat(RankSum.of(TERM, EARLY).p())
        .isCloseTo(new MannWhitneyUTest().mannWhitneyUTest(TERM, EARLY), within(1e-12));
  }

  @Test
  void michelsonsSpeedOfLight() throws IOException {
    double[] values = nist("michelso.txt");
    assertThat(values).hasSize(100);
    assertThat(Sample.mean(values)).isCloseTo(299.8524, within(1e-12));
    assertThat(Sample.standardDeviation(values)).isCloseTo(0.0790105478190518, within(1e-13));
    assertThat(Autocorrelation.lag1(values)).isCloseTo(0.535199668621283, within(1e-12));
  }

  @Test
  void lewsBeam() throws IOException {
    double[] values = nist("lew.txt");
    assertThat(values).hasSize(200);
    assertThat(Sample.mean(values)).isCloseTo(-177.435, within(1e-12));
    assertThat(Sample.standardDeviation(values)).isCloseTo(277.332168044316, within(1e-11));
    assertThat(Autocorrelation.lag1(values)).isCloseTo(-0.307304800605679, within(1e-13));
  }

  @Test
  void onePooledRunIsThePlainAutocorrelation() throws IOException {
    double[] values = nist("michelso.txt");
    double[] places = new double[values.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = i;
    }
    assertThat(Autocorrelation.pooled(List.of(values), List.of(places)))
        .isCloseTo(Autocorrelation.lag1(values), within(1e-14));
  }

  @Test
  void theMedianSlopeIgnoresOneWildLap() {
    // The slopes between pairs are 1.2, 0.95, ..., 4.9 with median 1.2, as SciPy's theilslopes
    // says.
    LapTimes times = LapTimes.of("steps", 99, 11, 12.2, 12.9, 14.1, 19);
    CleanRun all = new CleanRun("before", 6, 1, times.laps().subList(1, 6), List.of());
    assertThat(Trend.medianSlope(List.of(all))).isCloseTo(1.2, within(1e-12));
  }

  private static double[] nist(String file) throws IOException {
    try (InputStream in = PublishedStatisticsTest.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .mapToDouble(Double::parseDouble)
          .toArray();
    }
  }
}
