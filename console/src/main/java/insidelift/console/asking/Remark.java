package insidelift.console.asking;

import insidelift.engine.speech.Heard;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What somebody types beside the answers: a question in return, or something seen or felt. */
public final class Remark {

  private Remark() {}

  /** Whether a line asks something in return. */
  public static boolean asks(String line) {
    List<String> words = words(line);
    String first = words.get(0);
    return first.equals("why")
        || first.equals("how")
        || (first.equals("rule") && words.size() > 1)
        || (first.equals("what") && words.size() > 1 && words.get(1).equals("if"))
        || (first.equals("what") && words.size() > 2 && words.get(1).equals("is"));
  }

  /** Whether a line says something that was seen or felt, or something that is better asked. */
  public static boolean tells(String line) {
    if (line.chars().noneMatch(Character::isLetter)) {
      return false;
    }
    return Heard.hear(line).tells();
  }

  public static List<String> words(String line) {
    return Arrays.asList(line.strip().toLowerCase(Locale.ROOT).split("\\s+", -1));
  }
}
