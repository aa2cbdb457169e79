package insidelift.console.cli;

import insidelift.shared.situation.Printable;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A date as it was typed: ISO 8601, or day, month and year the way they are short in the user's
 * country, by the platform's Unicode CLDR. What may mean two days is refused, never guessed.
 */
public final class TypedDate {

  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})([./-]) ?(\\d{1,2})\\2 ?(\\d{4})\\.?");
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})([./-]) ?(\\d{1,2})\\2 ?(\\d{1,2})\\.?");
  private static final Pattern SHORT_YEAR =
      Pattern.compile("(\\d{1,2})([./-]) ?(\\d{1,2})\\2 ?(\\d{2})\\.?");

  private final Locale locale;

  /**
   * @param locale whose short dates are understood; one without a country has none
   */
  public TypedDate(Locale locale) {
    this.locale = locale;
  }

  /**
   * The date of a text.
   *
   * @throws IllegalArgumentException if it is none, or may be two
   */
  public LocalDate read(String text) {
    String typed = text.strip();
    Matcher first = YEAR_FIRST.matcher(typed);
    if (first.matches()) {
      return date(first.group(1), first.group(3), first.group(4)).orElseThrow(() -> none(text));
    }
    if (SHORT_YEAR.matcher(typed).matches()) {
      throw new IllegalArgumentException(
          Printable.quoted(text) + ": write the year with four digits, as in 2026-04-12");
    }
    Matcher last = YEAR_LAST.matcher(typed);
    if (!last.matches()) {
      throw none(text);
    }
    Optional<LocalDate> dayFirst = date(last.group(4), last.group(3), last.group(1));
    Optional<LocalDate> monthFirst = date(last.group(4), last.group(1), last.group(3));
    Optional<Boolean> usual = dayFirst(last.group(2));
    Optional<LocalDate> meant =
        usual.map(day -> day ? dayFirst : monthFirst).orElse(Optional.empty());
    if (meant.isPresent()) {
      return meant.get();
    }
    List<LocalDate> readings =
        Stream.of(dayFirst, monthFirst).flatMap(Optional::stream).distinct().toList();
    if (readings.size() == 2) {
      throw new IllegalArgumentException(
          "%s may be two days: write %s or %s"
              .formatted(Printable.quoted(text), readings.get(0), readings.get(1)));
    }
    return readings.stream().findFirst().orElseThrow(() -> none(text));
  }

  private static Optional<LocalDate> date(String year, String month, String day) {
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** Whether the day stands before the month in this country's short dates with that separator. */
  private Optional<Boolean> dayFirst(String separator) {
    if (locale.getCountry().isEmpty()) {
      return Optional.empty();
    }
    String pattern =
        DateTimeFormatterBuilder.getLocalizedDateTimePattern(
            FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
    boolean own = pattern.contains(separator) && pattern.indexOf('y') > pattern.indexOf('M');
    return own ? Optional.of(pattern.indexOf('d') < pattern.indexOf('M')) : Optional.empty();
  }

  private static IllegalArgumentException none(String text) {
    return new IllegalArgumentException(
        Printable.quoted(text) + " is not a date such as 2026-04-12");
  }
}
