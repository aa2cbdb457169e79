package insidelift.shared.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A value in a JSON file together with where it stands, so that every complaint names the place.
 * The words for the place are put together only for a complaint: a season's log has a hundred
 * thousand values and no complaint.
 *
 * @param parent the value that holds it; null for the whole file
 * @param key its key there; empty for the whole file
 * @param node the value
 */
public record JsonPlace(JsonPlace parent, String key, JsonNode node) {

  /** A whole file, or a whole line of one. */
  public static JsonPlace whole(JsonNode node) {
    return new JsonPlace(null, "", node);
  }

  /** A value of a list, which stands where the list stands. */
  public JsonPlace item(JsonNode item) {
    return new JsonPlace(this, "", item);
  }

  /** A value of a list, told from its neighbours by a name such as {@code case 3}. */
  public JsonPlace item(String name, JsonNode item) {
    return new JsonPlace(this, name, item);
  }

  /** The values of a list, each told from its neighbours by its number. */
  public List<JsonPlace> members() {
    List<JsonPlace> members = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      members.add(new JsonPlace(this, "[" + (i + 1) + "]", node.get(i)));
    }
    return members;
  }

  /** The value as an object whose keys are the user's own. */
  public JsonPlace object() throws CaseProblem {
    if (!node.isObject()) {
      throw problem("this must be an object in braces, but it is " + kind());
    }
    return this;
  }

  /** The value as an object with no other keys than these. */
  public JsonPlace object(Set<String> keys) throws CaseProblem {
    object();
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
  public Optional<JsonPlace> at(String name) {
    JsonNode child = node.get(name);
    return child == null ? Optional.empty() : Optional.of(new JsonPlace(this, name, child));
  }

  /** The value under a key that must be there. */
  public JsonPlace need(String name) throws CaseProblem {
    return at(name).orElseThrow(() -> problem("the key \"" + name + "\" is missing"));
  }

  /** The value as a word. */
  public String word() throws CaseProblem {
    if (!node.isTextual()) {
      throw problem("this must be a word in quotation marks, but it is " + kind());
    }
    return node.textValue();
  }

  /** The value as a finite number, whatever its size. */
  public double number() throws CaseProblem {
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      throw problem("this must be a number, but it is " + kind());
    }
    return node.doubleValue();
  }

  /** The value as a whole number. */
  public int integer() throws CaseProblem {
    if (!node.isInt()) {
      throw problem("this must be a whole number, but it is " + kind());
    }
    return node.intValue();
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
    return CaseProblem.at(path(), what);
  }

  /** The keys that lead there, joined by dots and safe to show; empty for the whole file. */
  private String path() {
    if (parent == null) {
      return "";
    }
    String above = parent.path();
    String here = Printable.shown(key);
    boolean apart = !above.isEmpty() && !here.isEmpty() && !here.startsWith("[");
    return apart ? above + "." + here : above + here;
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
