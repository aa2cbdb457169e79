package insidelift.console.dialogue;

import insidelift.engine.consultation.session.Session;
import insidelift.engine.speech.Heard;
import insidelift.engine.speech.Heard.Proposal;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One thing that was understood of a sentence, to be confirmed.
 *
 * @param shown how it is read back
 * @param note what notes it
 */
record Understood(String shown, Consumer<Session> note) {

  /**
   * A caster further than this from zero, in degrees, is taken as absolute: no kart is set so far
   * from its neutral. Ours, provisional; it is read back before it counts.
   */
  private static final double RELATIVE = 5;

  /** Which number of a sentence is a number for which question. */
  private static final Map<String, String> NUMBERS =
      Map.of("time-left", "minutes", "power", "power-kw");

  /** All that is new, in the order in which it was said. */
  static List<Understood> all(Heard heard, Situation known, Vocabulary vocabulary) {
    List<Understood> told = new ArrayList<>();
    for (Proposal one : heard.proposed()) {
      Optional<String> before = known.answer(one.question());
      if (!before.equals(Optional.of(one.value()))) {
        told.add(answer(one, heard.numbers(), vocabulary, before));
      }
    }
    camber(heard.numbers()).ifPresent(told::add);
    Optional.ofNullable(heard.numbers().get("caster"))
        .map(values -> caster(values.get(0)))
        .ifPresent(told::add);
    return told;
  }

  private static Understood answer(
      Proposal one,
      Map<String, List<Double>> numbers,
      Vocabulary vocabulary,
      Optional<String> before) {
    Question question = vocabulary.question(one.question()).orElseThrow();
    String until =
        before.flatMap(question::value).map(value -> "; until now: " + value.words()).orElse("");
    String shown =
        "%s: %s (from \"%s\"%s)"
            .formatted(
                one.question(),
                question.value(one.value()).orElseThrow().words(),
                one.words(),
                until);
    List<Double> number = numbers.get(NUMBERS.getOrDefault(one.question(), ""));
    return new Understood(
        shown,
        number == null || !inside(question, number.get(0))
            ? session -> session.note(one.question(), one.value())
            : session -> session.note(question, number.get(0)));
  }

  private static boolean inside(Question question, double number) {
    return number >= question.number().min() && number <= question.number().max();
  }

  private static Optional<Understood> camber(Map<String, List<Double>> numbers) {
    List<Double> both = numbers.get("camber");
    List<Double> left = numbers.getOrDefault("camber-left", both);
    List<Double> right = numbers.getOrDefault("camber-right", both);
    if (left == null || right == null) {
      return Optional.empty();
    }
    Sides sides = new Sides(Degrees.of(left.get(0)), Degrees.of(right.get(0)));
    return Optional.of(
        new Understood(
            "camber now: left %s, right %s degrees"
                .formatted(sides.left().signed(), sides.right().signed()),
            session -> {
              Kart kart = session.situation().kart();
              session.note(kart.with(sides, kart.caster().orElse(null)));
            }));
  }

  private static Understood caster(double degrees) {
    Sides sides = Sides.both(Degrees.of(degrees));
    boolean absolute = Math.abs(degrees) > RELATIVE;
    return new Understood(
        "caster now, both sides: %s degrees %s"
            .formatted(sides.left().signed(), absolute ? "from upright" : "from your own neutral"),
        session -> {
          Kart kart = session.situation().kart();
          session.note(
              new Kart(
                  kart.camber(),
                  Optional.of(sides),
                  absolute,
                  kart.neutral(),
                  kart.eccentrics(),
                  kart.geometry(),
                  kart.past()));
        });
  }
}
