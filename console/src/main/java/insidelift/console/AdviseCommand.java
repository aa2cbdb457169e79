package insidelift.console;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.CaseReader;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code advise CASE}: the advice for a case file. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    header = "Gives the advice for a case file.",
    description = {"", "The same advice as the consultation gives, without its questions.", ""})
final class AdviseCommand implements Callable<Integer> {

  @Parameters(paramLabel = "CASE", description = "the case file, or - for standard input")
  private String file;

  @Option(names = "--json", description = "print the advice as JSON")
  private boolean json;

  @Mixin private OverlayOption overlay;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Advisor advisor;
    try {
      advisor = overlay.beside(Advisor.load());
    } catch (CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + e.getMessage());
      return Insidelift.FAILED;
    }
    String name = file.equals("-") ? "standard input" : Printable.shown(file, 200);
    Situation situation;
    try {
      situation = InputFile.read(file, in -> new CaseReader(advisor.vocabulary()).read(in));
    } catch (CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + name + ": " + e.getMessage());
      return Insidelift.FAILED;
    }
    Advice advice;
    try {
      advice = advisor.advise(situation);
    } catch (RefusedInputException e) {
      spec.commandLine()
          .getErr()
          .println("insidelift: " + name + ": kart." + Text.safe(e.getMessage()));
      return Insidelift.FAILED;
    }
    if (json) {
      out.println(JsonFileCommand.pretty(advice));
    } else {
      Glyphs glyphs = Glyphs.forOutput(Insidelift.charset(System.out));
      glyphs.fit(new AdviceText(Text.WIDTH).lines(advice)).forEach(out::println);
    }
    out.flush();
    return 0;
  }
}
