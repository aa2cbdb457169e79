package insidelift.engine.proof;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.proof.laps.SetAside;
import insidelift.engine.proof.statistics.Assumptions;
import insidelift.shared.casefile.JsonOutput;
import java.util.Optional;

/** A proof as JSON; what is not known is null, never left out. */
final class ProofJson {

  private ProofJson() {}

  static String write(Proof proof) {
    return JsonOutput.pretty(object(proof));
  }

  private static ObjectNode object(Proof proof) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("schema", 1);
    json.put("verdict", proof.verdict().id());
    json.put("sentence", proof.sentence());
    Optional<Shift> shift = proof.shift();
    json.put("shiftSeconds", shift.map(Shift::seconds).orElse(null));
    json.put("lowSeconds", shift.map(Shift::low).orElse(null));
    json.put("highSeconds", shift.map(Shift::high).orElse(null));
    json.put("confidence", Assumptions.CONFIDENCE);
    MoreLaps more = proof.moreLaps();
    json.put("moreLaps", more.laps());
    json.putObject("moreLapsPlan")
        .put("inEachRun", more.inEachRun())
        .put("returnRun", more.returnRun())
        .put("enough", more.enough());
    ArrayNode aside = json.putArray("setAside");
    for (SetAside lap : proof.setAside()) {
      aside
          .addObject()
          .put("run", lap.run())
          .put("lap", lap.lap())
          .put("seconds", lap.seconds())
          .put("kind", lap.kind().id())
          .put("reason", lap.reason());
    }
    ArrayNode runs = json.putArray("runs");
    for (Proof.Run run : proof.runs()) {
      ObjectNode node = runs.addObject();
      node.put("role", run.role()).put("name", run.name());
      node.put("driven", run.driven()).put("counted", run.counted());
      node.put("effectiveLaps", finite(run.effective()));
    }
    json.put(
        "effectiveLaps", finite(proof.runs().stream().mapToDouble(Proof.Run::effective).sum()));
    json.put("autocorrelation", finite(proof.autocorrelation().orElse(Double.NaN)));
    json.put("autocorrelationUsed", finite(proof.autocorrelationUsed().orElse(Double.NaN)));
    proof
        .drift()
        .ifPresentOrElse(
            drift ->
                json.putObject("drift")
                    .put("method", drift.method().id())
                    .put("secondsPerLap", finite(drift.secondsPerLap()))
                    .put("carriedSeconds", finite(drift.carriedSeconds())),
            () -> json.putNull("drift"));
    proof
        .tests()
        .ifPresentOrElse(
            tests -> {
              json.putObject("welch")
                  .put("t", finite(tests.welch().t()))
                  .put("df", finite(tests.welch().df()))
                  .put("p", finite(tests.welch().p()));
              json.putObject("rankSum")
                  .put("u", finite(tests.rankSum().u()))
                  .put("p", finite(tests.rankSum().p()));
            },
            () -> {
              json.putNull("welch");
              json.putNull("rankSum");
            });
    json.put("feel", proof.feel().id());
    ArrayNode warnings = json.putArray("warnings");
    proof.warnings().forEach(warnings::add);
    return json;
  }

  /** To a ten-thousandth, more than any of these values is good for; null for no number. */
  private static Double finite(double value) {
    return Double.isFinite(value) ? Math.round(value * 10_000) / 10_000.0 : null;
  }
}
