package insidelift.console;

import insidelift.engine.logbook.LapImport;
import insidelift.engine.logbook.Pressures;
import insidelift.engine.logbook.RefusedEntryException;
import insidelift.engine.logbook.RunEntry;
import insidelift.engine.logbook.Tyres;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.LapColumns;
import insidelift.engine.proof.LapTimes;
import insidelift.engine.proof.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Printable;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/**
 * What can be told of a run: laps, tyres, feel, other settings; set-up and advice are their own.
 */
final class RunFacts {

  /** The feel of a word. */
  static final class FeelWord implements ITypeConverter<Feel> {
    @Override
    public Feel convert(String word) {
      return Feel.of(word)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      Printable.quoted(word) + " is not one of better, same, worse, unknown"));
    }
  }

  /** Pressures of four tyres. */
  static final class Bar implements ITypeConverter<Pressures> {
    @Override
    public Pressures convert(String text) {
      try {
        return Measures.bar(text);
      } catch (RefusedEntryException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  /** Temperatures of a tread. */
  static final class Celsius implements ITypeConverter<EdgeTemperatures> {
    @Override
    public EdgeTemperatures convert(String text) {
      return Measures.tread(text);
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

  @Option(
      names = "--lap-column",
      paramLabel = "NAME",
      description = "the file's column of lap numbers")
  private String lapColumn;

  @Option(names = "--time-column", paramLabel = "NAME", description = "the file's column of times")
  private String timeColumn;

  @Option(
      names = "--cold",
      paramLabel = "BAR",
      converter = Bar.class,
      description = "cold pressures: one for all, or FL/FR/RL/RR")
  private Pressures cold;

  @Option(
      names = "--hot",
      paramLabel = "BAR",
      converter = Bar.class,
      description = "pressures straight after the run")
  private Pressures hot;

  @Option(
      names = "--left-tread",
      paramLabel = "C",
      converter = Celsius.class,
      description = "front left tread: edge nearest the seat/middle/other edge")
  private EdgeTemperatures leftTread;

  @Option(
      names = "--right-tread",
      paramLabel = "C",
      converter = Celsius.class,
      description = "front right tread, the same way")
  private EdgeTemperatures rightTread;

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
   * @throws UnreadableLapTimes if the lap times are none
   * @throws CaseProblem if a file cannot be used
   * @throws IllegalArgumentException if options contradict each other
   */
  UnaryOperator<RunEntry> read(Path folder) throws UnreadableLapTimes, CaseProblem {
    Optional<LapTimes> driven = lapTimes();
    UnaryOperator<RunEntry> known = situation.read();
    UnaryOperator<RunEntry> advised = advice.read(folder);
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
      return told.with(tyres(told.tyres()))
          .felt(feel == null ? told.feel() : feel, said == null ? told.said() : said);
    };
  }

  private Tyres tyres(Tyres before) {
    return new Tyres(
        cold == null ? before.cold() : Optional.of(cold),
        hot == null ? before.hot() : Optional.of(hot),
        leftTread == null ? before.left() : Optional.of(leftTread),
        rightTread == null ? before.right() : Optional.of(rightTread));
  }

  private Optional<LapTimes> lapTimes() throws UnreadableLapTimes, CaseProblem {
    if (laps != null && times != null) {
      throw new IllegalArgumentException("--laps and --times: give one of them");
    }
    if (times != null) {
      return Optional.of(LapImport.pasted(times));
    }
    boolean named = lapColumn != null || timeColumn != null;
    if (laps == null) {
      if (named) {
        throw new IllegalArgumentException("columns are named, but --laps names no file");
      }
      return Optional.empty();
    }
    LapColumns standard = LapColumns.STANDARD;
    return Optional.of(
        LapFile.read(
            laps,
            new LapColumns(
                lapColumn == null ? standard.lap() : lapColumn,
                timeColumn == null ? standard.time() : timeColumn)));
  }
}
