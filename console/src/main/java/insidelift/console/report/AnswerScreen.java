package insidelift.console.report;

import insidelift.shared.CheckKind;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Changeover;
import insidelift.shared.advice.Advice.Changeover.Job;
import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Open;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a person must read to act, on one screen: what comes first, the change, which way to turn,
 * the minutes, the one caution, what to feel, when to take it back. Each text is cut to its first
 * sentence; the whole of it stands in the {@linkplain AdviceText sections}.
 */
final class AnswerScreen {

  /** The most lines on a screen of 80 columns, its heading and the rule under it among them. */
  static final int LINES = 20;

  private static final int JOBS_NAMED = 2;

  /**
   * One matter.
   *
   * @param rank what is left out first where the screen is full: the highest; nothing of rank 0
   */
  private record Row(String label, String text, int rank) {}

  private final int width;
  private final Advice advice;
  private final Situation situation;
  private final List<Row> rows = new ArrayList<>();

  private AnswerScreen(int width, Advice advice, Situation situation) {
    this.width = width;
    this.advice = advice;
    this.situation = situation;
  }

  /**
   * The lines under the heading.
   *
   * @param situation what it is given on: it has the minutes that are left
   */
  static List<String> lines(int width, Advice advice, Situation situation) {
    AnswerScreen answer = new AnswerScreen(width, advice, situation);
    answer.rows();
    return answer.fitted();
  }

  /** Everything, or what matters most where that is more than a screen of the usual width. */
  private List<String> fitted() {
    List<Row> shown = new ArrayList<>(rows);
    while (laid(shown, Text.WIDTH).size() > LINES - 2) {
      Row last = shown.stream().max(Comparator.comparingInt(Row::rank)).orElseThrow();
      if (last.rank() == 0) {
        break;
      }
      shown.remove(last);
    }
    return laid(shown, width);
  }

  private static List<String> laid(List<Row> rows, int width) {
    Text text = new Text(width);
    String before = "";
    for (Row row : rows) {
      text.item("  %-6s ".formatted(row.label().equals(before) ? "" : row.label()), row.text());
      before = row.label();
    }
    return text.lines();
  }

  private void rows() {
    List<Check> first =
        advice.firstChecks().stream().filter(check -> check.kind() != CheckKind.LOOK).toList();
    boolean several = first.size() > 2;
    for (Check check : first) {
      add("first", several ? check.what() + "." : check.what() + ". " + check.action());
    }
    if (several) {
      add("", "How each is put right: steps.");
    }
    if (advice.status() == Status.NOT_ENOUGH) {
      add("", AdviceWords.NOTHING_KNOWN);
      advice.wouldHelp().stream().limit(1).forEach(open -> add("tell", open.ask()));
    }
    List<Suggestion> now = advice.suggestions().stream().filter(Suggestion::first).toList();
    if (!now.isEmpty()) {
      advice.wouldHelp().stream()
          .filter(Open::leads)
          .map(Open::ask)
          .reduce((one, other) -> one + " " + other)
          .ifPresent(ask -> add("tell", "Before anything is turned: " + ask));
    }
    advice.lead().ifPresent(lead -> add("first", AdviceWords.first(lead, !now.isEmpty())));
    Optional<String> sheet = AdviceWords.restore(advice);
    sheet.ifPresentOrElse(line -> add("do", line), () -> now.forEach(m -> add("do", m.summary())));
    if (!now.isEmpty()) {
      add("how", now.size() == 1 ? how(now.get(0)) : "How each one is turned: steps.");
      add("time", time(now, sheet.isPresent()));
    }
    now.stream().limit(1).forEach(this::proof);
    if (advice.changeover() != null) {
      add("then", jobs(advice.changeover()));
    }
    held(now.isEmpty());
    if (advice.baseline() != null) {
      add("keep", AdviceWords.keep(advice.baseline()));
    }
    quick(now.isEmpty());
    beforeDriving(now);
  }

