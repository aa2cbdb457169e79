package insidelift.console.picture;

import java.util.List;

/**
 * A picture in characters.
 *
 * @param title what it shows
 * @param lines the picture, at most 80 columns wide and 20 lines high
 * @param sentence the same in one sentence, with the numbers
 */
public record TextPicture(String title, List<String> lines, String sentence) {

  /** The lines cannot be changed from outside. */
  public TextPicture {
    lines = List.copyOf(lines);
  }
}
