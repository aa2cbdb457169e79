package insidelift.engine.consultation.explanation;

import insidelift.engine.consultation.advice.Sources;
import insidelift.engine.consultation.decision.ToDo;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex.Act;
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
    return question
        + ": "
        + vocabulary
            .question(question)
            .flatMap(known -> known.value(value))
            .map(known -> known.words())
            .orElse(value);
  }

  String finding(String id) {
    return vocabulary.finding(id).map(word -> word.words()).orElse(id);
  }

  String title(String note) {
    return notes.note(note).title();
  }

  List<String> sources(String note) {
    return Sources.of(notes.note(note), notes);
  }

  /** A premise of a rule. */
  String premise(Premise premise) {
    if (premise instanceof Premise.Told told) {
      return (told.absent() ? "not: " : "") + told(told);
    }
    if (premise instanceof Premise.Moved moved) {
      String lever = moved.lever().isEmpty() ? "a lever" : moved.lever();
      return moved.direction().isEmpty()
          ? lever + " moves"
          : lever + " moves " + way(moved.lever(), moved.direction());
    }
    return "something to complain of";
  }

  private String told(Premise.Told told) {
    String questions = String.join(" or ", told.questions());
    if (told.values().isEmpty()) {
      return questions + ": any answer";
    }
    if (told.questions().size() > 1) {
      return questions + ": " + String.join(" or ", told.values());
    }
    return questions
        + ": "
        + told.values().stream()
            .map(value -> answer(questions, value).substring(questions.length() + 2))
            .collect(Collectors.joining(", or "));
  }

  /** What a rule says. */
  String act(Act act) {
    return switch (act.verb()) {
      case CHECK -> "a first check: " + act.word(0);
      case UNSEEN -> "list \"" + act.word(0) + "\" as not looked at";
      case OTHER ->
          "name another lever: "
              + vocabulary
                  .lever(act.word(0))
                  .orElseThrow()
                  .step(Named.of(Direction.class, act.word(1)));
      case KIT ->
          "change over for the %s: %s"
              .formatted(
                  act.word(1),
                  act.word(1).equals("wet")
                      ? vocabulary.lever(act.word(0)).orElseThrow().wet()
                      : vocabulary.lever(act.word(0)).orElseThrow().dry());
      case OVERRULED -> "leave out the claim \"" + act.word(0) + "\"";
      case CARE -> "add a caution to " + act.word(0);
      case JOB -> "add the steps of the job";
      case EVIDENCE ->
          "%d points %s: %s"
              .formatted(
                  Math.abs(act.number(1)),
                  act.number(1) < 0 ? "against" : "for",
                  finding(act.word(0)));
      case CLAIM -> claim(act);
      case BARRED ->
          "no %s (%s)"
              .formatted(
                  move(act.word(0), act.word(1)),
                  act.word(2).equals("all") ? "whatever asks for it" : act.word(2));
      case START ->
          "on a %s track the trade starts %s at %s"
              .formatted(act.word(0), act.word(1), place(act.word(1), act.number(2)));
      case TRACK -> "the next run is for a track that is " + act.word(0);
      case SEVERITY -> "what is felt in the corner counts %s per cent".formatted(act.word(0));
      case TERM -> "a finding: " + finding(act.word(0));
      case OPTION -> "%s, %s minutes".formatted(move(act.word(0), act.word(1)), act.word(2));
    };
  }

  private String claim(Act act) {
    int strength = act.number(3);
    String how =
        List.of("slightly", "clearly", "strongly").get(Math.min(3, Math.abs(strength)) - 1);
    String on =
        switch (act.word(2)) {
          case "entry", "mid", "exit" ->
              (strength > 0 ? "adds" : "takes") + " front bite at " + act.word(2);
          default -> (strength > 0 ? "helps where " : "costs where ") + finding(act.word(2));
        };
    String camp = act.word(5).equals("none") ? "" : "; one camp of a dispute";
    return "%s %s %s (believed to %s per cent%s)"
        .formatted(move(act.word(0), act.word(1)), how, on, act.word(4), camp);
  }

  private static String place(String lever, int value) {
    return lever.equals("camber")
        ? Degrees.of(value / 100.0).signed()
        : "%d positions from neutral".formatted(value / 100);
  }

  /** A move in words: toward positive and negative, never more camber. */
  static String move(String lever, String direction) {
    return lever.equals("camber")
        ? "camber " + way(lever, direction)
        : way(lever, direction) + " " + lever;
  }

  /** Which way, for a lever. */
  static String way(String lever, String direction) {
    if (!lever.equals("camber")) {
      return direction;
    }
    return direction.equals("more") ? "toward positive" : "toward negative";
  }

  /** A move in words. */
  static String move(Lever lever, Direction direction) {
    return move(lever.id(), direction.id());
  }

  /** What to do now, in one line. */
  String now(ToDo now) {
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
                      move(move.lever(), move.direction()) + " by " + Degrees.of(move.degrees()))
              .collect(Collectors.joining(" and "));
    };
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
