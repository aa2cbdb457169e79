package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.learning.DrivenChange;
import insidelift.engine.logbook.learning.Experience;
import insidelift.engine.logbook.learning.LastChange;
import insidelift.engine.logbook.learning.Rate;
import insidelift.engine.logbook.learning.SetupChange;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the user's own log says before a consultation about a kart with a driver at a track: what is
 * always so, the set-up of the last run, the last change and its effect, and how advice has done.
 * Where learning is switched off it says what was written down, and nothing that was learned.
 */
public final class OwnLog {

  private final Logbook book;
  private final boolean learning;
  private final int kart;
  private final int driver;
  private final int track;
  private final Optional<LastChange> lastChange;
  private final List<Rate> rates;

  private OwnLog(Logbook book, Experience experience, int kart, int driver, int track) {
    this.book = book;
    this.learning = experience.isOn();
    // Each proof takes a moment, so every one is made once.
    this.lastChange = experience.lastChange(kart, driver, track);
    this.rates = experience.rates(kart, track);
    this.kart = kart;
    this.driver = driver;
    this.track = track;
  }

  /**
   * What the log of a folder says.
   *
   * @param kart the number of the kart's record, and so on
   */
  public static OwnLog of(Path folder, Logbook book, int kart, int driver, int track) {
    return new OwnLog(book, Experience.of(folder, book), kart, driver, track);
  }

  /** What the log of a folder says for whoever drove last, where they drove; empty if nobody. */
  public static Optional<OwnLog> ofLastRun(Path folder, Logbook book) {
    return book.lastWritten()
        .map(Numbered::entry)
        .map(run -> of(folder, book, run.kart(), run.driver(), book.day(run.day()).track()));
  }

  /** What the log calls the kart, as outside text: not yet safe to print. */
  public String kartName() {
    return book.name(kart);
  }

  /** Whose log it is: the kart, the driver and the track, by their names, safe to show. */
  public String about() {
    return "%s with %s at %s"
        .formatted(
            Plain.line(book.name(kart)),
            Plain.line(book.name(driver)),
            Plain.line(book.name(track)));
  }

  /**
   * The situation with what it leaves open filled in. What the user said stands, whatever the log
   * says; words that the vocabulary does not know are left out.
   */
  public Situation fill(Situation situation, Vocabulary vocabulary) {
    Situation filled = situation;
    for (Map.Entry<String, String> answer : open(situation, vocabulary).entrySet()) {
      filled = filled.with(answer.getKey(), answer.getValue());
    }
    if (situation.kart().equals(Kart.UNKNOWN)) {
      filled = filled.with(lastKart().orElse(Kart.UNKNOWN));
    }
    KartRecord past = filled.kart().past();
    for (Map.Entry<String, Baseline> own : book.baselines(kart).entrySet()) {
      if (!past.baseline().containsKey(own.getKey())) {
        past = past.keeping(own.getKey(), known(own.getValue(), vocabulary));
      }
    }
    filled = filled.with(filled.kart().with(past));
    return learning && situation.history().isEmpty() ? filled.after(history()) : filled;
  }

  /** A setting without the levers that the vocabulary does not know. */
  private static Baseline known(Baseline kept, Vocabulary vocabulary) {
    Map<String, String> levers = new LinkedHashMap<>(kept.levers());
    levers.keySet().removeIf(lever -> vocabulary.lever(lever).isEmpty());
    return new Baseline(kept.stand(), kept.laden(), levers, kept.noted());
  }

  /** The runs before the last one on its day, as the clock has proved them. */
  private List<Driven> history() {
    List<Driven> history = new ArrayList<>();
    List<Numbered<RunEntry>> day = lastDay();
    List<DrivenChange> trials = DrivenChange.of(day);
    for (Numbered<RunEntry> run : day.subList(0, Math.max(0, day.size() - 1))) {
      Map<String, String> told = new LinkedHashMap<>(run.entry().situation().answers());
      told.keySet().removeAll(List.of("last-change", "last-effect"));
      boolean undo = false;
      for (int i = 0; i < trials.size(); i++) {
        DrivenChange trial = trials.get(i);
        if (trial.after().equals(run)) {
          told.put("last-change", trial.change());
          Experience.answer(trial.effect()).ifPresent(effect -> told.put("last-effect", effect));
          undo = i > 0 && trial.takesBack(trials.get(i - 1));
        }
      }
      told.keySet().retainAll(Driven.TOLD);
      FrontEnd front = run.entry().situation().kart().front();
      history.add(
          new Driven(front.camber().map(Sides::middle), front.casterFromNeutral(), told, undo));
    }
    return Driven.newest(history);
  }

