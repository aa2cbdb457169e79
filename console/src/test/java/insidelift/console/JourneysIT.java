package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Visitor.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Five people who want to know what to do, on a pseudo-terminal of 80 columns and 24 rows: the
 * answer is one page, and stands whole above the line to go on from.
 */
class JourneysIT {

  /** What somebody knows, beginning with nothing. */
  enum Journey {
    NOVICE_IN_THE_RAIN("What to do now", 20),
    TWELVE_MINUTES("What to do now", 24),
    TIRED_HANDS("What to do now", 20),
    FAULT("Fix this first", 4),
    ALL_WELL("Hold:", 24);

    private final String heading;
    private final int lines;

    Journey(String heading, int lines) {
      this.heading = heading;
      this.lines = lines;
    }

    private Visitor on(Paddock paddock) {
      return switch (this) {
        case NOVICE_IN_THE_RAIN -> DialogueIT.novice(paddock);
        case TWELVE_MINUTES -> DialogueIT.mechanic(paddock).knows("time-left", "12");
        case TIRED_HANDS ->
            new Visitor(paddock)
                .knows("water", "dry")
                .knows("tyres", "slicks")
                .knows("power", "low")
                .knows("driver-strength", "limited")
                .knows("steering-weight", "heavy")
                .knows("turn-in", "good")
                .knows("mid-corner", "good")
                .knows("exit", "good");
        case FAULT -> new Visitor(paddock).knows("true", "1 6");
        case ALL_WELL -> DialogueIT.mechanic(paddock).knows("mid-corner", "good");
      };
    }
  }

  @TempDir private Path data;

  @ParameterizedTest
  @EnumSource
  void theAdviceIsUnderstoodFromOneScreen(Journey journey) throws IOException {
    try (Paddock paddock = Paddock.in(data).start()) {
      Visitor visitor = journey.on(paddock).goOnTo(Point.ANSWER);
      List<String> typed = visitor.seen().stream().filter(l -> l.startsWith(">>> ")).toList();
      long pages =
          1
              + visitor.seen().stream()
                  .filter(line -> line.matches("\\[\\d+/\\d+] Enter:.*"))
                  .count();
      Files.writeString(
          Path.of("target", "journey-" + journey + ".txt"),
          "%d lines typed, %d keys, %d page of advice%n"
              .formatted(typed.size(), keys(typed.stream()), pages));
      assertThat(pages).isEqualTo(1);
      assertThat(typed).hasSizeLessThanOrEqualTo(journey.lines);
      assertThat(paddock.screen()).anyMatch(line -> line.startsWith(journey.heading));
    }
  }

  /** The keys of lines as the visitor records them, with Enter as one. */
  private static int keys(Stream<String> typed) {
    return typed
        .map(line -> line.substring(">>> ".length()).replace("[Enter]", "."))
        .mapToInt(String::length)
        .sum();
  }
}
