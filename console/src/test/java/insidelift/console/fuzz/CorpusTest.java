package insidelift.console.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What the fuzzer found worth keeping, and small changes to it: never a fault, never a hang. {@code
 * mvn verify -Pfuzz} lets the fuzzer itself search on.
 */
class CorpusTest {

  /** Changed inputs of each target; the ordinary build has half a second for each target. */
  private static final int MUTANTS = Integer.getInteger("fuzz.mutants", 150);

  @ParameterizedTest
  @EnumSource
  void everyReaderRefusesInOneSentenceOrGoesThroughWithIt(Target target) throws IOException {
    List<byte[]> inputs = Corpus.of(target);
    assertThat(inputs).hasSizeGreaterThan(3);
    Mutants mutants = new Mutants(inputs, 20260412);
    assertTimeoutPreemptively(
        Duration.ofMinutes(2),
        () -> {
          inputs.forEach(input -> read(target, input));
          for (int i = 0; i < MUTANTS; i++) {
            read(target, mutants.of(inputs.get(i % inputs.size())));
          }
        });
  }

  private static void read(Target target, byte[] input) {
    try {
      target.read(input);
    } catch (RuntimeException | Error fault) {
      throw new AssertionError(
          target + " fails with these bytes: " + HexFormat.of().formatHex(input), fault);
    }
  }
}
