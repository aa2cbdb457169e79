package insidelift.engine.consultation.decision;

import insidelift.engine.sizing.Sized;
import insidelift.engine.sizing.Sized.End;
import insidelift.engine.sizing.Sizer;
import insidelift.rules.Reasoned;
import insidelift.rules.RuleBase;
import insidelift.rules.fact.Barred;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Free;
import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Start;
import insidelift.rules.fact.Spoken.Track;
import insidelift.rules.fact.Step;
import insidelift.rules.fact.Sum;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Decides what to do. The rules find, weigh and choose; what is left here is to turn the outcome
 * into degrees and positions of the kart. One decider serves any number of threads.
 *
 * @param vocabulary the words
 * @param rules the rules
 */
public record Decider(Vocabulary vocabulary, RuleBase rules) {

  /** The least that a move must gain to be worth waiting for, as the rules have it. */
  private static final int LEAST_GAIN = 2;

  /** Nothing but the place that a lever goes to is said of it. */
  private static final By NOTHING_ASKS = new By("wait", "nothing-asks");

  private static final By NOTHING_GAINS = new By("wait", "nothing-gains");

  /** What a situation comes to. */
  public Decided decide(Situation situation) {
    Reasoned reasoned = rules.reason(Facts.of(situation, vocabulary));
    return new Decided(
        situation,
        status(reasoned.choice().kind()),
        reasoned,
        new Levers(situation, reasoned).verdicts());
  }

  private static Status status(String choice) {
    return switch (choice) {
      case "fix" -> Status.FIX_FIRST;
      case "not-enough" -> Status.NOT_ENOUGH;
      case "undo", "restore", "move" -> Status.CHANGE;
      default -> Status.HOLD;
    };
  }

  /** What becomes of the levers of one kart. */
  private static final class Levers {

    private final Sizer sizer;
    private final KartRecord past;
    private final Reasoned reasoned;

    Levers(Situation situation, Reasoned reasoned) {
      this.sizer = new Sizer(situation.kart());
      this.past = situation.kart().past();
      this.reasoned = reasoned;
    }

    List<LeverOutcome> verdicts() {
      List<LeverOutcome> verdicts = new ArrayList<>();
      switch (reasoned.choice().kind()) {
        case "fix", "not-enough" -> {
          // No lever is spoken of before that.
        }
        case "undo", "restore", "move" -> {
          List<Step> now = reasoned.now();
          for (Lever lever : Lever.values()) {
            now.stream()
                .filter(step -> step.lever().equals(lever.id()))
                .findFirst()
                .map(step -> Optional.of(made(lever, step)))
                .orElseGet(() -> beside(lever))
                .ifPresent(verdicts::add);
          }
        }
        default -> {
          for (Lever lever : Lever.values()) {
            verdicts.add(stays(lever));
          }
        }
      }
      return verdicts;
    }

    private LeverOutcome made(Lever lever, Step step) {
      Direction way = Named.of(Direction.class, step.direction());
      Sized sized =
          step.to() == null
              ? sizer.one(lever, way)
              : !sizer.read(lever)
                  ? sizer.by(lever, degrees(lever, step.to() - step.from()))
                  : reading(step)
                      .map(read -> sizer.back(lever, read))
                      .orElseGet(() -> sizer.to(lever, degrees(lever, step.to())));
      return switch (step.by()) {
        case "start" ->
            new LeverOutcome(lever, Kind.TARGET, sized, true, starts(lever), List.of(), 0);
        case "baseline" ->
            new LeverOutcome(lever, Kind.RESTORE, sized, true, List.of(chosen()), List.of(), 0);
        case "one" -> weighed(lever, way, sized, true);
        default -> new LeverOutcome(lever, Kind.UNDO, sized, true, List.of(chosen()), List.of(), 0);
      };
    }

    /** The reading of this kart that a step goes back to; empty where it goes to a start. */
    private Optional<FrontEnd> reading(Step step) {
      return switch (step.by()) {
        case "before" -> past.before();
        case "baseline" ->
            reasoned
                .all(Track.class)
                .findFirst()
                .map(track -> past.baseline().get(track.condition()).front());
        default -> Optional.empty();
      };
    }

    private Degrees degrees(Lever lever, int place) {
      return lever == Lever.CAMBER
          ? Degrees.of(place / 100.0)
          : sizer.step(lever).times(place / 100.0);
    }

