package insidelift.engine.training.drill;

import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where cases come from: a number, or a coach's folder of case files. */
public final class Cases {

  /** Numbers looked at for a cause that the trainee has not met. */
  private static final int LOOKED_AT = 8;

  private final Advisor advisor;
  private final Imagined imagined;

  /** Cases by the rules of an advisor. */
  public Cases(Advisor advisor) {
    this.advisor = advisor;
    this.imagined = new Imagined(advisor.decider());
  }

  /** The case of a number: the same whenever rules and words are the same. */
  public DrillCase numbered(long number) {
    return new DrillCase(Long.toString(number), imagined.whole(number));
  }

  /**
   * The next case for a trainee: of a few numbers that were not used yet, the one whose cause the
   * trainee has met least; a cause never met goes first.
   *
   * @param attempts what the trainee has tried
   */
  public DrillCase next(List<AttemptEntry> attempts) {
    Map<String, Integer> met = new HashMap<>();
    attempts.forEach(attempt -> met.merge(cause(attempt.hidden()), 1, Integer::sum));
    DrillCase best = null;
    int least = Integer.MAX_VALUE;
    long first = 1 + (long) LOOKED_AT * attempts.size();
    for (long number = first; number < first + LOOKED_AT && least > 0; number++) {
      DrillCase candidate = numbered(number);
      int times = met.getOrDefault(cause(candidate.hidden()), 0);
      if (times < least) {
        best = candidate;
        least = times;
      }
    }
    return best;
  }

  private String cause(Situation situation) {
    return String.join(" ", Conclusion.of(advisor.decider(), situation).reasons());
  }

  /**
   * A coach's cases: the files {@code *.json} of a folder, by name, as the audit reads them. What a
   * case leaves out nobody can say.
   *
   * @throws CaseProblem if the folder holds no case, or a file in it cannot be used; the message
   *     names the file and the place
   */
  public List<DrillCase> inFolder(Path folder) throws CaseProblem {
    List<Entry> entries;
    try {
      entries = CaseLibrary.read(folder, advisor.vocabulary()).entries();
    } catch (NoSuchFileException e) {
      throw new CaseProblem("there is no such folder");
    } catch (NotDirectoryException e) {
      throw new CaseProblem("this is a file, not a folder");
    } catch (IOException e) {
      throw new CaseProblem("the folder cannot be read");
    }
    if (entries.isEmpty()) {
      throw new CaseProblem("the folder holds no case: put files that end in .json there");
    }
    List<DrillCase> cases = new ArrayList<>();
    for (Entry entry : entries) {
      String name = entry.file() + ".json";
      if (!entry.name().equals(entry.file())) {
        name += ": " + entry.name();
      }
      if (!imagined.tells(entry.situation())) {
        throw new CaseProblem(
            Printable.shown(name) + ": too little is told in it for the rules to say anything");
      }
      cases.add(new DrillCase(name, entry.situation()));
    }
    return cases;
  }
}
