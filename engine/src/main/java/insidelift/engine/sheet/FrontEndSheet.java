package insidelift.engine.sheet;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.geometry.toe.ToeJob;
import insidelift.engine.sheet.Cell.Origin;
import insidelift.engine.sizing.Sizer;
import insidelift.engine.sizing.Sizes;
import insidelift.rules.fact.Spoken.Start;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How one kart stands, and where it goes with the track. Every row has a cell for each of {@link
 * #COLUMNS}.
 *
 * @param camber degrees, positive with the top outboard
 * @param caster degrees from the kart's own neutral
 * @param toe mm of toe-out a side
 * @param discMm the diameter that toe is told over, mm
 * @param positions how far one position moves each lever, degrees, and whether that was measured
 * @param others the other levers that somebody told of, in the order of the vocabulary
 * @param own this kart's own record, by condition
 * @param toeJob the toe job, step by step
 * @param toWet how the kart is changed over from dry to wet
 * @param toDry how it goes back
 */
public record FrontEndSheet(
    List<Cell> camber,
    List<Cell> caster,
    List<Cell> toe,
    double discMm,
    Map<Lever, Position> positions,
    List<Told> others,
    Map<String, Baseline> own,
    List<String> toeJob,
    Advice toWet,
    Advice toDry) {

  /** As the kart stands now, and the four states of the track. */
  public static final List<String> COLUMNS = List.of("now", "dry", "damp", "wet", "standing");

  /** The disc over which the trade tells toe (as published: 1 mm in all is 0.10° a wheel). */
  private static final double DISC = 280;

  /** The least toe-out a side that is published for rain, mm (crg-2005; see the note lever-toe). */
  private static final double TOE_WET = 3;

  /** What is worked out is told to a quarter of a degree, as finely as readings are told apart. */
  private static final double TIDY = 4;

  /** What one position of a lever moves. */
  public record Position(double degrees, boolean measured) {}

  /** How another lever stands, in the user's words; empty where nobody told. */
  public record Told(String lever, String dry, String wet) {}

  /**
   * The sheet of a kart.
   *
   * @param situation what is known of the kart, its driver and its class; answers about the track
   *     do not count
   */
  public static FrontEndSheet of(Advisor advisor, Situation situation) {
    return new Maker(advisor, situation).sheet();
  }

  /** What is common to all cells of one sheet. */
  private static final class Maker {

    private final Advisor advisor;
    private final Situation situation;
    private final Kart kart;
    private final Map<String, Baseline> own;
    private final Sizer sizer;
    private final List<Start> starts;

    Maker(Advisor advisor, Situation situation) {
      this.advisor = advisor;
      this.situation = kartOf(situation);
      this.kart = situation.kart();
      this.own = kart.past().baseline();
      this.sizer = new Sizer(kart);
      this.starts = advisor.decide(on("wet", "dry")).reasoned().spoken(Start.class);
    }

    /** The kart, its class and its driver, without what one run was like. */
    private static Situation kartOf(Situation situation) {
      Map<String, String> lasting = new LinkedHashMap<>();
      for (String question : List.of("power", "gearbox", "driver-strength", "adjustable")) {
        situation.answer(question).ifPresent(value -> lasting.put(question, value));
      }
      return Situation.of(lasting).with(situation.kart());
    }

    private Situation on(String water, String setupFor) {
      return situation.with("water", water).with("setup-for", setupFor);
    }

    FrontEndSheet sheet() {
      double disc =
          own.values().stream()
              .flatMap(kept -> kept.toe().stream())
              .flatMap(toe -> toe.discMm().stream())
              .findFirst()
              .orElse(DISC);
      return new FrontEndSheet(
          row(Lever.CAMBER),
          row(Lever.CASTER),
          toe(),
          disc,
          Map.of(Lever.CAMBER, position(Lever.CAMBER), Lever.CASTER, position(Lever.CASTER)),
          others(),
          own,
          advisor.notes().note("toe-job").section("Steps"),
          advisor.advise(standing("dry", "wet")),
          advisor.advise(standing("wet", "dry")));
    }

    private Position position(Lever lever) {
      return new Position(sizer.step(lever).value(), sizer.measured(lever));
    }

    /** The kart as its own sheet has it for one condition, on the track of the other. */
    private Situation standing(String from, String water) {
      FrontEnd front = own.containsKey(from) ? own.get(from).front() : FrontEnd.UNKNOWN;
      Kart stands =
          new Kart(
              front.camber(),
              front.caster(),
              front.absolute(),
              front.neutral(),
              kart.eccentrics(),
              Optional.empty(),
              kart.past());
      return on(water, from).with(stands);
    }

    private List<Cell> row(Lever lever) {
      Cell dry = own("dry", lever);
      Cell wet = own("wet", lever);
      boolean both = dry.told() && wet.told();
      return List.of(
          cell(sides(kart.front(), lever)),
          dry.told() ? dry : start("dry", lever),
          both ? step(lever, "damp", dry, wet) : start("damp", lever),
          wet.told() ? wet : start("wet", lever),
          both ? step(lever, "standing", dry, wet) : start("standing", lever));
    }

    private Cell own(String condition, Lever lever) {
      return own.containsKey(condition)
          ? cell(sides(own.get(condition).front(), lever))
          : Cell.EMPTY;
    }

    private static Cell cell(Optional<Sides> sides) {
      return sides
          .map(read -> new Cell(read.left().value(), read.right().value(), Origin.OWN))
          .orElse(Cell.EMPTY);
    }

    /** Camber as read; caster from neutral, if that can be told. */
    private static Optional<Sides> sides(FrontEnd front, Lever lever) {
      if (lever == Lever.CAMBER) {
        return front.camber();
      }
      Optional<Degrees> middle = front.casterFromNeutral();
      return front
          .caster()
          .filter(read -> middle.isPresent())
          .map(
              read -> {
                Degrees zero = read.middle().minus(middle.get());
                return new Sides(read.left().minus(zero), read.right().minus(zero));
              });
    }

    private Cell start(String water, Lever lever) {
      return Cell.both(startDegrees(water, lever), Origin.START);
    }

    private double startDegrees(String water, Lever lever) {
      int hundredths =
          starts.stream()
              .filter(start -> start.water().equals(water) && start.lever().equals(lever.id()))
              .mapToInt(Start::value)
              .findFirst()
              .orElse(0);
      return hundredths / 100.0 * (lever == Lever.CAMBER ? 1 : sizer.step(lever).value());
    }

    /** Where this kart's own two lead, in the measure in which the starting points do. */
    private Cell step(Lever lever, String water, Cell dry, Cell wet) {
      double from = startDegrees("dry", lever);
      double whole = startDegrees("wet", lever) - from;
      if (whole == 0) {
        return Cell.EMPTY;
      }
      double share = (startDegrees(water, lever) - from) / whole;
      // Nobody works out a kart that is crooked: both sides alike.
      return Cell.both(
          bounded(lever, dry.middle() + share * (wet.middle() - dry.middle()), wet.middle()),
          Origin.STEP);
    }

    /** Not beyond where a lever may go, unless the kart's own record is. */
    private double bounded(Lever lever, double value, double own) {
      double most =
          lever == Lever.CAMBER
              ? Sizes.CAMBER_MOST.value()
              : Sizes.CASTER_POSITIONS * sizer.step(lever).value();
      double bounded = Math.min(value, Math.max(most, own));
      return Math.round(bounded * TIDY) / TIDY + 0.0;
    }

    private List<Cell> toe() {
      Cell dry = toe("dry");
      Cell wet = toe("wet");
      return List.of(
          Cell.EMPTY,
          dry.told() ? dry : Cell.both(ToeJob.OUR_START_OUT_MM, Origin.START),
          Cell.EMPTY,
          wet.told() ? wet : Cell.both(TOE_WET, Origin.START),
          Cell.EMPTY);
    }

    private Cell toe(String condition) {
      return Optional.ofNullable(own.get(condition))
          .flatMap(Baseline::toe)
          .map(toe -> new Cell(toe.left(), toe.right(), Origin.OWN))
          .orElse(Cell.EMPTY);
    }

    private List<Told> others() {
      List<Told> told = new ArrayList<>();
      for (LeverWord lever : advisor.vocabulary().levers()) {
        String dry = told("dry", lever.id());
        String wet = told("wet", lever.id());
        if (!dry.isEmpty() || !wet.isEmpty()) {
          told.add(new Told(lever.id(), dry, wet));
        }
      }
      return told;
    }

    private String told(String condition, String lever) {
      return Stream.ofNullable(own.get(condition))
          .map(kept -> kept.levers().getOrDefault(lever, ""))
          .findFirst()
          .orElse("");
    }
  }
}
