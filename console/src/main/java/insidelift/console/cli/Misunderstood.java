package insidelift.console.cli;

import insidelift.console.report.Text;
import insidelift.shared.situation.Printable;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jline.utils.Levenshtein;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What was wrong with a command line, in a sentence, and what may have been meant. */
public final class Misunderstood {

  /** Letters that may be wrong, missing, too many or swapped; more are another word. */
  private static final int SLIPS = 2;

  private Misunderstood() {}

  public static String words(ParameterException e) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      return words(unmatched);
    }
    return Text.safe(String.valueOf(e.getMessage()));
  }

  private static String words(UnmatchedArgumentException e) {
    CommandSpec command = e.getCommandLine().getCommandSpec();
    String word = e.getUnmatched().get(0);
    boolean verb = command.parent() == null && !e.isUnknownOption();
    String what =
        verb
            ? "there is no verb " + Printable.quoted(word)
            : Text.safe(String.valueOf(e.getMessage()));
    List<String> near = verb ? verbs(command, word, e.getSuggestions()) : e.getSuggestions();
    return near.isEmpty() ? what : what + "; did you mean " + near.get(0) + "?";
  }

  /**
   * The verbs that are a slip or two of the fingers away, the fewest slips first; else what looks
   * alike.
   */
  private static List<String> verbs(CommandSpec command, String word, List<String> alike) {
    String small = word.toLowerCase(Locale.ROOT);
    List<String> near =
        command.subcommands().entrySet().stream()
            .filter(one -> !one.getValue().getCommandSpec().usageMessage().hidden())
            .map(Map.Entry::getKey)
            .filter(one -> Levenshtein.distance(small, one) <= SLIPS)
            .sorted(Comparator.comparingInt(one -> Levenshtein.distance(small, one)))
            .toList();
    return near.isEmpty() ? alike : near;
  }
}
