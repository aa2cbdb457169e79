package insidelift.engine.own;

import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Reads words, lists of words and short texts of a shop's file. */
final class Words {

  private Words() {}

  /** A text of at least one and at most so many characters, none of which can spoil a screen. */
  static String text(JsonPlace place, int most) throws CaseProblem {
    String text = place.word().strip();
    if (text.isEmpty()) {
      throw place.problem("this must not be empty");
    }
    if (text.length() > most) {
      throw place.problem("this is longer than " + most + " characters");
    }
    if (!Printable.shown(text, most).equals(text)) {
      throw place.problem("this holds characters that cannot be shown");
    }
    return text;
  }

  /** A word that must be one of some. */
  static String oneOf(JsonPlace place, Collection<String> legal) throws CaseProblem {
    String word = place.word();
    if (!legal.contains(word)) {
      throw place.problem(Printable.quoted(word) + " is not one of " + String.join(", ", legal));
    }
    return word;
  }

  /** The members of a list. */
  static List<JsonPlace> list(JsonPlace place) throws CaseProblem {
    if (!place.node().isArray()) {
      throw place.problem("this must be a list in square brackets");
    }
    return place.members();
  }

  /** One word, or several in a list, each one of some. */
  static List<String> someOf(JsonPlace place, Collection<String> legal) throws CaseProblem {
    List<JsonPlace> members = place.node().isArray() ? list(place) : List.of(place);
    if (members.isEmpty()) {
      throw place.problem("this must name at least one word");
    }
    List<String> words = new ArrayList<>();
    for (JsonPlace member : members) {
      words.add(oneOf(member, legal));
    }
    return words;
  }
}
