package org.hoopwright.patterns.json;

import static org.hoopwright.finding.FindingCode.JSON_EMPTY;
import static org.hoopwright.finding.FindingCode.JSON_LIMIT;
import static org.hoopwright.finding.FindingCode.JSON_SYNTAX;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.BooleanNode;
import org.hoopwright.patterns.json.JsonNode.Member;
import org.hoopwright.patterns.json.JsonNode.NullNode;
import org.hoopwright.patterns.json.JsonNode.NumberNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonNode.TextNode;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * A JSON text as a tree of values with places, read in one pass. {@code //} and {@code /* *}{@code
 * /} comments are allowed.
 *
 * <p>Reading stops at the first fault of the text; what stood before it is in the tree all the
 * same, the values that were still open marked as not complete. Time and memory are linear in the
 * text, whatever it holds: depth, tokens and entries are limited, and no number is turned into a
 * value here.
 *
 * @param root the outermost value, as far as it was read; empty when there is none
 * @param flaw why reading stopped; empty when the whole text is JSON
 */
public record JsonTree(Optional<JsonNode> root, Optional<Finding> flaw) {

  /** The deepest nesting that is read. */
  public static final int MAX_DEPTH = 32;

  /** The most tokens (brackets, names and values) that are read. */
  public static final int MAX_TOKENS = 200_000;

  /**
   * The most members of one object, and entries of one list, that are read: no frame has more
   * holes.
   */
  public static final int MAX_ENTRIES = 2_000;

