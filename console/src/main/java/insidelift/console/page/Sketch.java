package insidelift.console.page;

import insidelift.console.page.Picture.Label;
import insidelift.console.page.Picture.Shape;
import insidelift.console.picture.Figures;
import java.util.ArrayList;
import java.util.List;

/** A drawing under the pencil, in units of the finished one: x to the right, y down. */
final class Sketch {

  private static final double MARK = 4;

  private final List<Shape> shapes = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();

  /** A straight line. */
  Sketch line(String look, double x1, double y1, double x2, double y2) {
    return path(look, List.of(new double[] {x1, y1}, new double[] {x2, y2}));
  }

  /** Straight lines from point to point; each point is x and y. */
  Sketch path(String look, List<double[]> points) {
    StringBuilder path = new StringBuilder();
    for (double[] point : points) {
      path.append(path.isEmpty() ? "M" : "L").append(at(point[0], point[1]));
    }
    shapes.add(new Shape(path.toString(), look));
    return this;
  }

  /** A circle, as two half turns. */
  Sketch circle(String look, double x, double y, double radius) {
    String r = Figures.fixed(radius, 1);
    String half = "A" + r + " " + r + " 0 1 0 ";
    shapes.add(
        new Shape(
            "M" + at(x - radius, y) + half + at(x + radius, y) + half + at(x - radius, y), look));
    return this;
  }

  /** A mark on a curve, square or round and hollow before, so that it is known without colour. */
  void mark(String look, boolean square, double x, double y) {
    String filling = look + (look.equals(KartViews.AFTER) ? " filled" : " hollow");
    if (square) {
      square(filling, x, y);
    } else {
      dot(filling, x, y);
    }
  }

  private Sketch square(String look, double x, double y) {
    return path(
        look,
        List.of(
            new double[] {x - MARK, y - MARK},
            new double[] {x + MARK, y - MARK},
            new double[] {x + MARK, y + MARK},
            new double[] {x - MARK, y + MARK},
            new double[] {x - MARK, y - MARK}));
  }

  /** A round mark about a point. */
  Sketch dot(String look, double x, double y) {
    return circle(look, x, y, MARK);
  }

  /** A word or number; the anchor is start, middle or end. */
  Sketch label(double x, double y, String anchor, String text) {
    labels.add(new Label(Figures.fixed(x, 1), Figures.fixed(y, 1), anchor, text));
    return this;
  }

  /** A line of the legend: a sample of the curve with its name. */
  Sketch legend(double x, double y, String look, boolean square, String text) {
    line(look, x, y, x + 30, y);
    mark(look, square, x + 15, y);
    return label(x + 36, y + 4, "start", text);
  }

  private static String at(double x, double y) {
    return Figures.fixed(x, 1) + " " + Figures.fixed(y, 1);
  }

  Picture finished(String id, String title, String description, int width, int height) {
    return new Picture(id, title, description, width, height, shapes, labels);
  }
}
