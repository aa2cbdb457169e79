package insidelift.console.demo;

import insidelift.console.cli.OutputFile;
import insidelift.console.cli.UnitsOption;
import insidelift.console.demo.Story.Scene;
import insidelift.console.page.Pages;
import insidelift.console.page.PitCardMaker;
import insidelift.console.picture.TextPicture;
import insidelift.console.picture.TextPictures;
import insidelift.console.report.AdviceText;
import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code demo}: a day at a track, played without a question. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    header = "Plays an invented day at a track: nothing to type, nothing is kept.",
    description = {
      "",
      "For example:",
      "  insidelift demo",
      "  insidelift demo --fast --cards my-folder",
      "The people, the kart and the lap times are invented; the answers are computed.",
      ""
    })
public final class DemoCommand implements Callable<Integer> {

  /** Long enough to read a few lines, short enough not to wait. Judged by eye. */
  private static final long PAUSE_MILLIS = 2500;

  @Option(names = "--fast", description = "without pauses; there are none outside a terminal")
  private boolean fast;

  @Option(
      names = "--cards",
      paramLabel = "FOLDER",
      description = "write the pit card of each scene into this folder, over older ones")
  private String folder;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    Advisor advisor = Advisor.load(units.chosen());
    Story story = Story.read(advisor.vocabulary());
    show(new Text(Text.WIDTH).heading(story.title()).paragraph(story.opening()));
    int number = 1;
    for (Scene scene : story.scenes()) {
      pause();
      Advice advice = advisor.advise(scene.situation());
      show(told(scene, advisor.vocabulary()));
      pause();
      show(answered(advice, scene.situation()));
      if (folder != null && !card(scene, advice, number)) {
        return ExitCode.FAILED;
      }
      if (scene.proof().isPresent()) {
        pause();
        show(proved(scene));
      }
      number++;
    }
    pause();
    show(new Text(Text.WIDTH).paragraph(story.closing()));
    return 0;
  }

  private static Text told(Scene scene, Vocabulary vocabulary) {
    Text text = new Text(Text.WIDTH).heading(scene.title()).paragraph(scene.told()).blank();
    for (Map.Entry<String, String> answer : scene.situation().answers().entrySet()) {
      text.item(
          "  " + answer.getKey() + ": ",
          vocabulary
              .question(answer.getKey())
              .flatMap(question -> question.value(answer.getValue()))
              .map(Vocabulary.Value::words)
              .orElse(answer.getValue()));
    }
    return text;
  }

  /** The answer, and what else there is to read. */
  private static Text answered(Advice advice, Situation situation) {
    AdviceText words = new AdviceText(Text.WIDTH);
    Part answer = words.answer(advice, situation);
    Text text = new Text(Text.WIDTH).line(answer.title()).line("");
    answer.lines().forEach(text::line);
    return text.blank()
        .paragraph("Behind every answer there is more to read: " + words.names(advice) + ".");
  }

  private static Text proved(Scene scene) {
    Text text = new Text(Text.WIDTH).paragraph(scene.drove()).blank();
    TextPicture laps = TextPictures.laps(scene.proof().orElseThrow());
    laps.lines().forEach(text::line);
    return text.blank().paragraph(laps.sentence());
  }

  private boolean card(Scene scene, Advice advice, int number) {
    Path file = Path.of(folder).resolve("card-" + number + ".html");
    String page =
        new Pages()
            .pitCard(
                PitCardMaker.card(
                    scene.situation(),
                    advice,
                    scene.title(),
                    LocalDate.now(ZoneId.systemDefault())));
    String shown = Printable.shown(file.toString(), 200);
    try {
      OutputFile.write(file.toString(), page, true);
    } catch (CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + shown + ": " + e.getMessage());
      return false;
    }
    show(new Text(Text.WIDTH).paragraph("The pit card is in " + shown + "."));
    return true;
  }

  private void show(Text text) {
    PrintWriter out = spec.commandLine().getOut();
    Glyphs.forOutput(Outputs.charset(System.out)).fit(text.lines()).forEach(out::println);
    out.println();
    out.flush();
  }

  private void pause() throws InterruptedException {
    if (!fast && watched()) {
      Thread.sleep(PAUSE_MILLIS);
    }
  }

  /** Whether somebody watches. */
  @SuppressWarnings(
      "SystemConsoleNull") // Newer Java has a console without a terminal: asked below.
  private static boolean watched() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // Java 22 and newer can tell; this is built for Java 17, which has a console on terminals
      // only.
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
