package insidelift.console.log;

import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.engine.logbook.file.Notice;
import java.io.PrintWriter;
import java.util.List;

/** What is wrong with the logbook that an answer rests on. */
public final class LogDamage {

  private LogDamage() {}

  /**
   * Says it.
   *
   * @return the code to exit with: an answer that may lack something is not quite one
   */
  public static int say(List<Notice> notices, PrintWriter err) {
    notices.forEach(notice -> err.println("insidelift: " + Text.safe(notice.sentence())));
    err.flush();
    return notices.stream().anyMatch(Notice::lost) ? ExitCode.FAILED : 0;
  }
}
