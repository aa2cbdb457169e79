package insidelift.engine.logbook.file;

import insidelift.engine.disk.Disk;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.shared.situation.Baseline;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a logbook says, with all corrections applied, as it stood when it was read. */
public final class Logbook {

  /** The name of the file in the data folder. */
  public static final String FILE = "logbook.jsonl";

  private record Driven(int number, RunKey key, LocalDate date) {}

  private final Records records;
  private final List<Notice> notices;

  /** The runs by date and by their place in the day. */
  private final List<Driven> driven;

  private final Map<Integer, List<Driven>> byDay;

  public Logbook(Records records, List<Notice> notices) {
    this.records = records;
    this.notices = List.copyOf(notices);
    Map<Integer, LocalDate> dates = new HashMap<>();
    records.all(DayEntry.class).forEach(day -> dates.put(day.number(), day.entry().date()));
    this.driven =
        records.runs().entrySet().stream()
            .map(run -> new Driven(run.getKey(), run.getValue(), dates.get(run.getValue().day())))
            .sorted(
                Comparator.comparing(Driven::date)
                    .thenComparing(run -> run.key().day())
                    .thenComparing(run -> run.key().runOfDay())
                    .thenComparing(Driven::number))
            .toList();
    this.byDay = driven.stream().collect(Collectors.groupingBy(run -> run.key().day()));
  }

  /**
   * Reads the logbook of a folder without changing anything, even while another program writes. A
   * folder without one gives an empty logbook.
   *
   * @throws LogbookProblem if the file is no logbook, is one of a newer version, or cannot be read
   */
  public static Logbook read(Path folder) throws LogbookProblem {
    Path file = folder.resolve(FILE);
    try {
      int sealed = Seal.read(folder);
      Scan scan = Scan.of(Disk.shown(file), Disk.read(file), sealed);
      List<Notice> notices = new ArrayList<>(scan.notices());
      if (scan.unfinished() > 0) {
        notices.add(new Notice.Unfinished(scan.unfinished()));
      }
      return new Logbook(scan.records(), notices);
    } catch (IOException e) {
      throw new LogbookProblem(Disk.shown(file) + " cannot be read (" + Disk.reason(e) + ")", e);
    }
  }

  /**
   * What was found wrong with the file; empty if nothing. The rest of a run is read when it is
   * first asked for, so a run may turn out to be damaged then, is left out, and stands here from
   * then on.
   */
  public List<Notice> notices() {
    List<Notice> all = new ArrayList<>(notices);
    all.addAll(records.damage());
    return List.copyOf(all);
  }

  /** Whether it holds no record at all. */
  public boolean isEmpty() {
    return records.isEmpty();
  }

  /** The karts, by number. */
  public List<Numbered<KartEntry>> karts() {
    return records.all(KartEntry.class);
  }

  /** The drivers, by number. */
  public List<Numbered<DriverEntry>> drivers() {
    return records.all(DriverEntry.class);
  }

  /** The tracks, by number. */
  public List<Numbered<TrackEntry>> tracks() {
    return records.all(TrackEntry.class);
  }

  /** The days, by date. */
  public List<Numbered<DayEntry>> days() {
    List<Numbered<DayEntry>> days = records.all(DayEntry.class);
    days.sort(
        Comparator.comparing((Numbered<DayEntry> day) -> day.entry().date())
            .thenComparing(Numbered::number));
    return days;
  }

  /** The runs, by date and by their place in the day. */
  public List<Numbered<RunEntry>> runs() {
    return whole(driven.stream());
  }

  /** What trainees answered to cards and lessons, in the order it was answered. */
  public List<Numbered<ReviewEntry>> reviews() {
    return records.all(ReviewEntry.class);
  }

  /** The cases that trainees worked on, in the order they were finished. */
  public List<Numbered<AttemptEntry>> attempts() {
    return records.all(AttemptEntry.class);
  }

  /** The runs of a day, all karts. */
  public List<Numbered<RunEntry>> runsOf(int day) {
    return whole(drivenOn(day).stream());
  }

  /** How many runs a day has, all karts. */
  public int countOf(int day) {
    return drivenOn(day).size();
  }

