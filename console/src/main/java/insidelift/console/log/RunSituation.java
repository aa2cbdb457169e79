package insidelift.console.log;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.console.asking.Measures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.units.Amount;
import insidelift.engine.units.KnownUnit;
import insidelift.engine.units.Quantity;
import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The set-up and the answers of a run, checked as those of a case file are. */
public final class RunSituation {

  /** Left and right. */
  public static final class Pair implements ITypeConverter<Sides> {
    @Override
    public Sides convert(String text) {
      try {
        return Measures.sides(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  @Option(
      names = "--case",
      paramLabel = "FILE",
      description = "answers and set-up of this run from a case file")
  private String file;

  @Option(
      names = "--answer",
      paramLabel = "QUESTION=VALUE",
      description = "an answer, as in water=dry or power=28hp; repeat for more")
  private final Map<String, String> answers = new LinkedHashMap<>();

  @Option(
      names = "--camber",
      paramLabel = "DEGREES",
      converter = Pair.class,
      description = "camber: one for both sides, or LEFT/RIGHT")
  private Sides camber;

  @Option(
      names = "--caster",
      paramLabel = "DEGREES",
      converter = Pair.class,
      description = "caster from your own neutral: one for both sides, or LEFT/RIGHT")
  private Sides caster;

  @Option(names = "--absolute", description = "--caster is absolute, not from neutral")
  private boolean absolute;

  /** What was told of set-up and answers, to be put on a run. */
  UnaryOperator<RunEntry> read() throws CaseProblem {
    boolean nothing = file == null && answers.isEmpty() && camber == null && caster == null;
    if (absolute && caster == null) {
      throw new IllegalArgumentException("--absolute says what --caster is, but there is none");
    }
    if (nothing) {
      return run -> run;
    }
    CaseReader reader = new CaseReader(Vocabulary.load());
    Situation read = file == null ? Situation.UNKNOWN : RunAdvice.read(file, reader);
    Situation typed = typed(reader);
    return run -> {
      RunEntry known = told(read).apply(run);
      Situation situation = known.situation();
      return known.with(situation.over(typed).with(moved(situation.kart(), typed.kart())));
    };
  }

  /** Puts what a case tells on a run; the set-up of the run before stands where it tells none. */
  public static UnaryOperator<RunEntry> told(Situation told) {
    return run -> {
      Situation before = run.situation();
      Kart kart = told.kart().equals(Kart.UNKNOWN) ? before.kart() : told.kart();
      return run.with(before.over(told).with(kart));
    };
  }

  private static Kart moved(Kart before, Kart typed) {
    Sides camber = typed.camber().or(before::camber).orElse(null);
    Sides caster = typed.caster().or(before::caster).orElse(null);
    Kart moved = before.with(camber, caster);
    return typed.caster().isEmpty() || typed.absolute() == before.absolute()
        ? moved
        : new Kart(
            moved.camber(),
            moved.caster(),
            typed.absolute(),
            typed.neutral(),
            moved.eccentrics(),
            moved.geometry());
  }

  /** What was typed, read as a case so that it is held to the same words and ranges. */
  private Situation typed(CaseReader reader) {
    ObjectNode json = JsonNodeFactory.instance.objectNode().put("schema", CaseReader.SCHEMA);
    ObjectNode words = json.putObject("answers");
    answers.forEach(
        (question, value) -> {
          if (value.matches("\\d{1,4}(?:[.,]\\d{1,3})?")) {
            words.put(question, Double.parseDouble(value.replace(',', '.')));
          } else if (question.startsWith("power") && power(value).isPresent()) {
            words.put("powerKw", power(value).getAsDouble());
          } else {
            words.put(question, value);
          }
        });
    ObjectNode kart = json.putObject("kart");
    if (camber != null) {
      put(kart.putObject("camber"), camber);
    }
    if (caster != null) {
      put(kart.putObject("caster"), caster).put("reference", absolute ? "absolute" : "neutral");
    }
    try {
      return reader.read(json.toString());
    } catch (CaseProblem e) {
      throw new IllegalArgumentException(Printable.shown(String.valueOf(e.getMessage()), 400), e);
    }
  }

  /** The kilowatts of a power that was typed with its unit, as in {@code 28hp}. */
  private static OptionalDouble power(String value) {
    return Amount.of(value)
        .filter(amount -> amount.unit().isPresent() && amount.fits(Quantity.POWER))
        .map(amount -> OptionalDouble.of(amount.in(KnownUnit.KILOWATT, KnownUnit.KILOWATT)))
        .orElse(OptionalDouble.empty());
  }

  private static ObjectNode put(ObjectNode json, Sides sides) {
    return json.put("left", sides.left().value()).put("right", sides.right().value());
  }
}
