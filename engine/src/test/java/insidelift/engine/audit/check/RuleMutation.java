package insidelift.engine.audit.check;

import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.audit.Effort;
import insidelift.engine.audit.Sweep;
import insidelift.engine.audit.check.RuleMutants.Mutant;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.rules.RuleBase;
import insidelift.rules.fact.Spoken;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Makes every small mistake in the rule base and runs the cases: a mistake that no case notices
 * either changes no advice in any of many situations, or is a case that is missing. The rules are
 * matched straight off the mistaken index, which says the same as compiling it (see the test that
 * holds the two against each other).
 */
public final class RuleMutation {

  /** What became of one mistake: {@code witness} is null where no situation tells it. */
  record Survivor(String mutant, Situation witness, List<String> differs) {}

  /** What a situation comes to by the rules as they are, and which of them speak. */
  private record Known(Decided decided, Set<Object> made, Set<String> spoke) {}

  /** In how many situations a mistake that no case notices is looked for. */
  static final Effort EFFORT = new Effort(100, 3, 600, 1);

  private final Advisor base;
  private final List<Entry> cases;
  private final Map<Situation, Known> known = new HashMap<>();
  private final List<Situation> pool = new ArrayList<>();
  private int mutants;
  private int killed;
  private final List<Survivor> survivors = new ArrayList<>();

  RuleMutation(List<Entry> cases, Effort effort) {
    Advisor advisor = Advisor.load();
    this.base = new Knowledge(advisor, LocalDate.MIN).plain();
    this.cases = cases;
    cases.forEach(entry -> known.put(entry.situation(), known(entry.situation())));
    SituationVisitor collect = (situation, decided) -> pool.add(situation);
    new Sweep(base, List.of(collect)).run(new Knowledge(advisor, LocalDate.MIN), effort, List::of);
    cases.forEach(entry -> pool.add(entry.situation()));
    pool.forEach(situation -> known.computeIfAbsent(situation, this::known));
  }

  private Known known(Situation situation) {
    Decided decided = base.decide(situation);
    Set<String> spoke = new HashSet<>();
    decided.reasoned().all(Spoken.class).forEach(said -> spoke.add(said.by().rule()));
    return new Known(decided, made(decided), spoke);
  }

  /** All that was made of a situation, the words of the tables aside. */
  private static Set<Object> made(Decided decided) {
    return decided
        .reasoned()
        .all(Object.class)
        .filter(fact -> !(fact instanceof Spoken.Term || fact instanceof Spoken.Option))
        .collect(Collectors.toSet());
  }

  /** Makes one in so many mistakes. */
  RuleMutation run(int oneIn) {
    List<Mutant> all = RuleMutants.of(base.rules().index(), base.vocabulary());
    IntStream.range(0, all.size())
        .filter(i -> i % oneIn == 0)
        .parallel()
        .forEach(i -> run(all.get(i)));
    return this;
  }

  int mutants() {
    return mutants;
  }

  int killed() {
    return killed;
  }

  int situations() {
    return known.size();
  }

  /** Mistakes that no case notices, those that no situation tells among them. */
  List<Survivor> survivors() {
    return survivors.stream()
        .sorted((one, other) -> one.mutant().compareTo(other.mutant()))
        .toList();
  }

  /** Mistakes that no case notices although some advice tells them. */
  List<Survivor> missed() {
    return survivors().stream().filter(survivor -> survivor.witness() != null).toList();
  }

  private void run(Mutant mutant) {
    Advisor wrong = new Advisor(base.vocabulary(), RuleBase.plain(mutant.index()), base.notes());
    boolean dies = noticed(mutant, wrong);
    Survivor survivor = dies ? null : survivor(mutant, wrong);
    synchronized (this) {
      mutants++;
      killed += dies ? 1 : 0;
      if (survivor != null) {
        survivors.add(survivor);
      }
    }
  }

