package insidelift.console;

import insidelift.shared.situation.Printable;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What was wrong with a command line, in a sentence, and what may have been meant. */
final class Misunderstood {

  private Misunderstood() {}

  static String words(ParameterException e) {
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
    List<String> near = e.getSuggestions();
    return near.isEmpty() ? what : what + "; did you mean " + near.get(0) + "?";
  }
}
