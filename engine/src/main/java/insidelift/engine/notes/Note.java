package insidelift.engine.notes;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * One note of the knowledge: a claim, a check, another lever, a decision between claims, a caution,
 * the job or a word.
 *
 * @param id its id, the same that rules and questions use
 * @param kind which of those it is
 * @param lever the lever it is about
 * @param title its title
 * @param because the claim as a clause that ends a sentence; empty where the kind has none
 * @param sources ids of the bibliography
 * @param disputed whether the trade disagrees
 * @param review the day by which it is to be read again, ISO 8601
 * @param sections its sections, by heading, each as paragraphs and list items in order
 * @param drawing a drawing in plain characters, line by line; empty if it has none
 */
public record Note(
    String id,
    String kind,
    String lever,
    String title,
    String because,
    List<String> sources,
    boolean disputed,
    String review,
    Map<String, List<String>> sections,
    List<String> drawing) {

  /** The section that says in words what the drawing shows; the drawing stands below it. */
  public static final String DRAWING = "Drawing";

  /** The paragraphs and items of a section; none if the note has no such section. */
  public List<String> section(String heading) {
    return sections.getOrDefault(heading, List.of());
  }

  /** The same note with its prose in other words; its drawing stays as it is drawn. */
  Note said(UnaryOperator<String> words) {
    Map<String, List<String>> said = new LinkedHashMap<>();
    sections.forEach((heading, blocks) -> said.put(heading, blocks.stream().map(words).toList()));
    return new Note(
        id,
        kind,
        lever,
        words.apply(title),
        words.apply(because),
        sources,
        disputed,
        review,
        Collections.unmodifiableMap(said),
        drawing);
  }

  /** A section as one run of text. */
  public String text(String heading) {
    return String.join(" ", section(heading));
  }
}
