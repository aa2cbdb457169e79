package insidelift.console.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import insidelift.console.Launcher;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * No verb of the packaged program opens a network socket. Java can open none without the classes
 * looked for here, so their absence from the list of loaded classes proves it on every system;
 * where {@code strace} is installed, the calls to the system are looked at as well: none names an
 * address.
 */
@Execution(ExecutionMode.CONCURRENT)
class NoNetworkIT {

  private static final String CASE =
      Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();

  /** Each verb, with words that make it go all the way through. */
  private static final Map<String, List<String>> VERBS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("advise", List.of(CASE, "--log", "--demo")),
              Map.entry("say", List.of("--json", "it pushes on entry")),
              Map.entry("card", List.of(CASE, "--out", "card.html")),
              Map.entry("sheet", List.of(CASE)),
              Map.entry("demo", List.of("--fast")),
              Map.entry("pictures", List.of(CASE)),
              Map.entry("predict", List.of(example("heron.kart.json"))),
              Map.entry("positions", List.of(example("heron.positions.json"))),
              Map.entry("gauge", List.of(example("laser.gauge.json"))),
              Map.entry("toe", List.of(example("heron.toe.json"))),
              Map.entry("prove", List.of(example("before.laps"), example("after.laps"))),
              Map.entry("log", List.of("demo")),
              Map.entry("notes", List.of("--out", "notes.html")),
              Map.entry("lessons", List.of()),
              Map.entry("cards", List.of()),
              Map.entry("drill", List.of("--case", "1")),
              Map.entry("manual", List.of()),
              Map.entry("audit", List.of("--cases", example("own"))),
              Map.entry("rehearse", List.of())));

  /** Without one of these Java reaches no network, be it old sockets, channels or a look-up. */
  private static final Pattern NETWORK =
      Pattern.compile(
          " (java\\.net\\.(Socket|ServerSocket|DatagramSocket|MulticastSocket|SocketImpl"
              + "|Inet[46]AddressImpl|HttpURLConnection)"
              + "|sun\\.nio\\.ch\\.(Net|NioSocketImpl|SocketChannelImpl|ServerSocketChannelImpl"
              + "|DatagramChannelImpl|DatagramSocketAdaptor)"
              + "|jdk\\.internal\\.net\\.http\\.[A-Za-z]*) ");

  @TempDir private Path folder;

  private static String example(String name) {
    return Launcher.CONSOLE.resolve("examples").resolve(name).toString();
  }

  @Test
  void everyVerbIsLookedAt() {
    assertThat(VERBS.keySet()).isEqualTo(Insidelift.commandLine().getSubcommands().keySet());
  }

  @Test
  void noClassOfTheNetworkIsEverLoaded() throws IOException {
    assertThat(loaded(Launcher.with().typing("\n\n1\n"), "dialogue")).isNotEmpty();
    for (Map.Entry<String, List<String>> verb : VERBS.entrySet()) {
      assertThat(loaded(Launcher.with(words(verb)), verb.getKey())).isNotEmpty();
    }
  }

  private List<String> loaded(Launcher launcher, String name) throws IOException {
    Path list = folder.resolve(name + ".txt");
    Outcome outcome =
        launcher
            .from(folder)
            .set("INSIDELIFT_DATA", folder.resolve("data").toString())
            .set("_JAVA_OPTIONS", "-Xlog:class+load:file=" + list)
            .run();
    assertThat(outcome.exit()).as(outcome.err()).isIn(0, 1);
    List<String> classes = Files.readAllLines(list);
    assertThat(classes.stream().filter(line -> line.contains(" insidelift.console.start.Main ")))
        .as(name)
        .hasSize(1);
    assertThat(classes.stream().filter(line -> NETWORK.matcher(line).find())).as(name).isEmpty();
    return classes;
  }

  @Test
  void theSystemIsNeverGivenAnAddressOfTheNetwork() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/strace")), "strace is not installed");
    Outcome trial = Launcher.shell("strace -f -o /dev/null true").run();
    assumeTrue(trial.exit() == 0, "strace may not look into processes here");
    for (String verb : List.of("advise", "card", "log", "prove", "notes")) {
      Path calls = folder.resolve(verb + ".strace");
      StringBuilder line =
          new StringBuilder("strace -f -qq -e trace=%network -o ")
              .append(calls)
              .append(' ')
              .append(Launcher.CONSOLE.resolve("insidelift"))
              .append(' ')
              .append(verb);
      VERBS.get(verb).forEach(word -> line.append(" '").append(word).append('\''));
      Outcome outcome =
          Launcher.shell(line.toString())
              .from(folder)
              .set("INSIDELIFT_DATA", folder.resolve("other").toString())
              .run();
      assertThat(outcome.exit()).as(outcome.err()).isZero();
      // The library behind Java's file channels looks which protocols there are, by sockets that it
      // neither binds nor connects. A descriptor of a network that is used has an address.
      assertThat(Files.readString(calls))
          .as(verb)
          .doesNotContain("sa_family=AF_INET", "AF_PACKET", "AF_NETLINK", "listen(", "accept");
    }
  }

  private static String[] words(Map.Entry<String, List<String>> verb) {
    List<String> words = new java.util.ArrayList<>(List.of(verb.getKey()));
    words.addAll(verb.getValue());
    return words.toArray(String[]::new);
  }
}
