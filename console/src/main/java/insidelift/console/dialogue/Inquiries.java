package insidelift.console.dialogue;

import insidelift.console.asking.Remark;
import insidelift.console.report.NoteText;
import insidelift.console.report.Text;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the user may ask the program in return, at any prompt: {@code why}, {@code how}, {@code why
 * not}, {@code rule}, {@code what if} and {@code what is}. Nothing that is asked changes what is
 * known.
 */
final class Inquiries {

  private final Session session;
  private final Vocabulary vocabulary;
  private final NoteBook notes;

  Inquiries(Session session, Vocabulary vocabulary, NoteBook notes) {
    this.session = session;
    this.vocabulary = vocabulary;
    this.notes = notes;
  }

  /**
   * The answer to what a line asks.
   *
   * @param line a line that is recognised
   * @param current the question that stands open, if one does
   */
  List<String> answer(String line, Optional<Question> current) {
    List<String> words = Remark.words(line);
    List<String> rest = words.subList(1, words.size());
    return switch (words.get(0)) {
      case "why" ->
          rest.isEmpty()
              ? current.map(this::why).orElseGet(this::how)
              : rest.get(0).equals("not") ? whyNot(rest.subList(1, rest.size())) : why(rest);
      case "how" -> rest.isEmpty() ? how() : how(String.join(" ", rest));
      case "rule" -> rule(String.join(" ", rest));
      default -> {
        List<String> asked = rest.subList(1, rest.size());
        yield rest.get(0).equals("is") ? whatIs(asked) : whatIf(asked);
      }
    };
  }

  /** The note on a word of the trade, whatever it is filed under. */
  private List<String> whatIs(List<String> words) {
    String word =
        words.stream()
            .map(part -> part.replaceAll("[^a-z0-9-]", ""))
            .filter(part -> !part.isEmpty() && !List.of("a", "an", "the").contains(part))
            .collect(Collectors.joining("-"));
    return Stream.of(word, word + "-positive", "lever-" + word, word.replaceAll("s$", ""))
        .map(notes::find)
        .flatMap(Optional::stream)
        .findFirst()
        .map(
            note -> {
              Text text = new Text(Text.WIDTH);
              NoteText.write(note, notes, text);
              return text.lines();
            })
        .orElseGet(
            () ->
                List.of(
                    "There is no note on "
                        + Printable.quoted(word)
                        + ". All of them: insidelift notes"));
  }

  private List<String> why(List<String> words) {
    String id = String.join(" ", words);
    return vocabulary
        .question(id)
        .map(this::why)
        .orElseGet(() -> List.of("There is no question " + Printable.quoted(id) + "."));
  }

  private List<String> why(Question question) {
    return explanation().why(question.id()).lines();
  }

  /** Every lever that is spoken of, and where to ask on. */
  private List<String> how() {
    List<String> lines = new ArrayList<>();
    Advice advice = session.advice();
    Explanation explanation = explanation();
    List<Lever> levers = advice.suggestions().stream().map(Suggestion::lever).distinct().toList();
    for (Lever lever : levers.isEmpty() ? List.of(Lever.values()) : levers) {
      lines.addAll(explanation.how(lever.id()).lines());
    }
    List<String> findings = advice.findings().stream().map(finding -> finding.id()).toList();
    if (!findings.isEmpty()) {
      lines.add(
          "What it found: " + String.join(", ", findings) + ". Ask as in: how " + findings.get(0));
    }
    return lines;
  }

  private List<String> how(String id) {
    boolean known =
        vocabulary.finding(id).isPresent()
            || Stream.of(Lever.values()).anyMatch(lever -> lever.id().equals(id));
    return known
        ? explanation().how(id).lines()
        : List.of(
            Printable.quoted(id) + " is no finding and no lever. Type how alone to see them.");
  }

  private List<String> whyNot(List<String> words) {
    Optional<Lever> lever =
        Stream.of(Lever.values()).filter(one -> words.contains(one.id())).findFirst();
    List<Direction> ways =
        Stream.of(Direction.MORE, Direction.LESS).filter(way -> words.contains(way.id())).toList();
    int understood = (lever.isPresent() ? 1 : 0) + ways.size();
    if (lever.isEmpty() || understood != words.size()) {
      return List.of("Say it like this: why not camber more, or: why not caster less.");
    }
    List<String> lines = new ArrayList<>();
    for (Direction way : ways.isEmpty() ? List.of(Direction.MORE, Direction.LESS) : ways) {
      lines.addAll(explanation().whyNot(lever.get(), way).lines());
    }
    return lines;
  }

  private List<String> rule(String id) {
    try {
      return explanation().rule(id).lines();
    } catch (IllegalArgumentException e) {
      return List.of(
          "There is no rule " + Printable.quoted(id) + ". The answers to how name the rules.");
    }
  }

  private List<String> whatIf(List<String> words) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (String word : String.join(" ", words).split("[ ,;]+", -1)) {
      if (word.isEmpty()) {
        continue;
      }
      String[] parts = word.split("=", -1);
      Optional<Question> question = vocabulary.question(parts[0]);
      if (parts.length != 2) {
        return List.of("Say it like this: what if water=wet");
      }
      if (question.isEmpty()) {
        return List.of("There is no question " + Printable.quoted(parts[0]) + ".");
      }
      List<String> values = question.get().values().stream().map(value -> value.id()).toList();
      if (!values.contains(parts[1]) && !parts[1].equals(Vocabulary.UNKNOWN)) {
        return List.of(parts[0] + " takes " + String.join(", ", values) + " or unknown.");
      }
      answers.put(parts[0], parts[1]);
    }
    return answers.isEmpty()
        ? List.of("Say it like this: what if water=wet")
        : explanation().whatIf(answers).lines();
  }

  private Explanation explanation() {
    return session.explain();
  }
}
