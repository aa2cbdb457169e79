package insidelift.engine.audit;

import com.fasterxml.jackson.annotation.JsonInclude;
import insidelift.engine.audit.check.Remark;
import java.util.List;

/**
 * What an audit found. The record's shape is the shape of its JSON.
 *
 * @param schema the version of the shape
 * @param rules how many rules were audited
 * @param notes how many notes
 * @param checks each thing that was looked for, with what was found
 * @param visits what was visited, by kind
 * @param situations how many situations were visited in all
 * @param failed whether an error is left that nobody allowed
 */
public record AuditReport(
    int schema,
    int rules,
    int notes,
    List<Result> checks,
    List<Visit> visits,
    long situations,
    boolean failed) {

  /** The version of the report's shape. */
  public static final int SCHEMA = 1;

  /** Takes copies of the lists. */
  public AuditReport {
    checks = List.copyOf(checks);
    visits = List.copyOf(visits);
  }

  /**
   * What one check found.
   *
   * @param id its name, as the allow-list has it
   * @param title what it looks for
   * @param remarks what it found and nobody allowed
   * @param allowed what it found and somebody allowed
   */
  public record Result(String id, String title, List<Remark> remarks, List<Allowed> allowed) {
    /** Takes copies of the lists. */
    public Result {
      remarks = List.copyOf(remarks);
      allowed = List.copyOf(allowed);
    }
  }

  /**
   * A remark that was allowed.
   *
   * @param remark the remark
   * @param reason why it may be
   * @param date since when, in ISO 8601
   */
  public record Allowed(Remark remark, String reason, String date) {}

  /**
   * How much of something was visited.
   *
   * @param of what
   * @param size how many combinations of answers there are, senseless ones among them
   * @param visited how many situations
   * @param whole whether all of them that make sense
   */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  public record Visit(String of, double size, long visited, boolean whole) {}
}
