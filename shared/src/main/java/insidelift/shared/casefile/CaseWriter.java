package insidelift.shared.casefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;

/** Writes a situation as the case file that {@link CaseReader} reads. */
public final class CaseWriter {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private final Vocabulary vocabulary;

  /** A writer of files in the words of a vocabulary. */
  public CaseWriter(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** The situation as the text of a case file. */
  public String write(Situation situation) {
    ObjectNode file = MAPPER.createObjectNode().put("schema", CaseReader.SCHEMA);
    ObjectNode answers = file.putObject("answers");
    for (Question question : vocabulary.questions()) {
      answer(question, situation, answers);
    }
    Kart kart = situation.kart();
    if (!kart.equals(Kart.UNKNOWN)) {
      kart(kart, file.putObject("kart"));
    }
    if (!situation.history().isEmpty()) {
      PastWriter.history(situation.history(), file.putArray("history"));
    }
    try {
      return MAPPER.writeValueAsString(file);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a case is plain words and numbers", e);
    }
  }

  private static void answer(Question question, Situation situation, ObjectNode answers) {
    Double number = situation.numbers().get(question.id());
    if (number != null) {
      answers.put(question.number().key(), number);
    } else if (situation.declined().contains(question.id())) {
      answers.put(question.id(), Vocabulary.UNKNOWN);
    } else if (!question.numberOnly()) {
      situation.answer(question.id()).ifPresent(value -> answers.put(question.id(), value));
    }
  }

  private static void kart(Kart kart, ObjectNode node) {
    PastWriter.front(kart.front(), node);
    Eccentrics eccentrics = kart.eccentrics();
    if (!eccentrics.equals(Eccentrics.UNKNOWN)) {
      ObjectNode steps = node.putObject("eccentrics");
      put(steps, "camberPerPosition", eccentrics.camberPerPosition());
      put(steps, "casterPerPosition", eccentrics.casterPerPosition());
      if (eccentrics.washers() != null) {
        steps.setAll((ObjectNode) eccentrics.washers());
      }
      if (eccentrics.now() != null) {
        steps.set("now", eccentrics.now());
      }
    }
    kart.geometry().ifPresent(geometry -> node.set("geometry", geometry));
    PastWriter.kart(kart.past(), node);
  }

  private static void put(ObjectNode node, String key, Degrees degrees) {
    if (degrees != null) {
      node.put(key, degrees.value());
    }
  }
}
