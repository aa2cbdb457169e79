package insidelift.console.log;

import insidelift.console.asking.Measures;
import insidelift.console.cli.LapColumnsOption;
import insidelift.console.cli.LapFile;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.Tyres;
import insidelift.engine.logbook.use.LapImport;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.engine.units.Units;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/**
 * What can be told of a run: laps, tyres, feel, other settings; set-up and advice are their own.
 */
public final class RunFacts {

  /** The feel of a word. */
  public static final class FeelWord implements ITypeConverter<Feel> {
    @Override
    public Feel convert(String word) {
      return Feel.of(word)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      Printable.quoted(word) + " is not one of better, same, worse, unknown"));
    }
  }

  @Mixin private RunSituation situation;
  @Mixin private RunAdvice advice;

  @Option(
      names = "--laps",
      paramLabel = "FILE",
      description = "lap times from a file (CSV or one a line); - pastes them")
  private String laps;

  @Option(
      names = "--times",
      paramLabel = "TIMES",
      description = "lap times typed, as in \"61.2 52.3 52.1\", the out-lap first")
  private String times;

  @Mixin private LapColumnsOption columns;

  @Option(
      names = "--cold",
      paramLabel = "PRESSURE",
      description = "cold pressures: one for all, or FL/FR/RL/RR, as in 0.75 or 11psi")
  private String cold;

  @Option(
      names = "--hot",
      paramLabel = "PRESSURE",
      description = "pressures straight after the run")
  private String hot;

  @Option(
      names = "--left-tread",
      paramLabel = "HEAT",
      description =
          "front left tread: edge nearest the seat/middle/other edge, as in 61/58/55 or 142/136/131F")
  private String leftTread;

  @Option(
      names = "--right-tread",
      paramLabel = "HEAT",
      description = "front right tread, the same way")
  private String rightTread;

  @Option(
      names = "--setting",
      paramLabel = "NAME=VALUE",
      description = "another setting, as in \"front width\"=\"1 in\"; repeat for more")
  private final Map<String, String> settings = new LinkedHashMap<>();

  @Option(
      names = "--feel",
      paramLabel = "WORD",
      converter = FeelWord.class,
      description = "against the run before: better, same, worse or unknown")
  private Feel feel;

  @Option(names = "--said", paramLabel = "TEXT", description = "what the driver said")
  private String said;

  /**
   * Reads and checks everything that was told, to be put on a run.
   *
   * @param units what numbers without a unit mean
   * @throws UnreadableLapTimes if the lap times are none
   * @throws CaseProblem if a file cannot be used
   * @throws IllegalArgumentException if options contradict each other
   */
  UnaryOperator<RunEntry> read(Path folder, Units units) throws UnreadableLapTimes, CaseProblem {
    Optional<LapTimes> driven = lapTimes();
    UnaryOperator<RunEntry> known = situation.read();
    UnaryOperator<RunEntry> advised = advice.read(folder);
    Measures measures = new Measures(units);
    Tyres measured =
        new Tyres(
            told("--cold", cold, measures::pressures),
            told("--hot", hot, measures::pressures),
            told("--left-tread", leftTread, measures::leftTread),
            told("--right-tread", rightTread, measures::rightTread));
    return run -> {
      RunEntry told = advised.apply(known.apply(run));
      if (driven.isPresent()) {
        told = told.with(driven.get());
      }
      if (!settings.isEmpty()) {
        Map<String, String> all = new LinkedHashMap<>(told.settings());
        all.putAll(settings);
        told = told.withSettings(all);
      }
      return told.with(tyres(told.tyres(), measured))
          .felt(feel == null ? told.feel() : feel, said == null ? told.said() : said);
    };
  }

  /** What was typed for an option, if anything was. */
  private static <T> Optional<T> told(String option, String text, Function<String, T> read) {
    if (text == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(text));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(option + ": " + e.getMessage(), e);
    }
  }

  private static Tyres tyres(Tyres before, Tyres now) {
    return new Tyres(
        now.cold().or(before::cold),
        now.hot().or(before::hot),
        now.left().or(before::left),
        now.right().or(before::right));
  }

  private Optional<LapTimes> lapTimes() throws UnreadableLapTimes, CaseProblem {
    if (laps != null && times != null) {
      throw new IllegalArgumentException("--laps and --times: give one of them");
    }
    if (times != null) {
      return Optional.of(LapImport.typed(times));
    }
    if (laps == null) {
      if (columns.named()) {
        throw new IllegalArgumentException("columns are named, but --laps names no file");
      }
      return Optional.empty();
    }
    return Optional.of(LapFile.read(laps, columns.read()));
  }
}
