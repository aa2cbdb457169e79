package insidelift.console.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * The manual page of the command line, made from the same model that reads it. Macros: man(7), the
 * form that every Unix shows.
 */
final class ManPage {

  private final List<String> lines = new ArrayList<>();

  private ManPage() {}

  static List<String> of(CommandLine top) {
    ManPage page = new ManPage();
    page.write(top);
    return List.copyOf(page.lines);
  }

  private void write(CommandLine top) {
    CommandSpec spec = top.getCommandSpec();
    UsageMessageSpec usage = spec.usageMessage();
    lines.add(
        ".TH %s 1 \"\" \"%s\" \"User commands\""
            .formatted(spec.name().toUpperCase(Locale.ROOT), escaped(spec.version()[0])));
    section("NAME");
    lines.add(escaped(spec.name() + " - " + firstLine(usage)));
    section("SYNOPSIS");
    lines.add(".B " + escaped(spec.name()));
    lines.add("[VERB] [OPTIONS]");
    section("DESCRIPTION");
    paragraphs(usage.header(), 1);
    paragraphs(usage.description(), 0);
    section("VERBS");
    for (Map.Entry<String, CommandLine> verb : top.getSubcommands().entrySet()) {
      if (!verb.getValue().getCommandSpec().usageMessage().hidden()) {
        verb(verb.getKey(), verb.getValue());
      }
    }
    section("EXIT STATUS");
    usage.exitCodeList().forEach((code, words) -> tagged(code, words));
  }

  private void verb(String name, CommandLine line) {
    CommandSpec spec = line.getCommandSpec();
    lines.add(".SS " + escaped(name));
    lines.add(escaped(firstLine(spec.usageMessage())));
    paragraphs(spec.usageMessage().description(), 0);
    for (PositionalParamSpec parameter : spec.positionalParameters()) {
      tagged(parameter.paramLabel(), String.join(" ", parameter.description()));
    }
    for (OptionSpec option : spec.options()) {
      if (!option.hidden()) {
        String label = option.arity().max() > 0 ? " " + option.paramLabel() : "";
        tagged(String.join(", ", option.names()) + label, String.join(" ", option.description()));
      }
    }
    line.getSubcommands()
        .forEach(
            (sub, inner) -> {
              if (!inner.getCommandSpec().usageMessage().hidden()) {
                tagged(name + " " + sub, firstLine(inner.getCommandSpec().usageMessage()));
              }
            });
  }

  private static String firstLine(UsageMessageSpec usage) {
    return usage.header().length == 0 ? "" : usage.header()[0];
  }

  private void section(String name) {
    lines.add(".SH " + name);
  }

  private void tagged(String tag, String words) {
    lines.add(".TP");
    lines.add(".B " + escaped(tag));
    lines.add(escaped(words.formatted().strip()));
  }

  /** Lines as they stand; an empty one parts paragraphs, and examples keep their indent. */
  private void paragraphs(String[] text, int from) {
    for (int i = from; i < text.length; i++) {
      if (text[i].isBlank()) {
        lines.add(".PP");
      } else if (text[i].startsWith("  ")) {
        lines.add(".br");
        lines.add("\\ \\ " + escaped(text[i].strip()));
      } else {
        if (i > from && text[i - 1].startsWith("  ")) {
          lines.add(".PP");
        }
        lines.add(escaped(text[i]));
      }
    }
  }

  /** Backslashes, hyphens that must stay hyphens, and a mark that would be a macro at the start. */
  private static String escaped(String text) {
    String safe = text.replace("\\", "\\e").replace("-", "\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }
}
