package insidelift.console.log;

import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.use.WrittenText;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code log withdraw}: takes a record back that should never have been written. */
@Command(
    name = "withdraw",
    mixinStandardHelpOptions = true,
    header = "Withdraws a record; what it said stays in the file.")
final class LogWithdraw extends LogWriting {

  @Parameters(paramLabel = "N", description = "the number of the record")
  private String number;

  @Option(names = "--because", required = true, paramLabel = "TEXT", description = "why")
  private String because;

  @Override
  Job prepare(Path folder) {
    int record = LogCorrect.record(number);
    return (writer, where) -> {
      writer.append(Correction.withdrawn(record, because));
      return WrittenText.withdrawn(where, record);
    };
  }
}
