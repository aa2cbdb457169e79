package insidelift.console.learning;

import insidelift.console.asking.ChoiceCard;
import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.NoteText;
import insidelift.console.report.Text;
import insidelift.console.terminal.Leaves;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.training.card.Lessons;
import insidelift.engine.training.card.Lessons.Lesson;
import insidelift.engine.training.card.Repetition;
import insidelift.engine.training.card.StudyLog;
import insidelift.engine.training.drill.Examiner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lessons [N]}: the first hour, in eleven short lessons. */
@Command(
    name = "lessons",
    mixinStandardHelpOptions = true,
    header = "The first hour of somebody who has never set up a kart.",
    description = {
      "",
      "Eleven short lessons, each with a check on your own kart and one question, which the rules"
          + " judge. Without a number it goes on where you stopped.",
      ""
    })
public final class LessonsCommand extends Practice {

  @Parameters(paramLabel = "N", arity = "0..1", description = "the lesson to begin with")
  private Integer number;

  @Option(names = "--list", description = "list the lessons, and which of them are done")
  private boolean list;

  @Override
  int practise(Advisor advisor, StudyLog log) throws LogbookProblem, IOException {
    List<Lesson> lessons = Lessons.of(advisor.notes());
    Set<String> done =
        log.reviews(trainee()).stream()
            .filter(review -> review.quality() >= Repetition.PASSED)
            .map(ReviewEntry::card)
            .collect(Collectors.toSet());
    if (list) {
      return print(
          lessons.stream()
              .map(
                  lesson ->
                      "%2d  %-4s  %s"
                          .formatted(
                              lesson.number(),
                              done.contains(lesson.question().id()) ? "done" : "",
                              lesson.note().title()))
              .toList());
    }
    if (number != null && (number < 1 || number > lessons.size())) {
      return failed("there is no lesson %d; there are 1 to %d".formatted(number, lessons.size()));
    }
    int first =
        number != null
            ? number
            : lessons.stream()
                .filter(lesson -> !done.contains(lesson.question().id()))
                .mapToInt(Lesson::number)
                .findFirst()
                .orElse(0);
    if (first == 0) {
      return print(List.of("All lessons are done. A number repeats one: insidelift lessons 1"));
    }
    return hold(
        "Left. The lessons you finished are kept.",
        screen -> {
          ChoiceCard card = new ChoiceCard(screen, new Examiner(advisor));
          for (Lesson lesson : lessons.subList(first - 1, lessons.size())) {
            int quality = lesson(screen, card, lesson);
            log.add(new ReviewEntry(trainee(), lesson.question().id(), quality, today()));
            if (lesson.number() < lessons.size() && !goOn(screen)) {
              return;
            }
          }
          screen.say("", "That was the first hour. \"insidelift drill\" has cases to try it on.");
        });
  }

  private static int lesson(Screen screen, ChoiceCard card, Lesson lesson)
      throws UserLeftException {
    List<Part> parts = new ArrayList<>();
    Text claim = new Text(screen.width());
    NoteText.section("Claim", lesson.note().section("Claim"), claim);
    Text hands = new Text(screen.width());
    NoteText.section(Lessons.HANDS_ON, lesson.note().section(Lessons.HANDS_ON), hands);
    claim.blank().line("On your own kart");
    hands.lines().forEach(claim::line);
    parts.add(
        new Part("Lesson %d: %s".formatted(lesson.number(), lesson.note().title()), claim.lines()));
    Leaves.show(screen, parts);
    screen.say("");
    screen.ask("Press Enter when you have done that, for one question.", List.of());
    return card.ask(lesson.question());
  }

  private static boolean goOn(Screen screen) throws UserLeftException {
    screen.say("");
    return !"quit"
        .startsWith(nonEmpty(screen.ask("Enter: next lesson, or type quit:", List.of("quit"))));
  }

  /** A line that no word begins with where nothing was typed. */
  private static String nonEmpty(String line) {
    return line.isEmpty() ? "-" : line;
  }
}
