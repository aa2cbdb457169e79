package insidelift.engine.proof;

import insidelift.engine.proof.laps.SetAside;
import insidelift.engine.proof.statistics.Assumptions;
import insidelift.engine.proof.statistics.ClassicTests;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A proof in plain words. */
final class ProofWords {

  private static final int COLUMNS = 80;

  private ProofWords() {}

  static String sentence(Proof proof) {
    return switch (proof.verdict()) {
      case KEEP -> "keep: the laps are " + size(proof) + " quicker" + range(proof) + ".";
      case UNDO -> "undo: the laps are " + size(proof) + " slower" + range(proof) + ".";
      case CANNOT_TELL ->
          proof.shift().isPresent() ? undecided(proof) : "cannot tell: " + tooFew(proof) + ".";
    };
  }

  private static String undecided(Proof proof) {
    MoreLaps more = proof.moreLaps();
    String laps = laps(more.laps());
    String ask =
        more.enough() ? "about " + laps + " like these would" : "even " + laps + " hardly would";
    Shift shift = proof.shift().orElseThrow();
    return "cannot tell: "
        + ask
        + where(more)
        + "; so far anything from "
        + signed(shift.low())
        + " to "
        + signed(shift.high())
        + ".";
  }

  private static String where(MoreLaps more) {
    String each = more.inEachRun() > 0 ? more.inEachRun() + " in each run" : "";
    String back = more.returnRun() > 0 ? more.returnRun() + " back on the old setting" : "";
    String both = each.isEmpty() || back.isEmpty() ? "" : " and ";
    return " (" + each + both + back + ")";
  }

  private static String laps(int count) {
    return count + (count == 1 ? " more lap" : " more laps");
  }

  private static String tooFew(Proof proof) {
    String lacking =
        proof.runs().stream()
            .filter(run -> run.counted() < Assumptions.FEWEST_LAPS)
            .map(run -> "run " + run.role() + " has " + run.counted())
            .collect(Collectors.joining(", "));
    return "a run needs "
        + Assumptions.FEWEST_LAPS
        + " laps that count, and "
        + lacking
        + "; at least "
        + laps(proof.moreLaps().laps())
        + " would be needed";
  }

  private static String size(Proof proof) {
    return seconds(Math.abs(proof.shift().orElseThrow().seconds()));
  }

  private static String range(Proof proof) {
    Shift shift = proof.shift().orElseThrow();
    double least = Math.min(Math.abs(shift.low()), Math.abs(shift.high()));
    double most = Math.max(Math.abs(shift.low()), Math.abs(shift.high()));
    return " (95 % sure of between " + seconds(least) + " and " + seconds(most) + ")";
  }

  static List<String> lines(Proof proof) {
    List<String> lines = new ArrayList<>(wrap(sentence(proof), ""));
    for (String warning : warnings(proof)) {
      lines.addAll(wrap("Warning: " + warning, "  "));
    }
    proof.drift().ifPresent(drift -> lines.addAll(wrap(drift(drift), "  ")));
    String counts =
        proof.runs().stream()
            .map(run -> run.role() + " " + run.counted() + " of " + run.driven())
            .collect(Collectors.joining(", "));
    lines.addAll(wrap("Laps that count: " + counts + worth(proof) + ".", "  "));
    for (SetAside lap : proof.setAside()) {
      lines.addAll(wrap(setAside(lap), "  "));
    }
    proof.tests().ifPresent(tests -> lines.addAll(wrap(tests(tests), "  ")));
    if (proof.feel() != Feel.UNKNOWN) {
      lines.add("The driver felt: " + proof.feel().id() + ".");
    }
    return lines;
  }

  private static String worth(Proof proof) {
    if (proof.autocorrelationUsed().isEmpty()) {
      return "";
    }
    double effective = proof.runs().stream().mapToDouble(Proof.Run::effective).sum();
    return String.format(
        Locale.ROOT,
        "; laps resemble their neighbours (autocorrelation %.2f, taken as %.2f), so all are worth"
            + " %.0f",
        proof.autocorrelation().orElseThrow(),
        proof.autocorrelationUsed().orElseThrow(),
        effective);
  }

  private static String drift(Drift drift) {
    String old = "the old setting would have been " + signed(drift.carriedSeconds());
    return switch (drift.method()) {
      case RETURN_RUN -> "Drift: " + old + " by the run after, as the return run shows.";
      case TREND ->
          String.format(
              Locale.ROOT,
              "Drift: runs get %.3f s a lap %s; %s by the run after.",
              Math.abs(drift.secondsPerLap()),
              drift.secondsPerLap() < 0 ? "quicker" : "slower",
              old);
    };
  }

  private static String setAside(SetAside lap) {
    return String.format(
        Locale.ROOT,
        "Set aside: %s lap %d, %.3f s, %s (%s).",
        lap.run(),
        lap.lap(),
        lap.seconds(),
        lap.kind().id(),
        lap.reason());
  }

  private static String tests(ClassicTests tests) {
    ClassicTests.RankSum rank = tests.rankSum();
    ClassicTests.Welch welch = tests.welch();
    String first =
        Double.isNaN(welch.t())
            ? "Welch's t is not defined where no lap varies"
            : String.format(
                Locale.ROOT, "Welch's t %.2f, df %.1f, p %s", welch.t(), welch.df(), p(welch.p()));
    return String.format(
        Locale.ROOT,
        "For comparison, as if laps were independent: %s; rank sum U %.1f, p %s.",
        first,
        rank.u(),
        p(rank.p()));
  }

  private static String p(double p) {
    return p < 0.001 ? "below 0.001" : String.format(Locale.ROOT, "%.3f", p);
  }

  static List<String> warnings(Proof proof) {
    List<String> warnings = new ArrayList<>();
    if (proof.verdict() == Verdict.KEEP && proof.feel() == Feel.WORSE) {
      warnings.add("the driver felt it worse, but the clock says quicker.");
    }
    if (proof.verdict() == Verdict.UNDO && proof.feel() == Feel.BETTER) {
      warnings.add("the driver felt it better, but the clock says slower.");
    }
    if (proof.verdict() != Verdict.CANNOT_TELL && proof.feel() == Feel.SAME) {
      warnings.add("the driver felt no difference, but the clock shows one.");
    }
    if (proof.verdict() != Verdict.CANNOT_TELL
        && proof.drift().filter(d -> d.method() == Drift.Method.TREND).isPresent()) {
      warnings.add(
          "without a return run on the old setting, track or tyres may have changed in the pause.");
    }
    proof.runs().stream()
        .filter(run -> 3 * run.counted() < 2 * (run.driven() - 1))
        .forEach(
            run ->
                warnings.add(
                    "in the run "
                        + run.role()
                        + " more than a third of the laps were set aside; it was no clean run."));
    return List.copyOf(warnings);
  }

  private static String seconds(double value) {
    return String.format(Locale.ROOT, "%.2f s", value);
  }

  private static String signed(double value) {
    String size = seconds(Math.abs(value));
    if (size.equals(seconds(0))) {
      return "unchanged";
    }
    return size + (value < 0 ? " quicker" : " slower");
  }

  /** Breaks a sentence at spaces into lines of at most 80 columns. */
  private static List<String> wrap(String text, String indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > COLUMNS) {
        lines.add(line.toString());
        line = new StringBuilder(indent).append(word);
      } else {
        line.append(line.length() > 0 ? " " : "").append(word);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
