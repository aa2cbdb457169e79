package insidelift.engine.notes;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.rules.RuleBase;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every note is referred to, every reference has its note, and all are written in one form. */
class NotesTest {

  private static final Path FOLDER = Path.of("..", "knowledge-notes");
  private static final List<Path> SOURCES =
      List.of(Path.of("src", "main", "java"), Path.of("..", "console", "src", "main", "java"));
  private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");

  /** Notes whose only reader is whoever looks a word up: no rule, question or code names them. */
  private static final Set<String> SHOWN_BY_THE_GLOSSARY =
      Set.of("camber-positive", "caster-positive", "eccentric", "powerKw", "toe-after");

  private static final Map<String, List<String>> SECTIONS =
      Map.of(
          "term", List.of("Claim", "Drawing", "Look"),
          "check", List.of("Claim", "Do"),
          "lesson", List.of("Claim", "Hands on", "Ask", "Ask first"),
          "claim",
              List.of(
                  "Claim",
                  "Why",
                  "Do",
                  "When not",
                  "Drawing",
                  "Caution",
                  "Feel",
                  "Undo",
                  "Dispute"),
          "decider", List.of("Claim", "Why", "Caution", "Feel", "Undo"),
          "lever", List.of("Claim", "Do", "Caution", "Dispute"),
          "caution", List.of("Caution"),
          "job", List.of("Steps", "Caution"));

  private static final Map<String, List<String>> KINDS =
      Map.of(
          "terms", List.of("term"),
          "checks", List.of("check"),
          "claims", List.of("claim"),
          "deciders", List.of("decider"),
          "levers", List.of("lever"),
          "lessons", List.of("lesson"),
          "job", List.of("job", "caution"));

  private final NoteBook notes = NoteBook.open();
  private final List<IndexedRule> rules = RuleBase.load().index().rules();

