package insidelift.engine.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NoteSearchTest {

  private final NoteSearch search = new NoteSearch(NoteBook.open());

  private List<String> found(String... words) {
    return search.find(List.of(words)).stream().map(Note::id).toList();
  }

  @Test
  void oneWordFindsWhatIsTitledSoBeforeWhatMentionsIt() {
    assertThat(found("camber")).hasSizeGreaterThan(20).contains("camber-positive", "by-phase");
    assertThat(found("camber").indexOf("camber-positive"))
        .isLessThan(found("camber").indexOf("eccentric"));
  }

  @Test
  void endingsAndCapitalsDoNotMatter() {
    assertThat(found("Kingpins")).isEqualTo(found("kingpin"));
    assertThat(found("lifting")).isEqualTo(found("lift"));
  }

  @Test
  void allWordsMustBeThere() {
    assertThat(found("camber", "rain")).isNotEmpty().allMatch(id -> found("rain").contains(id));
    assertThat(found("camber", "gearbox", "rain", "brake")).isEmpty();
  }

  @Test
  void aWordThatIsNowhereFindsNothing() {
    assertThat(found("differentials-of-a-lorry")).isEmpty();
    assertThat(found("...")).isEmpty();
    assertThat(found("cam")).isEmpty();
  }
}
