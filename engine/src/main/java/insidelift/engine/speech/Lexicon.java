package insidelift.engine.speech;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The words and phrases that are understood, each with the concepts it can stand for. A phrase is
 * found as it is written here, or by the stems of its words; the longest one wins.
 */
final class Lexicon {

  /** Words that say nothing and stand between the words of a phrase. */
  private static final String SKIP = "skip";

  /** Words that are no misspelling of a word of ours, though they look like one. */
  private static final String OTHER = "other-words";

  /** Letters a word must have before one wrong letter in it, or two, are forgiven. */
  private static final int ONE_TYPO = 5;

  private static final int TWO_TYPOS = 9;

  private static final class Node {
    final Map<String, Node> next = new HashMap<>();
    final Set<String> concepts = new TreeSet<>();
  }

  /** What was found: its concepts, and how many tokens it is made of. */
  record Found(Set<String> concepts, int length) {}

  private final Node exact = new Node();
  private final Node stems = new Node();
  private final Set<String> skip = new HashSet<>();
  private final Set<String> words = new HashSet<>();
  private final Set<String> others = new HashSet<>();
  private final Map<String, List<String>> byStart = new HashMap<>();
  private final Set<String> concepts = new TreeSet<>();

  private Lexicon(JsonNode data) {
    phrases(data, SKIP).forEach(skip::add);
    phrases(data, OTHER).forEach(others::add);
    data.fieldNames()
        .forEachRemaining(
            concept -> {
              if (!concept.equals(SKIP) && !concept.equals(OTHER)) {
                concepts.add(concept);
                phrases(data, concept).forEach(phrase -> add(phrase, concept));
              }
            });
    words.addAll(skip);
    words.forEach(
        word -> byStart.computeIfAbsent(word.substring(0, 1), key -> new ArrayList<>()).add(word));
  }

  static Lexicon load() {
    try (InputStream in = Lexicon.class.getResourceAsStream("/insidelift/speech/words.json")) {
      return new Lexicon(JsonMapper.builder().build().readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException("the words of this build cannot be read", e);
    }
  }

  private static List<String> phrases(JsonNode data, String concept) {
    return data.has(concept)
        ? List.of(data.get(concept).asText().strip().split("\\s*,\\s*"))
        : List.of();
  }

  private void add(String phrase, String concept) {
    List<Token> tokens = skipped(Token.all(phrase));
    Node said = exact;
    Node stem = stems;
    for (Token token : tokens) {
      said = said.next.computeIfAbsent(token.said(), key -> new Node());
      stem = stem.next.computeIfAbsent(token.stem(), key -> new Node());
      words.add(token.said());
    }
    if (!tokens.isEmpty()) {
      said.concepts.add(concept);
      stem.concepts.add(concept);
    }
  }

  Set<String> concepts() {
    return concepts;
  }

  /** The tokens without those that say nothing. */
  List<Token> skipped(List<Token> tokens) {
    return tokens.stream().filter(token -> !skip.contains(token.said())).toList();
  }

  /** The longest phrase that begins here; as it is written before as it is inflected. */
  Optional<Found> at(List<Token> tokens, int start) {
    Found said = longest(exact, tokens, start, true);
    Found stem = longest(stems, tokens, start, false);
    Found best = stem.length() > said.length() ? stem : said;
    return best.length() == 0 ? Optional.empty() : Optional.of(best);
  }

  private static Found longest(Node root, List<Token> tokens, int start, boolean asSaid) {
    Node node = root;
    Found found = new Found(Set.of(), 0);
    for (int at = start; at < tokens.size(); at++) {
      Token token = tokens.get(at);
      node = node.next.get(asSaid ? token.said() : token.stem());
      if (node == null) {
        return found;
      }
      if (!node.concepts.isEmpty()) {
        found = new Found(node.concepts, at - start + 1);
      }
    }
    return found;
  }

  /** The token, or the word of ours that it is a misspelling of. */
  Token spelt(Token token) {
    String word = token.said();
    if (word.length() < ONE_TYPO
        || !token.isWord()
        || words.contains(word)
        || others.contains(word)
        || stems.next.containsKey(token.stem())) {
      return token;
    }
    int allowed = word.length() < TWO_TYPOS ? 1 : 2;
    String best = null;
    int least = allowed + 1;
    boolean unique = false;
    for (String other : byStart.getOrDefault(word.substring(0, 1), List.of())) {
      if (other.length() >= ONE_TYPO - 1 && Math.abs(other.length() - word.length()) <= allowed) {
        int distance = distance(word, other);
        if (distance < least) {
          least = distance;
          best = other;
          unique = true;
        } else if (distance == least && best != null) {
          unique &= alone(other).equals(alone(best));
        }
      }
    }
    return best == null || !unique ? token : Token.of(best);
  }

  /** What a word means alone, or its stem where it means nothing alone. */
  private Set<String> alone(String word) {
    Token token = Token.of(word);
    return at(List.of(token), 0).map(Found::concepts).orElse(Set.of(token.stem()));
  }

  /** Letters to change, add, leave out or swap with their neighbour: Damerau (1964). */
  private static int distance(String word, String other) {
    int[][] least = new int[word.length() + 1][other.length() + 1];
    for (int at = 0; at <= word.length(); at++) {
      least[at][0] = at;
    }
    for (int to = 0; to <= other.length(); to++) {
      least[0][to] = to;
    }
    for (int at = 1; at <= word.length(); at++) {
      for (int to = 1; to <= other.length(); to++) {
        char here = word.charAt(at - 1);
        char there = other.charAt(to - 1);
        int changed = least[at - 1][to - 1] + (here == there ? 0 : 1);
        int longer = Math.min(least[at - 1][to], least[at][to - 1]) + 1;
        least[at][to] = Math.min(changed, longer);
        if (at > 1 && to > 1 && here == other.charAt(to - 2) && word.charAt(at - 2) == there) {
          least[at][to] = Math.min(least[at][to], least[at - 2][to - 2] + 1);
        }
      }
    }
    return least[word.length()][other.length()];
  }
}
