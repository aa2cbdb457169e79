package insidelift.engine.geometry;

import java.util.List;

/**
 * The rows of wheel loads given to calibrate on: G. Mirone, Int. J. Automotive Technology 11(4),
 * 2010, 461-469, read off its plots to about 5 N.
 */
final class PublishedLoads {

  record Row(
      double steerDeg,
      double lateralG,
      double rearOuterN,
      double rearInnerN,
      double frontInnerN,
      double frontOuterN) {}

  static final List<Row> ROWS =
      List.of(
          new Row(15, 0.16, 505, 307, 342, 255),
          new Row(20, 0.39, 573, 235, 333, 268),
          new Row(40, 0.65, 698, 92, 385, 231));

  private PublishedLoads() {}

  /** Root mean square of the twelve differences, N. */
  static double rmsN(KartGeometry kart) {
    double sum = 0;
    for (Row row : ROWS) {
      WheelLoads loads = LoadModel.loads(kart, row.steerDeg, row.lateralG);
      sum +=
          square(loads.rearOuterN() - row.rearOuterN)
              + square(loads.rearInnerN() - row.rearInnerN)
              + square(loads.frontInnerN() - row.frontInnerN)
              + square(loads.frontOuterN() - row.frontOuterN);
    }
    return Math.sqrt(sum / (4 * ROWS.size()));
  }

  private static double square(double x) {
    return x * x;
  }
}
