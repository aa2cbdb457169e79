package insidelift.engine.consultation.foresight;

import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Situation;
import java.util.Arrays;
import java.util.List;

/**
 * Which answers make sense beside which others: nobody can say how bad a symptom is that is not
 * there, or how much rubber lies on a wet track. It keeps senseless questions from being asked, and
 * situations drawn at random from being nonsense. It never touches what is known: whatever a user
 * says stands.
 */
public final class Consistent {

  private final Grid grid;
  private final int water;
  private final int trend;
  private final int rubber;
  private final int worst;
  private final int lastChange;
  private final int lastEffect;
  private final int power;
  private final int gearbox;
  private final int hopWhen;
  private final int hop;
  private final int driverState;
  private final int severity;
  private final int noResponse;
  private final int[] phases;
  private final int[] needsSymptom;
  private final int[] needsTwo;
  private final int dry;

  /** What makes sense on a grid. */
  public Consistent(Grid grid) {
    this.grid = grid;
    this.water = grid.place("water");
    this.trend = grid.place("trend");
    this.rubber = grid.place("rubber");
    this.worst = grid.place("worst-phase");
    this.lastChange = grid.place("last-change");
    this.lastEffect = grid.place("last-effect");
    this.power = grid.place("power");
    this.gearbox = grid.place("gearbox");
    this.hopWhen = grid.place("hop-when");
    this.hop = grid.place("hop");
    this.driverState = grid.place("driver-state");
    this.severity = grid.place("severity");
    this.noResponse = grid.place("no-response");
    this.phases = places("turn-in", "mid-corner", "exit");
    this.needsSymptom =
        places("severity", "corners", "corner-speed", "run-phase", "braking", "line", "toe-now");
    this.needsTwo = places("first-trouble", "grip-overall");
    this.dry = grid.mask("water", "dry");
  }

  private int[] places(String... questions) {
    int[] places = new int[questions.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = grid.place(questions[i]);
    }
    return places;
  }

  /**
   * The states of a question that make sense somewhere in a box. For a box of single states it is
   * exact.
   */
  public int sensible(int question, int[] box) {
    int all = grid.full(question);
    if (question == rubber) {
      return (box[water] & (Grid.ABSENT | dry)) != 0 ? all : Grid.ABSENT;
    }
    if (question == trend) {
      return (box[water] & ~dry) != 0 ? all : all & ~grid.mask("trend", "drying");
    }
    if (question == worst) {
      return worst(box);
    }
    if (question == lastEffect || question == noResponse) {
      int changed = grid.full(lastChange) & ~Grid.ABSENT & ~grid.mask("last-change", "none");
      return (box[lastChange] & changed) != 0 ? all : Grid.ABSENT;
    }
    if (question == hopWhen) {
      return (box[hop] & grid.mask("hop", "hops")) != 0 ? all : Grid.ABSENT;
    }
    if (question == driverState) {
      return (box[severity] & grid.mask("severity", "severe")) != 0 ? all : Grid.ABSENT;
    }
    for (int needing : needsTwo) {
      if (question == needing) {
        return complaining(box) > 1 ? all : Grid.ABSENT;
      }
    }
    if (question == gearbox) {
      // A kart with gears counts as high power whatever its kilowatts.
      int high = Grid.ABSENT | grid.mask("power", "high");
      return (box[power] & high) != 0 ? all : all & ~grid.mask("gearbox", "gears");
    }
    for (int needing : needsSymptom) {
      if (question == needing) {
        return complaining(box) > 0 ? all : Grid.ABSENT;
      }
    }
    return all;
  }

  /** The questions that must be answered before a question makes sense. */
  List<Integer> hangsOn(int question) {
    if (question == rubber || question == trend) {
      return List.of(water);
    }
    if (question == lastEffect || question == noResponse) {
      return List.of(lastChange);
    }
    if (question == hopWhen) {
      return List.of(hop);
    }
    if (question == driverState) {
      return List.of(severity);
    }
    boolean symptom =
        question == worst
            || Arrays.stream(needsTwo).anyMatch(one -> one == question)
            || Arrays.stream(needsSymptom).anyMatch(one -> one == question);
    return symptom ? Arrays.stream(phases).boxed().toList() : List.of();
  }

  /** The worst phase is worth a word only where two can hurt, and it is one that hurts. */
  private int worst(int[] box) {
    if (complaining(box) < 2) {
      return Grid.ABSENT;
    }
    int mask = Grid.ABSENT;
    for (int phase : phases) {
      if (complains(phase, box)) {
        mask |= grid.mask("worst-phase", grid.question(phase).id());
      }
    }
    return mask;
  }

  private int complaining(int[] box) {
    int count = 0;
    for (int phase : phases) {
      count += complains(phase, box) ? 1 : 0;
    }
    return count;
  }

  private boolean complains(int phase, int[] box) {
    return (box[phase] & grid.complaints(phase)) != 0;
  }

  /**
   * Whether a question makes sense now, with nothing known but what is known. What it hangs on must
   * be answered first.
   *
   * @param now what is known, with every open question not known
   * @param open all completions
   */
  boolean askable(int question, int[] now, int[] open) {
    boolean hangsOnWater = question == rubber || question == trend;
    if (hangsOnWater && open[water] != now[water]) {
      return false;
    }
    return askable(question, now);
  }

  /** The same where nothing is known of what may still be answered. */
  boolean askable(int question, int[] now) {
    return (sensible(question, now) & ~Grid.ABSENT) != 0;
  }

  /**
   * Takes out of a box what makes no sense in any of its situations.
   *
   * @param open which questions are open; what is known is left alone
   * @return whether anything is left
   */
  public boolean narrow(int[] box, boolean[] open) {
    // Every question hangs only on questions before it in the vocabulary, so one pass does it.
    for (int q = 0; q < box.length; q++) {
      if (open[q]) {
        box[q] &= sensible(q, box);
        if (box[q] == 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether every answer of a situation makes sense beside the others. */
  public boolean holds(Situation situation, Vocabulary vocabulary) {
    int[] point = grid.point(situation, vocabulary);
    for (int q = 0; q < point.length; q++) {
      if ((point[q] & sensible(q, point)) == 0) {
        return false;
      }
    }
    return true;
  }
}
