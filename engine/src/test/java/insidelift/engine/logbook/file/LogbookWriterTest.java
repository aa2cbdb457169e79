package insidelift.engine.logbook.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import insidelift.engine.disk.AppendTarget;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.disk.WriterProcess;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.KartEntry;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A disk that fails, and two writers at once. */
class LogbookWriterTest {

  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("logbook.jsonl");
  }

  /** A real file on a disk with room for so many bytes more. */
  private static AppendTarget.Opener room(int bytes, boolean canCut) {
    return path -> {
      AppendTarget disk = AppendTarget.onDisk(path);
      return new AppendTarget() {
        private int left = bytes;

        @Override
        public void write(ByteBuffer all) throws IOException {
          if (all.remaining() <= left) {
            left -= all.remaining();
            disk.write(all);
            return;
          }
          ByteBuffer part = all.slice(all.position(), left);
          left = 0;
          disk.write(part);
          throw new IOException("No space left on device");
        }

        @Override
        public void force() throws IOException {
          disk.force();
        }

        @Override
        public void cut(long length) throws IOException {
          if (!canCut) {
            throw new IOException("Input/output error");
          }
          disk.cut(length);
        }

        @Override
        public void close() throws IOException {
          disk.close();
        }
      };
    };
  }

  private void begun() throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(Entries.before());
      writer.append(Entries.run(1));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 100, 300})
  void a_full_disk_is_named_and_what_was_saved_stays(int room) throws Exception {
    begun();
    byte[] before = Files.readAllBytes(file());
    try (LogbookWriter writer = LogbookWriter.open(folder, room(room, true), Entries.CLOCK)) {
      assertThatThrownBy(() -> writer.append(Entries.full(2)))
          .isInstanceOf(LogbookProblem.class)
          .hasMessage(
              file()
                  + " cannot be written (No space left on device): what was to be added is not"
                  + " saved, everything before it is intact");
      assertThat(writer.logbook().runs()).hasSize(1);
      assertThatThrownBy(() -> writer.append(Entries.run(3)))
          .isInstanceOf(LogbookProblem.class)
          .hasMessage(file() + " is closed after the failure before; open the logbook again");
    }
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      assertThat(writer.logbook().notices()).isEmpty();
      assertThat(writer.append(Entries.full(2))).isEqualTo(7);
    }
  }

  @Test
  void a_piece_that_cannot_be_cut_off_again_is_found_torn() throws Exception {
    begun();
    try (LogbookWriter writer = LogbookWriter.open(folder, room(100, false), Entries.CLOCK)) {
      assertThatThrownBy(() -> writer.append(Entries.full(2)))
          .isInstanceOf(LogbookProblem.class)
          .hasMessage(
              file()
                  + " cannot be written (No space left on device): what was to be added is not"
                  + " saved, a torn piece of it may be found later, everything before it is"
                  + " intact");
    }
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      assertThat(writer.logbook().notices())
          .extracting(Notice::sentence)
          .containsExactly(
              "The last record was torn, as by a power cut while it was being written: its 100"
                  + " bytes are set aside in logbook.torn-1.txt, and the 6 lines before it are"
                  + " intact.");
      assertThat(writer.logbook().runs()).hasSize(1);
    }
  }

  @Test
  void a_full_disk_at_the_very_first_line_is_named() throws Exception {
    assertThatThrownBy(() -> LogbookWriter.open(folder, room(10, true), Entries.CLOCK))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            file()
                + " cannot be written (No space left on device): what was to be added is not saved,"
                + " everything before it is intact");
    begun();
    assertThat(Logbook.read(folder).runs()).hasSize(1);
  }

  @Test
  void nothing_is_acknowledged_before_it_is_on_the_disk() throws Exception {
    begun();
    StringBuilder order = new StringBuilder();
    AppendTarget.Opener watched =
        path -> {
          AppendTarget disk = AppendTarget.onDisk(path);
          return new AppendTarget() {
            @Override
            public void write(ByteBuffer bytes) throws IOException {
              order.append("write ");
              disk.write(bytes);
            }

            @Override
            public void force() throws IOException {
              order.append("force ");
              disk.force();
            }

            @Override
            public void cut(long length) {
              order.append("cut ");
            }

            @Override
            public void close() throws IOException {
              disk.close();
            }
          };
        };
    try (LogbookWriter writer = LogbookWriter.open(folder, watched, Entries.CLOCK)) {
      writer.append(Entries.run(2));
      order.append("acknowledged");
    }
    assertThat(order).hasToString("write force acknowledged");
  }

  @Test
  void a_disk_that_does_not_take_the_bytes_for_good_gives_no_acknowledgement() throws Exception {
    begun();
    byte[] before = Files.readAllBytes(file());
    AppendTarget.Opener unsure =
        path -> {
          AppendTarget disk = AppendTarget.onDisk(path);
          return new AppendTarget() {
            private boolean once;

            @Override
            public void write(ByteBuffer bytes) throws IOException {
              disk.write(bytes);
            }

            @Override
            public void force() throws IOException {
              if (!once) {
                once = true;
                throw new IOException("Input/output error");
              }
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
        };
    try (LogbookWriter writer = LogbookWriter.open(folder, unsure, Entries.CLOCK)) {
      assertThatThrownBy(() -> writer.append(Entries.run(2))).isInstanceOf(LogbookProblem.class);
    }
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void a_folder_without_permission_is_named_and_nothing_is_lost() throws Exception {
    begun();
    byte[] before = Files.readAllBytes(file());
    AppendTarget.Opener refusing =
        path -> {
          throw new AccessDeniedException(path.toString());
        };
    assertThatThrownBy(() -> LogbookWriter.open(folder, refusing, Entries.CLOCK))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            "the logbook in "
                + folder
                + " cannot be opened for writing (no permission); nothing in it was changed");
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
    LogbookWriter.open(folder).close();
  }

  @Test
  void a_read_only_folder_can_still_be_read() throws Exception {
    assumeThat(System.getProperty("user.name")).as("nothing stops root").isNotEqualTo("root");
    Path locked = Files.createDirectory(folder.resolve("locked"));
    assumeThat(locked.toFile().setWritable(false)).isTrue();
    try {
      assertThatThrownBy(() -> LogbookWriter.open(locked))
          .isInstanceOf(LogbookProblem.class)
          .hasMessage(
              "the logbook in "
                  + locked
                  + " cannot be opened for writing (no permission); nothing in it was changed");
      assertThat(Logbook.read(locked).isEmpty()).isTrue();
    } finally {
      assertThat(locked.toFile().setWritable(true)).isTrue();
    }
  }

  @Test
  void a_file_in_the_folders_place_is_named() throws Exception {
    Path inTheWay = Files.writeString(folder.resolve("in-the-way"), "x");
    assertThatThrownBy(() -> LogbookWriter.open(inTheWay))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            "the logbook in "
                + inTheWay
                + " cannot be opened for writing (there is a file in its place); nothing in it was"
                + " changed");
  }

  @Test
  void a_second_writer_is_refused_in_the_same_program_and_in_another() throws Exception {
    String taken =
        "another Insidelift is writing to the logbook in "
            + folder
            + ": close it, or wait until it is done, and try again";
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      assertThatThrownBy(() -> LogbookWriter.open(folder, AppendTarget::onDisk, Entries.CLOCK))
          .isInstanceOf(LogbookProblem.class)
          .hasMessage(taken);
      // The first writer must still hold the lock after the refusal above.
      assertThat(WriterProcess.output(folder, "hold")).isEqualTo(taken + "\n");
      writer.append(Entries.KART);
    }
    assertThat(WriterProcess.output(folder, "hold")).isEqualTo("open\n");
  }

  @Test
  void a_writer_waits_for_another_and_says_so_after_a_second() throws Exception {
    List<String> said = new java.util.concurrent.CopyOnWriteArrayList<>();
    LogbookWriter first = LogbookWriter.open(folder);
    CompletableFuture<Integer> second =
        CompletableFuture.supplyAsync(
            () -> {
              try (LogbookWriter writer = LogbookWriter.open(folder, () -> said.add("waiting"))) {
                return writer.append(Entries.KART);
              } catch (LogbookProblem e) {
                throw new AssertionError(e);
              }
            });
    long begun = System.nanoTime();
    while (said.isEmpty() && System.nanoTime() - begun < 15_000_000_000L) {
      LockSupport.parkNanos(10_000_000);
    }
    assertThat(System.nanoTime() - begun).isGreaterThan(900_000_000L);
    first.close();
    assertThat(second.get(20, TimeUnit.SECONDS)).isEqualTo(2);
    assertThat(said).containsExactly("waiting");
  }

  @Test
  void ten_writers_at_once_lose_none_of_five_hundred_records() {
    List<CompletableFuture<Void>> all = new ArrayList<>();
    for (int writer = 0; writer < 10; writer++) {
      int number = writer;
      all.add(CompletableFuture.runAsync(() -> fifty(number), Executors.newSingleThreadExecutor()));
    }
    all.forEach(CompletableFuture::join);
    assertThat(readBack().karts()).hasSize(500);
    assertThat(readBack().notices()).isEmpty();
  }

  private void fifty(int writer) {
    for (int i = 0; i < 50; i++) {
      try (LogbookWriter one = LogbookWriter.open(folder)) {
        one.append(KartEntry.named("Kart " + writer + "-" + i));
      } catch (LogbookProblem e) {
        throw new AssertionError(e);
      }
    }
  }

  private Logbook readBack() {
    try {
      return Logbook.read(folder);
    } catch (LogbookProblem e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void a_pipe_in_the_place_of_the_lock_is_not_waited_for() throws Exception {
    Files.createDirectories(folder);
    Path lock = folder.resolve("logbook.lock");
    assertThat(new ProcessBuilder("mkfifo", lock.toString()).start().waitFor()).isZero();
    assertThatThrownBy(() -> LogbookWriter.open(folder))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(lock.toRealPath() + " is no ordinary file; move it away");
  }

  @Test
  void what_is_kept_is_for_its_owner_alone() throws Exception {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(Entries.KART);
    }
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
        .isEqualTo("rwx------");
    for (String name : List.of("logbook.jsonl", "logbook.lock", "logbook.seal")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(name))))
          .as(name)
          .isEqualTo("rw-------");
    }
  }

  @Test
  void a_writer_that_was_killed_leaves_no_lock() throws Exception {
    Process other = WriterProcess.start(folder, "hold");
    assertThat(other.inputReader().readLine()).isEqualTo("open");
    assertThatThrownBy(() -> LogbookWriter.open(folder, AppendTarget::onDisk, Entries.CLOCK))
        .isInstanceOf(LogbookProblem.class)
        .hasMessageStartingWith("another Insidelift is writing");
    other.destroyForcibly();
    assertThat(other.waitFor(20, TimeUnit.SECONDS)).isTrue();
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      assertThat(writer.append(Entries.KART)).isEqualTo(2);
    }
  }
}