  private static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    try (Stream<Path> walk = Files.walk(FOLDER, 2)) {
      for (Path file : walk.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
        if (!file.getParent().equals(FOLDER)) {
          files.put(FOLDER.relativize(file).toString().replace('\\', '/'), Files.readString(file));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<Note> all() {
    return notes.ids().stream().map(notes::note).toList();
  }

  private Set<String> byTheRules() {
    Set<String> named = new TreeSet<>();
    for (IndexedRule rule : rules) {
      named.add(rule.note());
    }
    Vocabulary.load().levers().forEach(word -> named.add(word.note()));
    return named;
  }

  private static Set<String> byTheQuestions() {
    return Vocabulary.load().questions().stream()
        .flatMap(question -> question.notes().stream())
        .collect(Collectors.toSet());
  }

  /** Words in quotation marks anywhere in the code that are ids of notes. */
  private Set<String> byTheCode() throws IOException {
    Set<String> named = new HashSet<>();
    for (Path folder : SOURCES) {
      try (Stream<Path> walk = Files.walk(folder)) {
        walk.filter(file -> file.toString().endsWith(".java"))
            .forEach(
                file ->
                    LITERAL
                        .matcher(text(file))
                        .results()
                        .map(found -> found.group(1))
                        .filter(id -> notes.find(id).isPresent())
                        .forEach(named::add));
      }
    }
    return named;
  }

  @Test
  void everyFileOfTheFolderIsShippedUnderItsId() {
    assertThat(notes.ids())
        .containsExactlyInAnyOrderElementsOf(
            files().keySet().stream()
                .map(file -> file.substring(file.indexOf('/') + 1).replace(".md", ""))
                .toList())
        .doesNotHaveDuplicates();
    assertThat(all()).extracting(Note::id).containsExactlyElementsOf(notes.ids());
  }

  @Test
  void everyNoteThatRulesOrQuestionsNameIsThere() {
    assertThat(notes.ids()).containsAll(byTheRules()).containsAll(byTheQuestions());
  }

  @Test
  void everyNoteIsNamedByARuleAQuestionOrTheCode() throws Exception {
    Set<String> named = byTheRules();
    named.addAll(byTheQuestions());
    named.addAll(byTheCode());
    Set<String> others = new TreeSet<>(notes.ids());
    others.removeAll(named);
    // Lessons are shown one after the other, whatever their names are.
    others.removeIf(id -> notes.note(id).kind().equals("lesson"));

    assertThat(others).containsExactlyInAnyOrderElementsOf(SHOWN_BY_THE_GLOSSARY);
  }

  @Test
  void everyOtherLeverHasANoteThatSaysHowToMoveIt() {
    assertThat(Vocabulary.load().levers())
        .isNotEmpty()
        .allSatisfy(
            word -> {
              assertThat(notes.note(word.note()).kind()).isEqualTo("lever");
              assertThat(notes.note(word.note()).text("Do")).isNotBlank();
            });
  }

  @Test
  void everyClaimThatMovesALeverSaysWhatToFeelAndWhenToUndo() {
    rules.stream()
        .filter(
            rule ->
                rule.acts().stream()
                    .anyMatch(
                        act ->
                            act.verb() == Verb.START
                                || (act.verb() == Verb.CLAIM
                                    && Lever.isOne(act.word(0))
                                    && act.number(3) > 0)))
        .flatMap(
            rule ->
                Stream.concat(
                    Stream.of(rule.note()),
                    // A claim that is turned round may do so in the words of another note.
                    rule.acts(Verb.CLAIM)
                        .map(act -> act.word(6))
                        .filter(word -> !word.equals("both") && !word.equals("one"))))
        .map(notes::note)
        .forEach(
            note -> {
              assertThat(note.because()).as(note.id()).isNotBlank();
              assertThat(note.text("Why")).as(note.id()).isNotBlank();
              assertThat(note.text("Feel")).as(note.id()).isNotBlank();
              assertThat(note.text("Undo")).as(note.id()).isNotBlank();
            });
  }

  /** Advice and feedback end a sentence with it: "Leave caster where it is: ...". */
  @Test
  void everyNoteThatKeepsALeverWhereItIsHasItsClause() {
    rules.stream()
        .filter(
            rule ->
                rule.acts(Verb.BARRED).anyMatch(act -> Lever.isOne(act.word(0)))
                    || Set.of("again", "again.slight", "keep", "move", "restore", "undo", "wait")
                        .contains(rule.id()))
        .map(rule -> notes.note(rule.note()))
        .forEach(note -> assertThat(note.because()).as(note.id()).isNotBlank());
  }

  @Test
  void everyNoteThatAdviceQuotesHasTheSectionItQuotes() {
    for (IndexedRule rule : rules) {
      Note note = notes.note(rule.note());
      for (Act act : rule.acts()) {
        String section =
            switch (act.verb()) {
              case CHECK, UNSEEN -> "Do";
              case CARE -> "Caution";
              case JOB -> "Steps";
              default -> null;
            };
        if (section != null) {
          assertThat(note.section(section)).as("%s of %s", section, rule.id()).isNotEmpty();
        }
      }
    }
  }

  @Test
  void everySourceStandsInTheBibliographyAndEveryEntryIsCited() {
    Set<String> cited =
        all().stream().flatMap(note -> note.sources().stream()).collect(Collectors.toSet());

    assertThat(notes.bibliography().keySet()).containsExactlyInAnyOrderElementsOf(cited);
    assertThat(notes.bibliography().values()).doesNotContain("").doesNotHaveDuplicates();
  }

  @Test
  void everyDisputeHasBothSidesAndWhatDecides() {
    assertThat(all())
        .allSatisfy(
            note -> {
              assertThat(note.disputed()).isEqualTo(note.sections().containsKey("Dispute"));
              if (note.disputed()) {
                assertThat(note.section("Dispute")).as(note.id()).hasSize(3);
                assertThat(note.section("Dispute").get(0)).startsWith("One side: ");
                assertThat(note.section("Dispute").get(1)).startsWith("Other side: ");
                assertThat(note.section("Dispute").get(2)).startsWith("What decides: ");
                assertThat(note.sources()).hasSizeGreaterThan(1);
              }
            });
  }

  @Test
  void theDisputedNotesAreThese() {
    assertThat(all().stream().filter(Note::disputed).map(Note::id))
        .containsExactlyInAnyOrder(
            "camber-dispute",
            "camber-front-weak",
            "camber-rear-loose",
            "camber-wet-positive",
            "caster-dusty-more",
            "caster-rubbered-more",
            "caster-wet-more",
            "lever-axle",
            "lever-bars",
            "lever-front-width",
            "lever-pressures",
            "lever-rear-height",
            "lever-rear-pressure",
            "lever-rear-width",
            "lever-toe",
            "side-bite",
            "toe-target");
  }

  @Test
  void everyNoteHasItsFrontMatterInOneOrder() {
    files()
        .forEach(
            (file, text) -> {
              List<String> lines = text.lines().toList();
              int end = lines.subList(1, lines.size()).indexOf("---") + 1;
              List<String> keys =
                  lines.subList(1, end).stream()
                      .map(line -> line.substring(0, line.indexOf(':')))
                      .toList();
              assertThat(lines.get(0)).as(file).isEqualTo("---");
              assertThat(keys.stream().filter(key -> !key.equals("because")))
                  .as(file)
                  .containsExactly("id", "kind", "lever", "title", "sources", "disputed", "review");
              if (keys.contains("because")) {
                assertThat(keys.indexOf("because")).as(file).isEqualTo(4);
              }
            });
  }

  @Test
  void everyNoteIsOfTheKindOfItsFolderWithTheSectionsOfItsKind() {
    files()
        .keySet()
        .forEach(
            file -> {
              Note note = notes.note(file.substring(file.indexOf('/') + 1).replace(".md", ""));
              List<String> legal = SECTIONS.get(note.kind());
              assertThat(KINDS.get(file.substring(0, file.indexOf('/')))).contains(note.kind());
              assertThat(note.sections().keySet())
                  .as(file)
                  .containsExactlyElementsOf(
                      legal.stream().filter(note.sections()::containsKey).toList());
              assertThat(note.sections().values()).as(file).doesNotContain(List.of());
              assertThat(note.lever()).as(file).isIn("camber", "caster", "both", "none");
              assertThat(LocalDate.parse(note.review())).as(file).isAfter("2026-11-25");
            });
  }

  @Test
  void everyNoteIsPlainTextOfAHundredColumns() {
    files()
        .forEach(
            (file, text) -> {
              assertThat(text).as(file).matches("[\\n\\x20-\\x7E°±]+").endsWith("\n");
              assertThat(text.lines().filter(line -> !line.startsWith("sources: ")))
                  .as(file)
                  .allSatisfy(
                      line ->
                          assertThat(line)
                              .hasSizeLessThanOrEqualTo(100)
                              .isEqualTo(line.stripTrailing()));
            });
  }

  /** More of a negative camber is less: people are told toward which side. */
  @Test
  void nobodyIsToldOfMoreOrLessCamber() {
    files()
        .forEach(
            (file, text) ->
                assertThat(text.toLowerCase(Locale.ROOT))
                    .as(file)
                    .doesNotContain("more camber", "less camber"));
  }

  @Test
  void everyDrawingIsSaidInWordsAndFitsAScreen() {
    List<Note> drawn = all().stream().filter(note -> !note.drawing().isEmpty()).toList();
    assertThat(drawn)
        .extracting(Note::id)
        .containsExactlyInAnyOrder("camber-positive", "caster-positive", "inside-rear");
    for (Note note : all()) {
      assertThat(note.sections().containsKey(Note.DRAWING))
          .as(note.id())
          .isEqualTo(!note.drawing().isEmpty());
      assertThat(note.drawing())
          .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(78).matches("[ -~]*"));
    }
    drawn.forEach(note -> assertThat(note.text(Note.DRAWING)).hasSizeBetween(80, 250));
  }

  @Test
  void everyClauseEndsASentence() {
    assertThat(all())
        .filteredOn(note -> !note.because().isEmpty())
        .allSatisfy(
            note ->
                assertThat(note.because())
                    .as(note.id())
                    .doesNotEndWith(".")
                    .doesNotContain(":")
                    .matches("[a-z].*"));
  }
}
