package insidelift.engine.geometry;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What a garage gauge says, in the units of the gauge and in degrees. */
public sealed interface GaugeReading permits CamberByLaser, CasterBySweep, ToeOverDisc {

  /** The reading as JSON, numbers unrounded. */
  ObjectNode json();

  /** The reading as plain text of at most 80 columns. */
  List<String> lines();
}
