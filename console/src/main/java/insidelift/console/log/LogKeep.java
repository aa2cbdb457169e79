package insidelift.console.log;

import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.GoodRun;
import insidelift.engine.logbook.use.WrittenText;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Baseline;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code log keep}: records how a kart stands when it is good, as its own sheet. */
@Command(
    name = "keep",
    mixinStandardHelpOptions = true,
    header = "Keeps a good setting as the kart's own sheet for dry or wet.",
    description = {
      "",
      "For example:",
      "  insidelift log keep run:7 --for dry toe=0.8 by=Ada",
      "  insidelift log keep --kart \"Heron 7\" --for wet camber=1 toe=3 hubs=long",
      "What is not told is as in the run, and else as it was kept before; who, when and where are"
          + " of the run alone. What nobody told stays empty. The older record stays in the file.",
      "Camber and caster in degrees, toe in mm a side with out positive: one for both sides, or"
          + " LEFT/RIGHT.",
      ""
    })
final class LogKeep extends LogWriting {

  /** The two sheets of a kart. */
  enum Condition {
    dry,
    wet
  }

  @Parameters(
      paramLabel = "WORD",
      arity = "0..*",
      description = "run:7 or run:last, and NAME=VALUE as often as wanted")
  private List<String> words = new ArrayList<>();

  @Option(names = "--kart", paramLabel = "NAME", description = "the kart, where no run is named")
  private String kart;

  @Option(names = "--for", paramLabel = "TRACK", description = "dry or wet; else as the run was")
  private Condition condition;

  @Override
  Job prepare(Path folder) {
    Vocabulary vocabulary = Vocabulary.load();
    TypedSheet told = new TypedSheet(vocabulary);
    String source = null;
    for (String word : words) {
      if (source == null && word.matches("run:(\\d{1,9}|last)")) {
        source = word.substring("run:".length());
      } else {
        told.put(word);
      }
    }
    if ((source == null) == (kart == null)) {
      throw new IllegalArgumentException(
          "name the run that was good, as in run:7, or the kart with --kart");
    }
    Baseline typed = told.baseline();
    String run = source;
    return (writer, where) -> {
      BaselineEntry entry = entry(writer.logbook(), run, typed, vocabulary);
      int number = writer.append(entry);
      return WrittenText.added(writer.logbook(), where, number);
    };
  }

  private BaselineEntry entry(Logbook book, String source, Baseline typed, Vocabulary vocabulary) {
    if (source == null) {
      if (condition == null) {
        throw new IllegalArgumentException("say what it is for: --for dry or --for wet");
      }
      int number = RunPlace.need("kart", kart, book::kart);
      return new BaselineEntry(
          number,
          condition.name(),
          Optional.empty(),
          some(typed.or(before(book, number, condition.name()))));
    }
    int number = LogCorrect.run(book, source);
    RunEntry run = LogCorrect.need(book, number, RunEntry.class, "run");
    String track =
        condition == null
            ? GoodRun.condition(run)
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "the run does not tell the water: say --for dry or --for wet"))
            : condition.name();
    return new BaselineEntry(
        run.kart(),
        track,
        Optional.of(number),
        some(
            typed
                .or(GoodRun.baseline(book, run, vocabulary))
                .or(before(book, run.kart(), track).lasting())));
  }

  private static Baseline before(Logbook book, int kart, String condition) {
    return book.baselines(kart).getOrDefault(condition, Baseline.UNKNOWN);
  }

  private static Baseline some(Baseline kept) {
    if (kept.stand().equals(Baseline.Measured.UNKNOWN) && kept.levers().isEmpty()) {
      throw new IllegalArgumentException(
          "there is nothing to keep yet: no camber, no caster, no toe and no other lever is told");
    }
    return kept;
  }
}
