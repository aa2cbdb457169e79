package insidelift.engine.audit.check;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What may be although a check speaks of it, each with the reason and the day it was allowed. */
public final class Allowances {

  private static final String FILE = "/insidelift/audit-allowed.json";

  /**
   * One allowance.
   *
   * @param check the check it is for
   * @param id the remark's id
   * @param reason why it is allowed
   * @param date since when, ISO 8601
   * @param rare whether only a wide sweep meets what it is for: then nobody misses it otherwise
   */
  public record Allowance(String check, String id, String reason, String date, boolean rare) {

    Allowance(String check, String id, String reason, String date) {
      this(check, id, reason, date, false);
    }

    String key() {
      return check + ": " + id;
    }
  }

  private final Map<String, Allowance> allowed = new LinkedHashMap<>();
  private final Set<String> used = new LinkedHashSet<>();

  private Allowances(List<Allowance> allowances) {
    for (Allowance allowance : allowances) {
      if (allowance.reason().isBlank()) {
        throw new IllegalArgumentException(allowance.key() + " is allowed without a reason");
      }
      try {
        LocalDate.parse(allowance.date());
      } catch (DateTimeParseException e) {
        throw new IllegalArgumentException(allowance.key() + " is allowed on no day", e);
      }
      if (allowed.put(allowance.key(), allowance) != null) {
        throw new IllegalArgumentException(allowance.key() + " is allowed twice");
      }
    }
  }

  static Allowances none() {
    return new Allowances(List.of());
  }

  static Allowances of(List<Allowance> allowances) {
    return new Allowances(allowances);
  }

  /** The allowances of this build. */
  public static Allowances load() {
    try (InputStream in = Allowances.class.getResourceAsStream(FILE)) {
      List<Allowance> allowances = new ArrayList<>();
      for (JsonNode node : JsonMapper.builder().build().readTree(in)) {
        allowances.add(
            new Allowance(
                node.path("check").asText(),
                node.path("id").asText(),
                node.path("reason").asText(),
                node.path("date").asText(),
                node.path("rare").asBoolean()));
      }
      return new Allowances(allowances);
    } catch (IOException e) {
      throw new UncheckedIOException("the allow-list of this build cannot be read", e);
    }
  }

  /** The allowance for a remark of a check, if there is one. */
  public Optional<Allowance> find(String check, Remark remark) {
    Allowance found = allowed.get(check + ": " + remark.id());
    if (found != null) {
      used.add(found.key());
    }
    return Optional.ofNullable(found);
  }

  /** Allowances that allowed nothing: what they were for is gone, and they should go too. */
  public List<Remark> idle() {
    return allowed.values().stream()
        .filter(allowance -> !allowance.rare() && !used.contains(allowance.key()))
        .map(
            allowance ->
                Remark.of(
                    allowance.key(),
                    Severity.WARNING,
                    "the allow-list allows \"%s\", which is not there".formatted(allowance.key())))
        .toList();
  }
}
