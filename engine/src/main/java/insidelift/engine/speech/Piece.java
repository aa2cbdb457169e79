package insidelift.engine.speech;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A word or phrase that was recognised, or a word that was not.
 *
 * @param concepts what it can mean; empty for an unknown word
 * @param words as it was said
 * @param figures what it measures: key and value or values
 * @param answers what it answers by itself
 */
record Piece(
    Set<String> concepts,
    String words,
    Map<String, List<Double>> figures,
    Map<String, String> answers) {

  static Piece of(Set<String> concepts, String words) {
    return new Piece(concepts, words, Map.of(), Map.of());
  }

  boolean is(String concept) {
    return concepts.contains(concept);
  }

  boolean isUnknown() {
    return concepts.isEmpty();
  }
}
