package insidelift.engine.consultation.foresight;

import java.util.Arrays;

/** Information in bits: what an answer is expected to tell about what to do now. */
final class Information {

  private Information() {}

  /** The entropy of counts or chances, in bits (C. E. Shannon, 1948). */
  static double entropy(double... weights) {
    double total = Arrays.stream(weights).sum();
    double entropy = 0;
    for (double weight : weights) {
      if (weight > 0) {
        entropy -= weight / total * Math.log(weight / total) / Math.log(2);
      }
    }
    return entropy;
  }

  /**
   * What a question is expected to tell about an outcome, in bits: the entropy of the outcome less
   * what is left of it within each answer.
   *
   * @param table chances or counts, one row for each answer, one column for each outcome
   */
  static double gain(double[][] table) {
    double total = 0;
    double[] outcomes = new double[table[0].length];
    for (double[] row : table) {
      for (int i = 0; i < row.length; i++) {
        outcomes[i] += row[i];
        total += row[i];
      }
    }
    double left = 0;
    for (double[] row : table) {
      left += Arrays.stream(row).sum() / total * entropy(row);
    }
    return entropy(outcomes) - left;
  }

  /**
   * The gain estimated from counts, without the bits that mere chance seems to give to questions
   * with many answers (G. A. Miller, 1955): the excess is about (cells − rows − columns + 1) ÷ (2 n
   * ln 2), all counted where something was met.
   */
  static double gainFromCounts(double[][] counts) {
    int cells = 0;
    int rows = 0;
    double total = 0;
    boolean[] columns = new boolean[counts[0].length];
    for (double[] row : counts) {
      boolean met = false;
      for (int i = 0; i < row.length; i++) {
        if (row[i] > 0) {
          cells++;
          met = true;
          columns[i] = true;
          total += row[i];
        }
      }
      rows += met ? 1 : 0;
    }
    int met = 0;
    for (boolean column : columns) {
      met += column ? 1 : 0;
    }
    double excess = (cells - rows - met + 1) / (2 * total * Math.log(2));
    return Math.max(0, gain(counts) - excess);
  }
}
