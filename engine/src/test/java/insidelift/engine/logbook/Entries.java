package insidelift.engine.logbook;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.entry.Tyres;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Invented entries for tests. In a new logbook they become the records 2 to 6. */
public final class Entries {

  public static final InstantSource CLOCK =
      InstantSource.fixed(Instant.parse("2026-04-12T09:14:05.123Z"));

  public static final KartEntry KART =
      new KartEntry("Heron 7", Map.of("power", "mid", "adjustable", "both"), "new axle");
  public static final DriverEntry DRIVER =
      new DriverEntry("Ada Quill", Map.of("driver-strength", "limited"), "");
  public static final TrackEntry TRACK = TrackEntry.named("Larkmoor Bowl");
  public static final DayEntry DAY = new DayEntry(LocalDate.of(2026, 4, 12), 4, "practice");
  public static final int KART_RECORD = 2;
  public static final int DRIVER_RECORD = 3;
  public static final int TRACK_RECORD = 4;
  public static final int DAY_RECORD = 5;

  private Entries() {}

  public static List<Entry> before() {
    return List.of(KART, DRIVER, TRACK, DAY);
  }

  public static RunEntry run(int runOfDay) {
    return RunEntry.started(DAY_RECORD, KART_RECORD, DRIVER_RECORD, runOfDay);
  }

  public static Sides both(double degrees) {
    return Sides.both(Degrees.of(degrees));
  }

  /** A dry run on a set-up, on slicks. */
  public static RunEntry run(int runOfDay, double camber, double caster, double... laps) {
    Situation dry =
        Situation.of(Map.of("water", "dry", "tyres", "slicks"))
            .with(Kart.UNKNOWN.with(both(camber), both(caster)));
    return run(runOfDay).with(dry).with(LapTimes.of("run", laps));
  }

  /** A run in which every part is filled in. */
  public static RunEntry full(int runOfDay) {
    Kart kart =
        new Kart(
            Optional.of(new Sides(Degrees.of(-0.5), Degrees.of(-0.25))),
            Optional.of(both(12.0)),
            true,
            Optional.of(Degrees.of(10.5)),
            new Eccentrics(
                Degrees.of(0.5),
                Degrees.of(0.75),
                JsonNodeFactory.instance.objectNode().put("throwMm", 2.5),
                JsonNodeFactory.instance.objectNode().put("top", 3)),
            Optional.of(JsonNodeFactory.instance.objectNode().put("wheelbaseMm", 1045)));
    return run(runOfDay)
        .with(
            new Situation(
                Map.of("water", "damp", "trend", "drying", "time-left", "short"),
                Map.of("time-left", 12.0),
                kart,
                Set.of("rubber")))
        .withSettings(Map.of("front width", "1 position in"))
        .withAdvice(
            List.of(
                new AdviceTaken(Lever.CASTER, Direction.MORE, 0.75, "caster-wet-more", true, ""),
                new AdviceTaken(
                    Lever.CAMBER, Direction.LESS, 0.5, "camber-front-weak", false, "no time")))
        .with(LapTimes.of("run", 75.125, 62.345, 62.1))
        .with(
            new Tyres(
                Optional.of(new Pressures(0.75, 0.75, 0.8, 0.8)),
                Optional.of(new Pressures(0.95, 0.94, 1.0, 1.01)),
                Optional.of(new EdgeTemperatures(61, 58.5, 55)),
                Optional.of(new EdgeTemperatures(60, 58, 54))))
        .felt(Feel.BETTER, "bites at last,\n\"too much\" in the hairpin; föhn");
  }
}
