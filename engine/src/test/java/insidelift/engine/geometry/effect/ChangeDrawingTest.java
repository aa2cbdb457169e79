package insidelift.engine.geometry.effect;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.PublishedLoads;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChangeDrawingTest {

  private static final KartGeometry TYPICAL = PublishedLoads.KART;

  private static ChangeDrawing drawing(double camberDeg, double casterDeg) {
    return new ChangeDrawing(TYPICAL, TYPICAL.changed(camberDeg, casterDeg));
  }

  @Test
  void caster_is_drawn_from_the_side() {
    assertThat(drawing(0, 1).lines())
        .containsExactly(
            "Side view, kingpin of the left wheel seen from the left, down to the ground",
            "  <- forward                     |              :#     rearward ->",
            "                                 |           :#",
            "                                 |         :#",
            "                                 |      :#",
            "                                 |    @",
            "                                 | :#",
            "                                 @",
            "                              #: |",
            "                            @    |",
            "                         #:      |",
            "                      #:         |",
            "                    #:           |",
            "                 #:              |",
            "  ---------------------------------------------------------------- ground",
            ": before   # after   @ both   | plumb",
            "1 column = 2 mm across, 1 row = 21.7 mm up",
            "In words: caster goes from +12.8 to +13.8 deg, so the kingpin axis meets the",
            "  ground about 2 mm further ahead of the tyre.");
  }

  @Test
  void camber_is_drawn_from_the_front_with_the_top_moving_outboard() {
    List<String> view = drawing(0.5, 0).frontView();

    assertThat(view.get(1)).startsWith("  <- inboard").endsWith("outboard ->");
    assertThat(view.get(1).indexOf('#')).isEqualTo(view.get(1).indexOf(':') + 2);
    assertThat(view).contains("1 column = 1 mm across, 1 row = 21.7 mm up");
    assertThat(drawing(0.5, 0).sentence())
        .isEqualTo(
            "In words: camber goes from 0.0 to +0.5 deg, so the top of each front wheel moves about"
                + " 2 mm outboard.");
  }

  @Test
  void an_angle_that_nobody_measured_is_told_by_how_much_it_moves() {
    KartGeometry unmeasured = KartGeometry.typical();
    assertThat(new ChangeDrawing(unmeasured, unmeasured.changed(0.5, 0)).sentence())
        .isEqualTo(
            "In words: camber moves by +0.5 deg, so the top of each front wheel moves about 2 mm"
                + " outboard.");
  }

  @Test
  void a_lever_that_stays_is_not_drawn() {
    assertThat(drawing(0, 1).frontView()).isEmpty();
    assertThat(drawing(1, 0).sideView()).isEmpty();
  }

  @Test
  void any_drawing_is_ascii_and_fits_80_columns() {
    Random random = new Random(5);
    for (int i = 0; i < 500; i++) {
      KartGeometry kart =
          TYPICAL
              .with(Dimension.CASTER, 35 * random.nextDouble())
              .with(Dimension.CAMBER, 16 * random.nextDouble() - 8);
      KartGeometry after =
          kart.with(Dimension.CASTER, 35 * random.nextDouble())
              .with(Dimension.CAMBER, 16 * random.nextDouble() - 8);

      assertThat(new ChangeDrawing(kart, after).lines())
          .allMatch(line -> line.length() <= 80 && line.chars().allMatch(c -> c >= 32 && c < 127));
    }
  }
}
