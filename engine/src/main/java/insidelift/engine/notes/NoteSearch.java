package insidelift.engine.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import opennlp.tools.stemmer.PorterStemmer;
import opennlp.tools.tokenize.SimpleTokenizer;

/**
 * Finds notes by words, whatever their endings: "tyres" finds "tyre" (M. F. Porter's stemmer,
 * 1980).
 */
public final class NoteSearch {

  /** What a word in the title counts against one in the text. */
  private static final int TITLE = 3;

  private static final int TEXT = 1;

  /** A note that was found, and how well it fits. */
  private record Hit(Note note, int score) {}

  private final NoteBook notes;
  private final PorterStemmer stemmer = new PorterStemmer();

  /** A search in these notes. */
  public NoteSearch(NoteBook notes) {
    this.notes = notes;
  }

  /** The notes that hold all the words, those with the words in their title first. */
  public List<Note> find(List<String> words) {
    Set<String> wanted = stems(String.join(" ", words));
    if (wanted.isEmpty()) {
      return List.of();
    }
    List<Hit> hits = new ArrayList<>();
    for (String id : notes.ids()) {
      Note note = notes.note(id);
      int score = score(note, wanted);
      if (score > 0) {
        hits.add(new Hit(note, score));
      }
    }
    return hits.stream()
        .sorted(Comparator.comparingInt((Hit hit) -> -hit.score()))
        .map(Hit::note)
        .toList();
  }

  private int score(Note note, Set<String> wanted) {
    Set<String> title = stems(note.id() + " " + note.title());
    Set<String> text =
        stems(
            String.join(
                " ",
                Stream.concat(
                        Stream.of(note.because()),
                        note.sections().values().stream().flatMap(List::stream))
                    .toList()));
    int score = 0;
    for (String word : wanted) {
      if (title.contains(word)) {
        score += TITLE;
      } else if (text.contains(word)) {
        score += TEXT;
      } else {
        return 0;
      }
    }
    return score;
  }

  private Set<String> stems(String text) {
    Set<String> stems = new HashSet<>();
    for (String token :
        SimpleTokenizer.INSTANCE.tokenize(text.toLowerCase(Locale.ROOT).replace('-', ' '))) {
      if (Character.isLetterOrDigit(token.charAt(0))) {
        stems.add(stemmer.stem(token));
      }
    }
    return stems;
  }
}
