package insidelift.console;

import insidelift.shared.Vocabulary;
import insidelift.shared.situation.CaseWriter;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Consultations that somebody left, as the program keeps them. */
final class Kept {

  static final String FILE = "open-consultation.json";

  private static final Vocabulary VOCABULARY = Vocabulary.load();

  /** A wet track, and nothing else yet. */
  static final Situation BEGUN = wet(Set.of());

  /** A wet track and "I do not know" to every other question: only the settings are still asked. */
  static final Situation ALL_BUT_THE_SETTINGS =
      wet(
          new LinkedHashSet<>(
              VOCABULARY.questions().stream()
                  .map(Vocabulary.Question::id)
                  .filter(id -> !id.equals("water"))
                  .toList()));

  private Kept() {}

  private static Situation wet(Set<String> declined) {
    return new Situation(
        new LinkedHashMap<>(Map.of("water", "wet")), Map.of(), Kart.UNKNOWN, declined);
  }

  /** Keeps one in a folder. */
  static void in(Path folder, Situation situation) {
    Launcher.file(folder, FILE, new CaseWriter(VOCABULARY).write(situation));
  }
}
