package insidelift.console.page;

import insidelift.console.page.PitCard.Move;
import insidelift.console.page.PitCard.SideSetting;
import insidelift.console.report.AdviceWords;
import insidelift.engine.consultation.advice.ChangeNow;
import insidelift.engine.geometry.effect.ChangeCurves;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.shared.CheckKind;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Lays out an advice as a pit card. */
public final class PitCardMaker {

  private static final int MOST_SUBJECT = 120;
  private static final int MOST_LINE = 200;

  private final Situation situation;
  private final Advice advice;

  private PitCardMaker(Situation situation, Advice advice) {
    this.situation = situation;
    this.advice = advice;
  }

  /**
   * The card of an advice.
   *
   * @param situation what the advice was given on
   * @param subject whom and what it is for, in the user's own words; may be empty
   * @param day the day to print on it
   * @throws insidelift.engine.geometry.RefusedInputException if the kart's geometry is impossible
   */
  public static PitCard card(Situation situation, Advice advice, String subject, LocalDate day) {
    return new PitCardMaker(situation, advice).card(subject, day);
  }

  private PitCard card(String subject, LocalDate day) {
    Optional<ChangeEffect> effect = ChangeNow.of(situation, advice);
    List<Suggestion> now = suggestions(Suggestion::first);
    return new PitCard(
        Printable.shown(subject, MOST_SUBJECT),
        day.toString(),
        AdviceWords.headline(advice.status()),
        advice.status() == Status.NOT_ENOUGH ? AdviceWords.NOTHING_KNOWN : "",
        checks(check -> check.kind() != CheckKind.LOOK),
        leading(!now.isEmpty()),
        now.stream().map(this::move).toList(),
        advice.changeover() == null
            ? List.of()
            : advice.changeover().jobs().stream()
                .map(job -> job.total() + " min: " + job.what())
                .toList(),
        washers(now),
        all(now, Suggestion::steps).filter(step -> !AdviceWords.saysWhichWay(step)).toList(),
        advice.cautions(),
        checks(check -> check.kind() == CheckKind.LOOK).stream().map(PitCardMaker::look).toList(),
        suggestions(s -> !s.first() && s.moves()).stream().map(Suggestion::summary).toList(),
        suggestions(s -> !s.moves()).stream().map(Suggestion::summary).toList(),
        advice.alternatives(),
        effect.map(ChangeEffect::sentence).orElse(""),
        effect.map(PitCardMaker::pictures).orElse(List.of()),
        advice.suggestions(),
        advice.decisions(),
        advice.unexplained().stream().map(seen -> seen.question() + ": " + seen.words()).toList(),
        advice.wouldHelp().stream().map(Advice.Open::ask).toList(),
        advice.assumed(),
        sources());
  }

  private List<String> leading(boolean moves) {
    return Stream.concat(
            advice.lead().stream().map(lead -> "First, " + AdviceWords.first(lead, moves)),
            AdviceWords.restore(advice).stream())
        .toList();
  }

  private List<Suggestion> suggestions(Predicate<Suggestion> which) {
    return advice.suggestions().stream().filter(which).toList();
  }

  private List<Check> checks(Predicate<Check> which) {
    return advice.firstChecks().stream().filter(which).toList();
  }

  private static String look(Check check) {
    return check.question() == null ? check.what() + ". " + check.action() : check.what();
  }

  private static Stream<String> all(
      List<Suggestion> suggestions, Function<Suggestion, List<String>> part) {
    return suggestions.stream().flatMap(s -> part.apply(s).stream()).distinct();
  }

  private Move move(Suggestion suggestion) {
    return new Move(
        suggestion.lever().id(),
        suggestion.summary(),
        AdviceWords.sureness(suggestion),
        reference(suggestion),
        sides(suggestion),
        suggestion.steps().stream().filter(AdviceWords::saysWhichWay).toList(),
        suggestion.confirm(),
        suggestion.undo());
  }

  private static String reference(Suggestion suggestion) {
    if (suggestion.target() == null) {
      return "by so many positions";
    }
    return suggestion.target().reference().equals("neutral")
        ? "from neutral"
        : "degrees from upright";
  }

  private List<SideSetting> sides(Suggestion suggestion) {
    Optional<Sides> now =
        suggestion.lever() == Lever.CAMBER ? situation.kart().camber() : situation.kart().caster();
    String turn =
        suggestion.washers() == null
            ? "%s %s"
                .formatted(
                    AdviceWords.count(suggestion.positions()),
                    suggestion.direction() == Direction.LESS ? "less" : "more")
            : "see washers";
    return List.of(
        new SideSetting(
            "Left",
            reading(now.map(Sides::left)),
            suggestion.target() == null ? turn : angle(suggestion.target().left()),
            turn),
        new SideSetting(
            "Right",
            reading(now.map(Sides::right)),
            suggestion.target() == null ? turn : angle(suggestion.target().right()),
            turn));
  }

  private static String reading(Optional<Degrees> angle) {
    return angle.map(Degrees::signed).orElse("not told");
  }

  private static String angle(double degrees) {
    return Degrees.of(degrees).signed();
  }

  private static List<String> washers(List<Suggestion> now) {
    return now.stream()
        .filter(suggestion -> suggestion.washers() != null)
        .findFirst()
        .map(suggestion -> suggestion.washers().lines())
        .orElse(List.of())
        .stream()
        .map(line -> Printable.shown(line, MOST_LINE))
        .toList();
  }

  private static List<Picture> pictures(ChangeEffect effect) {
    KartViews views = new KartViews(effect);
    ChangeCurves curves = ChangeCurves.of(effect);
    List<Picture> pictures = new ArrayList<>(List.of(views.front(), views.side()));
    pictures.add(CurvePlots.liftOverBraking(curves));
    pictures.add(CurvePlots.liftOverSteer(curves));
    pictures.add(CurvePlots.lean(curves));
    return pictures;
  }

  private List<String> sources() {
    return Stream.concat(
            advice.firstChecks().stream()
                .filter(check -> check.kind() != CheckKind.LOOK)
                .flatMap(check -> check.sources().stream()),
            advice.suggestions().stream()
                .flatMap(suggestion -> suggestion.reasons().stream())
                .flatMap(reason -> reason.sources().stream()))
        .distinct()
        .toList();
  }
}
