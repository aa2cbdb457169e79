package insidelift.console.page;

import java.util.List;

/**
 * A drawing or a plot, which the template turns into inline SVG.
 *
 * @param id unique on its page; ties the drawing to its title and description
 * @param title what it shows, in a few words
 * @param description the same as words, with the numbers, for a reader who does not see it
 * @param width of the drawing, in its own units; a unit is a CSS pixel at the smallest size
 * @param height of the drawing, in its own units
 * @param shapes lines and areas, the later ones over the earlier
 * @param labels words and numbers on it
 */
public record Picture(
    String id,
    String title,
    String description,
    int width,
    int height,
    List<Shape> shapes,
    List<Label> labels) {

  /** Shapes and labels cannot be changed from outside. */
  public Picture {
    shapes = List.copyOf(shapes);
    labels = List.copyOf(labels);
  }

  /**
   * A line or an area.
   *
   * @param path its outline, as the SVG attribute {@code d} has it (SVG 1.1, chapter 8.3)
   * @param look the style classes it is drawn with
   */
  public record Shape(String path, String look) {}

  /**
   * A word or a number on the drawing.
   *
   * @param x across, from the left
   * @param y down, from the top, of the line the letters stand on
   * @param anchor which part of the text stands at x: start, middle or end
   * @param text what is written
   */
  public record Label(String x, String y, String anchor, String text) {}
}
