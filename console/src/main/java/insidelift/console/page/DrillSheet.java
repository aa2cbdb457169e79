package insidelift.console.page;

import insidelift.engine.training.drill.ResultSheet.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A trainee's drills as a sheet of results. */
public final class DrillSheet {

  /** Topics to go over next: more are no plan. */
  private static final int MOST_TOPICS = 3;

  /** A topic that went like this needs no word. */
  private static final int WELL = 100;

  private DrillSheet() {}

  /**
   * The page of a sheet.
   *
   * @param trainee whose it is
   * @param day the day of the page
   */
  public static ResultPage of(
      insidelift.engine.training.drill.ResultSheet sheet, String trainee, LocalDate day) {
    List<List<String>> rows = sheet.table();
    List<String> mean = rows.get(rows.size() - 1);
    int cases = rows.size() - 1;
    return new ResultPage(
        "Drill: result sheet",
        trainee,
        day.toString(),
        "%s. Conclusion %s of 100 on average, safety %s."
            .formatted(cases == 1 ? "One case" : cases + " cases", mean.get(4), mean.get(6)),
        insidelift.engine.training.drill.ResultSheet.columns(),
        rows.stream().map(DrillSheet::row).toList(),
        next(sheet));
  }

  /** A row that begins with what it is about. */
  private static List<String> row(List<String> cells) {
    List<String> row = new ArrayList<>(cells);
    if (row.get(0).isEmpty()) {
      row.set(0, row.set(2, ""));
    }
    return row;
  }

  private static List<String> next(insidelift.engine.training.drill.ResultSheet sheet) {
    List<String> next = new ArrayList<>();
    next.addAll(sheet.leftOut());
    next.add(sheet.missed());
    sheet.first().ifPresent(next::add);
    next.addAll(sheet.habits());
    sheet.topics().stream()
        .filter(topic -> topic.conclusion() < WELL)
        .limit(MOST_TOPICS)
        .map(DrillSheet::again)
        .forEach(next::add);
    return next;
  }

  private static String again(Topic topic) {
    return "Go over %s: conclusion %d of 100 in %s."
        .formatted(
            topic.topic(),
            topic.conclusion(),
            topic.cases() == 1 ? "one case" : topic.cases() + " cases");
  }
}
