package insidelift.console.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Several numbers of a list on one line, as in "2 5". */
public final class Numbers {

  private Numbers() {}

  /**
   * The numbers of a line; none for an empty line, and nothing at all where the line is anything
   * else.
   *
   * @param most the highest number of the list; the lowest is 1
   */
  public static Optional<List<Integer>> of(String line, int most) {
    List<Integer> numbers = new ArrayList<>();
    for (String word : line.split("[ ,;]+", -1)) {
      if (word.isEmpty()) {
        continue;
      }
      if (word.length() > 2 || !word.chars().allMatch(Character::isDigit)) {
        return Optional.empty();
      }
      int number = Integer.parseInt(word);
      if (number < 1 || number > most) {
        return Optional.empty();
      }
      numbers.add(number);
    }
    return Optional.of(numbers);
  }
}
