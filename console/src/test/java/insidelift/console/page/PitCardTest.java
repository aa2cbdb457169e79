package insidelift.console.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PitCardTest {

  @Test
  void a_change_says_which_way_how_far_and_what_the_gauge_should_read_on_both_sides() {
    PitCard card = Cards.card(Cards.WET_HEAVY, "");

    assertThat(card.headline()).isEqualTo("What to do now");
    assertThat(card.moves())
        .singleElement()
        .satisfies(
            move -> {
              assertThat(move.lever()).isEqualTo("camber");
              assertThat(move.sureness())
                  .isEqualTo("Experts split: try it and measure. Time: 20 to 30 minutes with toe.");
              assertThat(move.sides())
                  .containsExactly(
                      new PitCard.SideSetting("Left", "0.0°", "+1.0°", "2 more"),
                      new PitCard.SideSetting("Right", "0.0°", "+1.0°", "2 more"));
              assertThat(move.whichWay())
                  .singleElement()
                  .asString()
                  .contains("top eccentric outward");
              assertThat(move.confirm()).isNotEmpty();
              assertThat(move.undo()).isNotEmpty();
            });
    assertThat(card.held()).singleElement().asString().startsWith("Leave caster where it is");
    assertThat(card.steps()).hasSize(11).noneMatch(step -> step.startsWith("For this change"));
    assertThat(card.cautions()).anyMatch(caution -> caution.contains("torque"));
    assertThat(card.pictures()).hasSize(5);
  }

  @Test
  void a_kart_that_nobody_measured_is_not_given_a_reading() {
    assertThat(Cards.card(Cards.WET, "").moves())
        .hasSize(2)
        .flatExtracting(PitCard.Move::sides)
        .extracting(PitCard.SideSetting::now)
        .containsOnly("not told");
  }

  @Test
  void described_washers_replace_the_count_of_positions() {
    PitCard card = Cards.card(Cards.WASHERS, "");

    assertThat(card.washers()).isNotEmpty();
    assertThat(card.moves())
        .flatExtracting(PitCard.Move::sides)
        .extracting(PitCard.SideSetting::turn)
        .containsOnly("see washers");
  }

  @Test
  void a_fault_moves_nothing_and_says_what_to_put_right() {
    PitCard card = Cards.card(Cards.FAULT, "");

    assertThat(card.headline()).isEqualTo("Fix this first: no camber or caster change yet");
    assertThat(card.blocking()).isNotEmpty();
    assertThat(card.moves()).isEmpty();
    assertThat(card.pictures()).isEmpty();
    assertThat(Cards.page(Cards.FAULT, ""))
        .contains("Stop driving.")
        .contains("Nothing moves now, so there is nothing to draw.")
        .doesNotContain("<svg")
        .doesNotContain("gauge reads");
  }

  @Test
  void a_kart_without_adjusters_holds_and_names_other_levers() {
    PitCard card = Cards.card(Cards.HOLD, "");

    assertThat(card.headline()).isEqualTo("Hold: leave camber and caster as they are");
    assertThat(card.moves()).isEmpty();
    assertThat(card.others()).isNotEmpty();
  }

  @Test
  void nothing_known_is_not_dressed_up_as_advice() {
    assertThat(Cards.page(Cards.NOTHING, ""))
        .contains("Not enough to go on yet")
        .contains("Nothing known so far asks for a change or rules one out.")
        .contains("What would help to know")
        .doesNotContain("gauge reads");
  }

  @Test
  void the_page_needs_nothing_from_outside_and_runs_nothing() {
    for (String json :
        new String[] {Cards.WET, Cards.WASHERS, Cards.FAULT, Cards.HOLD, Cards.NOTHING}) {
      assertThat(Cards.page(json, ""))
          .startsWith("<!DOCTYPE html>")
          .doesNotContain("<script", "http:", "https:", "//", "src=", "href=", "url(", "@import");
    }
  }

  @Test
  void what_a_user_typed_is_text_and_nothing_else() {
    String page =
        Cards.page(
            Cards.WET, "<script>alert('x')</script>&\"\u202e\u001b[31m\u0000" + "a".repeat(300));

    assertThat(page)
        .doesNotContain("<script", "\u202e", "\u001b", "\u0000")
        .contains("&lt;script&gt;alert('x')&lt;/script&gt;&amp;")
        .contains("\\u{202e}\\u{1b}[31m\\u{0}")
        .doesNotContain("a".repeat(100));
  }

  @Test
  void every_caution_and_step_of_the_advice_stands_on_the_page() {
    PitCard card = Cards.card(Cards.WET, "");
    String page = new Pages().pitCard(card);

    assertThat(card.cautions()).isNotEmpty().allMatch(caution -> page.contains(escaped(caution)));
    assertThat(card.steps()).isNotEmpty().allMatch(step -> page.contains(escaped(step)));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
