package insidelift.engine.logbook;

import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What the lines so far say together: each record as corrected, and what a new one must fit. */
final class Records {

  private final List<Line> lines = new ArrayList<>();
  private final Map<Integer, Entry> originals = new HashMap<>();
  private final Map<Integer, Entry> current = new TreeMap<>();
  private final Set<Integer> corrected = new HashSet<>();

  /** What may be there only once, such as a name, and the record that has it. */
  private final Map<String, Integer> taken = new HashMap<>();

  Records() {}

  Records(Records other) {
    lines.addAll(other.lines);
    originals.putAll(other.originals);
    current.putAll(other.current);
    corrected.addAll(other.corrected);
    taken.putAll(other.taken);
  }

  List<Line> lines() {
    return List.copyOf(lines);
  }

  Optional<Entry> now(int number) {
    return Optional.ofNullable(current.get(number));
  }

  boolean corrected(int number) {
    return corrected.contains(number);
  }

  /** All records of a kind as they stand, by number. */
  <E extends Entry> List<Numbered<E>> all(Class<E> kind) {
    List<Numbered<E>> all = new ArrayList<>();
    current.forEach(
        (number, entry) -> {
          if (kind.isInstance(entry)) {
            all.add(new Numbered<>(number, kind.cast(entry), corrected(number)));
          }
        });
    return all;
  }

  /** Why an entry does not fit those before it; empty if it does. */
  Optional<String> misfit(Entry entry) {
    if (entry instanceof Correction correction) {
      return misfit(correction);
    }
    return references(entry).or(() -> unique(entry, -1));
  }

  /** Takes a line that {@linkplain #misfit fits}. */
  void add(Line line) {
    lines.add(line);
    if (line.entry() instanceof Correction correction) {
      Entry before = current.remove(correction.of());
      if (before != null && !again(before)) {
        taken.remove(key(before));
      }
      corrected.add(correction.of());
      correction.now().ifPresent(now -> put(correction.of(), now));
    } else {
      originals.put(line.number(), line.entry());
      put(line.number(), line.entry());
    }
  }

  private void put(int number, Entry entry) {
    current.put(number, entry);
    if (!again(entry)) {
      taken.put(key(entry), number);
    }
  }

  private Optional<String> misfit(Correction correction) {
    Entry original = originals.get(correction.of());
    if (original == null) {
      return Optional.of("record " + correction.of() + " is no record that can be corrected");
    }
    if (correction.now().isEmpty()) {
      return inUse(correction.of());
    }
    Entry now = correction.now().get();
    if (now.getClass() != original.getClass()) {
      return Optional.of(
          "record %d is a %s and cannot become a %s"
              .formatted(correction.of(), EntryJson.kind(original), EntryJson.kind(now)));
    }
    return references(now).or(() -> unique(now, correction.of()));
  }

  private Optional<String> inUse(int number) {
    return current.entrySet().stream()
        .filter(entry -> refersTo(entry.getValue(), number))
        .findFirst()
        .map(
            entry ->
                "record %d cannot be withdrawn while record %d refers to it"
                    .formatted(number, entry.getKey()));
  }

  private static boolean refersTo(Entry entry, int number) {
    if (entry instanceof DayEntry day) {
      return day.track() == number;
    }
    return entry instanceof RunEntry run
        && (run.day() == number || run.kart() == number || run.driver() == number);
  }

  private Optional<String> references(Entry entry) {
    if (entry instanceof DayEntry day) {
      return reference(day.track(), TrackEntry.class, "track");
    }
    if (entry instanceof RunEntry run) {
      return reference(run.day(), DayEntry.class, "day")
          .or(() -> reference(run.kart(), KartEntry.class, "kart"))
          .or(() -> reference(run.driver(), DriverEntry.class, "driver"));
    }
    return Optional.empty();
  }

  private Optional<String> reference(int number, Class<? extends Entry> kind, String word) {
    return kind.isInstance(current.get(number))
        ? Optional.empty()
        : Optional.of("record " + number + " is no " + word);
  }

  private Optional<String> unique(Entry entry, int self) {
    Integer other = again(entry) ? null : taken.get(key(entry));
    if (other == null || other == self) {
      return Optional.empty();
    }
    if (entry instanceof RunEntry run) {
      return Optional.of(
          "run %d of that kart on that day is record %d already".formatted(run.runOfDay(), other));
    }
    if (entry instanceof DayEntry day) {
      return Optional.of("%s at that track is record %d already".formatted(day.date(), other));
    }
    return Optional.of(
        "the %s %s is record %d already"
            .formatted(EntryJson.kind(entry), Printable.quoted(name(entry)), other));
  }

  /** Whether the like of an entry may be there any number of times. */
  private static boolean again(Entry entry) {
    return entry instanceof ReviewEntry || entry instanceof AttemptEntry;
  }

  private static String key(Entry entry) {
    if (entry instanceof DayEntry day) {
      return "day " + day.date() + " " + day.track();
    }
    if (entry instanceof RunEntry run) {
      return "run " + run.day() + " " + run.kart() + " " + run.runOfDay();
    }
    return EntryJson.kind(entry) + " " + name(entry).strip().toLowerCase(Locale.ROOT);
  }

  static String name(Entry entry) {
    if (entry instanceof KartEntry kart) {
      return kart.name();
    } else if (entry instanceof DriverEntry driver) {
      return driver.name();
    } else if (entry instanceof TrackEntry track) {
      return track.name();
    }
    throw new IllegalArgumentException("a " + EntryJson.kind(entry) + " has no name");
  }

  /** The record of that name, whatever the case of its letters. */
  Optional<Integer> named(String kind, String name) {
    return Optional.ofNullable(taken.get(kind + " " + name.strip().toLowerCase(Locale.ROOT)));
  }
}
