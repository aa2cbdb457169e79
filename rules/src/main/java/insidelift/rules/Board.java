package insidelift.rules;

import insidelift.rules.fact.Barred;
import insidelift.rules.fact.Beside;
import insidelift.rules.fact.Beside.Lead;
import insidelift.rules.fact.Choice;
import insidelift.rules.fact.Claim;
import insidelift.rules.fact.End;
import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Free;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Setting;
import insidelift.rules.fact.Spoken;
import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Option;
import insidelift.rules.fact.Spoken.Start;
import insidelift.rules.fact.Spoken.Term;
import insidelift.rules.fact.Spoken.Track;
import insidelift.rules.fact.Step;
import insidelift.rules.fact.Sum;
import insidelift.rules.fact.Told.AtEnd;
import insidelift.rules.fact.Told.HeavyAt;
import insidelift.rules.fact.Told.Minutes;
import insidelift.rules.fact.Trial;
import insidelift.rules.fact.Visit;
import insidelift.shared.Lever;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The facts of one line of reasoning, and what the rules that think do with them: weigh.drl,
 * limits.drl and choose.drl, rule by rule and in their order. Not for several threads.
 */
final class Board {

  /** Below so many minutes there is time for one job only; as choose.drl has it. */
  private static final int TWO_JOBS = 40;

  /** The least that a move must gain to be worth making; as choose.drl has it. */
  private static final int LEAST_GAIN = 2;

  private static final Set<String> TELLING =
      Set.of(
          "water",
          "turn-in",
          "mid-corner",
          "exit",
          "steering-weight",
          "exit-drive",
          "straight-speed",
          "hop",
          "front-wear",
          "front-temps",
          "play",
          "fixings",
          "alignment",
          "pull",
          "kingpin",
          "lock",
          "axle",
          "brake",
          "tyre-set",
          "tyre-life",
          "pressures",
          "readings",
          "grip-overall",
          "rear-wear",
          "air",
          "braking",
          "line",
          "toe-now",
          "no-response",
          "driver-state");

  private final HeardAnswers heard;
  private final List<Object> facts = new ArrayList<>(256);
  private final List<Setting> settings = new ArrayList<>();
  private final List<End> ends = new ArrayList<>();
  private final List<Trial> trials = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<AtEnd> atEnds = new ArrayList<>();
  private final List<HeavyAt> heavyAt = new ArrayList<>();
  private final List<Term> terms = new ArrayList<>();
  private final List<Option> options = new ArrayList<>();
  private final Map<String, List<Claim>> claims = new HashMap<>();
  private final List<Start> starts = new ArrayList<>();
  private final List<Barred> barred = new ArrayList<>();
  private final List<Found> found = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Free> free = new ArrayList<>();
  private final List<Beside> beside = new ArrayList<>();
  private final Set<String> overruled = new HashSet<>();
  private final Map<String, List<Evidence>> evidence = new HashMap<>();
  private final Map<String, Integer> stands = new HashMap<>();
  private Track track;
  private int minutes = Integer.MAX_VALUE;
  private int severity = 100;
  private boolean fault;

  Board(Collection<?> told, HeardAnswers heard) {
    this.heard = heard;
    told.forEach(this::add);
  }

  /** Enters one fact. */
  void add(Object fact) {
    facts.add(fact);
    if (fact instanceof Evidence one) {
      evidence.computeIfAbsent(one.finding(), key -> new ArrayList<>(2)).add(one);
    } else if (fact instanceof Claim one) {
      claims.computeIfAbsent(one.lever(), key -> new ArrayList<>()).add(one);
    } else if (fact instanceof Barred one) {
      barred.add(one);
    } else if (fact instanceof Term one) {
      terms.add(one);
    } else if (fact instanceof Option one) {
      options.add(one);
    } else if (fact instanceof Start one) {
      starts.add(one);
    } else if (fact instanceof Track one) {
      track = one;
    } else if (fact instanceof Spoken.Severity one) {
      severity = one.percent();
    } else if (fact instanceof Spoken.Check one) {
      fault |= one.stops();
    } else if (fact instanceof Spoken.Overruled one) {
      overruled.add(one.claim());
    } else if (fact instanceof Setting one) {
      settings.add(one);
    } else if (fact instanceof End one) {
      ends.add(one);
    } else if (fact instanceof Trial one) {
      trials.add(one);
    } else if (fact instanceof Visit one) {
      visits.add(one);
    } else if (fact instanceof HeavyAt one) {
      heavyAt.add(one);
    } else if (fact instanceof AtEnd one) {
      atEnds.add(one);
    } else if (fact instanceof Minutes one) {
      minutes = one.left();
    } else if (fact instanceof Step one) {
      steps.add(one);
    }
  }

