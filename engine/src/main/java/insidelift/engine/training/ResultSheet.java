package insidelift.engine.training;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.NextQuestion;
import insidelift.engine.logbook.AttemptEntry;
import insidelift.engine.logbook.Numbered;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/** What a trainee's attempts came to, for the coach: judged anew by the rules of this build. */
public final class ResultSheet {

  /** Attempts on a sheet, the latest: judging one takes up to a second. */
  private static final int MOST = 30;

  /** One answer given in so much of the cases is a habit, where the rules give it half as often. */
  private static final double HABIT = 0.5;

  /** Cases before a habit can be told. */
  private static final int ENOUGH = 5;

  private record Row(Numbered<AttemptEntry> attempt, Judgement judged) {}

  private final Advisor advisor;
  private final List<Row> rows = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();

  /**
   * The sheet of one trainee's attempts. An attempt that this build cannot replay is left out, and
   * the sheet says so.
   */
  public ResultSheet(Advisor advisor, NextQuestion next, List<Numbered<AttemptEntry>> attempts) {
    this.advisor = advisor;
    List<Numbered<AttemptEntry>> latest =
        attempts.subList(Math.max(0, attempts.size() - MOST), attempts.size());
    for (Numbered<AttemptEntry> attempt : latest) {
      try {
        Drill drill = again(advisor, next, attempt.entry());
        rows.add(new Row(attempt, new Judgement(advisor, next, drill)));
      } catch (IllegalArgumentException e) {
        leftOut.add("Left out: attempt " + attempt.number() + " names what this build lacks.");
      }
    }
  }

  /**
   * The drill that an attempt was, move by move.
   *
   * @throws IllegalArgumentException if a move is none in this build; the message is safe to show
   */
  public static Drill again(Advisor advisor, NextQuestion next, AttemptEntry attempt) {
    Drill drill = new Drill(advisor, next, new DrillCase(attempt.source(), attempt.hidden()));
    attempt.moves().forEach(move -> drill.take(DrillMove.of(move)));
    return drill;
  }

  /** The sheet as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("replay  day         case            economy  conclusion  reason  safety  hints");
    for (Row row : rows) {
      AttemptEntry entry = row.attempt().entry();
      lines.add(
          String.format(
              Locale.ROOT,
              "%6d  %s  %-14s  %7d  %10d  %6d  %6d  %5d",
              row.attempt().number(),
              entry.day(),
              shortened(entry.source()),
              row.judged().economy(),
              row.judged().conclusion(),
              row.judged().reason(),
              row.judged().safety().points(),
              row.judged().hints()));
    }
    lines.add(
        String.format(
            Locale.ROOT,
            "%6s  %-10s  %-14s  %7.0f  %10.0f  %6.0f  %6.0f",
            "",
            "",
            "mean",
            mean(Judgement::economy),
            mean(Judgement::conclusion),
            mean(Judgement::reason),
            mean(one -> one.safety().points())));
    long missed = rows.stream().filter(r -> r.judged().safety() == Judgement.Safety.MISSED).count();
    lines.addAll(leftOut);
    lines.add("");
    lines.add("Faults missed: " + missed + " (the worst mistake there is).");
    habits(lines);
    topics(lines);
    return lines;
  }

  private static String shortened(String source) {
    String safe = Printable.shown(source);
    return safe.length() <= 14 ? safe : safe.substring(0, 13) + "~";
  }

  private double mean(ToIntFunction<Judgement> points) {
    return rows.stream().map(Row::judged).mapToInt(points).average().orElse(0);
  }

  /** What was answered against what the rules answer: who has one trick only is seen here. */
  private void habits(List<String> lines) {
    Map<String, int[]> answers = new TreeMap<>();
    for (Row row : rows) {
      answers.computeIfAbsent(said(row.judged()), key -> new int[2])[0]++;
      answers.computeIfAbsent(Answers.of(row.judged().drill().right()), key -> new int[2])[1]++;
    }
    lines.add("");
    lines.add("said  rules  what to do now");
    answers.forEach(
        (answer, counts) ->
            lines.add("%4d  %5d  %s".formatted(counts[0], counts[1], Answers.words(answer))));
    answers.forEach(
        (answer, counts) -> {
          boolean often = counts[0] >= HABIT * rows.size() && counts[1] <= counts[0] / 2;
          if (rows.size() >= ENOUGH && often) {
            lines.add(
                "A habit: \"%s\" in %d of %d cases; the rules in %d."
                    .formatted(Answers.words(answer), counts[0], rows.size(), counts[1]));
          }
        });
  }

  private static String said(Judgement judged) {
    if (judged.fixFirst()) {
      return Answers.FIX;
    }
    if (judged.moved().isEmpty()) {
      return Answers.LEAVE;
    }
    return String.join(
        "+",
        judged.moved().entrySet().stream()
            .map(move -> move.getKey().id() + "-" + move.getValue().direction().id())
            .toList());
  }

  private void topics(List<String> lines) {
    Map<String, List<Judgement>> topics = new LinkedHashMap<>();
    for (Row row : rows) {
      row.judged().drill().right().reasons().stream()
          .map(note -> Topics.of(advisor.notes().note(note)))
          .distinct()
          .forEach(
              topic -> topics.computeIfAbsent(topic, key -> new ArrayList<>()).add(row.judged()));
    }
    lines.add("");
    lines.add("cases  conclusion  topic");
    topics.entrySet().stream()
        .sorted(Comparator.comparingDouble(ResultSheet::conclusion))
        .forEach(
            topic ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "%5d  %10.0f  %s",
                        topic.getValue().size(),
                        conclusion(topic),
                        topic.getKey())));
  }

  private static double conclusion(Map.Entry<String, List<Judgement>> topic) {
    return topic.getValue().stream().mapToInt(Judgement::conclusion).average().orElse(0);
  }
}
