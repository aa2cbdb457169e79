package insidelift.engine.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.util.Iterator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A value in a line and where it stands. The words for the place are put together only for a
 * complaint: a season's log has a hundred thousand values and no complaint.
 *
 * @param parent the value that holds it; null for the line itself
 * @param key its key there
 * @param node the value
 */
record Place(Place parent, String key, JsonNode node) {

  static Place line(JsonNode node) {
    return new Place(null, "", node);
  }

  /** The value as an object with no other keys than these. */
  Place object(Set<String> keys) throws CaseProblem {
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

  /** The value as an object whose keys are the user's own. */
  Place object() throws CaseProblem {
    if (!node.isObject()) {
      throw problem("this must be an object in braces");
    }
    return this;
  }

  Optional<Place> at(String name) {
    JsonNode child = node.get(name);
    return child == null ? Optional.empty() : Optional.of(new Place(this, name, child));
  }

  Place need(String name) throws CaseProblem {
    JsonNode child = node.get(name);
    if (child == null) {
      throw problem("the key \"" + name + "\" is missing");
    }
    return new Place(this, name, child);
  }

  String word() throws CaseProblem {
    if (!node.isTextual()) {
      throw problem("this must be text in quotation marks");
    }
    return node.textValue();
  }

  double number() throws CaseProblem {
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      throw problem("this must be a number");
    }
    return node.doubleValue();
  }

  int reference() throws CaseProblem {
    if (!node.isInt()) {
      throw problem("this must be a whole number");
    }
    return node.intValue();
  }

  /** A problem at this place. */
  CaseProblem problem(String what) {
    String path = path();
    return new CaseProblem(path.isEmpty() ? what : path + ": " + what);
  }

  private String path() {
    if (parent == null) {
      return "";
    }
    String above = parent.path();
    return above.isEmpty() ? Printable.shown(key) : above + "." + Printable.shown(key);
  }
}
