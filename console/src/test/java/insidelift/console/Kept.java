package insidelift.console;

import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseWriter;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Consultations that somebody left, as the program keeps them. */
public final class Kept {

  static final String FILE = "open-consultation.json";

  private static final Vocabulary VOCABULARY = Vocabulary.load();

  /** A wet track, and nothing else yet. */
  static final Situation BEGUN = wet(Set.of());

  /** A wet track and "I do not know" to every other question: only the settings are still asked. */
  public static final Situation ALL_BUT_THE_SETTINGS =
      wet(
          new LinkedHashSet<>(
              VOCABULARY.questions().stream()
                  .map(Vocabulary.Question::id)
                  .filter(id -> !id.equals("water"))
                  .toList()));

  /** A measured kart that is good everywhere in the dry, and nothing left to ask. */
  public static final Situation GOOD = good();

  private Kept() {}

  private static Situation good() {
    Map<String, String> answers =
        new LinkedHashMap<>(
            Map.of("water", "dry", "turn-in", "good", "mid-corner", "good", "exit", "good"));
    Set<String> declined = new LinkedHashSet<>();
    for (Vocabulary.Question question : VOCABULARY.questions()) {
      if (!answers.containsKey(question.id())) {
        declined.add(question.id());
      }
    }
    Kart kart = Kart.UNKNOWN.with(Sides.both(Degrees.of(0.5)), Sides.both(Degrees.of(1)));
    return new Situation(answers, Map.of(), kart, declined);
  }

  private static Situation wet(Set<String> declined) {
    return new Situation(
        new LinkedHashMap<>(Map.of("water", "wet")), Map.of(), Kart.UNKNOWN, declined);
  }

  /** Keeps one in a folder. */
  public static void in(Path folder, Situation situation) {
    Launcher.file(folder, FILE, new CaseWriter(VOCABULARY).write(situation));
  }
}
