package insidelift.console.page;

import java.util.List;

/**
 * A sheet of results to print or keep: what was done, how it went, and what to learn next.
 *
 * @param title what was done
 * @param subject who did it, in the user's own words; empty if nobody said
 * @param day the day, ISO 8601
 * @param summary how it went, in a sentence
 * @param columns headings of the table, the first for what each row is about
 * @param rows the table; each row has as many cells as there are columns
 * @param next what to do or to read next
 */
public record ResultPage(
    String title,
    String subject,
    String day,
    String summary,
    List<String> columns,
    List<List<String>> rows,
    List<String> next) {

  /**
   * @throws IllegalArgumentException if a row has not as many cells as there are columns
   */
  public ResultPage {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    next = List.copyOf(next);
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row has %d cells under %d headings".formatted(row.size(), columns.size()));
      }
    }
  }
}
