package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.training.card.Topics;
import insidelift.shared.Status;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** The headings of {@link #table()}. */
  public static List<String> columns() {
    return List.of("replay", "day", "case", "economy", "conclusion", "reason", "safety", "hints");
  }

  /**
   * One row for each attempt, and one for their means; the scores are points of 100. Outside text
   * is safe to show.
   */
  public List<List<String>> table() {
    List<List<String>> table = new ArrayList<>();
    for (Row row : rows) {
      AttemptEntry entry = row.attempt().entry();
      table.add(
          List.of(
              Integer.toString(row.attempt().number()),
              entry.day().toString(),
              Printable.shown(entry.source()),
              Integer.toString(row.judged().economy()),
              Integer.toString(row.judged().conclusion()),
              Integer.toString(row.judged().reason()),
              Integer.toString(row.judged().safety().points()),
              Integer.toString(row.judged().hints())));
    }
    table.add(
        List.of(
            "",
            "",
            "mean",
            mean(Judgement::economy),
            mean(Judgement::conclusion),
            mean(Judgement::reason),
            mean(one -> one.safety().points()),
            ""));
    return table;
  }

  /** Which attempts this build cannot replay, in a sentence each. */
  public List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** How many faults were missed, in a sentence. */
  public String missed() {
    long missed = rows.stream().filter(r -> r.judged().safety() == Judgement.Safety.MISSED).count();
    return "Faults missed: " + missed + " (the worst mistake there is).";
  }

  /**
   * How often what comes before camber and caster was named rightly, in a sentence; empty where
   * nobody was asked.
   */
  public Optional<String> first() {
    List<Judgement.First> judged =
        rows.stream()
            .map(Row::judged)
            .filter(one -> one.drill().right().status() != Status.FIX_FIRST)
            .flatMap(one -> one.firstJudged().stream())
            .toList();
    return judged.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "What comes first: right in %d of %d, half right in %d."
                .formatted(
                    Collections.frequency(judged, Judgement.First.RIGHT),
                    judged.size(),
                    Collections.frequency(judged, Judgement.First.HALF)));
  }

  /** The sheet as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(line(columns()));
    table().forEach(row -> lines.add(line(row)));
    lines.addAll(leftOut);
    lines.add("");
    lines.add(missed());
    first().ifPresent(lines::add);
    lines.add("");
    lines.add("said  rules  what to do now");
    answers()
        .forEach(
            (answer, counts) ->
                lines.add("%4d  %5d  %s".formatted(counts[0], counts[1], Answers.words(answer))));
    lines.addAll(habits());
    lines.add("");
    lines.add("cases  conclusion  topic");
    topics()
        .forEach(
            topic ->
                lines.add(
                    "%5d  %10d  %s".formatted(topic.cases(), topic.conclusion(), topic.topic())));
    return lines;
  }

  private static String line(List<String> cells) {
    return "%6s  %-10s  %-14s  %7s  %10s  %6s  %6s  %5s"
        .formatted(
            cells.get(0),
            cells.get(1),
            shortened(cells.get(2)),
            cells.get(3),
            cells.get(4),
            cells.get(5),
            cells.get(6),
            cells.get(7))
        .stripTrailing();
  }

  private static String shortened(String safe) {
    return safe.length() <= 14 ? safe : safe.substring(0, 13) + "~";
  }

  private String mean(ToIntFunction<Judgement> points) {
    return Long.toString(
        Math.round(rows.stream().map(Row::judged).mapToInt(points).average().orElse(0)));
  }

  /** How often each thing to do was said, and how often the rules say it. */
  private Map<String, int[]> answers() {
    Map<String, int[]> answers = new TreeMap<>();
    for (Row row : rows) {
      answers.computeIfAbsent(said(row.judged()), key -> new int[2])[0]++;
      answers.computeIfAbsent(Answers.of(row.judged().drill().right()), key -> new int[2])[1]++;
    }
    return answers;
  }

  /** What was answered far more often than the rules answer it: who has one trick only shows. */
  public List<String> habits() {
    List<String> habits = new ArrayList<>();
    answers()
        .forEach(
            (answer, counts) -> {
              boolean often = counts[0] >= HABIT * rows.size() && counts[1] <= counts[0] / 2;
              if (rows.size() >= ENOUGH && often) {
                habits.add(
                    "A habit: \"%s\" in %d of %d cases; the rules in %d."
                        .formatted(Answers.words(answer), counts[0], rows.size(), counts[1]));
              }
            });
    return habits;
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

  /**
   * How a topic went.
   *
   * @param topic the topic
   * @param cases how many cases were of it
   * @param conclusion the mean of their conclusions, of 100
   */
  public record Topic(String topic, int cases, int conclusion) {}

  /** The topics of the cases, the weakest first. */
  public List<Topic> topics() {
    Map<String, List<Judgement>> topics = new LinkedHashMap<>();
    for (Row row : rows) {
      row.judged().drill().right().reasons().stream()
          .map(note -> Topics.of(advisor.notes().note(note)))
          .distinct()
          .forEach(
              topic -> topics.computeIfAbsent(topic, key -> new ArrayList<>()).add(row.judged()));
    }
    return topics.entrySet().stream()
        .sorted(Comparator.comparingDouble(ResultSheet::conclusion))
        .map(one -> new Topic(one.getKey(), one.getValue().size(), rounded(conclusion(one))))
        .toList();
  }

  private static int rounded(double points) {
    return Math.toIntExact(Math.round(points));
  }

  private static double conclusion(Map.Entry<String, List<Judgement>> topic) {
    return topic.getValue().stream().mapToInt(Judgement::conclusion).average().orElse(0);
  }
}
