package insidelift.shared.advice;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import insidelift.shared.advice.Advice.Changeover;
import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Decision;
import insidelift.shared.advice.Advice.Dispute;
import insidelift.shared.advice.Advice.Effect;
import insidelift.shared.advice.Advice.FoundOut;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.Observation;
import insidelift.shared.advice.Advice.Open;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.advice.Advice.Weighed;
import insidelift.shared.casefile.JsonOutput;
import java.io.IOException;
import java.util.List;

/**
 * Writes advice as the JSON that data binding makes of its records, field by field: the tests hold
 * one against the other. Data binding takes longer to find out how than the rules take to decide,
 * and a script asks for advice in a new process each time.
 */
public final class AdviceJson {

  private final JsonGenerator out;

  private AdviceJson(JsonGenerator out) {
    this.out = out;
  }

  /** The advice as indented JSON in printable ASCII. */
  public static String of(Advice advice) {
    return JsonOutput.written(out -> new AdviceJson(out).advice(advice));
  }

  /** Writes one member of a list. */
  private interface Member<T> {
    void write(T member) throws IOException;
  }

  private void advice(Advice advice) throws IOException {
    out.writeStartObject();
    out.writeNumberField("schema", advice.schema());
    out.writeStringField("status", advice.status().id());
    list("firstChecks", advice.firstChecks(), this::check);
    list("findings", advice.findings(), this::finding);
    list("suggestions", advice.suggestions(), this::suggestion);
    list("decisions", advice.decisions(), this::decision);
    list("alternatives", advice.alternatives(), this::alternative);
    if (advice.changeover() != null) {
      out.writeObjectFieldStart("changeover");
      out.writeStringField("condition", advice.changeover().condition());
      if (advice.changeover().sheet() != null) {
        out.writeStringField("sheet", advice.changeover().sheet());
      }
      list("jobs", advice.changeover().jobs(), this::job);
      texts("steps", advice.changeover().steps());
      texts("cautions", advice.changeover().cautions());
      out.writeEndObject();
    }
    list("unexplained", advice.unexplained(), this::observation);
    list("wouldHelp", advice.wouldHelp(), this::open);
    texts("assumed", advice.assumed());
    minutes(advice.minutes());
    if (advice.baseline() != null) {
      out.writeObjectFieldStart("baseline");
      out.writeStringField("condition", advice.baseline().condition());
      settings("camber", advice.baseline().camber());
      settings("caster", advice.baseline().caster());
      out.writeEndObject();
    }
    out.writeEndObject();
  }

  private void check(Check check) throws IOException {
    unlessEmpty("id", check.id());
    out.writeStringField("kind", check.kind().id());
    unlessEmpty("question", check.question());
    unlessEmpty("what", check.what());
    unlessEmpty("why", check.why());
    unlessEmpty("action", check.action());
    if (!check.sources().isEmpty()) {
      texts("sources", check.sources());
    }
  }

  private void finding(FoundOut finding) throws IOException {
    out.writeStringField("id", finding.id());
    out.writeStringField("words", finding.words());
    out.writeStringField("strength", finding.strength());
    out.writeNumberField("weight", finding.weight());
    list("ledger", finding.ledger(), this::weighed);
  }

  private void weighed(Weighed weighed) throws IOException {
    out.writeStringField("rule", weighed.rule());
    out.writeNumberField("weight", weighed.weight());
    texts("because", weighed.because());
    out.writeStringField("note", weighed.note());
  }

