package insidelift.engine.consultation.explanation;

import java.util.ArrayList;
import java.util.List;

/**
 * How a result came about, as a sum that can be added up by hand.
 *
 * @param of the finding's or lever's id
 * @param result the result in words
 * @param sums one sum a finding, one for each way of a lever
 */
public record How(String of, String result, List<Sum> sums) {

  /** Takes a copy of the sums. */
  public How {
    sums = List.copyOf(sums);
  }

  /**
   * One sum.
   *
   * @param what what it is of; empty where there is only one
   * @param points what it comes to: a quarter of a deciban each
   * @param parts its terms, the largest first
   * @param capped whether the loss by disputed parts was capped, so that it is more than its terms
   */
  public record Sum(String what, int points, List<Part> parts, boolean capped) {
    /** Takes a copy of the terms. */
    public Sum {
      parts = List.copyOf(parts);
    }

    void lines(List<String> lines) {
      if (!what.isEmpty()) {
        lines.add("%s: %+d".formatted(what, points));
      }
      for (Part part : parts) {
        Said.wrap(part.says(), "%+5d ".formatted(part.points()), lines);
        String because =
            part.because().isEmpty() ? "" : "; because " + String.join("; ", part.because());
        Said.wrap("note " + part.note() + because, "      ", lines);
      }
      if (capped) {
        Said.wrap(
            "What disputed claims cost counts as one undo at most, four points.", "      ", lines);
      }
    }
  }

  /**
   * One term.
   *
   * @param says what it says
   * @param points what it adds; negative takes off
   * @param rule the rule that spoke
   * @param because the answers it rests on
   * @param note the note's id
   * @param title the note's title
   * @param sources the note's sources
   */
  public record Part(
      String says,
      int points,
      String rule,
      List<String> because,
      String note,
      String title,
      List<String> sources) {
    /** Takes copies of the lists. */
    public Part {
      because = List.copyOf(because);
      sources = List.copyOf(sources);
    }
  }

  /** Adds the sources of all terms, each once. */
  static void sources(List<Sum> sums, List<String> lines) {
    List<String> sources =
        sums.stream()
            .flatMap(sum -> sum.parts().stream())
            .flatMap(part -> part.sources().stream())
            .distinct()
            .toList();
    if (!sources.isEmpty()) {
      lines.add("Sources:");
      sources.forEach(source -> Said.wrap(source, "  ", lines));
    }
  }

  /** The explanation as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    Said.wrap("How: " + result, "", lines);
    sums.forEach(sum -> sum.lines(lines));
    sources(sums, lines);
    if (sums.stream().allMatch(sum -> sum.parts().isEmpty())) {
      lines.add("Nothing that is known speaks for it or against it.");
    }
    return lines;
  }
}