  // Depth, tokens and entries are counted here, where their places are known; lengths of texts and
  // numbers
  // are the reader's business. Names are not kept in a shared table, which hostile names could
  // slow down.
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
          .disable(TokenStreamFactory.Feature.INTERN_PROPERTY_NAMES)
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MAX_DEPTH + 2)
                  .maxTokenCount(MAX_TOKENS + 2)
                  .maxNameLength(Integer.MAX_VALUE)
                  .maxStringLength(Integer.MAX_VALUE)
                  .maxNumberLength(Integer.MAX_VALUE)
                  .build())
          .build();

  /** Reads a text without byte order mark. */
  public static JsonTree parse(String text) {
    return new Builder(text).run();
  }

  /** An object or list whose end has not been read. */
  private static final class Open {
    final int offset;
    final boolean object;
    final List<Member> members = new ArrayList<>();
    final List<JsonNode> items = new ArrayList<>();
    @Nullable String name;
    @Nullable Stretch key;

    Open(int offset, boolean object) {
      this.offset = offset;
      this.object = object;
    }

    /** Whether this token begins an entry more than may be. */
    boolean isFullFor(JsonToken token) {
      return object
          ? token == JsonToken.PROPERTY_NAME && members.size() == MAX_ENTRIES
          : token != JsonToken.END_ARRAY && items.size() == MAX_ENTRIES;
    }
  }

  private static final class Builder {
    private final String text;
    private final TextLines lines;
    private final Deque<Open> stack = new ArrayDeque<>();
    private @Nullable JsonNode root;
    private int tokens;

    Builder(String text) {
      this.text = text;
      this.lines = new TextLines(text);
    }

    JsonTree run() {
      Optional<Finding> flaw = read();
      if (flaw.isPresent()) {
        doubtTheLast();
      }
      while (!stack.isEmpty()) {
        close(text.length(), false);
      }
      return new JsonTree(Optional.ofNullable(root), flaw);
    }

    /**
     * A number right before a fault may be the start of what was meant, so it is dropped; and more
     * may have been meant to belong to an outermost object with something behind its end.
     */
    private void doubtTheLast() {
      Open open = stack.peek();
      if (root instanceof ObjectNode o) {
        root = new ObjectNode(o.stretch(), o.members(), false);
      } else if (open != null && open.object && !open.members.isEmpty()) {
        int last = open.members.size() - 1;
        if (open.members.get(last).value() instanceof NumberNode) {
          open.members.remove(last);
        }
      } else if (open != null && !open.items.isEmpty()) {
        int last = open.items.size() - 1;
        if (open.items.get(last) instanceof NumberNode) {
          open.items.remove(last);
        }
      }
    }

    private Optional<Finding> read() {
      try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
        for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
          int offset = (int) parser.currentTokenLocation().getCharOffset();
          if (root != null) {
            return Optional.of(syntax());
          }
          if (++tokens > MAX_TOKENS) {
            return Optional.of(tooManyTokens(offset));
          }
          boolean opens = token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY;
          if (opens && stack.size() == MAX_DEPTH) {
            return Optional.of(tooDeep(offset));
          }
          if (!stack.isEmpty() && stack.element().isFullFor(token)) {
            return Optional.of(tooManyEntries(offset));
          }
          take(parser, token, offset);
        }
      } catch (JacksonException e) {
        return Optional.of(syntax());
      }
      return root == null ? Optional.of(syntax()) : Optional.empty();
    }

    private void take(JsonParser parser, JsonToken token, int offset) {
      switch (token) {
        case START_OBJECT -> stack.push(new Open(offset, true));
        case START_ARRAY -> stack.push(new Open(offset, false));
        case END_OBJECT, END_ARRAY -> close(offset + 1, true);
        case PROPERTY_NAME -> {
          Open open = stack.element();
          open.name = parser.currentName();
          open.key = stretch(offset, endOfText(offset));
        }
        case VALUE_STRING -> {
          String value = parser.getString();
          add(new TextNode(stretch(offset, endOfText(offset)), value));
        }
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
          // What follows it need not end it: in 19- the number is 19, and the fault comes next.
          String raw = parser.getString();
          add(new NumberNode(stretch(offset, offset + raw.length()), raw));
        }
        case VALUE_TRUE -> add(new BooleanNode(stretch(offset, offset + 4), true));
        case VALUE_FALSE -> add(new BooleanNode(stretch(offset, offset + 5), false));
        case VALUE_NULL -> add(new NullNode(stretch(offset, offset + 4)));
        default -> throw new IllegalStateException("No JSON text has the token " + token + ".");
      }
    }

    private void close(int end, boolean complete) {
      Open open = stack.pop();
      Stretch whole = stretch(open.offset, Math.max(end, open.offset + 1));
      add(
          open.object
              ? new ObjectNode(whole, open.members, complete)
              : new ArrayNode(whole, open.items, complete));
    }

    private Stretch stretch(int from, int to) {
      return new Stretch(lines, from, to);
    }

    private void add(JsonNode node) {
      Open open = stack.peek();
      if (open == null) {
        root = node;
      } else if (!open.object) {
        open.items.add(node);
      } else if (open.name != null && open.key != null) {
        open.members.add(new Member(open.name, open.key, node));
      }
    }

    private int endOfText(int offset) {
      int i = offset + 1;
      while (text.charAt(i) != '"') {
        i += text.charAt(i) == '\\' ? 2 : 1;
      }
      return i + 1;
    }

    private Finding syntax() {
      SyntaxFault fault =
          SyntaxFault.find(text)
              .orElseGet(() -> new SyntaxFault(0, 0, "The text is not JSON.", "Write it as JSON."));
      if (fault.empty()) {
        return finding(JSON_EMPTY, fault.from(), fault.to(), fault.message(), fault.fix());
      }
      String message = fault.message();
      if (fault.opener() >= 0) {
        message =
            "The text ends before the %s of line %s, column %s is closed."
                .formatted(
                    text.charAt(fault.opener()),
                    lines.lineAt(fault.opener()),
                    lines.columnAt(fault.opener()));
      }
      return finding(JSON_SYNTAX, fault.from(), fault.to(), message, fault.fix());
    }

    private Finding tooDeep(int offset) {
      return finding(
          JSON_LIMIT,
          offset,
          offset + 1,
          "Objects and lists stand more than %s deep in each other.".formatted(MAX_DEPTH),
          "A layout needs no more than 5 levels; check the brackets.");
    }

    private Finding tooManyEntries(int offset) {
      return finding(
          JSON_LIMIT,
          offset,
          offset + 1,
          "More than %s entries stand in one list or object.".formatted(MAX_ENTRIES),
          "No frame has so many holes; leave out what does not belong to the layout.");
    }

    private Finding tooManyTokens(int offset) {
      return finding(
          JSON_LIMIT,
          offset,
          offset + 1,
          "The text holds more than %s names, values and brackets.".formatted(MAX_TOKENS),
          "Leave out what does not belong to the layout.");
    }

    private Finding finding(FindingCode code, int from, int to, String message, String fix) {
      return Finding.of(code)
          .message(message)
          .at(pointer(), lines.place(from, to))
          .fix(fix)
          .build();
    }

    /** Pointer of the innermost value that is open. */
    private String pointer() {
      StringBuilder pointer = new StringBuilder();
      List<Open> outside = new ArrayList<>(stack);
      for (int i = outside.size() - 1; i > 0; i--) {
        Open open = outside.get(i);
        pointer.append('/');
        pointer.append(
            open.object && open.name != null ? Pointers.escape(open.name) : open.items.size());
      }
      return pointer.toString();
    }
  }
}
