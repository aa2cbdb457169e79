package insidelift.engine.consultation.advice;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.fact.Beside;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken.Check;
import insidelift.rules.fact.Spoken.Kit;
import insidelift.rules.fact.Spoken.Option;
import insidelift.rules.fact.Spoken.Other;
import insidelift.shared.Direction;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.advice.Advice.Changeover;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Baseline.Toe;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Sides;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/** The levers beside camber and caster, put into words: what leads first, then what gains most. */
final class OtherLevers {

  /** A longer list helps nobody. */
  private static final int NAMED = 5;

  /** The choices under which a kart is changed over. */
  private static final Set<String> CHANGING = Set.of("restore", "move", "wait", "again");

  private final Decided decided;
  private final Vocabulary vocabulary;
  private final NoteBook notes;

  OtherLevers(Decided decided, Vocabulary vocabulary, NoteBook notes) {
    this.decided = decided;
    this.vocabulary = vocabulary;
    this.notes = notes;
  }

  /** The levers worth naming: the driver and a fault's own, then what gains enough. */
  List<OtherLever> named() {
    boolean fault = decided.status() == Status.FIX_FIRST;
    // With a fault on the kart, the only other levers worth naming are the fault's own.
    Set<String> faults =
        decided
            .reasoned()
            .all(Check.class)
            .map(check -> check.by().note())
            .collect(Collectors.toSet());
    Map<String, OtherLever> named = new LinkedHashMap<>();
    decided.reasoned().spoken(Other.class).stream()
        .filter(other -> !fault || faults.contains(other.by().note()))
        .map(other -> lever(other.lever(), other.direction(), false))
        .sorted(Comparator.comparing(OtherLever::minutes).thenComparing(OtherLever::lever))
        .forEach(other -> named.putIfAbsent(other.lever(), other));
    for (Beside one : fault ? List.<Beside>of() : decided.beside()) {
      if (named.size() < NAMED) {
        named.computeIfAbsent(
            one.lever(), lever -> lever(lever, one.direction(), decided.leads(one)));
      }
    }
    return List.copyOf(named.values());
  }

  /** What else is changed over with the track; empty where the kart is left as it is. */
  Optional<Changeover> changeover() {
    List<Kit> kit = decided.reasoned().spoken(Kit.class);
    if (kit.isEmpty() || !CHANGING.contains(decided.reasoned().choice().kind())) {
      return Optional.empty();
    }
    String condition = kit.get(0).condition();
    Note note = notes.note(kit.get(0).by().note());
    Baseline own =
        decided.situation().kart().past().baseline().getOrDefault(condition, Baseline.UNKNOWN);
    List<Changeover.Job> jobs = new ArrayList<>();
    int total = 0;
    for (String lever :
        kit.stream()
            .map(Kit::lever)
            .filter(this::movable)
            .sorted(
                Comparator.comparing((String lever) -> minutes(lever, "more"))
                    .thenComparing(lever -> lever))
            .toList()) {
      LeverWord word = vocabulary.lever(lever).orElseThrow();
      int minutes = minutes(lever, "more");
      total += minutes;
      jobs.add(
          new Changeover.Job(
              lever,
              recorded(lever, own)
                  .map(words -> capitalized(lever) + ": " + words + ", as on its own sheet")
                  .orElse(condition.equals("wet") ? word.wet() : word.dry()),
              minutes,
              total,
              word.who()));
    }
    return Optional.of(
        new Changeover(
            condition, sheet(own), jobs, note.section("Steps"), note.section("Caution")));
  }

  /** How a lever stands by the kart's own record, in words. */
  private static Optional<String> recorded(String lever, Baseline own) {
    return switch (lever) {
      case "toe" -> own.toe().map(Toe::words);
      case "pressures" ->
          Optional.ofNullable(own.levers().get(lever))
              .or(() -> Optional.ofNullable(own.noted().get("cold")).map(cold -> cold + " cold"));
      default -> Optional.ofNullable(own.levers().get(lever));
    };
  }

  private static String capitalized(String lever) {
    return Character.toUpperCase(lever.charAt(0)) + lever.substring(1).replace('-', ' ');
  }

  /** The front end of the kart's own record, in one line; null where it has none. */
  private static String sheet(Baseline own) {
    List<String> front = new ArrayList<>();
    own.front().camber().ifPresent(camber -> front.add("camber " + sides(camber)));
    own.front()
        .caster()
        .ifPresent(
            caster ->
                front.add(
                    "caster "
                        + sides(caster)
                        + (own.front().absolute() ? " absolute" : " from neutral")));
    own.toe().ifPresent(toe -> front.add("toe " + toe.words()));
    return front.isEmpty() ? null : String.join(", ", front);
  }

  private static String sides(Sides sides) {
    return sides.left().equals(sides.right())
        ? sides.left().signed()
        : sides.left().signed() + " left, " + sides.right().signed() + " right";
  }

  /** Whether a lever can be moved on this kart, or stands at an end at most. */
  private boolean movable(String lever) {
    return !KartRecord.FIXED.equals(decided.situation().kart().past().levers().get(lever));
  }

  private OtherLever lever(String id, String direction, boolean leads) {
    LeverWord word = vocabulary.lever(id).orElseThrow();
    Direction way = Named.of(Direction.class, direction);
    Note note = notes.note(word.note());
    return new OtherLever(
        id,
        way,
        word.step(way),
        minutes(id, direction),
        word.who(),
        leads,
        decided.reasoned().parts(id, direction).stream().anyMatch(Part::disputed),
        findings(id, direction, points -> points > 0),
        findings(id, direction, points -> points < 0),
        note.text("Do"),
        note.text("Claim"),
        note.section("Caution"));
  }

  private int minutes(String lever, String direction) {
    return decided
        .reasoned()
        .all(Option.class)
        .filter(one -> one.lever().equals(lever) && one.direction().equals(direction))
        .mapToInt(Option::minutes)
        .findFirst()
        .orElse(0);
  }

  /** The findings on which the parts of a sum come to something wanted, the most first. */
  private List<String> findings(String lever, String direction, IntPredicate wanted) {
    Map<String, Integer> points = new TreeMap<>();
    decided
        .reasoned()
        .parts(lever, direction)
        .forEach(part -> points.merge(part.finding(), part.points(), Integer::sum));
    return points.entrySet().stream()
        .filter(one -> wanted.test(one.getValue()))
        .sorted(Comparator.comparing(one -> -Math.abs(one.getValue())))
        .flatMap(one -> vocabulary.finding(one.getKey()).stream())
        .map(FindingWord::words)
        .toList();
  }
}
