package insidelift.console.fuzz;

import java.io.IOException;

/** Where the fuzzer enters: the target is named by the property {@code fuzz.target}. */
public final class FuzzEntry {

  private static final Target TARGET = Target.of(System.getProperty("fuzz.target", "case"));

  private FuzzEntry() {}

  /** Called once: what has to be loaded and instrumented is so before any input is timed. */
  public static void fuzzerInitialize() throws IOException {
    Target.next();
    Corpus.of(TARGET).forEach(TARGET::read);
  }

  /** Called by the fuzzer, again and again. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    TARGET.read(bytes);
  }
}
