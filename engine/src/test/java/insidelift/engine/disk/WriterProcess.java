package insidelift.engine.disk;

import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.proof.laps.LapTimes;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * A program of its own that writes to a logbook. {@code hold} opens it, says {@code open} and waits
 * for its input to end; {@code write} and {@code crumbs} add runs and say {@code ack 17} for each
 * that is acknowledged, {@code crumbs} in pieces of a few bytes.
 */
public final class WriterProcess {

  /** Runs a day takes here before the next day begins. */
  static final int RUNS_A_DAY = 100;

  private WriterProcess() {}

  public static Process start(Path folder, String task) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-cp",
            System.getProperty("java.class.path"),
            WriterProcess.class.getName(),
            folder.toString(),
            task)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** All that it says with nothing to wait for. */
  public static String output(Path folder, String task) throws Exception {
    Process process = start(folder, task);
    process.getOutputStream().close();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("it did not end");
    }
    return output;
  }

  /** What the writer writes as a record of that number: known beforehand, different for each. */
  public static Entry entry(int number) {
    if (number < Entries.DAY_RECORD) {
      return Entries.before().get(number - 2);
    }
    int place = (number - Entries.DAY_RECORD) % (RUNS_A_DAY + 1);
    if (place == 0) {
      int day = (number - Entries.DAY_RECORD) / (RUNS_A_DAY + 1);
      return new DayEntry(Entries.DAY.date().plusDays(day), Entries.TRACK_RECORD, "day " + day);
    }
    double[] laps = new double[20];
    for (int i = 0; i < laps.length; i++) {
      laps[i] = 60 + (number * 31 + i * 7) % 1000 / 1000.0;
    }
    return RunEntry.started(number - place, Entries.KART_RECORD, Entries.DRIVER_RECORD, place)
        .with(LapTimes.of("run", laps));
  }

  /** Writes a few bytes at a time and dawdles, so that a kill finds records half written. */
  private static AppendTarget crumbs(Path file) throws IOException {
    AppendTarget disk = AppendTarget.onDisk(file);
    return new AppendTarget() {
      @Override
      public void write(ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
          int size = Math.min(16, bytes.remaining());
          disk.write(bytes.slice(bytes.position(), size));
          bytes.position(bytes.position() + size);
          LockSupport.parkNanos(20_000);
        }
      }

      @Override
      public void force() throws IOException {
        disk.force();
      }

      @Override
      public void cut(long length) throws IOException {
        disk.cut(length);
      }

      @Override
      public void close() throws IOException {
        disk.close();
      }
    };
  }

  /** The program. */
  public static void main(String[] args) throws IOException {
    AppendTarget.Opener opener =
        args[1].equals("crumbs") ? WriterProcess::crumbs : AppendTarget::onDisk;
    try (LogbookWriter writer =
        LogbookWriter.open(Path.of(args[0]), opener, java.time.InstantSource.system())) {
      if (args[1].equals("hold")) {
        System.out.println("open");
        System.in.read();
        return;
      }
      // Ends by itself when nobody listens any more, should the test be gone.
      while (!System.out.checkError()) {
        System.out.println("ack " + writer.append(entry(writer.next())));
      }
    } catch (LogbookProblem e) {
      System.out.println(e.getMessage());
    }
  }
}
