package insidelift.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.sheet.Cell.Origin;
import insidelift.engine.sheet.FrontEndSheet.Told;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Changeover.Job;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The sheet of a kart, and the way from one row of it to the other. */
class FrontEndSheetTest {

  private static final Advisor ADVISOR = Advisor.load();

  private static final String OWN =
      "'baseline': {'dry': {'camber': {'left': 0.5, 'right': 0.5}, 'caster': {'left': 1, 'right':"
          + " 1}, 'toe': {'left': 0.8, 'right': 0.8, 'discMm': 250}, 'hubs': 'long'}, 'wet':"
          + " {'camber': {'left': 1.5, 'right': 1.5}, 'caster': {'left': 3, 'right': 3}, 'toe':"
          + " {'left': 3, 'right': 3}, 'hubs': 'short', 'front-width': 'widest'}}";

  private static Situation kart(String answers, String kart) throws Exception {
    return new CaseReader(ADVISOR.vocabulary())
        .read(
            "{'schema': 1, 'answers': {%s}, 'kart': {%s}}"
                .formatted(answers, kart)
                .replace('\'', '"'));
  }

  private static Cell own(double value) {
    return Cell.both(value, Origin.OWN);
  }

  private static Cell start(double value) {
    return Cell.both(value, Origin.START);
  }

  @Test
  void aKartOfWhichNothingIsKnownHasStartsThatSayTheyAreOnlyThat() {
    FrontEndSheet sheet = FrontEndSheet.of(ADVISOR, Situation.UNKNOWN);

    assertThat(sheet.camber())
        .containsExactly(Cell.EMPTY, start(0), start(0.5), start(1), start(2));
    assertThat(sheet.caster()).containsExactly(Cell.EMPTY, start(0), start(1), start(2), start(3));
    assertThat(sheet.toe()).containsExactly(Cell.EMPTY, start(1), Cell.EMPTY, start(3), Cell.EMPTY);
    assertThat(sheet.others()).isEmpty();
    assertThat(sheet.own()).isEmpty();
  }

  @Test
  void aWeakDriverStartsWithLessCaster() throws Exception {
    FrontEndSheet sheet = FrontEndSheet.of(ADVISOR, kart("'driver-strength': 'limited'", ""));

    assertThat(sheet.caster()).containsExactly(Cell.EMPTY, start(0), start(0), start(1), start(2));
  }

  @Test
  void itsOwnRecordStandsBeforeAnyStartAndTheStepsBetweenAreWorkedOut() throws Exception {
    FrontEndSheet sheet =
        FrontEndSheet.of(
            ADVISOR, kart("'water': 'damp'", "'camber': {'left': 0, 'right': 1}, " + OWN));

    assertThat(sheet.camber())
        .containsExactly(
            new Cell(0, 1, Origin.OWN),
            own(0.5),
            Cell.both(1, Origin.STEP),
            own(1.5),
            // Twice as far from dry as wet is, but no further than a lever goes.
            Cell.both(2, Origin.STEP));
    assertThat(sheet.caster())
        .containsExactly(
            Cell.EMPTY, own(1), Cell.both(2, Origin.STEP), own(3), Cell.both(3, Origin.STEP));
    assertThat(sheet.toe()).containsExactly(Cell.EMPTY, own(0.8), Cell.EMPTY, own(3), Cell.EMPTY);
    assertThat(sheet.discMm()).isEqualTo(250);
    assertThat(sheet.others())
        .containsExactlyInAnyOrder(
            new Told("hubs", "long", "short"), new Told("front-width", "", "widest"));
  }

  @Test
  void casterIsToldFromNeutralWhateverItWasReadAs() throws Exception {
    FrontEndSheet sheet =
        FrontEndSheet.of(
            ADVISOR,
            kart(
                "",
                "'baseline': {'dry': {'caster': {'left': 12.5, 'right': 12, 'reference':"
                    + " 'absolute', 'neutral': 11}}}"));

    assertThat(sheet.caster().get(1)).isEqualTo(new Cell(1.5, 1, Origin.OWN));
  }

  @Test
  void casterWithoutItsNeutralIsNotGuessed() throws Exception {
    FrontEndSheet sheet =
        FrontEndSheet.of(
            ADVISOR,
            kart(
                "",
                "'baseline': {'dry': {'caster': {'left': 12, 'right': 12, 'reference':"
                    + " 'absolute'}}}"));

    assertThat(sheet.caster().get(1)).isEqualTo(start(0));
  }

