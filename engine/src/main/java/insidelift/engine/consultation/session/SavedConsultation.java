package insidelift.engine.consultation.session;

import insidelift.engine.disk.OwnFiles;
import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.casefile.CaseWriter;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * The consultation that is going on, kept on disk after every answer so that nothing typed is lost,
 * whatever ends the program. The file is a case: {@code advise} reads it as it stands.
 */
public final class SavedConsultation implements AutoCloseable {

  private static final String OPEN = "open-consultation.json";
  private static final String LAST = "last-consultation.json";
  private static final String LOCK = "consultation.lock";

  private final Path folder;
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final Vocabulary vocabulary;
  private String aside = "";
  private FileChannel claim;

  /** The consultation kept in a folder, which is made when first needed. */
  public SavedConsultation(Path folder, Vocabulary vocabulary) {
    this.folder = folder;
    this.vocabulary = vocabulary;
  }

  /** A consultation that was not finished. */
  public record Unfinished(Situation situation, Instant when) {}

  /**
   * The unfinished consultation, if there is one that can be read. One that cannot, because it is
   * damaged or of another version, is put aside under a dated name and not written over.
   */
  public Optional<Unfinished> unfinished() {
    Path file = folder.resolve(OPEN);
    if (!Files.isRegularFile(file)) {
      // Whoever waits for a pipe or a device waits for ever.
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      Situation situation = new CaseReader(vocabulary).read(in);
      return Optional.of(new Unfinished(situation, Files.getLastModifiedTime(file).toInstant()));
    } catch (CaseProblem e) {
      putAside(file);
      return Optional.empty();
    } catch (IOException e) {
      // Whether this disk can keep anything shows with the first answer.
      return Optional.empty();
    }
  }

  /**
   * Whether this consultation may be kept here: another one that is going on in the same folder
   * would overwrite it, and be overwritten. Where there is no folder yet, nobody else is in it.
   */
  public boolean claimed() {
    Path file = folder.resolve(LOCK);
    if (claim != null || !Files.isDirectory(folder)) {
      return true;
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      // Whoever opens a pipe waits for ever.
      return true;
    }
    try {
      FileChannel channel =
          OwnFiles.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (locked(channel)) {
        claim = channel;
        return true;
      }
      channel.close();
      return false;
    } catch (IOException e) {
      // Whether this disk can keep anything shows with the first answer.
      return true;
    }
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      // By another consultation of this program.
      return false;
    }
  }

  /** Lets another consultation be kept here. */
  @Override
  public void close() {
    try {
      if (claim != null) {
        claim.close();
      }
    } catch (IOException e) {
      // The system takes the lock back when the program ends.
      return;
    } finally {
      claim = null;
    }
  }

  private void putAside(Path file) {
    String name = OPEN.replace(".json", "-" + WHEN.format(Instant.now()) + ".json");
    try {
      Files.move(file, folder.resolve(name));
      aside = name;
    } catch (IOException e) {
      // Then it is written over, as is said where nothing can be kept.
      aside = "";
    }
  }

  /** The name of what was put aside because it cannot be read; empty if nothing was. */
  public String aside() {
    return aside;
  }

  /** Keeps what is known so far. The old file stays whole until the new one is on the disk. */
  public void keep(Situation situation) throws IOException {
    OwnFiles.makeFolder(folder);
    if (!claimed()) {
      throw new IOException("another consultation is kept here");
    }
    OwnFiles.replace(
        folder.resolve(OPEN),
        new CaseWriter(vocabulary).write(situation).getBytes(StandardCharsets.UTF_8));
  }

  /** Puts the finished consultation aside as the last one. */
  public void finish() throws IOException {
    Files.move(
        folder.resolve(OPEN),
        folder.resolve(LAST),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  /**
   * The consultation that was finished last, if there is one.
   *
   * @throws CaseProblem if what stands in its place cannot be read
   */
  public Optional<Situation> finished() throws CaseProblem {
    Path file = folder.resolve(LAST);
    if (Files.notExists(file)) {
      return Optional.empty();
    }
    if (!Files.isRegularFile(file)) {
      throw new CaseProblem(LAST + " is no ordinary file; move it away");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(new CaseReader(vocabulary).read(in));
    } catch (IOException e) {
      throw new CaseProblem(LAST + " cannot be read");
    }
  }

  /** Forgets the unfinished consultation. */
  public void forget() throws IOException {
    Files.deleteIfExists(folder.resolve(OPEN));
  }
}
