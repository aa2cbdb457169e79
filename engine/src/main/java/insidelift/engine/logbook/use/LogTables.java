package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.Tyres;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.engine.units.KnownUnit;
import insidelift.engine.units.Units;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Days and runs in plain lines of at most 80 columns, safe for any terminal. */
public final class LogTables {

  private static final String UNKNOWN = "-";

  private LogTables() {}

  /** All days, the first one first. */
  public static List<String> days(Logbook book) {
    List<String> lines = new ArrayList<>();
    lines.add("record  date        runs  track                 note");
    for (Numbered<DayEntry> day : book.days()) {
      lines.add(
          trimmed(
              Plain.right(Integer.toString(day.number()), 6)
                  + "  "
                  + day.entry().date()
                  + Plain.right(Integer.toString(book.countOf(day.number())), 6)
                  + "  "
                  + Plain.left(book.name(day.entry().track()), 20)
                  + "  "
                  + Plain.cut(day.entry().note(), 30)));
    }
    return List.copyOf(lines);
  }

  /**
   * The runs of a day.
   *
   * @throws IllegalArgumentException if the record is no day
   */
  public static List<String> day(Logbook book, int day) {
    DayEntry entry = book.day(day);
    List<String> lines = new ArrayList<>();
    lines.add(
        trimmed(
            Plain.fullDay(entry.date())
                + ", "
                + Plain.cut(book.name(entry.track()), 24)
                + (entry.note().isEmpty() ? "" : ": " + Plain.cut(entry.note(), 30))));
    lines.add("run  rec kart         driver       water    camber caster laps    best  middle");
    for (Numbered<RunEntry> run : book.runsOf(day)) {
      lines.add(row(book, run));
    }
    return List.copyOf(lines);
  }

  private static String row(Logbook book, Numbered<RunEntry> numbered) {
    RunEntry run = numbered.entry();
    Kart kart = run.situation().kart();
    Flying flying = Flying.of(run);
    return String.join(
        " ",
        Plain.right(Integer.toString(run.runOfDay()), 3),
        Plain.right(Integer.toString(numbered.number()), 4),
        Plain.left(book.name(run.kart()), 12),
        Plain.left(book.name(run.driver()), 12),
        Plain.left(run.situation().answer("water").orElse(UNKNOWN), 8),
        Plain.right(middle(kart.camber()), 6),
        Plain.right(middle(kart.caster()), 6),
        Plain.right(Integer.toString(run.laps().size()), 4),
        Plain.right(seconds(flying.best()), 7),
        Plain.right(seconds(flying.middle()), 7));
  }

  /**
   * Everything that is known of one run.
   *
   * @param units the units of pressures and temperatures
   * @throws IllegalArgumentException if the record is no run
   */
  public static List<String> run(Logbook book, int number, Units units) {
    Numbered<RunEntry> numbered =
        book.run(number)
            .orElseThrow(() -> new IllegalArgumentException("record " + number + " is not a run"));
    RunEntry run = numbered.entry();
    DayEntry day = book.day(run.day());
    List<String> lines = new ArrayList<>();
    add(
        lines,
        "Run "
            + number
            + (numbered.corrected() ? " (corrected)" : "")
            + ": run "
            + run.runOfDay()
            + " of "
            + Plain.fullDay(day.date())
            + ", "
            + Plain.line(book.name(day.track()))
            + "; "
            + Plain.line(book.name(run.kart()))
            + ", driven by "
            + Plain.line(book.name(run.driver())));
    Kart kart = run.situation().kart();
    kart.camber().ifPresent(camber -> add(lines, "Camber: " + sides(camber)));
    kart.caster()
        .ifPresent(
            caster ->
                add(lines, "Caster: " + sides(caster) + (kart.absolute() ? "" : ", from neutral")));
    words(lines, "Settings: ", run.settings());
    words(lines, "Answers: ", run.situation().answers());
    run.advice().forEach(decision -> add(lines, advice(decision)));
    if (!run.laps().isEmpty()) {
      add(lines, "Laps: " + laps(run.laps()));
      Flying flying = Flying.of(run);
      add(
          lines,
          "Best "
              + seconds(flying.best())
              + ", middle "
              + seconds(flying.middle())
              + " without the first lap, in seconds");
    }
    Tyres tyres = run.tyres();
    tyres
        .cold()
        .ifPresent(cold -> add(lines, "Cold pressures: " + pressures(cold, units.pressure())));
    tyres.hot().ifPresent(hot -> add(lines, "Hot pressures: " + pressures(hot, units.pressure())));
    tyres
        .left()
        .ifPresent(left -> add(lines, "Front left tread: " + tread(left, units.temperature())));
    tyres
        .right()
        .ifPresent(right -> add(lines, "Front right tread: " + tread(right, units.temperature())));
    if (run.feel() != Feel.UNKNOWN) {
      add(lines, "The driver felt: " + run.feel().id());
    }
    if (!run.said().isEmpty()) {
      add(lines, "The driver said: " + Plain.line(run.said()));
    }
    return List.copyOf(lines);
  }

