package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.notes.Note;
import insidelift.engine.training.card.Card;
import insidelift.engine.training.card.Card.Kind;
import insidelift.engine.training.card.Topics;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All cards. Those to be recalled come from the sections of the notes; those to be chosen come from
 * the rules, one for each rule that gives evidence, stops something, asks for a move or forbids
 * one, and one for each other lever that comes first in some case.
 */
public final class CardBox {

  private static final Set<Verb> DECIDING = Set.of(Verb.CHECK, Verb.CLAIM, Verb.START, Verb.BARRED);

  /** What is asked of a section, by its heading. */
  private static final Map<String, String> ASKED =
      Map.of(
          "Why", "Why is that so?",
          "When not", "When does it not hold?",
          "Caution", "What has to be watched?",
          "Feel", "What should the driver feel if it worked?",
          "Undo", "When is it taken back?",
          "Dispute", "What do people disagree about?",
          "Do", "What is to be done?",
          "Look", "How do you find out?",
          "Steps", "Which steps, in which order?");

  /** Answers by which a step leads that no card of a rule's own answers offers, one step a line. */
  private static final String LEADING =
      """
      axle more: hop hops, exit oversteer, severity severe, rubber rubbered, \
      inside-rear stays-down, rear-room at-limit
      ballast less: hop hops, rear-wear coned
      bars less: turn-in oversteer, inside-rear stays-down
      bars more: turn-in understeer, steering-weight heavy
      front-height more: turn-in understeer, mid-corner understeer, severity slight, \
      worst-phase turn-in, corner-speed fast, steering-weight heavy
      rear-height less: water standing, turn-in oversteer, exit understeer, worst-phase exit, \
      grip-overall slides-everywhere
      rear-height more: water wet, mid-corner oversteer, exit oversteer, worst-phase exit, \
      grip-overall slides-everywhere
      rear-pressure less: mid-corner oversteer
      rear-pressure more: mid-corner understeer
      seat less: turn-in oversteer, mid-corner oversteer, grip-overall stuck-everywhere
      seat more: turn-in understeer, mid-corner understeer, grip-overall slides-everywhere
      seat-height less: water standing, turn-in good, mid-corner oversteer, exit understeer
      seat-height more: water wet, turn-in good, mid-corner understeer, exit oversteer, \
      setup-for wet
      struts less: hop hops, rear-room at-limit
      struts more: rear-wear coned, last-change rear-width, last-effect same
      toe more: turn-in understeer
      """;

  private final Advisor advisor;
  private final Imagined imagined;
  private final List<Card> cards = new ArrayList<>();

  /** The cards that an advisor's rules and notes make. */
  public CardBox(Advisor advisor) {
    this.advisor = advisor;
    this.imagined = new Imagined(advisor.decider());
    for (String id : advisor.notes().ids()) {
      Note note = advisor.notes().note(id);
      if (!note.kind().equals("lesson")) {
        recall(note);
      }
    }
    advisor.rules().index().rules().forEach(this::choose);
    LEADING.lines().forEach(this::leading);
  }

  private void leading(String line) {
    int colon = line.indexOf(": ");
    Map<String, String> told = new LinkedHashMap<>();
    for (String answer : line.substring(colon + 2).split(", ", -1)) {
      int space = answer.indexOf(' ');
      told.put(answer.substring(0, space), answer.substring(space + 1));
    }
    first(line.substring(0, colon), Situation.of(told));
  }

  /** A card that asks what comes first, where anything does. */
  private void first(String id, Situation told) {
    if (!FirstLever.leads(advisor.decide(told)).isEmpty()) {
      cards.add(new Card.Choice("first:" + id, "other levers", Kind.LEAD, told));
    }
  }

  /** All cards, in an order that does not change. */
  public List<Card> cards() {
    return List.copyOf(cards);
  }

  private void recall(Note note) {
    for (String heading : note.sections().keySet()) {
      if (ASKED.containsKey(heading)) {
        cards.add(
            new Card.Recall(
                "note:%s:%s"
                    .formatted(note.id(), heading.toLowerCase(Locale.ROOT).replace(' ', '-')),
                Topics.of(note),
                List.of(note.title() + ".", ASKED.get(heading)),
                note.id(),
                heading));
      }
    }
  }

  private void choose(IndexedRule rule) {
    String topic = Topics.of(advisor.notes().note(rule.note()));
    Optional<Situation> told = imagined.small(rule.id());
    if (told.isEmpty()) {
      return;
    }
    if (rule.acts().stream().anyMatch(CardBox::speaksFor)) {
      cards.add(new Card.Choice("speaks:" + rule.id(), topic, Kind.FINDING, told.get()));
      first(rule.id(), told.get());
    }
    if (rule.acts().stream().anyMatch(act -> DECIDING.contains(act.verb()))
        && imagined.tells(told.get())) {
      cards.add(new Card.Choice("now:" + rule.id(), topic, Kind.DECISION, told.get()));
    }
  }

  private static boolean speaksFor(Act act) {
    return act.verb() == Verb.EVIDENCE && act.number(1) > 0;
  }
}
