package insidelift.engine.geometry.plausible;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlausibleKartsTest {

  private static final PlausibleKarts UNMEASURED = PlausibleKarts.of(KartGeometry.typical());

  /** Worked out beforehand over 60,000 random karts, by another program: 0 to 107 N and so on. */
  @Test
  void the_bands_of_an_unmeasured_kart_are_those_of_many_more_karts() {
    meets(Corner.TURN_IN, 0, 107, 0.30, 0.67, 1.39);
    meets(Corner.APEX, 0, 134, 0.16, 1.19, 1.93);
    meets(Corner.WET, 58, 241, 0.006, 0.83, 1.66);
  }

  private static void meets(
      Corner corner, double lowN, double highN, double inTheAir, double lowG, double highG) {
    CornerBands bands = CornerBands.of(corner, UNMEASURED);
    assertThat(bands.rearInnerN().low()).as(corner.name()).isCloseTo(lowN, within(8.0));
    assertThat(bands.rearInnerN().high()).as(corner.name()).isCloseTo(highN, within(8.0));
    assertThat(bands.inTheAir()).as(corner.name()).isCloseTo(inTheAir, within(0.04));
    assertThat(bands.liftOffG().low()).as(corner.name()).isCloseTo(lowG, within(0.06));
    assertThat(bands.liftOffG().high()).as(corner.name()).isCloseTo(highG, within(0.06));
  }

  @Test
  void the_more_is_measured_the_narrower_the_band() {
    KartGeometry measured =
        new KartGeometry(
            Map.of(
                Dimension.CASTER, 16.0,
                Dimension.HUB_OFFSET, 140.0,
                Dimension.FRONT_SHARE, 0.42,
                Dimension.MASS, 160.0));

    CornerBands bands = CornerBands.of(Corner.WET, PlausibleKarts.of(measured));

    assertThat(bands.rearInnerN().halfWidth())
        .isLessThan(CornerBands.of(Corner.WET, UNMEASURED).rearInnerN().halfWidth() - 10);
  }

  @Test
  void the_table_is_fixed_and_every_kart_of_it_stands() {
    assertThat(UNMEASURED.karts())
        .hasSize(256)
        .isEqualTo(PlausibleKarts.of(KartGeometry.typical()).karts());
    assertThat(UNMEASURED.karts())
        .allMatch(
            k -> k.kart().value(Dimension.CASTER) > 9.9 && k.kart().value(Dimension.CASTER) < 22.1);
    assertThat(UNMEASURED.in(Corner.APEX)).allMatch(in -> in.rearInnerN() >= 0);
  }

  @Test
  void a_small_kart_is_spread_about_its_own_size() {
    PlausibleKarts cadet = PlausibleKarts.of(new KartGeometry(Map.of(Dimension.WHEELBASE, 950.0)));

    assertThat(cadet.karts()).allMatch(k -> k.kart().value(Dimension.MASS) < 125);
    assertThat(cadet.karts()).allMatch(k -> k.kart().value(Dimension.WHEELBASE) < 954);
  }

  @Test
  void weights_move_a_band_and_none_moves_it_beyond_its_values() {
    double[] values = {3, 1, 2};
    assertThat(Band.of(values, new double[] {1, 1, 1})).isEqualTo(new Band(1, 2, 3));
    assertThat(Band.of(values, new double[] {1, 0, 0})).isEqualTo(new Band(3, 3, 3));
  }

  @Test
  void a_corner_asked_for_by_its_numbers_is_taken_exactly() {
    Corner asked = new Corner("", 12, 0.9, -0.6);
    List<PlausibleKart> karts = UNMEASURED.karts();

    assertThat(karts).allMatch(kart -> kart.takes(asked).steerDeg() == 12);
    assertThat(karts).anyMatch(kart -> kart.takes(Corner.TURN_IN).steerDeg() > 13);
  }
}
