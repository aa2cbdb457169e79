package insidelift.shared.situation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A value in a JSON file together with where it stands, so that every complaint names the place.
 *
 * @param path the keys that lead there, joined by dots; empty for the whole file
 * @param node the value
 */
public record JsonPlace(String path, JsonNode node) {

  /** The value as an object with no other keys than these. */
  public JsonPlace object(Set<String> keys) throws CaseProblem {
    if (!node.isObject()) {
      throw problem("this must be an object in braces, but it is " + kind());
    }
    for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!keys.contains(name)) {
        throw problem(
            "%s is not a key here; the keys are %s"
                .formatted(
                    Printable.quoted(name),
                    keys.stream().sorted().collect(Collectors.joining(", "))));
      }
    }
    return this;
  }

  /** The value under a key, if the key is there. */
  public Optional<JsonPlace> at(String key) {
    JsonNode child = node.get(key);
    return child == null ? Optional.empty() : Optional.of(child(key, child));
  }

  /** The value under a key that must be there. */
  public JsonPlace need(String key) throws CaseProblem {
    return at(key).orElseThrow(() -> problem("the key \"" + key + "\" is missing"));
  }

  /** The value as a word. */
  public String word() throws CaseProblem {
    if (!node.isTextual()) {
      throw problem("this must be a word in quotation marks, but it is " + kind());
    }
    return node.textValue();
  }

  /** The value as a number within a range, both ends included. */
  public double number(double min, double max, String unit) throws CaseProblem {
    if (!node.isNumber()) {
      throw problem("this must be a number, but it is " + kind());
    }
    double value = node.doubleValue();
    if (!Double.isFinite(value) || value < min || value > max) {
      throw problem(
          "%s is outside %s to %s %s".formatted(plain(value), plain(min), plain(max), unit));
    }
    return value;
  }

  /** A problem at this place. */
  public CaseProblem problem(String what) {
    return CaseProblem.at(path, what);
  }

  private JsonPlace child(String key, JsonNode child) {
    String shown = Printable.shown(key);
    return new JsonPlace(path.isEmpty() ? shown : path + "." + shown, child);
  }

  private String kind() {
    return switch (node.getNodeType()) {
      case ARRAY -> "a list";
      case BOOLEAN -> node.asText();
      case NULL -> "null";
      case NUMBER -> "the number " + Printable.shown(node.asText());
      case OBJECT -> "an object";
      case STRING -> Printable.quoted(node.textValue());
      default -> "something else";
    };
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
