package insidelift.engine.consultation.advice;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.Decider;
import insidelift.engine.consultation.foresight.OpenQuestions;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.units.Units;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Situation;

/**
 * Gives advice on a situation: what the rules decide, in the words of the notes. One advisor serves
 * any number of threads.
 */
public final class Advisor {

  private final Decider decider;
  private final NoteBook notes;
  private final OpenQuestions open;

  /** An advisor by the given words, rules and notes. */
  public Advisor(Vocabulary vocabulary, RuleBase rules, NoteBook notes) {
    this.decider = new Decider(vocabulary, rules);
    this.notes = notes;
    this.open = new OpenQuestions(vocabulary, rules.index());
  }

  /** An advisor by the words, rules and notes of this build. */
  public static Advisor load() {
    return load(Units.METRIC);
  }

  /** An advisor by the words, rules and notes of this build, who speaks in these units. */
  public static Advisor load(Units units) {
    return new Advisor(Vocabulary.load(), RuleBase.load(), NoteBook.open(units));
  }

  /** The same advisor by other rules and notes, as with a shop's own beside its own. */
  public Advisor with(RuleBase otherRules, NoteBook otherNotes) {
    return new Advisor(vocabulary(), otherRules, otherNotes);
  }

  /** Who decides for it. */
  public Decider decider() {
    return decider;
  }

  /** The words it understands. */
  public Vocabulary vocabulary() {
    return decider.vocabulary();
  }

  /** The rules it reasons by. */
  public RuleBase rules() {
    return decider.rules();
  }

  /** The notes it speaks from. */
  public NoteBook notes() {
    return notes;
  }

  /** Which questions can still matter by its words and rules. */
  public OpenQuestions open() {
    return open;
  }

  /** What to do in a situation, and why. */
  public Advice advise(Situation situation) {
    Effects.check(situation.kart());
    return new Wording(this, decide(situation), true).advice();
  }

  /**
   * The advice without what is computed for the kart's wheels and without open questions: what
   * holding many cases against the rules needs.
   */
  public Advice outline(Situation situation) {
    return new Wording(this, decide(situation), false).advice();
  }

  /** The decision on a situation without the words: what comparing many of them needs. */
  public Decided decide(Situation situation) {
    return decider.decide(situation);
  }
}
