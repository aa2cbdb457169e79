package insidelift.engine.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bibliography says how much of each source was seen, and what for; no note claims more. */
class SourcesTest {

  private static final Path BIBLIOGRAPHY = Path.of("..", "knowledge-notes", "bibliography.md");
  private static final String FULL = "Seen: in full.";
  private static final Set<String> PUBLISHED =
      Set.of(FULL, "Seen: an extract.", "Seen: not again.");
  private static final Pattern EXTENT =
      Pattern.compile("(Seen: in full|Seen: an extract|Seen: not again|Nothing \\w+)\\.$");

  /** Words that make a proof of what was only read about. */
  private static final Pattern PROOF =
      Pattern.compile(
          "\\b(?:proof|proves?|proved|proven)\\b"
              + "|\\b(?:test|study|measurement)s? (?:show|find|found|measure|confirm)\\w*"
              + "|\\bmeasured (?:by|in) [a-z]+-",
          Pattern.CASE_INSENSITIVE);

  /** A line of the bibliography with the list under it: by note, what was seen for it. */
  private record Source(String id, String extent, Map<String, String> carries) {
    boolean published() {
      return PUBLISHED.contains(extent);
    }

    boolean inPart() {
      return published() && !extent.equals(FULL);
    }

    /** Whether a text names this source: by its id, or by the author or title in the id. */
    boolean isNamedIn(String text) {
      String words = id.replaceFirst("-\\d+$", "").replace('-', ' ');
      String first = words.substring(0, (words + " ").indexOf(' '));
      String name = first.startsWith("kart") || first.length() < 4 ? words : first;
      return Pattern.compile("\\b(?:" + id + "|" + name + ")\\b")
          .matcher(text.toLowerCase(Locale.ROOT))
          .find();
    }
  }

  private static Map<String, Source> read(List<String> lines) {
    Map<String, Source> sources = new LinkedHashMap<>();
    Source last = null;
    for (String line : lines) {
      int colon = line.indexOf(": ");
      if (line.startsWith("- ")) {
        Matcher extent = EXTENT.matcher(line);
        String id = line.substring(2, colon);
        last = new Source(id, extent.find() ? extent.group() : "", new LinkedHashMap<>());
        sources.put(id, last);
      } else if (last != null) {
        last.carries().put(line.strip().substring(2, colon - 2), line.substring(colon + 2));
      }
    }
    return sources;
  }

  private static List<String> remarks(List<Note> notes, List<String> lines) {
    Map<String, Source> sources = read(lines);
    List<String> remarks = new ArrayList<>();
    for (Source source : sources.values()) {
      if (source.extent().isEmpty()) {
        remarks.add("how much of \"%s\" was seen is not said".formatted(source.id()));
      }
      for (String id : source.carries().keySet()) {
        if (notes.stream().noneMatch(n -> n.id().equals(id) && n.sources().contains(source.id()))) {
          remarks.add(
              "\"%s\" was seen for \"%s\", which does not cite it".formatted(source.id(), id));
        }
      }
    }
    for (Note note : notes) {
      List<Source> published =
          note.sources().stream()
              .map(sources::get)
              .filter(s -> s != null && s.published())
              .toList();
      for (Source source : published) {
        if (source.carries().getOrDefault(note.id(), "").isBlank()) {
          remarks.add(
              "\"%s\" cites \"%s\", which was not seen to say it"
                  .formatted(note.id(), source.id()));
        }
      }
      remarks.addAll(
          claimsTooMuch(note, sources.values().stream().filter(Source::inPart).toList()));
      if (!published.isEmpty() && published.stream().allMatch(Source::inPart)) {
        for (String block : blocks(note)) {
          if (PROOF.matcher(block).find()) {
            remarks.add(
                "\"%s\" speaks of proof, and its sources were seen in part".formatted(note.id()));
          }
        }
      }
    }
    return remarks;
  }

