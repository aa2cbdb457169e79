package insidelift.shared.index;

import insidelift.shared.ShippedJson;
import java.util.List;
import java.util.Optional;

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
   * @param family the rule file, without its ending
   * @param line where it begins in that file
   * @param stage the agenda group it speaks in
   * @param premises what must hold, in the order written
   * @param acts what it records
   */
  public record IndexedRule(
      String id,
      String note,
      String mechanism,
      String family,
      int line,
      String stage,
      List<Premise> premises,
      List<Act> acts) {
    /** Takes copies of the lists. */
    public IndexedRule {
      premises = List.copyOf(premises);
      acts = List.copyOf(acts);
    }

    private static IndexedRule of(ShippedJson rule) {
      return new IndexedRule(
          rule.text("id"),
          rule.text("note"),
          rule.text("mechanism"),
          rule.text("family"),
          rule.number("line").intValue(),
          rule.text("stage"),
          rule.objects("premises").stream().map(Premise::of).toList(),
          rule.objects("acts").stream()
              .map(act -> new Act(act.text("verb"), act.texts("words")))
              .toList());
    }
  }

  /**
   * One premise: a fact of that type with those fields, or the absence of one.
   *
   * @param fact the type's name
   * @param absent whether no such fact may be known
   * @param fields the constraints, all of which must hold
   */
  public record Premise(String fact, boolean absent, List<Constraint> fields) {
    /** Takes a copy of the constraints. */
    public Premise {
      fields = List.copyOf(fields);
    }

    private static Premise of(ShippedJson premise) {
      return new Premise(
          premise.text("fact"),
          premise.flag("absent"),
          premise.objects("fields").stream()
              .map(
                  field ->
                      new Constraint(
                          field.text("field"), field.text("operator"), field.texts("values")))
              .toList());
    }

    /** The constraint on that field, if there is one. */
    public Optional<Constraint> field(String name) {
      return fields.stream().filter(constraint -> constraint.field().equals(name)).findFirst();
    }
  }

  /**
   * A constraint on a field.
   *
   * @param field the field
   * @param operator {@code ==}, {@code in} or {@code >=}
   * @param values the values compared with
   */
  public record Constraint(String field, String operator, List<String> values) {
    /** Takes a copy of the values. */
    public Constraint {
      values = List.copyOf(values);
    }
  }

  /**
   * Something a rule records.
   *
   * @param verb the ledger's method
   * @param words its arguments, in order
   */
  public record Act(String verb, List<String> words) {
    /** Takes a copy of the arguments. */
    public Act {
      words = List.copyOf(words);
    }
  }
}
