package insidelift.engine.geometry.toe;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What there is to do at the tie-rods. */
sealed interface ToeTask permits ToeCorrection, ToeSweep {

  /** The task as JSON, numbers unrounded. */
  ObjectNode json();

  /** The task as plain text of at most 80 columns, what to turn before why. */
  List<String> lines();
}
