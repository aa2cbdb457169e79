package insidelift.console.report;

import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.gauge.Beam;
import insidelift.engine.geometry.gauge.CamberByLaser;
import insidelift.engine.geometry.gauge.ToeOverDisc;
import insidelift.engine.sheet.Cell;
import insidelift.engine.sheet.Cell.Origin;
import insidelift.engine.sheet.FrontEndSheet;
import insidelift.engine.sheet.FrontEndSheet.Position;
import insidelift.engine.sheet.FrontEndSheet.Told;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Printable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stands on a kart's front-end sheet, in words. The front has the settings, the back the
 * changeover.
 *
 * @param kart what the user calls it
 * @param day the day it was made, ISO 8601
 * @param columns the headings of the table, the first for what each row is about
 * @param rows the table
 * @param legend what the marks in it mean
 * @param others the other levers that somebody told of
 * @param notTold those that nobody told of
 * @param noted who set it, when and where; and what the driver's weight adds
 * @param without how to set it without a gauge, and what cannot be known then
 * @param toeJob the toe job, step by step
 * @param toWet the changeover, each job with the minutes it takes with those before
 * @param toDry the same back
 * @param timeEnds what to do if the time ends
 * @param cautions what to beware of
 */
public record KartSheet(
    String kart,
    String day,
    List<String> columns,
    List<List<String>> rows,
    List<String> legend,
    List<String> others,
    String notTold,
    List<String> noted,
    List<String> without,
    List<String> toeJob,
    List<String> toWet,
    List<String> toDry,
    List<String> timeEnds,
    List<String> cautions) {

  private static final String NOT_TOLD = "-";
  private static final double BOARD_MM = 1000;

  /** The sheet of a kart. */
  public static KartSheet of(FrontEndSheet sheet, List<String> levers, String kart, LocalDate day) {
    List<String> columns = new ArrayList<>(List.of(""));
    columns.addAll(FrontEndSheet.COLUMNS);
    return new KartSheet(
        kart.isBlank() ? "this kart" : Printable.shown(kart, 80),
        day.toString(),
        columns,
        rows(sheet),
        legend(sheet),
        sheet.others().stream().map(KartSheet::told).toList(),
        notTold(sheet, levers),
        noted(sheet),
        without(sheet),
        sheet.toeJob(),
        changeover(sheet.toWet(), "wet"),
        changeover(sheet.toDry(), "dry"),
        timeEnds(sheet.toWet()),
        Stream.of(sheet.toWet(), sheet.toDry())
            .flatMap(advice -> advice.cautions().stream())
            .distinct()
            .toList());
  }

  private static List<List<String>> rows(FrontEndSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("camber, degrees", sheet.camber(), value -> signed(value, 2)));
    rows.add(
        row(
            "  laser dot at 1 m, mm",
            sheet.camber(),
            value ->
                signed(
                    CamberByLaser.ofCamber(Beam.INBOARD, BOARD_MM, new BothSides(value, value))
                        .dotMm()
                        .left(),
                    1)));
    rows.add(row("caster, degrees", sheet.caster(), value -> signed(value, 2)));
    rows.add(row("toe a side, mm", sheet.toe(), KartSheet::toe));
    rows.add(
        row(
            "  toe a wheel, degrees",
            sheet.toe(),
            value ->
                String.format(
                    Locale.ROOT,
                    "%.2f",
                    Math.abs(new ToeOverDisc(sheet.discMm(), 2 * value).totalOutDeg()) / 2)));
    return rows;
  }

  private static List<String> row(String label, List<Cell> cells, DoubleFunction<String> words) {
    List<String> row = new ArrayList<>(List.of(label));
    cells.forEach(cell -> row.add(cell(cell, words)));
    return row;
  }

  private static String cell(Cell cell, DoubleFunction<String> words) {
    if (!cell.told()) {
      return NOT_TOLD;
    }
    String left = words.apply(cell.left());
    String right = words.apply(cell.right());
    return (left.equals(right) ? left : left + "/" + right)
        + switch (cell.origin()) {
          case START -> "*";
          case STEP -> "~";
          default -> "";
        };
  }

  private static String toe(double mm) {
    return mm == 0 ? "0" : plain(Math.abs(mm)) + (mm > 0 ? " out" : " in");
  }

  private static String signed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%+." + decimals + "f", value + 0.0);
    return text.matches("[+-]0\\.?0*") ? text.substring(1) : text;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static List<String> legend(FrontEndSheet sheet) {
    List<Cell> cells =
        Stream.of(sheet.camber(), sheet.caster(), sheet.toe()).flatMap(List::stream).toList();
    List<String> legend = new ArrayList<>();
    if (cells.stream().anyMatch(cell -> cell.origin() == Origin.START)) {
      legend.add("* where we would start (provisional; wet camber is disputed), not of this kart");
    }
    if (cells.stream().anyMatch(cell -> cell.origin() == Origin.STEP)) {
      legend.add("~ worked out from this kart's own dry and wet, not driven");
    }
    legend.add(
        "- nobody told it. Two figures are left/right; camber + has the top outward; caster is from"
            + " the kart's own neutral; dot + is above the line, beam across the kart; toe over %s"
                .formatted(plain(sheet.discMm()))
            + " mm, in or out is disputed.");
    return legend;
  }

  private static String told(Told told) {
    return "%s %s / %s"
        .formatted(
            words(told.lever()),
            told.dry().isEmpty() ? NOT_TOLD : shown(told.dry()),
            told.wet().isEmpty() ? NOT_TOLD : shown(told.wet()));
  }

  private static String notTold(FrontEndSheet sheet, List<String> levers) {
    List<String> told = sheet.others().stream().map(Told::lever).toList();
    return levers.stream()
        .filter(lever -> !told.contains(lever))
        .map(KartSheet::words)
        .collect(Collectors.joining(", "));
  }

  private static String words(String lever) {
    return lever.replace('-', ' ');
  }

  private static String shown(String text) {
    return Printable.shown(text, 80);
  }

  private static List<String> noted(FrontEndSheet sheet) {
    List<String> noted = new ArrayList<>();
    sheet
        .own()
        .forEach(
            (condition, kept) -> {
              if (!kept.noted().isEmpty()) {
                noted.add(
                    "%s: %s."
                        .formatted(
                            condition,
                            Baseline.NOTED.stream()
                                .filter(kept.noted()::containsKey)
                                .map(word -> words(word) + " " + shown(kept.noted().get(word)))
                                .collect(Collectors.joining(", "))));
              }
            });
    noted.add(offset(sheet.own()));
    return noted;
  }

  private static String offset(Map<String, Baseline> own) {
    List<String> adds = new ArrayList<>();
    first(own, Baseline::camberOffset).ifPresent(camber -> adds.add("camber " + camber.signed()));
    first(own, Baseline::casterOffset).ifPresent(caster -> adds.add("caster " + caster.signed()));
    first(own, Baseline::toeOffset)
        .ifPresent(toe -> adds.add("toe %s mm out a side".formatted(signed(toe, 2))));
    return adds.isEmpty()
        ? "Read on the stand. What the driver's weight adds was not read yet."
        : "Read on the stand. The driver aboard adds: %s.".formatted(String.join(", ", adds));
  }

  private static <T> Optional<T> first(
      Map<String, Baseline> own, java.util.function.Function<Baseline, Optional<T>> read) {
    return own.values().stream().map(read).flatMap(Optional::stream).findFirst();
  }

  private static List<String> without(FrontEndSheet sheet) {
    Position camber = sheet.positions().get(Lever.CAMBER);
    Position caster = sheet.positions().get(Lever.CASTER);
    return List.of(
        "Without a gauge count positions from its own marks, both sides alike (one is camber %s,"
                .formatted(position(camber))
            + " caster %s); degrees, and whether the sides are equal, are then not known."
                .formatted(position(caster)));
  }

  private static String position(Position position) {
    return Degrees.of(position.degrees()) + (position.measured() ? "" : ", provisional");
  }

  private static List<String> changeover(Advice advice, String condition) {
    List<String> jobs = new ArrayList<>();
    if (advice.changeover() != null && advice.changeover().condition().equals(condition)) {
      advice.changeover().jobs().forEach(job -> jobs.add(job.total() + " min: " + job.what()));
    }
    advice.suggestions().stream()
        .filter(suggestion -> suggestion.first())
        .forEach(
            suggestion ->
                jobs.add(
                    "%d to %d min on their own: %s"
                        .formatted(
                            suggestion.minutes().from(),
                            suggestion.minutes().to(),
                            suggestion.summary())));
    return jobs;
  }

  private static List<String> timeEnds(Advice advice) {
    return advice.changeover() == null ? List.of() : advice.changeover().steps();
  }
}
