package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.DUPLICATE_MEMBER;
import static org.hoopwright.finding.FindingCode.JSON_LIMIT;
import static org.hoopwright.finding.FindingCode.MISSING_MEMBER;
import static org.hoopwright.finding.FindingCode.UNKNOWN_MEMBER;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.finding.Place;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.Member;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.Shown;

/**
 * Hands out the members of one object, and reports those that are unknown, stated twice or missing.
 * Of a member stated twice the first counts.
 */
final class MemberReader {

  /** The longest name of a member, in UTF-16 units. */
  static final int MAX_NAME_LENGTH = 200;

  private final Values values;
  private final ObjectNode node;
  private final String pointer;
  private final String title;
  private final List<Member> known = new ArrayList<>();
  private final Set<String> misspelt = new HashSet<>();

  private MemberReader(Values values, ObjectNode node, String pointer, String title) {
    this.values = values;
    this.node = node;
    this.pointer = pointer;
    this.title = title;
  }

  /**
   * The members of an object of the format.
   *
   * @param values takes the findings
   * @param pointer where the object is
   * @param title what it is called in messages
   * @param names the names it may have, at least one
   */
  static MemberReader of(
      Values values, ObjectNode node, String pointer, String title, List<String> names) {
    MemberReader reader = new MemberReader(values, node, pointer, title);
    List<Member> unknown = new ArrayList<>();
    for (Member member : reader.distinct()) {
      if (names.contains(member.name())) {
        reader.known.add(member);
      } else {
        unknown.add(member);
      }
    }
    List<String> open = names.stream().filter(n -> !reader.has(n)).toList();
    unknown.forEach(member -> reader.unknown(member, names, open));
    if (!node.complete()) {
      open.forEach(n -> values.reading().lose(reader.pointer(n)));
    }
    return reader;
  }

  /** The members of an object whose names are free; the caller judges them. */
  static MemberReader ofTable(Values values, ObjectNode node, String pointer, String title) {
    MemberReader reader = new MemberReader(values, node, pointer, title);
    reader.known.addAll(reader.distinct());
    if (!node.complete()) {
      values.reading().lose(pointer);
    }
    return reader;
  }

  private List<Member> distinct() {
    List<Member> distinct = new ArrayList<>();
    Map<String, Member> firsts = new HashMap<>();
    for (Member member : node.members()) {
      if (member.name().length() > MAX_NAME_LENGTH) {
        tooLong(member);
        continue;
      }
      Member first = firsts.putIfAbsent(member.name(), member);
      if (first == null) {
        distinct.add(member);
      } else {
        twice(member, first.key());
      }
    }
    return distinct;
  }

  private void tooLong(Member member) {
    values
        .reading()
        .add(
            JSON_LIMIT,
            pointer,
            member.key(),
            "A member of %s has a name of %s characters, more than %s."
                .formatted(title, member.name().length(), MAX_NAME_LENGTH),
            "Leave it out.");
    if (values.vital()) {
      values.reading().unsound();
    }
  }

  private void twice(Member member, Place first) {
    values.wrong(
        DUPLICATE_MEMBER,
        member.key(),
        pointer(member.name()),
        "%s is stated twice in %s; it stands first at line %s, column %s."
            .formatted(Shown.quoted(member.name()), title, first.line(), first.column()),
        "Leave one of the two out.");
  }

  /** Reports a member that is none; one that is not stated and is near to it was likely meant. */
  private void unknown(Member member, List<String> names, List<String> open) {
    Optional<String> meant = Nearest.plausible(member.name(), open);
    String nearest = meant.orElseGet(() -> Nearest.of(member.name(), names));
    values.wrong(
        UNKNOWN_MEMBER,
        member.key(),
        pointer(member.name()),
        "%s is not a member of %s; the nearest one is \"%s\"%s."
            .formatted(
                Shown.quoted(member.name()),
                title,
                nearest,
                meant.isPresent() ? ", which is not stated" : ""),
        "Write \"%s\" if that is meant, or leave it out; there are: %s."
            .formatted(nearest, String.join(", ", names)),
        meant
            .map(name -> List.of(PatchStep.move(pointer(member.name()), pointer(name))))
            .orElse(List.of()));
    meant.ifPresent(
        name -> {
          misspelt.add(name);
          values.lost(pointer(name));
        });
  }

  /** The pointer of a member. */
  String pointer(String name) {
    return Pointers.to(pointer, name);
  }

  /** What a member is called in messages, such as {@code mains.count}. */
  String title(String name) {
    return pointer.isEmpty() ? name : title + "." + name;
  }

  /** The members that may be there, in the order of the file. */
  List<Member> known() {
    return known;
  }

  /** The member's value, or empty when it is not stated. */
  Optional<JsonNode> find(String name) {
    for (Member member : known) {
      if (member.name().equals(name)) {
        return Optional.of(member.value());
      }
    }
    return Optional.empty();
  }

  /** Whether the member is stated. */
  boolean has(String name) {
    return find(name).isPresent();
  }

  /** The member's value; a finding when it is not stated, nor misspelt, which is one already. */
  Optional<JsonNode> need(String name) {
    Optional<JsonNode> value = find(name);
    if (value.isEmpty() && node.complete() && !misspelt.contains(name)) {
      values.wrong(
          MISSING_MEMBER,
          node.open(),
          pointer(name),
          "The member \"%s\" of %s is missing.".formatted(name, title),
          "State it.");
    }
    return value;
  }

  /**
   * Reports a member that does not go with another.
   *
   * @param name a member that is there
   * @param why the rest of a sentence that begins with its name
   * @param fix what to do
   */
  void refuse(String name, String why, String fix) {
    node.members().stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .ifPresent(
            m ->
                values.wrong(UNKNOWN_MEMBER, m.key(), pointer(name), title(name) + " " + why, fix));
  }
}
