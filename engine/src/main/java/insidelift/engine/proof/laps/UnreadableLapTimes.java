package insidelift.engine.proof.laps;

import insidelift.shared.situation.Printable;

/**
 * Lap times that could not be read; the message is one sentence for the user and names the file
 * and, where there is one, the line.
 */
public final class UnreadableLapTimes extends Exception {

  private static final long serialVersionUID = 1L;

  UnreadableLapTimes(String message) {
    super(message);
  }

  static UnreadableLapTimes inFile(String file, String what) {
    return new UnreadableLapTimes(Printable.shown(file) + ": " + what + ".");
  }

  static UnreadableLapTimes inLine(String file, int line, String what) {
    return new UnreadableLapTimes(Printable.shown(file) + ", line " + line + ": " + what + ".");
  }
}
