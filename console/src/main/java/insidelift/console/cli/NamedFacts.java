package insidelift.console.cli;

import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Printable;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** What can be told of a kart, a driver or a track. */
public final class NamedFacts {

  @Option(
      names = "--answer",
      paramLabel = "QUESTION=VALUE",
      description = "what is always so, as in driver-strength=limited; repeat for more")
  private final Map<String, String> answers = new LinkedHashMap<>();

  @Option(names = "--note", paramLabel = "TEXT", description = "anything else worth keeping")
  private String note;

  /** The note, or the one before where none was given. */
  public String note(String before) {
    return note == null ? before : note;
  }

  /**
   * The answers on top of those before.
   *
   * @throws IllegalArgumentException if a word is not in the vocabulary
   */
  public Map<String, String> answers(Map<String, String> before) {
    Map<String, String> all = new LinkedHashMap<>(before);
    if (!answers.isEmpty()) {
      Vocabulary vocabulary = Vocabulary.load();
      answers.forEach((question, value) -> check(vocabulary, question, value));
      all.putAll(answers);
    }
    return all;
  }

  private static void check(Vocabulary vocabulary, String question, String value) {
    Vocabulary.Question known =
        vocabulary
            .question(question)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "--answer: there is no question " + Printable.quoted(question)));
    if (known.value(value).isEmpty()) {
      throw new IllegalArgumentException(
          "--answer: %s: %s is not one of %s"
              .formatted(
                  question,
                  Printable.quoted(value),
                  known.values().stream().map(v -> v.id()).collect(Collectors.joining(", "))));
    }
  }
}
