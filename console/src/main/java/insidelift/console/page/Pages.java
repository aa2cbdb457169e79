package insidelift.console.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import insidelift.console.report.KartSheet;

/** Writes pages by the templates that the build has compiled. One serves any number of threads. */
public final class Pages {

  /** Where the build puts the compiled templates. */
  private static final String TEMPLATES = "insidelift.console.page.compiled";

  private final TemplateEngine engine =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, Pages.class.getClassLoader(), TEMPLATES);

  /** A pit card as one HTML file. */
  public String pitCard(PitCard card) {
    return page("card.jte", card);
  }

  /** A kart's front-end sheet as one HTML file. */
  public String kartSheet(KartSheet sheet) {
    return page("sheet.jte", sheet);
  }

  /** All notes as one HTML file. */
  public String notes(NotesPage notes) {
    return page("notes.jte", notes);
  }

  /** A sheet of results as one HTML file. */
  public String results(ResultPage sheet) {
    return page("results.jte", sheet);
  }

  private String page(String template, Object model) {
    StringOutput page = new StringOutput();
    engine.render(template, model, page);
    return page.toString();
  }
}
