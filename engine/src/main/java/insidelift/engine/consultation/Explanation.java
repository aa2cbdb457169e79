package insidelift.engine.consultation;

import insidelift.engine.notes.Note;
import insidelift.shared.Answer;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Correction;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.History;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Contribution.Target;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Explains one situation: views of the same ledger that the advice is made from. */
public final class Explanation {

  private final Advisor advisor;
  private final Situation situation;
  private final Decided decided;
  private final Said said;

  /** The explanation of what is known. */
  public Explanation(Advisor advisor, Situation situation) {
    this.advisor = advisor;
    this.situation = situation;
    this.decided = advisor.decide(situation);
    this.said = new Said(advisor.vocabulary(), advisor.notes());
  }

  /**
   * Why a question is asked.
   *
   * @throws IllegalArgumentException if there is no such question
   */
  public Why why(String id) {
    Question question =
        advisor
            .vocabulary()
            .question(id)
            .orElseThrow(() -> new IllegalArgumentException("there is no question \"" + id + '"'));
    Map<String, Answer> known = known();
    Set<String> serves = new LinkedHashSet<>();
    Set<String> already = new LinkedHashSet<>();
    for (IndexedRule rule : advisor.open().live(known)) {
      if (rule.premises().stream().anyMatch(premise -> names(premise, id))) {
        serves.add(said.title(rule.note()));
        rule.premises().stream()
            .filter(premise -> premise.fact().equals("Answer"))
            .flatMap(premise -> questions(premise).stream())
            .filter(other -> !other.equals(id) && known.containsKey(other))
            .forEach(other -> already.add(said.answer(other, known.get(other).value())));
      }
    }
    Now now = Now.of(decided);
    List<Why.Would> would =
        question.values().stream()
            .map(
                value -> {
                  Now then = Now.of(advisor.decide(situation.with(id, value.id())));
                  return new Why.Would(
                      value.id(), value.words(), !then.equals(now), said.now(then));
                })
            .toList();
    return new Why(
        id, question.ask(), question.why(), List.copyOf(serves), List.copyOf(already), would);
  }

  /**
   * How a finding or a lever's fate came about.
   *
   * @param id a finding's id, {@code camber} or {@code caster}
   * @throws IllegalArgumentException if it is neither
   */
  public How how(String id) {
    if (advisor.vocabulary().finding(id).isPresent()) {
      return finding(id);
    }
    return lever(Named.of(Lever.class, id));
  }

  private How finding(String id) {
    List<Evidence> counted = decided.evidence().getOrDefault(id, List.of());
    List<How.Part> parts =
        decided.entries(Evidence.class).stream()
            .filter(piece -> piece.finding().equals(id))
            .map(
                piece ->
                    part(
                        piece.weight() > 0 ? "for it" : "against it",
                        piece.weight(),
                        counted.contains(piece),
                        piece))
            .sorted(heaviest())
            .toList();
    int sum = counted.stream().mapToInt(Evidence::weight).sum();
    String result =
        "%s: %s evidence, %d decibans in all.".formatted(said.finding(id), Weigher.word(sum), sum);
    return new How(id, result, parts);
  }

  private How lever(Lever lever) {
    List<How.Part> parts = new ArrayList<>();
    Set<String> claims = new LinkedHashSet<>();
    for (Contribution entry : decided.ledger()) {
      if (lever == leverOf(entry)) {
        claims.add(entry.by().note());
        parts.add(part(said.act(actOf(entry)), weight(entry), true, entry));
      }
    }
    for (SetAside aside : decided.entries(SetAside.class)) {
      List<String> over = aside.claims().stream().filter(claims::contains).toList();
      if (!over.isEmpty()) {
        parts.add(part("sets aside " + String.join(", ", over), 0, true, aside));
      }
    }
    parts.sort(heaviest());
    String result =
        advice().suggestions().stream()
            .filter(suggestion -> suggestion.lever() == lever)
            .map(Suggestion::summary)
            .findFirst()
            .orElse(lever.id() + " is not spoken of: " + said.now(Now.of(decided)) + ".");
    return new How(lever.id(), result, parts);
  }

  /** Why a lever is not moved that way, or that it is. */
  public WhyNot whyNot(Lever lever, Direction direction) {
    return new Unmoved(advisor, situation, decided, said).whyNot(lever, direction);
  }

  /**
   * A rule in words.
   *
   * @throws IllegalArgumentException if there is no such rule
   */
  public RuleInWords rule(String id) {
    IndexedRule rule =
        advisor
            .rules()
            .index()
            .rule(id)
            .orElseThrow(() -> new IllegalArgumentException("there is no rule \"" + id + '"'));
    Note note = advisor.notes().note(rule.note());
    return new RuleInWords(
        id,
        rule.premises().stream().map(said::premise).toList(),
        rule.acts().stream().map(said::act).toList(),
        note.id(),
        note.text("Claim"),
        note.disputed(),
        said.sources(note.id()));
  }

