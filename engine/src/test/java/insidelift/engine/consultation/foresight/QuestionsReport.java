package insidelift.engine.consultation.foresight;

import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decider;
import insidelift.engine.consultation.decision.ToDo;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IntSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Measures how many questions a consultation takes and writes it down: run by the profile {@code
 * questions}. It plays whole consultations against situations of which every answer is known.
 */
public final class QuestionsReport {

  /** How the next question is chosen. */
  private enum Way {
    BEST("best first (the product)"),
    USEFUL_IN_ORDER("vocabulary order, without the questions that change nothing"),
    FIXED("vocabulary order"),
    RANDOM("random order");

    private final String words;

    Way(String words) {
      this.words = words;
    }
  }

  /** One consultation: after how many questions the advice was right, and was known to be. */
  private record Played(int right, int sure) {}

  private static final double UNKNOWN = 0.2;

  /** How many situations are played to certainty in an order that is not the product's. */
  private static final int SURE = 300;

  private final Advisor advisor = Advisor.load();
  private final Vocabulary vocabulary = advisor.vocabulary();
  private final Grid grid = new Grid(vocabulary);
  private final Consistent consistent = new Consistent(grid);
  private final NextQuestion next = new NextQuestion(advisor.decider());
  private final List<Long> nanos = new ArrayList<>();
  private final Decider plain = new Decider(vocabulary, advisor.rules().plain());

  /** Writes the report: the file, the folder of whole cases, how many random situations. */
  public static void main(String[] args) throws IOException, CaseProblem {
    QuestionsReport report = new QuestionsReport();
    List<String> lines = report.lines(Path.of(args[1]), Integer.parseInt(args[2]));
    Files.createDirectories(Path.of(args[0]).toAbsolutePath().getParent());
    Files.write(Path.of(args[0]), lines);
    lines.forEach(System.out::println);
  }

  private List<String> lines(Path cases, int count) throws CaseProblem, IOException {
    List<Situation> drawn = drawn(count);
    List<String> lines = new ArrayList<>();
    lines.add("# How many questions a consultation takes");
    lines.add("");
    lines.add(
        "A question counts as one, the screen of safety checks as one. \"Right\": from then on the"
            + " advice now is that of full information. \"Sure\": no completion of the open answers"
            + " that was tried changes it, so the consultation ends.");
    List<Situation> healthy = drawn.stream().filter(one -> !faulty(one)).toList();
    section(lines, "%d random consistent situations".formatted(drawn.size()), drawn, 0);
    section(
        lines,
        "The %d of them without a fault on the safety screen".formatted(healthy.size()),
        healthy,
        0);
    section(lines, "%d random, one answer in five unknown".formatted(drawn.size()), drawn, UNKNOWN);
    if (Files.isDirectory(cases)) {
      List<Situation> library = library(cases);
      section(lines, "%d whole cases of the library".formatted(library.size()), library, 0);
    }
    floors(lines, drawn, healthy);
    lines.add("");
    Collections.sort(nanos);
    lines.add(
        "Time to the next question, %d choices: median %.1f ms, 99th percentile %.1f ms, worst %.1f"
                .formatted(nanos.size(), ms(0.5), ms(0.99), ms(1))
            + " ms.");
    return lines;
  }

  private double ms(double part) {
    return nanos.get((int) Math.min(nanos.size() - 1, part * nanos.size())) / 1e6;
  }

