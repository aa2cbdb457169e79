package insidelift.console.report;

import insidelift.shared.CheckKind;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Changeover;
import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Decision;
import insidelift.shared.advice.Advice.Dispute;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** An advice as text: the answer on one screen, and what stands behind it, section by section. */
public final class AdviceText {

  /** A heading and what stands under it. */
  public record Part(String title, List<String> lines) {}

  /**
   * What stands behind an answer.
   *
   * @param name the word that opens it
   */
  public record Section(String name, Part part) {}

  /** How much of a changeover is worth a line for each job, minutes. */
  private static final int AN_HOUR = 60;

  private final int width;

  public AdviceText(int width) {
    this.width = width;
  }

  /** All of it in one piece. */
  public List<String> lines(Advice advice, Situation situation) {
    Text text = new Text(width);
    put(text, answer(advice, situation));
    sections(advice).forEach(section -> put(text, section.part()));
    return text.lines();
  }

  private static void put(Text text, Part part) {
    text.heading(part.title());
    part.lines().forEach(text::line);
  }

  /**
   * What must be read to act.
   *
   * @param situation what it is given on
   */
  public Part answer(Advice advice, Situation situation) {
    return new Part(
        AdviceWords.headline(advice.status()), AnswerScreen.lines(width, advice, situation));
  }

