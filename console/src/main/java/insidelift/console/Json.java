package insidelift.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** How results are printed as JSON. */
final class Json {

  // Plain ASCII, so that no terminal or pipe of another encoding can spoil it.
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
          .build();

  private Json() {}

  /** Finds out beforehand how a type is written, while something else is waited for. */
  static void prepare(Class<?> type) {
    MAPPER.writerFor(type);
  }

  static String pretty(Object value) throws JsonProcessingException {
    return MAPPER.writeValueAsString(value);
  }
}
