package insidelift.console.start;

import insidelift.console.advice.AdviseCommand;
import insidelift.console.advice.CardCommand;
import insidelift.console.advice.ProveCommand;
import insidelift.console.advice.SheetCommand;
import insidelift.console.cli.Decimal;
import insidelift.console.cli.Misunderstood;
import insidelift.console.cli.UnitsOption;
import insidelift.console.demo.DemoCommand;
import insidelift.console.kart.GaugeCommand;
import insidelift.console.kart.PicturesCommand;
import insidelift.console.kart.PositionsCommand;
import insidelift.console.kart.PredictCommand;
import insidelift.console.kart.ToeCommand;
import insidelift.console.learning.AuditCommand;
import insidelift.console.learning.CardsCommand;
import insidelift.console.learning.DrillCommand;
import insidelift.console.learning.LessonsCommand;
import insidelift.console.learning.NotesCommand;
import insidelift.console.log.LogCommand;
import insidelift.console.terminal.Outputs;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line: the consultation by itself, and a verb for everything else. */
@Command(
    name = "insidelift",
    versionProvider = Version.class,
    mixinStandardHelpOptions = true,
    header = {
      "An advisor for the front end of a racing kart: what to change, and why.",
      "",
      "For example:",
      "  insidelift                               asks, and answers",
      "  insidelift demo                          shows an invented day",
      "  insidelift advise my-case.json           answers for a file",
      "  insidelift card last --out card.html     the last answer, to print",
      "  insidelift notes                         what it all stands on",
      ""
    },
    description = {
      "",
      "Without a verb it asks, and answers with the next camber or caster change.",
      "It is no substitute for the chassis maker's manual, the rule book or a competent person.",
      ""
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done (also when the advice is to hold, or to fix something first)",
      "1:failed: a file cannot be read or used",
      "2:the command line is not understood",
      "129:the terminal went away",
      "130:left with Ctrl-C"
    })
public final class Insidelift implements Runnable {

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  private int consulted;

  /** Every verb, in the order in which help shows them. */
  static Map<String, Class<?>> verbs() {
    Map<String, Class<?>> verbs = new LinkedHashMap<>();
    verbs.put("say", SayCommand.class);
    verbs.put("advise", AdviseCommand.class);
    verbs.put("card", CardCommand.class);
    verbs.put("sheet", SheetCommand.class);
    verbs.put("demo", DemoCommand.class);
    verbs.put("pictures", PicturesCommand.class);
    verbs.put("predict", PredictCommand.class);
    verbs.put("positions", PositionsCommand.class);
    verbs.put("gauge", GaugeCommand.class);
    verbs.put("toe", ToeCommand.class);
    verbs.put("manual", ManualCommand.class);
    verbs.put("prove", ProveCommand.class);
    verbs.put("log", LogCommand.class);
    verbs.put("notes", NotesCommand.class);
    verbs.put("lessons", LessonsCommand.class);
    verbs.put("cards", CardsCommand.class);
    verbs.put("drill", DrillCommand.class);
    verbs.put("audit", AuditCommand.class);
    verbs.put("rehearse", RehearseCommand.class);
    return verbs;
  }

  /** The whole command line, with every verb. */
  public static CommandLine commandLine() {
    return commandLine(new Insidelift(), verbs());
  }

  private static CommandLine commandLine(Insidelift top, Map<String, Class<?>> verbs) {
    CommandLine line = new CommandLine(top);
    // A word that begins with @ is a word: no file is read that no verb names.
    line.setExpandAtFiles(false);
    verbs.forEach(line::addSubcommand);
    line.getHelpSectionMap().remove(UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING);
    line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, VerbList::of);
    return line;
  }

  /**
   * The verbs that a command line needs: the one it opens with, or all. To find out what the
   * sixteen others understand takes longer than most of them take to answer.
   */
  private static Map<String, Class<?>> needed(String... args) {
    Map<String, Class<?>> all = verbs();
    Class<?> wanted = all.get(args[0]);
    return wanted == null ? all : Map.of(args[0], wanted);
  }

  /** Understands the words of a command line, and does what they ask for. */
  static int execute(String... args) {
    // Its warnings would print what was typed as it stands.
    CommandLine.tracer().setLevel(CommandLine.TraceLevel.OFF);
    Insidelift top = new Insidelift();
    CommandLine line =
        commandLine(top, needed(args))
            .setOut(Outputs.writer(System.out))
            .setErr(Outputs.writer(System.err))
            .registerConverter(Double.class, new Decimal())
            .registerConverter(double.class, new Decimal())
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setParameterExceptionHandler(Insidelift::misunderstood)
            .setExecutionExceptionHandler((e, broken, parsed) -> Main.broke(e, broken.getErr()));
    int code = line.execute(args);
    return code == 0 ? top.consulted : code;
  }

  @Override
  public void run() {
    consulted =
        Main.consult(
            spec.commandLine().getOut(),
            spec.commandLine().getErr(),
            units.chosen(),
            Optional.empty());
  }

  private static int misunderstood(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    line.getErr().println("insidelift: " + Misunderstood.words(e));
    line.getErr().println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
    return line.getCommandSpec().exitCodeOnInvalidInput();
  }
}
