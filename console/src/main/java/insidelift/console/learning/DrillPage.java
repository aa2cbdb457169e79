package insidelift.console.learning;

import insidelift.console.asking.Asker;
import insidelift.console.asking.ChoiceCard;
import insidelift.console.asking.Choices;
import insidelift.console.asking.Choices.Choice;
import insidelift.console.asking.Reply;
import insidelift.console.asking.Span;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.training.card.Card.Option;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.DrillMove;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.Vocabulary.Question;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One case on the screen: look, ask and measure as long as it is wanted, then decide. */
final class DrillPage {

  private static final String LOOK = "look";
  private static final String HINT = "hint";
  private static final String DECIDE = "decide";

  /** The parts of the job as the menu calls them, and the groups of the vocabulary in each. */
  private static final Map<String, List<String>> PARTS = parts();

  private static final Map<String, String> WORDS =
      Map.of(
          "track", "the track",
          "feel", "feel: what the kart does in the corner",
          "driver", "driver and class",
          "tyres", "tyres: what they show",
          "rest", "rest: the last change, what can be moved, the time");

  private final Screen screen;
  private final Asker asker;
  private final Advisor advisor;
  private final Drill drill;

  DrillPage(Screen screen, Advisor advisor, Drill drill) {
    this.screen = screen;
    this.asker = Asker.on(screen);
    this.advisor = advisor;
    this.drill = drill;
  }

  private static Map<String, List<String>> parts() {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    parts.put("track", List.of("track"));
    parts.put("feel", List.of("feel"));
    parts.put("driver", List.of("driver"));
    parts.put("tyres", List.of("tyres"));
    parts.put("rest", List.of("history", "kart", "time"));
    return parts;
  }

  /** Plays the case to its end, under a title that gives nothing away. */
  void play(String title) throws UserLeftException {
    screen.say(new DrillText(screen.width(), advisor).opening(title, drill.hidden()));
    while (ask()) {
      // Until the trainee decides.
    }
    decide();
  }

  /** Whether the trainee wants to go on asking. */
  private boolean ask() throws UserLeftException {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice(LOOK, "look the kart over"));
    PARTS.keySet().forEach(part -> choices.add(new Choice(part, WORDS.get(part))));
    choices.add(new Choice(HINT, "hint: the next one"));
    choices.add(new Choice(DECIDE, "decide: I know enough"));
    Reply reply = asker.ask(menu("do", "What do you do next?", choices));
    if (reply instanceof Reply.Review) {
      screen.say(new DrillText(screen.width(), advisor).known(drill));
    } else if (!(reply instanceof Reply.Chosen)) {
      help();
    }
    if (!(reply instanceof Reply.Chosen chosen)) {
      return true;
    }
    switch (chosen.value()) {
      case DECIDE -> {
        return false;
      }
      case LOOK -> made(new DrillMove.Look());
      case HINT -> made(new DrillMove.Hint());
      default -> question(chosen.value());
    }
    return true;
  }

  private void question(String part) throws UserLeftException {
    List<Question> questions =
        advisor.vocabulary().questions().stream()
            .filter(question -> PARTS.get(part).contains(question.group()))
            .filter(question -> !drill.asked(question))
            .toList();
    if (questions.isEmpty()) {
      screen.say("You have asked all of that.");
      return;
    }
    List<Choice> choices = questions.stream().map(one -> new Choice(one.id(), one.ask())).toList();
    Reply reply = asker.ask(menu("ask", "Which question?", choices));
    if (reply instanceof Reply.Chosen chosen) {
      made(new DrillMove.Ask(chosen.value()));
    } else if (!(reply instanceof Reply.Back)) {
      help();
    }
  }

  private static Choices menu(String label, String head, List<Choice> choices) {
    return new Choices(label, List.of(head), choices, Optional.empty(), Optional.empty(), true);
  }

  private void made(DrillMove move) {
    String back = drill.take(move);
    screen.say(new DrillText(screen.width(), advisor).move(move, back));
  }

  private void help() {
    screen.say(
        new Text(screen.width())
            .paragraph(
                "Choose by a number or the first letters. In a list of questions, back leads back."
                    + " review shows what you know so far. Ctrl-C leaves the case.")
            .lines());
  }

  private void decide() throws UserLeftException {
    List<Choice> findings = new ArrayList<>();
    findings.add(new Choice("fault", "a fault, or something to set before any lever"));
    advisor.vocabulary().findings().forEach(one -> findings.add(new Choice(one.id(), one.words())));
    findings.add(
        new Choice(
            Drill.NONE,
            "none of these: the kart is good, or the track or the last change decides"));
    String found = choose("found", "What is it?", findings);
    if (found.equals("fault")) {
      made(new DrillMove.FixFirst());
    } else {
      made(new DrillMove.Found(found));
      made(new DrillMove.First(first()));
      for (Lever lever : Lever.values()) {
        made(new DrillMove.Move(lever, step(lever)));
      }
    }
    List<Option> reasons = drill.reasons();
    if (!reasons.isEmpty()) {
      List<Choice> choices =
          reasons.stream().map(one -> new Choice(one.id(), one.words())).toList();
      made(new DrillMove.Because(choose("because", "Which of these holds here?", choices)));
    }
  }

  /** A step of another lever, or none. */
  private String first() throws UserLeftException {
    List<Choice> levers = new ArrayList<>();
    levers.add(new Choice(Drill.NONE, "none: nothing comes before camber and caster"));
    for (LeverWord word : advisor.vocabulary().levers()) {
      levers.add(new Choice(word.id(), advisor.notes().note(word.note()).title()));
    }
    String lever = choose("first", "Which other lever comes first?", levers);
    if (lever.equals(Drill.NONE)) {
      return lever;
    }
    LeverWord word = advisor.vocabulary().lever(lever).orElseThrow();
    List<Choice> ways =
        Stream.of(Direction.MORE, Direction.LESS)
            .filter(way -> word.step(way) != null)
            .map(way -> new Choice(way.id(), word.step(way)))
            .toList();
    return lever + " " + choose(lever, "Which way?", ways);
  }

  private Step step(Lever lever) throws UserLeftException {
    boolean camber = lever == Lever.CAMBER;
    List<Choice> ways =
        List.of(
            new Choice(Direction.HOLD.id(), "hold: leave " + lever.id() + " where it is, for now"),
            new Choice(Direction.MORE.id(), camber ? "more: toward positive" : "more caster"),
            new Choice(Direction.LESS.id(), camber ? "less: toward negative" : "less caster"));
    String way = choose(lever.id(), "What do you do with " + lever.id() + " now?", ways);
    if (way.equals(Direction.HOLD.id())) {
      return new Step(Direction.HOLD, 0);
    }
    Direction direction = way.equals(Direction.MORE.id()) ? Direction.MORE : Direction.LESS;
    Choices size =
        new Choices(
            "degrees",
            List.of("How far, each side? (" + DrillText.step(drill, lever) + ")"),
            List.of(),
            Optional.of(new Span(0.1, 10, "degrees")),
            Optional.empty(),
            false);
    while (true) {
      if (asker.ask(size) instanceof Reply.Measured measured) {
        return new Step(direction, measured.number());
      }
      screen.say("Type the degrees as a number, such as 0.5.");
    }
  }

  private String choose(String label, String head, List<Choice> choices) throws UserLeftException {
    return ChoiceCard.choose(screen, asker, label, List.of(head), choices);
  }
}
