package insidelift.engine.logbook;

import insidelift.engine.proof.LapTimes;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a logbook says, with all corrections applied, as it stood when it was read. */
public final class Logbook {

  /** The name of the file in the data folder. */
  public static final String FILE = "logbook.jsonl";

  private final Records records;
  private final List<Notice> notices;
  private final List<Numbered<RunEntry>> runs;

  Logbook(Records records, List<Notice> notices) {
    this.records = records;
    this.notices = List.copyOf(notices);
    Map<Integer, DayEntry> days = new HashMap<>();
    records.all(DayEntry.class).forEach(day -> days.put(day.number(), day.entry()));
    List<Numbered<RunEntry>> driven = records.all(RunEntry.class);
    driven.sort(
        Comparator.comparing((Numbered<RunEntry> run) -> days.get(run.entry().day()).date())
            .thenComparing(run -> run.entry().day())
            .thenComparing(run -> run.entry().runOfDay())
            .thenComparing(Numbered::number));
    this.runs = List.copyOf(driven);
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
      Scan scan = Scan.of(Disk.shown(file), Disk.read(file));
      List<Notice> notices = new ArrayList<>(scan.notices());
      if (scan.unfinished() > 0) {
        notices.add(new Notice.Unfinished(scan.unfinished()));
      }
      return new Logbook(scan.records(), notices);
    } catch (IOException e) {
      throw new LogbookProblem(Disk.shown(file) + " cannot be read (" + Disk.reason(e) + ")", e);
    }
  }

  /** What was found wrong with the file; empty if nothing. */
  public List<Notice> notices() {
    return notices;
  }

  /** Whether it holds no record at all. */
  public boolean isEmpty() {
    return records.lines().isEmpty();
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
    return runs;
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
    return runs.stream().filter(run -> run.entry().day() == day).toList();
  }

  /** The runs of a kart with a driver at a track, in the order driven. */
  public List<Numbered<RunEntry>> runsOf(int kart, int driver, int track) {
    return runs.stream()
        .filter(run -> run.entry().kart() == kart && run.entry().driver() == driver)
        .filter(run -> day(run.entry().day()).track() == track)
        .toList();
  }

  /** The run of that number, if it is one. */
  public Optional<Numbered<RunEntry>> run(int number) {
    return records
        .now(number)
        .filter(RunEntry.class::isInstance)
        .map(run -> new Numbered<>(number, (RunEntry) run, records.corrected(number)));
  }

  /** The lap times of a run, called {@code run 14} where 14 is its number. */
  public Optional<LapTimes> lapTimes(int run) {
    return run(run).map(found -> new LapTimes("run " + run, found.entry().laps()));
  }

  /** The number of the kart of that name, whatever the case of its letters. */
  public Optional<Integer> kart(String name) {
    return records.named("kart", name);
  }

  /** The number of the driver of that name, whatever the case of its letters. */
  public Optional<Integer> driver(String name) {
    return records.named("driver", name);
  }

  /** The number of the track of that name, whatever the case of its letters. */
  public Optional<Integer> track(String name) {
    return records.named("track", name);
  }

  /** What the next run of a kart on a day is, from 1. */
  public int nextRunOfDay(int day, int kart) {
    return runsOf(day).stream()
            .filter(run -> run.entry().kart() == kart)
            .mapToInt(run -> run.entry().runOfDay())
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

  List<Line> lines() {
    return records.lines();
  }

  private <E extends Entry> E need(int number, Class<E> kind) {
    return records
        .now(number)
        .filter(kind::isInstance)
        .map(kind::cast)
        .orElseThrow(
            () -> new IllegalArgumentException("record " + number + " is not what was asked for"));
  }
}
