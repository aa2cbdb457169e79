package insidelift.console;

import insidelift.console.page.NotesPage;
import insidelift.console.page.Pages;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notes [ID]}: the notes that the rules stand on. */
@Command(
    name = "notes",
    mixinStandardHelpOptions = true,
    header = "Lists the notes, or shows one.",
    description = {"", "Every rule and every question stands on a note of the same id.", ""})
final class NotesCommand implements Callable<Integer> {

  @Parameters(paramLabel = "ID", arity = "0..1", description = "the note to show")
  private String id;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "write all notes into this file as one page")
  private String page;

  @Option(names = "--force", description = "replace the file if it exists already")
  private boolean force;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (page != null && id != null) {
      throw new ParameterException(
          spec.commandLine(), "the page has all notes; leave the ID out, or --html");
    }
    PrintWriter out = spec.commandLine().getOut();
    NoteBook notes = NoteBook.open();
    if (page != null) {
      return written(notes, out);
    }
    if (id == null) {
      for (String known : notes.ids()) {
        out.printf("%-30s %s%n", known, notes.note(known).title());
      }
    } else if (notes.find(id).isEmpty()) {
      spec.commandLine()
          .getErr()
          .println(
              "insidelift: there is no note %s; \"insidelift notes\" lists them all"
                  .formatted(Printable.quoted(id)));
      return Insidelift.FAILED;
    } else {
      Text text = new Text(Text.WIDTH);
      NoteText.write(notes.note(id), notes, text);
      Glyphs.forOutput(Insidelift.charset(System.out)).fit(text.lines()).forEach(out::println);
    }
    out.flush();
    return 0;
  }

  private int written(NoteBook notes, PrintWriter out) {
    String shown = Printable.shown(page, 200);
    try {
      OutputFile.write(page, new Pages().notes(NotesPage.of(notes)), force);
    } catch (CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + shown + ": " + e.getMessage());
      return Insidelift.FAILED;
    }
    out.println("The notes are in " + shown + ".");
    return 0;
  }

  /** A note as text. */
  static final class NoteText {

    private NoteText() {}

    static void write(Note note, NoteBook notes, Text text) {
      text.heading(note.title());
      note.sections()
          .forEach(
              (heading, blocks) -> {
                boolean only = note.sections().size() == 1;
                if (!only && !heading.equals("Claim")) {
                  text.blank().line(heading);
                }
                int number = 1;
                for (String block : blocks) {
                  String mark = heading.equals("Steps") ? "%2d. ".formatted(number++) : "  ";
                  text.item(mark, block);
                }
              });
      text.blank().line("Sources");
      note.sources()
          .forEach(
              source ->
                  text.item("  " + source + ": ", notes.bibliography().getOrDefault(source, "")));
      if (note.disputed()) {
        text.blank().paragraph("Disputed: the trade does not agree on this.");
      }
    }
  }
}
