package insidelift.console.log;

import insidelift.console.cli.UnitsOption;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.WrittenText;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code log laps}: what is known of a run only after it, such as its lap times. */
@Command(
    name = "laps",
    mixinStandardHelpOptions = true,
    header = "Adds lap times, tyres and feel to a run that was written before it was driven.",
    description = {
      "",
      "A run that has lap times already is put right with \"log correct run\".",
      ""
    })
final class LogLaps extends LogWriting {

  @Parameters(paramLabel = "N", description = "the run's number, or \"last\"")
  private String number;

  @Mixin private RunFacts facts;
  @Mixin private UnitsOption units;

  @Override
  Job prepare(Path folder) throws UnreadableLapTimes, CaseProblem {
    UnaryOperator<RunEntry> told = facts.read(folder, units.chosen());
    return (writer, where) -> {
      Logbook book = writer.logbook();
      int record = LogCorrect.run(book, number);
      RunEntry was = LogCorrect.need(book, record, RunEntry.class, "run");
      if (!was.laps().isEmpty()) {
        throw new IllegalArgumentException(
            "run %d has lap times already; to put them right: insidelift log correct run %d"
                .formatted(record, record));
      }
      RunEntry now = told.apply(was);
      if (now.laps().isEmpty()) {
        throw new IllegalArgumentException("there are no lap times: give --laps or --times");
      }
      writer.append(Correction.of(record, now, "written down after the run"));
      return WrittenText.corrected(writer.logbook(), where, record);
    };
  }
}
