package insidelift.engine.proof;

/** What to do with the change. */
public enum Verdict {
  /** The laps are quicker, beyond chance and drift: leave the change on. */
  KEEP("keep"),
  /** The laps are slower, beyond chance and drift: put the old setting back. */
  UNDO("undo"),
  /** The interval holds both quicker and slower. */
  CANNOT_TELL("cannot-tell");

  private final String id;

  Verdict(String id) {
    this.id = id;
  }

  /** The word used for it in JSON. */
  public String id() {
    return id;
  }
}
