package insidelift.engine.speech;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.speech.Heard.Proposal;
import insidelift.engine.speech.Heard.Refused;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import opennlp.tools.stemmer.PorterStemmer;
import opennlp.tools.tokenize.SimpleTokenizer;

/**
 * Finds answers in a sentence by the trade's synonyms. It looks for known words only, so it would
 * read "no understeer" as understeer: therefore a part with a word of doubt or denial that is not
 * itself part of a synonym is refused, and so is everything that may hang on it, up to the next
 * full stop or "but". Better to ask than to turn a sentence round.
 */
final class Ear {

  private static final String PHASE = "phase";
  private static final String BEHAVIOUR = "behaviour";

  /** A synonym: its stems, and what it stands for. */
  private record Synonym(List<String> stems, String question, String value) {}

  /** A word as it was said, and its stem. */
  private record Token(String said, String stem) {}

  /** A synonym found in a part. */
  private record Match(Synonym synonym, String words) {}

  private static final class Holder {
    private static final Ear EAR = new Ear();
  }

  private final List<Synonym> synonyms = new ArrayList<>();
  private final Set<String> filler = new HashSet<>();
  private final Set<String> doubt = new HashSet<>();
  private final Map<String, String> shortPhases = new LinkedHashMap<>();

  private Ear() {
    JsonNode data = data();
    data.get("filler").forEach(word -> filler.add(word.asText()));
    data.get("doubt").forEach(word -> doubt.add(word.asText()));
    data.get("short")
        .properties()
        .forEach(entry -> shortPhases.put(stem(entry.getKey()), entry.getValue().asText()));
    read(data.get("phases"), PHASE);
    read(data.get("behaviours"), BEHAVIOUR);
    data.get("answers")
        .properties()
        .forEach(question -> read(question.getValue(), question.getKey()));
    // The longest first: "inside rear does not lift" before "lift".
    synonyms.sort(
        Comparator.comparingInt((Synonym synonym) -> -synonym.stems().size())
            .thenComparing(Synonym::question)
            .thenComparing(Synonym::value));
  }

  static Ear ofThisBuild() {
    return Holder.EAR;
  }

  /** Every answer that a synonym stands for, as question and value. */
  Set<List<String>> answers() {
    Set<List<String>> answers = new LinkedHashSet<>();
    synonyms.stream()
        .filter(one -> !one.question().equals(PHASE) && !one.question().equals(BEHAVIOUR))
        .forEach(one -> answers.add(List.of(one.question(), one.value())));
    return answers;
  }

  static JsonNode data() {
    try (InputStream in = Ear.class.getResourceAsStream("/insidelift/synonyms.json")) {
      return JsonMapper.builder().build().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the synonyms of this build cannot be read", e);
    }
  }

  private void read(JsonNode values, String question) {
    values
        .properties()
        .forEach(
            value ->
                value
                    .getValue()
                    .forEach(
                        phrase ->
                            synonyms.add(
                                new Synonym(
                                    tokens(phrase.asText()).stream().map(Token::stem).toList(),
                                    question,
                                    value.getKey()))));
  }

  Heard hear(String sentence) {
    List<Proposal> proposed = new ArrayList<>();
    List<Refused> refused = new ArrayList<>();
    List<String> notUnderstood = new ArrayList<>();
    for (String stretch : plain(sentence).split("[.;!\\n]+|\\bbut\\b", -1)) {
      if (stretch.contains("?")) {
        refuse(stretch, "it asks", refused);
      } else {
        stretch(stretch, proposed, refused, notUnderstood);
      }
    }
    contradictions(proposed, refused);
    return new Heard(List.copyOf(proposed), List.copyOf(refused), List.copyOf(notUnderstood));
  }

  /**
   * Nothing in it can move a cursor or reverse the reading direction; contractions are spelt out.
   */
  private static String plain(String sentence) {
    StringBuilder plain = new StringBuilder();
    Normalizer.normalize(sentence, Normalizer.Form.NFKC)
        .codePoints()
        .limit(InputLimits.MAX_SENTENCE)
        .map(point -> Character.getType(point) == Character.CONTROL && point != '\n' ? ' ' : point)
        .filter(point -> Character.getType(point) != Character.FORMAT)
        .forEach(plain::appendCodePoint);
    return plain
        .toString()
        .toLowerCase(Locale.ROOT)
        .replaceAll("n['’]t\\b", " not")
        .replaceAll("\\b(too|so|very) little\\b", "no")
        .replaceAll("\\b(do|does|is|did|was|wo|ca)nt\\b", "$1 not");
  }

