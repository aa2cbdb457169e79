package insidelift.shared.situation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * Writes JSON in printable ASCII: exact, and yet nothing in it can move a cursor, turn the reading
 * direction or be spoilt by a terminal or pipe of another encoding.
 */
public final class JsonOutput {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
          .build();

  /** The one control character that RFC 8259 lets stand in a text as it is. */
  private static final String DELETE = "\u007f";

  private JsonOutput() {}

  /** Finds out beforehand how a type is written, while something else is waited for. */
  public static void prepare(Class<?> type) {
    MAPPER.writerFor(type);
  }

  /**
   * A value as indented JSON.
   *
   * @throws IllegalStateException if the value is no plain record, list, word or number
   */
  public static String pretty(Object value) {
    try {
      return MAPPER.writeValueAsString(value).replace(DELETE, "\\u007F");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what is written is plain words and numbers", e);
    }
  }
}
