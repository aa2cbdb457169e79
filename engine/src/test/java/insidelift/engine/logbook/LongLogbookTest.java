package insidelift.engine.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.LogTables;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongLogbookTest {

  /** By the work of the thread, so that a busy machine does not fail it. */
  @Test
  void five_thousand_runs_of_twenty_laps_open_in_under_a_second(@TempDir Path folder)
      throws Exception {
    LongLogbook.make(folder, LongLogbook.RUNS);
    var thread = ManagementFactory.getThreadMXBean();
    long start = thread.getCurrentThreadCpuTime();
    Logbook book = Logbook.read(folder);
    assertThat(LogTables.days(book)).hasSize(1 + LongLogbook.RUNS / 10);
    assertThat(book.lastWritten().orElseThrow().entry().laps()).hasSize(20);
    Duration worked = Duration.ofNanos(thread.getCurrentThreadCpuTime() - start);
    assertThat(worked).isLessThan(Duration.ofSeconds(1));
    assertThat(book.notices()).isEmpty();
    assertThat(book.runs()).hasSize(LongLogbook.RUNS);
  }
}
