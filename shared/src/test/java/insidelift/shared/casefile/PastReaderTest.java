package insidelift.shared.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a case file may tell of before, and the sentence that answers everything else. */
class PastReaderTest {

  private static final Vocabulary VOCABULARY = Vocabulary.load();
  private static final String RUN = "{\"camber\": 0.5, \"caster\": 1, \"water\": \"wet\"}";

  private static Situation read(String text) throws CaseProblem {
    return new CaseReader(VOCABULARY).read("{\"schema\": 1, " + text + "}");
  }

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(CaseProblem.class).hasMessage(message);
  }

  private static String history(int runs) {
    return "\"history\": [" + String.join(", ", java.util.Collections.nCopies(runs, RUN)) + "]";
  }

  @Test
  void theReadingsBeforeTheLastChangeAreRead() throws Exception {
    KartRecord past =
        read("\"kart\": {\"before\": {\"caster\": {\"left\": 2, \"right\": 2}}}").kart().past();

    assertThat(past.before().orElseThrow().casterFromNeutral()).contains(Degrees.of(2));
    assertThat(past.before().orElseThrow().camber()).isEmpty();
  }

  @Test
  void aBaselineHasCamberCasterAndToe() throws Exception {
    Baseline dry =
        read("\"kart\": {\"baseline\": {\"dry\": {\"camber\": {\"left\": 0.5, \"right\": 0.5},"
                + " \"toe\": {\"left\": 20, \"right\": -20}}}}")
            .kart()
            .past()
            .baseline()
            .get("dry");

    assertThat(dry.front().camber()).contains(Sides.both(Degrees.of(0.5)));
    assertThat(dry.toe()).contains(new Baseline.Toe(20, -20, Optional.empty()));
  }

  @Test
  void aBaselineTellsWhatTheDriverAboardAdds() throws Exception {
    Baseline dry =
        read("\"kart\": {\"baseline\": {\"dry\": {\"camber\": {\"left\": 0.5, \"right\": 0.5},"
                + " \"toe\": {\"left\": 1, \"right\": 1.5}, \"laden\": {\"camber\": {\"left\": -0.25,"
                + " \"right\": -0.25}, \"toe\": {\"left\": 0.5, \"right\": 0.5}}}}}")
            .kart()
            .past()
            .baseline()
            .get("dry");

    assertThat(dry.camberOffset()).contains(Degrees.of(-0.75));
    assertThat(dry.casterOffset()).isEmpty();
    assertThat(dry.toeOffset()).contains(-0.75);
  }

  @Test
  void toeReadOverAnotherDiscIsNotCompared() {
    Baseline.Measured stand =
        new Baseline.Measured(
            FrontEnd.UNKNOWN, Optional.of(new Baseline.Toe(1, 1, Optional.of(280.0))));
    Baseline.Measured laden =
        new Baseline.Measured(
            FrontEnd.UNKNOWN, Optional.of(new Baseline.Toe(1, 1, Optional.of(250.0))));

    assertThat(new Baseline(stand, laden, Map.of(), Map.of()).toeOffset()).isEmpty();
    assertThat(new Baseline(stand, stand, Map.of(), Map.of()).toeOffset()).contains(0.0);
  }

  @Test
  void whatABaselineDoesNotTellIsAsItWasBefore() throws Exception {
    Baseline before =
        read("\"kart\": {\"baseline\": {\"dry\": {\"caster\": {\"left\": 12, \"right\": 12,"
                + " \"reference\": \"absolute\", \"neutral\": 11}, \"hubs\": \"long\","
                + " \"noted\": {\"by\": \"Ada\", \"track\": \"Larkmoor Bowl\"}}}}")
            .kart()
            .past()
            .baseline()
            .get("dry");
    Baseline now =
        new Baseline(
            new Baseline.Measured(
                FrontEnd.UNKNOWN, Optional.of(new Baseline.Toe(1, 1, Optional.empty()))),
            Baseline.Measured.UNKNOWN,
            Map.of("hubs", "short"),
            Map.of("by", "Mira"));

    Baseline all = now.or(before);

    assertThat(all.front()).isEqualTo(before.front());
    assertThat(all.toe()).isEqualTo(now.toe());
    assertThat(all.levers()).containsExactly(Map.entry("hubs", "short"));
    assertThat(all.noted())
        .containsExactlyInAnyOrderEntriesOf(Map.of("by", "Mira", "track", "Larkmoor Bowl"));
    assertThat(Baseline.UNKNOWN.or(before)).isEqualTo(before);
  }

  @Test
  void aLeverThatStandsAtItsEndIsReadWithTheWordForIt() throws Exception {
    assertThat(
            read("\"kart\": {\"levers\": {\"front-width\": \"widest\", \"hubs\": \"fixed\"}}")
                .kart()
                .past()
                .levers())
        .containsOnly(Map.entry("front-width", "widest"), Map.entry("hubs", "fixed"));
    refused(
        "\"kart\": {\"levers\": {\"front-width\": \"wide\"}}",
        "kart.levers.front-width: \"wide\" is not one of widest, narrowest, fixed");
    refused(
        "\"kart\": {\"levers\": {\"driver\": \"fixed\"}}",
        "kart.levers: \"driver\" is not a key here; the keys are axle, ballast, bars,"
            + " front-height, front-width, hubs, pressures, rear-height, rear-pressure, rear-width,"
            + " seat, seat-height, struts, toe");
  }

  @Test
  void sixRunsBeforeAreReadAndSevenAreNot() throws Exception {
    assertThat(read(history(6)).history()).hasSize(6);
    refused(history(7), "history: 7 runs are more than the 6 that are kept: leave the oldest out");
  }

  @Test
  void aRunTellsWhereItStoodAndWhatWasSaid() throws Exception {
    Driven run =
        read("\"history\": [{\"camber\": 0.5, \"water\": \"dry\", \"turn-in\": \"good\","
                + " \"changed\": \"caster-more\", \"effect\": \"worse\", \"undo\": true}]")
            .history()
            .get(0);

    assertThat(run.camber()).contains(Degrees.of(0.5));
    assertThat(run.caster()).isEmpty();
    assertThat(run.answers())
        .containsEntry("last-change", "caster-more")
        .containsEntry("last-effect", "worse")
        .containsEntry("turn-in", "good");
    assertThat(run.undo()).isTrue();
  }

  @Test
  void whatItDoesNotKnowIsRefusedAtItsPlace() {
    refused("\"history\": 5", "history: this must be a list in brackets");
    refused(
        "\"history\": [" + RUN + ", {\"water\": \"soaked\"}]",
        "history[2].water: \"soaked\" is not one of dry, damp, wet, standing");
    refused("\"history\": [{\"undo\": \"yes\"}]", "history[1].undo: this must be true or false");
    refused(
        "\"history\": [{\"camber\": 11}]", "history[1].camber: 11 is outside -10 to 10 degrees");
    refused(
        "\"history\": [{\"feel\": \"good\"}]",
        "history[1]: \"feel\" is not a key here; the keys are camber, caster, changed, effect, exit,"
            + " mid-corner, steering-weight, turn-in, undo, water");
    refused(
        "\"kart\": {\"baseline\": {\"damp\": {}}}",
        "kart.baseline: \"damp\" is not a key here; the keys are dry, wet");
    refused(
        "\"kart\": {\"baseline\": {\"dry\": {\"toe\": {\"left\": 20.5, \"right\": 0}}}}",
        "kart.baseline.dry.toe.left: 20.5 is outside -20 to 20 mm");
    refused(
        "\"kart\": {\"baseline\": {\"dry\": {\"hubs\": \" \"}}}",
        "kart.baseline.dry.hubs: a word is missing; leave the key out where nothing is known");
    refused(
        "\"kart\": {\"baseline\": {\"dry\": {\"hubs\": \"" + "x".repeat(61) + "\"}}}",
        "kart.baseline.dry.hubs: 61 characters are too many; the most is 60");
    refused(
        "\"kart\": {\"baseline\": {\"dry\": {\"noted\": {\"colour\": \"red\"}}}}",
        "kart.baseline.dry.noted: \"colour\" is not a key here; the keys are by, checked-by, cold,"
            + " date, hot, track, washers, weather");
    refused(
        "\"kart\": {\"baseline\": {\"dry\": {\"laden\": {\"hubs\": \"long\"}}}}",
        "kart.baseline.dry.laden: \"hubs\" is not a key here; the keys are camber, caster, toe");
    refused(
        "\"kart\": {\"baseline\": {\"dry\": {\"toe\": {\"left\": 1, \"right\": 1, \"discMm\": 99}}}}",
        "kart.baseline.dry.toe.discMm: 99 is outside 100 to 600 mm");
    refused(
        "\"kart\": {\"before\": {\"toe\": {}}}",
        "kart.before: \"toe\" is not a key here; the keys are camber, caster");
  }

  @Test
  void whatIsWrittenIsReadAgain() throws Exception {
    Situation told =
        read(
            "\"answers\": {\"water\": \"dry\"}, \"kart\": {\"camber\": {\"left\": 1, \"right\": 1},"
                + " \"before\": {\"camber\": {\"left\": 0.5, \"right\": 0.5}, \"caster\": {\"left\":"
                + " 12, \"right\": 12, \"reference\": \"absolute\", \"neutral\": 11}},"
                + " \"baseline\": {\"wet\": {\"caster\": {\"left\": 2, \"right\": 2}, \"toe\":"
                + " {\"left\": 3, \"right\": 3, \"discMm\": 280}, \"laden\": {\"toe\": {\"left\": 2,"
                + " \"right\": 2}}, \"front-width\": \"two spacers a side\", \"noted\": {\"by\": \"Ada\"}}},"
                + " \"levers\": {\"hubs\": \"longest\"}}, \"history\": ["
                + RUN
                + ", {\"changed\": \"other\", \"effect\": \"same\", \"undo\": true}]");

    assertThat(new CaseReader(VOCABULARY).read(new CaseWriter(VOCABULARY).write(told)))
        .isEqualTo(told);
    assertThat(told.with("turn-in", "good").history()).isEqualTo(told.history());
    assertThat(told.over(Situation.UNKNOWN).history()).isEqualTo(told.history());
    assertThat(told.with(told.kart()).history()).isEqualTo(told.history());
    assertThat(told.kart().with(null, null).past()).isEqualTo(told.kart().past());
  }
}
