package insidelift.rules;

import insidelift.rules.fact.Barred;
import insidelift.rules.fact.End;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Setting;
import insidelift.rules.fact.Step;
import insidelift.rules.fact.Sum;
import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import java.util.ArrayList;
import java.util.List;

/** What is told in a test, as facts: a word a fact, as in {@code "turn-in understeer"}. */
final class Told {

  private static final Vocabulary WORDS = Vocabulary.load();
  private static final RuleBase WEIGHING = RuleBase.load();

  private final List<Object> facts = new ArrayList<>();

  private Told() {
    facts.add(new End("camber", -100, 200, 50));
    facts.add(new End("caster", -300, 300, 100));
  }

  /** Answers, each a question and its value with a space between. */
  static Told told(String... answers) {
    Told told = new Told();
    for (String answer : answers) {
      String[] words = answer.split(" ", 2);
      told.facts.add(
          WORDS.question(words[0]).isPresent()
              ? WORDS.answer(words[0], words[1])
              : new Answer(words[0], words[1], false));
    }
    return told;
  }

  Told and(Object... more) {
    facts.addAll(List.of(more));
    return this;
  }

  /**
   * The kart stands there: camber in hundredths of a degree, caster in hundredths of a position.
   */
  Told at(int camber, int caster) {
    return setting("now", camber, caster);
  }

  Told setting(String of, int camber, int caster) {
    return and(new Setting(of, "camber", camber), new Setting(of, "caster", caster));
  }

  Reasoned weighed() {
    return WEIGHING.reason(facts);
  }

  /** What is done: the kind, and each lever with its way and place. */
  String done() {
    Reasoned weighed = weighed();
    StringBuilder done = new StringBuilder(weighed.choice().kind());
    for (Step now : weighed.now()) {
      done.append(' ').append(now.lever()).append(' ').append(now.direction());
      if (now.to() != null) {
        done.append(" to ").append(now.to());
      }
    }
    return done.toString();
  }

  int gain(String lever, String direction) {
    return weighed()
        .all(Sum.class)
        .filter(sum -> sum.lever().equals(lever) && sum.direction().equals(direction))
        .findFirst()
        .orElseThrow()
        .gain();
  }

  /** Whether a limit of that rule stands. */
  boolean barred(String rule, String lever, String direction, String scope) {
    return weighed()
        .all(Barred.class)
        .anyMatch(
            bar ->
                bar.by().rule().equals(rule)
                    && bar.lever().equals(lever)
                    && bar.direction().equals(direction)
                    && bar.scope().equals(scope));
  }

  int found(String finding) {
    return weighed()
        .all(Found.class)
        .filter(found -> found.finding().equals(finding))
        .mapToInt(Found::weight)
        .sum();
  }
}
