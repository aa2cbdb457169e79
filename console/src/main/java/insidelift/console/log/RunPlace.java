package insidelift.console.log;

import insidelift.console.cli.Habits;
import insidelift.console.cli.TypedDate;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.shared.situation.Printable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Who drove which kart, where and when; what is left out is as in the run written last. */
public final class RunPlace {

  /** A date. */
  public static final class Date implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return new TypedDate(Habits.DATES.locale()).read(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  @Option(names = "--kart", paramLabel = "NAME", description = "the kart")
  private String kart;

  @Option(names = "--driver", paramLabel = "NAME", description = "the driver")
  private String driver;

  @Option(names = "--track", paramLabel = "NAME", description = "the track")
  private String track;

  public int kart(Logbook book) {
    return number("kart", kart, book, book::kart, book.karts(), RunEntry::kart);
  }

  public int driver(Logbook book) {
    return number("driver", driver, book, book::driver, book.drivers(), RunEntry::driver);
  }

  public int track(Logbook book) {
    return number(
        "track", track, book, book::track, book.tracks(), run -> book.day(run.day()).track());
  }

  /** The day, which is today unless the user names another. */
  public static LocalDate date(LocalDate told) {
    return told == null ? LocalDate.now(java.time.ZoneId.systemDefault()) : told;
  }

  /** The number of what was named; else that of the last run; else the only one there is. */
  private static int number(
      String kind,
      String name,
      Logbook book,
      Function<String, Optional<Integer>> find,
      List<? extends Numbered<?>> all,
      ToIntFunction<RunEntry> ofRun) {
    if (name != null) {
      return need(kind, name, find);
    }
    Optional<Numbered<RunEntry>> last = book.lastWritten();
    if (last.isPresent()) {
      return ofRun.applyAsInt(last.get().entry());
    }
    if (all.size() == 1) {
      return all.get(0).number();
    }
    throw new IllegalArgumentException(
        all.isEmpty()
            ? "there is no %s in the logbook yet; add it first: insidelift log add %s NAME"
                .formatted(kind, kind)
            : "--%s is needed: there is no run yet to take it from".formatted(kind));
  }

  /** The number of what was named. */
  public static int need(String kind, String name, Function<String, Optional<Integer>> find) {
    return find.apply(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "there is no %s %s in the logbook; add it first: insidelift log add %s %s"
                        .formatted(kind, Printable.quoted(name), kind, Printable.quoted(name))));
  }
}