  private String how(Suggestion move) {
    Optional<String> step = move.steps().stream().filter(AdviceWords::saysWhichWay).findFirst();
    boolean measured = situation.kart().eccentrics().measured(move.lever());
    return move.washers() == null && step.isPresent()
        ? AdviceWords.whichWay(move, sentence(step.get()), measured)
        : "Where each of your washers goes: steps.";
  }

  private String time(List<Suggestion> now, boolean told) {
    List<String> parts = new ArrayList<>();
    if (!told) {
      parts.add(
          "%d to %d minutes, with toe".formatted(advice.minutes().from(), advice.minutes().to()));
    }
    Double left = situation.numbers().get("time-left");
    if (left != null) {
      parts.add(Math.round(left) + (told ? " minutes left" : " left"));
    }
    String minutes = parts.isEmpty() ? "" : String.join("; ", parts) + ". ";
    boolean split = now.stream().anyMatch(move -> !move.disputes().isEmpty());
    return minutes + (split ? AdviceWords.SPLIT : "How sure: " + now.get(0).strength() + ".");
  }

  private void proof(Suggestion move) {
    move.cautions().stream().findFirst().ifPresent(text -> add("care", sentence(text)));
    move.confirm().stream().findFirst().ifPresent(text -> add("feel", sentence(text)));
    move.undo().stream().findFirst().ifPresent(text -> add("undo", sentence(text)));
  }

  private static String jobs(Changeover over) {
    List<Job> jobs = over.jobs();
    String named =
        jobs.stream()
            .limit(JOBS_NAMED)
            .map(job -> "%s (%d min)".formatted(job.what(), job.minutes()))
            .collect(Collectors.joining("; "));
    return jobs.size() <= JOBS_NAMED
        ? named + "."
        : "%s; and %d more, the quickest first: steps.".formatted(named, jobs.size() - JOBS_NAMED);
  }

  /** Where nothing is moved, why not is the answer; else it is what is good to know. */
  private void held(boolean hold) {
    List<Suggestion> stay =
        advice.suggestions().stream().filter(suggestion -> !suggestion.moves()).toList();
    List<String> reasons =
        stay.stream().map(Suggestion::summary).map(AnswerScreen::reason).distinct().toList();
    List<String> summaries =
        stay.size() == 2 && reasons.size() == 1
            ? List.of("Leave camber and caster where they are: " + reasons.get(0))
            : stay.stream().map(Suggestion::summary).toList();
    summaries.forEach(text -> rows.add(new Row(hold ? "why" : "stay", text, hold ? 0 : 1)));
  }

  /** Why a lever stays: what stands behind the last colon of its summary. */
  private static String reason(String summary) {
    return summary.substring(summary.lastIndexOf(": ") + 2);
  }

  /** The lever for whom there is no time, or no reason, to turn the eccentrics. */
  private void quick(boolean hold) {
    List<OtherLever> others =
        advice.alternatives().stream().filter(other -> !other.leads()).toList();
    if (hold) {
      others.stream()
          .limit(2)
          .forEach(other -> rows.add(new Row("try", AdviceWords.step(other), 2)));
    } else {
      // Quick is what takes half the time at most.
      int most = advice.minutes().from() / 2;
      others.stream()
          .filter(other -> other.minutes() <= most)
          .findFirst()
          .ifPresent(other -> rows.add(new Row("quick", "No time? " + AdviceWords.step(other), 2)));
    }
  }

  private void beforeDriving(List<Suggestion> now) {
    long looks =
        advice.firstChecks().stream()
            .filter(check -> check.kind() == CheckKind.LOOK && check.question() != null)
            .count();
    String ever = "Bolts, torque, first laps: see care.";
    if (looks > 0) {
      String open = "%d thing%s not looked at yet".formatted(looks, plural(looks));
      add("look", now.isEmpty() ? open + ": care." : open + ". " + ever);
    } else if (!now.isEmpty()) {
      add("look", ever);
    }
  }

  private static String plural(long count) {
    return count == 1 ? "" : "s";
  }

  private void add(String label, String text) {
    rows.add(new Row(label, text, 0));
  }

  /** The first sentence of a text: the notes say there what matters most. */
  static String sentence(String text) {
    return text.split("(?<=[.!?]) (?=[A-Z])", 2)[0];
  }
}
