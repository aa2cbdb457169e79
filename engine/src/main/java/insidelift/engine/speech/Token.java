package insidelift.engine.speech;

import insidelift.shared.situation.InputLimits;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import opennlp.tools.stemmer.PorterStemmer;
import opennlp.tools.tokenize.SimpleTokenizer;
import opennlp.tools.util.Span;

/**
 * A word, number or mark of a sentence.
 *
 * @param said the word in small letters
 * @param stem what it is inflected from
 * @param name whether it is written with a capital though nothing asks for one
 */
record Token(String said, String stem, boolean name) {

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d+)?");

  private static final int SHORTEST_STEM = 3;

  /** A decimal point or a sign that belongs to a number is no mark of its own. */
  private static final Pattern FIGURE =
      Pattern.compile("(?<![\\w.,])[-+]\\d+(?:[.,]\\d+)?|(?<![\\d.,])\\d+[.,]\\d+(?![\\d.,])");

  static Token of(String word) {
    // The stemmer keeps state, so each word gets one of its own; of a short word too little is
    // left.
    String stem = new PorterStemmer().stem(word);
    return new Token(word, stem.length() < SHORTEST_STEM ? word : stem, false);
  }

  boolean isNumber() {
    return NUMBER.matcher(said).matches();
  }

  double number() {
    return Double.parseDouble(said.replace(',', '.'));
  }

  boolean isWord() {
    return Character.isLetter(said.codePointAt(0));
  }

  static List<Token> all(String sentence) {
    String text = plain(sentence);
    List<Token> tokens = new ArrayList<>();
    Matcher figures = FIGURE.matcher(text);
    int from = 0;
    while (figures.find()) {
      words(text.substring(from, figures.start()), tokens);
      tokens.add(of(figures.group()));
      from = figures.end();
    }
    words(text.substring(from), tokens);
    return tokens;
  }

  private static void words(String text, List<Token> tokens) {
    for (Span span : SimpleTokenizer.INSTANCE.tokenizePos(text)) {
      String shown = text.substring(span.getStart(), span.getEnd());
      Token token = of(shown.toLowerCase(Locale.ROOT));
      boolean first = tokens.isEmpty() || !tokens.get(tokens.size() - 1).isWord();
      boolean capital = Character.isUpperCase(shown.codePointAt(0)) && shown.length() > 1;
      tokens.add(new Token(token.said(), token.stem(), capital && !first));
    }
  }

  /** Nothing in it can move a cursor or reverse the reading; contractions are spelt out. */
  private static String plain(String sentence) {
    StringBuilder plain = new StringBuilder();
    Normalizer.normalize(
            sentence.substring(0, Math.min(sentence.length(), 2 * InputLimits.MAX_SENTENCE)),
            Normalizer.Form.NFKC)
        .codePoints()
        .limit(InputLimits.MAX_SENTENCE)
        .map(point -> Character.getType(point) == Character.CONTROL && point != '\n' ? ' ' : point)
        .filter(point -> Character.getType(point) != Character.FORMAT)
        .forEach(plain::appendCodePoint);
    return plain
        .toString()
        .replace('\u2019', '\'')
        .replace('\u2212', '-')
        .replace("\n", " . ")
        .replaceAll("(?<=[\\p{L}\\d])-(?=\\p{L})", " ")
        .replaceAll("\\b(?:US|U/S|u/s)\\b", "understeer")
        .replaceAll("\\b(?:OS|O/S|o/s)\\b", "oversteer")
        .replaceAll("(?i)\\b(?:can|will|would|could) ?not\\b", "not")
        .replaceAll("(?i)\\b(?:ca|wo|would|could)n'?t\\b", "not")
        .replaceAll(
            "(?i)\\b(?:in|on)(?: the| a)? (wet|dry|rain|damp)\\b(?! (?:ty|ti|line|weather|set|rubb|patch))",
            "when it is $1")
        .replaceAll("(?i)\\bthis one\\b", "ours")
        .replaceAll("(?i)\\blf\\b", "left front")
        .replaceAll("(?i)\\brf\\b", "right front")
        .replaceAll("(?i)\\blr\\b", "left rear")
        .replaceAll("(?i)\\brr\\b", "right rear")
        .replaceAll("(?i)(?<=\\w) (?:so )?(?=(?:should|shall|must|do|can) (?:i|we)\\b)", " , ")
        .replaceAll("(?i)\\bain'?t\\b", "is not")
        .replaceAll("(?i)n't\\b", " not")
        .replaceAll("(?i)\\b(do|does|is|did|was|are|has|have|had)nt\\b", "$1 not")
        .replaceAll("(?i)\\b(it|he|she|that|there|what)'s\\b", "$1 is")
        .replaceAll("(?i)\\b(i)'m\\b", "$1 am")
        .replaceAll("(?i)\\b(we|they|you)'re\\b", "$1 are")
        .replaceAll("(?i)\\b(i|we|they|you)'ve\\b", "$1 have")
        .replaceAll("(?i)\\b(i|he|she|we|it|they)'ll\\b", "$1 will")
        .replaceAll("(?i)\\b(i|he|she|we|they|you)'d\\b", "$1 would")
        .replaceAll("'s\\b", " ")
        .replaceAll("(?i)\\b(too|so|very) little\\b", "no")
        .replace("'", "");
  }
}
