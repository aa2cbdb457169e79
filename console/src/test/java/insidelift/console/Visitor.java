package insidelift.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Somebody who knows some answers and gives them to whatever is answered, in whatever order, and
 * who does not know the rest. What is seen and typed is written down.
 */
public final class Visitor {

  /** The points at which a consultation waits for a line. */
  public enum Point {
    BEGIN,
    RESUME,
    SAFETY,
    QUESTION,
    REVIEW,
    PAGE,
    ANSWER,
    CONFIRM,
    READ_ON
  }

  /** Where a consultation waits, and for what. */
  public record Prompt(Point point, String label, int row) {}

  private static final Pattern LABEL = Pattern.compile("^([a-z][A-Za-z -]*): ?$");
  private static final Pattern PROGRESS = Pattern.compile("^Question (\\d+) of at most (\\d+)$");

  private final Paddock paddock;
  private final Map<String, String> known = new LinkedHashMap<>();
  private final List<String> answered = new ArrayList<>();
  private final List<String> seen = new ArrayList<>();
  private List<String> before = List.of();
  private boolean typed;
  private Prompt last = new Prompt(Point.BEGIN, "", -1);

  public Visitor(Paddock paddock) {
    this.paddock = paddock;
  }

  /** Knows the answer to a question, by its label. */
  public Visitor knows(String label, String value) {
    known.put(label, value);
    return this;
  }

  /** The labels of all that was answered, in order, with repeats. */
  public List<String> answered() {
    return List.copyOf(answered);
  }

  /** What was seen and typed, step by step. */
  List<String> seen() {
    return List.copyOf(seen);
  }

  /** Answers all that is answered until the consultation waits at a point. */
  public Visitor goOnTo(Point point) {
    return goOnUntil(prompt -> prompt.point() == point);
  }

  /** Answers all that is answered until a question comes up. */
  public Visitor goOnTo(String label) {
    return goOnUntil(prompt -> prompt.label().equals(label));
  }

  /** Answers all that is answered until the consultation waits where it is wanted. */
  Visitor goOnUntil(Predicate<Prompt> wanted) {
    Prompt prompt = next();
    while (!wanted.test(prompt)) {
      if (prompt.point() == Point.ANSWER) {
        throw new AssertionError("came to the advice first; answered were " + answered);
      }
      answer(prompt);
      prompt = next();
    }
    return this;
  }

  /** Reads the answer, how to do it and what to beware of, and leaves. */
  void readToTheEnd() {
    goOnTo(Point.ANSWER);
    for (String section : List.of("steps", "care")) {
      type(section + Paddock.ENTER);
      while (next().point() == Point.PAGE) {
        type(Paddock.ENTER);
      }
    }
    type(Paddock.ENTER);
    paddock.exit();
    look();
  }

  /** Types, and says so in the record. */
  public Visitor type(String keys) {
    seen.add(">>> " + keys.replace(Paddock.ENTER, "[Enter]"));
    paddock.type(keys);
    typed = true;
    return this;
  }

  /** Waits until the consultation waits for a line, another one if something was typed. */
  public Prompt next() {
    if (!typed && last.row() >= 0) {
      return last;
    }
    typed = false;
    Prompt found;
    do {
      paddock.waitUntil(
          "the next prompt",
          p -> {
            Prompt prompt = prompt();
            return prompt != null && !prompt.equals(last);
          });
      // On a busy machine a page may go on being drawn after a pause that looked like its end.
      found = prompt();
    } while (found == null);
    last = found;
    look();
    return last;
  }

  private void answer(Prompt prompt) {
    switch (prompt.point()) {
      case BEGIN, RESUME, REVIEW, CONFIRM, READ_ON, PAGE -> type(Paddock.ENTER);
      case SAFETY -> type(known.getOrDefault("true", "ok") + Paddock.ENTER);
      case ANSWER -> throw new AssertionError("the advice is not a question");
      case QUESTION -> {
        answered.add(prompt.label());
        type(known.getOrDefault(prompt.label(), "u") + Paddock.ENTER);
      }
    }
  }

  /** Writes down what is new since the last look. */
  private void look() {
    List<String> now = paddock.all();
    int same = 0;
    while (same < Math.min(now.size(), before.size()) && now.get(same).equals(before.get(same))) {
      same++;
    }
    seen.addAll(now.subList(same, now.size()));
    before = now;
  }

  /** Where the consultation waits now; null while it does not. */
  Prompt prompt() {
    String line = paddock.beforeCursor();
    int row = paddock.all().size();
    if (line.equals("Say what is wrong, or Enter to begin. ")) {
      return new Prompt(Point.BEGIN, "", row);
    }
    if (line.endsWith("new one: ")) {
      return new Prompt(Point.RESUME, "", row);
    }
    if (line.endsWith("what is right: ") || line.endsWith(", or type n: ")) {
      return new Prompt(Point.CONFIRM, "", row);
    }
    if (line.endsWith("read on, or type q: ")) {
      return new Prompt(Point.READ_ON, "", row);
    }
    if (line.endsWith("Enter: next page ")) {
      return new Prompt(Point.PAGE, "", row);
    }
    if (line.endsWith("number: ")) {
      return new Prompt(Point.ANSWER, "", row);
    }
    Matcher label = LABEL.matcher(line);
    if (!label.matches()) {
      return null;
    }
    return switch (label.group(1)) {
      case "true" -> new Prompt(Point.SAFETY, "true", row);
      case "change" -> new Prompt(Point.REVIEW, "change", row);
      default -> new Prompt(Point.QUESTION, label.group(1), row);
    };
  }

  /** The greatest number of a question that was shown. */
  int questions() {
    return seen.stream()
        .map(PROGRESS::matcher)
        .filter(Matcher::matches)
        .mapToInt(progress -> Integer.parseInt(progress.group(1)))
        .max()
        .orElse(0);
  }
}
