package insidelift.engine.logbook.file;

import insidelift.engine.disk.AppendTarget;
import insidelift.engine.disk.Disk;
import insidelift.engine.disk.Lock;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.disk.OwnFiles;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.json.EntryJson;
import insidelift.shared.situation.InputLimits;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Adds to a logbook. Only one writer at a time has a folder; what {@link #append} has returned for
 * is on the disk. Not for several threads.
 */
public final class LogbookWriter implements AutoCloseable {

  private final Path file;
  private final Lock lock;
  private final AppendTarget tape;
  private final InstantSource clock;
  private final List<Notice> notices = new ArrayList<>();
  private Records records;
  private int last;
  private long length;
  private boolean failed;

  private LogbookWriter(Path file, Lock lock, AppendTarget tape, InstantSource clock, Scan scan) {
    this.file = file;
    this.lock = lock;
    this.tape = tape;
    this.clock = clock;
    this.records = scan.records();
    this.last = scan.last();
    this.length = scan.whole();
    this.notices.addAll(scan.notices());
  }

  /**
   * Opens the logbook of a folder for writing, and makes both if they are not there. A torn last
   * record is set aside into a file beside the logbook; {@link Logbook#notices} tells.
   *
   * @throws LogbookProblem if another writer has it for 60 s, if it is no logbook or a newer one,
   *     or if the disk refuses
   */
  public static LogbookWriter open(Path folder) throws LogbookProblem {
    return open(folder, () -> {});
  }

  /**
   * The same.
   *
   * @param waiting told once, when another writer has been waited for for a second
   */
  public static LogbookWriter open(Path folder, Runnable waiting) throws LogbookProblem {
    return open(folder, AppendTarget::onDisk, InstantSource.system(), Lock.PATIENCE, waiting);
  }

  /** The same for a writer that does not wait. */
  public static LogbookWriter open(Path folder, AppendTarget.Opener opener, InstantSource clock)
      throws LogbookProblem {
    return open(folder, opener, clock, Duration.ZERO, () -> {});
  }

  private static LogbookWriter open(
      Path folder,
      AppendTarget.Opener opener,
      InstantSource clock,
      Duration patience,
      Runnable waiting)
      throws LogbookProblem {
    Path file = folder.resolve(Logbook.FILE);
    Lock lock = null;
    AppendTarget tape = null;
    LogbookWriter opened = null;
    try {
      Disk.make(folder);
      lock = Lock.take(folder, patience, waiting);
      byte[] bytes = Disk.read(file);
      Scan scan = Scan.of(Disk.shown(file), bytes, Seal.read(folder));
      tape = opener.open(file);
      LogbookWriter writer = new LogbookWriter(file, lock, tape, clock, scan);
      writer.begin(bytes, scan);
      opened = writer;
      return writer;
    } catch (IOException e) {
      throw new LogbookProblem(
          "the logbook in "
              + Disk.shown(folder)
              + " cannot be opened for writing ("
              + Disk.reason(e)
              + "); nothing in it was changed",
          e);
    } finally {
      if (opened == null) {
        quietly(tape);
        quietly(lock);
      }
    }
  }

  /** The logbook as it stands now. */
  public Logbook logbook() {
    return new Logbook(new Records(records), notices);
  }

  /** The number that the next record will have. */
  public int next() {
    return last + 1;
  }

  /**
   * Adds a record, and returns when it is on the disk.
   *
   * @return its number
   * @throws RefusedEntryException if it does not fit those before it
   * @throws LogbookProblem if the disk refuses; then it is not saved, and this writer is of no more
   *     use
   */
  public int append(Entry entry) throws LogbookProblem {
    return append(List.of(entry)).get(0);
  }

  /**
   * Adds records in this order, and returns when all are on the disk. They may refer to each other
   * by the numbers from {@link #next} on. If the machine stops meanwhile, some of the first may be
   * there.
   *
   * @return their numbers
   * @throws RefusedEntryException if one does not fit those before it; then none is added
   * @throws LogbookProblem if the disk refuses; then none is saved, and this writer is of no more
   *     use
   */
  public List<Integer> append(List<Entry> entries) throws LogbookProblem {
    String at = now();
    Records more = entries.size() == 1 ? records : new Records(records);
    List<Line> added = new ArrayList<>();
    List<byte[]> parts = new ArrayList<>();
    int bytes = 0;
    for (Entry entry : entries) {
      Line line = new Line(last + 1 + added.size(), at, entry);
      Optional<String> misfit = more.misfit(line.held());
      if (misfit.isPresent()) {
        throw new RefusedEntryException(EntryJson.kind(entry.getClass()), misfit.get());
      }
      byte[] part = LineFormat.write(line);
      if (part.length > InputLimits.MAX_LOG_LINE) {
        throw new RefusedEntryException(
            EntryJson.kind(entry.getClass()), "it holds too much for one record");
      }
      if (more != records) {
        more.add(line);
      }
      added.add(line);
      parts.add(part);
      bytes = Math.addExact(bytes, part.length);
    }
    if (length + bytes > InputLimits.MAX_LOG_BYTES) {
      throw new LogbookProblem(Disk.shown(file) + " is full: start a new one in another folder");
    }
    ByteBuffer all = ByteBuffer.allocate(bytes);
    parts.forEach(all::put);
    write(all.flip());
    if (more == records) {
      added.forEach(records::add);
    }
    records = more;
    last += added.size();
    Seal.write(folder(), last, at);
    return added.stream().map(Line::number).toList();
  }

  /** Lets others write. */
  @Override
  public void close() {
    quietly(tape);
    quietly(lock);
  }

  private void begin(byte[] bytes, Scan scan) throws IOException, LogbookProblem {
    if (scan.unfinished() > 0) {
      setAside(Arrays.copyOfRange(bytes, scan.whole(), bytes.length), scan.intact());
    }
    if (scan.endMissing()) {
      write(ByteBuffer.wrap(new byte[] {'\n'}));
    }
    if (last == 0) {
      write(ByteBuffer.wrap(LineFormat.header(now())));
      last = 1;
      Disk.forceNames(folder());
    }
    Seal.write(folder(), last, now());
  }

  private Path folder() {
    return file.toAbsolutePath().getParent();
  }

  private String now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  /** Copies the torn record into a file of its own first, so that no failure can lose it. */
  private void setAside(byte[] torn, int before) throws IOException {
    Path aside = unusedName();
    try {
      OwnFiles.create(aside, torn);
    } catch (IOException e) {
      Files.deleteIfExists(aside);
      throw e;
    }
    Disk.forceNames(folder());
    tape.cut(length);
    tape.force();
    notices.add(new Notice.SetAside(torn.length, String.valueOf(aside.getFileName()), before));
  }

  /** The first name that no earlier torn record has; the lock keeps others from taking it. */
  private Path unusedName() {
    int number = 1;
    while (Files.exists(torn(number))) {
      number++;
    }
    return torn(number);
  }

  private Path torn(int number) {
    return file.resolveSibling("logbook.torn-" + number + ".txt");
  }

  private void write(ByteBuffer bytes) throws LogbookProblem {
    if (failed) {
      throw new LogbookProblem(
          Disk.shown(file) + " is closed after the failure before; open the logbook again");
    }
    int size = bytes.remaining();
    try {
      tape.write(bytes);
      tape.force();
      length += size;
    } catch (IOException e) {
      failed = true;
      throw new LogbookProblem(
          "%s cannot be written (%s): what was to be added is not saved, %severything before it is intact"
              .formatted(
                  Disk.shown(file),
                  Disk.reason(e),
                  takenBack() ? "" : "a torn piece of it may be found later, "),
          e);
    }
  }

  /** Whether the piece that was written before the failure could be cut off again. */
  private boolean takenBack() {
    try {
      tape.cut(length);
      tape.force();
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static void quietly(java.io.Closeable closeable) {
    try {
      if (closeable != null) {
        closeable.close();
      }
    } catch (IOException e) {
      // All that was acknowledged is on the disk already, so there is nothing to lose here.
      return;
    }
  }
}
