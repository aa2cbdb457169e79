package insidelift.console.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import insidelift.console.CommandRun;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.DemoSeason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardCommandTest {

  @TempDir private Path folder;

  private Path source;
  private Path card;

  @BeforeEach
  void aCase() throws IOException {
    source = folder.resolve("case.json");
    card = folder.resolve("card.html");
    Files.writeString(source, "{\"schema\": 1, \"answers\": {\"water\": \"wet\"}}");
  }

  private static CommandRun card(Object... words) {
    String[] text = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      text[i] = words[i].toString();
    }
    return CommandRun.of(new CardCommand(), text);
  }

  private void refused(String sentence, Object... words) {
    CommandRun run = card(words);
    assertThat(run.err()).isEqualTo("insidelift: " + sentence + System.lineSeparator());
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void a_card_is_one_file_and_nothing_beside_it() throws IOException {
    CommandRun run = card(source, "--out", card, "--for", "Mira & Jo");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo("The pit card is in " + card + "." + System.lineSeparator());
    assertThat(run.exit()).isZero();
    assertThat(Files.readString(card)).contains("<strong>Mira &amp; Jo</strong>");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactlyInAnyOrder(source, card);
    }
  }

  @Test
  void a_card_may_be_read_by_whoever_may_read_other_files() throws IOException {
    assertThat(card(source, "--out", card).exit()).isZero();
    assertThat(Files.getPosixFilePermissions(card))
        .isEqualTo(Files.getPosixFilePermissions(source));
  }

  @Test
  void a_file_that_exists_is_kept_unless_it_may_be_replaced() throws IOException {
    Files.writeString(card, "mine");

    refused(card + ": this file exists already; --force replaces it", source, "--out", card);
    assertThat(card).hasContent("mine");

    assertThat(card(source, "--out", card, "--force").exit()).isZero();
    assertThat(Files.readString(card)).startsWith("<!DOCTYPE html>");
  }

  @Test
  void a_place_that_cannot_be_written_is_named() {
    refused(folder + ": this is a folder; name a file in it", source, "--out", folder);
    Path nowhere = folder.resolve("no").resolve("card.html");
    refused(
        nowhere + ": there is no such folder; make it first, or name another",
        source,
        "--out",
        nowhere);
    refused("-: this is no name for a file; name one, as in card.html", source, "--out", "-");
    refused("a\\u{0}b: this cannot be the name of a file", source, "--out", "a\u0000b");
  }

  @Test
  void a_folder_without_permission_is_named() throws IOException {
    assumeFalse("root".equals(System.getProperty("user.name")), "root may write anywhere");
    Path locked = Files.createDirectory(folder.resolve("locked"));
    Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-xr-xr-x"));
    Path there = locked.resolve("card.html");
    refused(
        there + ": there is no permission to write it; name another place", source, "--out", there);
  }

  @Test
  void a_case_that_cannot_be_used_leaves_no_card() throws IOException {
    Path missing = folder.resolve("missing.json");
    refused(missing + ": there is no such file", missing, "--out", card);
    Files.writeString(source, "{\"schema\": 1, \"answers\": {\"water\": \"soaked\"}}");
    refused(
        source + ": answers.water: \"soaked\" is not one of dry, damp, wet, standing",
        source,
        "--out",
        card);
    Files.writeString(
        source,
        "{\"schema\": 1, \"answers\": {\"water\": \"wet\"},"
            + " \"kart\": {\"geometry\": {\"casterDeg\": 99}}}");
    CommandRun run = card(source, "--out", card);
    assertThat(run.err()).startsWith("insidelift: " + source + ": kart.geometry.casterDeg: 99 ");
    assertThat(card).doesNotExist();
  }

  @Test
  void a_logged_run_is_a_case_and_names_its_driver_kart_and_day() throws LogbookProblem {
    Logbook season = DemoSeason.load(folder);
    int number = season.runs().get(0).number();
    CommandRun run =
        CommandRun.of(new CardCommand(() -> folder), "run:" + number, "--out", card.toString());
    assertThat(run.err()).isEmpty();
    String driver = season.name(season.runs().get(0).entry().driver());
    assertThat(card).content().contains("for <strong>" + driver + ", ");

    CommandRun none =
        CommandRun.of(
            new CardCommand(() -> folder), "run:99999", "--out", card.toString(), "--force");
    assertThat(none.exit()).isEqualTo(1);
    assertThat(none.err())
        .isEqualTo("insidelift: run:99999: the logbook has no such run" + System.lineSeparator());
  }

  @Test
  void one_case_is_needed_and_not_two() {
    CommandRun none = card("--out", card);
    assertThat(none.exit()).isEqualTo(2);
    assertThat(none.err()).startsWith("Missing required parameter: 'CASE'");

    CommandRun both = card(source, "last", "--out", card);
    assertThat(both.exit()).isEqualTo(2);
    assertThat(both.err()).startsWith("Unmatched argument at index 1: 'last'");
  }

  @Test
  void the_place_for_the_card_must_be_told() {
    CommandRun run = card(source);
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).startsWith("Missing required option: '--out=FILE'");
  }
}
