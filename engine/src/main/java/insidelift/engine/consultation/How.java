package insidelift.engine.consultation;

import java.util.ArrayList;
import java.util.List;

/**
 * How a result came about: everything that spoke for it and against it.
 *
 * @param of the finding's or lever's id
 * @param result the result in words
 * @param parts what took part, the weightiest first
 */
public record How(String of, String result, List<Part> parts) {

  /**
   * One contribution.
   *
   * @param says what it says
   * @param weight its weight in decibans, negative against; 0 where it has none
   * @param counted whether it counted: of what rests on one observation only the strongest does
   * @param rule the rule that spoke
   * @param because what the rule rested on
   * @param note the note's id
   * @param title the note's title
   * @param sources the note's sources
   */
  public record Part(
      String says,
      int weight,
      boolean counted,
      String rule,
      String because,
      String note,
      String title,
      List<String> sources) {}

  /** The explanation as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    Said.wrap("How: " + result, "", lines);
    for (Part part : parts) {
      String weight = part.weight() == 0 ? "     " : "%+4d ".formatted(part.weight());
      Said.wrap(part.says() + (part.counted() ? "" : " (not counted twice)"), weight, lines);
      Said.wrap("because " + part.because(), "     ", lines);
      Said.wrap("note " + part.note() + ": " + part.title(), "     ", lines);
      part.sources().forEach(source -> Said.wrap("source " + source, "     ", lines));
    }
    if (parts.isEmpty()) {
      lines.add("Nothing that is known speaks for it or against it.");
    }
    return lines;
  }
}
