package insidelift.engine.logbook;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.use.LogTables;
import insidelift.engine.proof.laps.LapTimes;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;

/**
 * Makes an invented logbook of many seasons and measures how long it takes to open: {@code
 * LongLogbook make FOLDER [RUNS]} writes it, {@code LongLogbook open FOLDER} opens it in one
 * program again and again, and prints milliseconds; a fresh program is timed from outside.
 */
final class LongLogbook {

  static final int RUNS = 5_000;
  private static final int RUNS_A_DAY = 10;
  private static final int LAPS = 20;
  private static final int REPEATS = 20;

  private LongLogbook() {}

  /** Writes so many runs of twenty laps, each with set-up, answers, pressures and treads. */
  static void make(Path folder, int runs) throws LogbookProblem {
    Random random = new Random(20260412);
    List<Entry> entries = new ArrayList<>(Entries.before().subList(0, 3));
    int day = 0;
    for (int run = 0; run < runs; run++) {
      int place = run % RUNS_A_DAY;
      if (place == 0) {
        LocalDate date = Entries.DAY.date().plusDays(7L * (run / RUNS_A_DAY));
        entries.add(new DayEntry(date, Entries.TRACK_RECORD, "practice"));
        day = entries.size() + 1;
      }
      entries.add(run(day, place + 1, random));
    }
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(entries);
    }
  }

  private static RunEntry run(int day, int place, Random random) {
    double[] seconds = new double[LAPS];
    for (int lap = 0; lap < LAPS; lap++) {
      seconds[lap] = Math.round((52 + random.nextGaussian() * 0.2) * 1000) / 1000.0;
    }
    seconds[0] += 9;
    RunEntry full = Entries.full(place);
    return RunEntry.started(day, Entries.KART_RECORD, Entries.DRIVER_RECORD, place)
        .with(full.situation())
        .withSettings(full.settings())
        .with(full.tyres())
        .felt(full.feel(), full.said())
        .with(LapTimes.of("run", seconds));
  }

  /** The program. */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[1]);
    if (args[0].equals("make")) {
      make(folder, args.length > 2 ? Integer.parseInt(args[2]) : RUNS);
      System.out.printf("%,d bytes%n", Files.size(folder.resolve(Logbook.FILE)));
      return;
    }
    time("days and counts of runs", () -> LogTables.days(Logbook.read(folder)));
    time("the last run, whole", () -> Logbook.read(folder).lastWritten());
    time("every run, whole", () -> Logbook.read(folder).runs());
  }

  private static void time(String what, Callable<?> opening) throws Exception {
    long[] wall = new long[REPEATS + 1];
    long[] cpu = new long[REPEATS + 1];
    ThreadMXBean thread = ManagementFactory.getThreadMXBean();
    for (int i = 0; i < wall.length; i++) {
      long start = System.nanoTime();
      long worked = thread.getCurrentThreadCpuTime();
      opening.call();
      cpu[i] = (thread.getCurrentThreadCpuTime() - worked) / 1_000_000;
      wall[i] = (System.nanoTime() - start) / 1_000_000;
    }
    System.out.printf(
        "%s: first %d ms (%d ms of one core), then median %d ms (%d ms)%n",
        what, wall[0], cpu[0], median(wall), median(cpu));
  }

  private static long median(long[] millis) {
    long[] later = Arrays.copyOfRange(millis, 1, millis.length);
    Arrays.sort(later);
    return later[later.length / 2];
  }
}
