package insidelift.console.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.training.drill.Cases;
import insidelift.engine.training.drill.DrillCase;
import insidelift.engine.training.drill.DrillMove;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The pages in a real browser, where the machine has one: nothing runs over the edge, no character
 * is without a glyph, an accessibility engine finds nothing (axe-core 4.11, rules for WCAG 2.2 A
 * and AA and its best practices), and paper takes it as promised.
 */
class PagesInBrowserIT {

  /** ISO 216 A4, 210 by 297 mm, and ANSI/ASME Y14.1 A, called Letter, in inches. */
  private static final Map<String, double[]> PAPERS =
      Map.of("A4", new double[] {210 / 25.4, 297 / 25.4}, "Letter", new double[] {8.5, 11});

  private static final String OVERFLOW =
      """
      (() => {
        const wide = document.documentElement.clientWidth;
        const over = [...document.body.querySelectorAll('*')]
          .filter(e => !e.closest('pre'))
          .filter(e => e.getBoundingClientRect().right > wide + 0.5)
          .map(e => e.tagName + ': ' + e.textContent.slice(0, 40));
        if (document.documentElement.scrollWidth > wide) over.push('the page scrolls sideways');
        for (const svg of document.querySelectorAll('svg')) {
          const box = svg.viewBox.baseVal;
          const texts = [...svg.querySelectorAll('text')].map(t => [t.textContent, t.getBBox()]);
          for (const [name, b] of texts) {
            if (b.x < 0 || b.y < 0 || b.x + b.width > box.width || b.y + b.height > box.height)
              over.push('label out of its picture: ' + name);
            for (const [other, o] of texts) {
              if (other < name && b.x < o.x + o.width && o.x < b.x + b.width
                  && b.y + 2 < o.y + o.height && o.y + 2 < b.y + b.height)
                over.push('labels over each other: ' + name + ' and ' + other);
            }
          }
        }
        return over;
      })()
      """;

  /** A character without a glyph is drawn like one that no font has. */
  private static final String MISSING_GLYPHS =
      """
      (() => {
        const canvas = document.createElement('canvas');
        canvas.width = canvas.height = 48;
        const pen = canvas.getContext('2d', {willReadFrequently: true});
        pen.font = '32px ' + getComputedStyle(document.body).fontFamily;
        const drawn = c => {
          pen.clearRect(0, 0, 48, 48);
          pen.fillText(c, 4, 38);
          return pen.getImageData(0, 0, 48, 48).data.join();
        };
        const none = drawn('\\u{10FFFD}');
        return [...new Set(document.documentElement.textContent)]
          .filter(c => c.trim() !== '' && drawn(c) === none);
      })()
      """;

  @TempDir private static Path folder;

  private static Browser browser;
  private static String axe;