  private void suggestion(Suggestion suggestion) throws IOException {
    out.writeStringField("lever", suggestion.lever().id());
    out.writeStringField("direction", suggestion.direction().id());
    out.writeStringField("kind", suggestion.kind().id());
    out.writeBooleanField("first", suggestion.first());
    out.writeNumberField("degrees", suggestion.degrees());
    settings("target", suggestion.target());
    out.writeNumberField("positions", suggestion.positions());
    out.writeStringField("strength", suggestion.strength());
    out.writeStringField("summary", suggestion.summary());
    if (suggestion.heldBy() != null) {
      out.writeStringField("heldBy", suggestion.heldBy());
    }
    list("reasons", suggestion.reasons(), this::reason);
    list("disputes", suggestion.disputes(), this::dispute);
    texts("cautions", suggestion.cautions());
    texts("steps", suggestion.steps());
    minutes(suggestion.minutes());
    texts("confirm", suggestion.confirm());
    texts("undo", suggestion.undo());
    effect("effect", suggestion.effect());
    effect("washers", suggestion.washers());
  }

  private void settings(String key, Settings settings) throws IOException {
    if (settings != null) {
      out.writeObjectFieldStart(key);
      out.writeNumberField("left", settings.left());
      out.writeNumberField("right", settings.right());
      out.writeStringField("reference", settings.reference());
      out.writeEndObject();
    }
  }

  private void minutes(Minutes minutes) throws IOException {
    if (minutes != null) {
      out.writeObjectFieldStart("minutes");
      out.writeNumberField("from", minutes.from());
      out.writeNumberField("to", minutes.to());
      out.writeEndObject();
    }
  }

  private void reason(Reason reason) throws IOException {
    out.writeStringField("note", reason.note());
    out.writeStringField("rule", reason.rule());
    texts("because", reason.because());
    out.writeStringField("text", reason.text());
    out.writeStringField("why", reason.why());
    texts("sources", reason.sources());
  }

  private void dispute(Dispute dispute) throws IOException {
    out.writeStringField("note", dispute.note());
    texts("sides", dispute.sides());
  }

  private void effect(String key, Effect effect) throws IOException {
    if (effect == null) {
      return;
    }
    out.writeObjectFieldStart(key);
    out.writeFieldName("figures");
    try (JsonParser figures = effect.figures().traverse()) {
      figures.nextToken();
      out.copyCurrentStructure(figures);
    }
    unlessEmpty("sentence", effect.sentence());
    out.writeEndObject();
  }

  private void decision(Decision decision) throws IOException {
    out.writeStringField("note", decision.note());
    out.writeStringField("text", decision.text());
    texts("over", decision.over());
  }

  private void alternative(OtherLever other) throws IOException {
    out.writeStringField("lever", other.lever());
    out.writeStringField("direction", other.direction().id());
    out.writeStringField("what", other.what());
    out.writeNumberField("minutes", other.minutes());
    out.writeStringField("who", other.who());
    out.writeBooleanField("leads", other.leads());
    out.writeBooleanField("disputed", other.disputed());
    texts("helps", other.helps());
    texts("costs", other.costs());
    out.writeStringField("action", other.action());
    out.writeStringField("why", other.why());
    texts("cautions", other.cautions());
  }

  private void job(Changeover.Job job) throws IOException {
    out.writeStringField("lever", job.lever());
    out.writeStringField("what", job.what());
    out.writeNumberField("minutes", job.minutes());
    out.writeNumberField("total", job.total());
    out.writeStringField("who", job.who());
  }

  private void observation(Observation observation) throws IOException {
    out.writeStringField("question", observation.question());
    out.writeStringField("value", observation.value());
    out.writeStringField("words", observation.words());
  }

  private void open(Open open) throws IOException {
    out.writeStringField("question", open.question());
    out.writeStringField("ask", open.ask());
    out.writeStringField("why", open.why());
    out.writeBooleanField("leads", open.leads());
  }

  private <T> void list(String key, List<T> members, Member<T> writer) throws IOException {
    out.writeArrayFieldStart(key);
    for (T member : members) {
      out.writeStartObject();
      writer.write(member);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void texts(String key, List<String> texts) throws IOException {
    out.writeArrayFieldStart(key);
    for (String text : texts) {
      out.writeString(text);
    }
    out.writeEndArray();
  }

  private void unlessEmpty(String key, String text) throws IOException {
    if (text != null && !text.isEmpty()) {
      out.writeStringField(key, text);
    }
  }
}