  /** Everything on the board. */
  Reasoned all() {
    return new Reasoned(facts);
  }

  /** What is moved now. */
  List<Step> now() {
    return steps.stream().filter(Step::now).toList();
  }

  /** From what plain rules said to the choice. */
  void weigh() {
    drop();
    limits();
    find();
    stand();
    parts();
    goals();
    sums();
    choose();
  }

  private void drop() {
    if (!overruled.isEmpty()) {
      claims.values().forEach(of -> of.removeIf(claim -> overruled.contains(claim.by().note())));
      starts.removeIf(start -> overruled.contains(start.by().note()));
      facts.removeIf(
          fact ->
              (fact instanceof Claim || fact instanceof Start)
                  && overruled.contains(((Spoken) fact).by().note()));
    }
  }

  private void bar(String rule, String note, String lever, String direction, String scope) {
    add(new Barred(new By(rule, note), lever, direction, scope));
  }

  private void limits() {
    for (Option option : options) {
      if (minutes < option.minutes()) {
        bar("limit.time", "limit-time", option.lever(), option.direction(), "all");
      }
    }
    for (End end : ends) {
      for (Setting at : settings) {
        if (at.of().equals("now") && at.lever().equals(end.lever())) {
          if (at.value() >= end.most()) {
            bar("limit.range-top", "limit-range", end.lever(), "more", "move");
          }
          if (at.value() <= end.least()) {
            bar("limit.range-bottom", "limit-range", end.lever(), "less", "move");
          }
        }
      }
    }
    for (AtEnd one : atEnds) {
      bar("limit.at-end", "limit-range", one.lever(), one.direction(), "all");
    }
    boolean moreCaster = false;
    for (Trial trial : trials) {
      moreCaster |= trial.age() == 0 && trial.lever().equals("caster") && trial.up();
    }
    for (Trial trial : trials) {
      if (trial.fresh() && trial.effect().equals("same")) {
        bar("limit.rests", "last-no-effect", trial.lever(), trial.direction(), "move");
      }
      if (trial.age() == 0 && trial.effect().equals("worse")) {
        for (Trial before : trials) {
          if (before.age() == 1
              && before.effect().equals("worse")
              && before.lever().equals(trial.lever())
              && !before.direction().equals(trial.direction())) {
            bar("limit.both-worse", "undo-worse", trial.lever(), "more", "move");
            bar("limit.both-worse", "undo-worse", trial.lever(), "less", "move");
          }
        }
      }
      if (trial.age() == 0 && trial.effect().equals("better")) {
        boolean elsewhere = track != null && !trial.condition().equals(track.condition());
        if (!elsewhere && !(heard.is("steering-weight", "heavy") && moreCaster)) {
          bar("limit.better", "last-better", trial.lever(), trial.back(), "move");
        }
        if (track != null && !elsewhere) {
          bar("limit.better-restore", "last-better", trial.lever(), trial.back(), "restore");
        }
      }
    }
  }

  private void find() {
    for (Term term : terms) {
      int weight = Evidence.sum(evidence.getOrDefault(term.finding(), List.of()));
      if (weight > 0) {
        found(term.found(weight, severity));
      }
      if (term.wants() == 0 && !term.on().equals(term.finding()) && !heard.knows(term.question())) {
        found(Found.open(term.on()));
      }
    }
  }

  private void found(Found one) {
    found.add(one);
    facts.add(one);
  }

  private void stand() {
    ends.forEach(end -> stands.put(end.lever(), 0));
    if (heard.is("setup-for", "wet")) {
      starts.stream()
          .filter(start -> start.water().equals("wet"))
          .forEach(start -> stands.put(start.lever(), start.value()));
    }
    settings.stream()
        .filter(setting -> setting.of().equals("now"))
        .forEach(setting -> stands.put(setting.lever(), setting.value()));
    stands.forEach((lever, value) -> facts.add(new Setting("stands", lever, value)));
  }

