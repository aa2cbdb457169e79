package insidelift.engine.logbook.file;

import insidelift.shared.situation.Printable;

/** Something the user should know about the file itself, found while it was opened. */
public sealed interface Notice {

  /** The notice in one sentence. */
  String sentence();

  /** Whether something that was written down cannot be read, so that an answer may lack it. */
  default boolean lost() {
    return true;
  }

  /**
   * The last record was torn and has been moved out of the way.
   *
   * @param bytes how much of it there is
   * @param file the name of the file beside the logbook that holds it now
   * @param before how many intact lines stand before it
   */
  record SetAside(int bytes, String file, int before) implements Notice {
    @Override
    public boolean lost() {
      return false;
    }

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
    public boolean lost() {
      return false;
    }

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

  /**
   * Lines are not there.
   *
   * @param from the number of the first
   * @param to the number of the last, which may be the same
   */
  record Missing(int from, int to) implements Notice {
    @Override
    public String sentence() {
      return (from == to ? "Line %d is missing" : "Lines %d to %d are missing").formatted(from, to)
          + "; what was written there is lost, unless you have a copy of the file.";
    }
  }

  /**
   * There is no logbook where one was.
   *
   * @param file how the file is called, safe to print
   * @param lines how many lines it had
   */
  record Gone(String file, int lines) implements Notice {
    @Override
    public String sentence() {
      return file
          + " is gone or empty; it had "
          + lines
          + " lines when it was last written to. Put it back before you add to it: the next record"
          + " begins a new one.";
    }
  }

  /**
   * A line stands there more than once; the first is read.
   *
   * @param line its number
   * @param same whether both say the same
   */
  record Twice(int line, boolean same) implements Notice {
    @Override
    public boolean lost() {
      return !same;
    }

    @Override
    public String sentence() {
      return same
          ? "Line " + line + " is there more than once; it counts once."
          : "Line "
              + line
              + " is there more than once, and each says something else; the first is read.";
    }
  }

  /** Lines stand in another order than they were written in. */
  record Moved() implements Notice {
    @Override
    public boolean lost() {
      return false;
    }

    @Override
    public String sentence() {
      return "Lines have changed places; they are read by their numbers, and nothing is lost.";
    }
  }

  /**
   * Something stands between the lines that is none of them, as where a line end is damaged.
   *
   * @param line the number of the line before it; 0 if it stands before all
   */
  record Stray(int line) implements Notice {
    @Override
    public boolean lost() {
      return false;
    }

    @Override
    public String sentence() {
      return (line == 0 ? "Before the first line" : "Behind line " + line)
          + " stands something that is no line; it is left as it is, and no line is lost by it.";
    }
  }
}
