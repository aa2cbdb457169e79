package insidelift.console.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.AutoComplete;

class ManPageTest {

  private static final List<String> PAGE = ManPage.of(Insidelift.commandLine());

  @TempDir private Path folder;

  @Test
  void it_names_every_verb_that_help_names_and_no_hidden_one() {
    assertThat(PAGE).contains(".SS advise", ".SS card", ".SS demo", ".SS notes", ".SS prove");
    assertThat(PAGE).doesNotContain(".SS rehearse", ".SS manual");
    assertThat(PAGE.get(0)).startsWith(".TH INSIDELIFT 1 ");
    assertThat(PAGE)
        .containsSequence(
            ".SH NAME",
            "insidelift \\- An advisor for the front end of a"
                + " racing kart: what to change, and why.");
  }

  @Test
  void options_and_exit_codes_are_told_with_their_words() {
    assertThat(PAGE)
        .containsSequence(".TP", ".B \\-\\-out FILE", "the file to write")
        .containsSequence(".TP", ".B 130", "left with Ctrl\\-C");
  }

  @Test
  void the_formatter_of_the_system_finds_nothing_to_warn_of()
      throws IOException, InterruptedException {
    Path groff = Path.of("/usr/bin/groff");
    assumeTrue(Files.isExecutable(groff), "no groff on this machine");
    Path page = Files.write(folder.resolve("insidelift.1"), PAGE);
    Process process =
        new ProcessBuilder(groff.toString(), "-man", "-Tutf8", "-ww", "-z", page.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isZero();
    assertThat(said).isEmpty();
  }

  @Test
  void bash_takes_the_completion_script() throws IOException, InterruptedException {
    Path bash = Path.of("/bin/bash");
    assumeTrue(Files.isExecutable(bash), "no bash on this machine");
    Path script = folder.resolve("insidelift.bash");
    Files.writeString(script, AutoComplete.bash("insidelift", Insidelift.commandLine()));
    Process process =
        new ProcessBuilder(
                bash.toString(),
                "-c",
                "source "
                    + script
                    + "; COMP_WORDS=(insidelift ca); COMP_CWORD=1; COMP_LINE='insidelift ca';"
                    + " _complete_insidelift; echo ${COMPREPLY[@]}")
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(said.strip().split("\\s+")).contains("card");
  }
}
