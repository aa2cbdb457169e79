package insidelift.engine.weighing;

import insidelift.engine.weighing.Crew.Decision;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * One kart and one crew over a day: run, report, change, run again. The first stretch of the day is
 * dry or wet; on some days the other follows.
 */
final class Season {

  /** Runs in a stretch of one kind of track. */
  static final int ROUNDS = 12;

  /** What came of a stretch. */
  static final class Outcome {
    boolean curable;
    boolean goodAtEnd;
    int roundsToGood = ROUNDS + 1;
    int thirdVisits;
    int moves;
    int betterReversed;
    int inexactUndos;
    final List<String> broken = new ArrayList<>();
  }

  private final World world;
  private final Crew crew;
  private final Random chance;
  private final double wrong;
  private Stand stand;
  private final Map<String, Stand> baseline = new HashMap<>();
  private final List<Report.Past> history = new ArrayList<>();
  private String madeFor;

  Season(World world, Crew crew, Random chance, double wrong) {
    this.world = world;
    this.crew = crew;
    this.chance = chance;
    this.wrong = wrong;
    this.stand = world.start();
    this.madeFor = "dry";
  }

  /** One stretch of the day. */
  Outcome stretch(boolean water, boolean hurried) {
    Outcome outcome = new Outcome();
    outcome.curable = world.curable(water);
    Map<Stand, Integer> visits = new HashMap<>();
    visits.put(stand, 1);
    Stand before = null;
    String changed = "none";
    boolean undone = false;
    for (int round = 1; round <= ROUNDS; round++) {
      if (world.good(stand, water)) {
        outcome.roundsToGood = Math.min(outcome.roundsToGood, round - 1);
      }
      Map<String, String> answers = told(water, before, changed);
      int minutes = hurried && chance.nextInt(4) == 0 ? 10 : 60;
      Report report =
          new Report(answers, stand, before, Map.copyOf(baseline), List.copyOf(history), minutes);
      Decision decision = crew.next(report);
      history.add(new Report.Past(answers, stand, undone));
      judge(outcome, report, decision, changed);
      if (decision.kind().equals("keep")) {
        baseline.put(water ? "wet" : "dry", stand);
        madeFor = water ? "wet" : "dry";
      }
      if (decision.to().equals(stand)) {
        changed = "none";
        before = null;
        undone = false;
      } else {
        changed = change(stand, decision.to());
        before = stand;
        undone = decision.kind().equals("undo");
        stand = decision.to();
        madeFor = decision.kind().equals("restore") ? (water ? "wet" : "dry") : madeFor;
        // A return by an undo is counted apart: it is no choice of where to go.
        int seen = undone ? 0 : visits.merge(stand, 1, Integer::sum);
        if (decision.kind().equals("move")) {
          outcome.moves++;
          outcome.thirdVisits += seen > 2 ? 1 : 0;
        }
      }
    }
    outcome.goodAtEnd = world.good(stand, water);
    return outcome;
  }

  /** What must hold in every round, whatever was told. */
  private void judge(Outcome outcome, Report report, Decision decision, String changed) {
    Stand to = decision.to();
    Map<String, String> answers = report.answers();
    String effect = answers.get("last-effect");
    boolean undo = decision.kind().equals("undo");
    if (report.before() != null && effect != null) {
      outcome.inexactUndos += undo && !to.equals(report.before()) ? 1 : 0;
      boolean back = to.equals(report.before()) && changed.startsWith("ca");
      // The hands come before a good corner: too heavy a steering may be made lighter again.
      boolean hands = answers.get("steering-weight").equals("heavy");
      outcome.betterReversed += effect.equals("better") && back && !hands ? 1 : 0;
    }
    int camber = Math.abs(to.camber() - stand.camber());
    int caster = Math.abs(to.caster() - stand.caster());
    require(outcome, to.reachable(), "a lever left its range");
    require(
        outcome,
        report.minutes() >= 20 || to.equals(stand),
        "a job was begun that does not fit into the time");
    require(
        outcome,
        answers.get("steering-weight").equals("fine") || to.caster() <= stand.caster(),
        "too heavy a steering got more caster");
    require(
        outcome,
        !decision.kind().equals("move") || camber + caster == 1,
        "a move was more than one position of one lever");
    require(
        outcome,
        !decision.kind().equals("keep") || to.equals(stand),
        "a kart that is kept was moved");
    boolean slides = answers.get("turn-in").equals("oversteer");
    require(
        outcome,
        !decision.kind().equals("restore") || !slides || to.caster() <= stand.caster(),
        "a rear that slides got more bite at the front");
  }

  private static void require(Outcome outcome, boolean holds, String otherwise) {
    if (!holds) {
      outcome.broken.add(otherwise);
    }
  }

  private static String change(Stand from, Stand to) {
    if (from.camber() != to.camber() && from.caster() != to.caster()) {
      return "other";
    }
    return from.camber() != to.camber()
        ? (to.camber() > from.camber() ? "camber-more" : "camber-less")
        : (to.caster() > from.caster() ? "caster-more" : "caster-less");
  }

  private Map<String, String> told(boolean water, Stand before, String changed) {
    Map<String, String> answers = new LinkedHashMap<>();
    boolean lies = chance.nextDouble() < wrong;
    answers.put("water", water ? "wet" : "dry");
    answers.put("setup-for", madeFor);
    // A crew that was asked has looked: nothing else is wrong with this kart.
    answers.put("brake", "free");
    answers.put("axle", "straight");
    answers.put("pressures", "set");
    answers.put("tyre-life", "used");
    answers.put("power", world.power());
    answers.put("driver-strength", world.strength());
    answers.put("steering-weight", world.heavy(stand) ? "heavy" : "fine");
    double[] balance = world.balance(stand, water);
    String[] phases = {"turn-in", "mid-corner", "exit"};
    int lie = lies ? chance.nextInt(2) : -1;
    double most = 0;
    for (int i = 0; i < phases.length; i++) {
      String said =
          balance[i] < -world.tolerance()
              ? "understeer"
              : balance[i] > world.tolerance() ? "oversteer" : "good";
      most = Math.max(most, Math.abs(balance[i]));
      answers.put(phases[i], i == lie ? other(said, "understeer", "good", "oversteer") : said);
    }
    if (most > world.tolerance()) {
      answers.put(
          "severity",
          most < world.tolerance() + 1
              ? "slight"
              : most < world.tolerance() + 5 ? "clear" : "severe");
    }
    answers.put("last-change", changed);
    if (before != null) {
      double gained = world.off(before, water) - world.off(stand, water);
      String effect = gained > 0.5 ? "better" : gained < -0.5 ? "worse" : "same";
      answers.put("last-effect", lies ? other(effect, "better", "same", "worse") : effect);
    }
    return answers;
  }

  private String other(String said, String... words) {
    String instead = said;
    while (instead.equals(said)) {
      instead = words[chance.nextInt(words.length)];
    }
    return instead;
  }
}
