package insidelift.engine.weighing;

import insidelift.engine.consultation.decision.Facts;
import insidelift.rules.Reasoned;
import insidelift.rules.RuleBase;
import insidelift.rules.fact.Step;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Baseline.Measured;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The crew that does what the rules say. */
final class ByRules implements Crew {

  private static final Vocabulary WORDS = Vocabulary.load();

  private final RuleBase weighing;

  ByRules(RuleBase weighing) {
    this.weighing = weighing;
  }

  @Override
  public Decision next(Report report) {
    Reasoned weighed = weighing.reason(Facts.of(situation(report), WORDS));
    Stand to = report.stand();
    for (Step now : weighed.now()) {
      int size = now.lever().equals("camber") ? 50 : 100;
      int one = now.direction().equals("more") ? 1 : -1;
      to = to.moved(now.lever(), now.to() == null ? one : (now.to() - now.from()) / size);
    }
    return new Decision(weighed.choice().kind(), to);
  }

  private static Situation situation(Report report) {
    Map<String, Baseline> baseline = new HashMap<>();
    report
        .baseline()
        .forEach(
            (condition, stand) ->
                baseline.put(
                    condition,
                    new Baseline(
                        new Measured(front(stand), Optional.empty()),
                        Measured.UNKNOWN,
                        Map.of(),
                        Map.of())));
    FrontEnd now = front(report.stand());
    Kart kart =
        new Kart(
            now.camber(),
            now.caster(),
            false,
            Optional.empty(),
            Eccentrics.UNKNOWN,
            Optional.empty(),
            new KartRecord(
                Optional.ofNullable(report.before()).map(ByRules::front), baseline, Map.of()));
    List<Driven> history =
        report.history().stream()
            .map(
                past ->
                    new Driven(
                        Optional.of(camber(past.stand())),
                        Optional.of(caster(past.stand())),
                        past.answers(),
                        past.undo()))
            .toList();
    return new Situation(
        report.answers(),
        Map.of("time-left", (double) report.minutes()),
        kart,
        Set.of(),
        Driven.newest(history));
  }

  private static FrontEnd front(Stand stand) {
    return new FrontEnd(
        Optional.of(Sides.both(camber(stand))),
        Optional.of(Sides.both(caster(stand))),
        false,
        Optional.empty());
  }

  private static Degrees camber(Stand stand) {
    return Degrees.of(0.5 * stand.camber());
  }

  private static Degrees caster(Stand stand) {
    return Degrees.of(stand.caster());
  }
}
