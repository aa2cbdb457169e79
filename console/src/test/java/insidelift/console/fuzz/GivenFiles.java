package insidelift.console.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.report.AuditLines;
import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.geometry.effect.Prediction;
import insidelift.engine.geometry.gauge.Gauge;
import insidelift.engine.geometry.gauge.GaugeReading;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.plausible.MeasuredKart;
import insidelift.engine.geometry.positions.Positions;
import insidelift.engine.geometry.toe.ToeJob;
import insidelift.engine.own.OwnKnowledge;
import insidelift.shared.advice.Advice;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.casefile.CaseWriter;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The JSON files that a user names. */
final class GivenFiles {

  /** Bytes of one answer as JSON; the longest advice has some 40 kB. */
  private static final int ANSWER = 2_000_000;

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private GivenFiles() {}

  static InputStream in(byte[] bytes) {
    return new ByteArrayInputStream(bytes);
  }

  static void caseFile(byte[] bytes) throws IOException, CaseProblem {
    CaseReader reader = new CaseReader(Target.advisor().vocabulary());
    Situation situation = reader.read(in(bytes));
    Situation again = reader.read(new CaseWriter(Target.advisor().vocabulary()).write(situation));
    if (!again.equals(situation)) {
      throw new AssertionError("written and read again it is another: " + again);
    }
  }

  static void advice(byte[] bytes) throws IOException, CaseProblem {
    Advisor advisor = Target.advisor();
    Situation situation = new CaseReader(advisor.vocabulary()).read(in(bytes));
    shown(advisor.advise(situation));
  }

  private static void shown(Advice advice) throws JsonProcessingException {
    String json = JSON.writeValueAsString(advice);
    if (json.length() > ANSWER) {
      throw new AssertionError("an advice of " + json.length() + " characters");
    }
    // Control characters are escaped in JSON, so what is left of them was never there.
    Shown.line(json);
    if (json.contains("\\u00")) {
      throw new AssertionError("a control character in the words of an advice");
    }
  }

  static void kart(byte[] bytes) throws JsonProcessingException {
    MeasuredKart measured = MeasuredKart.read(in(bytes), "kart.json");
    KartGeometry kart = measured.kart();
    Prediction prediction = Prediction.of(measured, List.of(), List.of(0.0, 1.5), -0.1);
    Shown.lines(prediction.lines());
    Shown.line(JSON.writeValueAsString(prediction.json()));
    ChangeEffect effect = ChangeEffect.of(kart, 0.5, -0.5, Corner.about(null, null));
    Shown.lines(effect.table());
    Shown.lines(effect.drawing().lines());
  }

  static void positions(byte[] bytes) throws JsonProcessingException {
    Positions positions = Positions.read(in(bytes), "positions.json");
    Shown.lines(positions.lines());
    Shown.line(JSON.writeValueAsString(positions.json()));
  }

  static void gauge(byte[] bytes) throws JsonProcessingException {
    GaugeReading reading = Gauge.read(in(bytes), "gauge.json");
    Shown.lines(reading.lines());
    Shown.line(JSON.writeValueAsString(reading.json()));
  }

  static void toe(byte[] bytes) throws JsonProcessingException {
    ToeJob job = ToeJob.read(in(bytes), "toe.json");
    Shown.lines(job.lines());
    Shown.line(JSON.writeValueAsString(job.json()));
  }

  static void own(byte[] bytes) throws IOException, CaseProblem {
    OwnKnowledge own = OwnKnowledge.read("own.json", in(bytes), Target.advisor());
    Advisor beside = own.beside(Target.advisor());
    shown(beside.advise(Situation.UNKNOWN));
    shown(beside.advise(Situation.UNKNOWN.with("water", "dry").with("mid-corner", "understeer")));
  }

  static void cases(byte[] bytes) throws IOException, CaseProblem {
    Path folder = Folder.with("a.json", bytes);
    CaseLibrary library = CaseLibrary.read(folder, Target.advisor().vocabulary());
    Shown.lines(AuditLines.of(library, library.disagreements(Target.advisor())));
    Target.drillCases().inFolder(folder);
    Files.delete(folder.resolve("a.json"));
  }
}