  /** The sections in their order; one with nothing in it is left out. */
  public List<Section> sections(Advice advice) {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("steps", new Part("The job, step by step", job(advice))));
    sections.add(new Section("why", new Part("Why", why(advice))));
    sections.add(new Section("care", new Part("Take care", care(advice))));
    sections.add(new Section("other", new Part("What else could be", whatElse(advice))));
    sections.add(new Section("numbers", new Part("What it does to the wheels", wheels(advice))));
    sections.add(new Section("sources", new Part("Sources", sources(advice))));
    sections.removeIf(section -> section.part().lines().isEmpty());
    return sections;
  }

  /** The words that open the sections, in one line. */
  public String names(Advice advice) {
    return sections(advice).stream().map(Section::name).collect(Collectors.joining(", "));
  }

  /** The jobs of an hour as a list, what takes longer in one line: there may be no time for it. */
  private static void changeover(Text text, List<Changeover.Job> jobs) {
    text.blank().paragraph(AdviceWords.CHANGEOVER + ":");
    jobs.stream()
        .filter(job -> job.total() <= AN_HOUR)
        .forEach(job -> text.item("  %3d min  ".formatted(job.total()), job.what()));
    String longer =
        jobs.stream()
            .filter(job -> job.total() > AN_HOUR)
            .map(job -> "%s (%d)".formatted(job.what(), job.minutes()))
            .collect(Collectors.joining("; "));
    if (!longer.isEmpty()) {
      text.item("  longer   ", longer + ".");
    }
  }

  private List<String> why(Advice advice) {
    Text text = new Text(width);
    for (Suggestion suggestion : advice.suggestions()) {
      text.blank().line(suggestion.lever().id());
      for (Reason reason : suggestion.reasons()) {
        text.item("  ", reason.text() + " " + reason.why());
        if (!reason.because().isEmpty()) {
          text.item("    you said: ", String.join("; ", reason.because()));
        }
        text.item("    note ", reason.note() + "; from " + ids(reason.sources()));
      }
      for (Dispute dispute : suggestion.disputes()) {
        text.item("  ", "The trade does not agree on this (" + dispute.note() + "):");
        dispute.sides().forEach(side -> text.item("    - ", side));
      }
    }
    if (!advice.decisions().isEmpty()) {
      text.blank().line("what decided");
      advice.decisions().forEach(decision -> text.item("  - ", words(decision)));
    }
    return text.lines();
  }

  private static String words(Decision decision) {
    String over = decision.over().isEmpty() ? "" : "; over " + String.join(", ", decision.over());
    return decision.text() + " (" + decision.note() + over + ")";
  }

  private static String ids(List<String> sources) {
    return sources.stream().map(AdviceText::id).collect(Collectors.joining(", "));
  }

  private static String id(String source) {
    int colon = source.indexOf(": ");
    return colon < 0 ? source : source.substring(0, colon);
  }

  private List<String> care(Advice advice) {
    Text text = new Text(width);
    List<Check> looks =
        advice.firstChecks().stream().filter(check -> check.kind() == CheckKind.LOOK).toList();
    List<Check> unseen = looks.stream().filter(check -> check.question() != null).toList();
    if (!unseen.isEmpty()) {
      text.paragraph("Not answered yet: check before you drive.");
      unseen.forEach(check -> text.item("  ? ", check.what()));
      text.blank();
    }
    advice.cautions().forEach(caution -> text.item("  ! ", caution));
    looks.stream()
        .filter(check -> check.question() == null)
        .forEach(check -> text.item("  ? ", check.what() + ". " + check.action()));
    return text.lines();
  }

  /** Which way to turn for each lever that is moved now, then the job that they share. */
  private List<String> job(Advice advice) {
    Text text = new Text(width);
    advice.firstChecks().stream()
        .filter(check -> check.kind() != CheckKind.LOOK)
        .forEach(check -> text.item("  ! ", check.what() + ". " + check.action()));
    List<Suggestion> now = advice.suggestions().stream().filter(Suggestion::first).toList();
    Set<String> shared = new LinkedHashSet<>();
    now.forEach(suggestion -> shared.addAll(suggestion.steps()));
    for (Suggestion suggestion : now) {
      for (String step : suggestion.steps()) {
        if (AdviceWords.saysWhichWay(step)) {
          shared.remove(step);
          text.item("  " + suggestion.lever().id() + ": ", step);
        }
      }
    }
    text.blank();
    int number = 1;
    for (String step : shared) {
      text.item("%3d. ".formatted(number++), step);
    }
    advice.suggestions().stream()
        .filter(suggestion -> suggestion.first() && suggestion.washers() != null)
        .findFirst()
        .ifPresent(
            suggestion -> {
              text.blank().line("your own washers, for everything that is changed now");
              suggestion.washers().lines().forEach(text::line);
            });
    proof(text, now);
    if (advice.changeover() != null) {
      changeover(text, advice.changeover().jobs());
    }
    return text.lines();
  }

  private List<String> wheels(Advice advice) {
    Text text = new Text(width);
    for (Suggestion suggestion : advice.suggestions()) {
      if (suggestion.first() && suggestion.effect() != null) {
        text.blank().paragraph(suggestion.effect().sentence()).blank();
        // The drawings and tables are made for 80 columns; a narrower screen has the sentence.
        if (width >= Text.WIDTH) {
          suggestion.effect().lines().forEach(text::line);
          text.blank();
          suggestion.effect().drawing().forEach(text::line);
        }
      }
    }
    return text.lines();
  }

  private static void proof(Text text, List<Suggestion> now) {
    if (!now.isEmpty()) {
      text.blank().line("did it work?");
    }
    for (Suggestion suggestion : now) {
      String lever = "  " + suggestion.lever().id();
      suggestion.confirm().forEach(feel -> text.item(lever + " worked if: ", feel));
      suggestion.undo().forEach(undo -> text.item(lever + ", take it back: ", undo));
    }
  }

  private List<String> whatElse(Advice advice) {
    Text text = new Text(width);
    List<Suggestion> later =
        advice.suggestions().stream().filter(s -> !s.first() && s.moves()).toList();
    if (!later.isEmpty()) {
      text.paragraph("Not now. Drive first; only then, if it is still needed:");
      later.forEach(s -> text.item("  - ", s.summary()));
      text.blank();
    }
    advice.alternatives().forEach(other -> text.item("  - ", AdviceWords.other(other)));
    if (!advice.unexplained().isEmpty()) {
      text.blank().line("not explained by this");
      advice
          .unexplained()
          .forEach(seen -> text.item("  - ", seen.question() + ": " + seen.words()));
    }
    if (!advice.wouldHelp().isEmpty()) {
      text.blank().line("what would help to know");
      advice.wouldHelp().forEach(open -> text.item("  - ", open.ask()));
    }
    if (!advice.assumed().isEmpty()) {
      text.blank().line("taken for granted");
      advice.assumed().forEach(assumed -> text.item("  - ", assumed));
    }
    return text.lines();
  }

  private List<String> sources(Advice advice) {
    Text text = new Text(width);
    Set<String> sources = new LinkedHashSet<>();
    advice.suggestions().stream()
        .flatMap(suggestion -> suggestion.reasons().stream())
        .forEach(reason -> sources.addAll(reason.sources()));
    advice.firstChecks().stream()
        .filter(check -> check.kind() != CheckKind.LOOK)
        .forEach(check -> sources.addAll(check.sources()));
    sources.forEach(source -> text.item("  ", source));
    return text.lines();
  }
}
