package insidelift.engine.weighing;

import insidelift.engine.sizing.Sizer;
import insidelift.engine.sizing.Sizes;
import insidelift.rules.weigh.End;
import insidelift.rules.weigh.HeavyAt;
import insidelift.rules.weigh.Minutes;
import insidelift.rules.weigh.Setting;
import insidelift.rules.weigh.Trial;
import insidelift.rules.weigh.Visit;
import insidelift.shared.Answer;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is known of a situation, as the facts that are weighed. */
public final class Facts {

  /**
   * How far from zero camber lies far out: a degree (as the trade's camps have it, provisional).
   */
  private static final int FAR = 100;

  private static final List<String> PHASES = List.of("turn-in", "mid-corner", "exit");

  private final Situation situation;
  private final Sizer sizer;
  private final List<Object> facts = new ArrayList<>();

  private Facts(Situation situation) {
    this.situation = situation;
    this.sizer = new Sizer(situation.kart());
  }

  /** The facts of a situation. */
  public static List<Object> of(Situation situation, Vocabulary vocabulary) {
    Facts told = new Facts(situation);
    told.facts.addAll(situation.facts(vocabulary));
    told.settings();
    told.runs();
    return told.facts;
  }

  private void settings() {
    setting("now", situation.kart().front());
    situation.kart().past().before().ifPresent(before -> setting("before", before));
    situation
        .kart()
        .past()
        .baseline()
        .forEach((condition, kept) -> setting(condition, kept.front()));
    camber(situation.kart().front())
        .ifPresent(value -> facts.add(new Answer("camber-now", place(value), false)));
    int step = hundredths(sizer.step(Lever.CAMBER));
    facts.add(
        new End(
            "camber",
            hundredths(Sizes.CAMBER_LEAST),
            hundredths(Sizes.CAMBER_MOST),
            step,
            // Where a rain setting starts (provisional), as the table of starting points has it.
            100));
    int far = 100 * Sizes.CASTER_POSITIONS;
    facts.add(new End("caster", -far, far, 100, 200));
    minutes().ifPresent(left -> facts.add(new Minutes(left)));
  }

  private static String place(int camber) {
    if (Math.abs(camber) < 10) {
      return "zero";
    }
    return (Math.abs(camber) >= FAR ? "far-" : "") + (camber > 0 ? "positive" : "negative");
  }

  /** The minutes left: as told, or the fewest that the words stand for. */
  private Optional<Integer> minutes() {
    Double told = situation.numbers().get("time-left");
    if (told != null) {
      return Optional.of(told.intValue());
    }
    return situation
        .answer("time-left")
        .map(word -> word.equals("short") ? 0 : word.equals("tight") ? 20 : 40);
  }

  private void setting(String of, FrontEnd front) {
    camber(front).ifPresent(value -> facts.add(new Setting(of, "camber", value)));
    front
        .casterFromNeutral()
        .ifPresent(degrees -> facts.add(new Setting(of, "caster", positions(degrees))));
  }

  private static Optional<Integer> camber(FrontEnd front) {
    return front.camber().map(Sides::middle).map(Facts::hundredths);
  }

  private int positions(Degrees caster) {
    return (int) Math.round(100 * caster.value() / sizer.step(Lever.CASTER).value());
  }

  private static int hundredths(Degrees degrees) {
    return (int) Math.round(100 * degrees.value());
  }

  private void runs() {
    List<Driven> runs = new ArrayList<>(situation.history());
    runs.add(
        new Driven(
            situation.kart().camber().map(Sides::middle),
            situation.kart().casterFromNeutral(),
            situation.answers(),
            backAgain()));
    trials(runs);
    visits(runs);
    if (runs.size() > 1 && good(runs.get(runs.size() - 2), runs.get(runs.size() - 1))) {
      facts.add(new Answer("good-before", "yes", false));
    }
  }

  /** Whether the last change took back the one before it: its lever, its way back, after worse. */
  private boolean backAgain() {
    List<Driven> history = situation.history();
    if (history.isEmpty()) {
      return false;
    }
    Map<String, String> last = history.get(history.size() - 1).answers();
    return "worse".equals(last.get("last-effect"))
        && situation
            .answer("last-change")
            .flatMap(change -> change(change).map(Change::back))
            .filter(back -> back.equals(last.get("last-change")))
            .isPresent();
  }

  /** One lever moved one way, from an answer to {@code last-change}. */
  private record Change(String lever, String direction) {
    String back() {
      return lever + (direction.equals("more") ? "-less" : "-more");
    }
  }

  private static Optional<Change> change(String answer) {
    int dash = answer.indexOf('-');
    return dash < 0
        ? Optional.empty()
        : Optional.of(new Change(answer.substring(0, dash), answer.substring(dash + 1)));
  }

  private void trials(List<Driven> runs) {
    int age = 0;
    for (int i = runs.size() - 1; i >= 0; i--) {
      Map<String, String> run = runs.get(i).answers();
      Optional<Change> change = Optional.ofNullable(run.get("last-change")).flatMap(Facts::change);
      String effect = run.get("last-effect");
      if (change.isPresent() && effect != null) {
        // What was wanted stands in the report before; without one, what is wanted now has to do.
        int wanted = wanted(i > 0 ? runs.get(i - 1).answers() : run);
        facts.add(
            new Trial(
                age++,
                i == runs.size() - 1,
                change.get().lever(),
                change.get().direction(),
                effect,
                wanted,
                condition(run),
                runs.get(i).undo()));
      }
    }
  }

  private static int wanted(Map<String, String> answers) {
    int wanted = 0;
    for (String phase : PHASES) {
      String said = answers.getOrDefault(phase, "");
      wanted += said.equals("understeer") ? 1 : said.equals("oversteer") ? -1 : 0;
    }
    return Integer.signum(wanted);
  }

  private static String condition(Map<String, String> run) {
    return run.getOrDefault("water", "dry").equals("dry") ? "dry" : "wet";
  }

  private void visits(List<Driven> runs) {
    Visit last = null;
    for (Driven run : runs) {
      if ("heavy".equals(run.answers().get("steering-weight")) && run.caster().isPresent()) {
        facts.add(new HeavyAt(positions(run.caster().get())));
      }
      if (run.camber().isPresent() && run.caster().isPresent()) {
        Visit visit =
            new Visit(
                hundredths(run.camber().get()),
                positions(run.caster().get()),
                condition(run.answers()));
        if (!visit.equals(last)) {
          facts.add(visit);
        }
        last = visit;
      }
    }
  }

  /** Whether the run before was good where the kart stands now, on the same water. */
  private static boolean good(Driven before, Driven now) {
    return "good".equals(before.answers().get("turn-in"))
        && "good".equals(before.answers().get("mid-corner"))
        && before.camber().isPresent()
        && before.camber().equals(now.camber())
        && before.caster().equals(now.caster())
        && condition(before.answers()).equals(condition(now.answers()));
  }
}
