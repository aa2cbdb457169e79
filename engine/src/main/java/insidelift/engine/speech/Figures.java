package insidelift.engine.speech;

import insidelift.engine.units.KnownUnit;
import insidelift.shared.Vocabulary;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers that are told with what they measure: minutes to the next run, power in kW or hp, an age
 * in years, camber and caster in degrees, three temperatures across a tread.
 */
final class Figures {

  static final String MINUTES = "minutes";
  static final String POWER = "power-kw";
  static final String AGE = "age";
  static final String TEMPS = "front-temps";

  /** A number in a sentence that nothing is measured with. */
  static final String NUMBER = "number";

  /** How far ahead and back the words that belong to a number are looked for. */
  static final int AHEAD = 18;

  private static final int BACK = 6;

  private static final List<String> COUNTED =
      List.of(
          "zero",
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen",
          "twenty");
  private static final Map<String, Double> NAMED =
      Map.of(
          "half", 0.5, "thirty", 30.0, "forty", 40.0, "fifty", 50.0, "sixty", 60.0, "neutral", 0.0,
          "quarter", 0.25, "ninety", 90.0);

  static final String N =
      "((?:minus |plus |- |\\+ )?(?:[-+]?\\d+(?:[.,]\\d+)?|"
          + String.join("|", COUNTED)
          + "|half|quarter|thirty|forty|fifty|sixty|neutral|ninety))";
  static final String END = "(?![\\w°])";

  private static final Pattern TIME =
      Pattern.compile(
          N + " (?:more )?(?:- )?(?:mins?|minutes?|minuts?|minuten|minutos)" + END + "(.*)");
  private static final Pattern HOURS =
      Pattern.compile(
          "(?:(half|quarter|three quarters) (?:an )?hour|" + N + " hours?|(hour))" + END + "(.*)");
  private static final Pattern STILL =
      Pattern.compile(
          "^ (?:more|left|to go|togo|remain\\w*|until|till|til|before|to next|to grid|to heat|to race"
              + "|to final|to start|to session|to run|to qualifying|to|for next|for change|for changes"
              + "|time|now|spare|in hand|from now|then|is all|and|so|only|$|[.,;!]).*");
  private static final Pattern SPENT =
      Pattern.compile(
          "^ (?:ago|late|long|session|race|of practice|of driving|of running|practice|job|heat|in"
              + "|after|into|run|stint|earlier|later|lost|faster|slower|each|per).*");
  private static final Pattern WAITING =
      Pattern.compile(
          ".*(?:have|has|got|only|left|next|in|remain\\w*|still|time|heat|race|final|grid|start)"
              + "(?: (?:is|only|about|around|maybe|like|still|got|left|for|us|starts|left is|in"
              + "|comes|begins|run|session|heat|race))* ?$");
  private static final Pattern NOT_WAITING =
      Pattern.compile(
          ".*\\b(?:after|for|during|took|takes|take|lost|every|lasted|last|past|since|first|needs"
              + "|need|ran|drove)(?: (?:about|only|around|us|me|him))* ?$");
  private static final Pattern HP =
      Pattern.compile(
          N + " (?:- )?(hp|bhp|ps|cv|pk|horses?|horsepowers?|horse power|kws?|kilowatts?)" + END);
  private static final Pattern YEARS =
      Pattern.compile(
          N
              + " (?:- )?(?:(?:years?|yrs?|yr) (?:- )?(?:old|of age|age|aged)|yo|years?|yrs)"
              + END
              + "|(?:aged|age|age is|age of) "
              + N
              + END
              + "|(?:i am|(?:he|she|son|daughter|boy|girl|driver|lad|kid|child|pilot) (?:is|turned|turns))"
              + "(?: only| just| about)? "
              + N
              + "(?= [,.;!]| and| so| but|$)");
  private static final Pattern THING =
      Pattern.compile(
          ".*\\b(?:kart|karts|chassis|engine|motor|tyres?|tires?|axle|seat|frame|set|frames?|slicks"
              + "|wets|for|since|racing|raced|with|after|over|last|experience)\\b.*");
  private static final Pattern PLACE =
      Pattern.compile(
          "(?:turn|corner|lap|laps|number|kart|bend|race|p|no|t|after|on lap|nr)"
              + " (?:number )?#?\\d+(?: (?:and|or|,) \\d+)*"
              + END
              + "|(?:60|80|100|125|250) ?(?:cc\\b|(?=(?:shifter|class|engine|motor|kart|two|four)\\b))");

  /** What a tyre pressure is told in; the figure itself answers no question. */
  private static final Pattern PRESSURE = Pattern.compile(N + " (?:bars?|psi|kpa)" + END);

  private final Vocabulary vocabulary;

