package insidelift.shared.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.NumberAnswer;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads case files. It accepts only what the vocabulary knows and refuses the rest in one sentence
 * that names the place, as in {@code answers.water: "soaked" is not one of dry, damp, wet,
 * standing}.
 */
public final class CaseReader {

  /** The version of the case file that this build reads and writes. */
  public static final int SCHEMA = 1;

  private static final Set<String> TOP = Set.of("schema", "answers", "kart", "history");
  private static final Set<String> KART =
      Stream.concat(
              Stream.of("camber", "caster", "eccentrics", "geometry"), PastReader.KART.stream())
          .collect(Collectors.toUnmodifiableSet());
  private static final Set<String> PER_POSITION = Set.of("camberPerPosition", "casterPerPosition");
  private static final Set<String> WASHERS =
      Set.of(
          "pivots",
          "throwMm",
          "pivotSpacingMm",
          "positions",
          "anglesDeg",
          "camberOnly",
          "table",
          "bottomTable");
  private static final String NOW = "now";
  private static final Set<String> EDGES = Set.of("inner", "middle", "outer");

  private final Vocabulary vocabulary;
  private final PastReader past;

  /** A reader of files in the words of a vocabulary. */
  public CaseReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.past = new PastReader(vocabulary);
  }

  /**
   * The situation that a file describes.
   *
   * @throws CaseProblem if the file cannot be used; the message names the place
   * @throws IOException if the stream fails
   */
  public Situation read(InputStream in) throws IOException, CaseProblem {
    return situation(JsonInput.read(in));
  }

  /** The situation that a text describes. */
  public Situation read(String text) throws CaseProblem {
    return situation(JsonInput.read(text));
  }

  private Situation situation(JsonPlace file) throws CaseProblem {
    file.object(TOP);
    // Who writes a case by hand writes it for this build.
    Optional<JsonPlace> schema = file.at("schema");
    if (schema.isPresent() && !isOurs(schema.get().node())) {
      throw schema
          .get()
          .problem(
              "%s is not known; this build reads schema %d"
                  .formatted(Printable.shown(schema.get().node().toString()), SCHEMA));
    }
    Optional<JsonPlace> kart = file.at("kart");
    Situation known = Situation.UNKNOWN;
    Optional<JsonPlace> answers = file.at("answers");
    if (answers.isPresent()) {
      known = answers(answers.get());
    }
    if (kart.isPresent()) {
      known = known.with(kart(kart.get()));
      checkReadings(known);
    }
    Optional<JsonPlace> history = file.at("history");
    if (history.isPresent()) {
      known = known.after(past.history(history.get()));
    }
    return known;
  }

  private static boolean isOurs(JsonNode schema) {
    return schema.isIntegralNumber() && schema.canConvertToInt() && schema.intValue() == SCHEMA;
  }

  private Situation answers(JsonPlace answers) throws CaseProblem {
    Set<String> keys = new HashSet<>();
    for (Question question : vocabulary.questions()) {
      keys.add(question.id());
      if (question.number() != null) {
        keys.add(question.number().key());
      }
    }
    answers.object(keys);
    Map<String, String> words = new LinkedHashMap<>();
    Map<String, Double> numbers = new LinkedHashMap<>();
    Set<String> declined = new LinkedHashSet<>();
    for (Iterator<String> names = answers.node().fieldNames(); names.hasNext(); ) {
      String key = names.next();
      JsonPlace place = answers.need(key);
      if (place.node().isTextual() && place.word().equals(Vocabulary.UNKNOWN)) {
        // A number that is not known leaves its question open for the words.
        vocabulary.question(key).ifPresent(question -> declined.add(question.id()));
        continue;
      }
      Optional<NumberAnswer> number = number(key);
      if (number.isPresent()) {
        NumberAnswer range = number.get();
        numbers.put(key, place.number(range.min(), range.max(), range.unit()));
      } else if (key.equals("front-temps") && place.node().isObject()) {
        words.put(key, temperatures(place));
      } else {
        words.put(key, value(vocabulary.question(key).orElseThrow(), place));
      }
    }
    return resolved(answers, words, numbers, declined);
  }

  private Optional<NumberAnswer> number(String key) {
    return vocabulary.questions().stream()
        .map(Question::number)
        .filter(number -> number != null && number.key().equals(key))
        .findFirst();
  }

  private static String value(Question question, JsonPlace place) throws CaseProblem {
    String word = place.word();
    if (question.value(word).isEmpty()) {
      throw place.problem(
          "%s is not one of %s"
              .formatted(
                  Printable.quoted(word),
                  question.values().stream()
                      .map(value -> value.id())
                      .collect(Collectors.joining(", "))));
    }
    return word;
  }

  /** Turns numbers into the words they count as, and refuses a word that contradicts its number. */
  private Situation resolved(
      JsonPlace answers,
      Map<String, String> words,
      Map<String, Double> numbers,
      Set<String> declined)
      throws CaseProblem {
    Map<String, Double> kept = new LinkedHashMap<>();
    boolean geared = "gears".equals(words.get("gearbox"));
    for (Question question : vocabulary.questions()) {
      Double number = question.number() == null ? null : numbers.get(question.number().key());
      if (number == null) {
        continue;
      }
      kept.put(question.id(), number);
      // A kart with a gearbox counts as high power whatever its kilowatts.
      boolean gearedPower = question.id().equals("power") && geared;
      String counted = gearedPower ? "high" : question.number().valueFor(number);
      String said = words.putIfAbsent(question.id(), counted);
      if (said != null && !said.equals(counted)) {
        throw answers
            .need(question.id())
            .problem(
                "\"%s\" contradicts %s %s, which counts as \"%s\""
                    .formatted(
                        said,
                        question.number().key(),
                        answers.node().get(question.number().key()).asText(),
                        counted));
      }
    }
    if (geared && !"high".equals(words.getOrDefault("power", "high"))) {
      throw answers
          .need("power")
          .problem(
              "\"%s\" contradicts gearbox \"gears\", which counts as \"high\""
                  .formatted(words.get("power")));
    }
    return new Situation(words, kept, Kart.UNKNOWN, declined).settled(() -> vocabulary);
  }

  private static String temperatures(JsonPlace place) throws CaseProblem {
    place.object(FrontEndReader.SIDES);
    return EdgeTemperatures.pattern(edges(place.need("left")), edges(place.need("right")));
  }

  private static EdgeTemperatures edges(JsonPlace side) throws CaseProblem {
    side.object(EDGES);
    return new EdgeTemperatures(
        celsius(side.need("inner")), celsius(side.need("middle")), celsius(side.need("outer")));
  }

  private static double celsius(JsonPlace place) throws CaseProblem {
    return place.number(-20, 200, "degrees Celsius");
  }

  private Kart kart(JsonPlace kart) throws CaseProblem {
    kart.object(KART);
    FrontEnd front = FrontEndReader.read(kart);
    Optional<JsonPlace> geometry = kart.at("geometry");
    if (geometry.isPresent() && !geometry.get().node().isObject()) {
      throw geometry.get().problem("this must be an object in braces");
    }
    Optional<JsonPlace> eccentrics = kart.at("eccentrics");
    return new Kart(
        front.camber(),
        front.caster(),
        front.absolute(),
        front.neutral(),
        eccentrics.isPresent() ? eccentrics(eccentrics.get()) : Eccentrics.UNKNOWN,
        geometry.map(JsonPlace::node).map(JsonNode::deepCopy),
        past.kart(kart));
  }

  private static Eccentrics eccentrics(JsonPlace place) throws CaseProblem {
    Set<String> keys = new HashSet<>(PER_POSITION);
    keys.addAll(WASHERS);
    keys.add(NOW);
    place.object(keys);
    ObjectNode washers = ((ObjectNode) place.node()).deepCopy().retain(WASHERS);
    return new Eccentrics(
        perPosition(place.at("camberPerPosition")),
        perPosition(place.at("casterPerPosition")),
        washers.isEmpty() ? null : washers,
        place.node().get(NOW));
  }

  private static Degrees perPosition(Optional<JsonPlace> place) throws CaseProblem {
    // Published positions move a fraction of a degree to 1.5 degrees; 5 leaves room for odd stubs.
    return place.isPresent() ? Degrees.of(place.get().number(0.05, 5, "degrees")) : null;
  }

  private static void checkReadings(Situation known) throws CaseProblem {
    Kart kart = known.kart();
    boolean differ =
        !kart.camber().map(Sides::equal).orElse(true)
            || !kart.caster().map(Sides::equal).orElse(true);
    if (differ && known.answer("readings").filter("equal"::equals).isPresent()) {
      throw new CaseProblem(
          "answers.readings: \"equal\" contradicts the kart's own readings, whose sides differ by"
              + " more than "
              + Sides.EQUAL_WITHIN);
    }
  }
}
