package insidelift.console.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The colours of the pages against their paper, light and dark. Formula and limits: Web Content
 * Accessibility Guidelines 2.2, definitions of "relative luminance" and "contrast ratio", criteria
 * 1.4.3 (text: 4.5 to 1), 1.4.6 (text, enhanced: 7 to 1) and 1.4.11 (what is drawn: 3 to 1).
 */
class ContrastTest {

  private static final double ENHANCED = 7;
  private static final double DRAWN = 3;
  private static final Pattern ROOT = Pattern.compile(":root \\{(.*?)}", Pattern.DOTALL);
  private static final Pattern COLOUR = Pattern.compile("--(\\w+): #([0-9a-f]{6})");

  private static double luminance(String hex) {
    double[] linear =
        IntStream.of(0, 2, 4)
            .mapToDouble(at -> Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0)
            .map(c -> c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
            .toArray();
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }

  private static double contrast(String one, String other) {
    double first = luminance(one);
    double second = luminance(other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  /** The palettes of the page: light first, then dark. */
  private static List<Map<String, String>> palettes() {
    return ROOT.matcher(Cards.page(Cards.NOTHING, ""))
        .results()
        .map(
            root -> {
              Map<String, String> palette = new LinkedHashMap<>();
              for (Matcher m = COLOUR.matcher(root.group(1)); m.find(); ) {
                palette.put(m.group(1), m.group(2));
              }
              return palette;
            })
        .toList();
  }

  @Test
  void theFormulaGivesTheRatiosThatAreKnown() {
    assertThat(contrast("ffffff", "000000")).isEqualTo(21, within(1e-9));
    assertThat(contrast("777777", "777777")).isEqualTo(1, within(1e-9));
    // The lightest grey that passes 4.5 to 1 on white, and the next one, which fails: widely known.
    assertThat(contrast("767676", "ffffff")).isEqualTo(4.54, within(0.005));
    assertThat(contrast("777777", "ffffff")).isEqualTo(4.48, within(0.005));
  }

  @Test
  void everyTextColourHasEnhancedContrastInLightAndDark() {
    assertThat(palettes()).hasSize(2);
    for (Map<String, String> palette : palettes()) {
      for (String ink : List.of("ink", "quiet", "warn")) {
        assertThat(contrast(palette.get(ink), palette.get("paper")))
            .as("%s on %s", ink, palette)
            .isGreaterThanOrEqualTo(ENHANCED);
      }
    }
  }

  @Test
  void everythingDrawnThatMeansSomethingStandsOut() {
    for (Map<String, String> palette : palettes()) {
      for (String ink : List.of("rule", "before", "after", "warn")) {
        assertThat(contrast(palette.get(ink), palette.get("paper")))
            .as("%s on %s", ink, palette)
            .isGreaterThanOrEqualTo(DRAWN);
      }
    }
  }

  @Test
  void beforeAndAfterDifferInDashesAndMarksAndNotInColourAlone() {
    String page = Cards.page(Cards.WET, "");
    assertThat(page)
        .contains("svg .before { stroke: var(--before); stroke-width: 2; stroke-dasharray: 6 4; }");
    assertThat(page)
        .containsPattern("svg \\.after \\{ stroke: var\\(--after\\); stroke-width: 2; }");
    assertThat(page).contains("class=\"before hollow\"").contains("class=\"after filled\"");
  }
}
