package insidelift.engine.consultation.decision;

import insidelift.engine.sizing.Sizer;
import insidelift.engine.sizing.Sizes;
import insidelift.rules.fact.End;
import insidelift.rules.fact.Setting;
import insidelift.rules.fact.Told.AtEnd;
import insidelift.rules.fact.Told.HeavyAt;
import insidelift.rules.fact.Told.Minutes;
import insidelift.rules.fact.Trial;
import insidelift.rules.fact.Visit;
import insidelift.shared.Answer;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is known of a situation, as the facts that are weighed. */
public final class Facts {

  /**
   * How far from zero camber lies far out: a degree (as the trade's camps have it, provisional).
   */
  private static final int FAR = 100;

  /** The questions on the parts of the corner, and the parts. */
  private static final Map<String, String> PHASES =
      Map.of("turn-in", "entry", "mid-corner", "mid", "exit", "exit");

  private static final String TIME = "time-left";

  private final Situation situation;
  private final Vocabulary vocabulary;
  private final Sizer sizer;
  private final List<Object> facts = new ArrayList<>();

  private Facts(Situation situation, Vocabulary vocabulary) {
    this.situation = situation;
    this.vocabulary = vocabulary;
    this.sizer = new Sizer(situation.kart());
  }

  /** The facts of a situation. */
  public static List<Object> of(Situation situation, Vocabulary vocabulary) {
    Facts told = new Facts(situation, vocabulary);
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
    // Nearer to the end than two readings may differ there is no move left.
    int near = hundredths(Sizes.LEAST_MOVE) - 1;
    facts.add(
        new End(
            "camber",
            hundredths(Sizes.CAMBER_LEAST) + near,
            hundredths(Sizes.CAMBER_MOST) - near,
            hundredths(sizer.step(Lever.CAMBER))));
    int far = 100 * Sizes.CASTER_POSITIONS - 49;
    facts.add(new End("caster", -far, far, 100));
    minutes().ifPresent(left -> facts.add(new Minutes(left)));
    situation.kart().past().levers().forEach(this::end);
  }

  private void end(String lever, String stands) {
    LeverWord word = vocabulary.lever(lever).orElseThrow();
    if (!stands.equals(word.least())) {
      facts.add(new AtEnd(lever, "more"));
    }
    if (!stands.equals(word.most())) {
      facts.add(new AtEnd(lever, "less"));
    }
  }

  private static String place(int camber) {
    if (Math.abs(camber) < 10) {
      return "zero";
    }
    return (Math.abs(camber) >= FAR ? "far-" : "") + (camber > 0 ? "positive" : "negative");
  }

  /**
   * The minutes left: as told, or the fewest that the word stands for; the word for the most is no
   * limit.
   */
  private Optional<Integer> minutes() {
    Double told = situation.numbers().get(TIME);
    if (told != null) {
      return Optional.of(told.intValue());
    }
    double least = 0;
    for (Vocabulary.Band band : vocabulary.question(TIME).orElseThrow().number().bands()) {
      if (situation.answer(TIME).filter(band.value()::equals).isPresent()) {
        return band.below() == null ? Optional.empty() : Optional.of((int) least);
      }
      least = band.below() == null ? least : band.below();
    }
    return Optional.empty();
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
    // Whoever writes the run that is told of into the history as well means one run.
    boolean twice = !runs.isEmpty() && same(runs.get(runs.size() - 1), now(false));
    boolean undo = twice && runs.remove(runs.size() - 1).undo();
    boolean back = !runs.isEmpty() && now(false).takesBack(runs.get(runs.size() - 1));
    Driven present = now(undo || back);
    runs.add(present);
    trials(runs);
    visits(runs);
    if (runs.size() > 1 && good(runs.get(runs.size() - 2), present)) {
      facts.add(new Answer("good-before", "yes", false));
    }
    // Whoever has changed something for it has told it before.
    boolean changed =
        situation.answer("last-change").flatMap(Facts::change).isPresent()
            && situation.answer("last-effect").isPresent();
    if (changed
        || runs.subList(0, runs.size() - 1).stream().anyMatch(before -> alike(before, present))) {
      facts.add(new Answer("told-before", "yes", false));
    }
  }

  private static boolean same(Driven before, Driven now) {
    return before.answers().containsKey("last-effect")
        && before.camber().equals(now.camber())
        && before.caster().equals(now.caster())
        && before.answers().entrySet().stream()
            .allMatch(told -> told.getValue().equals(now.answers().get(told.getKey())));
  }

  /** Whether a run before was complained of in the same way in a part of the corner. */
  private static boolean alike(Driven before, Driven now) {
    return PHASES.keySet().stream()
        .anyMatch(
            phase ->
                before.answers().containsKey(phase)
                    && !before.answers().get(phase).equals("good")
                    && before.answers().get(phase).equals(now.answers().get(phase)));
  }

  private Driven now(boolean undo) {
    return new Driven(
        situation.kart().camber().map(Sides::middle),
        situation.kart().casterFromNeutral(),
        situation.answers(),
        undo);
  }

  /** One lever moved one way, from an answer to {@code last-change}. */
  private record Change(String lever, String direction) {}

  private static Optional<Change> change(String answer) {
    String lever = answer.replaceFirst("-(more|less)$", "");
    return lever.equals(answer)
        ? Optional.empty()
        : Optional.of(new Change(lever, answer.substring(lever.length() + 1)));
  }

  private void trials(List<Driven> runs) {
    int age = 0;
    for (int i = runs.size() - 1; i >= 0; i--) {
      Map<String, String> run = runs.get(i).answers();
      Optional<Change> change = Optional.ofNullable(run.get("last-change")).flatMap(Facts::change);
      String effect = run.get("last-effect");
      if (change.isEmpty() && !run.getOrDefault("last-change", "none").equals("none")) {
        // What was tried before both levers moved at once is not the last change any more.
        age++;
      } else if (change.isPresent() && effect != null) {
        // What was wanted stands in the report before; without one, what is wanted now has to do.
        Map<String, Integer> wanted = wanted(i > 0 ? runs.get(i - 1).answers() : run);
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

  private static Map<String, Integer> wanted(Map<String, String> answers) {
    Map<String, Integer> wanted = new HashMap<>();
    PHASES.forEach(
        (phase, on) -> {
          String said = answers.getOrDefault(phase, "");
          if (said.equals("understeer") || said.equals("oversteer")) {
            wanted.put(on, said.equals("understeer") ? 1 : -1);
          }
        });
    return wanted;
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
