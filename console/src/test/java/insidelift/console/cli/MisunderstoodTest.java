package insidelift.console.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import insidelift.console.start.Insidelift;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

class MisunderstoodTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "cart | there is no verb \"cart\"; did you mean card?",
        "dmeo | there is no verb \"dmeo\"; did you mean demo?",
        "NTOES | there is no verb \"NTOES\"; did you mean notes?",
        "demmo | there is no verb \"demmo\"; did you mean demo?",
        "teo | there is no verb \"teo\"; did you mean toe?",
        "xyzzy | there is no verb \"xyzzy\"",
        "advise --jsn x | Unknown option: '--jsn'; did you mean --json?",
        "advise | Missing required parameter: 'CASE'",
        "a\u001b[31mb | there is no verb \"a\\u{1b}[31mb\"",
      })
  void whatIsNotUnderstoodIsNamedWithWhatIsNear(String line, String words) {
    CommandLine top = Insidelift.commandLine();
    ParameterException problem =
        catchThrowableOfType(ParameterException.class, () -> top.parseArgs(line.split(" ")));
    assertThat(Misunderstood.words(problem)).isEqualTo(words);
  }
}
