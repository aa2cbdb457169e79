package insidelift.engine.consultation.advice;

/** Words for how sure something is, by its points: a quarter of a deciban each. */
final class Strength {

  private static final int STRONG = 40;
  private static final int CLEAR = 20;

  private Strength() {}

  static String word(int points) {
    if (points >= STRONG) {
      return "strong";
    }
    if (points >= CLEAR) {
      return "clear";
    }
    return points > 0 ? "slight" : "none";
  }

  /** What is disputed is never surer than clear, however plain what it rests on. */
  static String disputed(int points) {
    return word(Math.min(points, STRONG - 1));
  }
}
