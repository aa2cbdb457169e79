package insidelift.console.dialogue;

import insidelift.console.asking.Asker;
import insidelift.console.asking.Choices;
import insidelift.console.asking.Measurable;
import insidelift.console.asking.Reply;
import insidelift.console.asking.Span;
import insidelift.console.asking.Tread;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.units.Units;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;

/** Numbers measured on the kart: where a lever stands now, and the heat across the front tyres. */
final class SettingsPage {

  /** The name of the step that this page notes. */
  static final String STEP = "settings";

  private static final List<String> SIDES = List.of("left", "right");

  private static final String GAUGE = "gauge";

  private final Asker asker;
  private final Vocabulary vocabulary;
  private final Session session;
  private final Units units;
  private final Set<Lever> unmeasured = EnumSet.noneOf(Lever.class);
  private final Map<Lever, List<Double>> typed = new EnumMap<>(Lever.class);
  private final List<EdgeTemperatures> treads = new ArrayList<>();

  SettingsPage(Asker asker, Session session, Vocabulary vocabulary, Units units) {
    this.asker = asker;
    this.vocabulary = vocabulary;
    this.session = session;
    this.units = units;
  }

  /**
   * Asks where the levers that are to be moved stand now, since the size depends on it.
   *
   * @return the command that interrupted it, if one did
   */
  Optional<Reply> levers() throws UserLeftException {
    Advice advice = session.advice();
    Kart kart = session.situation().kart();
    Sides camber = kart.camber().orElse(null);
    Sides caster = kart.caster().orElse(null);
    boolean asked = false;
    boolean needed =
        advice.suggestions().stream()
            .filter(Suggestion::first)
            .map(Suggestion::lever)
            .anyMatch(
                lever ->
                    (lever == Lever.CAMBER ? kart.camber() : kart.caster()).isEmpty()
                        && !unmeasured.contains(lever));
    if (needed) {
      Optional<Reply> interrupted = gauge();
      if (interrupted.isPresent()) {
        return interrupted;
      }
    }
    if (session.situation().answer(GAUGE).filter("none"::equals).isPresent()) {
      return Optional.empty();
    }
    for (Suggestion suggestion : advice.suggestions()) {
      Lever lever = suggestion.lever();
      boolean isCamber = lever == Lever.CAMBER;
      if (!suggestion.first()
          || (isCamber ? camber : caster) != null
          || unmeasured.contains(lever)) {
        continue;
      }
      List<Double> sides = typed.computeIfAbsent(lever, key -> new ArrayList<>());
      Optional<Reply> interrupted = numbers(sides, 2, i -> angle(lever, SIDES.get(i)));
      if (interrupted.isPresent() && !(interrupted.get() instanceof Reply.Chosen)) {
        return interrupted;
      }
      asked = true;
      Sides measured = null;
      if (interrupted.isPresent()) {
        unmeasured.add(lever);
      } else {
        measured = new Sides(Degrees.of(sides.get(0)), Degrees.of(sides.get(1)));
      }
      typed.remove(lever);
      if (isCamber) {
        camber = measured;
      } else {
        caster = measured;
      }
    }
    if (asked) {
      session.begin(STEP);
      session.note(kart.with(camber, caster));
    }
    return Optional.empty();
  }

  /** Asks what there is to measure with, if nobody said. */
  private Optional<Reply> gauge() throws UserLeftException {
    Question question = vocabulary.question(GAUGE).orElseThrow();
    if (session.situation().answer(GAUGE).isPresent()
        || session.situation().declined().contains(GAUGE)) {
      return Optional.empty();
    }
    Reply reply = asker.ask(Choices.of(question, "One more:", List.of()));
    if (reply instanceof Reply.Chosen chosen) {
      session.answer(GAUGE, chosen.value());
      return Optional.empty();
    }
    return Optional.of(reply);
  }

  /**
   * Asks for so many numbers, one after the other; back goes back by one. What has been typed so
   * far stays in the list, whatever interrupts it.
   */
  private Optional<Reply> numbers(List<Double> into, int count, IntFunction<Choices> ask)
      throws UserLeftException {
    while (into.size() < count) {
      Reply reply = asker.ask(ask.apply(into.size()));
      if (reply instanceof Reply.Measured measured) {
        into.add(measured.number());
      } else if (reply instanceof Reply.Back && !into.isEmpty()) {
        into.remove(into.size() - 1);
      } else {
        return Optional.of(reply);
      }
    }
    return Optional.empty();
  }

  /** Whether anything was said about where the levers stand. */
  boolean answered() {
    Kart kart = session.situation().kart();
    return kart.camber().isPresent() || kart.caster().isPresent() || !unmeasured.isEmpty();
  }

  /** Where the levers stand, in words. */
  String words() {
    Kart kart = session.situation().kart();
    List<String> words = new ArrayList<>();
    kart.camber().ifPresent(sides -> words.add(words(Lever.CAMBER, sides)));
    kart.caster().ifPresent(sides -> words.add(words(Lever.CASTER, sides)));
    unmeasured.forEach(lever -> words.add(lever.id() + " not measured"));
    return String.join("; ", words);
  }

  private static String words(Lever lever, Sides sides) {
    return "%s left %s, right %s"
        .formatted(lever.id(), sides.left().signed(), sides.right().signed());
  }

  /** Forgets where the levers stand, so that it is asked again. */
  void forget() {
    unmeasured.clear();
    typed.clear();
    session.begin(STEP);
    session.note(session.situation().kart().with(null, null));
  }

  /** Forgets what was said here: the step that said so was taken back. */
  void back() {
    unmeasured.clear();
    typed.clear();
    treads.clear();
  }

  /** Asks for the heat across both front tyres and notes what it shows. */
  Optional<Reply> temperatures() throws UserLeftException {
    while (treads.size() < SIDES.size()) {
      Reply reply = asker.ask(heat(SIDES.get(treads.size())));
      if (reply instanceof Reply.Heat heat) {
        treads.add(heat.tread());
      } else if (reply instanceof Reply.Back && !treads.isEmpty()) {
        treads.remove(treads.size() - 1);
      } else {
        return Optional.of(reply);
      }
    }
    session.answer("front-temps", EdgeTemperatures.pattern(treads.get(0), treads.get(1)));
    treads.clear();
    return Optional.empty();
  }

  private static Choices angle(Lever lever, String side) {
    String sign =
        lever == Lever.CAMBER
            ? "0 is upright, + has the top of the wheel outward"
            : "from your own neutral: 0 is neutral, + has the top further back";
    return number(
        lever.id() + " " + side,
        "How much " + lever.id() + " has the " + side + " side now? (" + sign + ")",
        new Span(-10, 10, "degrees"),
        "not measured");
  }

  private Choices heat(String side) {
    return number(
        side + " front",
        "How hot is the " + side + " front tyre?",
        new Tread(units),
        "not measured");
  }

  private static Choices number(String label, String ask, Measurable range, String nothing) {
    return new Choices(
        label, List.of(ask), List.of(), Optional.of(range), Optional.of(nothing), false);
  }
}
