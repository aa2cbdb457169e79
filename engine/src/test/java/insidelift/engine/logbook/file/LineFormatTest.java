package insidelift.engine.logbook.file;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.logbook.entry.KartEntry;
import insidelift.shared.situation.CaseProblem;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineFormatTest {

  /** A line with the right check whatever it says, as somebody who means harm could write it. */
  static byte[] checked(String body) {
    CRC32 crc = new CRC32();
    crc.update(body.getBytes(StandardCharsets.UTF_8));
    return String.format(Locale.ROOT, "%s,\"check\":\"%08x\"}\n", body, crc.getValue())
        .getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void the_check_is_the_published_crc_of_nine_digits() {
    // CRC-32 of "123456789", as catalogues of CRCs give it.
    byte[] line = "123456789,\"check\":\"cbf43926\"}".getBytes(StandardCharsets.US_ASCII);
    assertThat(LineFormat.intact(line, 0, line.length)).isTrue();
    line[0] = '2';
    assertThat(LineFormat.intact(line, 0, line.length)).isFalse();
  }

  @Test
  void no_beginning_of_a_line_passes_for_a_line() {
    KartEntry kart = KartEntry.named("x\",\"check\":\"00000000\"}");
    byte[] line = LineFormat.write(new Line(2, "2026-04-12T09:14:05Z", kart));
    for (int to = 0; to < line.length - 1; to++) {
      assertThat(LineFormat.intact(line, 0, to)).isFalse();
    }
    assertThat(LineFormat.intact(line, 0, line.length - 1)).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "boat|{}|entry: records of the kind \"boat\" are not known",
        "kart|{}|entry: the key \"name\" is missing",
        "kart|{\"name\":7}|entry.name: this must be a word in quotation marks, but it is the number"
            + " 7",
        "kart|{\"name\":\"a\",\"name\":\"b\"}|it is not JSON",
        "kart|{\"name\":\"\\u001b[2J\"}|kart name: it holds the control character \\u{1b}",
        "kart|{\"name\":\"a\",\"answers\":[]}|entry.answers: this must be an object in braces, but"
            + " it is a list",
        "day|{\"date\":\"12.4.\",\"track\":4}|entry.date: this must be a date such as 2026-04-12",
        "day|{\"date\":\"2026-04-12\",\"track\":4.5}|entry.track: this must be a whole number, but"
            + " it is the number 4.5",
        "run|{\"day\":5,\"kart\":2,\"driver\":3,\"run\":1,\"laps\":[[1]]}|entry.laps: a lap must be"
            + " its seconds, or its number and seconds",
        "run|{\"day\":5,\"kart\":2,\"driver\":3,\"run\":1,\"laps\":[5]}|entry.laps: a lap time"
            + " must be from 10 to 3600 s: 5.0",
        "run|{\"day\":5,\"kart\":2,\"driver\":3,\"run\":1,\"laps\":[[2,62],[1,62]]}|laps: lap"
            + " numbers must count upward: 1",
        "run|{\"day\":5,\"kart\":2,\"driver\":3,\"run\":1,\"feel\":\"great\"}|entry.feel: this must"
            + " be better, same, worse or unknown",
        "correction|{\"of\":2,\"kind\":\"correction\",\"now\":{\"of\":2,\"reason\":\"x\"},"
            + "\"reason\":\"x\"}|correction: a correction cannot stand in for another record",
      })
  void a_line_with_the_right_check_is_still_not_trusted(String kind, String entry, String message) {
    byte[] line =
        checked(
            "{\"n\":2,\"at\":\"2026-04-12T09:14:05Z\",\"kind\":\"%s\",\"entry\":%s"
                .formatted(kind, entry));
    assertThat(complaint(line)).isEqualTo(message);
  }

  /** What is wrong with a line: found at once, or for the rest of a run when it is asked for. */
  private static String complaint(byte[] line) {
    try {
      RecordContent held = LineFormat.read(line, 0, line.length - 1).held();
      assertThat(held.entry()).isEmpty();
      return held.damage().orElseThrow();
    } catch (CaseProblem e) {
      return e.getMessage();
    }
  }
}
