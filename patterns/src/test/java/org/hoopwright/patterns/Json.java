package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/** JSON read by another's parser: objects as maps in order, lists, texts, numbers as doubles. */
public final class Json {

  private final Object value;

  private Json(Object value) {
    this.value = value;
  }

  /** The value in this text; fails unless it is JSON without doubled members. */
  public static Json parse(String text) {
    JsonFactory factory =
        JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
      Object value = read(parser, parser.nextToken());
      if (parser.nextToken() != null) {
        throw new AssertionError("text after the value");
      }
      return new Json(value);
    }
  }

  private static Object read(JsonParser parser, JsonToken token) {
    return switch (token) {
      case START_OBJECT -> {
        Map<String, Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String name = parser.currentName();
          members.put(name, read(parser, parser.nextToken()));
        }
        yield members;
      }
      case START_ARRAY -> {
        List<Object> items = new ArrayList<>();
        for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
          items.add(read(parser, t));
        }
        yield items;
      }
      case VALUE_STRING -> parser.getString();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      default -> throw new AssertionError("unexpected " + token);
    };
  }

  /** The member of this name, or the item of this index, down a path. */
  public Json at(Object... path) {
    Object here = value;
    for (Object step : path) {
      here = step instanceof Integer i ? ((List<?>) here).get(i) : ((Map<?, ?>) here).get(step);
      if (here == null) {
        throw new AssertionError("nothing at " + List.of(path));
      }
    }
    return new Json(here);
  }

  /** Whether there is a member of this name. */
  public boolean has(String name) {
    return ((Map<?, ?>) value).containsKey(name);
  }

  /** The names of the members, in order. */
  public List<String> names() {
    return ((Map<?, ?>) value).keySet().stream().map(String.class::cast).toList();
  }

  /** The items. */
  public List<Json> items() {
    return ((List<?>) value).stream().map(v -> new Json((Object) v)).toList();
  }

  /** The texts of a list. */
  public List<String> texts() {
    return items().stream().map(Json::text).toList();
  }

  /** The text. */
  public String text() {
    return (String) value;
  }

  /** The number. */
  public double number() {
    return (Double) value;
  }

  /** The value itself. */
  public Object value() {
    return value;
  }
}
