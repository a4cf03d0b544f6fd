package org.hoopwright.patterns.json;

import java.util.List;
import org.hoopwright.finding.Place;

/** A JSON value and where it stands. */
public sealed interface JsonNode {

  /** From the value's first character to just past its last. */
  Place place();

  /** What kind of value it is, for messages, such as {@code a text}. */
  String kind();

  /** A value that holds others. */
  sealed interface Container extends JsonNode {
    /** The place of the opening bracket alone. */
    Place open();

    /** Whether its end was read; if not, more members may have been meant. */
    boolean complete();
  }

  /**
   * An object.
   *
   * @param members in the order of the text; a name may stand twice
   */
  record ObjectNode(Place place, Place open, List<Member> members, boolean complete)
      implements Container {
    /** Copies the list. */
    public ObjectNode {
      members = List.copyOf(members);
    }

    @Override
    public String kind() {
      return "an object";
    }
  }

  /**
   * A member of an object.
   *
   * @param name its name
   * @param key the place of the name, quotes included
   * @param value its value
   */
  record Member(String name, Place key, JsonNode value) {}

  /** A list. */
  record ArrayNode(Place place, Place open, List<JsonNode> items, boolean complete)
      implements Container {
    /** Copies the list. */
    public ArrayNode {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /**
   * A text.
   *
   * @param text without quotes and escapes
   */
  record TextNode(Place place, String text) implements JsonNode {
    @Override
    public String kind() {
      return "a text";
    }
  }

  /**
   * A number.
   *
   * @param raw as written; it may be of any length
   */
  record NumberNode(Place place, String raw) implements JsonNode {
    @Override
    public String kind() {
      return "a number";
    }
  }

  /** {@code true} or {@code false}. */
  record BooleanNode(Place place, boolean value) implements JsonNode {
    @Override
    public String kind() {
      return value ? "true" : "false";
    }
  }

  /** {@code null}. */
  record NullNode(Place place) implements JsonNode {
    @Override
    public String kind() {
      return "null";
    }
  }
}