  @Test
  void theChangeoverNamesWhatTheSheetSaysAndElseWhatIsUsual() throws Exception {
    FrontEndSheet sheet = FrontEndSheet.of(ADVISOR, kart("", OWN));

    assertThat(sheet.toWet().changeover().sheet())
        .isEqualTo("camber +1.5°, caster +3.0° from neutral, toe 3 mm out a side");
    assertThat(sheet.toWet().changeover().jobs())
        .extracting(Job::what)
        .contains(
            "Front width: widest, as on its own sheet",
            "Toe: 3 mm out a side, as on its own sheet",
            "Bars out");
    assertThat(sheet.toDry().changeover().sheet())
        .isEqualTo("camber +0.5°, caster +1.0° from neutral, toe 0.8 mm out a side over 250 mm");
    assertThat(sheet.toDry().changeover().jobs())
        .extracting(Job::what)
        .contains("Front spacers back in as before, both sides");
    assertThat(FrontEndSheet.of(ADVISOR, Situation.UNKNOWN).toWet().changeover().sheet()).isNull();
  }

  @Test
  void overToTheWetAndBackEndsExactlyWhereItWas() throws Exception {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      String dry = row(random, -1, 1, 0, 1);
      String wet = row(random, 1.5, 3, 1.8, 3);
      Situation sheet =
          kart(
              "'driver-strength': 'strong', 'power': 'mid'",
              dry + ", 'baseline': {'dry': {%s}, 'wet': {%s}}".formatted(dry, wet));
      Kart inTheDry = sheet.kart();

      Kart inTheWet = changed(inTheDry, sheet, "wet", "dry");
      Kart again = changed(inTheWet, sheet, "dry", "wet");

      assertThat(inTheWet.front()).isEqualTo(inTheDry.past().baseline().get("wet").front());
      assertThat(again.front()).isEqualTo(inTheDry.past().baseline().get("dry").front());
    }
  }

  /** Camber and caster of both sides, equal within what counts as equal. */
  private static String row(Random random, double least, double most, double from, double to) {
    double camber = Math.round((least + random.nextDouble() * (most - least)) * 20) / 20.0;
    double caster = Math.round((from + random.nextDouble() * (to - from)) * 20) / 20.0;
    double apart = random.nextInt(3) * 0.1;
    return String.format(
        Locale.ROOT,
        "'camber': {'left': %.2f, 'right': %.2f}, 'caster': {'left': %.2f, 'right': %.2f}",
        camber,
        camber + apart,
        caster,
        caster + apart);
  }

  /** The kart after everything that the advice moves now. */
  private static Kart changed(Kart kart, Situation known, String water, String setupFor) {
    Advice advice =
        ADVISOR.advise(known.with(kart).with("water", water).with("setup-for", setupFor));
    FrontEnd front = kart.front();
    Sides camber = after(advice, Lever.CAMBER).or(front::camber).orElseThrow();
    Sides caster = after(advice, Lever.CASTER).or(front::caster).orElseThrow();
    return kart.with(camber, caster);
  }

  private static Optional<Sides> after(Advice advice, Lever lever) {
    return advice.suggestions().stream()
        .filter(suggestion -> suggestion.lever() == lever && suggestion.first())
        .map(Suggestion::target)
        .map(to -> new Sides(Degrees.of(to.left()), Degrees.of(to.right())))
        .findFirst();
  }

  @Test
  void aKartStandsAgainstItsOwnSheet() throws Exception {
    assertThat(Standing.of(Situation.UNKNOWN))
        .isEqualTo(new Standing("dry", "no sheet for it yet"));
    assertThat(Standing.of(kart("", OWN))).isEqualTo(new Standing("dry", "not measured"));
    assertThat(
            Standing.of(
                kart(
                    "'water': 'wet'",
                    "'camber': {'left': 1.25, 'right': 1.25}, 'caster': {'left': 3, 'right': 3}, "
                        + OWN)))
        .isEqualTo(new Standing("wet", "as its sheet"));
    assertThat(
            Standing.of(
                kart(
                    "'water': 'dry'",
                    "'camber': {'left': 1, 'right': 1}, 'caster': {'left': 0, 'right': 0}, "
                        + OWN)))
        .isEqualTo(new Standing("dry", "camber +0.5° off, caster -1.0° off"));
  }
}
