package insidelift.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class NamedTest {

  private static <E extends Enum<E> & Named> List<String> ids(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Named::id).toList();
  }

  @Test
  void theFixedWordsAreThoseOfTheFiles() {
    assertThat(ids(Lever.class)).containsExactly("camber", "caster");
    assertThat(ids(Direction.class)).containsExactly("more", "less", "hold");
    assertThat(ids(Kind.class)).containsExactly("target", "restore", "undo", "correction");
    assertThat(ids(Status.class)).containsExactly("fix-first", "change", "hold", "not-enough");
    assertThat(ids(CheckKind.class)).containsExactly("stop", "fault", "set-first", "look");
    assertThat(ids(Scope.class)).containsExactly("all", "restore", "move");
  }

  @Test
  void aWordFindsItsConstant() {
    assertThat(Named.of(Lever.class, "caster")).isEqualTo(Lever.CASTER);
  }

  @Test
  void anUnknownWordIsRefusedWithTheLegalOnes() {
    assertThatThrownBy(() -> Named.of(Direction.class, "up"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("\"up\" is not one of more, less, hold");
  }

  @Test
  void jsonHasTheWordAndNotTheConstant() throws Exception {
    assertThat(JsonMapper.builder().build().writeValueAsString(Status.FIX_FIRST))
        .isEqualTo("\"fix-first\"");
  }
}