  /** The runs of a kart with a driver at a track, in the order driven. */
  public List<Numbered<RunEntry>> runsOf(int kart, int driver, int track) {
    return whole(
        driven.stream()
            .filter(run -> run.key().kart() == kart && run.key().driver() == driver)
            .filter(run -> day(run.key().day()).track() == track));
  }

  /** The good settings of all karts that count, the newest of each kart and condition. */
  public List<Numbered<BaselineEntry>> baselines() {
    Map<List<Object>, Numbered<BaselineEntry>> newest = new LinkedHashMap<>();
    for (Numbered<BaselineEntry> one : records.all(BaselineEntry.class)) {
      newest.put(List.of(one.entry().kart(), one.entry().condition()), one);
    }
    return List.copyOf(newest.values());
  }

  /** A kart's own good settings, by the condition that they are for. */
  public Map<String, Baseline> baselines(int kart) {
    Map<String, Baseline> own = new TreeMap<>();
    baselines().stream()
        .map(Numbered::entry)
        .filter(one -> one.kart() == kart)
        .forEach(one -> own.put(one.condition(), one.kept()));
    return own;
  }

  /** The run that was written last, if there is one. */
  public Optional<Numbered<RunEntry>> lastWritten() {
    return driven.stream().max(Comparator.comparing(Driven::number)).flatMap(r -> run(r.number()));
  }

  /** The last run of a kart, whoever drove and wherever, that is not after a date. */
  public Optional<Numbered<RunEntry>> lastOf(int kart, LocalDate date) {
    return driven.stream()
        .filter(run -> run.key().kart() == kart && !run.date().isAfter(date))
        .reduce((one, later) -> later)
        .flatMap(run -> run(run.number()));
  }

  private List<Driven> drivenOn(int day) {
    return byDay.getOrDefault(day, List.of());
  }

  private List<Numbered<RunEntry>> whole(Stream<Driven> wanted) {
    return wanted.map(run -> run(run.number())).flatMap(Optional::stream).toList();
  }

  /** The run of that number, if it is one. */
  public Optional<Numbered<RunEntry>> run(int number) {
    return entry(number, RunEntry.class)
        .map(run -> new Numbered<>(number, run, records.corrected(number)));
  }

  /** The record of that number as it stands, if it is of that kind. */
  public <E extends Entry> Optional<E> entry(int number, Class<E> kind) {
    return records.now(number).filter(kind::isInstance).map(kind::cast);
  }

  /** The lap times of a run, called {@code run 14} where 14 is its number. */
  public Optional<LapTimes> lapTimes(int run) {
    return run(run).map(found -> new LapTimes("run " + run, found.entry().laps()));
  }

  /** The number of the kart of that name, whatever the case of its letters. */
  public Optional<Integer> kart(String name) {
    return records.find(KartEntry.class, name);
  }

  /** The number of the driver of that name, whatever the case of its letters. */
  public Optional<Integer> driver(String name) {
    return records.find(DriverEntry.class, name);
  }

  /** The number of the track of that name, whatever the case of its letters. */
  public Optional<Integer> track(String name) {
    return records.find(TrackEntry.class, name);
  }

  /** The number of the day of that date at that track. */
  public Optional<Integer> day(LocalDate date, int track) {
    return records.find(date, track);
  }

  /** What the next run of a kart on a day is, from 1. */
  public int nextRunOfDay(int day, int kart) {
    return drivenOn(day).stream()
            .filter(run -> run.key().kart() == kart)
            .mapToInt(run -> run.key().runOfDay())
            .max()
            .orElse(0)
        + 1;
  }

  /**
   * The day of that number.
   *
   * @throws IllegalArgumentException if it is none
   */
  public DayEntry day(int number) {
    return need(number, DayEntry.class);
  }

  /**
   * The name of a kart, driver or track, as outside text: not yet safe to print.
   *
   * @throws IllegalArgumentException if the record has no name
   */
  public String name(int number) {
    return Records.name(need(number, Entry.class));
  }

  public List<Line> lines() {
    return records.lines();
  }

  private <E extends Entry> E need(int number, Class<E> kind) {
    return entry(number, kind)
        .orElseThrow(
            () -> new IllegalArgumentException("record " + number + " is not what was asked for"));
  }
}
