package insidelift.engine.proof;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the driver felt of the change. It stands beside the clock and never moves the verdict. */
public enum Feel {
  /** The kart felt better. */
  BETTER,
  /** The kart felt the same. */
  SAME,
  /** The kart felt worse. */
  WORSE,
  /** Nobody asked, or the driver could not say. */
  UNKNOWN;

  /** The word used for it on the command line and in JSON. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The feel of that word, if it is one. */
  public static Optional<Feel> of(String id) {
    return Arrays.stream(values()).filter(feel -> feel.id().equals(id)).findFirst();
  }
}
