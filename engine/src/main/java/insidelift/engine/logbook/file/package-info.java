/**
 * What was driven, with what set-up, on whose advice and to what effect: karts, drivers, tracks,
 * days and runs, kept as plain lines in the user's own data folder and nowhere else.
 *
 * <p>{@link insidelift.engine.logbook.file.Logbook} reads, {@link
 * insidelift.engine.logbook.file.LogbookWriter} adds, {@link
 * insidelift.engine.logbook.learning.Experience} says what past runs teach. The file is {@code
 * logbook.jsonl}: one JSON object a line, each with its number (which is its line), the time of
 * writing, its kind, its entry and a CRC-32 of the line before the check. Lines are only ever
 * added; a correction is a line that names an earlier one.
 *
 * <p>Every name in it is data: it never becomes a path, and it is printed only through {@link
 * insidelift.shared.situation.Printable}.
 */
package insidelift.engine.logbook.file;
