package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.notes.Note;
import insidelift.engine.training.drill.Ladder.Rung;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a finished attempt is worth, in four parts that are never added up. All is worked out anew
 * from the case and the moves by the rules of this build; there is no key.
 *
 * <ul>
 *   <li><b>Economy</b>: for each question, the information that its answer was expected to give
 *       about what to do now (bits for the effort), over that of the question the engine would have
 *       asked at the same point, at most 1; their mean, where a question that the engine would
 *       still have asked counts nought, and so does one after nothing could change any more.
 *   <li><b>Conclusion</b>: the finding, what comes before camber and caster, the levers, the
 *       directions and the sizes, a fifth each; a quarter each in an attempt from before the second
 *       was asked. A fault is one whole, and so is a good kart: who changes it has nothing.
 *   <li><b>Reason</b>: whether the note that was named holds in this case.
 *   <li><b>Safety</b>: nought where a lever was moved, or left, over a fault, or moved in a way
 *       that a limit forbids; half where the kart was never looked over and had no fault by luck.
 * </ul>
 *
 * What a hint gave away counts nought. Not for several threads.
 */
public final class Judgement {

  /** Two sizes that differ by less count as the same: what two readings may differ by. */
  static final double SAME_DEGREES = 0.25;

  /** How the safety of an attempt is judged. */
  public enum Safety {
    /** The kart was looked over and nothing that can hurt was decided. */
    SAFE(100),
    /** Nothing was wrong with the kart, but nobody had looked. */
    LUCKY(50),
    /** A lever was moved in a way that a limit forbids. */
    FORBIDDEN(0),
    /** A fault was missed: the worst mistake. */
    MISSED(0);

    private final int points;

    Safety(int points) {
      this.points = points;
    }

    /** Points of 100. */
    public int points() {
      return points;
    }
  }

  /** How the answer to what comes before camber and caster is judged. */
  public enum First {
    /** It comes first, or nothing does and nothing was named. */
    RIGHT(1),
    /** It is worth a try, but does not come first. */
    HALF(0.5),
    /** The other way of that lever would be worth a try. */
    WRONG_WAY(0),
    /** Neither; or a good kart is changed. */
    WRONG(0);

    private final double part;

    First(double part) {
      this.part = part;
    }
  }

  private final Drill drill;
  private final Advisor advisor;
  private final NextQuestion next;
  private Asking asking;
  private final Set<Rung> given = EnumSet.noneOf(Rung.class);
  private final Map<Lever, Step> said = new EnumMap<>(Lever.class);
  private Optional<String> found = Optional.empty();
  private Optional<String> because = Optional.empty();
  private Optional<String> first = Optional.empty();
  private FirstLever before;
  private boolean fixFirst;

  /** The judgement on a drill as far as it has gone. */
  public Judgement(Advisor advisor, NextQuestion next, Drill drill) {
    this.drill = drill;
    this.advisor = advisor;
    this.next = next;
    List<DrillMove> moves = drill.moves();
    for (int i = 0; i < moves.size(); i++) {
      DrillMove move = moves.get(i);
      if (move instanceof DrillMove.FixFirst) {
        fixFirst = true;
      } else if (move instanceof DrillMove.Found named) {
        found = Optional.of(named.finding());
      } else if (move instanceof DrillMove.First lever) {
        first = Optional.of(lever.step());
      } else if (move instanceof DrillMove.Move set) {
        said.put(set.lever(), set.step());
      } else if (move instanceof DrillMove.Because reason) {
        because = Optional.of(reason.note());
      } else if (move instanceof DrillMove.Hint) {
        given.add(Ladder.rung(moves.subList(0, i), asking().openAt(i)));
      }
    }
  }

  /** Going through all questions again takes its time, so it is done when it is asked for. */
  private Asking asking() {
    if (asking == null) {
      asking = new Asking(advisor, next, drill);
    }
    return asking;
  }

  /** The drill that is judged. */
  public Drill drill() {
    return drill;
  }

  /** Whether the trainee said that something has to be put right first. */
  public boolean fixFirst() {
    return fixFirst;
  }

  /** The finding that was named. */
  public Optional<String> found() {
    return found;
  }

  /**
   * The step of another lever that was to come first, or {@link Drill#NONE}; empty if nobody asked.
   */
  public Optional<String> first() {
    return first;
  }

  /** How that was judged, if it was asked. */
  public Optional<First> firstJudged() {
    return first.map(before()::judge);
  }

  /** What comes before camber and caster: worked out when it is asked for, as questions are. */
  FirstLever before() {
    if (before == null) {
      before = FirstLever.of(advisor, drill);
    }
    return before;
  }

