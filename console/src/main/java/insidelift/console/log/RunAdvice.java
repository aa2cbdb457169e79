package insidelift.console.log;

import insidelift.console.cli.InputFile;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.session.SavedConsultation;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Option;

/** The advice given before a run, and whether the run was driven with it. */
final class RunAdvice {

  @Option(
      names = "--advised",
      paramLabel = "CASE",
      description = "the case the advice was for; without it the last consultation")
  private String advised;

  @Option(
      names = "--took",
      paramLabel = "LEVER",
      description = "advice taken in this run: camber or caster")
  private List<Lever> took = new ArrayList<>();

  @Option(
      names = "--declined",
      paramLabel = "LEVER=REASON",
      description = "advice not taken, and why")
  private final Map<Lever, String> declined = new LinkedHashMap<>();

  /** What became of the advice, to be put on a run. */
  UnaryOperator<RunEntry> read(Path folder) throws CaseProblem {
    if (took.isEmpty() && declined.isEmpty()) {
      if (advised != null) {
        throw new IllegalArgumentException(
            "--advised: say what became of it with --took or --declined");
      }
      return run -> run;
    }
    Advisor advisor = Advisor.load();
    Situation situation = situation(folder, advisor.vocabulary());
    Advice advice;
    try {
      advice = advisor.advise(situation);
    } catch (RefusedInputException e) {
      throw new CaseProblem(name() + ": kart." + e.getMessage());
    }
    List<AdviceTaken> decisions = new ArrayList<>();
    took.forEach(lever -> decisions.add(decision(advice, lever, true, "")));
    declined.forEach((lever, reason) -> decisions.add(decision(advice, lever, false, reason)));
    return run -> run.withAdvice(decisions);
  }

  private Situation situation(Path folder, Vocabulary vocabulary) throws CaseProblem {
    if (advised != null) {
      return read(advised, new CaseReader(vocabulary));
    }
    try {
      return new SavedConsultation(folder, vocabulary)
          .finished()
          .orElseThrow(
              () ->
                  new IllegalArgumentException(
                      "which advice? There is no finished consultation here; name its case with"
                          + " --advised"));
    } catch (CaseProblem e) {
      throw new CaseProblem(name() + ": " + e.getMessage());
    }
  }

  private String name() {
    return advised == null ? "the last consultation" : Printable.shown(advised, 200);
  }

  private static AdviceTaken decision(Advice advice, Lever lever, boolean taken, String reason) {
    Suggestion moved =
        advice.suggestions().stream()
            .filter(suggestion -> suggestion.lever() == lever && suggestion.moves())
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        (taken ? "--took: " : "--declined: ")
                            + "that advice does not move "
                            + lever.id()));
    return new AdviceTaken(
        lever, moved.direction(), moved.degrees(), moved.reasons().get(0).note(), taken, reason);
  }

  /** A case file, with its name before every complaint. */
  static Situation read(String name, CaseReader reader) throws CaseProblem {
    try {
      return InputFile.read(name, reader::read);
    } catch (CaseProblem e) {
      throw new CaseProblem(Printable.shown(name, 200) + ": " + e.getMessage());
    }
  }
}
