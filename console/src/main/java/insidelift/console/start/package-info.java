/**
 * Where the program starts: the command line with every verb, and the short way for what is asked
 * for most.
 *
 * <p>A start is mostly loading classes once and running code cold, on two processors that are both
 * busy: what counts is what is left out, and what waits for nothing. {@code Main} begins with the
 * rules in its first line, on a bare thread; {@code advise CASE [--json]} and the dialogue are
 * understood without the library for command lines, whose classes are too old for the class archive
 * of Java 17; {@code Screen} opens the terminal when somebody is first waited for. Tried without
 * gain: an index of the class path, fewer jars, other heaps and collectors, the class archive at a
 * fixed address, an empty network laid out beforehand, unshared nodes. What a start loads, and
 * when: {@code _JAVA_OPTIONS=-Xlog:class+load:file=F:uptime,tid}.
 */
package insidelift.console.start;
