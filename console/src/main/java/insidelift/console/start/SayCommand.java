package insidelift.console.start;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.console.cli.UnitsOption;
import insidelift.engine.speech.Heard;
import insidelift.shared.casefile.JsonOutput;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code say SENTENCE}: a consultation that begins with what is seen or felt. */
@Command(
    name = "say",
    mixinStandardHelpOptions = true,
    header = "Begins a consultation with what you say of the kart.",
    description = {
      "",
      "For example: insidelift say \"the nose runs wide at the apex, 12 minutes left\"",
      "",
      "What was understood is read back, and counts once it is confirmed. What is denied, past, of"
          + " another kart, under a condition or not understood is left out, and it says why.",
      ""
    })
final class SayCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SENTENCE", arity = "1..*", description = "what you see or feel")
  private List<String> words;

  @Option(
      names = "--json",
      description = "print what was understood as JSON, and begin no consultation")
  private boolean json;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    String sentence = String.join(" ", words);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(JsonOutput.pretty(json(Heard.hear(sentence))));
      out.flush();
      return 0;
    }
    return Main.consult(out, spec.commandLine().getErr(), units.chosen(), Optional.of(sentence));
  }

  private static ObjectNode json(Heard heard) {
    ObjectNode all = JsonNodeFactory.instance.objectNode().put("schema", 1);
    ObjectNode answers = all.putObject("answers");
    heard.proposed().forEach(one -> answers.put(one.question(), one.value()));
    if (!heard.numbers().isEmpty()) {
      ObjectNode numbers = all.putObject("numbers");
      heard
          .numbers()
          .forEach(
              (name, values) -> {
                if (values.size() == 1) {
                  numbers.put(name, values.get(0));
                } else {
                  values.forEach(numbers.withArray("/" + name)::add);
                }
              });
    }
    heard
        .leftOut()
        .forEach(
            one ->
                all.withArray("/leftOut")
                    .addObject()
                    .put("words", one.words())
                    .put("why", one.why()));
    if (heard.leftOut().isEmpty()) {
      all.putArray("leftOut");
    }
    heard.asks().forEach(all.putArray("ask")::add);
    return all;
  }
}
