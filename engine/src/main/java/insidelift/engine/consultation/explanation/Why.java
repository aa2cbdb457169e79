package insidelift.engine.consultation.explanation;

import java.util.ArrayList;
import java.util.List;

/**
 * Why a question is asked.
 *
 * @param question its id
 * @param ask the question in plain words
 * @param because why it is asked, in a few words
 * @param serves the claims that hang on its answer, by their titles
 * @param known what is known already of what those claims need
 * @param would what each answer would do to what to do now
 */
public record Why(
    String question,
    String ask,
    String because,
    List<String> serves,
    List<String> known,
    List<Would> would) {

  /**
   * What one answer would do, as things stand.
   *
   * @param value the answer's id
   * @param words the answer in plain words
   * @param changes whether it alone would change what to do now
   * @param then what to do then
   */
  public record Would(String value, String words, boolean changes, String then) {}

  /** The explanation as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    Said.wrap("Why it asks \"" + ask + "\": " + because + ".", "", lines);
    if (serves.isEmpty()) {
      lines.add("No rule that could still speak reads this answer.");
    } else {
      lines.add("The answer serves:");
      serves.forEach(title -> Said.wrap(title, "  - ", lines));
    }
    if (!known.isEmpty()) {
      lines.add("Known already:");
      known.forEach(answer -> Said.wrap(answer, "  - ", lines));
    }
    lines.add("By itself, each answer would lead to:");
    would.forEach(
        one ->
            Said.wrap(
                one.words() + ": " + (one.changes() ? one.then() : "no change for now"),
                "  - ",
                lines));
    return lines;
  }
}
