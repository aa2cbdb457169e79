package insidelift.console.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.notes.NoteBook;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class NotesPageTest {

  private static final NoteBook BOOK = NoteBook.open();
  private static final String PAGE = new Pages().notes(NotesPage.of(BOOK));

  private static List<String> all(String pattern) {
    return Pattern.compile(pattern).matcher(PAGE).results().map(r -> r.group(1)).toList();
  }

  @Test
  void every_note_has_its_place_and_a_link_to_it() {
    assertThat(all("<article id=\"([^\"]+)\"")).containsExactlyInAnyOrderElementsOf(BOOK.ids());
    assertThat(all("<a href=\"#([^\"]+)\"")).containsExactlyInAnyOrderElementsOf(BOOK.ids());
  }

  @Test
  void a_disputed_note_says_so_and_the_others_do_not() {
    long disputed = BOOK.ids().stream().filter(id -> BOOK.note(id).disputed()).count();
    assertThat(disputed).isPositive();
    assertThat(
            Pattern.compile("Disputed: the trade").matcher(PAGE).results().map(MatchResult::group))
        .hasSize((int) disputed);
  }

  @Test
  void the_page_runs_nothing_and_loads_nothing() {
    assertThat(PAGE).doesNotContain("<script", "<link", "src=", "url(");
    assertThat(all("href=\"([^#\"][^\"]*)\"")).isEmpty();
  }

  @Test
  void a_sheet_of_results_escapes_what_it_is_given() {
    ResultPage sheet =
        new ResultPage(
            "Drill",
            "<i>",
            "2026-05-09",
            "1 < 2",
            List.of("a"),
            List.of(List.of("<b>")),
            List.of());
    assertThat(new Pages().results(sheet))
        .contains("<strong>&lt;i&gt;</strong>", "1 &lt; 2", "<th scope=\"row\">&lt;b&gt;</th>")
        .doesNotContain("<i>", "<b>");
  }

  @Test
  void a_row_that_does_not_fit_its_headings_is_refused() {
    assertThatThrownBy(
            () ->
                new ResultPage("", "", "", "", List.of("a", "b"), List.of(List.of("1")), List.of()))
        .hasMessage("a row has 1 cells under 2 headings");
  }
}