  @BeforeAll
  static void startTheBrowser() throws IOException {
    assumeTrue(Browser.here().isPresent(), "no browser on this machine");
    browser = Browser.start(Browser.here().get(), folder.resolve("profile"));
    try (InputStream in = PagesInBrowserIT.class.getResourceAsStream("/axe.min.js")) {
      axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @AfterAll
  static void stopTheBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  static Stream<Arguments> pages() {
    String name = "Mira <b>& sons</b>, a rather long name for a heat: ÄÖÜ ß é";
    return Stream.of(
        Arguments.of("change", Cards.page(Cards.WET_HEAVY, name)),
        Arguments.of("both", Cards.page(Cards.WET, "")),
        Arguments.of("washers", Cards.page(Cards.WASHERS, "")),
        Arguments.of("fault", Cards.page(Cards.FAULT, "")),
        Arguments.of("hold", Cards.page(Cards.HOLD, "")),
        Arguments.of("nothing", Cards.page(Cards.NOTHING, "")));
  }

  static Stream<Arguments> allPages() {
    return Stream.concat(
        pages(),
        Stream.of(
            Arguments.of("sheet", Cards.sheet(Cards.OWN, "Heron <b>7</b> ÄÖÜ")),
            Arguments.of("empty sheet", Cards.sheet(Cards.NOTHING, "")),
            Arguments.of("notes", new Pages().notes(NotesPage.of(NoteBook.open()))),
            Arguments.of("results", new Pages().results(drilled()))));
  }

  /** A sheet of real attempts, under a name and sources that are not safe as they stand. */
  private static ResultPage drilled() {
    Advisor advisor = Advisor.load();
    NextQuestion next = new NextQuestion(advisor.decider());
    Cases cases = new Cases(advisor);
    List<Numbered<AttemptEntry>> attempts = new ArrayList<>();
    for (int i = 1; i <= 3; i++) {
      DrillCase hidden = cases.numbered(i);
      attempts.add(
          new Numbered<>(
              10 + i,
              new AttemptEntry(
                  "Mira <b>& sons</b>",
                  i == 1 ? "a coach's <b>own</b> case with a long name" : hidden.source(),
                  hidden.hidden(),
                  List.of(new DrillMove.Look().words(), new DrillMove.FixFirst().words()),
                  LocalDate.of(2026, 5, 9)),
              false));
    }
    return DrillSheet.of(
        new insidelift.engine.training.drill.ResultSheet(advisor, next, attempts),
        "Mira <b>& sons</b>",
        LocalDate.of(2026, 5, 9));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("allPages")
  void aPageFitsAPhoneAndALaptopAndHasAllItsGlyphs(String name, String page) throws IOException {
    Path file = Files.writeString(folder.resolve(name + ".html"), page);
    for (int[] size : new int[][] {{360, 740}, {1280, 800}}) {
      browser.show(file, size[0], size[1], false);
      assertThat(texts(browser.run(OVERFLOW))).as("%d wide", size[0]).isEmpty();
    }
    assertThat(texts(browser.run(MISSING_GLYPHS))).isEmpty();
    assertThat(browser.run("performance.getEntriesByType('resource').length").asInt())
        .as("requests")
        .isZero();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("allPages")
  void anAccessibilityEngineFindsNothing(String name, String page) throws IOException {
    Path file = Files.writeString(folder.resolve(name + ".html"), page);
    for (boolean dark : new boolean[] {false, true}) {
      browser.show(file, dark ? 360 : 1280, 800, dark);
      assertThat(violations()).as(dark ? "dark" : "light").isEmpty();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("allPages")
  void whatIsPrintedIsAsAccessibleAndAsWideAsThePaper(String name, String page) throws IOException {
    Path file = Files.writeString(folder.resolve(name + ".html"), page);
    browser.show(file, 1280, 800, true);
    for (Map.Entry<String, double[]> paper : PAPERS.entrySet()) {
      browser.asOnPaper(pixels(paper.getValue()[0]), pixels(paper.getValue()[1]));
      assertThat(browser.run("matchMedia('print').matches").asBoolean()).isTrue();
      // Paper is touched by no pointer: how far links are apart (WCAG 2.5.8) means nothing there.
      assertThat(violations("target-size")).as(paper.getKey()).isEmpty();
      assertThat(texts(browser.run(OVERFLOW))).as(paper.getKey()).isEmpty();
    }
  }

  /** A length of paper within the margins of 8 mm that the pages ask for, at 96 to the inch. */
  private static int pixels(double inches) {
    return (int) ((inches - 2 * 8 / 25.4) * 96);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void onPaperTheLastPageIsWhyAndWhatToDoStandsOnOneBeforeItOrOnTwoWithAWasherTable(
      String name, String page) throws IOException, InterruptedException {
    assumeTrue(Pdf.readable(), "no pdftotext on this machine");
    Path file = Files.writeString(folder.resolve(name + ".html"), page);
    for (Map.Entry<String, double[]> paper : PAPERS.entrySet()) {
      browser.show(file, 1280, 800, true);
      Path pdf = folder.resolve(name + ".pdf");
      Files.write(pdf, browser.print(paper.getValue()[0], paper.getValue()[1]));
      List<String> sheets = Pdf.pages(pdf);
      assertThat(sheets.stream().map(sheet -> sheet.strip().lines().findFirst().orElse("")))
          .as("%s on %s: how each sheet begins", name, paper.getKey())
          .hasSize(name.equals("washers") ? 3 : 2)
          .last()
          .isEqualTo("Why");
      assertThat(sheets.get(sheets.size() - 2)).contains("By hand").doesNotContain("Sources");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Cards.OWN, Cards.NOTHING})
  void aSheetHasAFrontAndABack(String json) throws IOException, InterruptedException {
    assumeTrue(Pdf.readable(), "no pdftotext on this machine");
    Path file = Files.writeString(folder.resolve("front.html"), Cards.sheet(json, "Heron 7"));
    for (Map.Entry<String, double[]> paper : PAPERS.entrySet()) {
      browser.show(file, 1280, 800, true);
      Path pdf = folder.resolve("front.pdf");
      Files.write(pdf, browser.print(paper.getValue()[0], paper.getValue()[1]));
      List<String> sheets = Pdf.pages(pdf);
      assertThat(sheets).as(paper.getKey()).hasSize(2);
      assertThat(sheets.get(0)).contains("Read today, by hand").doesNotContain("Dry to wet");
      assertThat(sheets.get(1)).contains("Dry to wet", "Wet to dry", "By hand");
    }
  }

  @Test
  void theChecksFindWhatIsWrong() throws IOException {
    String wrong =
        Cards.page(Cards.WET, "")
            .replace("<main>", "<main><p style='width:2000px'>\uDBC0\uDC00<img></p>")
            .replace("--ink: #111111", "--ink: #bbbbbb");
    browser.show(Files.writeString(folder.resolve("wrong.html"), wrong), 360, 740, false);
    assertThat(texts(browser.run(OVERFLOW))).contains("the page scrolls sideways");
    assertThat(texts(browser.run(MISSING_GLYPHS))).containsExactly("\uDBC0\uDC00");
    assertThat(String.join(" ", violations())).contains("color-contrast", "image-alt");
    browser.asOnPaper(pixels(8.5), pixels(11));
    assertThat(texts(browser.run(OVERFLOW))).contains("the page scrolls sideways");
    assertThat(String.join(" ", violations())).contains("image-alt");
  }

  /** What the accessibility engine complains of, but for some of its rules. */
  private static List<String> violations(String... without) {
    String rules =
        Stream.of(without)
            .map("'%s': {enabled: false}"::formatted)
            .collect(Collectors.joining(", ", "{", "}"));
    browser.run(axe + "; 0");
    return texts(
        browser.run(
            "axe.run(document, {preload: false, rules: "
                + rules
                + ", runOnly: ['wcag2a', 'wcag2aa', 'wcag21a',"
                + " 'wcag21aa', 'wcag22aa', 'best-practice']}).then(r => r.violations.map(v =>"
                + " v.id + ': ' + v.nodes.map(n => n.html).join(' ')))"));
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.asText()));
    return texts;
  }

  /** PDF by the tools of poppler. */
  private static final class Pdf {

    private static final Pattern PAGES = Pattern.compile("Pages:\\s+(\\d+)");

    static boolean readable() {
      return Stream.of(System.getenv().getOrDefault("PATH", "").split(":", -1))
          .anyMatch(
              on ->
                  Files.isExecutable(Path.of(on, "pdftotext"))
                      && Files.isExecutable(Path.of(on, "pdfinfo")));
    }

    static List<String> pages(Path pdf) throws IOException, InterruptedException {
      Matcher count = PAGES.matcher(output("pdfinfo", pdf.toString()));
      assertThat(count.find()).isTrue();
      List<String> pages = new ArrayList<>();
      for (int i = 1; i <= Integer.parseInt(count.group(1)); i++) {
        String page = Integer.toString(i);
        pages.add(output("pdftotext", "-f", page, "-l", page, pdf.toString(), "-"));
      }
      return pages;
    }

    private static String output(String... command) throws IOException, InterruptedException {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(process.waitFor()).as(text).isZero();
      return text;
    }
  }
}
