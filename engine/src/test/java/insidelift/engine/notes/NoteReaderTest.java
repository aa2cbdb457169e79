package insidelift.engine.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class NoteReaderTest {

  private static final String FRONT =
      """
      ---
      id: wet
      kind: claim
      lever: camber
      title: Wet: more camber
      because: the track is wet
      sources: common-practice, crg-2005
      disputed: true
      review: 2027-11-25
      ---
      """;

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> NoteReader.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void frontMatterAndSectionsAreRead() {
    Note note =
        NoteReader.read(
            FRONT
                + """
                ## Claim
                Two lines
                of one paragraph.

                A second one.

                ## Steps
                1. First
                   goes on.
                2. Second.
                - A dash.
                """);

    assertThat(note.id()).isEqualTo("wet");
    assertThat(note.kind()).isEqualTo("claim");
    assertThat(note.lever()).isEqualTo("camber");
    assertThat(note.title()).isEqualTo("Wet: more camber");
    assertThat(note.because()).isEqualTo("the track is wet");
    assertThat(note.sources()).containsExactly("common-practice", "crg-2005");
    assertThat(note.disputed()).isTrue();
    assertThat(note.review()).isEqualTo("2027-11-25");
    assertThat(note.section("Claim"))
        .containsExactly("Two lines of one paragraph.", "A second one.");
    assertThat(note.text("Claim")).isEqualTo("Two lines of one paragraph. A second one.");
    assertThat(note.section("Steps")).containsExactly("First goes on.", "Second.", "A dash.");
    assertThat(note.section("Feel")).isEmpty();
  }

  @Test
  void aNoteWithoutItsClauseIsLegal() {
    assertThat(NoteReader.read(FRONT.replace("because: the track is wet\n", "")).because())
        .isEmpty();
  }

  @Test
  void aMissingKeyIsNamed() {
    for (String key : List.of("id", "kind", "lever", "title", "sources", "disputed", "review")) {
      refused(
          FRONT.replaceFirst("(?m)^" + key + ": .*\n", ""), "the note lacks its \"" + key + '"');
    }
  }

  @Test
  void frontMatterIsKeysAndValues() {
    refused(
        FRONT.replace("kind: claim", "kind claim"),
        "front matter is \"key: value\", not \"kind claim\"");
  }

  @Test
  void aNoteOpensWithItsFrontMatter() {
    String message = "a note opens with its front matter between two \"---\"";
    refused("## Claim\nNo front matter.\n", message);
    refused("---\nid: wet\n", message);
    refused("", message);
  }

  @Test
  void aDrawingIsKeptLineByLineAndIsNoText() {
    Note note =
        NoteReader.read(
            FRONT + "## Drawing\nA wheel.\n\n```\n  \\   /\n\n- ## |\n```\n\n## Feel\nFine.\n");
    assertThat(note.drawing()).containsExactly("  \\   /", "", "- ## |");
    assertThat(note.section("Drawing")).containsExactly("A wheel.");
    assertThat(note.text("Feel")).isEqualTo("Fine.");
    assertThat(NoteReader.read(FRONT + "## Feel\nFine.\n").drawing()).isEmpty();
  }

  @Test
  void aDrawingThatDoesNotEndIsRefused() {
    refused(
        FRONT + "## Drawing\nA wheel.\n\n```\n|\n",
        "the drawing does not end: its last line is \"```\"");
  }

  @Test
  void anUnknownNoteIsRefused() {
    assertThat(NoteBook.open().find("no-such-note")).isEmpty();
    assertThatThrownBy(() -> NoteBook.open().note("no-such-note"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no note \"no-such-note\"");
  }
}
