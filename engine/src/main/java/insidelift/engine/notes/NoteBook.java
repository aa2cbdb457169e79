package insidelift.engine.notes;

import insidelift.engine.units.Units;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * The notes and the bibliography that this build ships. A note is read when it is first asked for:
 * one advice needs a dozen of them, not all.
 */
public final class NoteBook {

  private static final String ROOT = "/insidelift/notes/";

  private final Map<String, String> files;
  private final Map<String, Note> read = new ConcurrentHashMap<>();
  private final UnaryOperator<String> words;
  private volatile Map<String, String> bibliography;

  private NoteBook(Map<String, String> files, UnaryOperator<String> words) {
    this.files = files;
    this.words = words;
  }

  /**
   * The same notes and a shop's own beside them.
   *
   * @param own notes whose ids no note of this build has
   * @param sources what the sources that they name stand for
   * @throws IllegalArgumentException if an id is taken
   */
  public NoteBook with(List<Note> own, Map<String, String> sources) {
    Map<String, String> all = new LinkedHashMap<>(files);
    NoteBook more = new NoteBook(all, words);
    for (Note note : own) {
      if (all.putIfAbsent(note.id(), "") != null) {
        throw new IllegalArgumentException("the note \"" + note.id() + "\" is there already");
      }
      more.read.put(note.id(), note.said(words));
    }
    Map<String, String> known = new LinkedHashMap<>(bibliography());
    known.putAll(sources);
    more.bibliography = known;
    read.forEach(more.read::putIfAbsent);
    return more;
  }

  /** Opens the notes of this build. */
  public static NoteBook open() {
    Map<String, String> files = new LinkedHashMap<>();
    for (String line : lines("index.txt")) {
      files.put(line.substring(line.indexOf('/') + 1, line.length() - ".md".length()), line);
    }
    return new NoteBook(files, UnaryOperator.identity());
  }

  /** Opens the notes of this build, with what they measure said in other units. */
  public static NoteBook open(Units units) {
    NoteBook metric = open();
    return units.metric() ? metric : new NoteBook(metric.files, units::prose);
  }

  /** The ids of all notes, in the order of folders and names. */
  public List<String> ids() {
    return List.copyOf(files.keySet());
  }

  /** The note of that id, if there is one. */
  public Optional<Note> find(String id) {
    return files.containsKey(id) ? Optional.of(note(id)) : Optional.empty();
  }

  /**
   * The note of that id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Note note(String id) {
    String file = files.get(id);
    if (file == null) {
      throw new IllegalArgumentException("there is no note \"" + id + '"');
    }
    return read.computeIfAbsent(
        id, key -> NoteReader.read(String.join("\n", lines(file))).said(words));
  }

  /** The bibliography: what each source's id stands for. */
  public Map<String, String> bibliography() {
    Map<String, String> known = bibliography;
    if (known == null) {
      known = new LinkedHashMap<>();
      for (String line : lines("bibliography.md")) {
        int colon = line.indexOf(": ");
        if (line.startsWith("- ") && colon > 0) {
          known.put(line.substring(2, colon), line.substring(colon + 2).strip());
        }
      }
      bibliography = known;
    }
    return known;
  }

  private static List<String> lines(String file) {
    try (InputStream in = NoteBook.class.getResourceAsStream(ROOT + file)) {
      if (in == null) {
        throw new IllegalStateException("this build holds no \"" + file + "\": build it again");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the notes of this build cannot be read", e);
    }
  }
}
