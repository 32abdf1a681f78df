package org.setpower.registry.groups;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.util.stream.StreamSupport;

/**
 * Values in the files of checks, written in JSON: {@code ['12 AWG', 10, null, [[1, 2], [3, 4]]]}. A
 * list of lists is a range, row by row; null is an argument left out. Texts stand in single quotes,
 * as a CSV file would double the others.
 */
final class JsonValues {
  private JsonValues() {}

  /** A list of arguments. */
  static Object[] arguments(String json) {
    return each(JsonParser.parseString(json).getAsJsonArray());
  }

  /** A number, a text or a range. */
  static Object value(String json) {
    return value(JsonParser.parseString(json));
  }

  private static Object value(JsonElement element) {
    if (element.isJsonNull()) {
      return null;
    }
    if (element.isJsonArray()) {
      return StreamSupport.stream(element.getAsJsonArray().spliterator(), false)
          .map(row -> each(row.getAsJsonArray()))
          .toArray(Object[][]::new);
    }
    JsonPrimitive primitive = element.getAsJsonPrimitive();
    if (primitive.isBoolean()) {
      return primitive.getAsBoolean() ? 1.0 : 0.0;
    }
    return primitive.isNumber() ? (Object) primitive.getAsDouble() : primitive.getAsString();
  }

  private static Object[] each(JsonArray array) {
    return StreamSupport.stream(array.spliterator(), false).map(JsonValues::value).toArray();
  }
}
