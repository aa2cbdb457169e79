package insidelift.engine.logbook.file;

import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.json.EntryJson;
import insidelift.shared.situation.Printable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What the lines so far say together: each record as corrected, and what a new one must fit. */
public final class Records {

  private final List<Line> lines = new ArrayList<>();
  private final Map<Integer, Class<? extends Entry>> originals = new HashMap<>();
  private final Map<Integer, RecordContent> current = new TreeMap<>();
  private final Set<Integer> corrected = new HashSet<>();

  /** What may be there only once, such as a name, and the record that has it. */
  private final Map<List<?>, Integer> taken = new HashMap<>();

  Records() {}

  Records(Records other) {
    lines.addAll(other.lines);
    originals.putAll(other.originals);
    current.putAll(other.current);
    corrected.addAll(other.corrected);
    taken.putAll(other.taken);
  }

  /** Whether there is no record at all. */
  boolean isEmpty() {
    return lines.isEmpty();
  }

  /** Every line that can be read, in order. */
  List<Line> lines() {
    return lines.stream().filter(line -> line.held().entry().isPresent()).toList();
  }

  /** What turned out to be damaged so far. */
  List<Notice> damage() {
    List<Notice> damage = new ArrayList<>();
    for (Line line : lines) {
      line.held().damage().ifPresent(what -> damage.add(new Notice.Damaged(line.number(), what)));
    }
    return damage;
  }

  Optional<Entry> now(int number) {
    return Optional.ofNullable(current.get(number)).flatMap(RecordContent::entry);
  }

  /** What each run is found by, by number. */
  Map<Integer, RunKey> runs() {
    Map<Integer, RunKey> runs = new LinkedHashMap<>();
    current.forEach((number, held) -> held.run().ifPresent(key -> runs.put(number, key)));
    return runs;
  }

  boolean corrected(int number) {
    return corrected.contains(number);
  }

  /** All records of a kind as they stand, by number. */
  <E extends Entry> List<Numbered<E>> all(Class<E> kind) {
    List<Numbered<E>> all = new ArrayList<>();
    current.forEach(
        (number, held) -> {
          if (held.kind() == kind) {
            held.entry()
                .ifPresent(e -> all.add(new Numbered<>(number, kind.cast(e), corrected(number))));
          }
        });
    return all;
  }

  /** Why an entry does not fit those before it; empty if it does. */
  Optional<String> misfit(RecordContent held) {
    if (held.kind() == Correction.class) {
      return misfit((Correction) held.entry().orElseThrow());
    }
    return references(held).or(() -> unique(held, -1));
  }

  /** Takes a line that {@linkplain #misfit fits}. */
  void add(Line line) {
    lines.add(line);
    if (line.held().kind() == Correction.class) {
      Correction correction = (Correction) line.entry();
      RecordContent before = current.remove(correction.of());
      if (before != null && !again(before)) {
        taken.remove(key(before));
      }
      corrected.add(correction.of());
      correction.now().ifPresent(now -> put(correction.of(), RecordContent.of(now)));
    } else {
      originals.put(line.number(), line.held().kind());
      put(line.number(), line.held());
    }
  }

  private void put(int number, RecordContent held) {
    current.put(number, held);
    if (!again(held)) {
      taken.put(key(held), number);
    }
  }

  private Optional<String> misfit(Correction correction) {
    Class<? extends Entry> original = originals.get(correction.of());
    if (original == null) {
      return Optional.of("record " + correction.of() + " is no record that can be corrected");
    }
    if (correction.now().isEmpty()) {
      return inUse(correction.of());
    }
    RecordContent now = RecordContent.of(correction.now().get());
    if (now.kind() != original) {
      return Optional.of(
          "record %d is a %s and cannot become a %s"
              .formatted(correction.of(), EntryJson.kind(original), EntryJson.kind(now.kind())));
    }
    return references(now).or(() -> unique(now, correction.of()));
  }

  private Optional<String> inUse(int number) {
    return current.entrySet().stream()
        .filter(held -> refersTo(held.getValue(), number))
        .findFirst()
        .map(
            held ->
                "record %d cannot be withdrawn while record %d refers to it"
                    .formatted(number, held.getKey()));
  }

