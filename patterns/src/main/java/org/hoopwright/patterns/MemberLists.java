package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.FORMAT_VERSION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.Shown;

/** Members that more than one of the smaller formats has: a format, lists, closed sets of words. */
final class MemberLists {

  private final Values values;

  MemberLists(Values values) {
    this.values = values;
  }

  /** One value at its pointer. */
  interface One<T> {
    Optional<T> read(JsonNode node, String pointer);
  }

  /** The member {@code format}, which must be this one. */
  void format(MemberReader m, String format) {
    m.need("format")
        .flatMap(n -> values.text(n, "/format", "format").filter(t -> !t.equals(format)))
        .ifPresent(
            t ->
                values.wrong(
                    FORMAT_VERSION,
                    m.find("format").orElseThrow().place(),
                    "/format",
                    "The file is of format %s, and only %s can be read."
                        .formatted(Shown.quoted(t), Shown.quoted(format)),
                    "Write \"" + format + "\"."));
  }

  /** A list that may be left out; entries that are wrong are left out of it. */
  <T> List<T> each(MemberReader m, String name, One<T> one) {
    String pointer = m.pointer(name);
    Function<ArrayNode, List<T>> read =
        list -> {
          List<T> all = new ArrayList<>();
          for (int i = 0; i < list.items().size(); i++) {
            one.read(list.items().get(i), Pointers.to(pointer, i)).ifPresent(all::add);
          }
          return all;
        };
    return m.find(name)
        .flatMap(n -> values.list(n, pointer, name, "them"))
        .map(read)
        .orElse(List.of());
  }

  /** A member that is needed and is one of a closed set of words. */
  <T> Optional<T> one(MemberReader m, String name, T[] all, Function<T, String> word) {
    return m.need(name).flatMap(n -> one(n, m.pointer(name), name, all, word));
  }

  /** A value that is one of a closed set of words. */
  <T> Optional<T> one(
      JsonNode node, String pointer, String title, T[] all, Function<T, String> word) {
    return values
        .word(node, pointer, title, Arrays.stream(all).map(word).toList())
        .flatMap(w -> Arrays.stream(all).filter(t -> word.apply(t).equals(w)).findFirst());
  }
}
