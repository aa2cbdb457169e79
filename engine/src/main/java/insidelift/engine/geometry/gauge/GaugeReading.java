package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** What a garage gauge says, in its own units and in those that the trade speaks of. */
public sealed interface GaugeReading
    permits CamberByLaser, CasterBySweep, ToeOverDisc, LiftTest, FourScales {

  /** The reading as JSON, numbers unrounded. */
  ObjectNode json();

  /** The reading as plain text of at most 80 columns. */
  List<String> lines();

  /** The note that tells how it is read and what to look at; none if there is nothing to add. */
  default Optional<String> note() {
    return Optional.empty();
  }
}