  private static boolean refersTo(RecordContent held, int number) {
    if (held.run().isPresent()) {
      RunKey run = held.run().get();
      return run.day() == number || run.kart() == number || run.driver() == number;
    }
    if (held.kind() == BaselineEntry.class) {
      BaselineEntry baseline = baseline(held);
      return baseline.kart() == number || baseline.run().filter(run -> run == number).isPresent();
    }
    return held.kind() == DayEntry.class && day(held).track() == number;
  }

  private Optional<String> references(RecordContent held) {
    if (held.run().isPresent()) {
      RunKey run = held.run().get();
      return reference(run.day(), DayEntry.class)
          .or(() -> reference(run.kart(), KartEntry.class))
          .or(() -> reference(run.driver(), DriverEntry.class));
    }
    if (held.kind() == BaselineEntry.class) {
      BaselineEntry baseline = baseline(held);
      return reference(baseline.kart(), KartEntry.class)
          .or(() -> baseline.run().flatMap(run -> reference(run, RunEntry.class)));
    }
    return held.kind() == DayEntry.class
        ? reference(day(held).track(), TrackEntry.class)
        : Optional.empty();
  }

  private Optional<String> reference(int number, Class<? extends Entry> kind) {
    RecordContent there = current.get(number);
    return there != null && there.kind() == kind
        ? Optional.empty()
        : Optional.of("record " + number + " is no " + EntryJson.kind(kind));
  }

  private Optional<String> unique(RecordContent held, int self) {
    Integer other = again(held) ? null : taken.get(key(held));
    if (other == null || other == self) {
      return Optional.empty();
    }
    if (held.run().isPresent()) {
      return Optional.of(
          "run %d of that kart on that day is record %d already"
              .formatted(held.run().get().runOfDay(), other));
    }
    if (held.kind() == DayEntry.class) {
      return Optional.of(
          "%s at that track is record %d already".formatted(day(held).date(), other));
    }
    return Optional.of(
        "the %s %s is record %d already"
            .formatted(
                EntryJson.kind(held.kind()),
                Printable.quoted(name(held.entry().orElseThrow())),
                other));
  }

  /** Whether the like of an entry may be there any number of times. */
  private static boolean again(RecordContent held) {
    return held.kind() == ReviewEntry.class
        || held.kind() == AttemptEntry.class
        || held.kind() == BaselineEntry.class;
  }

  private static List<?> key(RecordContent held) {
    if (held.run().isPresent()) {
      RunKey run = held.run().get();
      return List.of(RunEntry.class, run.day(), run.kart(), run.runOfDay());
    }
    if (held.kind() == DayEntry.class) {
      return day(day(held).date(), day(held).track());
    }
    return named(held.kind(), name(held.entry().orElseThrow()));
  }

  private static List<?> day(LocalDate date, int track) {
    return List.of(DayEntry.class, date, track);
  }

  private static List<?> named(Class<? extends Entry> kind, String name) {
    return List.of(kind, name.strip().toLowerCase(Locale.ROOT));
  }

  /** Days are never read late. */
  private static DayEntry day(RecordContent held) {
    return (DayEntry) held.entry().orElseThrow();
  }

  private static BaselineEntry baseline(RecordContent held) {
    return (BaselineEntry) held.entry().orElseThrow();
  }

  static String name(Entry entry) {
    if (entry instanceof KartEntry kart) {
      return kart.name();
    } else if (entry instanceof DriverEntry driver) {
      return driver.name();
    } else if (entry instanceof TrackEntry track) {
      return track.name();
    }
    throw new IllegalArgumentException("a " + EntryJson.kind(entry.getClass()) + " has no name");
  }

  /** The record of that kind and name, whatever the case of its letters. */
  Optional<Integer> find(Class<? extends Entry> kind, String name) {
    return Optional.ofNullable(taken.get(named(kind, name)));
  }

  /** The record of the day of that date at that track. */
  Optional<Integer> find(LocalDate date, int track) {
    return Optional.ofNullable(taken.get(day(date, track)));
  }
}
