package insidelift.console.advice;

import insidelift.console.cli.CaseSource;
import insidelift.console.cli.Habits;
import insidelift.console.cli.OverlayOption;
import insidelift.console.report.AdviceText;
import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.AdviceWithLog;
import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.session.AdvisorLoader;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.units.Units;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.AdviceJson;
import insidelift.shared.casefile.JsonOutput;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads a case file and prints the advice for it.
 *
 * @param file where the case comes from, as {@link CaseSource} names it
 * @param json whether the advice is printed as JSON
 * @param full whether all of it is printed, and not only the answer
 * @param units in which units it is told otherwise
 * @param overlay the shop's own claims
 * @param log the user's own log; null if it has no say
 */
public record CaseAdvice(
    String file,
    boolean json,
    boolean full,
    Supplier<Units> units,
    OverlayOption overlay,
    AdviceWithLog.Source log) {

  /**
   * What to do for words that name a case file and say nothing else but {@code --json}. Scripts ask
   * for that over and over, and it can be understood without a library.
   *
   * @return empty if the words are anything else
   */
  public static Optional<CaseAdvice> plain(String... args) {
    List<String> words = new ArrayList<>(List.of(args));
    if (words.isEmpty() || !words.remove(0).equals("advise")) {
      return Optional.empty();
    }
    boolean json = words.remove("--json");
    return words.size() == 1 && isFile(words.get(0))
        ? Optional.of(
            new CaseAdvice(words.get(0), json, false, Habits::units, new OverlayOption(), null))
        : Optional.empty();
  }

  private static boolean isFile(String word) {
    return word.equals("-") || !(word.isEmpty() || word.startsWith("-") || word.startsWith("@"));
  }

  /**
   * Prints the advice.
   *
   * @return the code to exit with
   */
  public int print(PrintWriter out, PrintWriter err) throws IOException {
    AdvisorLoader loader = AdvisorLoader.now(json ? Units.METRIC : units.get());
    CaseSource source = new CaseSource(file);
    Situation situation;
    try {
      situation = source.read(loader.vocabulary(), DataFolder::find).situation();
    } catch (CaseProblem e) {
      err.println("insidelift: " + source.shown() + ": " + e.getMessage());
      return ExitCode.FAILED;
    } catch (LogbookProblem e) {
      err.println("insidelift: " + Text.safe(e.getMessage()));
      return ExitCode.FAILED;
    }
    try {
      Advisor advisor = overlay.beside(loader.advisor());
      if (log == null) {
        lines(advisor.advise(situation), situation).forEach(out::println);
      } else {
        print(AdviceWithLog.of(advisor, situation, log), situation, out);
      }
    } catch (CaseProblem e) {
      err.println("insidelift: " + e.getMessage());
      return ExitCode.FAILED;
    } catch (LogbookProblem e) {
      err.println("insidelift: " + Text.safe(e.getMessage()));
      return ExitCode.FAILED;
    } catch (RefusedInputException e) {
      err.println("insidelift: " + source.shown() + ": kart." + Text.safe(e.getMessage()));
      return ExitCode.FAILED;
    }
    out.flush();
    return 0;
  }

  private List<String> lines(Advice advice, Situation situation) {
    if (json) {
      return List.of(AdviceJson.of(advice));
    }
    AdviceText words = new AdviceText(Text.WIDTH);
    if (full) {
      return shown(words.lines(advice, situation));
    }
    Part answer = words.answer(advice, situation);
    Text text = new Text(Text.WIDTH).heading(answer.title());
    answer.lines().forEach(text::line);
    return shown(text.line("").paragraph("With --full also: " + words.names(advice) + ".").lines());
  }

  private void print(AdviceWithLog known, Situation situation, PrintWriter out) {
    if (json) {
      out.println(JsonOutput.pretty(AdviceWithLog.json(known.advice(), known.lines())));
    } else {
      lines(known.advice(), situation).forEach(out::println);
      shown(new Text(Text.WIDTH).line("").heading("Your own log").lines()).forEach(out::println);
      shown(known.lines()).forEach(out::println);
    }
  }

  private static List<String> shown(List<String> lines) {
    return Glyphs.forOutput(Outputs.charset(System.out)).fit(lines);
  }
}
