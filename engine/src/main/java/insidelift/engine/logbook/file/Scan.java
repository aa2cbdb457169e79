package insidelift.engine.logbook.file;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Pieces.Piece;
import insidelift.shared.situation.CaseProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Reads the bytes of a logbook by the numbers that its lines carry, wherever they stand, and never
 * gives up on the rest for the sake of one. Only what follows the last line end can be torn: a line
 * that has its end but fails its check was written whole and damaged later.
 */
public final class Scan {

  private static final String CHECK_FAILS = "its check does not match";

  private final String shown;
  private final byte[] file;
  private final Pieces pieces;
  private final Records records = new Records();
  private final List<Notice> notices = new ArrayList<>();
  private final TreeMap<Integer, Line> read = new TreeMap<>();
  private final Map<Integer, Piece> places = new HashMap<>();
  private final TreeMap<Integer, String> damaged = new TreeMap<>();
  private int last;

  private Scan(String shown, byte[] file) {
    this.shown = shown;
    this.file = file;
    this.pieces = Pieces.of(file);
  }

  /**
   * Reads a whole file.
   *
   * @param shown how messages call the file
   * @param sealed the number of the last line according to the seal, 0 where there is none
   * @throws LogbookProblem if it is no logbook, or one of another version
   */
  public static Scan of(String shown, byte[] file, int sealed) throws LogbookProblem {
    Scan scan = new Scan(shown, file);
    scan.run(sealed);
    return scan;
  }

  /** The records that could be read. */
  public Records records() {
    return records;
  }

  /** What is wrong with whole lines. */
  List<Notice> notices() {
    return notices;
  }

  /** The number of the last line, damaged and missing ones included; 0 if there is no line. */
  int last() {
    return last;
  }

  /** How many lines are intact. */
  int intact() {
    return (int) pieces.all().stream().filter(Piece::intact).count();
  }

  /** How many bytes the whole lines take. */
  int whole() {
    return pieces.whole();
  }

  /** How many bytes of an unfinished record follow them. */
  int unfinished() {
    return file.length - pieces.whole();
  }

  /** Whether the last whole line lacks its line end alone. */
  boolean endMissing() {
    return pieces.endMissing();
  }

  private void run(int sealed) throws LogbookProblem {
    List<Piece> all = pieces.all();
    if (all.isEmpty()) {
      if (sealed > 0) {
        notices.add(new Notice.Gone(shown, sealed));
      }
      return;
    }
    version(all);
    Map<Piece, String> unread = new HashMap<>();
    all.forEach(piece -> take(piece, unread));
    if (read.isEmpty() && !places.containsKey(1)) {
      throw new LogbookProblem(shown + " is no logbook; nothing in it was changed");
    }
    last = Math.max(sealed, read.isEmpty() ? 1 : read.lastKey());
    assign(all, unread, sealed);
    report();
    read.values().forEach(this::keep);
  }

  /** The first line names the format, wherever it stands now. */
  private void version(List<Piece> all) throws LogbookProblem {
    for (Piece piece : all) {
      if (piece.intact() && number(piece).equals(OptionalInt.of(1))) {
        int version;
        try {
          version = LineFormat.version(file, piece.from(), piece.to());
        } catch (CaseProblem e) {
          throw new LogbookProblem(shown + " is no logbook; nothing in it was changed", e);
        }
        if (version != LineFormat.VERSION) {
          throw new LogbookProblem(
              (version > LineFormat.VERSION
                      ? "%s was written by a newer Insidelift (format %d, this one knows %d); nothing in it was changed"
                      : "%s names format %d, which there never was (this Insidelift knows %d); nothing in it was changed")
                  .formatted(shown, version, LineFormat.VERSION));
        }
      }
    }
  }

  private OptionalInt number(Piece piece) {
    return LineFormat.number(file, piece.from(), piece.to());
  }

  private void take(Piece piece, Map<Piece, String> unread) {
    if (!piece.intact()) {
      unread.put(piece, CHECK_FAILS);
      return;
    }
    int number = 1;
    if (!number(piece).equals(OptionalInt.of(1))) {
      try {
        Line line = LineFormat.read(file, piece.from(), piece.to());
        number = line.number();
        read.putIfAbsent(number, line);
      } catch (CaseProblem e) {
        unread.put(piece, String.valueOf(e.getMessage()));
        return;
      }
    }
    Piece first = places.putIfAbsent(number, piece);
    if (first != null) {
      notices.add(new Notice.Twice(number, same(first, piece)));
    }
  }

  private boolean same(Piece one, Piece other) {
    return Arrays.equals(file, one.from(), one.to(), file, other.from(), other.to());
  }

  /** Finds out which of the numbers that are missing each piece was that cannot be read. */
  private void assign(List<Piece> all, Map<Piece, String> unread, int sealed) {
    boolean known = sealed == last;
    int end = all.size();
    while (end > 0 && unread.containsKey(all.get(end - 1))) {
      end--;
    }
    int before = 0;
    boolean moved = false;
    for (int i = 0; i < all.size(); i++) {
      Piece piece = all.get(i);
      String what = unread.get(piece);
      if (what == null) {
        int number = placed(piece);
        moved |= number < before && places.get(number).equals(piece);
        before = Math.max(before, number);
        continue;
      }
      // A damaged digit must not make up a thousand lines that nobody wrote.
      OptionalInt said = number(piece).stream().filter(n -> n <= last + 1 && open(n)).findFirst();
      int number = said.orElse(before + 1);
      while (said.isEmpty() && !open(number) && number <= last) {
        number++;
      }
      if (number <= last || said.isPresent() || (!known && i >= end)) {
        damaged.put(number, what);
        last = Math.max(last, number);
      } else {
        notices.add(new Notice.Stray(before));
      }
    }
    if (moved) {
      notices.add(new Notice.Moved());
    }
  }

  private int placed(Piece piece) {
    OptionalInt told = number(piece);
    return told.isPresent() ? told.getAsInt() : 0;
  }

  private boolean open(int number) {
    return !places.containsKey(number) && !damaged.containsKey(number);
  }

  private void report() {
    List<Notice> lost = new ArrayList<>();
    int from = 0;
    for (int number = 1; number <= last + 1; number++) {
      boolean gone = number <= last && open(number);
      if (gone && from == 0) {
        from = number;
      } else if (!gone && from > 0) {
        lost.add(new Notice.Missing(from, number - 1));
        from = 0;
      }
      if (damaged.containsKey(number)) {
        lost.add(new Notice.Damaged(number, damaged.get(number)));
      }
    }
    notices.addAll(0, lost);
  }

  private void keep(Line line) {
    records
        .misfit(line.held())
        .ifPresentOrElse(
            what -> notices.add(new Notice.DoesNotFit(line.number(), what)),
            () -> records.add(line));
  }
}
