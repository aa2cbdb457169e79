package insidelift.console.learning;

import insidelift.console.asking.Asker;
import insidelift.console.asking.ChoiceCard;
import insidelift.console.asking.Choices.Choice;
import insidelift.console.report.NoteText;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.notes.Note;
import insidelift.engine.training.card.Card;
import insidelift.engine.training.card.LearningProgress;
import insidelift.engine.training.card.Repetition;
import insidelift.engine.training.card.Schedule;
import insidelift.engine.training.card.StudyLog;
import insidelift.engine.training.drill.CardBox;
import insidelift.engine.training.drill.Examiner;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code cards}: the notes and the rules as cards that come back until they are known. */
@Command(
    name = "cards",
    mixinStandardHelpOptions = true,
    header = "Asks cards that come back, each at its time, until they are known.",
    description = {
      "",
      "What is due comes first, then up to ten new cards a day, from topics never seen before from"
          + " others. The schedule is SM-2 (P. A. Wozniak, 1990); every answer is kept.",
      ""
    })
public final class CardsCommand extends Practice {

  /** What a trainee can say of an answer that was recalled: the qualities of SM-2, from 5 to 0. */
  private static final List<Choice> QUALITIES =
      List.of(
          new Choice("once", "it came at once"),
          new Choice("pause", "it came after a pause"),
          new Choice("hard", "it came, but it was hard"),
          new Choice("nearly", "it was wrong, and I nearly had it"),
          new Choice("seen", "it was wrong, and I knew it when I saw it"),
          new Choice("nothing", "nothing came"));

  @Option(names = "--progress", description = "show how far you are, topic by topic")
  private boolean progress;

  @Override
  int practise(Advisor advisor, StudyLog log) throws LogbookProblem, IOException {
    List<Card> cards = new CardBox(advisor).cards();
    LocalDate today = today();
    Schedule schedule = new Schedule(log.reviews(trainee()), today);
    if (progress) {
      return print(progress(cards, schedule));
    }
    List<Card> due = schedule.due(cards);
    List<Card> fresh = schedule.fresh(cards);
    if (due.isEmpty() && fresh.isEmpty()) {
      return print(List.of("Nothing is due today, and today's new cards are done."));
    }
    return hold(
        "Left. Your answers are kept.",
        screen -> {
          screen.say(
              new Text(screen.width())
                  .paragraph(
                      "%d due and %d new today. Answer by a number or the first letters; Ctrl-C leaves."
                          .formatted(due.size(), fresh.size()))
                  .lines());
          Deque<Card> left = new ArrayDeque<>(due);
          left.addAll(fresh);
          int asked = 0;
          while (!left.isEmpty()) {
            Card card = left.poll();
            int quality = ask(screen, advisor, card);
            log.add(new ReviewEntry(trainee(), card.id(), quality, today));
            asked++;
            if (quality < Repetition.SURE) {
              left.add(card);
            }
          }
          screen.say("", "Done for today: %d answers.".formatted(asked));
        });
  }

  private static int ask(Screen screen, Advisor advisor, Card card) throws UserLeftException {
    if (card instanceof Card.Choice choice) {
      return new ChoiceCard(screen, new Examiner(advisor)).ask(choice);
    }
    Card.Recall recall = (Card.Recall) card;
    Text front = new Text(screen.width()).line("").line("(" + card.topic() + ")");
    recall.ask().forEach(front::paragraph);
    screen.say(front.lines());
    screen.ask("Say it aloud, then press Enter:", List.of());
    Note note = advisor.notes().note(recall.note());
    Text back = new Text(screen.width());
    NoteText.section(recall.section(), note.section(recall.section()), back);
    back.line("  (note " + note.id() + (note.disputed() ? ", disputed)" : ")"));
    screen.say(back.lines());
    String how =
        ChoiceCard.choose(screen, Asker.on(screen), "how", List.of("How was it?"), QUALITIES);
    List<String> ids = QUALITIES.stream().map(Choice::id).toList();
    return ReviewEntry.BEST - ids.indexOf(how);
  }

  private static List<String> progress(List<Card> cards, Schedule schedule) {
    List<String> lines = new ArrayList<>();
    lines.add("topic               cards  never seen  learning  known");
    for (LearningProgress one : LearningProgress.of(cards, schedule)) {
      lines.add(
          "%-18s  %5d  %10d  %8d  %5d"
              .formatted(one.topic(), one.cards(), one.never(), one.learning(), one.known()));
    }
    lines.add("");
    lines.add("Due today: " + schedule.due(cards).size());
    return lines;
  }
}
