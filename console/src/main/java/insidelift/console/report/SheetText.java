package insidelift.console.report;

import java.util.ArrayList;
import java.util.List;

/** A kart's front-end sheet as text: the front fits on one screen, the back is the changeover. */
public final class SheetText {

  private final int width;

  public SheetText(int width) {
    this.width = width;
  }

  public List<String> front(KartSheet sheet) {
    Text text = new Text(width).heading("Front-end sheet: " + sheet.kart() + ", " + sheet.day());
    table(sheet, text);
    sheet.legend().forEach(line -> text.item("  ", line));
    if (!sheet.others().isEmpty()) {
      text.paragraph("Dry / wet: " + String.join("; ", sheet.others()) + ".");
    }
    if (!sheet.notTold().isEmpty()) {
      text.paragraph("Nobody told: " + sheet.notTold() + ".");
    }
    sheet.noted().forEach(text::paragraph);
    text.paragraph("On the back (--back): the changeover, and how to do without a gauge.");
    return text.lines();
  }

  public List<String> back(KartSheet sheet) {
    Text text = new Text(width).heading("Changeover: " + sheet.kart());
    sheet.timeEnds().forEach(line -> text.item("  ", line));
    text.heading("Dry to wet");
    sheet.toWet().forEach(line -> text.item("  [ ] ", line));
    text.heading("Wet to dry");
    sheet.toDry().forEach(line -> text.item("  [ ] ", line));
    text.blank();
    sheet.without().forEach(text::paragraph);
    text.heading("Take care");
    sheet.cautions().forEach(line -> text.item("  ! ", line));
    return text.lines();
  }

  /** The table in columns; on a screen that is too narrow for them, a line for each row. */
  private void table(KartSheet sheet, Text text) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(sheet.columns());
    lines.addAll(sheet.rows());
    int[] widths = new int[sheet.columns().size()];
    for (List<String> line : lines) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], line.get(i).length() + (i == 0 ? 0 : 2));
      }
    }
    List<String> table = new ArrayList<>();
    for (List<String> line : lines) {
      StringBuilder row = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String space = " ".repeat(widths[i] - line.get(i).length());
        row.append(i == 0 ? line.get(i) + space : space + line.get(i));
      }
      table.add(row.toString().stripTrailing());
    }
    if (table.stream().allMatch(row -> row.length() <= width)) {
      table.forEach(text::line);
      return;
    }
    for (List<String> row : sheet.rows()) {
      List<String> cells = new ArrayList<>();
      for (int i = 1; i < row.size(); i++) {
        cells.add(sheet.columns().get(i) + " " + row.get(i));
      }
      text.item("  ", row.get(0).strip() + ": " + String.join(", ", cells));
    }
  }
}
