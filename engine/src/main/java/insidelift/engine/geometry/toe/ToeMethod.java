package insidelift.engine.geometry.toe;

import java.util.List;
import java.util.stream.Stream;

/** How toe is measured. */
public enum ToeMethod {
  LASER("laser", "toe-with-laser"),
  DISCS("discs", "toe-with-discs"),
  STRAIGHT_EDGE("straight-edge", "toe-with-straight-edge"),
  TAPE("tape", "toe-with-tape");

  private final String word;
  private final String note;

  ToeMethod(String word, String note) {
    this.word = word;
    this.note = note;
  }

  /** Its JSON word. */
  public String word() {
    return word;
  }

  /** The note that tells its steps. */
  public String note() {
    return note;
  }

  static List<String> words() {
    return Stream.of(values()).map(ToeMethod::word).toList();
  }

  static ToeMethod named(String word) {
    return Stream.of(values()).filter(one -> one.word.equals(word)).findFirst().orElseThrow();
  }
}
