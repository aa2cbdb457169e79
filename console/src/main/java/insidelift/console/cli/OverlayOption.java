package insidelift.console.cli;

import insidelift.console.report.Text;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.own.OwnKnowledge;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** A shop's own knowledge: the file that is named, or the one in the user's own folder. */
public final class OverlayOption {

  @Option(
      names = "--overlay",
      paramLabel = "FILE",
      description =
          "a shop's own claims; without this option "
              + OwnKnowledge.FILE
              + " in your own folder, if it is there")
  private String file;

  /**
   * An advisor with the shop's claims beside its own; the same one where there are none.
   *
   * @throws CaseProblem if the file cannot be used; the message names it
   */
  public Advisor beside(Advisor advisor) throws CaseProblem {
    String named = file == null ? inOwnFolder() : file;
    if (named == null) {
      return advisor;
    }
    try {
      return InputFile.read(named, in -> OwnKnowledge.read(shortName(named), in, advisor))
          .beside(advisor);
    } catch (CaseProblem e) {
      throw new CaseProblem(Printable.shown(named, 200) + ": " + e.getMessage());
    }
  }

  private static String inOwnFolder() throws CaseProblem {
    try {
      Optional<Path> folder = DataFolder.findIfAny();
      if (folder.isEmpty() || Files.notExists(folder.get().resolve(OwnKnowledge.FILE))) {
        return null;
      }
      Path own = folder.get().resolve(OwnKnowledge.FILE);
      if (!Files.isRegularFile(own)) {
        throw new CaseProblem(
            Printable.shown(own.toString(), 200) + " is no ordinary file; move it away");
      }
      return own.toString();
    } catch (LogbookProblem e) {
      throw new CaseProblem(Text.safe(e.getMessage()));
    }
  }

  private static String shortName(String named) {
    return Printable.shown(String.valueOf(Path.of(named).getFileName()));
  }
}
