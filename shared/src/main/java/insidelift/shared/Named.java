package insidelift.shared;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A word of the vocabulary that is fixed in code because code decides by it. */
public interface Named {

  /** The word as rules and JSON files write it. */
  String id();

  /**
   * The constant that an id names.
   *
   * @throws IllegalArgumentException if no constant of the type has that id
   */
  static <E extends Enum<E> & Named> E of(Class<E> type, String id) {
    for (E constant : type.getEnumConstants()) {
      if (constant.id().equals(id)) {
        return constant;
      }
    }
    throw new IllegalArgumentException(
        "\"%s\" is not one of %s"
            .formatted(
                id,
                Arrays.stream(type.getEnumConstants())
                    .map(Named::id)
                    .collect(Collectors.joining(", "))));
  }
}
