package org.hoopwright.patterns.json;

import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Place;

/** A JSON value and where it stands. */
public sealed interface JsonNode {

  /** From the value's first character to just past its last. */
  Stretch stretch();

  /** Where its stretch is. */
  default Place place() {
    return stretch().place();
  }

  /** What kind of value it is, for messages, such as {@code a text}. */
  String kind();

  /** A value that holds others. */
  sealed interface Container extends JsonNode {
    /** The place of the opening bracket alone. */
    default Place open() {
      return stretch().first().place();
    }

    /** Whether its end was read; if not, more members may have been meant. */
    boolean complete();
  }

  /**
   * An object.
   *
   * @param members in the order of the text; a name may stand twice
   */
  record ObjectNode(Stretch stretch, List<Member> members, boolean complete) implements Container {
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
   * @param named the stretch of the name, quotes included
   * @param value its value
   */
  record Member(String name, Stretch named, JsonNode value) {
    /** Where its name stands. */
    public Place key() {
      return named.place();
    }

    /** From its name to the end of its value. */
    public Place whole() {
      return named.through(value.stretch()).place();
    }
  }

  /** A list. */
  record ArrayNode(Stretch stretch, List<JsonNode> items, boolean complete) implements Container {
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
  record TextNode(Stretch stretch, String text) implements JsonNode {
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
  record NumberNode(Stretch stretch, String raw) implements JsonNode {
    @Override
    public String kind() {
      return "a number";
    }
  }

  /** {@code true} or {@code false}. */
  record BooleanNode(Stretch stretch, boolean value) implements JsonNode {
    @Override
    public String kind() {
      return value ? "true" : "false";
    }
  }

  /** {@code null}. */
  record NullNode(Stretch stretch) implements JsonNode {
    @Override
    public String kind() {
      return "null";
    }
  }

  /**
   * The value at a JSON pointer within this one: of a member stated twice the first.
   *
   * @param pointer such as {@code /mains/skip/0}; the empty text is this value
   * @return the member or item with its value; empty when there is none
   */
  default Optional<Found> find(String pointer) {
    Found found = new Found(Optional.empty(), this);
    for (int from = 0; from < pointer.length(); ) {
      int end = pointer.indexOf('/', from + 1);
      String step = pointer.substring(from + 1, end < 0 ? pointer.length() : end);
      Optional<Found> next = found.value().step(step);
      if (next.isEmpty()) {
        return next;
      }
      found = next.get();
      from = end < 0 ? pointer.length() : end;
    }
    return Optional.of(found);
  }

  private Optional<Found> step(String step) {
    if (this instanceof ArrayNode list) {
      int index = Pointers.index(step);
      return index >= 0 && index < list.items().size()
          ? Optional.of(new Found(Optional.empty(), list.items().get(index)))
          : Optional.empty();
    }
    if (this instanceof ObjectNode object) {
      String name = Pointers.unescape(step);
      for (Member member : object.members()) {
        if (member.name().equals(name)) {
          return Optional.of(new Found(Optional.of(member), member.value()));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * What a pointer leads to.
   *
   * @param member the member whose value it is; empty for an item of a list and the root
   * @param value the value
   */
  record Found(Optional<Member> member, JsonNode value) {}
}
