package insidelift.engine.consultation;

import insidelift.engine.notes.NoteBook;
import insidelift.shared.Answer;
import insidelift.shared.Degrees;
import insidelift.shared.Finding;
import insidelift.shared.Proposal;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Says premises, acts and what to do now in plain words, and breaks lines. */
final class Said {

  /** What fits a terminal line and a sheet of paper. */
  static final int WIDTH = 80;

  private final Vocabulary vocabulary;
  private final NoteBook notes;

  Said(Vocabulary vocabulary, NoteBook notes) {
    this.vocabulary = vocabulary;
    this.notes = notes;
  }

  /** An answer, as in "mid-corner: pushes wide (understeer)". */
  String answer(String question, String value) {
    String words =
        vocabulary.question(question).flatMap(known -> known.value(value)).orElseThrow().words();
    return question + ": " + words;
  }

  String finding(String id) {
    return vocabulary.finding(id).orElseThrow().words();
  }

  String title(String note) {
    return notes.note(note).title();
  }

  List<String> sources(String note) {
    return Sources.of(notes.note(note), notes);
  }

  /** What a rule rested on when it spoke. */
  String because(List<Object> premises) {
    List<String> said = new ArrayList<>();
    for (Object premise : premises) {
      if (premise instanceof Answer answer) {
        said.add(answer(answer.question(), answer.value()));
      } else if (premise instanceof Finding finding) {
        said.add(finding(finding.id()) + " (" + finding.strength() + ")");
      } else if (premise instanceof Proposal proposal) {
        said.add("proposed: " + proposal.lever() + " " + proposal.direction());
      }
    }
    return said.isEmpty() ? "nothing that speaks against it" : String.join("; ", said);
  }

  /** A premise of a rule. */
  String premise(Premise premise) {
    String said =
        switch (premise.fact()) {
          case "Answer" -> answerPremise(premise);
          case "Finding" ->
              "%s (evidence of %s or more)"
                  .formatted(
                      finding(values(premise, "id").get(0)), first(premise, "strength", "1"));
          case "Barred" ->
              "%s %s is barred"
                  .formatted(first(premise, "lever", "a lever"), first(premise, "direction", ""));
          case "Proposal" -> proposal(premise);
          case "Move" ->
              "%s moves %s"
                  .formatted(first(premise, "lever", "a lever"), first(premise, "direction", ""))
                  .strip();
          default -> premise.fact();
        };
    return premise.absent() ? "not: " + said : said;
  }

  private String answerPremise(Premise premise) {
    List<String> questions = values(premise, "question");
    List<String> values = values(premise, "value");
    if (questions.isEmpty()) {
      return "something to complain of";
    }
    if (values.isEmpty()) {
      return String.join(" or ", questions) + ": any answer";
    }
    if (questions.size() > 1) {
      return String.join(" or ", questions) + ": " + String.join(" or ", values);
    }
    return questions.get(0)
        + ": "
        + values.stream()
            .map(value -> answer(questions.get(0), value).substring(questions.get(0).length() + 2))
            .collect(Collectors.joining(", or "));
  }

  private static String proposal(Premise premise) {
    List<String> claims = values(premise, "claim");
    String of = claims.isEmpty() ? "a move" : "one of " + String.join(", ", claims);
    of = claims.size() == 1 ? claims.get(0) : of;
    String way = first(premise, "lever", "") + " " + first(premise, "direction", "");
    return (of + " is proposed" + (way.isBlank() ? "" : " (" + way.strip() + ")"));
  }

  /** What a rule records. */
  String act(Act act) {
    List<String> words = act.words();
    return switch (act.verb()) {
      case "check" -> "a first check: " + words.get(0);
      case "unseen" -> "list \"" + words.get(0) + "\" as not looked at";
      case "evidence" ->
          "evidence of %s decibans %s: %s"
              .formatted(
                  words.get(1).replace("-", ""),
                  words.get(1).startsWith("-") ? "against" : "for",
                  finding(words.get(0)));
      case "target" -> "set " + words.get(0) + " for a track that is " + words.get(1);
      case "correction" -> words.get(0) + " " + words.get(1);
      case "undo" -> "take the last change back: " + words.get(0) + " " + words.get(1);
      case "carryOn" -> "one more of the same: " + words.get(0) + " " + words.get(1);
      case "bar" -> "bar " + words.get(0) + " " + words.get(1) + " (" + words.get(2) + ")";
      case "fewer" -> "one position fewer of " + words.get(0);
      case "cap" -> "move " + words.get(0) + " no further than " + words.get(2);
      case "doubles" -> "two positions for " + String.join(", ", words);
      case "hold" -> "leave " + words.get(0) + " where it is";
      case "rests" -> "nothing asks for " + words.get(0);
      case "setsAside" -> "set aside " + String.join(", ", words);
      case "leads" -> "let " + words.get(0) + " go first by " + words.get(1);
      case "alternative" -> "name another lever: " + title(words.get(0));
      case "decides" -> "say it aloud";
      case "caution" -> "add a caution to " + words.get(0);
      case "job" -> "add the steps of the job";
      default -> act.verb();
    };
  }

  /** What to do now, in one line. */
  String now(Now now) {
    return switch (now.status()) {
      case FIX_FIRST ->
          "put right first: "
              + now.checks().stream().sorted().map(this::title).collect(Collectors.joining("; "));
      case NOT_ENOUGH -> "too little is known to say anything";
      case HOLD -> "leave both levers where they are";
      case CHANGE ->
          now.moves().stream()
              .sorted((one, other) -> one.lever().compareTo(other.lever()))
              .map(
                  move ->
                      "%s %s by %s"
                          .formatted(
                              move.lever().id(), move.direction().id(), Degrees.of(move.degrees())))
              .collect(Collectors.joining(" and "));
    };
  }

  private static List<String> values(Premise premise, String field) {
    return premise.field(field).map(Constraint::values).orElse(List.of());
  }

  private static String first(Premise premise, String field, String otherwise) {
    return values(premise, field).stream().findFirst().orElse(otherwise);
  }

  /** A paragraph broken into lines, those after the first one set in. */
  static void wrap(String text, String indent, List<String> into) {
    String hanging = " ".repeat(indent.length());
    StringBuilder line = new StringBuilder(indent);
    boolean empty = true;
    for (String word : text.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        into.add(line.toString());
        line = new StringBuilder(hanging);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    into.add(line.toString());
  }
}