  private static void add(List<String> lines, String text) {
    lines.addAll(Plain.wrapped(text, "  "));
  }

  private static void words(List<String> lines, String title, Map<String, String> words) {
    if (!words.isEmpty()) {
      add(
          lines,
          title
              + words.entrySet().stream()
                  .map(word -> Plain.line(word.getKey()) + " " + Plain.line(word.getValue()))
                  .sorted()
                  .collect(Collectors.joining(", ")));
    }
  }

  private static String advice(AdviceTaken decision) {
    String what =
        decision.lever().id()
            + " "
            + decision.direction().id()
            + " by "
            + Plain.fixed(decision.degrees(), 2)
            + " degrees ("
            + Plain.line(decision.claim())
            + ")";
    String why = decision.reason().isEmpty() ? "" : ": " + Plain.line(decision.reason());
    return "Advice: " + what + (decision.taken() ? ", taken" : ", declined") + why;
  }

  private static String laps(List<Lap> laps) {
    return laps.stream()
        .map(lap -> lap.number() + ") " + Plain.fixed(lap.seconds(), 3))
        .collect(Collectors.joining("  "));
  }

  private static String sides(Sides sides) {
    return "left " + sides.left().signed() + ", right " + sides.right().signed();
  }

  private static String pressures(Pressures bar, KnownUnit unit) {
    return "front %s %s, rear %s %s %s"
        .formatted(
            number(KnownUnit.BAR, bar.frontLeft(), unit),
            number(KnownUnit.BAR, bar.frontRight(), unit),
            number(KnownUnit.BAR, bar.rearLeft(), unit),
            number(KnownUnit.BAR, bar.rearRight(), unit),
            unit.symbol());
  }

  private static String tread(EdgeTemperatures celsius, KnownUnit unit) {
    return "nearest the seat %s, middle %s, outer %s %s"
        .formatted(
            number(KnownUnit.CELSIUS, celsius.inner(), unit),
            number(KnownUnit.CELSIUS, celsius.middle(), unit),
            number(KnownUnit.CELSIUS, celsius.outer(), unit),
            unit.symbol());
  }

  private static String number(KnownUnit stored, double number, KnownUnit unit) {
    return Plain.fixed(stored.to(unit, number), unit.decimals());
  }

  private static String middle(Optional<Sides> sides) {
    return sides.map(known -> Plain.fixed(known.middle().value(), 2)).orElse(UNKNOWN);
  }

  private static String seconds(OptionalDouble seconds) {
    return seconds.isPresent() ? Plain.fixed(seconds.getAsDouble(), 2) : UNKNOWN;
  }

  private static String trimmed(String line) {
    return line.stripTrailing();
  }
}
