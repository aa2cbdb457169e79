package insidelift.engine.logbook.file;

import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.shared.situation.CaseProblem;
import java.util.Optional;

/**
 * What a record says. The rest of a run is read when it is first asked for; every other kind is
 * there at once.
 */
public final class RecordContent {

  /** The bytes that the rest can be read from. */
  interface Source {
    /**
     * The whole entry.
     *
     * @throws CaseProblem if it is none; the message names the place
     */
    Entry read() throws CaseProblem;
  }

  private final Class<? extends Entry> kind;
  private final Optional<RunKey> run;
  private Source source;
  private Entry entry;
  private String damage;

  private RecordContent(
      Class<? extends Entry> kind, Optional<RunKey> run, Source source, Entry entry) {
    this.kind = kind;
    this.run = run;
    this.source = source;
    this.entry = entry;
  }

  /** An entry that is there. */
  static RecordContent of(Entry entry) {
    Optional<RunKey> run =
        entry instanceof RunEntry driven ? Optional.of(RunKey.of(driven)) : Optional.empty();
    return new RecordContent(entry.getClass(), run, null, entry);
  }

  /** A run of which only this is read yet. */
  static RecordContent run(RunKey key, Source rest) {
    return new RecordContent(RunEntry.class, Optional.of(key), rest, null);
  }

  public Class<? extends Entry> kind() {
    return kind;
  }

  /** What it is found by, if it is a run. */
  Optional<RunKey> run() {
    return run;
  }

  /** What it says; empty if its line turns out not to be what this version writes. */
  synchronized Optional<Entry> entry() {
    if (source != null) {
      try {
        entry = source.read();
      } catch (CaseProblem e) {
        damage = String.valueOf(e.getMessage());
      }
      source = null;
    }
    return Optional.ofNullable(entry);
  }

  /** What is wrong with it, as far as it has been read. */
  synchronized Optional<String> damage() {
    return Optional.ofNullable(damage);
  }
}
