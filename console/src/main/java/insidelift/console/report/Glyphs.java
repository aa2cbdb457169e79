package insidelift.console.report;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.List;

/** The few characters beyond ASCII that are ever shown, and what stands for them without. */
public final class Glyphs {

  private final boolean rich;

  private Glyphs(boolean rich) {
    this.rich = rich;
  }

  /** Characters for an output in that encoding. */
  public static Glyphs forOutput(Charset charset) {
    CharsetEncoder encoder = charset.canEncode() ? charset.newEncoder() : null;
    return new Glyphs(encoder != null && encoder.canEncode("°±·"));
  }

  /** The line with nothing in it that the output cannot show. */
  public String fit(String line) {
    return rich
        ? line
        : line.replace(" °C", " deg C")
            .replace(" °F", " deg F")
            .replace("°", " deg")
            .replace("±", "+/-")
            .replace("·", " ");
  }

  public List<String> fit(List<String> lines) {
    return rich ? lines : lines.stream().map(this::fit).toList();
  }
}
