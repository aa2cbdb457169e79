package insidelift.engine.geometry;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The fields of one JSON object, read by name with the place in every complaint. A field that
 * nobody asked for is a typing error and refused.
 */
public final class Fields {

  private static final int SCHEMA = 1;

  /** What still fits a column of the answer. */
  private static final int LONGEST_TEXT = 16;

  private final String place;
  private final JsonNode node;
  private final Set<String> known = new HashSet<>();

  private Fields(String place, JsonNode node) {
    this.place = place;
    this.node = node;
  }

  /** The fields of a whole document, after its {@code "schema": 1} was checked. */
  public static Fields ofFile(JsonNode root) {
    Fields fields = of("", root);
    JsonNode schema = fields.required("schema");
    if (!schema.isInt() || schema.intValue() != SCHEMA) {
      throw new RefusedInputException(
          "schema", "must be " + SCHEMA + ", not " + Printable.shown(schema.toString()));
    }
    return fields;
  }

  public static Fields of(String place, JsonNode node) {
    if (!node.isObject()) {
      throw new RefusedInputException(
          place.isEmpty() ? "document" : place, "must be an object, not " + named(node));
    }
    return new Fields(place, node);
  }

  public boolean has(String key) {
    known.add(key);
    return node.has(key);
  }

  /** Where a field is, as in {@code geometry.casterDeg}. */
  public String placeOf(String key) {
    return place.isEmpty() ? key : place + "." + key;
  }

  public Fields object(String key) {
    return of(placeOf(key), required(key));
  }

  public JsonNode required(String key) {
    if (!has(key)) {
      throw new RefusedInputException(placeOf(key), "is missing");
    }
    return node.get(key);
  }

  /** A finite number. */
  public double number(String key) {
    return finite(placeOf(key), required(key));
  }

  /** A finite number within a range, which the complaint explains. */
  public double number(String key, double least, double most, String unitAndReason) {
    double value = number(key);
    Range.check(placeOf(key), value, least, most, unitAndReason);
    return value;
  }

  public int wholeNumber(String key, int least, int most, String unitAndReason) {
    double value = number(key, least, most, unitAndReason);
    if (value != Math.rint(value)) {
      throw new RefusedInputException(
          placeOf(key), Printed.exact(value) + " is not a whole number");
    }
    return (int) value;
  }

  public boolean flag(String key) {
    JsonNode value = required(key);
    if (!value.isBoolean()) {
      throw new RefusedInputException(placeOf(key), "must be true or false, not " + named(value));
    }
    return value.booleanValue();
  }

  public String text(String key) {
    JsonNode value = required(key);
    if (!value.isTextual() || value.textValue().isBlank()) {
      throw new RefusedInputException(placeOf(key), "must be a text, not " + named(value));
    }
    String text = value.textValue();
    if (!Printable.shown(text, LONGEST_TEXT).equals(text)) {
      throw new RefusedInputException(
          placeOf(key), "must be at most " + LONGEST_TEXT + " printable characters");
    }
    return text;
  }

  /** One of a few words. */
  public String word(String key, Collection<String> words) {
    String word = text(key);
    if (!words.contains(word)) {
      throw new RefusedInputException(
          placeOf(key), "\"" + word + "\" is not one of " + String.join(", ", words));
    }
    return word;
  }

  /** The entries of an array, each with its place. */
  public List<JsonNode> list(String key, int most) {
    JsonNode value = required(key);
    if (!value.isArray() || value.isEmpty()) {
      throw new RefusedInputException(
          placeOf(key), "must be a list with at least one entry, not " + named(value));
    }
    if (value.size() > most) {
      throw new RefusedInputException(
          placeOf(key), "has " + value.size() + " entries; at most " + most + " are read");
    }
    List<JsonNode> entries = new ArrayList<>();
    value.forEach(entries::add);
    return entries;
  }

  /** Refuses every field that was not asked for so far. */
  public void refuseOthers() {
    for (String key : (Iterable<String>) node::fieldNames) {
      if (!known.contains(key)) {
        throw new RefusedInputException(placeOf(key), "unknown key");
      }
    }
  }

  public static double finite(String place, JsonNode value) {
    if (!value.isNumber()) {
      throw new RefusedInputException(place, "must be a number, not " + named(value));
    }
    double number = value.doubleValue();
    if (!Double.isFinite(number)) {
      throw new RefusedInputException(place, "must be a finite number");
    }
    return number;
  }

  private static String named(JsonNode value) {
    return switch (value.getNodeType()) {
      case STRING -> "a text";
      case BOOLEAN -> "true or false";
      case ARRAY -> value.isEmpty() ? "an empty list" : "a list";
      case OBJECT -> "an object";
      case NULL -> "null";
      case NUMBER -> "a number";
      default -> "nothing";
    };
  }
}
