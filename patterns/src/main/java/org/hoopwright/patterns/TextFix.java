package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.finding.Place;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.Member;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonText;
import org.hoopwright.patterns.json.JsonTree;
import org.hoopwright.patterns.json.TextLines;

/**
 * Carries out the mechanical fixes of findings on the text of a file. Everything else in the text
 * stays as it is, comments and blanks included; a step that would take a comment away is refused.
 */
final class TextFix {

  private final String text;
  private final TextLines lines;

  /** A stretch of text and what comes in its place. */
  private record Edit(int from, int to, String put) {}

  private TextFix(String text) {
    this.text = text;
    lines = new TextLines(text);
  }

  /**
   * The text with a finding's fix carried out.
   *
   * @return empty when it has none, or when it would take a comment away or no longer fits the text
   */
  static Optional<String> apply(String text, Finding finding) {
    String now = text;
    for (PatchStep step : finding.patch()) {
      Optional<String> next = new TextFix(now).step(step);
      if (next.isEmpty()) {
        return next;
      }
      now = next.get();
    }
    return finding.patch().isEmpty() ? Optional.empty() : Optional.of(now);
  }

  private Optional<String> step(PatchStep step) {
    JsonTree tree = JsonTree.parse(text);
    if (tree.flaw().isPresent() || tree.root().isEmpty()) {
      return Optional.empty();
    }
    Optional<Edit> edit =
        switch (step.op()) {
          case REPLACE ->
              find(tree.root().get(), step.path()).map(n -> edit(n.place(), step.value()));
          case MOVE -> rename(tree.root().get(), step.from(), step.path());
          case REMOVE -> remove(tree.root().get(), step.path());
        };
    return edit.filter(e -> !holdsComment(text.substring(e.from(), e.to())))
        .map(e -> text.substring(0, e.from()) + e.put() + text.substring(e.to()));
  }

  private Edit edit(Place place, String put) {
    return new Edit(start(place), end(place), put);
  }

  private int start(Place place) {
    return lines.start(place.line()) + place.column() - 1;
  }

  private int end(Place place) {
    return lines.start(place.endLine()) + place.endColumn() - 1;
  }

  private static String parent(String pointer) {
    return pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
  }

  private static String last(String pointer) {
    return pointer.substring(pointer.lastIndexOf('/') + 1).replace("~1", "/").replace("~0", "~");
  }

  private static Optional<JsonNode> find(JsonNode root, String pointer) {
    if (pointer.isEmpty()) {
      return Optional.of(root);
    }
    String name = last(pointer);
    return find(root, parent(pointer))
        .flatMap(
            node -> {
              if (node instanceof ObjectNode o) {
                return member(o, name).map(Member::value);
              }
              return node instanceof ArrayNode a
                  ? index(a, name).map(a.items()::get)
                  : Optional.empty();
            });
  }

  private static Optional<Member> member(ObjectNode object, String name) {
    return object.members().stream().filter(m -> m.name().equals(name)).findFirst();
  }

  private static Optional<Integer> index(ArrayNode list, String name) {
    return name.matches("[0-9]{1,6}") && Integer.parseInt(name) < list.items().size()
        ? Optional.of(Integer.parseInt(name))
        : Optional.empty();
  }

  private Optional<Edit> rename(JsonNode root, String from, String to) {
    if (!parent(from).equals(parent(to))) {
      return Optional.empty();
    }
    return find(root, parent(from))
        .filter(n -> n instanceof ObjectNode)
        .map(n -> (ObjectNode) n)
        .filter(o -> member(o, last(to)).isEmpty())
        .flatMap(o -> member(o, last(from)))
        .map(m -> edit(m.key(), JsonText.quote(last(to))));
  }

  private Optional<Edit> remove(JsonNode root, String pointer) {
    Optional<JsonNode> holder = pointer.isEmpty() ? Optional.empty() : find(root, parent(pointer));
    List<int[]> stretches = new ArrayList<>();
    int at = -1;
    if (holder.isPresent() && holder.get() instanceof ObjectNode o) {
      for (Member m : o.members()) {
        at = at < 0 && m.name().equals(last(pointer)) ? stretches.size() : at;
        stretches.add(new int[] {start(m.key()), end(m.value().place())});
      }
    } else if (holder.isPresent() && holder.get() instanceof ArrayNode a) {
      at = index(a, last(pointer)).orElse(-1);
      a.items().forEach(i -> stretches.add(new int[] {start(i.place()), end(i.place())}));
    }
    if (at < 0) {
      return Optional.empty();
    }
    int[] own = stretches.get(at);
    if (at + 1 < stretches.size()) {
      return Optional.of(new Edit(own[0], stretches.get(at + 1)[0], ""));
    }
    return Optional.of(new Edit(at > 0 ? stretches.get(at - 1)[1] : own[0], own[1], ""));
  }

  /** Whether a stretch between tokens holds a comment; texts in quotes do not count. */
  private static boolean holdsComment(String stretch) {
    String bare = stretch.replaceAll("\"(\\\\.|[^\"\\\\])*\"", "");
    return bare.contains("//") || bare.contains("/*");
  }
}
