package insidelift.engine.logbook.file;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the lines of a logbook stand in its bytes. A line end that was damaged or lost joins two
 * lines, so a line that fails its check is divided again where lines begin: no record is lost for
 * the sake of its neighbour's end.
 */
final class Pieces {

  /**
   * Where one line stands, without its end.
   *
   * @param intact whether its check is right; else it is damaged, or was never a line
   */
  record Piece(int from, int to, boolean intact) {}

  private final byte[] file;
  private final List<Piece> all = new ArrayList<>();
  private int whole;
  private boolean endMissing;

  private Pieces(byte[] file) {
    this.file = file;
  }

  static Pieces of(byte[] file) {
    Pieces pieces = new Pieces(file);
    pieces.divide();
    return pieces;
  }

  /** The pieces in the order in which they stand, blank ones left out. */
  List<Piece> all() {
    return all;
  }

  /** How many bytes there are before what is unfinished. */
  int whole() {
    return whole;
  }

  /** Whether the last whole line lacks its line end. */
  boolean endMissing() {
    return endMissing;
  }

  private void divide() {
    int from = 0;
    while (from < file.length) {
      int end = from;
      while (end < file.length && file[end] != '\n') {
        end++;
      }
      // An editor that ends lines its own way must not cost a season.
      int to = end > from && file[end - 1] == '\r' ? end - 1 : end;
      if (end < file.length) {
        take(from, to);
        whole = end + 1;
      } else {
        last(from, to);
      }
      from = end + 1;
    }
  }

  /** What follows the last line end: lines as far as they are intact, then what is unfinished. */
  private void last(int from, int to) {
    int before = all.size();
    take(from, to);
    int kept = all.size();
    while (kept > before && !all.get(kept - 1).intact()) {
      kept--;
    }
    all.subList(kept, all.size()).clear();
    endMissing = kept > before;
    if (endMissing) {
      int end = all.get(kept - 1).to();
      whole = file.length - end <= 1 && blank(end, file.length) ? file.length : end;
      endMissing = file[whole - 1] != '\n';
    }
  }

  private void take(int from, int to) {
    if (LineFormat.intact(file, from, to)) {
      all.add(new Piece(from, to, true));
      return;
    }
    int begin = from;
    while (begin < to) {
      int next = LineFormat.beginning(file, begin + 1, to);
      int end = LineFormat.end(file, begin, next);
      if (end > begin && LineFormat.intact(file, begin, end)) {
        all.add(new Piece(begin, end, true));
        stray(end, next);
      } else {
        stray(begin, next);
      }
      begin = next;
    }
  }

  private void stray(int from, int to) {
    if (!blank(from, to)) {
      all.add(new Piece(from, to, false));
    }
  }

  private boolean blank(int from, int to) {
    for (int i = from; i < to; i++) {
      if (file[i] != ' ' && file[i] != '\t' && file[i] != '\r') {
        return false;
      }
    }
    return true;
  }
}
