package insidelift.engine.logbook.entry;

import insidelift.shared.situation.Printable;
import java.util.Map;

/**
 * What a record of a logbook may hold, each limit with its reason; the sizes of what is read are in
 * {@link insidelift.shared.situation.InputLimits}.
 */
public final class LogLimits {

  /** Characters of a name: two full names and a race number fit. */
  static final int NAME = 80;

  /** Characters of a free text, such as what the driver said: a page. */
  static final int TEXT = 2_000;

  /** Characters of a word of the vocabulary or the id of a note: the longest has under 40. */
  public static final int WORD = 60;

  /** Answers of one situation, and other settings of one run: the vocabulary has under 50. */
  static final int ANSWERS = 100;

  /** Pieces of advice beside one run: two levers, each reconsidered a few times. */
  static final int DECISIONS = 20;

  /** Runs of one day: a run every five minutes from dawn to dusk. */
  static final int RUNS_OF_A_DAY = 200;

  /** Pressures in bar, cold or hot; kart tyres run from about 0.5 to 1.6. */
  static final double LEAST_BAR = 0.2;

  /** The greatest pressure in bar: beyond what fits a bead; psi typed as bar is far above. */
  static final double MOST_BAR = 3.0;

  /** The coldest tread in degrees Celsius, as case files have it. */
  static final double COLDEST = -20;

  /** The hottest tread in degrees Celsius, as case files have it. */
  static final double HOTTEST = 200;

  /** Degrees of a change to either lever: ten times the largest step that is ever advised. */
  static final double MOST_DEGREES = 40;

  private LogLimits() {}

  static String name(String what, String text) {
    if (text.isBlank()) {
      throw new RefusedEntryException(what, "a name is missing");
    }
    return within(what, text, NAME, false);
  }

  static String text(String what, String text) {
    return within(what, text, TEXT, true);
  }

  static String word(String what, String text) {
    if (text.isBlank()) {
      throw new RefusedEntryException(what, "a word is missing");
    }
    return within(what, text, WORD, false);
  }

  static Map<String, String> words(String what, Map<String, String> words) {
    if (words.size() > ANSWERS) {
      throw new RefusedEntryException(what, "there are more than " + ANSWERS);
    }
    words.forEach(
        (key, value) -> {
          word(what, key);
          word(what, value);
        });
    return words;
  }

  static double number(String what, double value, double least, double most, String unit) {
    if (!(value >= least && value <= most)) {
      throw new RefusedEntryException(
          what, Plain.number(value) + " is not from " + range(least, most) + " " + unit);
    }
    return value;
  }

  private static String range(double least, double most) {
    return Plain.number(least) + " to " + Plain.number(most);
  }

  private static String within(String what, String text, int most, boolean lines) {
    // Almost every word is plain and short, and a season's log has a hundred thousand.
    if (text.length() <= most && plain(text)) {
      return text;
    }
    int length = text.codePointCount(0, text.length());
    if (length > most) {
      throw new RefusedEntryException(
          what, length + " characters are too many; the most is " + most);
    }
    text.codePoints()
        .filter(point -> !storable(point, lines))
        .findFirst()
        .ifPresent(
            point -> {
              throw new RefusedEntryException(
                  what,
                  "it holds the control character " + Printable.shown(Character.toString(point)));
            });
    return text;
  }

  private static boolean plain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  /** Half a character cannot be written as UTF-8; other control characters are no writing. */
  private static boolean storable(int point, boolean lines) {
    if (lines && (point == '\n' || point == '\t')) {
      return true;
    }
    int type = Character.getType(point);
    return type != Character.CONTROL && type != Character.SURROGATE;
  }
}
