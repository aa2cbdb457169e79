package insidelift.engine.geometry.kart;

import java.util.List;
import java.util.Map;

/**
 * The rows of wheel loads given to calibrate on: G. Mirone, Int. J. Automotive Technology 11(4),
 * 2010, 461-469, read off its plots to about 5 N.
 */
public final class PublishedLoads {

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

  /**
   * The kart that meets them, the one of that paper. Its hub offset, height of the centre of
   * gravity and front share of the roll moment are not published: they are calibrated on the rows,
   * with the steering angle printed there taken as the rotation about the kingpins. The height is
   * the whole one that the weight acts on in roll, so nothing is added to it.
   */
  public static final KartGeometry KART =
      new KartGeometry(
          Map.ofEntries(
              Map.entry(Dimension.CASTER, 12.8),
              Map.entry(Dimension.KINGPIN_INCLINATION, 6.5),
              Map.entry(Dimension.CAMBER, 0.0),
              Map.entry(Dimension.WHEEL_RADIUS, 130.0),
              Map.entry(Dimension.HUB_OFFSET, 75.0),
              Map.entry(Dimension.WHEELBASE, 1068.0),
              Map.entry(Dimension.FRONT_TRACK, 960.0),
              Map.entry(Dimension.REAR_TRACK, 1160.0),
              Map.entry(Dimension.MASS, 143.6),
              Map.entry(Dimension.FRONT_SHARE, 0.43),
              Map.entry(Dimension.CG_HEIGHT, 303.0),
              Map.entry(Dimension.OVERTURN, 0.0),
              Map.entry(Dimension.FRAME_STIFFNESS, 166.0),
              Map.entry(Dimension.TYRE_STIFFNESS_FRONT, 150.0),
              Map.entry(Dimension.TYRE_STIFFNESS_REAR, 200.0),
              Map.entry(Dimension.ROLL_SHARE_FRONT, 0.34)));

  private PublishedLoads() {}

  /** Root mean square of the twelve differences, N. */
  static double rmsN(KartGeometry kart) {
    double sum = 0;
    for (Row row : ROWS) {
      WheelLoads loads = LoadModel.loads(kart, row.steerDeg, row.lateralG, 0);
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