  /**
   * What other answers would change; nothing is noted.
   *
   * @throws IllegalArgumentException if an answer is not of the vocabulary
   */
  public WhatIf whatIf(Map<String, String> answers) {
    Situation other = situation;
    for (Map.Entry<String, String> answer : answers.entrySet()) {
      if (!answer.getValue().equals(Vocabulary.UNKNOWN)) {
        advisor.vocabulary().answer(answer.getKey(), answer.getValue());
      }
      other = other.with(answer.getKey(), answer.getValue());
    }
    Advice before = advice();
    Advice after = advisor.advise(other);
    List<String> gone = results(before);
    List<String> come = results(after);
    List<String> stays = List.copyOf(gone);
    gone.removeAll(come);
    come.removeAll(stays);
    return new WhatIf(
        Collections.unmodifiableMap(new LinkedHashMap<>(answers)), before, after, gone, come);
  }

  /** What a difference is made of: the status, the levers, the checks and the findings. */
  private static List<String> results(Advice advice) {
    List<String> results = new ArrayList<>();
    results.add("status: " + advice.status().id());
    advice.suggestions().forEach(one -> results.add((one.first() ? "now: " : "") + one.summary()));
    advice.firstChecks().forEach(one -> results.add("check: " + one.what()));
    advice
        .findings()
        .forEach(one -> results.add("finding: " + one.words() + " (" + one.strength() + ")"));
    return results;
  }

  private Advice advice() {
    return advisor.advise(situation);
  }

  private Map<String, Answer> known() {
    return situation.facts(advisor.vocabulary()).stream()
        .collect(Collectors.toMap(Answer::question, answer -> answer));
  }

  private How.Part part(String says, int weight, boolean counted, Contribution entry) {
    String note = entry.by().note();
    return new How.Part(
        says,
        weight,
        counted,
        entry.by().rule(),
        said.because(entry.by().premises()),
        note,
        said.title(note),
        said.sources(note));
  }

  private static Comparator<How.Part> heaviest() {
    return Comparator.comparingInt((How.Part part) -> -Math.abs(part.weight()))
        .thenComparing(How.Part::rule);
  }

  private int weight(Contribution entry) {
    if (entry instanceof Correction correction) {
      return decided.evidence().getOrDefault(correction.finding(), List.of()).stream()
          .mapToInt(Evidence::weight)
          .sum();
    }
    return entry instanceof Target || entry instanceof History ? Weigher.STRONG : 0;
  }

  private static Lever leverOf(Contribution entry) {
    if (entry instanceof Target target) {
      return target.lever();
    } else if (entry instanceof Correction correction) {
      return correction.lever();
    } else if (entry instanceof History history) {
      return history.lever();
    } else if (entry instanceof Limit limit) {
      return limit.lever();
    } else if (entry instanceof Contribution.Fewer fewer) {
      return fewer.lever();
    } else if (entry instanceof Contribution.Cap cap) {
      return cap.lever();
    } else if (entry instanceof Contribution.Hold hold) {
      return hold.lever();
    } else if (entry instanceof Contribution.Lead lead) {
      return lead.lever();
    }
    return null;
  }

  /** The act that an entry of the ledger was recorded by, as the index would have it. */
  private static Act actOf(Contribution entry) {
    String lever = leverOf(entry).id();
    if (entry instanceof Target target) {
      return new Act("target", List.of(lever, target.column().id()));
    } else if (entry instanceof Correction correction) {
      return new Act("correction", List.of(lever, correction.direction().id()));
    } else if (entry instanceof History history) {
      return new Act(history.undo() ? "undo" : "carryOn", List.of(lever, history.direction().id()));
    } else if (entry instanceof Limit limit) {
      return new Act("bar", List.of(lever, limit.direction().id(), limit.scope().id()));
    } else if (entry instanceof Contribution.Fewer) {
      return new Act("fewer", List.of(lever));
    } else if (entry instanceof Contribution.Cap cap) {
      return new Act("cap", List.of(lever, cap.direction().id(), cap.mark().id()));
    } else if (entry instanceof Contribution.Lead lead) {
      return new Act("leads", List.of(lever, lead.rank().id()));
    }
    return new Act("hold", List.of(lever));
  }

  private static boolean names(Premise premise, String question) {
    return premise.fact().equals("Answer") && questions(premise).contains(question);
  }

  private static List<String> questions(Premise premise) {
    return premise.field("question").map(Constraint::values).orElse(List.of());
  }
}
