package insidelift.console.fuzz;

import insidelift.console.asking.TypedWords;
import insidelift.engine.speech.Heard;
import insidelift.shared.Vocabulary;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What is typed into a line. */
final class GivenWords {

  private GivenWords() {}

  static void sentence(byte[] bytes) {
    Heard heard = Heard.hear(new String(bytes, StandardCharsets.UTF_8));
    Vocabulary vocabulary = Target.advisor().vocabulary();
    for (Heard.Proposal proposal : heard.proposed()) {
      if (vocabulary
          .question(proposal.question())
          .flatMap(question -> question.value(proposal.value()))
          .isEmpty()) {
        throw new AssertionError("no such answer: " + proposal);
      }
      Shown.line(proposal.words());
    }
    heard.leftOut().forEach(left -> Shown.lines(List.of(left.words(), left.why())));
  }

  static void typed(byte[] bytes) {
    TypedWords.refusals(new String(bytes, StandardCharsets.UTF_8)).forEach(Shown::message);
  }
}
