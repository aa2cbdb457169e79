package insidelift.engine.logbook.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The JSON shape of what a trainee did. */
final class StudyJson {

  private static final Set<String> REVIEW = Set.of("trainee", "card", "quality", "day");
  private static final Set<String> ATTEMPT =
      Set.of("trainee", "case", "answers", "numbers", "setup", "moves", "day");

  private StudyJson() {}

  static ObjectNode write(ReviewEntry review) {
    return EntryJson.object()
        .put("trainee", review.trainee())
        .put("card", review.card())
        .put("quality", review.quality())
        .put("day", review.day().toString());
  }

  static ObjectNode write(AttemptEntry attempt) {
    ObjectNode json =
        EntryJson.object().put("trainee", attempt.trainee()).put("case", attempt.source());
    SituationJson.write(attempt.hidden(), json);
    ArrayNode moves = json.putArray("moves");
    attempt.moves().forEach(moves::add);
    return json.put("day", attempt.day().toString());
  }

  static ReviewEntry review(JsonPlace place) throws CaseProblem {
    place.object(REVIEW);
    return new ReviewEntry(
        place.need("trainee").word(),
        place.need("card").word(),
        place.need("quality").integer(),
        EntryJson.date(place.need("day")));
  }

  static AttemptEntry attempt(JsonPlace place) throws CaseProblem {
    place.object(ATTEMPT);
    JsonPlace held = place.need("moves");
    if (!held.node().isArray()) {
      throw held.problem("this must be a list in brackets");
    }
    List<String> moves = new ArrayList<>();
    for (JsonPlace move : held.members()) {
      moves.add(move.word());
    }
    return new AttemptEntry(
        place.need("trainee").word(),
        place.need("case").word(),
        SituationJson.read(place),
        moves,
        EntryJson.date(place.need("day")));
  }
}
