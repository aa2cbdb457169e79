package insidelift.console.report;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.use.OwnLog;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;

/**
 * Advice that the user's own log had a part in.
 *
 * @param advice the advice
 * @param lines what the log said
 */
public record AdviceWithLog(Advice advice, List<String> lines) {

  /** Where the log comes from. */
  public interface Source {
    OwnLog read() throws LogbookProblem;
  }

  public static AdviceWithLog of(Advisor advisor, Situation situation, Source source)
      throws LogbookProblem {
    OwnLog own = source.read();
    List<String> lines = new ArrayList<>(own.lines(situation, advisor.vocabulary()));
    Advice advice = advisor.advise(own.fill(situation, advisor.vocabulary()));
    if (lines.isEmpty()) {
      lines.add("It says nothing about this kart, driver and track yet.");
    }
    return new AdviceWithLog(advice, List.copyOf(lines));
  }

  /** The advice with one key more. */
  public static ObjectNode json(Advice advice, List<String> lines) {
    ObjectNode json = JsonMapper.builder().build().valueToTree(advice);
    ArrayNode said = json.putArray("ownLog");
    lines.forEach(said::add);
    return json;
  }
}