  private void parts() {
    for (Option option : options) {
      part(Part.taking(option));
      for (Found one : found) {
        boolean state = one.on().equals(one.finding());
        int net = 0;
        for (Claim claim : claims.getOrDefault(option.lever(), List.of())) {
          if (claim.on().equals(one.on())) {
            int says = claim.says(option.direction());
            net += says;
            if (says != 0 && (one.wants() != 0 || state)) {
              part(claim.part(option.direction(), one));
            }
          }
        }
        if (one.wants() == 0 && !state && net != 0) {
          part(Part.changing(option.lever(), option.direction(), one, net));
        }
        int votes = one.wants() == 0 || track == null ? 0 : votes(option.lever(), one.on());
        if (votes != 0) {
          part(Part.recorded(option, one, votes));
        }
      }
    }
  }

  private void part(Part one) {
    parts.add(one);
    facts.add(one);
  }

  private int votes(String lever, String on) {
    int votes = 0;
    for (Trial trial : trials) {
      if (trial.lever().equals(lever) && trial.condition().equals(track.condition())) {
        votes += trial.vote(on);
      }
    }
    return votes;
  }

  private void goals() {
    if (track != null) {
      Set<String> kept = new HashSet<>();
      for (Setting own : settings) {
        if (own.of().equals(track.condition())) {
          kept.add(own.lever());
          goal(own.lever(), own.value(), "baseline");
        }
      }
      for (Start start : starts) {
        if (start.water().equals(track.water()) && !kept.contains(start.lever())) {
          goal(start.lever(), start.value(), "start");
        }
      }
    }
    settings.stream()
        .filter(setting -> setting.of().equals("before"))
        .forEach(setting -> goal(setting.lever(), setting.value(), "before"));
  }

  private void goal(String lever, int value, String by) {
    Integer at = stands.get(lever);
    if (at != null && new Setting("stands", lever, at).apart(value)) {
      add(Step.to(lever, at, value, by));
    }
  }

  private void sums() {
    for (HeavyAt heavy : heavyAt) {
      if (stands.containsKey("caster") && heavy.caster() <= stands.get("caster") + 100) {
        bar("limit.heavy-before", "caster-heavy-limit", "caster", "more", "all");
        break;
      }
    }
    Map<String, int[]> sums = new HashMap<>();
    for (Part part : parts) {
      int[] sum = sums.computeIfAbsent(part.lever() + part.direction(), key -> new int[3]);
      int kind = !part.disputed() ? 0 : part.points() > 0 ? 1 : 2;
      sum[kind] += part.points();
    }
    for (Option option : options) {
      been(option);
      String move = option.lever() + option.direction();
      int[] of = sums.getOrDefault(move, new int[3]);
      Sum sum = Sum.of(option.lever(), option.direction(), of[0], of[1], of[2]);
      facts.add(sum);
      if (!barred(sum.lever(), sum.direction(), "move")) {
        if (Lever.isOne(sum.lever())) {
          free.add(new Free(sum.lever(), sum.direction(), sum.gain()));
        } else if (sum.gain() >= LEAST_GAIN) {
          beside.add(new Beside(sum.lever(), sum.direction(), sum.gain(), option.minutes()));
        }
      }
    }
    facts.addAll(free);
    facts.addAll(beside);
  }

  private void been(Option option) {
    Integer camber = stands.get("camber");
    Integer caster = stands.get("caster");
    for (End end : ends) {
      if (track != null && end.lever().equals(option.lever()) && camber != null && caster != null) {
        long times =
            visits.stream()
                .filter(visit -> visit.condition().equals(track.condition()))
                .filter(
                    visit ->
                        visit.next(option.lever(), option.direction(), end.size(), camber, caster))
                .count();
        if (times >= 2) {
          bar("limit.been", "last-no-effect", option.lever(), option.direction(), "move");
        }
      }
    }
  }

  private boolean barred(String lever, String direction, String choice) {
    for (Barred one : barred) {
      if (one.lever().equals(lever) && one.direction().equals(direction) && one.binds(choice)) {
        return true;
      }
    }
    return false;
  }

  /** The order of choice: the first that holds. */
  private void choose() {
    if (fault) {
      chosen("fix", "fix", "fault-first");
    } else if (TELLING.stream().noneMatch(heard::knows)) {
      chosen("not-enough", "not-enough", "nothing-asks");
    } else if (!undone() && !kept() && !restored() && !again() && !moved()) {
      chosen("wait", "wait", "nothing-asks");
      beside.stream()
          .min(Beside.BY_GAIN)
          .ifPresent(one -> facts.add(new Lead(one.lever(), one.direction())));
    }
  }

