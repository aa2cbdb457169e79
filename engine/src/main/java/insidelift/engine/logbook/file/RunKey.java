package insidelift.engine.logbook.file;

import insidelift.engine.logbook.entry.RunEntry;

/**
 * What a run is found by. It stands first in a run's line, so that a long logbook opens without
 * reading what else every run says.
 *
 * @param day the number of the day's record
 * @param kart the number of the kart's record
 * @param driver the number of the driver's record
 * @param runOfDay which run of the day it was for that kart
 */
record RunKey(int day, int kart, int driver, int runOfDay) {

  static RunKey of(RunEntry run) {
    return new RunKey(run.day(), run.kart(), run.driver(), run.runOfDay());
  }
}
