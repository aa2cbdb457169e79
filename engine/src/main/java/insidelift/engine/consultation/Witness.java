package insidelift.engine.consultation;

import insidelift.engine.consultation.RuleTable.Asked;
import insidelift.engine.consultation.RuleTable.Found;
import insidelift.engine.consultation.RuleTable.Line;
import insidelift.engine.consultation.RuleTable.Piece;
import insidelift.engine.consultation.RuleTable.Proposed;
import insidelift.engine.consultation.RuleTable.Seen;
import insidelift.shared.index.RuleIndex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Builds situations in which a rule that reads a question comes true and nothing else is wrong:
 * where an answer matters rarely, chance seldom finds the situation that shows it, and this does.
 */
public final class Witness {

  private final RuleTable table;

  Witness(RuleTable table) {
    this.table = table;
  }

  /**
   * Situations in which rules come true, at least one for nearly every rule that can change what to
   * do now, as boxes of single states. Not all of them make sense.
   */
  public static List<int[]> all(RuleIndex rules, Grid grid) {
    Witness witness = new Witness(new RuleTable(rules, grid));
    int[] box = new int[grid.size()];
    int[] now = new int[grid.size()];
    for (int q = 0; q < box.length; q++) {
      box[q] = grid.full(q);
      now[q] = Grid.ABSENT;
    }
    List<int[]> points = new ArrayList<>();
    for (Line line : witness.table.lines()) {
      witness.add(line, null, box, now, points);
    }
    for (int q = 0; q < box.length; q++) {
      points.addAll(witness.of(q, box, now));
    }
    return points;
  }

  /**
   * Situations to try a question in.
   *
   * @param box all completions
   * @param now what is known, with every open question not known
   */
  List<int[]> of(int question, int[] box, int[] now) {
    List<int[]> points = new ArrayList<>();
    for (int reading : table.reading(question)) {
      Line line = table.lines().get(reading);
      if (line.evidence().isEmpty()) {
        add(line, null, box, now, points);
      }
      line.evidence().stream()
          .flatMapToInt(finding -> Arrays.stream(table.readers(finding)))
          .distinct()
          .forEach(reader -> add(line, table.lines().get(reader), box, now, points));
    }
    return points;
  }

  private void add(Line line, Line reader, int[] box, int[] now, List<int[]> points) {
    int[] point = now.clone();
    if (satisfy(line, box, point) && (reader == null || satisfy(reader, box, point))) {
      points.add(point);
    }
  }

  /** Makes a rule come true as far as open questions allow; what is absent stays absent. */
  private boolean satisfy(Line line, int[] box, int[] point) {
    for (Seen seen : line.answers()) {
      if (!seen.absent() && !satisfy(seen, box, point)) {
        return false;
      }
    }
    for (Found found : line.findings()) {
      if (!found.absent()) {
        satisfy(found, box, point);
      }
    }
    for (Proposed proposed : line.proposals()) {
      if (!proposed.absent() && !satisfy(proposed, box, point)) {
        return false;
      }
    }
    for (RuleTable.BarredTest barred : line.barred()) {
      if (!barred.absent()) {
        for (int bar : table.with("bar")) {
          if (table.lines().get(bar).acts().stream()
                  .anyMatch(act -> act.words().get(0).equals(barred.lever().id()))
              && satisfy(table.lines().get(bar), box, point)) {
            break;
          }
        }
      }
    }
    return true;
  }

  private boolean satisfy(Seen seen, int[] box, int[] point) {
    for (int i = 0; i < seen.questions().length; i++) {
      if ((point[seen.questions()[i]] & seen.masks()[i]) != 0) {
        return true;
      }
    }
    for (int i = 0; i < seen.questions().length; i++) {
      int q = seen.questions()[i];
      int possible = box[q] & seen.masks()[i];
      if (possible != 0 && point[q] == Grid.ABSENT) {
        point[q] = Integer.lowestOneBit(possible);
        return true;
      }
    }
    return false;
  }

  private void satisfy(Found found, int[] box, int[] point) {
    int sum = 0;
    for (Piece[] observation : table.evidence(found.finding())) {
      for (Piece piece : observation) {
        int[] same = point.clone();
        if (satisfy(table.lines().get(piece.line()), point, same)) {
          sum += piece.weight();
          break;
        }
      }
    }
    for (Piece[] observation : table.evidence(found.finding())) {
      for (Piece piece : observation) {
        if (sum < found.least()
            && piece.weight() > 0
            && !satisfy(table.lines().get(piece.line()), point, point.clone())
            && satisfy(table.lines().get(piece.line()), box, point)) {
          sum += piece.weight();
          break;
        }
      }
    }
  }

  private boolean satisfy(Proposed proposed, int[] box, int[] point) {
    for (Asked asked : proposed.candidates()) {
      boolean way =
          asked.target()
              || proposed.direction() == null
              || asked.direction() == proposed.direction();
      int[] tried = point.clone();
      if (way && satisfy(table.lines().get(asked.line()), box, tried)) {
        System.arraycopy(tried, 0, point, 0, point.length);
        if (proposed.least() > 0 && asked.finding() >= 0) {
          satisfy(new Found(asked.finding(), proposed.least(), false), box, point);
        }
        return true;
      }
    }
    return false;
  }
}
