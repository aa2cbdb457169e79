package insidelift.engine.consultation;

import insidelift.shared.CheckKind;
import insidelift.shared.Column;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The rules that can change what to do now, read off the index into a form that bounds can be
 * computed on. Rules that only add a caution, a word or another lever are left out: they change no
 * status, no blocking check and no first move.
 */
final class RuleTable {

  /** The verbs by which a rule takes part in what to do now. */
  private static final Set<String> HEARD =
      Set.of(
          "check",
          "evidence",
          "target",
          "correction",
          "undo",
          "carryOn",
          "bar",
          "fewer",
          "cap",
          "doubles",
          "setsAside",
          "leads");

  /** One rule: what it needs, the acts that count, and the findings it gives evidence on. */
  record Line(
      IndexedRule rule,
      List<Seen> answers,
      List<Found> findings,
      List<BarredTest> barred,
      List<Proposed> proposals,
      List<Act> acts,
      List<Integer> evidence) {

    /** Whether a premise of the rule reads that question. */
    boolean reads(int question) {
      return answers.stream()
          .anyMatch(seen -> Arrays.stream(seen.questions()).anyMatch(one -> one == question));
    }
  }

  /** An answer among these states of these questions, or no such answer. */
  static final class Seen {

    private final int[] questions;
    private final int[] masks;
    private final boolean absent;

    Seen(int[] questions, int[] masks, boolean absent) {
      this.questions = questions;
      this.masks = masks;
      this.absent = absent;
    }

    int[] questions() {
      return questions;
    }

    int[] masks() {
      return masks;
    }

    boolean absent() {
      return absent;
    }
  }

  /** A finding of at least that strength, or none. */
  record Found(int finding, int least, boolean absent) {}

  /** A move that is barred, or not. */
  record BarredTest(Lever lever, Direction direction, boolean absent) {}

  /** One of these wishes, that way and that strong, or none; a null direction is any. */
  record Proposed(List<Asked> candidates, Direction direction, int least, boolean absent) {}

  /** A piece of evidence for a finding, by the observation it rests on. */
  record Piece(int line, int weight) {}

  /** A wish that a rule makes: {@code finding} is -1 where its strength is no finding's. */
  record Asked(
      int place,
      int line,
      String claim,
      Lever lever,
      Direction direction,
      Column column,
      int finding,
      boolean undo) {

    boolean target() {
      return column != null;
    }
  }

  private final List<Line> lines = new ArrayList<>();
  private final List<String> findings = new ArrayList<>();
  private final Piece[][][] evidence;
  private final List<Asked> asked = new ArrayList<>();
  private final Map<String, List<Integer>> byVerb = new HashMap<>();
  private final int[][] settingAside;
  private final int[][] doubling;
  private final int[][] reading;
  private final int[][] readers;
  private final Grid grid;

  RuleTable(RuleIndex index, Grid grid) {
    this.grid = grid;
    List<IndexedRule> heard =
        index.rules().stream()
            .filter(rule -> rule.acts().stream().anyMatch(RuleTable::heard))
            .filter(rule -> rule.acts().stream().noneMatch(RuleTable::looks))
            .toList();
    // Wishes first: the rules that read them point at them.
    for (int i = 0; i < heard.size(); i++) {
      for (Act act : heard.get(i).acts()) {
        wish(i, heard.get(i), act);
      }
    }
    Premises premises = new Premises(grid, this);
    heard.forEach(rule -> lines.add(premises.line(rule)));
    Map<Integer, Map<String, List<Piece>>> pieces = new HashMap<>();
    for (int i = 0; i < heard.size(); i++) {
      for (Act act : lines.get(i).acts()) {
        read(i, act, pieces);
      }
    }
    this.settingAside = naming("setsAside");
    this.doubling = naming("doubles");
    this.reading = new int[grid.size()][];
    for (int q = 0; q < reading.length; q++) {
      int question = q;
      reading[q] = where(line -> line.reads(question));
    }
    this.readers = new int[findings.size()][];
    for (int f = 0; f < readers.length; f++) {
      int finding = f;
      readers[f] =
          where(line -> line.findings().stream().anyMatch(found -> found.finding() == finding));
    }
    this.evidence = new Piece[findings.size()][][];
    for (int f = 0; f < evidence.length; f++) {
      evidence[f] =
          pieces.getOrDefault(f, Map.of()).values().stream()
              .map(list -> list.toArray(Piece[]::new))
              .toArray(Piece[][]::new);
    }
  }