  /** A stretch up to a full stop: a denial in it holds for all that follows in it. */
  private void stretch(
      String stretch, List<Proposal> proposed, List<Refused> refused, List<String> notUnderstood) {
    boolean denied = false;
    String behaviour = null;
    for (String part : stretch.split("[,:/]+", -1)) {
      List<String> joined = Arrays.stream(part.split("\\band\\b|\\bthen\\b|&|\\+", -1)).toList();
      // "understeer and oversteer gone": a denial also holds for what it is joined to.
      denied |= joined.stream().anyMatch(this::doubtful);
      for (String piece : joined) {
        if (tokens(piece).isEmpty()) {
          continue;
        }
        if (denied) {
          refuse(piece, "a word in it may deny it", refused);
          behaviour = null;
        } else {
          behaviour = piece(piece, behaviour, proposed, refused, notUnderstood);
        }
      }
    }
  }

  private boolean doubtful(String piece) {
    List<Token> left = new ArrayList<>(tokens(piece));
    matches(left);
    return left.stream().anyMatch(token -> token != null && doubt.contains(token.said()));
  }

  /** One piece without a denial; returns the behaviour that a following phase alone may share. */
  private String piece(
      String piece,
      String before,
      List<Proposal> proposed,
      List<Refused> refused,
      List<String> notUnderstood) {
    List<Token> left = new ArrayList<>(tokens(piece));
    Token last = left.get(left.size() - 1);
    List<Match> matches = matches(left);
    List<Match> phases = of(matches, PHASE);
    List<Match> behaviours = of(matches, BEHAVIOUR);
    matches.stream()
        .filter(match -> !phases.contains(match) && !behaviours.contains(match))
        .forEach(
            match ->
                proposed.add(
                    new Proposal(
                        match.synonym().question(), match.synonym().value(), match.words())));
    Set<String> where = new LinkedHashSet<>();
    phases.forEach(match -> where.add(match.synonym().value()));
    if (where.isEmpty() && !behaviours.isEmpty() && shortPhases.containsKey(last.stem())) {
      where.add(shortPhases.get(last.stem()));
    }
    Set<String> what = new LinkedHashSet<>();
    behaviours.forEach(match -> what.add(match.synonym().value()));
    if (what.size() > 1) {
      refuse(piece, "it says two things at once", refused);
      return null;
    }
    if (what.isEmpty() && !where.isEmpty() && before != null && matches.size() == phases.size()) {
      what.add(before);
    }
    if (!what.isEmpty() && !where.isEmpty()) {
      String value = what.iterator().next();
      where.forEach(phase -> proposed.add(new Proposal(phase, value, shown(piece))));
      return value;
    }
    if (!what.isEmpty()) {
      refuse(piece, "it does not say in which part of the corner", refused);
      return null;
    }
    if (matches.size() == phases.size()) {
      notUnderstood.add(shown(piece));
    }
    return null;
  }

  private static List<Match> of(List<Match> matches, String question) {
    return matches.stream().filter(match -> match.synonym().question().equals(question)).toList();
  }

  /** The synonyms in a piece, the longest first; what they use up is taken out of the tokens. */
  private List<Match> matches(List<Token> left) {
    List<Match> matches = new ArrayList<>();
    for (Synonym synonym : synonyms) {
      int size = synonym.stems().size();
      for (int at = 0; size > 0 && at + size <= left.size(); at++) {
        List<Token> window = left.subList(at, at + size);
        if (window.stream().noneMatch(token -> token == null)
            && window.stream().map(Token::stem).toList().equals(synonym.stems())) {
          matches.add(
              new Match(synonym, String.join(" ", window.stream().map(Token::said).toList())));
          for (int i = at; i < at + size; i++) {
            left.set(i, null);
          }
        }
      }
    }
    return matches;
  }

  private static void contradictions(List<Proposal> proposed, List<Refused> refused) {
    for (Proposal one : List.copyOf(proposed)) {
      List<Proposal> same =
          proposed.stream().filter(other -> other.question().equals(one.question())).toList();
      if (same.stream().map(Proposal::value).distinct().count() > 1) {
        same.forEach(
            other ->
                refused.add(new Refused(other.words(), "the sentence says both for one question")));
        proposed.removeAll(same);
      } else if (same.size() > 1) {
        proposed.removeAll(same.subList(1, same.size()));
      }
    }
  }

  private static void refuse(String piece, String why, List<Refused> refused) {
    if (!piece.isBlank()) {
      refused.add(new Refused(shown(piece), why));
    }
  }

  private static String shown(String piece) {
    return Printable.shown(piece.strip(), 200);
  }

  private List<Token> tokens(String text) {
    List<Token> tokens = new ArrayList<>();
    for (String word : SimpleTokenizer.INSTANCE.tokenize(text.toLowerCase(Locale.ROOT))) {
      if (Character.isLetterOrDigit(word.codePointAt(0)) && !filler.contains(word)) {
        tokens.add(new Token(word, stem(word)));
      }
    }
    return tokens;
  }

  private static String stem(String word) {
    // The stemmer keeps state, so each word gets one of its own.
    return new PorterStemmer().stem(word);
  }
}