  private boolean noticed(Mutant mutant, Advisor wrong) {
    // The cases in which the rule speaks, or is said to keep silent, come first.
    List<Entry> ordered = new ArrayList<>();
    List<Entry> rest = new ArrayList<>();
    for (Entry entry : cases) {
      boolean near =
          entry.words("silent").contains(mutant.rule().id())
              || entry.words("fires").contains(mutant.rule().id())
              || known.get(entry.situation()).spoke().contains(mutant.rule().id());
      (near ? ordered : rest).add(entry);
    }
    ordered.addAll(rest);
    return ordered.stream().anyMatch(entry -> notices(mutant, entry, wrong));
  }

  private boolean notices(Mutant mutant, Entry entry, Advisor wrong) {
    try {
      return differs(mutant, wrong, entry.situation()) && !entry.differences(wrong).isEmpty();
    } catch (RuntimeException e) {
      return true;
    }
  }

  private boolean differs(Mutant mutant, Advisor wrong, Situation situation) {
    Known right = known.get(situation);
    if (mutant.narrower() && !right.spoke().contains(mutant.rule().id())) {
      return false;
    }
    Decided decided = wrong.decide(situation);
    return !decided.verdicts().equals(right.decided().verdicts())
        || !made(decided).equals(right.made());
  }

  private Survivor survivor(Mutant mutant, Advisor wrong) {
    for (Situation situation : pool) {
      try {
        if (differs(mutant, wrong, situation)) {
          Advice is = wrong.outline(situation);
          Advice was = base.outline(situation);
          if (!is.equals(was)) {
            return new Survivor(mutant.what(), situation, parts(was, is));
          }
        }
      } catch (RuntimeException e) {
        return new Survivor(mutant.what(), situation, List.of(e.toString()));
      }
    }
    return new Survivor(mutant.what(), null, List.of());
  }

  private static List<String> parts(Advice was, Advice is) {
    List<String> parts = new ArrayList<>();
    part("status", was.status(), is.status(), parts);
    part("checks", was.firstChecks(), is.firstChecks(), parts);
    part("findings", was.findings(), is.findings(), parts);
    part("suggestions", was.suggestions(), is.suggestions(), parts);
    part("decisions", was.decisions(), is.decisions(), parts);
    part("alternatives", was.alternatives(), is.alternatives(), parts);
    part("unexplained", was.unexplained(), is.unexplained(), parts);
    part("wouldHelp", was.wouldHelp(), is.wouldHelp(), parts);
    part("assumed", was.assumed(), is.assumed(), parts);
    return parts;
  }

  private static void part(String name, Object was, Object is, List<String> parts) {
    if (!was.equals(is)) {
      parts.add(name);
    }
  }

  /** Runs the whole campaign and writes the survivors: the folder of cases, and the file. */
  public static void main(String[] args) throws IOException {
    RuleMutation mutation = of(Path.of(args[0]), EFFORT).run(1);
    Files.writeString(Path.of(args[1]), mutation.report());
  }

  static RuleMutation of(Path cases, Effort effort) throws IOException {
    List<Entry> all = new ArrayList<>();
    try {
      Vocabulary words = Vocabulary.load();
      all.addAll(CaseLibrary.read(cases.resolve("families"), words).entries());
      all.addAll(CaseLibrary.read(cases.resolve("whole"), words).entries());
    } catch (CaseProblem e) {
      throw new IOException(e);
    }
    return new RuleMutation(all, effort);
  }

  String report() {
    StringBuilder report = new StringBuilder();
    long told = survivors.stream().filter(one -> one.witness() != null).count();
    report.append(
        "%d mistakes, %d noticed by a case, %d that no advice of %d situations tells, %d missed%n"
            .formatted(mutants, killed, survivors.size() - told, situations(), told));
    for (Survivor survivor : survivors()) {
      report.append(
          survivor.witness() == null
              ? "no advice tells: %s%n".formatted(survivor.mutant())
              : "missed: %s | %s | %s%n"
                  .formatted(survivor.mutant(), survivor.differs(), survivor.witness().answers()));
    }
    return report.toString();
  }
}
