package insidelift.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChangeDrawingTest {

  private static final KartGeometry TYPICAL = KartGeometry.typical();

  @Test
  void caster_is_drawn_from_the_side() {
    assertThat(ChangeEffect.of(TYPICAL, 0, 1).drawing().lines())
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
            "In words: caster goes from 12.80 to 13.80 deg, so the kingpin axis meets the",
            "  ground 31.9 mm ahead of the tyre instead of 29.5.");
  }

  @Test
  void camber_is_drawn_from_the_front_with_the_top_moving_outboard() {
    List<String> view = ChangeEffect.of(TYPICAL, 0.5, 0).drawing().frontView();

    assertThat(view.get(1)).startsWith("  <- inboard").endsWith("outboard ->");
    assertThat(view.get(1).indexOf('#')).isEqualTo(view.get(1).indexOf(':') + 2);
    assertThat(view).contains("1 column = 1 mm across, 1 row = 21.7 mm up");
    assertThat(ChangeEffect.of(TYPICAL, 0.5, 0).drawing().sentence())
        .isEqualTo(
            "In words: camber goes from 0.00 to +0.50 deg, so the top of each front wheel moves"
                + " 2.3 mm outboard.");
  }

  @Test
  void a_lever_that_stays_is_not_drawn() {
    assertThat(ChangeEffect.of(TYPICAL, 0, 1).drawing().frontView()).isEmpty();
    assertThat(ChangeEffect.of(TYPICAL, 1, 0).drawing().sideView()).isEmpty();
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