  /** A check that stops nothing changes nothing now. */
  private static boolean looks(Act act) {
    return act.verb().equals("check") && act.words().get(0).equals(CheckKind.LOOK.id());
  }

  /** Whether a verb takes part in what to do now. */
  static boolean heard(Act act) {
    return HEARD.contains(act.verb());
  }

  List<Line> lines() {
    return lines;
  }

  /** The evidence for and against a finding, one row for each observation. */
  Piece[][] evidence(int finding) {
    return evidence[finding];
  }

  /** How many findings there are. */
  int findings() {
    return evidence.length;
  }

  /** Everything that rules ask for. */
  List<Asked> asked() {
    return asked;
  }

  /** The rules with an act of that verb. */
  List<Integer> with(String verb) {
    return byVerb.getOrDefault(verb, List.of());
  }

  /** Whether a rule stops everything else. */
  boolean blocks(int line) {
    return with("check").contains(line);
  }

  /** The rules that set the claim of a wish aside. */
  int[] settingAside(Asked wish) {
    return settingAside[wish.place()];
  }

  /** The rules that double the corrections by the claim of a wish. */
  int[] doubling(Asked wish) {
    return doubling[wish.place()];
  }

  /** The rules that read a question. */
  int[] reading(int question) {
    return reading[question];
  }

  /** The rules that read a finding. */
  int[] readers(int finding) {
    return readers[finding];
  }

  /** For each wish, the rules with an act of that verb that names its claim. */
  private int[][] naming(String verb) {
    int[][] naming = new int[asked.size()][];
    for (Asked wish : asked) {
      naming[wish.place()] =
          where(
              line ->
                  line.acts().stream()
                      .anyMatch(
                          act -> act.verb().equals(verb) && act.words().contains(wish.claim())));
    }
    return naming;
  }

  private int[] where(Predicate<Line> wanted) {
    return IntStream.range(0, lines.size()).filter(i -> wanted.test(lines.get(i))).toArray();
  }

  /** Whether a rule reads nothing but the safety checks. */
  boolean safety(int line) {
    return lines.get(line).answers().stream()
        .flatMapToInt(seen -> Arrays.stream(seen.questions()))
        .allMatch(question -> grid.question(question).safety());
  }

  private void wish(int line, IndexedRule rule, Act act) {
    List<String> words = act.words();
    boolean target = act.verb().equals("target");
    boolean correction = act.verb().equals("correction");
    boolean undo = act.verb().equals("undo");
    if (target || correction || undo || act.verb().equals("carryOn")) {
      asked.add(
          new Asked(
              asked.size(),
              line,
              rule.note(),
              lever(words.get(0)),
              target ? null : direction(words.get(1)),
              target ? Named.of(Column.class, words.get(1)) : null,
              correction ? finding(words.get(2)) : -1,
              undo));
    }
  }

  private void read(int line, Act act, Map<Integer, Map<String, List<Piece>>> pieces) {
    List<Integer> known = byVerb.computeIfAbsent(act.verb(), key -> new ArrayList<>());
    if (!known.contains(line)) {
      known.add(line);
    }
    if (act.verb().equals("evidence")) {
      pieces
          .computeIfAbsent(finding(act.words().get(0)), key -> new LinkedHashMap<>())
          .computeIfAbsent(observation(lines.get(line)), key -> new ArrayList<>())
          .add(new Piece(line, Integer.parseInt(act.words().get(1))));
    }
  }

  /** The number of a finding. */
  int finding(String id) {
    if (!findings.contains(id)) {
      findings.add(id);
    }
    return findings.indexOf(id);
  }

  /** What evidence rests on: the last answer among the premises, as the ledger has it. */
  String observation(Line line) {
    int[] last = new int[0];
    for (Seen seen : line.answers()) {
      last = seen.absent() ? last : seen.questions();
    }
    if (last.length != 1) {
      throw new IllegalStateException(
          "evidence must rest on one question: rule \"" + line.rule().id() + '"');
    }
    return grid.question(last[0]).id();
  }

  static Lever lever(String id) {
    return Named.of(Lever.class, id);
  }

  static Direction direction(String id) {
    return Named.of(Direction.class, id);
  }
}
