package insidelift.engine.consultation;

import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Random situations that contradict themselves nowhere, the same ones for the same seed. */
final class Situations {

  private final Vocabulary vocabulary;
  private final Random random;

  Situations(Vocabulary vocabulary, long seed) {
    this.vocabulary = vocabulary;
    this.random = new Random(seed);
  }

  List<Situation> some(int count) {
    List<Situation> some = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      some.add(next());
    }
    return some;
  }

  private Situation next() {
    double told = 0.02 + 0.88 * random.nextDouble();
    Map<String, String> answers = new LinkedHashMap<>();
    for (Question question : vocabulary.questions()) {
      if (random.nextDouble() < told) {
        answers.put(question.id(), value(question).id());
      }
    }
    if ("gears".equals(answers.get("gearbox"))) {
      answers.put("power", "high");
    }
    Kart kart = kart();
    if (kart.camber().isPresent() || kart.caster().isPresent()) {
      answers.remove("readings");
    }
    return Situation.of(answers).with(kart);
  }

  /** A fault is rare, or every situation would end in repairs. */
  private Value value(Question question) {
    List<Value> sound = question.values().stream().filter(value -> !value.fault()).toList();
    List<Value> from = random.nextInt(100) < 2 ? question.values() : sound;
    return from.get(random.nextInt(from.size()));
  }

  private Kart kart() {
    boolean absolute = random.nextInt(4) == 0;
    double neutral = 12;
    double caster = random.nextInt(9) - 4 + (absolute ? neutral : 0);
    return new Kart(
        maybe(sides((random.nextInt(19) - 6) * 0.25)),
        maybe(sides(caster)),
        absolute,
        absolute ? maybe(Degrees.of(neutral)) : Optional.empty(),
        random.nextInt(3) == 0
            ? new Eccentrics(Degrees.of(0.3), Degrees.of(0.8))
            : Eccentrics.UNKNOWN,
        Optional.empty());
  }

  private Sides sides(double middle) {
    double apart = random.nextInt(20) == 0 ? 0.5 : 0.1 * random.nextInt(3);
    return new Sides(Degrees.of(middle), Degrees.of(middle + apart));
  }

  private <T> Optional<T> maybe(T value) {
    return random.nextInt(3) > 0 ? Optional.of(value) : Optional.empty();
  }
}
