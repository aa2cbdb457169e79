package insidelift.engine.logbook.entry;

import insidelift.engine.proof.Feel;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.shared.situation.Situation;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One run: from the gate to the gate.
 *
 * @param day the number of the day's record
 * @param kart the number of the kart's record
 * @param driver the number of the driver's record
 * @param runOfDay which run of the day it was for this kart, from 1 to 200; runs of a day stand in
 *     this order
 * @param situation the front end's set-up (its kart), and what was answered about the run
 * @param settings other settings in the user's own words, such as the track width; a change in one
 *     of them counts as a change of something else
 * @param advice what was advised before this run, and whether the run was driven with it
 * @param laps the laps in driving order, the out-lap first
 * @param tyres what was measured at the tyres
 * @param feel what the driver felt of this run against the one before
 * @param said what the driver said of it, at most 2,000 characters
 */
public record RunEntry(
    int day,
    int kart,
    int driver,
    int runOfDay,
    Situation situation,
    Map<String, String> settings,
    List<AdviceTaken> advice,
    List<Lap> laps,
    Tyres tyres,
    Feel feel,
    String said)
    implements Entry {

  /**
   * @throws RefusedEntryException if a part is out of its range
   */
  public RunEntry {
    if (runOfDay < 1 || runOfDay > LogLimits.RUNS_OF_A_DAY) {
      throw new RefusedEntryException(
          "run of the day", runOfDay + " is not from 1 to " + LogLimits.RUNS_OF_A_DAY);
    }
    LogLimits.words("answers", situation.answers());
    if (situation.numbers().size() > LogLimits.ANSWERS) {
      throw new RefusedEntryException("numbers", "there are more than " + LogLimits.ANSWERS);
    }
    situation
        .numbers()
        .forEach(
            (key, value) -> LogLimits.number(LogLimits.word("numbers", key), value, 0, 1e6, ""));
    if (situation.declined().size() > LogLimits.ANSWERS) {
      throw new RefusedEntryException("unknown", "there are more than " + LogLimits.ANSWERS);
    }
    situation.declined().forEach(question -> LogLimits.word("unknown", question));
    settings =
        Collections.unmodifiableMap(new LinkedHashMap<>(LogLimits.words("settings", settings)));
    advice = List.copyOf(advice);
    if (advice.size() > LogLimits.DECISIONS) {
      throw new RefusedEntryException("advice", "there is more than " + LogLimits.DECISIONS);
    }
    try {
      laps = new LapTimes("", laps).laps();
    } catch (IllegalArgumentException e) {
      throw new RefusedEntryException("laps", e.getMessage());
    }
    Objects.requireNonNull(tyres, "tyres");
    Objects.requireNonNull(feel, "feel");
    LogLimits.text("what the driver said", said);
  }

  /** A run of which nothing more is known. */
  public static RunEntry started(int day, int kart, int driver, int runOfDay) {
    return new RunEntry(
        day,
        kart,
        driver,
        runOfDay,
        Situation.UNKNOWN,
        Map.of(),
        List.of(),
        List.of(),
        Tyres.UNKNOWN,
        Feel.UNKNOWN,
        "");
  }

  /** The same run of another kart or driver. */
  public RunEntry drivenBy(int otherKart, int otherDriver) {
    return new RunEntry(
        day,
        otherKart,
        otherDriver,
        runOfDay,
        situation,
        settings,
        advice,
        laps,
        tyres,
        feel,
        said);
  }

  /** The same run with the set-up and the answers. */
  public RunEntry with(Situation known) {
    return new RunEntry(
        day, kart, driver, runOfDay, known, settings, advice, laps, tyres, feel, said);
  }

  /** The same run with other settings. */
  public RunEntry withSettings(Map<String, String> others) {
    return new RunEntry(
        day, kart, driver, runOfDay, situation, others, advice, laps, tyres, feel, said);
  }

  /** The same run with what was advised before it. */
  public RunEntry withAdvice(List<AdviceTaken> decisions) {
    return new RunEntry(
        day, kart, driver, runOfDay, situation, settings, decisions, laps, tyres, feel, said);
  }

  /** The same run with these lap times. */
  public RunEntry with(LapTimes times) {
    return new RunEntry(
        day, kart, driver, runOfDay, situation, settings, advice, times.laps(), tyres, feel, said);
  }

  /** The same run with what was measured at the tyres. */
  public RunEntry with(Tyres measured) {
    return new RunEntry(
        day, kart, driver, runOfDay, situation, settings, advice, laps, measured, feel, said);
  }

  /** The same run with what the driver felt, and said. */
  public RunEntry felt(Feel felt, String words) {
    return new RunEntry(
        day, kart, driver, runOfDay, situation, settings, advice, laps, tyres, felt, words);
  }
}
