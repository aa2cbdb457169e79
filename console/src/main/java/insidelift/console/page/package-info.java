/**
 * Pages to print or to read on a phone: the pit card, the notes, a result sheet. Each is one HTML
 * file that needs nothing else: no script, no network, no font of its own. The templates, in {@code
 * src/main/jte}, escape whatever is put into them.
 */
package insidelift.console.page;
