package insidelift.shared.casefile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Baseline.Measured;
import insidelift.shared.situation.Baseline.Toe;
import insidelift.shared.situation.CaseProblem;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The JSON shape of a baseline: {@code camber}, {@code caster}, {@code toe}, the same three under
 * {@code laden}, {@code noted}, and every other lever by its id. What is empty is left out.
 */
public final class BaselineJson {

  /** Toe beyond this is a typing error: ten times what a dry track is driven with. */
  private static final double TOE_MAX = 20;

  /** The longest text: a line of the sheet. */
  public static final int TEXT = 60;

  private static final String LADEN = "laden";
  private static final String NOTED = "noted";
  private static final Set<String> MEASURED = Set.of("camber", "caster", "toe");

  /** The keys that are no lever's id. */
  public static final Set<String> KEYS = Set.of("camber", "caster", "toe", LADEN, NOTED);

  private static final Set<String> TOE = Set.of("left", "right", "discMm");

  private BaselineJson() {}

  /**
   * The baseline that a JSON value holds.
   *
   * @param levers the ids of the other levers
   * @throws CaseProblem if it is none; the message names the place
   */
  public static Baseline read(JsonPlace place, Set<String> levers) throws CaseProblem {
    Set<String> keys = new LinkedHashSet<>(KEYS);
    keys.addAll(levers);
    place.object(keys);
    Map<String, String> standing = new LinkedHashMap<>();
    for (Iterator<String> names = place.node().fieldNames(); names.hasNext(); ) {
      String lever = names.next();
      if (!KEYS.contains(lever)) {
        standing.put(lever, text(place.need(lever)));
      }
    }
    Map<String, String> noted = new LinkedHashMap<>();
    if (place.at(NOTED).isPresent()) {
      JsonPlace words = place.need(NOTED).object(Set.copyOf(Baseline.NOTED));
      for (String word : Baseline.NOTED) {
        if (words.at(word).isPresent()) {
          noted.put(word, text(words.need(word)));
        }
      }
    }
    return new Baseline(
        measured(place),
        place.at(LADEN).isPresent()
            ? measured(place.need(LADEN).object(MEASURED))
            : Measured.UNKNOWN,
        standing,
        noted);
  }

  private static Measured measured(JsonPlace place) throws CaseProblem {
    Optional<Toe> toe = Optional.empty();
    if (place.at("toe").isPresent()) {
      JsonPlace sides = place.need("toe").object(TOE);
      toe =
          Optional.of(
              new Toe(
                  toe(sides.need("left")),
                  toe(sides.need("right")),
                  sides.at("discMm").isPresent()
                      ? Optional.of(sides.need("discMm").number(100, 600, "mm"))
                      : Optional.empty()));
    }
    return new Measured(FrontEndReader.read(place), toe);
  }

  private static double toe(JsonPlace place) throws CaseProblem {
    return place.number(-TOE_MAX, TOE_MAX, "mm");
  }

  private static String text(JsonPlace place) throws CaseProblem {
    String text = place.word();
    if (text.isBlank()) {
      throw place.problem("a word is missing; leave the key out where nothing is known");
    }
    int length = text.codePointCount(0, text.length());
    if (length > TEXT) {
      throw place.problem(length + " characters are too many; the most is " + TEXT);
    }
    return text;
  }

  /** Writes what {@link #read} reads. */
  public static void write(Baseline kept, ObjectNode json) {
    measured(kept.stand(), json);
    if (!kept.laden().equals(Measured.UNKNOWN)) {
      measured(kept.laden(), json.putObject(LADEN));
    }
    kept.levers().forEach(json::put);
    if (!kept.noted().isEmpty()) {
      kept.noted().forEach(json.putObject(NOTED)::put);
    }
  }

  private static void measured(Measured read, ObjectNode json) {
    PastWriter.front(read.front(), json);
    read.toe()
        .ifPresent(
            toe -> {
              ObjectNode sides = json.putObject("toe");
              sides.put("left", toe.left()).put("right", toe.right());
              toe.discMm().ifPresent(disc -> sides.put("discMm", disc));
            });
  }
}
