package insidelift.engine.own;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.notes.Note;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.index.Premise;
import insidelift.shared.situation.CaseProblem;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads one claim of a shop's file: when it holds, what it contributes, why, and whose it is. */
final class OwnClaimReader {

  /** What every id, rule and source of a shop begins with. */
  static final String OWN = "own-";

  private static final Set<String> KEYS =
      Set.of(
          "id", "title", "when", "unless", "then", "because", "why", "source", "caution", "feel",
          "undo", "do", "review");

  private static final int ID_LENGTH = 40;
  private static final int TITLE_LENGTH = 90;
  private static final int TEXT_LENGTH = 400;

  /** The clause goes into a summary of one glance, behind whose rule it is. */
  private static final int BECAUSE_LENGTH = 45;

  private final String shop;
  private final String file;
  private final Advisor base;

  OwnClaimReader(String shop, String file, Advisor base) {
    this.shop = shop;
    this.file = file;
    this.base = base;
  }

  OwnClaim read(JsonPlace claim, Map<String, Integer> lines) throws CaseProblem {
    claim.object(KEYS);
    String id = Words.text(claim.need("id"), ID_LENGTH);
    if (!id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      throw claim.need("id").problem("an id is small letters, digits and single hyphens");
    }
    String title = Words.text(claim.need("title"), TITLE_LENGTH);
    String source = Words.text(claim.need("source"), TEXT_LENGTH);
    List<Premise> premises = new ArrayList<>(answers(claim.need("when"), false));
    if (premises.isEmpty()) {
      throw claim.need("when").problem("a claim rests on at least one answer");
    }
    if (claim.at("unless").isPresent()) {
      premises.addAll(answers(claim.need("unless"), true));
    }
    OwnContributions contributions =
        new OwnContributions(OWN + id, file, lines.getOrDefault(id, 1), premises, base);
    contributions.read(claim.need("then"));
    for (String section : contributions.needs()) {
      claim.need(section);
    }
    Map<String, List<String>> sections = new LinkedHashMap<>();
    sections.put("Claim", List.of(whose() + title + "."));
    sections.put("Why", List.of(Words.text(claim.need("why"), TEXT_LENGTH)));
    section(claim, "do", "Do", sections);
    section(claim, "caution", "Caution", sections);
    section(claim, "feel", "Feel", sections);
    section(claim, "undo", "Undo", sections);
    Optional<JsonPlace> because = claim.at("because");
    String clause =
        because.isPresent()
            ? "by this shop's own rule, " + Words.text(because.get(), BECAUSE_LENGTH)
            : "";
    Note note =
        new Note(
            OWN + id,
            contributions.checks() ? "check" : "claim",
            contributions.lever().map(Lever::id).orElse("both"),
            whose() + title,
            clause,
            List.of(OWN + id),
            false,
            review(claim.need("review")),
            sections,
            List.of());
    return new OwnClaim(note, contributions.rules(), whose() + source);
  }

  private String whose() {
    return "Own rule of " + shop + ": ";
  }

  private static void section(
      JsonPlace claim, String key, String heading, Map<String, List<String>> sections)
      throws CaseProblem {
    Optional<JsonPlace> place = claim.at(key);
    if (place.isPresent()) {
      sections.put(heading, List.of(Words.text(place.get(), TEXT_LENGTH)));
    }
  }

  private static String review(JsonPlace place) throws CaseProblem {
    try {
      return LocalDate.parse(place.word()).toString();
    } catch (DateTimeParseException e) {
      throw place.problem("this must be a day as in 2027-03-31");
    }
  }

  /** The conditions: a question, and the answer or answers of which one must be given. */
  private List<Premise> answers(JsonPlace conditions, boolean absent) throws CaseProblem {
    conditions.object(
        Set.copyOf(base.vocabulary().questions().stream().map(Question::id).toList()));
    List<Premise> premises = new ArrayList<>();
    for (Iterator<String> names = conditions.node().fieldNames(); names.hasNext(); ) {
      String question = names.next();
      List<String> legal =
          base.vocabulary().question(question).orElseThrow().values().stream()
              .map(value -> value.id())
              .toList();
      List<String> values = Words.someOf(conditions.need(question), legal);
      premises.add(new Premise.Told(List.of(question), values, absent));
    }
    return premises;
  }

  /** The ids of constants that a file may name. */
  static <E extends Enum<E> & Named> List<String> ids(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Named::id).toList();
  }
}