  /** The note on why the kart is left alone, if it was good as it stood. */
  public Optional<Note> goodKart() {
    return Optional.of(before()).filter(FirstLever::keep).map(FirstLever::choice);
  }

  /** Whether anything at all was to be changed on it. */
  public boolean changed() {
    return fixFirst
        || !moved().isEmpty()
        || first.filter(step -> !step.equals(Drill.NONE)).isPresent();
  }

  /** The reason that was named. */
  public Optional<String> because() {
    return because;
  }

  /** The levers that were moved, and how far. */
  public Map<Lever, Step> moved() {
    Map<Lever, Step> moved = new EnumMap<>(said);
    moved.values().removeIf(step -> step.direction() == Direction.HOLD);
    return moved;
  }

  /** How many hints were taken. */
  public int hints() {
    return (int) drill.moves().stream().filter(DrillMove.Hint.class::isInstance).count();
  }

  /** Economy, in points of 100. */
  public int economy() {
    return points(asking().economy());
  }

  /** How the questions were judged, one by one. */
  public List<Asking.Asked> questions() {
    return asking().asked();
  }

  /** The questions that the engine would still have asked. */
  public List<String> leftOut() {
    return asking().leftOut();
  }

  /** Conclusion, in points of 100. */
  public int conclusion() {
    if (given.contains(Rung.ANSWER)) {
      return 0;
    }
    Conclusion right = drill.right();
    boolean fault = right.status() == Status.FIX_FIRST;
    if (fault || fixFirst) {
      return fault && fixFirst && !given.contains(Rung.FINDING) ? 100 : 0;
    }
    if (goodKart().isPresent() && changed()) {
      return 0;
    }
    double parts = rightFinding() && !given.contains(Rung.FINDING) ? 1 : 0;
    parts += firstJudged().map(judged -> judged.part).orElse(0.0);
    int of = first.isPresent() ? 5 : 4;
    if (said.isEmpty() || !moved().keySet().equals(right.moves().keySet())) {
      return points(parts / of);
    }
    boolean ways = true;
    boolean sizes = true;
    for (Map.Entry<Lever, Step> move : right.moves().entrySet()) {
      Step step = moved().get(move.getKey());
      ways &= step.direction() == move.getValue().direction();
      sizes &= Math.abs(step.degrees() - move.getValue().degrees()) < SAME_DEGREES;
    }
    return points((parts + 1 + (ways ? 1 : 0) + (ways && sizes ? 1 : 0)) / of);
  }

  /** Whether what to do was right but for the finding and the sizes. */
  public boolean rightDecision() {
    Conclusion right = drill.right();
    if (right.status() == Status.FIX_FIRST || fixFirst) {
      return right.status() == Status.FIX_FIRST && fixFirst;
    }
    if (said.isEmpty() || !moved().keySet().equals(right.moves().keySet())) {
      return false;
    }
    if (firstJudged().filter(judged -> judged != First.RIGHT).isPresent()) {
      return false;
    }
    return right.moves().entrySet().stream()
        .allMatch(move -> moved().get(move.getKey()).direction() == move.getValue().direction());
  }

  /** Whether the finding that was named is one that the rules name. */
  public boolean rightFinding() {
    return found.map(drill.accepted().findings()::contains).orElse(false);
  }

  /** Whether the note that was named holds here, or there was none to name. */
  public boolean rightReason() {
    Set<String> reasons = drill.accepted().reasons();
    return reasons.isEmpty() || because.map(reasons::contains).orElse(false);
  }

  /** Reason, in points of 100. */
  public int reason() {
    return rightReason() && !given.contains(Rung.ANSWER) ? 100 : 0;
  }

  /** Safety. */
  public Safety safety() {
    Conclusion right = drill.right();
    if (right.status() == Status.FIX_FIRST) {
      return fixFirst ? Safety.SAFE : Safety.MISSED;
    }
    if (!forbidden().isEmpty()) {
      return Safety.FORBIDDEN;
    }
    return drill.looked() ? Safety.SAFE : Safety.LUCKY;
  }

  /** The limits that the trainee's moves break. */
  public List<Conclusion.Barring> forbidden() {
    List<Conclusion.Barring> forbidden = new ArrayList<>();
    for (Conclusion.Barring bar : drill.right().barred()) {
      Step step = fixFirst ? null : moved().get(bar.lever());
      if (step != null && step.direction() == bar.direction()) {
        forbidden.add(bar);
      }
    }
    return forbidden;
  }

  private static int points(double part) {
    return (int) Math.round(100 * part);
  }
}
