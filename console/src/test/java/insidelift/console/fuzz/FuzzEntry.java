package insidelift.console.fuzz;

/** Where the fuzzer enters: the target is named by the property {@code fuzz.target}. */
public final class FuzzEntry {

  private static final Target TARGET = Target.of(System.getProperty("fuzz.target", "case"));

  private FuzzEntry() {}

  /** Called once: the rules are loaded before any input is timed. */
  public static void fuzzerInitialize() {
    Target.next();
    Target.CASE.read(new byte[0]);
  }

  /** Called by the fuzzer, again and again. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    TARGET.read(bytes);
  }
}
