package insidelift.engine.logbook.file;

import insidelift.engine.logbook.entry.Plain;
import java.util.List;

/** How much of a logbook is whole. */
public final class LogCheck {

  private LogCheck() {}

  /** The count in words; what is wrong in particular is in {@link Logbook#notices}. */
  public static List<String> lines(Logbook book) {
    int read = book.lines().size();
    // Only now: the rest of a run is read when it is asked for.
    int lost = book.notices().stream().mapToInt(LogCheck::lines).sum();
    String records = read == 1 ? "1 record is" : read + " records are";
    String whole =
        lost == 0
            ? "%s whole; none is damaged or missing.".formatted(records)
            : "%s whole; damaged or missing: %d.".formatted(records, lost);
    return Plain.wrapped(whole, "  ");
  }

  private static int lines(Notice notice) {
    if (notice instanceof Notice.Missing missing) {
      return missing.to() - missing.from() + 1;
    }
    return notice instanceof Notice.Gone gone ? gone.lines() - 1 : notice.lost() ? 1 : 0;
  }
}
