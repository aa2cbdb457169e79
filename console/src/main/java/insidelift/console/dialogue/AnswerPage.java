package insidelift.console.dialogue;

import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.AdviceText.Section;
import insidelift.console.report.Text;
import insidelift.console.terminal.Leaves;
import insidelift.console.terminal.Numbers;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Shows an answer, then what stands behind it by name or number, and asks what to do next. */
final class AnswerPage {

  /** What can be done with an answer. */
  enum Wish {
    /** The questions that are still open. */
    MORE,
    /** The pit card. */
    CARD,
    /** The run into the logbook. */
    LOG,
    /** The next heat of the same kart. */
    NEXT,
    /** Write the setting down as this kart's own. */
    KEEP,
    /** Change an answer. */
    CHANGE,
    /** A new consultation. */
    AGAIN,
    /** Take the last answer back. */
    BACK,
    /** Something new was told. */
    TOLD,
    /** Nothing more. */
    QUIT;

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static final String ANSWER = "answer";

  private static final String HELP =
      "steps has the job, why the reasons, care all cautions, other the other levers, numbers what"
          + " the change does to the wheels, sources where it comes from. card writes a page to"
          + " print, log writes this run down, next goes on with this kart's next heat, keep makes"
          + " the setting its own, change shows your answers, back takes the last one back, again"
          + " begins anew. Or say it in your own words, or ask: why not, what if, what is.";

  private final Screen screen;
  private final Talk talk;
  private final Part answer;
  private final List<Section> sections;
  private final List<Wish> wishes;
  private final List<String> words;

  /**
   * @param wishes what can be wished for beside {@link Wish#QUIT}, in the order of its telling
   */
  AnswerPage(Screen screen, Talk talk, Part answer, List<Section> sections, List<Wish> wishes) {
    this.screen = screen;
    this.talk = talk;
    this.answer = answer;
    this.sections = sections;
    this.wishes = wishes;
    this.words =
        Stream.of(
                sections.stream().map(Section::name),
                wishes.stream().map(Wish::word),
                // To keep a setting may be wished for where it is not offered.
                Stream.of(Wish.KEEP, Wish.BACK, Wish.QUIT).map(Wish::word),
                Stream.of(ANSWER, "help"))
            .flatMap(word -> word)
            .distinct()
            .toList();
  }

  Wish show() throws UserLeftException {
    Leaves.show(screen, List.of(answer));
    return ask();
  }

  /** The same without the answer, which stands on the screen already. */
  Wish ask() throws UserLeftException {
    while (true) {
      menu();
      String line = screen.confirm("Enter: done, or one of these by word or number:", words);
      Optional<Wish> wish = line.isEmpty() ? Optional.of(Wish.QUIT) : wish(line);
      if (wish.isPresent()) {
        return wish.get();
      }
    }
  }

  private void menu() {
    Text text = new Text(screen.width()).line("");
    text.item(
        "read ",
        String.join(
            ", ",
            IntStream.range(0, sections.size())
                .mapToObj(i -> (i + 1) + " " + sections.get(i).name())
                .toList()));
    text.item("then ", String.join(", ", wishes.stream().map(Wish::word).toList()) + ", quit");
    screen.say(text.lines());
  }

  /** What a line wants; nothing where it was shown, answered or not understood. */
  private Optional<Wish> wish(String line) throws UserLeftException {
    if (line.equals("?") || line.equals("help")) {
      screen.say(new Text(screen.width()).line("").paragraph(HELP).lines());
      return Optional.empty();
    }
    List<String> meant = meant(line);
    if (meant.size() > 1) {
      screen.say("Which one: " + String.join(" or ", meant) + "?");
      return Optional.empty();
    }
    if (meant.isEmpty()) {
      return told(line);
    }
    String word = meant.get(0);
    if (word.equals(ANSWER)) {
      Leaves.show(screen, List.of(answer));
      return Optional.empty();
    }
    Optional<Section> section = sections.stream().filter(s -> s.name().equals(word)).findFirst();
    if (section.isPresent()) {
      Leaves.show(screen, List.of(section.get().part()));
      return Optional.empty();
    }
    return Stream.of(Wish.values()).filter(wish -> wish.word().equals(word)).findFirst();
  }

  /** The words that a line can stand for: a number, a whole word, or the first letters of one. */
  private List<String> meant(String line) {
    Optional<List<Integer>> number = Numbers.of(line, sections.size());
    if (number.filter(numbers -> numbers.size() == 1).isPresent()) {
      return List.of(sections.get(number.get().get(0) - 1).name());
    }
    if (line.equals("undo")) {
      return List.of(Wish.BACK.word());
    }
    if (words.contains(line)) {
      return List.of(line);
    }
    return words.stream().filter(word -> word.startsWith(line)).toList();
  }

  private Optional<Wish> told(String line) throws UserLeftException {
    switch (talk.hear(line, Optional.empty())) {
      case NOTED -> {
        return Optional.of(Wish.TOLD);
      }
      case NOT_UNDERSTOOD -> screen.say("Press Enter, or type one of the words.");
      case ANSWERED -> {
        // It stands on the screen.
      }
    }
    return Optional.empty();
  }
}
