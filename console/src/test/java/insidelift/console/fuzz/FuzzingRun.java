package insidelift.console.fuzz;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lets Jazzer search each target in a process of its own, for a share of the time each, and writes
 * what came of it. Needs Jazzer on the class path: {@code mvn verify -Pfuzz}.
 */
public final class FuzzingRun {

  private static final Pattern RUNS = Pattern.compile("stat::number_of_executed_units:\\s+(\\d+)");
  private static final Pattern SEEDS = Pattern.compile("cov: (\\d+) ft: (\\d+)");

  /** Megabytes of a process: four times what the largest reader needs with the fuzzer beside it. */
  private static final int HEAP_MB = 700;

  /** Seconds that one input may take on a slow machine. */
  private static final int SLOWEST = 30;

  /** Bytes of an input: longer ones find nothing new, and the limits have tests of their own. */
  private static final int LONGEST = 4_096;

  private FuzzingRun() {}

  /**
   * Searches.
   *
   * @param args seconds in all, where to work, whether to keep what was found, and the targets or a
   *     hyphen for all
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    int seconds = Integer.parseInt(args[0]);
    Path work = Path.of(args[1]);
    boolean keep = Boolean.parseBoolean(args[2]);
    List<Target> targets =
        args.length > 3 && !args[3].equals("-")
            ? Arrays.stream(args[3].split(",", -1)).map(Target::of).toList()
            : List.of(Target.values());
    Files.createDirectories(work);
    List<String> report = new ArrayList<>();
    boolean sound = true;
    for (Target target : targets) {
      sound &= search(target, Math.max(1, seconds / targets.size()), work, keep, report);
    }
    Files.write(work.resolve("report.txt"), report);
    report.forEach(System.out::println);
    if (!sound) {
      throw new AssertionError("a reader failed: see " + work);
    }
  }

  private static boolean search(
      Target target, int seconds, Path work, boolean keep, List<String> report)
      throws IOException, InterruptedException {
    Path folder = Files.createDirectories(work.resolve(target.id()));
    Path found = Files.createDirectories(folder.resolve("inputs"));
    int number = 0;
    for (byte[] input : Corpus.of(target)) {
      Files.write(found.resolve("kept-" + number++), input);
    }
    Path log = folder.resolve("log.txt");
    int exit =
        jazzer(
            target,
            log,
            "-max_total_time=" + seconds,
            "-max_len=" + LONGEST,
            "-timeout=" + SLOWEST,
            "-dict=" + dictionary(folder),
            "-print_final_stats=1",
            "-artifact_prefix=" + folder + File.separator,
            found.toString());
    String said = Files.readString(log, StandardCharsets.ISO_8859_1);
    report.add(
        String.format(
            Locale.ROOT,
            "%-12s %5d s %10s executions, edges and features %s%s",
            target.id(),
            seconds,
            last(RUNS, said),
            last(SEEDS, said),
            exit == 0 ? "" : ", FAILED: " + log));
    if (keep && exit == 0) {
      keep(target, folder, found, report);
    }
    return exit == 0;
  }

  /** Keeps the fewest inputs that reach as much. */
  private static void keep(Target target, Path folder, Path found, List<String> report)
      throws IOException, InterruptedException {
    Path fewest = Files.createDirectories(folder.resolve("fewest"));
    jazzer(target, folder.resolve("merge.txt"), "-merge=1", fewest.toString(), found.toString());
    List<byte[]> inputs = new ArrayList<>();
    try (Stream<Path> files = Files.list(fewest)) {
      for (Path file : files.sorted().toList()) {
        inputs.add(Files.readAllBytes(file));
      }
    }
    if (!inputs.isEmpty()) {
      report.add("  kept " + Corpus.keep(target, inputs) + " inputs");
    }
  }

  private static int jazzer(Target target, Path log, String... options)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + HEAP_MB + "m",
                "-XX:+EnableDynamicAgentLoading",
                "-Dfuzz.target=" + target.id(),
                "-cp",
                System.getProperty("fuzz.classpath", System.getProperty("java.class.path")),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + FuzzEntry.class.getName(),
                "--instrumentation_includes=insidelift.**",
                // What the rule compiler made is a class for each premise, and no reader.
                "--instrumentation_excludes=insidelift.rules.P**:insidelift.console.fuzz.**",
                "--custom_hook_includes=insidelift.**:com.fasterxml.**",
                "--custom_hook_excludes=insidelift.rules.P**"));
    command.addAll(List.of(options));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start()
        .waitFor();
  }

  /** The words of the vocabulary, so that the fuzzer need not find them letter by letter. */
  private static Path dictionary(Path folder) throws IOException {
    String words =
        Stream.concat(
                Target.advisor().vocabulary().questions().stream()
                    .flatMap(
                        question ->
                            Stream.concat(
                                Stream.of(question.id()),
                                question.values().stream().map(value -> value.id()))),
                Words.KEYS.stream())
            .distinct()
            .map(word -> "\"\\\"" + word + "\\\"\"")
            .collect(Collectors.joining("\n", "", "\n"));
    return Files.writeString(folder.resolve("words.dict"), words);
  }

  private static String last(Pattern pattern, String text) {
    String last = "?";
    for (Matcher found = pattern.matcher(text); found.find(); ) {
      last = found.groupCount() > 1 ? found.group(1) + " " + found.group(2) : found.group(1);
    }
    return last;
  }
}
