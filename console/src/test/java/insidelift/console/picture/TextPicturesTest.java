package insidelift.console.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.ChangeEffect;
import insidelift.engine.geometry.KartGeometry;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.LapTimes;
import insidelift.engine.proof.Proof;
import insidelift.engine.units.KnownUnit;
import insidelift.shared.situation.EdgeTemperatures;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TextPicturesTest {

  private static final ChangeEffect CHANGE = ChangeEffect.of(KartGeometry.typical(), 1, 0);
  private static final ChangeEffect NONE = ChangeEffect.of(KartGeometry.typical(), 0, 0);
  private static final EdgeTemperatures LEFT = new EdgeTemperatures(61.5, 66, 72.5);
  private static final EdgeTemperatures RIGHT = new EdgeTemperatures(60, 64.5, 70);

  private static List<TextPicture> all() {
    return List.of(
        TextPictures.sweep(CHANGE),
        TextPictures.sweep(NONE),
        TextPictures.loads(CHANGE),
        TextPictures.loads(NONE),
        TextPictures.faces(LEFT, RIGHT, KnownUnit.CELSIUS),
        TextPictures.laps(
            Proof.of(
                LapTimes.of("before", 61, 50.3, 50.1, 50.2, 50.4, 50.2),
                LapTimes.of("after", 61, 49.8, 49.9, 49.7, 49.8, 49.9),
                Optional.empty(),
                Feel.UNKNOWN)));
  }

  @Test
  void every_picture_fits_a_screen_of_80_by_24_with_its_title_and_sentence() {
    assertThat(all())
        .allSatisfy(
            picture -> {
              assertThat(picture.lines()).hasSizeLessThanOrEqualTo(19);
              assertThat(picture.lines()).allMatch(line -> line.length() <= 80);
              assertThat(String.join("", picture.lines())).matches("[ -~°]*");
              assertThat(picture.sentence().length()).isLessThan(240);
            });
  }

  @Test
  void the_sweep_puts_each_wheel_where_its_lean_is() {
    TextPicture sweep = TextPictures.sweep(CHANGE);
    String scale = sweep.lines().get(0);
    double least = Double.parseDouble(scale.substring(9, scale.indexOf('°', 9)).strip());
    String most = scale.stripTrailing();
    double highest =
        Double.parseDouble(most.substring(most.lastIndexOf(' ') + 1, most.length() - 1));
    String full = sweep.lines().get(7);
    double perColumn = (highest - least) / 65;

    assertThat(full).startsWith("     30 |");
    assertThat(least + (full.indexOf('I') - 9) * perColumn).isEqualTo(7.3, within(perColumn));
    assertThat(least + (full.indexOf('O') - 9) * perColumn).isEqualTo(-3.9, within(perColumn));
    assertThat(least + (full.indexOf('i') - 9) * perColumn).isEqualTo(6.4, within(perColumn));
    assertThat(sweep.sentence())
        .isEqualTo(
            "Steered from straight ahead to 30°, the inner front wheel goes from +1.0° to +7.3° of"
                + " lean and the outer from +1.0° to -3.9°; before the change they ended at +6.4°"
                + " and -4.7°.");
  }

  @Test
  void a_kart_that_stays_as_it_is_is_drawn_once() {
    assertThat(String.join("\n", TextPictures.sweep(NONE).lines()))
        .doesNotContain("small letters")
        .doesNotContain("o |");
    assertThat(TextPictures.loads(NONE).lines()).hasSize(5).noneMatch(l -> l.contains(":"));
    assertThat(TextPictures.loads(NONE).sentence()).doesNotContain("instead");
  }

  @Test
  void a_bar_is_as_long_as_its_load() {
    List<String> lines = TextPictures.loads(CHANGE).lines();
    assertThat(lines.get(0)).endsWith("600");
    for (String line : lines.subList(1, 9)) {
      long cells = line.chars().filter(c -> c == '#' || c == ':').count();
      double load = Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1));
      assertThat((cells - 1) * 600 / 51.0).as(line).isEqualTo(load, within(600 / 51.0));
    }
  }

  @Test
  void a_wheel_off_the_ground_has_no_bar() {
    assertThat(new Strip(10, 0, 100).bar(0, '#')).hasToString(" ".repeat(10));
    assertThat(new Strip(10, 0, 100).bar(1, '#')).hasToString("#" + " ".repeat(9));
  }

  @Test
  void two_marks_in_one_place_are_both_owned_up_to() {
    assertThat(new Strip(3, 0, 2).mark(1, 'I').mark(1, 'O')).hasToString(" * ");
    assertThat(new Strip(3, 0, 2).rule(1).mark(1, 'O')).hasToString(" O ");
  }

  @Test
  void tyre_faces_are_told_from_edge_to_edge() {
    assertThat(TextPictures.faces(LEFT, RIGHT, KnownUnit.CELSIUS).sentence())
        .isEqualTo(
            "Left front tyre: outer edge 72.5 °C, middle 66.0 °C, inner edge 61.5 °C; right front"
                + " tyre: outer edge 70.0 °C, middle 64.5 °C, inner edge 60.0 °C.");
  }
}