  /** A source that was seen in part is reported wherever a note names it. */
  private static List<String> claimsTooMuch(Note note, List<Source> inPart) {
    return inPart.stream()
        .filter(
            source ->
                blocks(note).stream()
                    .filter(source::isNamedIn)
                    .anyMatch(block -> !block.contains("reported")))
        .map(
            source ->
                "\"%s\" names \"%s\", which was seen in part, without \"reported\""
                    .formatted(note.id(), source.id()))
        .toList();
  }

  private static List<String> blocks(Note note) {
    return Stream.concat(
            Stream.of(note.title(), note.because()),
            note.sections().values().stream().flatMap(List::stream))
        .toList();
  }

  private static Note note(String id, String sources, String claim) {
    return NoteReader.read(
        """
        ---
        id: %s
        kind: claim
        lever: camber
        title: A title
        sources: %s
        disputed: false
        review: 2027-11-25
        ---
        ## Claim
        %s
        """
            .formatted(id, sources, claim));
  }

  private static final List<String> SOUND =
      List.of(
          "- guide-2005: a guide. Seen: in full.",
          "  - wide: wider grips.",
          "- dove: T. Dove. Seen: an extract.",
          "  - narrow: narrower: calms.",
          "- common-practice: what people do. Nothing published.");

  private static final Note WIDE =
      note("wide", "guide-2005, common-practice", "Wider (guide-2005).");

  private static Note narrow(String claim) {
    return note("narrow", "dove", claim);
  }

  private static final Note NARROW =
      narrow("Narrower calms, as reported in dove. A test may follow.");

  @Test
  void noNoteClaimsMoreThanWasSeen() throws IOException {
    NoteBook book = NoteBook.open();
    List<Note> notes = book.ids().stream().map(book::note).toList();
    assertThat(remarks(notes, Files.readAllLines(BIBLIOGRAPHY))).isEmpty();
  }

  @Test
  void theListsUnderTheSourcesAreNoSources() {
    assertThat(NoteBook.open().bibliography().keySet())
        .contains("crg-2005")
        .doesNotContain("lever-rear-width");
    assertThat(remarks(List.of(WIDE, NARROW), SOUND)).isEmpty();
  }

  @Test
  void aSourceThatWasNotSeenToSayItIsFound() {
    List<String> silent = SOUND.stream().filter(line -> !line.contains("wide:")).toList();
    assertThat(remarks(List.of(WIDE, NARROW), silent))
        .containsExactly("\"wide\" cites \"guide-2005\", which was not seen to say it");
  }

  @Test
  void aNoteThatDoesNotCiteWhatWasSeenForItIsFound() {
    assertThat(remarks(List.of(note("wide", "common-practice", "Wider."), NARROW), SOUND))
        .containsExactly("\"guide-2005\" was seen for \"wide\", which does not cite it");
    assertThat(remarks(List.of(WIDE), SOUND))
        .containsExactly("\"dove\" was seen for \"narrow\", which does not cite it");
  }

  @Test
  void aSourceWithoutItsExtentIsFound() {
    List<String> open = SOUND.stream().map(l -> l.replace(" Nothing published.", "")).toList();
    assertThat(remarks(List.of(WIDE, NARROW), open))
        .containsExactly("how much of \"common-practice\" was seen is not said");
  }

  @Test
  void aSourceSeenInPartThatIsNotReportedIsFound() {
    String remark = "\"narrow\" names \"dove\", which was seen in part, without \"reported\"";
    assertThat(remarks(List.of(WIDE, narrow("Narrower calms (dove).")), SOUND))
        .containsExactly(remark);
    assertThat(remarks(List.of(WIDE, narrow("Dove says so.")), SOUND)).containsExactly(remark);
    assertThat(remarks(List.of(WIDE, narrow("Doves fly.")), SOUND)).isEmpty();
  }

  @Test
  void aProofFromASourceSeenInPartIsFound() {
    String remark = "\"narrow\" speaks of proof, and its sources were seen in part";
    for (String claim :
        List.of("It is reported, and tests show it.", "A study found it.", "This proves it.")) {
      assertThat(remarks(List.of(WIDE, narrow(claim)), SOUND)).as(claim).containsExactly(remark);
    }
  }
}
