package insidelift.console.report;

import java.util.List;

/** The help that is the same at every prompt. */
public final class HowToAnswer {

  private HowToAnswer() {}

  /** How to answer, whatever is asked. */
  public static List<String> lines(int width) {
    return new Text(width)
        .heading("How to answer")
        .item("  ", "a number or the first letters, then Enter: that choice")
        .item("  ", "u: I do not know (that is an answer too)")
        .item("  ", "?: what the words mean; what is toe: the note on a word")
        .item("  ", "back or undo: one step back; review: all answers, to change any")
        .item(
            "  ",
            "a sentence, as in pushes mid corner, lots of rubber down: it is read back and"
                + " counts once you confirm it")
        .item("  ", "why: what this answer is for; how camber: what speaks for and against")
        .item("  ", "why not caster more: what stands in the way")
        .item("  ", "what if water=wet: what would be different; rule NAME: a rule in words")
        .item("  ", "quit, or Ctrl-D at an empty line: leave; Ctrl-C: leave at once")
        .line("")
        .lines();
  }
}
