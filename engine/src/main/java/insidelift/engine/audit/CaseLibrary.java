package insidelift.engine.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.rules.fact.Spoken;
import insidelift.rules.fact.Sum;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.casefile.JsonInput;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Cases in files that a mechanic can read and write: a sentence as name, where it comes from, what
 * is known, and what the advice should be. Each file is a list of cases, or one case as every other
 * verb reads it.
 *
 * @param entries the cases, by file and place
 */
public record CaseLibrary(List<Entry> entries) {

  /** What stands as source where nothing is published. */
  public static final String COMMON_PRACTICE = "common-practice";

  /** What stands as source of a file that is one case and names none. */
  private static final String OWN = "own-case";

  private static final Set<String> KEYS =
      Set.of("name", "source", "answers", "kart", "expect", "fires", "silent");

  /** Takes a copy of the cases. */
  public CaseLibrary {
    entries = List.copyOf(entries);
  }

  /**
   * One case.
   *
   * @param file the file it stands in, without its ending
   * @param name what it is, in a sentence
   * @param sources where it comes from: ids of the bibliography, or a shop's own words
   * @param situation what is known
   * @param node the case as the file has it
   */
  public record Entry(
      String file, String name, List<String> sources, Situation situation, JsonNode node) {

    /** The words under a key. */
    public List<String> words(String key) {
      List<String> words = new ArrayList<>();
      node.path(key).forEach(word -> words.add(word.asText()));
      return words;
    }

    /** Where an advice differs from what the case expects, in words; none where it agrees. */
    public List<String> differences(Advice advice) {
      return Expectation.differences(node.path("expect"), advice);
    }

    /** The same, with the rules that the case says speak and those that it says keep silent. */
    public List<String> differences(Advisor advisor) {
      Advice advice = advisor.outline(situation);
      List<String> differences = new ArrayList<>(differences(advice));
      gains(advisor, differences);
      cautions("cautions", advice, advisor, differences);
      cautions("without", advice, advisor, differences);
      Set<String> spoke =
          advisor
              .decide(situation)
              .reasoned()
              .all(Spoken.class)
              .map(said -> said.by().rule())
              .collect(Collectors.toSet());
      words("fires").stream()
          .filter(rule -> !spoke.contains(rule))
          .forEach(rule -> differences.add("rule " + rule + ": expected to speak, silent"));
      words("silent").stream()
          .filter(spoke::contains)
          .forEach(rule -> differences.add("rule " + rule + ": expected silent, speaks"));
      return differences;
    }

    /** Holds the sums of moves against those expected. */
    private void gains(Advisor advisor, List<String> differences) {
      JsonNode gains = node.path("expect").path("gains");
      if (!gains.isMissingNode()) {
        for (Sum sum : advisor.decide(situation).reasoned().sums()) {
          JsonNode gain = gains.path(sum.lever() + " " + sum.direction());
          if (!gain.isMissingNode() && gain.intValue() != sum.gain()) {
            differences.add(
                "%s %s: %d points expected, %d"
                    .formatted(sum.lever(), sum.direction(), gain.intValue(), sum.gain()));
          }
        }
      }
    }

    /** Holds the cautions of a lever, by the notes they stand in, against those expected. */
    private void cautions(String key, Advice advice, Advisor advisor, List<String> differences) {
      for (Lever lever : Lever.values()) {
        List<String> said =
            advice.suggestions().stream()
                .filter(suggestion -> suggestion.lever() == lever)
                .flatMap(suggestion -> suggestion.cautions().stream())
                .toList();
        for (JsonNode note : node.path("expect").path(key).path(lever.id())) {
          boolean there =
              advisor
                  .notes()
                  .find(note.asText())
                  .filter(found -> said.contains(found.text("Caution")))
                  .isPresent();
          if (there == key.equals("without")) {
            differences.add(
                "%s: caution %s is %s"
                    .formatted(lever.id(), note.asText(), there ? "there" : "missing"));
          }
        }
      }
    }
  }

  /**
   * A case that the rules do not agree with.
   *
   * @param file the file it stands in
   * @param name the case
   * @param source where it comes from
   * @param differences where the advice differs, in words
   */
  public record Disagreement(String file, String name, String source, List<String> differences) {
    /** Takes a copy of the differences. */
    public Disagreement {
      differences = List.copyOf(differences);
    }
  }

  /** The cases with which an advisor does not agree. */
  public List<Disagreement> disagreements(Advisor advisor) {
    return entries.stream()
        .map(
            entry ->
                new Disagreement(
                    entry.file(),
                    entry.name(),
                    String.join(", ", entry.sources()),
                    entry.differences(advisor)))
        .filter(disagreement -> !disagreement.differences().isEmpty())
        .toList();
  }

  /**
   * The cases of every {@code .json} file in a folder.
   *
   * @throws CaseProblem if a file cannot be used; the message names file and place
   * @throws IOException if the folder cannot be read
   */
  public static CaseLibrary read(Path folder, Vocabulary vocabulary)
      throws IOException, CaseProblem {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files =
          all.filter(file -> file.toString().endsWith(".json") && Files.isRegularFile(file))
              .sorted()
              .limit(InputLimits.MAX_CASE_FILES + 1)
              .toList();
    }
    if (files.size() > InputLimits.MAX_CASE_FILES) {
      throw new CaseProblem(
          "the folder holds more than " + InputLimits.MAX_CASE_FILES + " files of cases");
    }
    List<Entry> entries = new ArrayList<>();
    for (Path file : files) {
      String name = file.getFileName().toString();
      try (InputStream in = Files.newInputStream(file)) {
        read(name.replaceFirst("\\.json$", ""), JsonInput.read(in), vocabulary, entries);
      } catch (CaseProblem e) {
        throw new CaseProblem(Printable.shown(name) + ": " + e.getMessage());
      }
    }
    return new CaseLibrary(entries);
  }

  private static void read(String file, JsonPlace top, Vocabulary vocabulary, List<Entry> entries)
      throws CaseProblem {
    if (!top.node().isArray()) {
      top.need("answers");
      Situation known = new CaseReader(vocabulary).read(top.node().toString());
      entries.add(new Entry(file, file, List.of(OWN), known, top.node()));
      return;
    }
    for (int i = 0; i < top.node().size(); i++) {
      JsonPlace place = top.item("case " + (i + 1), top.node().get(i));
      place.object(KEYS);
      String name = place.need("name").word();
      if (name.isBlank()) {
        throw place.need("name").problem("a case is named by a sentence");
      }
      List<String> sources = List.of(place.need("source").word().split(",\\s*"));
      if (place.at("expect").isPresent()) {
        Expectation.check(place.need("expect"), vocabulary);
      }
      entries.add(new Entry(file, name, sources, situation(place, vocabulary), place.node()));
    }
  }

  private static Situation situation(JsonPlace place, Vocabulary vocabulary) throws CaseProblem {
    ObjectNode file = JsonNodeFactory.instance.objectNode().put("schema", CaseReader.SCHEMA);
    file.set("answers", place.need("answers").node());
    if (place.at("kart").isPresent()) {
      file.set("kart", place.node().get("kart"));
    }
    try {
      return new CaseReader(vocabulary).read(file.toString());
    } catch (CaseProblem e) {
      throw place.problem(e.getMessage());
    }
  }

  /** How many cases rest on each source, by source; a case of several sources counts in each. */
  public Map<String, Integer> bySource() {
    Map<String, Integer> counts = new TreeMap<>();
    entries.forEach(
        entry -> entry.sources().forEach(source -> counts.merge(source, 1, Integer::sum)));
    return counts;
  }
}
