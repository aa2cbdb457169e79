package insidelift.engine.consultation.advice;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.LeverOutcome;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.sizing.Sized;
import insidelift.engine.sizing.Sized.End;
import insidelift.engine.sizing.Sizer;
import insidelift.engine.sizing.Sizes;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken;
import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Care;
import insidelift.rules.fact.Spoken.Job;
import insidelift.rules.fact.Spoken.Track;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice.Dispute;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.situation.Kart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;

/** Puts what becomes of one lever into words. */
final class SuggestionWording {

  /** The longest summary: it must fit one glance. */
  static final int SUMMARY = 139;

  private final Vocabulary vocabulary;
  private final NoteBook notes;
  private final RuleIndex index;
  private final Decided decided;
  private final Behind behind;
  private final boolean whole;
  private final Kart kart;

  /**
   * The words for the levers of a decision.
   *
   * @param whole whether what the change does to the wheels is worked out too
   */
  SuggestionWording(Advisor advisor, Decided decided, Behind behind, boolean whole) {
    this.vocabulary = advisor.vocabulary();
    this.notes = advisor.notes();
    this.index = advisor.rules().index();
    this.decided = decided;
    this.behind = behind;
    this.whole = whole;
    this.kart = decided.situation().kart();
  }

  Suggestion suggestion(LeverOutcome verdict) {
    Sized sized = verdict.sized();
    boolean moves = verdict.moves();
    List<Note> claims = claims(verdict);
    return new Suggestion(
        verdict.lever(),
        sized.direction(),
        verdict.kind(),
        verdict.first(),
        tidy(sized.degrees().value()),
        target(verdict),
        sized.positions(),
        strength(verdict, claims),
        summary(verdict),
        verdict.heldBy().orElse(null),
        reasons(verdict),
        moves ? disputes(claims) : List.of(),
        moves ? cautions(verdict, claims) : List.of(),
        moves ? steps(verdict) : List.of(),
        moves ? new Minutes(Sizes.MINUTES_FROM, Sizes.MINUTES_TO) : null,
        moves ? sections(claims, "Feel") : List.of(),
        moves ? sections(claims, "Undo") : List.of(),
        moves && whole ? Effects.of(decided.situation(), verdict) : null,
        moves && whole ? Effects.washers(kart, decided, verdict) : null);
  }

  /** Where both sides end; nowhere that can be named where nobody measured where they stand. */
  private Settings target(LeverOutcome verdict) {
    if (!new Sizer(kart).read(verdict.lever())) {
      return null;
    }
    return new Settings(
        tidy(verdict.sized().target().left().value()),
        tidy(verdict.sized().target().right().value()),
        verdict.lever() == Lever.CASTER && !kart.absolute() ? "neutral" : "absolute");
  }

  /** The notes behind a move: those of the place it goes to, and those that weigh a part in it. */
  private List<Note> claims(LeverOutcome verdict) {
    Set<String> ids = new LinkedHashSet<>();
    verdict.by().stream().map(By::note).forEach(ids::add);
    verdict.weighty().stream().map(part -> part.by().note()).forEach(ids::add);
    return ids.stream().map(notes::note).toList();
  }

  private static String strength(LeverOutcome verdict, List<Note> claims) {
    // A place is known or it is not: the sum of a move by feel is what can be weak or strong.
    int points = verdict.kind() == Kind.CORRECTION ? verdict.gain() : Integer.MAX_VALUE;
    if (!verdict.moves()) {
      points = Math.max(points, 20);
    }
    return claims.stream().anyMatch(Note::disputed)
        ? Strength.disputed(points)
        : Strength.word(points);
  }

  /** What is assumed about the size of a position, if it was not measured. */
  static String assumedStep(Lever lever, Kart kart) {
    Sizer sizer = new Sizer(kart);
    return sizer.measured(lever)
        ? null
        : "One %s position moves %s (provisional): measure yours."
            .formatted(lever.id(), sizer.step(lever));
  }

  private String summary(LeverOutcome verdict) {
    return verdict.moves() ? change(verdict) : stay(verdict);
  }

  private String change(LeverOutcome verdict) {
    Sized sized = verdict.sized();
    String verb = verdict.kind() == Kind.UNDO ? "Take %s back" : "Set %s";
    String because = because(verdict);
    if (verdict.lever() == Lever.CASTER) {
      String way = sized.direction() == Direction.MORE ? "more" : "less";
      return (verb + " %s (about %s) on both sides: %s.")
          .formatted("caster", positions(sized.positions(), way), sized.degrees(), because);
    }
    String toward = sized.direction() == Direction.MORE ? "positive" : "negative";
    String to = target(verdict) == null ? "" : ", to " + sized.target().left().signed();
    return (verb + " %s toward %s on both sides%s: %s.")
        .formatted("camber", sized.degrees(), toward, to, because);
  }

