package insidelift.shared.index;

import insidelift.shared.Named;
import insidelift.shared.ShippedJson;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the rule files say, as data: written by the build from the rules themselves, and read by
 * everything that explains, audits or asks.
 *
 * @param schema the version of this shape
 * @param rules the rules, by file and line
 */
public record RuleIndex(int schema, List<IndexedRule> rules) {

  /** Takes a copy of the rules. */
  public RuleIndex {
    rules = List.copyOf(rules);
  }

  /** The index in a file that the build ships. */
  public static RuleIndex of(ShippedJson file) {
    return new RuleIndex(
        file.number("schema").intValue(),
        file.objects("rules").stream().map(IndexedRule::of).toList());
  }

  /** The rule of that id, if there is one. */
  public Optional<IndexedRule> rule(String id) {
    return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }

  /**
   * One rule.
   *
   * @param id its name
   * @param note the note it stands on
   * @param mechanism the mechanical reason it gives, as geometry names it; empty if it gives none
   * @param family the rule file without its ending, or the table or the shop's file in full
   * @param line where it begins in that file
   * @param says what it does, in a sentence; empty for a plain rule, whose premises and acts say it
   * @param premises what must hold, in the order written; of a rule that thinks, the answers that
   *     it reads by name
   * @param acts what it says then
   */
  public record IndexedRule(
      String id,
      String note,
      String mechanism,
      String family,
      int line,
      String says,
      List<Premise> premises,
      List<Act> acts) {
    /** Takes copies of the lists. */
    public IndexedRule {
      premises = List.copyOf(premises);
      acts = List.copyOf(acts);
    }

    /** The file it stands in. */
    public String file() {
      return file(family);
    }

    /** The file of a family: a rule file goes by its name without the ending, a table in full. */
    public static String file(String family) {
      return family.contains(".") ? family : family + ".drl";
    }

    /** Whether its premises and acts are all that it is. */
    public boolean plain() {
      return says.isEmpty();
    }

    /** Whether all its premises hold. */
    public Truth in(Known known) {
      Truth all = Truth.TRUE;
      for (Premise premise : premises) {
        all = all.and(premise.in(known));
        if (all == Truth.FALSE) {
          break;
        }
      }
      return all;
    }

    /** What it says by one verb. */
    public Stream<Act> acts(Verb verb) {
      return acts.stream().filter(act -> act.verb() == verb);
    }

    private static IndexedRule of(ShippedJson rule) {
      return new IndexedRule(
          rule.text("id"),
          rule.text("note"),
          rule.text("mechanism"),
          rule.text("family"),
          rule.number("line").intValue(),
          rule.text("says"),
          rule.objects("premises").stream().map(RuleIndex::premise).toList(),
          rule.objects("acts").stream()
              .map(act -> new Act(Named.of(Verb.class, act.text("verb")), act.texts("words")))
              .toList());
    }
  }

  private static Premise premise(ShippedJson premise) {
    if (premise.has("questions")) {
      return new Premise.Told(
          premise.texts("questions"), premise.texts("values"), premise.flag("absent"));
    }
    return premise.has("lever")
        ? new Premise.Moved(premise.text("lever"), premise.text("direction"))
        : new Premise.Complained();
  }

  /**
   * Something a rule says.
   *
   * @param verb what kind of thing
   * @param words its words, in order
   */
  public record Act(Verb verb, List<String> words) {
    /** Takes a copy of the words. */
    public Act {
      words = List.copyOf(words);
    }

    /** The word at a place. */
    public String word(int place) {
      return words.get(place);
    }

    /** The number at a place. */
    public int number(int place) {
      return Integer.parseInt(words.get(place));
    }
  }
}
