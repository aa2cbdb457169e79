package insidelift.console.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.report.AdviceText.Part;
import insidelift.console.terminal.Leaves.Page;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LeavesTest {

  @Test
  void everyPartOpensAPageOfItsOwn() {
    List<Part> parts = List.of(new Part("Why", List.of("  a")), new Part("Care", List.of("  b")));
    assertThat(Leaves.pages(parts, 20))
        .containsExactly(new Page("Why", List.of("  a")), new Page("Care", List.of("  b")));
  }

  @Test
  void noPageIsLongerThanItsRoomAndNoLineIsLost() {
    List<String> lines = IntStream.range(0, 100).mapToObj(i -> "    line " + i).toList();
    for (int room = 5; room < 110; room++) {
      List<Page> pages = Leaves.pages(List.of(new Part("Why", lines)), room);
      int most = room;
      assertThat(pages).allMatch(page -> page.lines().size() <= most);
      assertThat(pages.stream().flatMap(page -> page.lines().stream())).isEqualTo(lines);
    }
  }

  @Test
  void aPageEndsWhereSomethingNewBegins() {
    List<String> lines =
        Stream.of("  ! One", "    more", "    more", "  ! Two", "    more", "    more").toList();
    assertThat(Leaves.pages(List.of(new Part("Care", lines)), 5))
        .containsExactly(
            new Page("Care", lines.subList(0, 3)),
            new Page("Care (continued)", lines.subList(3, 6)));
  }

  @Test
  void aHeadingIsNotLeftAloneAtTheFoot() {
    List<String> lines =
        List.of("  One", "    more", "    more", "", "caster", "  Two", "    more");
    assertThat(Leaves.pages(List.of(new Part("Why", lines)), 5))
        .extracting(Page::lines)
        .last()
        .isEqualTo(List.of("caster", "  Two", "    more"));
  }

  @Test
  void aPageDoesNotOpenWithABlankLine() {
    List<String> lines = List.of("  One", "    more", "    more", "    more", "", "  Two");
    assertThat(Leaves.pages(List.of(new Part("Why", lines)), 5))
        .noneMatch(page -> page.lines().get(0).isEmpty());
  }
}
