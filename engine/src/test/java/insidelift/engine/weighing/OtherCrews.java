package insidelift.engine.weighing;

import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Crews to be better than. */
final class OtherCrews {

  private OtherCrews() {}

  private static boolean good(Report report) {
    return "good".equals(report.answers().get("turn-in"))
        && "good".equals(report.answers().get("mid-corner"))
        && "good".equals(report.answers().get("exit"))
        && "fine".equals(report.answers().get("steering-weight"));
  }

  private static Crew.Decision stay(Report report) {
    return new Crew.Decision("wait", report.stand());
  }

  private static Crew.Decision moved(Report report, String lever, int way) {
    Stand to = report.stand().moved(lever, way);
    return to.reachable() ? new Crew.Decision("move", to) : stay(report);
  }

  /** A program that stands still. */
  static Crew still() {
    return OtherCrews::stay;
  }

  /** Any lever, any way, until it is good. */
  static Crew random(Random chance) {
    return report ->
        good(report) || report.minutes() < 20
            ? stay(report)
            : moved(
                report, chance.nextBoolean() ? "camber" : "caster", chance.nextBoolean() ? 1 : -1);
  }

  /**
   * One factor at a time from a table as handbooks print it: the rain start when it rains; then
   * caster for turn-in, camber for mid-corner; what made it worse goes back and is not tried again.
   */
  static Crew handbook() {
    Set<String> dead = new HashSet<>();
    return report -> {
      Map<String, String> answers = report.answers();
      String condition = report.water() ? "wet" : "dry";
      if (good(report) || report.minutes() < 20) {
        return stay(report);
      }
      if (!answers.get("setup-for").equals(condition)) {
        dead.clear();
        return new Crew.Decision("restore", report.water() ? new Stand(2, 2) : new Stand(0, 0));
      }
      if ("worse".equals(answers.get("last-effect")) && report.before() != null) {
        dead.add(answers.get("last-change"));
        return new Crew.Decision("undo", report.before());
      }
      boolean entry = !"good".equals(answers.get("turn-in"));
      String[] levers =
          entry ? new String[] {"caster", "camber"} : new String[] {"camber", "caster"};
      String said = answers.get(entry ? "turn-in" : "mid-corner");
      int way = "heavy".equals(answers.get("steering-weight")) || said.equals("oversteer") ? -1 : 1;
      for (String lever : levers) {
        if (!dead.contains(lever + (way > 0 ? "-more" : "-less"))) {
          return moved(report, lever, way);
        }
      }
      return stay(report);
    };
  }
}