  private void chosen(String kind, String rule, String note) {
    facts.add(new Choice(kind, new By(rule, note)));
  }

  private void made(Predicate<Step> which) {
    for (Step step : steps.stream().filter(which).toList()) {
      steps.remove(step);
      facts.remove(step);
      add(step.made());
    }
  }

  private boolean undone() {
    List<Step> before = steps.stream().filter(step -> step.by().equals("before")).toList();
    for (Trial trial : trials) {
      boolean worse =
          track != null
              && trial.age() == 0
              && trial.effect().equals("worse")
              && !trial.undo()
              && trial.condition().equals(track.condition());
      if (worse && !before.isEmpty()) {
        if (before.stream().noneMatch(step -> barred(step.lever(), step.direction(), "undo"))) {
          chosen("undo", "undo", "undo-worse");
          made(step -> step.by().equals("before"));
          return true;
        }
      } else if (worse
          && !barred(trial.lever(), trial.back(), "undo")
          && barred.stream()
              .noneMatch(
                  one ->
                      one.ends()
                          && one.lever().equals(trial.lever())
                          && one.direction().equals(trial.back()))) {
        add(Step.one(trial.lever(), trial.back(), "one-back"));
        chosen("undo", "undo.one-back", "undo-worse");
        made(step -> step.by().equals("one-back"));
        return true;
      }
    }
    return false;
  }

  private boolean complained() {
    return found.stream().anyMatch(Found::complaint);
  }

  private boolean kept() {
    boolean dry = track != null && track.condition().equals("dry");
    boolean here = track == null || dry == heard.is("water", "dry");
    boolean good =
        here && heard.is("turn-in", "good") && heard.is("mid-corner", "good") && !complained();
    if (good) {
      chosen("keep", "keep", "all-well");
    }
    return good;
  }

  private boolean madeForAnother() {
    if (track == null) {
      return false;
    }
    if (heard.knows("setup-for")) {
      return !heard.is("setup-for", track.condition());
    }
    if (track.condition().equals("wet")) {
      return !complained() || trials.stream().noneMatch(trial -> trial.condition().equals("wet"));
    }
    return settings.stream().anyMatch(setting -> setting.of().equals("now")) && !complained();
  }

  private static boolean goal(Step step) {
    return step.by().equals("baseline") || step.by().equals("start");
  }

  private boolean restored() {
    Predicate<Step> open = step -> goal(step) && !barred(step.lever(), step.direction(), "restore");
    if (!madeForAnother()) {
      return false;
    }
    facts.add(Setting.MADE_FOR_ANOTHER);
    if (steps.stream().noneMatch(open)) {
      return false;
    }
    chosen("restore", "restore", "targets-first");
    made(open);
    List<Step> now = now();
    if (minutes < TWO_JOBS && now.size() == 2) {
      boolean first = now.get(0).lever().equals("caster");
      Step caster = now.get(first ? 0 : 1);
      Step camber = now.get(first ? 1 : 0);
      Step later = caster.positions() >= camber.positions() ? camber : caster;
      steps.remove(later);
      facts.remove(later);
    }
    return true;
  }

  private boolean again() {
    boolean felt =
        found.stream().anyMatch(one -> one.wants() != 0)
            && found.stream().noneMatch(one -> one.finding().equals("heavy"));
    if (felt && heard.is("good-before", "yes")) {
      chosen("again", "again", "one-correction");
      return true;
    }
    boolean slight = felt && heard.is("severity", "slight") && !heard.knows("told-before");
    if (slight) {
      chosen("again", "again.slight", "severity");
    }
    return slight;
  }

  private boolean moved() {
    Free best = null;
    for (Free one : free) {
      if (one.gain() >= LEAST_GAIN
          && (best == null
              || one.gain() > best.gain()
              || (one.gain() == best.gain() && one.place() < best.place()))) {
        best = one;
      }
    }
    if (best != null) {
      chosen("move", "move", "one-correction");
      add(Step.one(best.lever(), best.direction(), "one").made());
      leads(best);
    }
    return best != null;
  }

  private void leads(Free move) {
    for (Option option : options) {
      if (option.lever().equals(move.lever()) && option.direction().equals(move.direction())) {
        beside.stream()
            .filter(one -> one.minutes() < option.minutes() && 2 * one.gain() >= move.gain())
            .forEach(one -> facts.add(new Lead(one.lever(), one.direction())));
      }
    }
  }
}
