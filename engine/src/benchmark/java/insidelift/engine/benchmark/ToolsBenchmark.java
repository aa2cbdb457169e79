package insidelift.engine.benchmark;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.geometry.effect.Prediction;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.DemoSeason;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.laps.LapTimes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What stands around the consultation: geometry, the proof of a change, opening the logbook. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
public class ToolsBenchmark {

  private KartGeometry kart;
  private Path season;
  private LapTimes before;
  private LapTimes after;

  /** Lays out the invented season and takes two of its runs. */
  @Setup
  public void prepare() throws IOException, LogbookProblem {
    season = Files.createTempDirectory("season");
    Logbook logbook = DemoSeason.load(season);
    before = logbook.lapTimes(logbook.runs().get(0).number()).orElseThrow();
    after = logbook.lapTimes(logbook.runs().get(1).number()).orElseThrow();
    kart = KartGeometry.typical();
  }

  /** Wheels and loads over the usual steers at three lateral accelerations. */
  @Benchmark
  public Prediction predict() {
    return Prediction.of(kart, List.of(), List.of(0.0, 1.0, 1.5), -0.1);
  }

  /** Whether the second run was quicker than the first. */
  @Benchmark
  public Proof prove() {
    return Proof.of(before, after);
  }

  /** Opening the season's logbook. */
  @Benchmark
  public Logbook open() throws LogbookProblem {
    return Logbook.read(season);
  }
}
