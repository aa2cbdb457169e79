package insidelift.engine.weighing;

import insidelift.rules.weigh.End;
import insidelift.rules.weigh.Minutes;
import insidelift.rules.weigh.Now;
import insidelift.rules.weigh.Setting;
import insidelift.rules.weigh.Trial;
import insidelift.rules.weigh.Visit;
import insidelift.rules.weigh.Weighed;
import insidelift.rules.weigh.Weighing;
import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The crew that does what the rules say. */
final class ByRules implements Crew {

  private final Weighing weighing;
  private final Vocabulary vocabulary = Vocabulary.load();

  ByRules(Weighing weighing) {
    this.weighing = weighing;
  }

  @Override
  public Decision next(Report report) {
    Weighed weighed = weighing.weigh(facts(report));
    Stand to = report.stand();
    for (Now now : weighed.now()) {
      int size = now.lever().equals("camber") ? 50 : 100;
      int by =
          now.to() == null
              ? (now.direction().equals("more") ? 1 : -1)
              : (now.to() - now.from()) / size;
      to = to.moved(now.lever(), by);
    }
    return new Decision(weighed.choice().kind(), to);
  }

  List<Object> facts(Report report) {
    List<Object> facts = new ArrayList<>();
    report
        .answers()
        .forEach(
            (question, value) ->
                facts.add(
                    vocabulary.question(question).isPresent()
                        ? vocabulary.answer(question, value)
                        : new Answer(question, value, false)));
    int camber = report.stand().camber();
    facts.add(
        new Answer(
            "camber-now",
            camber <= -2
                ? "far-negative"
                : camber < 0
                    ? "negative"
                    : camber == 0 ? "zero" : camber < 2 ? "positive" : "far-positive",
            false));
    set(facts, "now", report.stand());
    if (report.before() != null) {
      set(facts, "before", report.before());
    }
    report.baseline().forEach((condition, stand) -> set(facts, condition, stand));
    facts.add(new End("camber", -100, 200, 50, 100));
    facts.add(new End("caster", -300, 300, 100, 200));
    facts.add(new Minutes(report.minutes()));
    List<Report.Past> runs = new ArrayList<>(report.history());
    runs.add(new Report.Past(report.answers(), report.stand(), undo(report)));
    Stand last0 = null;
    for (Report.Past run : runs) {
      if (run.stand().equals(last0)) {
        continue;
      }
      last0 = run.stand();
      facts.add(
          new Visit(
              run.stand().camber() * 50,
              run.stand().caster() * 100,
              run.answers().get("water").equals("dry") ? "dry" : "wet"));
    }
    int age = 0;
    for (int i = runs.size() - 1; i > 0; i--) {
      String changed = runs.get(i).answers().getOrDefault("last-change", "none");
      String effect = runs.get(i).answers().get("last-effect");
      if (changed.startsWith("ca") && effect != null) {
        String[] change = changed.split("-", 2);
        facts.add(
            new Trial(
                age++,
                i == runs.size() - 1,
                change[0],
                change[1],
                effect,
                wanted(runs.get(i - 1).answers()),
                runs.get(i).answers().get("water").equals("dry") ? "dry" : "wet",
                runs.get(i).undo()));
      }
    }
    if (!report.history().isEmpty()) {
      Report.Past last = report.history().get(report.history().size() - 1);
      boolean good =
          "good".equals(last.answers().get("turn-in"))
              && "good".equals(last.answers().get("mid-corner"))
              && last.stand().equals(report.stand())
              && last.answers().get("water").equals(report.answers().get("water"));
      if (good) {
        facts.add(new Answer("good-before", "yes", false));
      }
    }
    return facts;
  }

  private static boolean undo(Report report) {
    return "yes".equals(report.answers().get("undone"));
  }

  static int wanted(Map<String, String> answers) {
    int wanted = 0;
    for (String phase : List.of("turn-in", "mid-corner", "exit")) {
      String said = answers.getOrDefault(phase, "good");
      wanted += said.equals("understeer") ? 1 : said.equals("oversteer") ? -1 : 0;
    }
    return Integer.signum(wanted);
  }

  private static void set(List<Object> facts, String of, Stand stand) {
    facts.add(new Setting(of, "camber", stand.camber() * 50));
    facts.add(new Setting(of, "caster", stand.caster() * 100));
  }
}
