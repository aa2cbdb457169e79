package insidelift.console.page;

import insidelift.console.picture.Figures;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The frame of a plot: where a pair of numbers lies on it, with round numbers along both sides.
 *
 * @param fromX left end of the plot, in the quantity's unit
 * @param toX right end
 * @param stepX from one number along the bottom to the next
 * @param fromY lower end
 * @param toY upper end
 * @param stepY from one number along the left side to the next
 */
record Axes(double fromX, double toX, double stepX, double fromY, double toY, double stepY) {

  static final int WIDTH = 340;
  static final int HEIGHT = 270;

  private static final double LEFT = 46;
  private static final double RIGHT = 324;
  private static final double TOP = 24;
  private static final double BOTTOM = 190;

  /** Every so manieth point of a curve carries a mark. */
  private static final int MARKED = 4;

  double x(double value) {
    return LEFT + (value - fromX) / (toX - fromX) * (RIGHT - LEFT);
  }

  double y(double value) {
    return BOTTOM - (value - fromY) / (toY - fromY) * (BOTTOM - TOP);
  }

  /** Both sides with their numbers, and the line of nought where it is inside. */
  Axes draw(Sketch sketch, String across, String up) {
    for (int i = 0; fromX + i * stepX <= toX + stepX / 2; i++) {
      double value = fromX + i * stepX;
      sketch.line("grid", x(value), TOP, x(value), BOTTOM);
      sketch.label(x(value), BOTTOM + 20, "middle", Figures.fixed(value, stepX < 1 ? 1 : 0));
    }
    for (int i = 0; fromY + i * stepY <= toY + stepY / 2; i++) {
      double value = fromY + i * stepY;
      sketch.line(value == 0 ? "frame" : "grid", LEFT, y(value), RIGHT, y(value));
      sketch.label(LEFT - 6, y(value) + 4, "end", Figures.fixed(value, stepY < 1 ? 1 : 0));
    }
    sketch.label(LEFT - 40, 13, "start", up).label(RIGHT, BOTTOM + 36, "end", across);
    return this;
  }

  /** A curve with marks on it, square or round; before is hollow, after is filled. */
  <T> void curve(
      Sketch sketch,
      String look,
      boolean square,
      List<T> points,
      ToDoubleFunction<T> across,
      ToDoubleFunction<T> up) {
    sketch.path(
        look,
        points.stream()
            .map(p -> new double[] {x(across.applyAsDouble(p)), y(up.applyAsDouble(p))})
            .toList());
    for (int i = 0; i < points.size(); i += MARKED) {
      T point = points.get(i);
      sketch.mark(look, square, x(across.applyAsDouble(point)), y(up.applyAsDouble(point)));
    }
  }
}
