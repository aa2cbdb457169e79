package insidelift.console.learning;

import insidelift.console.cli.OutputFile;
import insidelift.console.cli.UnitsOption;
import insidelift.console.page.NotesPage;
import insidelift.console.page.Pages;
import insidelift.console.report.Glyphs;
import insidelift.console.report.NoteText;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.notes.NoteSearch;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notes [WORDS]}: the notes that the rules stand on, by id or by words. */
@Command(
    name = "notes",
    mixinStandardHelpOptions = true,
    header = "Lists the notes, shows one, or finds those with some words in them.",
    description = {
      "",
      "Every rule and every question stands on a note of the same id. Words find every note that"
          + " holds them all; if there is only one, it is shown.",
      ""
    })
public final class NotesCommand implements Callable<Integer> {

  @Parameters(paramLabel = "WORDS", arity = "0..*", description = "the note to show, or words")
  private List<String> words = List.of();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write all notes into this file as one page")
  private String page;

  @Option(names = "--force", description = "replace the file if it exists already")
  private boolean force;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (page != null && !words.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "the page has all notes; leave the words out, or --out");
    }
    PrintWriter out = spec.commandLine().getOut();
    NoteBook notes = NoteBook.open(units.chosen());
    if (page != null) {
      return written(notes, out);
    }
    List<Note> found = found(notes);
    if (found.isEmpty()) {
      spec.commandLine()
          .getErr()
          .println(
              "insidelift: there is no note %s; \"insidelift notes\" lists them all"
                  .formatted(Printable.quoted(String.join(" ", words))));
      return ExitCode.FAILED;
    }
    if (found.size() == 1) {
      Text text = new Text(Text.WIDTH);
      NoteText.write(found.get(0), notes, text);
      Glyphs.forOutput(Outputs.charset(System.out)).fit(text.lines()).forEach(out::println);
    } else {
      found.forEach(note -> out.printf("%-30s %s%n", note.id(), note.title()));
    }
    out.flush();
    return 0;
  }

  /** All notes for no word, one for its id, else those that hold the words. */
  private List<Note> found(NoteBook notes) {
    if (words.isEmpty()) {
      return notes.ids().stream().map(notes::note).toList();
    }
    if (words.size() == 1 && notes.find(words.get(0)).isPresent()) {
      return List.of(notes.note(words.get(0)));
    }
    return new NoteSearch(notes).find(words);
  }

  private int written(NoteBook notes, PrintWriter out) {
    String shown = Printable.shown(page, 200);
    try {
      OutputFile.write(page, new Pages().notes(NotesPage.of(notes)), force);
    } catch (CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + shown + ": " + e.getMessage());
      return ExitCode.FAILED;
    }
    out.println("The notes are in " + shown + ".");
    return 0;
  }
}