  private List<Numbered<RunEntry>> lastDay() {
    List<Numbered<RunEntry>> runs = runs();
    return runs.isEmpty()
        ? runs
        : runs.stream()
            .filter(run -> run.entry().day() == runs.get(runs.size() - 1).entry().day())
            .toList();
  }

  /** What is said to the user of it, in lines of at most 80 columns. */
  public List<String> lines(Situation situation, Vocabulary vocabulary) {
    List<String> lines = new ArrayList<>();
    Map<String, String> open = open(situation, vocabulary);
    lastChange.ifPresent(last -> say(lines, "From " + last.source() + " " + told(last)));
    Map<String, String> rest = new LinkedHashMap<>(open);
    lastChange.ifPresent(last -> rest.keySet().removeAll(last.answers().keySet()));
    if (!rest.isEmpty()) {
      say(
          lines,
          "Taken from your own log: "
              + rest.entrySet().stream()
                  .map(answer -> answer.getKey() + " " + answer.getValue())
                  .collect(Collectors.joining(", "))
              + ".");
    }
    if (situation.kart().equals(Kart.UNKNOWN) && lastKart().isPresent()) {
      int run = runs().get(runs().size() - 1).number();
      say(lines, "The set-up is that of run " + run + ".");
    }
    book.baselines().stream()
        .filter(own -> own.entry().kart() == kart)
        .filter(own -> !situation.kart().past().baseline().containsKey(own.entry().condition()))
        .forEach(
            own ->
                say(
                    lines,
                    "This kart's own setting for the %s is record %d."
                        .formatted(own.entry().condition(), own.number())));
    if (!learning) {
      lines.add("Learning from the log is switched off.");
    }
    rates.forEach(rate -> say(lines, "At this track, with this kart: " + rate.line() + "."));
    return List.copyOf(lines);
  }

  private static String told(LastChange last) {
    String run = "(run " + last.run() + "): ";
    if (last.change().equals(SetupChange.NONE)) {
      return run + "nothing was changed that day.";
    }
    String what =
        last.change().equals(SetupChange.OTHER)
            ? "the last change was something else, or several things at once"
            : "the last change was " + last.change().replace('-', ' ');
    return run
        + what
        + last.effect()
            .map(
                effect ->
                    switch (effect) {
                      case "better" -> ", and the laps were quicker.";
                      case "worse" -> ", and the laps were slower.";
                      default -> ", and the laps were the same.";
                    })
            .orElse("; the clock cannot tell what came of it.");
  }

  /** What the log answers and the situation does not. */
  private Map<String, String> open(Situation situation, Vocabulary vocabulary) {
    Map<String, String> open = new LinkedHashMap<>();
    open.putAll(book.entry(kart, KartEntry.class).map(KartEntry::answers).orElse(Map.of()));
    open.putAll(book.entry(driver, DriverEntry.class).map(DriverEntry::answers).orElse(Map.of()));
    open.putAll(book.entry(track, TrackEntry.class).map(TrackEntry::answers).orElse(Map.of()));
    // The class of power follows from the gearbox, so the two come from one source.
    if (situation.answer("power").isPresent() || situation.answer("gearbox").isPresent()) {
      open.keySet().removeAll(List.of("power", "gearbox"));
    }
    lastChange.ifPresent(last -> open.putAll(last.answers()));
    Optional<String> said = situation.answer("last-change");
    if (said.isPresent() && !said.get().equals(open.get("last-change"))) {
      open.remove("last-effect");
    }
    open.keySet().removeAll(situation.answers().keySet());
    // In the order of the questions, whatever order the log was written in.
    Map<String, String> ordered = new LinkedHashMap<>();
    for (Question question : vocabulary.questions()) {
      String value = open.get(question.id());
      if (value != null && question.value(value).isPresent()) {
        ordered.put(question.id(), value);
      }
    }
    return ordered;
  }

  /** The kart as it was in the last run, with how it stood in the run before. */
  private Optional<Kart> lastKart() {
    List<Numbered<RunEntry>> day = lastDay();
    if (day.isEmpty()) {
      return Optional.empty();
    }
    Kart kart = day.get(day.size() - 1).entry().situation().kart();
    if (kart.equals(Kart.UNKNOWN) || day.size() < 2 || kart.past().before().isPresent()) {
      return Optional.of(kart).filter(set -> !set.equals(Kart.UNKNOWN));
    }
    FrontEnd before = day.get(day.size() - 2).entry().situation().kart().front();
    return Optional.of(
        before.equals(FrontEnd.UNKNOWN) || before.equals(kart.front()) ? kart : kart.after(before));
  }

  private List<Numbered<RunEntry>> runs() {
    return book.runsOf(kart, driver, track);
  }

  private static void say(List<String> lines, String text) {
    lines.addAll(Plain.wrapped(text, "  "));
  }
}
