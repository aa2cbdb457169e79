package insidelift.console.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Help;

/** The list of verbs that help shows: by what somebody is at, not by the alphabet. */
final class VerbList {

  private static final Map<String, List<String>> GROUPS = new LinkedHashMap<>();

  static {
    GROUPS.put("At the track", List.of("advise", "say", "card", "log", "prove", "demo"));
    GROUPS.put(
        "The kart", List.of("sheet", "gauge", "toe", "positions", "predict", "pictures", "notes"));
    GROUPS.put("Learning", List.of("lessons", "cards", "drill"));
    GROUPS.put("For editors", List.of("audit"));
  }

  private VerbList() {}

  /** The verbs of one command line, each group under its heading. */
  static String of(Help help) {
    StringBuilder list = new StringBuilder();
    GROUPS.forEach(
        (heading, names) -> {
          Map<String, Help> verbs = new LinkedHashMap<>();
          for (String name : names) {
            if (help.subcommands().containsKey(name)) {
              verbs.put(name, help.subcommands().get(name));
            }
          }
          list.append(help.createHeading("%n" + heading + ":%n")).append(help.commandList(verbs));
        });
    return list.toString();
  }
}
