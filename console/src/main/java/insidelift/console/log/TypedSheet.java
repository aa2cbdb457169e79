package insidelift.console.log;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.console.asking.Measures;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.casefile.BaselineJson;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands on a kart's sheet, as it is typed: {@code toe=0.8}, {@code camber=0.5/0.5}, {@code
 * front-width="two spacers a side"}. It is held to the words and ranges of a case file.
 */
public final class TypedSheet {

  private static final List<String> READ = List.of("camber", "caster", "toe");
  private static final String LADEN = "laden-";
  private static final String NEUTRAL = "neutral";
  private static final String DISC = "disc";

  private final Vocabulary vocabulary;
  private final Map<String, String> typed = new LinkedHashMap<>();

  public TypedSheet(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** The names that can be told, in the order of the sheet. */
  public List<String> names() {
    List<String> names = new ArrayList<>(READ);
    names.add(DISC);
    names.add(NEUTRAL);
    READ.forEach(name -> names.add(LADEN + name));
    names.addAll(levers());
    names.addAll(Baseline.NOTED);
    return names;
  }

  private List<String> levers() {
    return vocabulary.levers().stream()
        .filter(lever -> lever.most() != null)
        .map(LeverWord::id)
        .filter(id -> !READ.contains(id))
        .toList();
  }

  /**
   * Takes one {@code NAME=VALUE}.
   *
   * @throws IllegalArgumentException if there is no such name, or its value cannot be used
   */
  public void put(String pair) {
    int at = pair.indexOf('=');
    String name = at < 0 ? pair : pair.substring(0, at).strip();
    if (at < 0 || !names().contains(name)) {
      throw new IllegalArgumentException(
          "%s is not NAME=VALUE with one of the names %s"
              .formatted(Printable.quoted(pair), String.join(", ", names())));
    }
    String before = typed.put(name, pair.substring(at + 1).strip());
    try {
      // What a number means may be told before the reading that it is about.
      read(false);
    } catch (IllegalArgumentException e) {
      typed.remove(name);
      if (before != null) {
        typed.put(name, before);
      }
      throw e;
    }
  }

  /**
   * The setting that was told.
   *
   * @throws IllegalArgumentException if a value cannot be used, and why
   */
  public Baseline baseline() {
    return read(true);
  }

  private Baseline read(boolean whole) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ObjectNode laden = JsonNodeFactory.instance.objectNode();
    ObjectNode noted = JsonNodeFactory.instance.objectNode();
    typed.forEach(
        (name, value) -> {
          if (READ.contains(name)) {
            sides(json, name, name, value);
          } else if (name.startsWith(LADEN)) {
            sides(laden, name.substring(LADEN.length()), name, value);
          } else if (Baseline.NOTED.contains(name)) {
            noted.put(name, value);
          } else if (!name.equals(DISC) && !name.equals(NEUTRAL)) {
            json.put(name, value);
          }
        });
    boolean toe = beside(DISC, "toe", "discMm", json, laden);
    boolean caster = beside(NEUTRAL, "caster", "neutral", json, laden);
    if (whole && !(toe && caster)) {
      throw new IllegalArgumentException(
          "disc says what toe means, and neutral what caster means: tell that too");
    }
    if (!laden.isEmpty()) {
      json.set("laden", laden);
    }
    if (!noted.isEmpty()) {
      json.set("noted", noted);
    }
    try {
      return BaselineJson.read(JsonPlace.whole(json), Set.copyOf(levers()));
    } catch (CaseProblem e) {
      throw new IllegalArgumentException(String.valueOf(e.getMessage()), e);
    }
  }

  private static void sides(ObjectNode json, String key, String name, String value) {
    Sides sides;
    try {
      sides = Measures.sides(value);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(name + ": " + e.getMessage(), e);
    }
    json.putObject(key).put("left", sides.left().value()).put("right", sides.right().value());
  }

  /**
   * A number that says what readings of one lever mean.
   *
   * @return whether there are such readings, or no such number
   */
  private boolean beside(String name, String lever, String key, ObjectNode... readings) {
    if (!typed.containsKey(name)) {
      return true;
    }
    double number = number(name);
    boolean used = false;
    for (ObjectNode json : readings) {
      if (json.get(lever) instanceof ObjectNode sides) {
        sides.put(key, number);
        if (name.equals(NEUTRAL)) {
          sides.put("reference", "absolute");
        }
        used = true;
      }
    }
    return used;
  }

  private double number(String name) {
    String value = typed.get(name);
    if (!value.matches("\\d{1,4}(?:[.,]\\d{1,3})?")) {
      throw new IllegalArgumentException(
          name + ": " + Printable.quoted(value) + " is not a number such as 280");
    }
    return Double.parseDouble(value.replace(',', '.'));
  }
}
