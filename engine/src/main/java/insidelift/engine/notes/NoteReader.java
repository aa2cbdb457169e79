package insidelift.engine.notes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a note: front matter of fixed keys, then sections of paragraphs and list items. The form is
 * stricter than Markdown on purpose, so that a note reads the same in a terminal, on a page and in
 * an editor.
 */
final class NoteReader {

  private static final String FENCE = "---";

  /** Stands before and after the lines of a drawing, as in Markdown. */
  private static final String DRAWN = "```";

  private NoteReader() {}

  /**
   * The note that a text is.
   *
   * @throws IllegalArgumentException if the text is not of that form
   */
  static Note read(String text) {
    List<String> lines = text.lines().toList();
    boolean opens = !lines.isEmpty() && lines.get(0).equals(FENCE);
    int end = opens ? lines.subList(1, lines.size()).indexOf(FENCE) + 1 : 0;
    if (end < 1) {
      throw new IllegalArgumentException("a note opens with its front matter between two \"---\"");
    }
    Map<String, String> front = front(lines.subList(1, end));
    List<String> body = lines.subList(end + 1, lines.size());
    return new Note(
        front.get("id"),
        front.get("kind"),
        front.get("lever"),
        front.get("title"),
        front.getOrDefault("because", ""),
        List.of(front.get("sources").split(",\\s*")),
        front.get("disputed").equals("true"),
        front.get("review"),
        sections(parted(body, false)),
        parted(body, true));
  }

  /** The lines of the drawing, or all the others, without the marks around it. */
  private static List<String> parted(List<String> lines, boolean drawing) {
    List<String> parted = new ArrayList<>();
    boolean drawn = false;
    for (String line : lines) {
      if (line.equals(DRAWN)) {
        drawn = !drawn;
      } else if (drawn == drawing) {
        parted.add(line);
      }
    }
    if (drawn) {
      throw new IllegalArgumentException("the drawing does not end: its last line is \"```\"");
    }
    return List.copyOf(parted);
  }

  private static Map<String, String> front(List<String> lines) {
    Map<String, String> front = new LinkedHashMap<>();
    for (String line : lines) {
      int colon = line.indexOf(": ");
      if (colon < 1) {
        throw new IllegalArgumentException("front matter is \"key: value\", not \"" + line + '"');
      }
      front.put(line.substring(0, colon), line.substring(colon + 2).strip());
    }
    for (String key : List.of("id", "kind", "lever", "title", "sources", "disputed", "review")) {
      if (!front.containsKey(key)) {
        throw new IllegalArgumentException("the note lacks its \"" + key + '"');
      }
    }
    return front;
  }

  private static Map<String, List<String>> sections(List<String> lines) {
    Map<String, List<String>> sections = new LinkedHashMap<>();
    List<String> blocks = new ArrayList<>();
    boolean open = false;
    for (String line : lines) {
      if (line.startsWith("## ")) {
        blocks = new ArrayList<>();
        sections.put(line.substring(3).strip(), blocks);
        open = false;
      } else if (line.isBlank()) {
        open = false;
      } else if (item(line) > 0) {
        blocks.add(line.substring(item(line)));
        open = true;
      } else if (open) {
        blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1) + " " + line.strip());
      } else {
        blocks.add(line.strip());
        open = true;
      }
    }
    return sections;
  }

  /** The length of the mark that opens a list item, or 0. */
  private static int item(String line) {
    if (line.startsWith("- ")) {
      return 2;
    }
    int dot = line.indexOf(". ");
    return dot > 0 && dot < 3 && line.substring(0, dot).chars().allMatch(Character::isDigit)
        ? dot + 2
        : 0;
  }
}
