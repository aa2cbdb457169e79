package insidelift.console.kart;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import insidelift.console.cli.CaseSource;
import insidelift.console.cli.InputFile;
import insidelift.console.cli.LapFile;
import insidelift.console.cli.OverlayOption;
import insidelift.console.cli.UnitsOption;
import insidelift.console.picture.TextPicture;
import insidelift.console.picture.TextPictures;
import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.advice.ChangeNow;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.effect.ChangeCurves;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.laps.LapColumns;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.casefile.JsonInput;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code pictures CASE}: what the advice does, drawn in characters. */
@Command(
    name = "pictures",
    mixinStandardHelpOptions = true,
    header = "Draws a case in characters: sweep, lift-off, tyre faces, laps.",
    description = {
      "",
      "For example:",
      "  insidelift pictures my-case.json",
      "  insidelift pictures my-case.json --sentences",
      "The kart is drawn before and after what is advised now, or as it is where nothing moves.",
      "Tyre faces are drawn where the case has measured temperatures.",
      ""
    })
public final class PicturesCommand implements Callable<Integer> {

  @Parameters(paramLabel = CaseSource.LABEL, description = CaseSource.WAYS)
  private String file;

  @Option(
      names = "--sentences",
      description = "one sentence for each picture instead, as for a screen reader")
  private boolean sentences;

  @Option(
      names = "--laps",
      arity = "2",
      paramLabel = "LAPS",
      description = "lap files before and after a change, drawn on one scale of time")
  private List<String> laps = List.of();

  @Mixin private OverlayOption overlay;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  /** A case with what it measured, which the situation keeps only as a word. */
  private record Measured(Situation situation, JsonNode temperatures) {}

  @Override
  public Integer call() {
    String name = new CaseSource(file).shown();
    List<TextPicture> pictures = new ArrayList<>();
    try {
      Advisor advisor = overlay.beside(Advisor.load(units.chosen()));
      pictures.addAll(pictures(advisor, read(advisor, name)));
      if (!laps.isEmpty()) {
        pictures.add(TextPictures.laps(Proof.of(laps(0), laps(1))));
      }
    } catch (RefusedInputException e) {
      return failed(name + ": kart." + Text.safe(e.getMessage()));
    } catch (CaseProblem | LogbookProblem | UnreadableLapTimes | IllegalArgumentException e) {
      return failed(Text.safe(e.getMessage()));
    }
    Text text = new Text(Text.WIDTH);
    for (TextPicture picture : pictures) {
      if (!sentences) {
        text.heading(picture.title());
        picture.lines().forEach(text::line);
      }
      text.paragraph(picture.sentence());
    }
    PrintWriter out = spec.commandLine().getOut();
    Glyphs.forOutput(Outputs.charset(System.out)).fit(text.lines()).forEach(out::println);
    out.flush();
    return 0;
  }

  private LapTimes laps(int which) throws UnreadableLapTimes, CaseProblem {
    return LapFile.read(laps.get(which), LapColumns.STANDARD);
  }

  private Measured read(Advisor advisor, String name) throws CaseProblem, LogbookProblem {
    CaseSource source = new CaseSource(file);
    try {
      if (!source.isFile()) {
        // What was measured is not kept: the situation has only what it shows.
        return new Measured(
            source.read(advisor.vocabulary(), DataFolder::find).situation(),
            MissingNode.getInstance());
      }
      return InputFile.read(
          file,
          in -> {
            // One byte over the limit is enough for the reader to refuse the file as too large.
            byte[] bytes = in.readNBytes(InputLimits.MAX_BYTES + 1);
            Situation situation =
                new CaseReader(advisor.vocabulary()).read(new ByteArrayInputStream(bytes));
            return new Measured(situation, temperatures(bytes));
          });
    } catch (CaseProblem e) {
      throw new CaseProblem(name + ": " + e.getMessage());
    }
  }

  private static JsonNode temperatures(byte[] bytes) throws IOException, CaseProblem {
    return JsonInput.read(new ByteArrayInputStream(bytes)).node().at("/answers/front-temps");
  }

  private List<TextPicture> pictures(Advisor advisor, Measured measured) {
    ChangeEffect effect =
        ChangeNow.orNone(measured.situation(), advisor.advise(measured.situation()));
    List<TextPicture> pictures = new ArrayList<>();
    ChangeCurves curves = ChangeCurves.of(effect);
    pictures.add(TextPictures.sweep(effect, curves));
    pictures.add(TextPictures.liftOverBraking(effect, curves));
    pictures.add(TextPictures.liftOverSteer(effect, curves));
    if (measured.temperatures().isObject()) {
      pictures.add(
          TextPictures.faces(
              face(measured.temperatures().path("left")),
              face(measured.temperatures().path("right")),
              units.chosen().temperature()));
    }
    return pictures;
  }

  private static EdgeTemperatures face(JsonNode side) {
    return new EdgeTemperatures(
        side.path("inner").asDouble(),
        side.path("middle").asDouble(),
        side.path("outer").asDouble());
  }

  private int failed(String why) {
    spec.commandLine().getErr().println("insidelift: " + why);
    return ExitCode.FAILED;
  }
}
