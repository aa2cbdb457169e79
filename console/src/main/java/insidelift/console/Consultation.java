package insidelift.console;

import java.io.PrintWriter;

/** x. */
final class Consultation {
  private Consultation() {}

  static int start(PrintWriter out) {
    out.println("later");
    return 0;
  }
}