  private List<Situation> drawn(int count) {
    Completions completions = new Completions(grid, consistent, new Chances(grid), 1);
    SplittableRandom random = new SplittableRandom(7);
    int[] box = new int[grid.size()];
    boolean[] open = new boolean[grid.size()];
    Arrays.fill(open, true);
    for (int q = 0; q < box.length; q++) {
      box[q] = grid.full(q);
    }
    List<Situation> drawn = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double[] luck = random.doubles(grid.size()).toArray();
      drawn.add(grid.situation(completions.draw(luck, box, open), Situation.UNKNOWN));
    }
    return drawn;
  }

  private List<Situation> library(Path folder) throws CaseProblem, IOException {
    List<Situation> situations = new ArrayList<>();
    for (Entry entry : CaseLibrary.read(folder, vocabulary).entries()) {
      situations.add(entry.situation());
    }
    return situations;
  }

  private boolean faulty(Situation situation) {
    return vocabulary.questions().stream()
        .filter(Question::safety)
        .anyMatch(
            question ->
                situation
                    .answer(question.id())
                    .flatMap(question::value)
                    .map(Vocabulary.Value::fault)
                    .orElse(false));
  }

  private void section(List<String> lines, String title, List<Situation> all, double unknown) {
    lines.add("");
    lines.add("## " + title);
    lines.add("");
    lines.add("| order | right: mean | worst | of | sure: mean | worst | of |");
    lines.add("|---|---|---|---|---|---|---|");
    for (Way way : Way.values()) {
      Random random = new Random(11);
      double right = 0;
      double sure = 0;
      int worstRight = 0;
      int worstSure = 0;
      int surely = way == Way.BEST ? all.size() : Math.min(SURE, all.size());
      for (int i = 0; i < all.size(); i++) {
        // To ask only what is useful, certainty has to be looked at each time.
        if (i >= surely && way == Way.USEFUL_IN_ORDER) {
          break;
        }
        Played played = play(forget(all.get(i), unknown, random), way, random, i < surely);
        right += played.right();
        worstRight = Math.max(worstRight, played.right());
        if (i < surely) {
          sure += played.sure();
          worstSure = Math.max(worstSure, played.sure());
        }
      }
      int rightly = way == Way.USEFUL_IN_ORDER ? surely : all.size();
      lines.add(
          "| %s | %.2f | %d | %d | %.2f | %d | %d |"
              .formatted(
                  way.words,
                  right / rightly,
                  worstRight,
                  rightly,
                  sure / surely,
                  worstSure,
                  surely));
    }
  }

  private static Situation forget(Situation truth, double unknown, Random random) {
    Situation left = truth;
    for (String question : truth.answers().keySet()) {
      left = random.nextDouble() < unknown ? left.with(question, Vocabulary.UNKNOWN) : left;
    }
    return left;
  }

  private Played play(Situation truth, Way way, Random random, boolean toCertainty) {
    ToDo full = now(truth);
    Situation known = new Situation(Map.of(), Map.of(), truth.kart());
    Set<String> skipped = new LinkedHashSet<>();
    List<Question> order = new ArrayList<>(vocabulary.questions());
    if (way == Way.RANDOM) {
      Collections.shuffle(order, random);
    }
    int asked = 0;
    int right = now(known).equals(full) ? 0 : -1;
    while (true) {
      List<Question> open = List.of();
      if (toCertainty) {
        long start = cpu();
        open = next.worthAsking(known);
        if (way == Way.BEST) {
          nanos.add(cpu() - start);
        }
        if (open.isEmpty()) {
          return new Played(right < 0 ? asked : right, asked);
        }
      }
      List<Question> step = step(way, open, order, known, skipped);
      if (step.isEmpty()) {
        return new Played(right, asked);
      }
      for (Question question : step) {
        String answer = truth.answer(question.id()).orElse(Vocabulary.UNKNOWN);
        known = known.with(question.id(), answer);
        if (answer.equals(Vocabulary.UNKNOWN)) {
          skipped.add(question.id());
        }
      }
      asked++;
      boolean same = now(known).equals(full);
      right = same ? (right < 0 ? asked : right) : -1;
    }
  }

  /**
   * Time of this thread on a processor: on a shared machine the clock on the wall tells others'
   * work.
   */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private List<Question> step(
      Way way, List<Question> open, List<Question> order, Situation known, Set<String> skipped) {
    if (way == Way.BEST || way == Way.USEFUL_IN_ORDER) {
      List<Question> safety = open.stream().filter(Question::safety).toList();
      if (!safety.isEmpty()) {
        return safety;
      }
      return List.of(
          way == Way.BEST
              ? open.get(0)
              : order.stream().filter(open::contains).findFirst().orElseThrow());
    }
    int[] all = grid.box(known, vocabulary, skipped);
    int[] now = all.clone();
    for (int q = 0; q < now.length; q++) {
      now[q] = all[q] == grid.full(q) ? Grid.ABSENT : all[q];
    }
    for (Question question : order) {
      int q = grid.place(question.id());
      if (all[q] == grid.full(q) && consistent.askable(q, now, all)) {
        return question.safety()
            ? order.stream()
                .filter(Question::safety)
                .filter(one -> known.answer(one.id()).isEmpty() && !skipped.contains(one.id()))
                .toList()
            : List.of(question);
      }
    }
    return List.of();
  }

  private ToDo now(Situation situation) {
    return ToDo.of(plain.decide(situation)).brief();
  }

  private void floors(List<String> lines, List<Situation> drawn, List<Situation> healthy) {
    lines.add("");
    lines.add("## Floors");
    lines.add("");
    lines.add("| | all | without a fault on the safety screen |");
    lines.add("|---|---|---|");
    double[] one = counts(drawn);
    double[] other = counts(healthy);
    lines.add("| different things to do now | %d | %d |".formatted(one.length, other.length));
    lines.add(
        "| entropy of what to do now, bits | %.2f | %.2f |"
            .formatted(Information.entropy(one), Information.entropy(other)));
    lines.add(
        "| fewest yes-or-no questions, mean (Huffman) | %.2f | %.2f |"
            .formatted(huffman(one, 2), huffman(other, 2)));
    lines.add(
        "| fewest questions of seven answers, mean (Huffman) | %.2f | %.2f |"
            .formatted(huffman(one, 7), huffman(other, 7)));
    IntSummaryStatistics needed = needed(drawn);
    IntSummaryStatistics soundly = needed(healthy);
    lines.add(
        "| answers any sure procedure must ask for, mean | %.2f | %.2f |"
            .formatted(needed.getAverage(), soundly.getAverage()));
    lines.add(
        "| answers any sure procedure must ask for, worst | %d | %d |"
            .formatted(needed.getMax(), soundly.getMax()));
  }

  private double[] counts(List<Situation> situations) {
    Map<ToDo, Integer> counts = new LinkedHashMap<>();
    situations.forEach(situation -> counts.merge(now(situation), 1, Integer::sum));
    return counts.values().stream().mapToDouble(Integer::doubleValue).toArray();
  }

  /** The mean number of questions of that many answers that a Huffman code takes. */
  static double huffman(double[] weights, int answers) {
    PriorityQueue<Double> queue = new PriorityQueue<>();
    double total = 0;
    for (double weight : weights) {
      queue.add(weight);
      total += weight;
    }
    while (queue.size() > 1 && (queue.size() - 1) % (answers - 1) != 0) {
      queue.add(0.0);
    }
    double cost = 0;
    while (queue.size() > 1) {
      double sum = 0;
      for (int i = 0; i < answers; i++) {
        sum += queue.remove();
      }
      cost += sum;
      queue.add(sum);
    }
    return cost / total;
  }

  /**
   * How many answers, each by itself, would change what to do now if they were another: whoever
   * stops without one of them cannot be sure. The safety screen counts as one.
   */
  private IntSummaryStatistics needed(List<Situation> situations) {
    IntSummaryStatistics needed = new IntSummaryStatistics();
    for (Situation situation : situations) {
      ToDo now = now(situation);
      Set<String> telling = new LinkedHashSet<>();
      for (Map.Entry<String, String> answer : situation.answers().entrySet()) {
        Question question = vocabulary.question(answer.getKey()).orElseThrow();
        if (question.values().stream()
            .map(value -> situation.with(question.id(), value.id()))
            .filter(other -> consistent.holds(other, vocabulary))
            .anyMatch(other -> !now(other).equals(now))) {
          telling.add(question.safety() ? "safety" : question.id());
        }
      }
      needed.accept(telling.size());
    }
    return needed;
  }
}
