package insidelift.engine.logbook.learning;

import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.learning.DrivenChange.Effect;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the user's own runs teach: the last change and its effect, and how often which advice worked
 * for a kart at a track. It stays on this machine, can be switched off, and only ever orders
 * remedies: no fault and no limit is weighed against it.
 *
 * <p>A change counts by the clock alone, between two runs in a row on one day under the same
 * conditions, and for a piece of advice only where it was the one thing changed.
 */
public final class Experience {

  /** A piece of advice, whenever it was given. */
  record Advised(String claim, Lever lever, Direction direction) {}

  private final Optional<Logbook> book;

  private Experience(Optional<Logbook> book) {
    this.book = book;
  }

  /** What a logbook teaches. */
  public static Experience of(Logbook book) {
    return new Experience(Optional.of(book));
  }

  /** Learning switched off: nothing is known, and every weight is 0. */
  public static Experience off() {
    return new Experience(Optional.empty());
  }

  /** What the logbook teaches, unless learning is {@linkplain LearningSwitch switched off}. */
  public static Experience of(java.nio.file.Path folder, Logbook book) {
    return LearningSwitch.isOn(folder) ? of(book) : off();
  }

  /** Whether it is switched on. */
  public boolean isOn() {
    return book.isPresent();
  }

  /**
   * The last change of a kart with a driver at a track, on the last day they ran there. Where
   * nothing was changed all that day its change is {@code none}. Empty where nothing is known.
   */
  public Optional<LastChange> lastChange(int kart, int driver, int track) {
    if (book.isEmpty()) {
      return Optional.empty();
    }
    List<Numbered<RunEntry>> all = book.get().runsOf(kart, driver, track);
    if (all.isEmpty()) {
      return Optional.empty();
    }
    int day = all.get(all.size() - 1).entry().day();
    List<Numbered<RunEntry>> runs = all.stream().filter(run -> run.entry().day() == day).toList();
    int last = runs.size() - 1;
    if (last < 1 || DrivenChange.change(runs, last).isEmpty()) {
      return Optional.empty();
    }
    List<DrivenChange> changes = DrivenChange.of(runs);
    if (changes.isEmpty()) {
      return Optional.of(
          new LastChange(
              SetupChange.NONE,
              Optional.empty(),
              book.get().day(day).date(),
              runs.get(last).number(),
              Optional.empty()));
    }
    DrivenChange trial = changes.get(changes.size() - 1);
    return Optional.of(
        new LastChange(
            trial.change(),
            answer(trial.effect()),
            book.get().day(day).date(),
            trial.after().number(),
            trial.proof()));
  }

  /** What came of a change, as an answer to {@code last-effect}. */
  public static Optional<String> answer(Effect effect) {
    return switch (effect) {
      case BETTER -> Optional.of("better");
      case SAME -> Optional.of("same");
      case WORSE -> Optional.of("worse");
      case UNTOLD -> Optional.empty();
    };
  }

  /** How often which advice worked for a kart at a track, whoever drove; the best first. */
  public List<Rate> rates(int kart, int track) {
    Map<Advised, Rate> rates = new HashMap<>();
    for (DrivenChange trial : trials(kart, track)) {
      for (AdviceTaken decision : trial.after().entry().advice()) {
        if (!decision.taken() || decision.direction() == Direction.HOLD) {
          continue;
        }
        String asAdvised = decision.lever().id() + "-" + decision.direction().id();
        // With something else changed too, nobody can say which of them it was.
        Effect effect = trial.change().equals(asAdvised) ? trial.effect() : Effect.UNTOLD;
        Advised advised = new Advised(decision.claim(), decision.lever(), decision.direction());
        rates.merge(advised, none(advised).with(effect), (known, one) -> known.with(effect));
      }
    }
    return rates.values().stream()
        .sorted(
            Comparator.comparing((Rate rate) -> -rate.value())
                .thenComparing(Rate::claim)
                .thenComparing(Rate::lever)
                .thenComparing(Rate::direction))
        .toList();
  }

  /** What a remedy's order gains or loses by experience, from −0.5 to 0.5; 0 for none. */
  public double weight(int kart, int track, String claim, Lever lever, Direction direction) {
    Advised advised = new Advised(claim, lever, direction);
    return rates(kart, track).stream()
        .filter(rate -> new Advised(rate.claim(), rate.lever(), rate.direction()).equals(advised))
        .mapToDouble(Rate::weight)
        .findFirst()
        .orElse(0);
  }

  /** All that is known for a kart at a track, in lines of at most 80 columns. */
  public List<String> lines(int kart, int track) {
    if (book.isEmpty()) {
      return List.of("Learning from the log is switched off.");
    }
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Plain.wrapped(
            "What your own log says for "
                + Plain.line(book.get().name(kart))
                + " at "
                + Plain.line(book.get().name(track))
                + ". It never leaves this machine, and only changes the order of remedies.",
            ""));
    List<Rate> rates = rates(kart, track);
    if (rates.isEmpty()) {
      lines.add("  nothing yet: no advice was taken in a run");
    }
    rates.forEach(rate -> lines.addAll(Plain.wrapped("  " + rate.line(), "    ")));
    return List.copyOf(lines);
  }

  private static Rate none(Advised advised) {
    return new Rate(advised.claim(), advised.lever(), advised.direction(), 0, 0, 0);
  }

  private List<DrivenChange> trials(int kart, int track) {
    List<DrivenChange> trials = new ArrayList<>();
    if (book.isPresent()) {
      for (Numbered<DriverEntry> driver : book.get().drivers()) {
        trials.addAll(DrivenChange.of(book.get().runsOf(kart, driver.number(), track)));
      }
    }
    return trials;
  }
}
