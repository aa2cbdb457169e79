package insidelift.engine.own;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.notes.Note;
import insidelift.shared.casefile.JsonInput;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.index.Lawful;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The claims of a shop, read from its file and held against the words, rules and notes of this
 * build.
 *
 * @param shop the shop's name, shown with everything its claims say
 * @param rules its rules
 * @param notes the notes they stand on
 * @param sources what the sources of those notes stand for
 */
public record OwnKnowledge(
    String shop, List<IndexedRule> rules, List<Note> notes, Map<String, String> sources) {

  /** The name of the file in the user's own folder. */
  public static final String FILE = "own-knowledge.json";

  /** The version of the file that this build reads. */
  public static final int SCHEMA = 1;

  private static final int SHOP_LENGTH = 30;

  /** Takes copies of the lists. */
  public OwnKnowledge {
    rules = List.copyOf(rules);
    notes = List.copyOf(notes);
    sources = Map.copyOf(sources);
  }

  /**
   * Reads a shop's file.
   *
   * @param file the name to show for it
   * @param in the file
   * @param base what it is to stand beside
   * @throws CaseProblem if the file cannot be used; the message names the place
   * @throws IOException if the stream fails
   */
  public static OwnKnowledge read(String file, InputStream in, Advisor base)
      throws IOException, CaseProblem {
    byte[] bytes = in.readNBytes(InputLimits.MAX_BYTES + 1);
    JsonPlace top = JsonInput.read(new ByteArrayInputStream(bytes));
    top.object(Set.of("schema", "shop", "claims"));
    JsonPlace schema = top.need("schema");
    if (!schema.node().isInt() || schema.node().intValue() != SCHEMA) {
      throw schema.problem(
          "%s is not known; this build reads schema %d"
              .formatted(Printable.shown(schema.node().toString()), SCHEMA));
    }
    String shop = Words.text(top.need("shop"), SHOP_LENGTH);
    Map<String, Integer> lines = lines(new String(bytes, StandardCharsets.UTF_8));
    OwnClaimReader reader = new OwnClaimReader(shop, file, base);
    List<IndexedRule> rules = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    Map<String, String> sources = new LinkedHashMap<>();
    Set<String> ids = new HashSet<>();
    List<JsonPlace> claims = Words.list(top.need("claims"));
    if (claims.size() > InputLimits.MAX_CLAIMS) {
      throw top.need("claims")
          .problem("more than " + InputLimits.MAX_CLAIMS + " claims; split the file");
    }
    for (JsonPlace claim : claims) {
      OwnClaim own = reader.read(claim, lines);
      if (!ids.add(own.note().id())) {
        throw claim.need("id").problem("the same id stands twice");
      }
      rules.addAll(own.rules());
      notes.add(own.note());
      sources.put(own.note().sources().get(0), own.source());
    }
    check(rules, base);
    return new OwnKnowledge(shop, rules, notes, sources);
  }

  /** The advisor with these claims beside its own. */
  public Advisor beside(Advisor base) {
    return base.with(base.rules().with(rules), base.notes().with(notes, sources));
  }

  /** What the reader lets through must be as lawful as the rules of this build. */
  private static void check(List<IndexedRule> rules, Advisor base) {
    Lawful lawful = new Lawful(base.vocabulary());
    rules.forEach(lawful::check);
  }

  /** The line on which each id stands, for what the audit says of it. */
  private static Map<String, Integer> lines(String text) {
    Map<String, Integer> lines = new LinkedHashMap<>();
    Pattern id = Pattern.compile("\"id\"\\s*:\\s*\"([^\"]*)\"");
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      Matcher found = id.matcher(line);
      while (found.find()) {
        lines.putIfAbsent(found.group(1), number);
      }
    }
    return lines;
  }
}
