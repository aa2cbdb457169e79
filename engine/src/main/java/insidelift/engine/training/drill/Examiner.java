package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.explanation.Explanation;
import insidelift.engine.training.card.Card;
import insidelift.engine.training.card.Card.Kind;
import insidelift.engine.training.card.Card.Option;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Vocabulary.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Asks a card of choices and judges the answer: the rules are asked what they make of what is told,
 * and a wrong answer is shown wrong by what they have on it.
 */
public final class Examiner {

  /** Findings offered beside the right one. */
  private static final int OTHERS = 3;

  /** Lines of what speaks for a finding: its heading, and what weighs most. */
  private static final int SPOKEN = 6;

  /** The quality of a right answer among choices, as SM-2 counts it. */
  public static final int RIGHT = 4;

  /** The quality of a wrong one. */
  public static final int WRONG = 1;

  /**
   * How an answer was judged.
   *
   * @param right whether it is right
   * @param answer a right answer in words
   * @param because why that is right, in the words of the note that decides; empty where no note
   *     does
   * @param shown what the rules have on a wrong answer, as lines of at most 80 columns
   */
  public record Judged(boolean right, String answer, String because, List<String> shown) {}

  private final Advisor advisor;

  /** An examiner by the rules of an advisor. */
  public Examiner(Advisor advisor) {
    this.advisor = advisor;
  }

  /** What is told and asked, in paragraphs. */
  public List<String> ask(Card.Choice card) {
    List<String> ask = new ArrayList<>();
    ask.add("All that is known:");
    card.told()
        .answers()
        .forEach((question, value) -> ask.add("- " + question + ": " + words(question, value)));
    ask.add(
        switch (card.kind()) {
          case FINDING -> "What does that speak for?";
          case DECISION -> "What is to be done now?";
          case LEAD -> "Which of these comes first, before camber and caster?";
        });
    return ask;
  }

  private String words(String question, String value) {
    return advisor
        .vocabulary()
        .question(question)
        .flatMap(known -> known.value(value))
        .map(Value::words)
        .orElseThrow();
  }

  /** What can be answered; the same card always offers the same. */
  public List<Option> options(Card.Choice card) {
    if (card.kind() == Kind.DECISION) {
      return Answers.offered(rightOnes(card).iterator().next());
    }
    SplittableRandom random = new SplittableRandom(card.id().hashCode());
    Set<String> right = rightOnes(card);
    Map<String, String> words = card.kind() == Kind.LEAD ? FirstLever.steps(advisor) : findings();
    List<String> others =
        new ArrayList<>(words.keySet().stream().filter(id -> !right.contains(id)).toList());
    List<String> offered = new ArrayList<>();
    String own = card.id().substring(card.id().indexOf(':') + 1);
    String drawn = List.copyOf(right).get(random.nextInt(right.size()));
    offered.add(right.contains(own) ? own : drawn);
    while (offered.size() <= OTHERS) {
      String other = others.remove(random.nextInt(others.size()));
      offered.add(random.nextInt(offered.size() + 1), other);
    }
    return offered.stream().map(id -> new Option(id, words.get(id))).toList();
  }

  private Map<String, String> findings() {
    Map<String, String> findings = new LinkedHashMap<>();
    advisor.vocabulary().findings().forEach(word -> findings.put(word.id(), word.words()));
    return findings;
  }

  /** The right answers: what the rules make of what is told. */
  Set<String> rightOnes(Card.Choice card) {
    if (card.kind() == Kind.LEAD) {
      return FirstLever.leads(advisor.decide(card.told()));
    }
    Conclusion conclusion = Conclusion.of(advisor.decider(), card.told());
    if (card.kind() == Kind.DECISION) {
      return Set.of(Answers.of(conclusion));
    }
    Set<String> right = new TreeSet<>();
    conclusion
        .strengths()
        .forEach(
            (finding, weight) -> {
              if (weight > 0) {
                right.add(finding);
              }
            });
    return right;
  }

  /** Judges an answer. */
  public Judged judge(Card.Choice card, String answer) {
    Set<String> right = rightOnes(card);
    Explanation explanation = new Explanation(advisor, card.told());
    String first = right.iterator().next();
    if (card.kind() == Kind.FINDING) {
      boolean holds = right.contains(answer);
      return new Judged(
          holds,
          advisor.vocabulary().finding(first).orElseThrow().words(),
          "",
          holds ? List.of() : spoken(explanation, first, answer));
    }
    if (card.kind() == Kind.LEAD) {
      boolean leads = right.contains(answer);
      return new Judged(
          leads,
          right.stream().map(FirstLever.steps(advisor)::get).collect(Collectors.joining("; or: ")),
          "",
          leads ? List.of() : explanation.rule(claimOn(card, first)).lines());
    }
    Conclusion conclusion = Conclusion.of(advisor.decider(), card.told());
    return new Judged(
        right.contains(answer),
        Answers.words(conclusion, advisor.notes()),
        conclusion.reasons().stream()
            .findFirst()
            .map(reason -> advisor.notes().note(reason).text("Claim"))
            .orElse(""),
        right.contains(answer) ? List.of() : shown(answer, first, explanation));
  }

  /** What speaks for the right finding, then what there is on the one that was named. */
  private static List<String> spoken(Explanation explanation, String right, String answer) {
    return Stream.of(right, answer)
        .flatMap(finding -> explanation.how(finding).lines().stream().limit(SPOKEN))
        .toList();
  }

  /** The line of the tables that speaks most for the step that leads. */
  private String claimOn(Card.Choice card, String step) {
    return FirstLever.line(advisor, advisor.decide(card.told()), step).orElseThrow();
  }

  private static List<String> shown(String answer, String right, Explanation explanation) {
    for (Lever lever : Lever.values()) {
      Optional<Direction> said = direction(answer, lever);
      if (said.isPresent() && !said.equals(direction(right, lever))) {
        return explanation.whyNot(lever, said.get()).lines();
      }
    }
    // Too little was said, or a fault was missed or invented: the ledger of the first lever that
    // the rules speak of says what they rest on.
    for (Lever lever : Lever.values()) {
      if (direction(right, lever).isPresent()) {
        return explanation.how(lever.id()).lines();
      }
    }
    return explanation.how(Lever.CAMBER.id()).lines();
  }

  private static Optional<Direction> direction(String answer, Lever lever) {
    for (String move : answer.split("\\+", -1)) {
      if (move.startsWith(lever.id() + "-")) {
        return Optional.of(Named.of(Direction.class, move.substring(lever.id().length() + 1)));
      }
    }
    return Optional.empty();
  }
}
