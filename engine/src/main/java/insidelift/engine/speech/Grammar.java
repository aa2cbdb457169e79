package insidelift.engine.speech;

import insidelift.shared.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Words, frames and figures of this build; makes pieces of a sentence. */
final class Grammar {

  /** What a mark ends: a stretch, in which denial, time and condition hold, or a clause. */
  static final String FULL_STOP = ".";

  static final String QUESTION_MARK = "?";
  static final String COMMA = ",";

  private static final Set<String> LIKE = Set.of("like", "as");

  private final Lexicon lexicon = Lexicon.load();
  private final Frames frames = Frames.load();
  private final Figures figures = new Figures(Vocabulary.load());

  Frames frames() {
    return frames;
  }

  Lexicon lexicon() {
    return lexicon;
  }

  List<Piece> pieces(String sentence) {
    List<Token> tokens = lexicon.skipped(Token.all(sentence).stream().map(lexicon::spelt).toList());
    List<Piece> pieces = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      Optional<Figures.Measured> measured = figures.at(tokens, at);
      Optional<Lexicon.Found> found = lexicon.at(tokens, at);
      if (measured.isPresent()
          && found.map(Lexicon.Found::length).orElse(0) <= measured.get().length()) {
        pieces.add(measured.get().piece());
        at += measured.get().length();
      } else if (found.isPresent()) {
        int end = at + found.get().length();
        pieces.add(
            Piece.of(
                found.get().concepts(),
                String.join(" ", tokens.subList(at, end).stream().map(Token::said).toList())));
        at = end;
      } else {
        // "hard as a rock", "like a brick": what something is likened to says no more than that.
        boolean likened = at > 0 && LIKE.contains(tokens.get(at - 1).said());
        pieces.add(
            likened ? Piece.of(Set.of("filler"), tokens.get(at).said()) : single(tokens.get(at)));
        at++;
      }
    }
    return pieces;
  }

  private static Piece single(Token token) {
    String said = token.said();
    if (token.isNumber()) {
      return Piece.of(Set.of(Figures.NUMBER), said);
    }
    if (token.isWord()) {
      // "clumsily", "repeatedly": how it does it, not what it does.
      boolean how = said.length() > 5 && said.endsWith("ly");
      return Piece.of(token.name() || how ? Set.of("filler") : Set.of(), said);
    }
    if (said.contains("?")) {
      return Piece.of(Set.of(QUESTION_MARK), said);
    }
    return Piece.of(Set.of(said.matches("[.;!]+") ? FULL_STOP : COMMA), said);
  }
}
