package insidelift.shared.casefile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/**
 * Writes JSON in printable ASCII: exact, and yet nothing in it can move a cursor, turn the reading
 * direction or be spoilt by a terminal or pipe of another encoding.
 */
public final class JsonOutput {

  /** Something that writes itself. */
  @FunctionalInterface
  public interface Writing {
    /** Writes one JSON value. */
    void to(JsonGenerator out) throws IOException;
  }

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  /** Made only where a value cannot write itself: data binding is slow to start. */
  private static final class Binding {
    static final JsonMapper MAPPER =
        JsonMapper.builder(FACTORY).enable(SerializationFeature.INDENT_OUTPUT).build();
  }

  /** The one control character that RFC 8259 lets stand in a text as it is. */
  private static final String DELETE = "\u007f";

  private JsonOutput() {}

  /**
   * A value as indented JSON.
   *
   * @throws IllegalStateException if the value is no plain record, list, word or number
   */
  public static String pretty(Object value) {
    try {
      return printable(Binding.MAPPER.writeValueAsString(value));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what is written is plain words and numbers", e);
    }
  }

  /** What writes itself, as the same indented JSON. */
  public static String written(Writing writing) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.setPrettyPrinter(new DefaultPrettyPrinter());
      writing.to(out);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can be written", e);
    }
    return printable(text.toString());
  }

  private static String printable(String json) {
    return json.replace(DELETE, "\\u007F");
  }
}