  Figures(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** A piece and how many tokens it is made of. */
  record Measured(Piece piece, int length) {}

  Optional<Measured> at(List<Token> tokens, int start) {
    String ahead = text(tokens, start, Math.min(tokens.size(), start + AHEAD));
    String back = text(tokens, Math.max(0, start - BACK), start);
    String clause = afterMark(back);
    Optional<Measured> temps = TreadFigures.at(tokens, start, back);
    if (temps.isPresent()) {
      return temps;
    }
    Matcher place = PLACE.matcher(ahead);
    if (place.lookingAt()) {
      return Optional.of(
          new Measured(
              Piece.of(Set.of("filler"), place.group().strip()),
              place.group().strip().split(" ", -1).length));
    }
    Matcher bar = PRESSURE.matcher(ahead);
    if (bar.lookingAt()) {
      return Optional.of(new Measured(Piece.of(Set.of("pressures"), bar.group()), length(bar)));
    }
    return time(ahead, back)
        .or(() -> power(ahead, back))
        .or(() -> age(ahead, clause))
        .or(() -> Angles.at(ahead, back));
  }

  private static String afterMark(String back) {
    int last = -1;
    for (char mark : new char[] {',', '.', ';', ':'}) {
      last = Math.max(last, back.lastIndexOf(mark));
    }
    return back.substring(last + 1);
  }

  static String text(List<Token> tokens, int from, int to) {
    return String.join(" ", tokens.subList(from, to).stream().map(Token::said).toList());
  }

  static int length(Matcher matcher) {
    return matcher.group().split(" ", -1).length;
  }

  private Optional<Measured> time(String ahead, String back) {
    Matcher minutes = TIME.matcher(ahead);
    Matcher hours = HOURS.matcher(ahead);
    double value;
    String after;
    if (minutes.lookingAt()) {
      value = number(minutes.group(1));
      after = minutes.group(2);
    } else if (hours.lookingAt()) {
      value =
          hours.group(1) != null
              ? Map.of("half", 30.0, "quarter", 15.0, "three quarters", 45.0).get(hours.group(1))
              : hours.group(2) != null ? 60 * number(hours.group(2)) : 60;
      after = hours.group(4);
    } else {
      return Optional.empty();
    }
    String whole = ahead.substring(0, ahead.length() - after.length());
    int length = whole.split(" ", -1).length;
    boolean still = STILL.matcher(after).matches() && !after.isBlank() && !after.startsWith(" .");
    boolean alone =
        (back.isBlank() || back.matches(".*(?:[,.;:]|and)"))
            && after.matches("(?: ?[,.;!] ?.*| and .*)?");
    boolean waits =
        !SPENT.matcher(after).matches()
            && !NOT_WAITING.matcher(back).matches()
            && (still || WAITING.matcher(back).matches() || alone);
    if (!waits) {
      return Optional.of(new Measured(Piece.of(Set.of(NUMBER), whole), length));
    }
    Matcher rest =
        Pattern.compile(
                "^(?: (?:left|to go|remaining|until|till|til|before|to|next|heat|race|final|grid"
                    + "|start|session|run|qualifying|for|changes?|time|only|now|we|go|out|on"
                    + "|starts|work|i|he|she|goes|is|on track|again|prefinal|to fix|fix|to sort|it)\\b)*")
            .matcher(after);
    int more = rest.lookingAt() && rest.end() > 0 ? rest.group().strip().split(" ", -1).length : 0;
    return Optional.of(
        new Measured(
            measured(MINUTES, List.of(value), Map.of("time-left", band("time-left", value)), whole),
            length + more));
  }

  private Optional<Measured> power(String ahead, String back) {
    Matcher hp = HP.matcher(ahead);
    if (!hp.lookingAt()) {
      return Optional.empty();
    }
    double kw = unit(hp.group(2)).to(KnownUnit.KILOWATT, number(hp.group(1)));
    boolean told =
        kw >= 1
            && kw <= 60
            && !back.matches(
                ".*\\b(?:lost|losing|more|less|down|missing|extra|another|from)( by)?$");
    return Optional.of(
        new Measured(
            told
                ? measured(POWER, List.of(kw), Map.of("power", band("power", kw)), hp.group())
                : Piece.of(Set.of(NUMBER), hp.group()),
            length(hp)));
  }

  private static KnownUnit unit(String word) {
    return word.startsWith("k")
        ? KnownUnit.KILOWATT
        : word.equals("pk")
            ? KnownUnit.METRIC_HORSEPOWER
            : KnownUnit.spelt(word).orElse(KnownUnit.HORSEPOWER);
  }

  private static Optional<Measured> age(String ahead, String back) {
    Matcher years = YEARS.matcher(ahead);
    if (!years.lookingAt()) {
      return Optional.empty();
    }
    String said =
        years.group(1) != null
            ? years.group(1)
            : years.group(2) != null ? years.group(2) : years.group(3);
    double value = number(said);
    boolean told = value >= 4 && value <= 90 && !THING.matcher(back).matches();
    return Optional.of(
        new Measured(
            told
                ? new Piece(
                    Set.of("figure", "person"),
                    years.group(),
                    Map.of(AGE, List.of(value)),
                    Map.of())
                : Piece.of(Set.of(NUMBER), years.group()),
            length(years)));
  }

  private String band(String question, double value) {
    return vocabulary.question(question).orElseThrow().number().valueFor(value);
  }

  static Piece measured(
      String key, List<Double> values, Map<String, String> answers, String words) {
    return new Piece(Set.of("figure"), words, Map.of(key, values), answers);
  }

  static double number(String said) {
    String word = said.replaceFirst("^(?:minus|plus|-|\\+) ", "");
    double size =
        COUNTED.contains(word)
            ? COUNTED.indexOf(word)
            : NAMED.containsKey(word)
                ? NAMED.get(word)
                : Double.parseDouble(word.replace(',', '.'));
    return said.startsWith("minus") || said.startsWith("- ") ? -size : size;
  }
}
