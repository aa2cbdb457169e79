package insidelift.engine.consultation.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.AdviceJson;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.casefile.CaseWriter;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is answered in a dialogue, its file is one that every reader takes. */
class KeptConsultationTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final Vocabulary VOCABULARY = ADVISOR.vocabulary();

  private static final int SITUATIONS = Integer.getInteger("insidelift.situations", 400);

  @TempDir private Path folder;

  @Test
  void readingsThatDifferAreNotEqualBecauseTheLookSaidSo() {
    Session session = new Session(ADVISOR);
    session.answer("readings", "equal");
    session.note(session.situation().kart().with(new Sides(Degrees.ZERO, Degrees.of(1)), null));
    assertThat(session.situation().answer("readings")).contains("differ");
  }

  @Test
  void aKartWithGearsIsOfHighPower() {
    Session session = new Session(ADVISOR);
    session.answer("power", "mid");
    session.answer("gearbox", "gears");
    assertThat(session.situation().answer("power")).contains("high");
    session.answer("power", "low");
    assertThat(session.situation().answer("power")).contains("high");
  }

  @Test
  void whateverIsAnsweredCanBeRead() throws Exception {
    long seed = Long.getLong("insidelift.seed", 20);
    Random random = new Random(seed);
    for (int i = 0; i < 2_000; i++) {
      Session session = new Session(ADVISOR);
      for (int step = 0; step < 25; step++) {
        answer(session, random);
      }
      String file = new CaseWriter(VOCABULARY).write(session.situation());
      assertThat(new CaseReader(VOCABULARY).read(file).answers())
          .as("seed %d, dialogue %d: %s", seed, i, file)
          .isEqualTo(session.situation().answers());
    }
  }

  /** An answer tried on a copy, or the same answer written into the file: the same advice. */
  @Test
  void whatIfEqualsTheEditedCase() throws Exception {
    long seed = Long.getLong("insidelift.seed", 8);
    Random random = new Random(seed);
    ObjectMapper mapper = new ObjectMapper();
    int compared = 0;
    for (int i = 0; i < SITUATIONS; i++) {
      Session session = new Session(ADVISOR);
      for (int step = 0; step < 12; step++) {
        answer(session, random);
      }
      Question question =
          i % 4 == 0
              ? VOCABULARY.question("gearbox").orElseThrow()
              : VOCABULARY.questions().get(random.nextInt(VOCABULARY.questions().size()));
      if (question.numberOnly()) {
        continue;
      }
      String value = question.values().get(random.nextInt(question.values().size())).id();
      ObjectNode file =
          (ObjectNode) mapper.readTree(new CaseWriter(VOCABULARY).write(session.situation()));
      ObjectNode answers = (ObjectNode) file.get("answers");
      if (question.number() != null) {
        answers.remove(question.number().key());
      }
      answers.put(question.id(), value);
      Situation edited;
      try {
        edited = new CaseReader(VOCABULARY).read(file.toString());
      } catch (CaseProblem e) {
        // Contradicts another answer: a file is refused where a dialogue settles it.
        continue;
      }
      compared++;
      assertThat(AdviceJson.of(session.explain().whatIf(Map.of(question.id(), value)).after()))
          .as("seed %d, situation %d: %s=%s in %s", seed, i, question.id(), value, file)
          .isEqualTo(AdviceJson.of(ADVISOR.advise(edited)));
    }
    assertThat(compared).isGreaterThan(SITUATIONS / 2);
  }

  @Test
  void theOrderOfTheKeysChangesNothing() throws Exception {
    Random random = new Random(3);
    ObjectMapper mapper = new ObjectMapper();
    for (int i = 0; i < 200; i++) {
      Session session = new Session(ADVISOR);
      for (int step = 0; step < 20; step++) {
        answer(session, random);
      }
      ObjectNode file =
          (ObjectNode) mapper.readTree(new CaseWriter(VOCABULARY).write(session.situation()));
      String before = file.toString();
      ObjectNode answers = (ObjectNode) file.get("answers");
      List<String> keys = new ArrayList<>();
      answers.fieldNames().forEachRemaining(keys::add);
      Collections.shuffle(keys, random);
      ObjectNode shuffled = mapper.createObjectNode();
      keys.forEach(key -> shuffled.set(key, answers.get(key)));
      file.set("answers", shuffled);
      assertThat(AdviceJson.of(ADVISOR.advise(new CaseReader(VOCABULARY).read(file.toString()))))
          .as(file.toString())
          .isEqualTo(AdviceJson.of(ADVISOR.advise(new CaseReader(VOCABULARY).read(before))));
    }
  }

  @Test
  void aSecondConsultationIsNotKeptWhileTheFirstIsRunning() throws Exception {
    Situation dry = Situation.UNKNOWN.with("water", "dry");
    try (SavedConsultation second = new SavedConsultation(folder, VOCABULARY)) {
      try (SavedConsultation first = new SavedConsultation(folder, VOCABULARY)) {
        assertThat(first.claimed()).isTrue();
        first.keep(dry);
        assertThat(second.claimed()).isFalse();
        assertThatThrownBy(() -> second.keep(Situation.UNKNOWN)).isInstanceOf(IOException.class);
      }
      assertThat(second.claimed()).isTrue();
      assertThat(second.unfinished().orElseThrow().situation()).isEqualTo(dry);
    }
  }

  @Test
  void whatIsKeptIsForItsOwnerAlone() throws Exception {
    try (SavedConsultation saved = new SavedConsultation(folder.resolve("own"), VOCABULARY)) {
      saved.keep(Situation.UNKNOWN);
    }
    Path own = folder.resolve("own");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(own)))
        .isEqualTo("rwx------");
    Path open = own.resolve("open-consultation.json");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(open)))
        .isEqualTo("rw-------");
  }

  private static void answer(Session session, Random random) {
    List<Question> questions = VOCABULARY.questions();
    Question question = questions.get(random.nextInt(questions.size()));
    int kind = random.nextInt(10);
    if (kind == 0) {
      Sides sides = new Sides(Degrees.of(random.nextInt(5) - 2), Degrees.of(random.nextInt(5) - 2));
      session.note(session.situation().kart().with(sides, sides));
    } else if (kind == 1) {
      session.back();
    } else if (question.number() != null && (kind < 5 || question.numberOnly())) {
      session.answer(question, question.number().min() + random.nextInt(30));
    } else {
      session.answer(
          question.id(), question.values().get(random.nextInt(question.values().size())).id());
    }
  }

  @Test
  void aFileThatCannotBeReadIsPutAsideAndNotWrittenOver() throws Exception {
    Path open = folder.resolve("open-consultation.json");
    Files.writeString(open, "{\"schema\": 99}");
    SavedConsultation saved = new SavedConsultation(folder, VOCABULARY);

    assertThat(saved.unfinished()).isEmpty();

    assertThat(saved.aside()).matches("open-consultation-\\d{8}-\\d{6}\\.json");
    assertThat(folder.resolve(saved.aside())).hasContent("{\"schema\": 99}");
    assertThat(open).doesNotExist();
    assertThat(new SavedConsultation(folder, VOCABULARY).unfinished()).isEmpty();
  }
}
