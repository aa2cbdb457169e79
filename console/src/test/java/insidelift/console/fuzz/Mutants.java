package insidelift.console.fuzz;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/** Small changes to inputs, the same in every run. */
final class Mutants {

  private static final List<String> PIECES =
      List.of(
          "\u001b[2J",
          "\u202e",
          "\u0000",
          "\u009b",
          "<script>",
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "-",
          "1e999",
          "0.0",
          "99999999999999999999",
          "null",
          "NaN",
          "true",
          "\n",
          "\r\n",
          "\t",
          "\\u0000",
          "\ufeff",
          "e\u0301\u0301\u0301",
          "\ud83d\ude00",
          "../",
          "=1+1",
          ";",
          "#",
          " ");

  private final RandomGenerator random;
  private final List<byte[]> inputs;

  Mutants(List<byte[]> inputs, long seed) {
    this.inputs = inputs;
    this.random = new java.util.SplittableRandom(seed);
  }

  /** An input with one to four changes. */
  byte[] of(byte[] input) {
    byte[] mutant = input;
    for (int i = 1 + random.nextInt(4); i > 0; i--) {
      mutant = changed(mutant);
    }
    return mutant;
  }

  private byte[] changed(byte[] input) {
    int from = random.nextInt(input.length + 1);
    int to = from + random.nextInt(Math.min(12, input.length - from) + 1);
    return switch (random.nextInt(5)) {
      case 0 -> joined(input, from, new byte[0], to);
      case 1 -> joined(input, from, new byte[] {(byte) random.nextInt(256)}, from);
      case 2 -> joined(input, from, piece(), random.nextBoolean() ? from : to);
      case 3 -> joined(input, from, Arrays.copyOfRange(input, from, to), from);
      default -> {
        byte[] other = inputs.get(random.nextInt(inputs.size()));
        int start = random.nextInt(other.length + 1);
        byte[] middle = Arrays.copyOfRange(other, start, Math.min(other.length, start + 40));
        yield joined(input, from, middle, to);
      }
    };
  }

  private byte[] piece() {
    return PIECES
        .get(random.nextInt(PIECES.size()))
        .getBytes(java.nio.charset.StandardCharsets.UTF_8);
  }

  private static byte[] joined(byte[] input, int from, byte[] middle, int to) {
    byte[] joined = Arrays.copyOf(input, from + middle.length + input.length - to);
    System.arraycopy(middle, 0, joined, from, middle.length);
    System.arraycopy(input, to, joined, from + middle.length, input.length - to);
    return joined;
  }
}
