package insidelift.shared;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An object of a JSON file that this build ships, token by token. Both files that are read at every
 * start are read this way: data binding is three hundred classes more before the first question.
 * Whatever comes from outside is read by {@link insidelift.shared.casefile.JsonInput} instead.
 */
public final class ShippedJson {

  private final Map<String, Object> fields;

  private ShippedJson(Map<String, Object> fields) {
    this.fields = fields;
  }

  /**
   * The object in a resource.
   *
   * @throws IllegalStateException if there is no such resource
   * @throws UncheckedIOException if it cannot be read or is no JSON object
   */
  public static ShippedJson read(Class<?> beside, String resource) {
    try (InputStream in = beside.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("this build holds no \"" + resource + "\": build it again");
      }
      return read(in);
    } catch (IOException e) {
      throw new UncheckedIOException("\"" + resource + "\" of this build cannot be read", e);
    }
  }

  /**
   * The object in a stream.
   *
   * @throws IOException if it cannot be read or is no JSON object
   */
  public static ShippedJson read(InputStream in) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(in)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new IOException("no object");
      }
      return new ShippedJson(object(parser));
    }
  }

  private static Map<String, Object> object(JsonParser parser) throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (String name = parser.nextFieldName(); name != null; name = parser.nextFieldName()) {
      parser.nextToken();
      fields.put(name, value(parser));
    }
    return fields;
  }

  private static Object value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> new ShippedJson(object(parser));
      case START_ARRAY -> {
        List<Object> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          items.add(value(parser));
        }
        yield items;
      }
      case VALUE_STRING -> parser.getText();
      case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      default -> throw new IOException("no value at " + parser.currentLocation());
    };
  }

  /** Whether there is a field of that name. */
  public boolean has(String name) {
    return fields.containsKey(name);
  }

  /** A text; null where there is no such field. */
  public String text(String name) {
    return (String) fields.get(name);
  }

  /** A number; null where there is no such field. */
  public Double number(String name) {
    return (Double) fields.get(name);
  }

  /** Whether a field is true; one that is not there is not. */
  public boolean flag(String name) {
    return Boolean.TRUE.equals(fields.get(name));
  }

  /** An object; null where there is no such field. */
  public ShippedJson at(String name) {
    return (ShippedJson) fields.get(name);
  }

  /** The objects of a list. */
  public List<ShippedJson> objects(String name) {
    return list(name).stream().map(ShippedJson.class::cast).toList();
  }

  /** The texts of a list. */
  public List<String> texts(String name) {
    return list(name).stream().map(String.class::cast).toList();
  }

  private List<?> list(String name) {
    return (List<?>) fields.get(name);
  }
}
