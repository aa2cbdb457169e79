package insidelift.console.fuzz;

import insidelift.engine.consultation.session.SavedConsultation;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Notice;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.learning.Experience;
import insidelift.engine.logbook.use.LogExport;
import insidelift.engine.logbook.use.LogTables;
import insidelift.engine.logbook.use.NextRun;
import insidelift.engine.logbook.use.OwnLog;
import insidelift.engine.logbook.use.TrendPlot;
import insidelift.engine.training.card.StudyLog;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.Feedback;
import insidelift.engine.training.drill.Judgement;
import insidelift.engine.training.drill.ResultSheet;
import insidelift.engine.units.Units;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/** The files of the data folder, which other programs and failing disks may have written. */
final class GivenLog {

  private static final String HEADER =
      "{\"n\":1,\"at\":\"2026-04-12T09:00:00Z\",\"kind\":\"logbook\",\"entry\":{\"version\":1,\"about\":\"\"}";

  private GivenLog() {}

  /** Each line of the input gets the beginning and the check that let it be read. */
  static void framed(byte[] bytes) throws IOException, LogbookProblem {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    checked(HEADER.getBytes(StandardCharsets.UTF_8), file);
    int number = 1;
    for (String line : new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1)) {
      if (!line.isEmpty()) {
        number++;
        String body = "{\"n\":" + number + ",\"at\":\"2026-04-12T09:00:00Z\"," + line;
        checked(body.getBytes(StandardCharsets.ISO_8859_1), file);
      }
    }
    read(Folder.with(Logbook.FILE, file.toByteArray()));
  }

  static void raw(byte[] bytes) throws IOException, LogbookProblem {
    read(Folder.with(Logbook.FILE, bytes));
  }

  private static void checked(byte[] body, ByteArrayOutputStream file) {
    CRC32 crc = new CRC32();
    crc.update(body);
    String end = ",\"check\":\"" + HexFormat.of().toHexDigits((int) crc.getValue()) + "\"}\n";
    file.writeBytes(body);
    file.writeBytes(end.getBytes(StandardCharsets.US_ASCII));
  }

  private static void read(Path folder) throws LogbookProblem {
    Logbook book = Logbook.read(folder);
    Shown.lines(LogTables.days(book));
    book.days().forEach(day -> Shown.lines(LogTables.day(book, day.number())));
    List<Numbered<RunEntry>> runs = book.runs();
    runs.forEach(run -> Shown.lines(LogTables.run(book, run.number(), Units.METRIC)));
    Shown.lines(TrendPlot.lines(runs));
    json(LogExport.json(book));
    LogExport.csv(book).values().forEach(GivenLog::csv);
    Experience experience = Experience.of(book);
    for (Numbered<RunEntry> run : runs) {
      RunEntry entry = run.entry();
      int track = book.day(entry.day()).track();
      Shown.lines(experience.lines(entry.kart(), track));
      NextRun.of(book, entry.day(), LocalDate.EPOCH, entry.kart(), entry.driver());
    }
    Optional<OwnLog> own = OwnLog.ofLastRun(folder, book);
    if (own.isPresent()) {
      Shown.lines(own.get().lines(Situation.UNKNOWN, Target.advisor().vocabulary()));
      Situation filled = own.get().fill(Situation.UNKNOWN, Target.advisor().vocabulary());
      Target.advisor().advise(filled);
    }
    book.notices().stream().map(Notice::sentence).forEach(Shown::line);
  }

  private static void json(String json) {
    int wrong = Shown.firstUnprintable(json, true);
    if (wrong >= 0) {
      throw new AssertionError("unprintable in the JSON export at " + wrong);
    }
  }

  private static void csv(String csv) {
    if (Shown.firstUnprintable(csv.replace("\t", ""), true) >= 0) {
      throw new AssertionError("unprintable in the CSV export: " + csv);
    }
    for (String line : csv.split("\r\n", -1)) {
      if (line.startsWith("=") || line.startsWith("+") || line.startsWith("@")) {
        throw new AssertionError("a formula in the CSV export: " + line);
      }
    }
  }

  /** An attempt whose moves are the lines of the input, replayed and judged. */
  static void attempt(byte[] bytes) {
    List<String> moves =
        new String(bytes, StandardCharsets.UTF_8).lines().filter(line -> !line.isBlank()).toList();
    Situation hidden =
        Situation.UNKNOWN
            .with("water", "dry")
            .with("mid-corner", "understeer")
            .with("play", "some");
    AttemptEntry attempt =
        new AttemptEntry("Ada Quill", "3", hidden, moves, LocalDate.of(2026, 4, 12));
    Drill drill;
    try {
      drill = ResultSheet.again(Target.advisor(), Target.next(), attempt);
    } catch (IllegalArgumentException e) {
      // Announced: a move that is none in this build.
      Shown.message(e);
      return;
    }
    Judgement judged = new Judgement(Target.advisor(), Target.next(), drill);
    Feedback.on(Target.advisor(), judged)
        .forEach(
            remark -> {
              Shown.line(remark.what());
              Shown.lines(remark.ledger());
            });
    Shown.lines(
        new ResultSheet(Target.advisor(), Target.next(), List.of(new Numbered<>(2, attempt, false)))
            .lines());
  }

  static void kept(byte[] bytes) throws IOException, LogbookProblem {
    Path folder = Folder.with("open-consultation.json", bytes);
    Optional<SavedConsultation.Unfinished> kept =
        new SavedConsultation(folder, Target.advisor().vocabulary()).unfinished();
    if (kept.isEmpty()) {
      try {
        new CaseReader(Target.advisor().vocabulary()).read(GivenFiles.in(bytes));
        throw new AssertionError("a case that was not taken up");
      } catch (insidelift.shared.situation.CaseProblem e) {
        Shown.message(e);
      }
    }
    StudyLog study = new StudyLog(Folder.with("training/" + Logbook.FILE, bytes));
    study.attempts();
    study.reviews("Ada Quill");
  }
}
