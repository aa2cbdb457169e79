package insidelift.engine.logbook;

import insidelift.shared.situation.Printable;

/** Something the user should know about the file itself, found while it was opened. */
public sealed interface Notice {

  /** The notice in one sentence. */
  String sentence();

  /**
   * The last record was torn and has been moved out of the way.
   *
   * @param bytes how much of it there is
   * @param file the name of the file beside the logbook that holds it now
   * @param before how many whole lines stand before it
   */
  record SetAside(int bytes, String file, int before) implements Notice {
    @Override
    public String sentence() {
      return "The last record was torn, as by a power cut while it was being written: its "
          + bytes
          + " bytes are set aside in "
          + file
          + ", and the "
          + before
          + " lines before it are intact.";
    }
  }

  /**
   * The file ends in an unfinished record, which only a writer may set aside.
   *
   * @param bytes how much of it there is
   */
  record Unfinished(int bytes) implements Notice {
    @Override
    public String sentence() {
      return "The file ends in an unfinished record of "
          + bytes
          + " bytes: either it is being written right now, or it is torn and will be set aside"
          + " when the logbook is next written to.";
    }
  }

  /**
   * A line is not what was written. It is left as it is and not read.
   *
   * @param line its number
   * @param what what is wrong with it
   */
  record Damaged(int line, String what) implements Notice {
    @Override
    public String sentence() {
      return "Line "
          + line
          + " is damaged ("
          + Printable.shown(what, 200)
          + "); it is left as it is and not read.";
    }
  }

  /**
   * A record is whole but does not fit those before it, because one of them is damaged.
   *
   * @param line its line
   * @param what what does not fit
   */
  record DoesNotFit(int line, String what) implements Notice {
    @Override
    public String sentence() {
      return "Line "
          + line
          + " does not fit the lines before it ("
          + Printable.shown(what, 200)
          + "); it is left as it is and not read.";
    }
  }
}
