package insidelift.engine.logbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.disk.WriterProcess;
import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program in the middle of writing, again and again in the same folder. The ordinary build
 * kills 50 times; {@code -Dlogbook.kills=2000} kills more.
 */
class LogbookKillTest {

  private static final int KILLS = Integer.getInteger("logbook.kills", 50);

  /** Kills in one folder before the next one is begun, so that logbooks stay short. */
  private static final int KILLS_A_FOLDER = 25;

  @TempDir private Path temp;

  private int acknowledged;
  private int torn;

  @Test
  void no_acknowledged_record_is_lost_and_none_is_torn_unnoticed() throws Exception {
    Random random = new Random(20260412);
    long all = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Path folder = temp.resolve("folder " + kill / KILLS_A_FOLDER);
      if (kill % KILLS_A_FOLDER == 0) {
        all += acknowledged;
        acknowledged = 1;
      }
      killed(folder, kill % 2 == 0 ? "crumbs" : "write", random);
      checked(folder);
    }
    all += acknowledged;
    System.out.printf(
        "%d kills, %d records acknowledged, %d torn and set aside%n", KILLS, all, torn);
    assertThat(torn).as("kills that met a record half written").isPositive();
    assertThat(all).as("records acknowledged").isGreaterThan(KILLS);
  }

  private void killed(Path folder, String task, Random random) throws Exception {
    Process writer = WriterProcess.start(folder, task);
    int enough = 1 + random.nextInt(20);
    try (BufferedReader said = writer.inputReader()) {
      for (int i = 0; i < enough; i++) {
        heard(said.readLine());
      }
      LockSupport.parkNanos(random.nextInt(3_000_000));
      // Through its handle: the process itself would close its output before it is read.
      assertThat(writer.toHandle().destroyForcibly()).isTrue();
      // What it said before it died counts as acknowledged, whenever we come to read it.
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        if (line.matches("ack \\d+")) {
          heard(line);
        }
      }
    }
    assertThat(writer.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(writer.exitValue()).isNotZero();
  }

  private void heard(String line) {
    assertThat(line).startsWith("ack ");
    acknowledged = Integer.parseInt(line.substring(4));
  }

  private void checked(Path folder) throws Exception {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      Logbook book = writer.logbook();
      for (Notice notice : book.notices()) {
        assertThat(notice).isInstanceOf(Notice.SetAside.class);
        torn++;
      }
      assertThat(writer.next()).isGreaterThan(acknowledged).isLessThanOrEqualTo(acknowledged + 2);
      for (Line line : book.lines()) {
        assertThat(line.entry()).isEqualTo(WriterProcess.entry(line.number()));
      }
      assertThat(book.lines()).hasSize(writer.next() - 2);
      acknowledged = writer.next() - 1;
    }
  }
}
