package insidelift.engine.consultation.foresight;

import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;

/**
 * How often an answer is met: our guesses of the vocabulary, and where there is none, faults rare
 * and the rest alike. They only order questions and draw situations; no advice rests on them.
 */
public final class Chances {

  /** How rarely a fault is met among the answers of a question that can show one. Provisional. */
  static final double FAULT = 0.05;

  private final Grid grid;
  private final double[][] guesses;
  private final int tyres;
  private final int water;

  /** The chances of a grid's answers. */
  public Chances(Grid grid) {
    this.grid = grid;
    this.guesses = new double[grid.size()][];
    this.tyres = grid.place("tyres");
    this.water = grid.place("water");
    for (int q = 0; q < guesses.length; q++) {
      guesses[q] = guesses(grid.question(q));
    }
  }

  private static double[] guesses(Question question) {
    int count = question.values().size();
    double[] guesses = new double[count + 1];
    double rest = 1;
    int alike = 0;
    for (int v = 0; v < count; v++) {
      Value value = question.values().get(v);
      if (value.chance() != null) {
        guesses[v + 1] = value.chance();
      } else if (value.fault()) {
        guesses[v + 1] = FAULT;
      } else {
        alike++;
      }
      rest -= guesses[v + 1];
    }
    for (int v = 0; v < count; v++) {
      Value value = question.values().get(v);
      if (value.chance() == null && !value.fault()) {
        guesses[v + 1] = rest / alike;
      }
    }
    return guesses;
  }

  /** The chance of a value beside what is known so far; values count from 1. */
  double chance(int question, int value, int[] point) {
    if (question == tyres) {
      return tyre(value, point[water]);
    }
    return guesses[question][value];
  }

  /**
   * The wrong tyres for the track are a fault, and as rare as one; on a damp track both are met.
   */
  private double tyre(int value, int state) {
    boolean slicks = 1 << value == grid.mask("tyres", "slicks");
    if (state == grid.mask("water", "dry")) {
      return slicks ? 1 - FAULT : FAULT;
    }
    if (state == grid.mask("water", "wet") || state == grid.mask("water", "standing")) {
      return slicks ? FAULT : 1 - FAULT;
    }
    return 0.5;
  }
}
