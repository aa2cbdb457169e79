package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.training.card.Card;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Three who play: the engine itself, one who guesses, and one who always says the same. */
final class Players {

  private final Advisor advisor;
  private final NextQuestion next;

  Players(Advisor advisor, NextQuestion next) {
    this.advisor = advisor;
    this.next = next;
  }

  /** Asks what the engine asks, and says what the rules make of the answers it got. */
  Judgement engine(DrillCase hidden) {
    Drill drill = new Drill(advisor, next, hidden);
    List<Question> open = next.worthAsking(drill.known());
    while (!open.isEmpty()) {
      if (open.get(0).safety()) {
        drill.look();
      } else {
        drill.ask(open.get(0).id());
      }
      open = next.worthAsking(drill.known());
    }
    Situation known = drill.known();
    Conclusion heard = Conclusion.of(advisor.decider(), known);
    if (heard.status() == Status.FIX_FIRST) {
      drill.say(new DrillMove.FixFirst());
    } else {
      drill.say(
          new DrillMove.Found(
              heard.findings().isEmpty() ? Drill.NONE : heard.findings().iterator().next()));
      drill.say(
          new DrillMove.First(
              advisor.outline(known).lead().map(OtherLever::move).orElse(Drill.NONE)));
      for (Lever lever : Lever.values()) {
        drill.say(
            new DrillMove.Move(
                lever, heard.moves().getOrDefault(lever, new Step(Direction.HOLD, 0))));
      }
    }
    drill.reasons().stream()
        .filter(option -> heard.reasons().contains(option.id()))
        .findFirst()
        .ifPresent(option -> drill.say(new DrillMove.Because(option.id())));
    return new Judgement(advisor, next, drill);
  }

  /** Asks a few questions at random and guesses the rest. */
  Judgement guess(DrillCase hidden, Random random) {
    Drill drill = new Drill(advisor, next, hidden);
    List<Question> questions = new ArrayList<>(advisor.vocabulary().questions());
    for (int i = 0; i < 6; i++) {
      drill.ask(questions.remove(random.nextInt(questions.size())).id());
    }
    List<Card.Option> answers = Answers.offered(Answers.of(drill.right()));
    say(drill, answers.get(random.nextInt(answers.size())).id(), random);
    List<Card.Option> reasons = drill.reasons();
    if (!reasons.isEmpty()) {
      drill.say(new DrillMove.Because(reasons.get(random.nextInt(reasons.size())).id()));
    }
    return new Judgement(advisor, next, drill);
  }

  /** Looks at nothing and always says "more caster". */
  Judgement oneTrick(DrillCase hidden) {
    Drill drill = new Drill(advisor, next, hidden);
    drill.say(new DrillMove.Found("entry-push"));
    drill.say(new DrillMove.Move(Lever.CAMBER, new Step(Direction.HOLD, 0)));
    drill.say(new DrillMove.Move(Lever.CASTER, new Step(Direction.MORE, 1)));
    drill.say(new DrillMove.Because("caster-entry-push"));
    return new Judgement(advisor, next, drill);
  }

  private void say(Drill drill, String answer, Random random) {
    if (answer.equals(Answers.FIX)) {
      drill.say(new DrillMove.FixFirst());
      return;
    }
    List<String> findings = new ArrayList<>(List.of(Drill.NONE));
    advisor.vocabulary().findings().forEach(finding -> findings.add(finding.id()));
    drill.say(new DrillMove.Found(findings.get(random.nextInt(findings.size()))));
    for (Lever lever : Lever.values()) {
      Step step = new Step(Direction.HOLD, 0);
      for (String move : answer.split("\\+", -1)) {
        if (move.startsWith(lever.id())) {
          String way = move.substring(lever.id().length() + 1).toUpperCase(Locale.ROOT);
          step = new Step(Direction.valueOf(way), 0.5 * (1 + random.nextInt(4)));
        }
      }
      drill.say(new DrillMove.Move(lever, step));
    }
  }
}
