package insidelift.engine.consultation;

import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.sizing.Sized;
import insidelift.engine.sizing.Sized.End;
import insidelift.engine.sizing.Sizer;
import insidelift.engine.sizing.Sizes;
import insidelift.shared.Answer;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Care;
import insidelift.shared.Contribution.Job;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Direction;
import insidelift.shared.Finding;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Move;
import insidelift.shared.Proposal;
import insidelift.shared.advice.Advice.Dispute;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
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

  private final NoteBook notes;
  private final Kart kart;
  private final Decided decided;
  private final Effects effects;

  SuggestionWording(NoteBook notes, Kart kart, Decided decided, Effects effects) {
    this.notes = notes;
    this.kart = kart;
    this.decided = decided;
    this.effects = effects;
  }

  Suggestion suggestion(Verdict verdict) {
    Sized sized = verdict.sized();
    boolean moves = verdict.moves();
    List<Note> claims =
        verdict.wishes().stream().map(Wish::claim).distinct().map(notes::note).toList();
    return new Suggestion(
        verdict.lever(),
        sized.direction(),
        verdict.kind(),
        decided.first().contains(verdict.lever()),
        tidy(sized.degrees().value()),
        new Settings(
            tidy(sized.target().left().value()),
            tidy(sized.target().right().value()),
            verdict.lever() == Lever.CASTER && !kart.absolute() ? "neutral" : "absolute"),
        sized.positions(),
        strength(verdict, claims),
        summary(verdict),
        verdict.heldBy().orElse(null),
        reasons(verdict),
        disputes(claims),
        moves ? cautions(verdict.lever(), claims) : List.of(),
        moves ? steps(verdict) : List.of(),
        moves ? new Minutes(Sizes.MINUTES_FROM, Sizes.MINUTES_TO) : null,
        moves ? sections(claims, "Feel") : List.of(),
        moves ? sections(claims, "Undo") : List.of(),
        moves && effects != null ? effects.of(kart, verdict) : null,
        moves && effects != null ? Effects.washers(kart, decided, verdict) : null);
  }

  /** A disputed claim is never surer than clear, however plain what it rests on. */
  private static String strength(Verdict verdict, List<Note> claims) {
    boolean disputed = claims.stream().anyMatch(Note::disputed);
    int most = disputed ? Weigher.CLEAR : Integer.MAX_VALUE;
    return verdict.wishes().isEmpty()
        ? Weigher.word(Weigher.CLEAR)
        : Weigher.word(Math.min(most, verdict.strength()));
  }

  /** The premises of rules as "question: value" and findings by their word. */
  static List<String> because(List<Origin> origins) {
    Set<String> because = new LinkedHashSet<>();
    for (Origin by : origins) {
      for (Object premise : by.premises()) {
        if (premise instanceof Answer answer) {
          because.add(answer.question() + ": " + answer.value());
        } else if (premise instanceof Finding finding) {
          because.add("finding " + finding.id() + ": " + Weigher.word(finding.strength()));
        } else if (premise instanceof Proposal proposal) {
          because.add("claim " + proposal.claim());
        }
      }
    }
    return List.copyOf(because);
  }

  /** What is assumed about the size of a position, if it was not measured. */
  static String assumedStep(Lever lever, Kart kart) {
    Sizer sizer = new Sizer(kart);
    return sizer.measured(lever)
        ? null
        : "One %s position moves %s (provisional): measure yours."
            .formatted(lever.id(), sizer.step(lever));
  }

  private String summary(Verdict verdict) {
    String long0 = verdict.moves() ? change(verdict) : stay(verdict, true);
    return long0.length() <= SUMMARY || verdict.moves() ? long0 : stay(verdict, false);
  }

  private String change(Verdict verdict) {
    Sized sized = verdict.sized();
    String because = notes.note(clause(verdict)).because();
    String verb = verdict.undo() ? "Take %s back" : "Set %s";
    String way = sized.direction() == Direction.MORE ? "more" : "less";
    if (verdict.lever() == Lever.CAMBER) {
      String toward = sized.direction() == Direction.MORE ? "positive" : "negative";
      return (verb + " %s toward %s on both sides, to %s: %s.")
          .formatted("camber", sized.degrees(), toward, sized.target().left().signed(), because);
    }
    return (verb + " %s (about %s) on both sides: %s.")
        .formatted("caster", positions(sized.positions(), way), sized.degrees(), because);
  }

  /** The note whose clause ends the summary. */
  private static String clause(Verdict verdict) {
    Wish wish = verdict.wishes().get(0);
    boolean takenBack =
        wish.kind() == Kind.TARGET
            && wish.direction() == Direction.LESS
            && !wish.claim().equals("camber-dry-zero");
    // Less water asks for less: the reason for more would be no reason.
    return takenBack ? "size-targets" : wish.claim();
  }

  private static String positions(double count, String way) {
    String number = count == Math.rint(count) ? Long.toString((long) count) : "" + count;
    return "%s position%s %s".formatted(number, count == 1 ? "" : "s", way);
  }

  private String stay(Verdict verdict, boolean withWish) {
    String lever = verdict.lever().id();
    Sized sized = verdict.sized();
    if (sized.end() == End.ALREADY_THERE) {
      String where =
          verdict.lever() == Lever.CAMBER
              ? sized.target().left().signed() + " on both sides"
              : "as far as asked";
      return "Leave %s where it is: it is already where it should be (%s).".formatted(lever, where);
    }
    if (sized.end() == End.MARK) {
      return "Leave %s where it is: at %s it is as far as this reason takes it."
          .formatted(lever, sized.target().left().signed());
    }
    Note holder = notes.note(verdict.heldBy().orElseThrow());
    if (withWish && verdict.wishes().stream().anyMatch(Wish::moves)) {
      Note wish = notes.note(verdict.wishes().get(0).claim());
      if (!wish.id().equals(holder.id())) {
        return "Leave %s where it is (wanted: %s), because %s."
            .formatted(lever, wanted(verdict), holder.because());
      }
    }
    return "Leave %s where it is: %s.".formatted(lever, holder.because());
  }

  private static String wanted(Verdict verdict) {
    return verdict.wishes().stream()
        .map(Wish::direction)
        .distinct()
        .map(way -> way == Direction.MORE ? "more" : way == Direction.LESS ? "less" : "as it is")
        .reduce((one, other) -> one + " and " + other)
        .orElseThrow();
  }

  private List<Reason> reasons(Verdict verdict) {
    Map<String, List<Origin>> byNote = new LinkedHashMap<>();
    for (Wish wish : verdict.wishes()) {
      byNote.computeIfAbsent(wish.claim(), key -> new ArrayList<>()).addAll(wish.origins());
    }
    for (Origin holder : verdict.holders()) {
      byNote.computeIfAbsent(holder.note(), key -> new ArrayList<>()).add(holder);
    }
    verdict.heldBy().ifPresent(note -> byNote.computeIfAbsent(note, key -> new ArrayList<>()));
    List<Reason> reasons = new ArrayList<>();
    byNote.forEach((id, origins) -> reasons.add(reason(notes.note(id), origins)));
    return reasons;
  }

  private Reason reason(Note note, List<Origin> origins) {
    List<String> chain = new ArrayList<>();
    for (Origin by : origins) {
      for (Object premise : by.premises()) {
        if (premise instanceof Finding finding) {
          decided
              .evidence()
              .getOrDefault(finding.id(), List.of())
              .forEach(piece -> chain.addAll(because(List.of(piece.by()))));
        }
      }
    }
    chain.addAll(because(origins));
    return new Reason(
        note.id(),
        origins.isEmpty() ? note.id() : origins.get(0).rule(),
        chain.stream().distinct().toList(),
        note.text("Claim"),
        note.text("Why"),
        Sources.of(note, notes));
  }

  private static List<Dispute> disputes(List<Note> claims) {
    return claims.stream()
        .filter(Note::disputed)
        .map(note -> new Dispute(note.id(), note.section("Dispute")))
        .toList();
  }

  private List<String> cautions(Lever lever, List<Note> claims) {
    List<String> cautions = new ArrayList<>(sections(claims, "Caution"));
    for (Care care : ordered(Care.class, Care::place)) {
      if (care.lever() == null || care.lever() == lever) {
        String caution = notes.note(care.by().note()).text("Caution");
        if (!cautions.contains(caution)) {
          cautions.add(caution);
        }
      }
    }
    return cautions;
  }

  /** How to turn the eccentrics for this move, then the job that every move shares. */
  private List<String> steps(Verdict verdict) {
    Set<String> steps = new LinkedHashSet<>();
    ordered(Job.class, Job::place).stream()
        .filter(job -> job.by().premises().stream().allMatch(premise -> about(premise, verdict)))
        .forEach(job -> steps.addAll(notes.note(job.by().note()).section("Steps")));
    return List.copyOf(steps);
  }

  private static boolean about(Object premise, Verdict verdict) {
    return premise instanceof Move move
        && move.lever().equals(verdict.lever().id())
        && move.direction().equals(verdict.sized().direction().id());
  }

  private <T extends Contribution> List<T> ordered(Class<T> type, ToIntFunction<T> place) {
    return decided.entries(type).stream()
        .sorted(Comparator.comparingInt(place).thenComparing(entry -> entry.by().rule()))
        .toList();
  }

  private static List<String> sections(List<Note> claims, String heading) {
    return claims.stream().map(note -> note.text(heading)).filter(text -> !text.isEmpty()).toList();
  }

  /** A figure without the noise of arithmetic: a thousandth of a degree is far below any gauge. */
  private static double tidy(double degrees) {
    return Math.round(degrees * 1000) / 1000.0 + 0.0;
  }
}