    private By chosen() {
      return reasoned.choice().by();
    }

    private List<By> starts(Lever lever) {
      String water = reasoned.all(Track.class).findFirst().map(Track::water).orElse("");
      return reasoned.spoken(Start.class).stream()
          .filter(start -> start.lever().equals(lever.id()) && start.water().equals(water))
          .map(Start::by)
          .toList();
    }

    private LeverOutcome weighed(Lever lever, Direction way, Sized sized, boolean first) {
      return new LeverOutcome(
          lever,
          Kind.CORRECTION,
          sized,
          first,
          List.of(),
          reasoned.parts(lever.id(), way.id()),
          sum(lever, way));
    }

    private int sum(Lever lever, Direction way) {
      return reasoned
          .all(Sum.class)
          .filter(sum -> sum.lever().equals(lever.id()) && sum.direction().equals(way.id()))
          .mapToInt(Sum::gain)
          .findFirst()
          .orElse(0);
    }

    /** The other lever beside one that moves: where it stays by a rule, or its turn comes later. */
    private Optional<LeverOutcome> beside(Lever lever) {
      if (reasoned.choice().kind().equals("restore")) {
        return Optional.of(notRestored(lever));
      }
      return reasoned
          .all(Free.class)
          .filter(free -> free.lever().equals(lever.id()) && free.gain() >= LEAST_GAIN)
          .max(Comparator.comparingInt(Free::gain).thenComparing(Free::direction))
          .map(
              free -> {
                Direction way = Named.of(Direction.class, free.direction());
                return weighed(lever, way, sizer.one(lever, way), false);
              })
          .filter(LeverOutcome::moves)
          .or(() -> Optional.of(held(lever)).filter(verdict -> verdict.gain() >= LEAST_GAIN));
    }

    private LeverOutcome notRestored(Lever lever) {
      Optional<Step> goal =
          reasoned
              .all(Step.class)
              .filter(step -> step.lever().equals(lever.id()) && !step.now())
              .filter(step -> step.by().equals("start") || step.by().equals("baseline"))
              .findFirst();
      if (goal.isEmpty()) {
        List<By> there = starts(lever);
        return new LeverOutcome(
            lever,
            Kind.TARGET,
            sizer.stay(lever, sizer.read(lever) ? End.ALREADY_THERE : End.NONE),
            false,
            there.isEmpty() ? List.of(chosen()) : there,
            List.of(),
            0);
      }
      By holder =
          barring(lever.id(), goal.get().direction(), "restore")
              .orElse(new By("time-for-one", "limit-time"));
      return new LeverOutcome(
          lever, Kind.TARGET, sizer.stay(lever, End.NONE), false, List.of(holder), List.of(), 0);
    }

    private Optional<By> barring(String lever, String direction, String choice) {
      return reasoned.spoken(Barred.class).stream()
          .filter(bar -> bar.lever().equals(lever) && bar.direction().equals(direction))
          .filter(bar -> bar.binds(choice))
          .map(Barred::by)
          .findFirst();
    }

    /** A lever that is left alone: what keeps it is the limit of what it would gain most by. */
    private LeverOutcome stays(Lever lever) {
      return reasoned.choice().kind().equals("wait")
          ? held(lever)
          : new LeverOutcome(
              lever,
              Kind.CORRECTION,
              sizer.stay(lever, End.NONE),
              false,
              List.of(chosen()),
              List.of(),
              0);
    }

    /** A lever that would gain most one way, and what holds it. */
    private LeverOutcome held(Lever lever) {
      Direction way =
          sum(lever, Direction.LESS) > sum(lever, Direction.MORE) ? Direction.LESS : Direction.MORE;
      boolean worth = sum(lever, way) >= LEAST_GAIN;
      boolean complained = reasoned.all(Found.class).anyMatch(Found::complaint);
      By holder =
          barring(lever.id(), way.id(), "move")
              .filter(by -> worth)
              .orElse(complained ? NOTHING_GAINS : NOTHING_ASKS);
      return new LeverOutcome(
          lever,
          Kind.CORRECTION,
          sizer.stay(lever, End.NONE),
          false,
          List.of(holder),
          reasoned.parts(lever.id(), way.id()),
          sum(lever, way));
    }
  }
}