  /** The clause that ends the summary: what was really reported, or where the place comes from. */
  private String because(LeverOutcome verdict) {
    if (verdict.kind() == Kind.CORRECTION) {
      Part part = verdict.headline().orElseThrow();
      Note note = notes.note(part.by().note());
      // A shop's own rule says whose it is.
      return note.id().startsWith("own-") && !note.because().isEmpty()
          ? note.because()
          : words(part.finding());
    }
    if (verdict.kind() == Kind.RESTORE) {
      return "this kart's own setting for the " + condition();
    }
    Note note = notes.note(verdict.by().get(0).note());
    boolean takenBack =
        verdict.kind() == Kind.TARGET && verdict.goes(Direction.LESS) && !condition().equals("dry");
    // Less water asks for less: the reason for more would be no reason.
    return takenBack ? notes.note("size-targets").because() : note.because();
  }

  private String condition() {
    return decided.reasoned().all(Track.class).findFirst().map(Track::condition).orElse("dry");
  }

  private String words(String finding) {
    return vocabulary.finding(finding).orElseThrow().words();
  }

  private static String positions(double count, String way) {
    String number = count == Math.rint(count) ? Long.toString((long) count) : "" + count;
    return "%s position%s %s".formatted(number, count == 1 ? "" : "s", way);
  }

  private String stay(LeverOutcome verdict) {
    String lever = verdict.lever().id();
    if (verdict.sized().end() == End.ALREADY_THERE) {
      String where =
          verdict.lever() == Lever.CAMBER
              ? verdict.sized().target().left().signed() + " on both sides"
              : "as far as asked";
      return "Leave %s where it is: it is already where it should be (%s).".formatted(lever, where);
    }
    String because = notes.note(verdict.heldBy().orElseThrow()).because();
    String wanted =
        verdict.headline().map(part -> " (wanted, since " + words(part.finding()) + ")").orElse("");
    String long0 = "Leave %s where it is%s: %s.".formatted(lever, wanted, because);
    return long0.length() <= SUMMARY
        ? long0
        : "Leave %s where it is: %s.".formatted(lever, because);
  }

  private List<Reason> reasons(LeverOutcome verdict) {
    Map<String, By> first = new LinkedHashMap<>();
    Map<String, Set<String>> chains = new LinkedHashMap<>();
    for (By by : verdict.by()) {
      first.putIfAbsent(by.note(), by);
      Set<String> chain = chains.computeIfAbsent(by.note(), key -> new LinkedHashSet<>());
      chain.addAll(behind.answers(verdict));
      chain.addAll(behind.answers(by));
    }
    for (Part part : verdict.weighty()) {
      first.putIfAbsent(part.by().note(), part.by());
      Set<String> chain = chains.computeIfAbsent(part.by().note(), key -> new LinkedHashSet<>());
      chain.addAll(behind.answers(part));
    }
    List<Reason> reasons = new ArrayList<>();
    first.forEach(
        (id, by) -> {
          Note note = notes.note(id);
          reasons.add(
              new Reason(
                  id,
                  by.rule(),
                  List.copyOf(chains.get(id)),
                  note.text("Claim"),
                  note.text("Why"),
                  Sources.of(note, notes)));
        });
    return reasons;
  }

  private static List<Dispute> disputes(List<Note> claims) {
    return claims.stream()
        .filter(Note::disputed)
        .map(note -> new Dispute(note.id(), note.section("Dispute")))
        .toList();
  }

  private List<String> cautions(LeverOutcome verdict, List<Note> claims) {
    List<String> cautions = new ArrayList<>(sections(claims, "Caution"));
    for (Care care : ordered(Care.class, Care::place)) {
      if (care.lever().equals("both") || care.lever().equals(verdict.lever().id())) {
        String caution = notes.note(care.by().note()).text("Caution");
        if (!cautions.contains(caution)) {
          cautions.add(caution);
        }
      }
    }
    return cautions;
  }

  /** How to turn the eccentrics for this move, then the job that every move shares. */
  private List<String> steps(LeverOutcome verdict) {
    Set<String> steps = new LinkedHashSet<>();
    ordered(Job.class, Job::place).stream()
        .filter(job -> about(job.by(), verdict))
        .forEach(job -> steps.addAll(notes.note(job.by().note()).section("Steps")));
    return List.copyOf(steps);
  }

  /** Whether a rule is about a move of this lever that way, or about every move. */
  private boolean about(By by, LeverOutcome verdict) {
    return index.rule(by.rule()).orElseThrow().premises().stream()
        .filter(Premise.Moved.class::isInstance)
        .map(Premise.Moved.class::cast)
        .allMatch(
            moved ->
                (moved.lever().isEmpty() || moved.lever().equals(verdict.lever().id()))
                    && (moved.direction().isEmpty()
                        || moved.direction().equals(verdict.sized().direction().id())));
  }

  private <T extends Spoken> List<T> ordered(Class<T> type, ToIntFunction<T> place) {
    return decided.reasoned().spoken(type).stream().sorted(Comparator.comparingInt(place)).toList();
  }

  private static List<String> sections(List<Note> claims, String heading) {
    return claims.stream().map(note -> note.text(heading)).filter(text -> !text.isEmpty()).toList();
  }

  /** A figure without the noise of arithmetic: a thousandth of a degree is far below any gauge. */
  private static double tidy(double degrees) {
    return Math.round(degrees * 1000) / 1000.0 + 0.0;
  }
}
