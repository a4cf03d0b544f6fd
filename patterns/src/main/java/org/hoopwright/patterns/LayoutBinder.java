package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.FORMAT_VERSION;
import static org.hoopwright.finding.FindingCode.SUSPECT_TEXT;
import static org.hoopwright.finding.FindingCode.WRONG_TYPE;
import static org.hoopwright.finding.FindingCode.WRONG_VALUE;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.NumberNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonNode.TextNode;
import org.hoopwright.patterns.json.Shown;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/** Makes a draft of the outermost JSON value, and reports all that does not fit the format. */
final class LayoutBinder {

  /** The word for leaving a choice open. */
  static final String EITHER = "either";

  private static final String TITLE = "the layout";

  private static final List<String> MEMBERS =
      List.of(
          "$schema",
          "format",
          "name",
          "game",
          "units",
          "frame",
          "hoop",
          "holes",
          "mains",
          "crosses",
          "pieces",
          "aroundTheWorld",
          "headZone",
          "tension");

  private static final Pattern OTHER_VERSION = Pattern.compile("hoopwright/layout-[0-9.]{1,20}");

  private final Reading reading;
  private final Values vital;
  private final Values loose;

  LayoutBinder(Reading reading) {
    this.reading = reading;
    this.vital = new Values(reading, /* vital= */ true);
    this.loose = new Values(reading, /* vital= */ false);
  }

  /** The layout as far as it could be read; empty when nothing in it can be judged. */
  Optional<Draft> bind(JsonNode root) {
    if (!(root instanceof ObjectNode object)) {
      return vital.wrongKind(root, "", "A layout", "an object", "Write its members in { }.");
    }
    if (isOtherVersion(object)) {
      return Optional.empty(); // nothing else in it can be judged
    }
    MemberReader members = MemberReader.of(loose, object, "", TITLE, MEMBERS);
    members
        .find("$schema")
        .ifPresent(
            n -> {
              if (n instanceof TextNode t) {
                loose.isShort(t, "/$schema", "$schema");
              }
            });
    members.need("format").ifPresent(this::format);
    Optional<String> name = members.need("name").flatMap(this::name);
    // A missing or refused name does not keep the rest from being checked, but makes no layout.
    LayoutBuilder b = Layout.builder(name.orElse("?"));
    boolean whole = name.isPresent();
    rest(members, b);
    whole &= new HoopBinder(vital).bind(members.need("hoop"), b);
    whole &= new HolesBinder(vital).bind(members.need("holes"), b);
    StringsBinder strings = new StringsBinder(vital, loose);
    whole &= strings.mains(members.need("mains"), b);
    whole &= strings.crosses(members.need("crosses"), b);
    if (!whole) {
      reading.unsound();
    }
    return Optional.of(reading.draft(b.places(reading.places(root)).build()));
  }

  private boolean isOtherVersion(ObjectNode root) {
    Optional<JsonNode> format =
        root.members().stream()
            .filter(m -> m.name().equals("format"))
            .map(JsonNode.Member::value)
            .findFirst();
    if (format.isPresent()
        && format.get() instanceof TextNode t
        && !t.text().equals(LayoutReader.FORMAT)
        && OTHER_VERSION.matcher(t.text()).matches()) {
      vital.wrong(
          FORMAT_VERSION,
          t.place(),
          "/format",
          "The file is of format %s, and only %s can be read."
              .formatted(Shown.quoted(t.text()), Shown.quoted(LayoutReader.FORMAT)),
          "Use a release of the library that knows this version.");
      return true;
    }
    return false;
  }

  private void format(JsonNode node) {
    if (!(node instanceof TextNode t)) {
      loose.wrongKind(
          node, "/format", "format", "a text", "Write \"" + LayoutReader.FORMAT + "\".");
    } else if (!t.text().equals(LayoutReader.FORMAT)) {
      loose.wrong(
          FORMAT_VERSION,
          t.place(),
          "/format",
          "format is %s, which is no layout format.".formatted(Shown.quoted(t.text())),
          "Write \"" + LayoutReader.FORMAT + "\".");
    }
  }

  private Optional<String> name(JsonNode node) {
    Optional<String> name = vital.text(node, "/name", "name");
    if (name.isEmpty()) {
      return name;
    }
    Optional<String> refused = NameText.refused(name.get());
    if (refused.isPresent()) {
      return vital.wrong(
          WRONG_VALUE,
          node.place(),
          "/name",
          "name " + refused.get() + ".",
          "Name the frame as people call it.");
    }
    NameText.suspect(name.get())
        .ifPresent(
            c ->
                reading.add(
                    SUSPECT_TEXT,
                    "/name",
                    node.place(),
                    "name holds %s, which does not show or changes how the text shows."
                        .formatted(c),
                    "Leave the character out if it is not meant."));
    return name;
  }

  /** Everything that is of one value, or whose loss leaves the rest as it is. */
  private void rest(MemberReader members, LayoutBuilder b) {
    members
        .find("game")
        .flatMap(n -> loose.word(n, "/game", "game", words(Game.values(), Game::word)))
        .flatMap(Game::ofWord)
        .ifPresent(b::game);
    members
        .find("units")
        .flatMap(
            n -> vital.word(n, "/units", "units", words(LengthUnit.values(), LengthUnit::symbol)))
        .flatMap(LengthUnit::ofSymbol)
        .ifPresent(b::units);
    members.find("frame").ifPresent(n -> frame(n, b));
    members.find("pieces").ifPresent(n -> pieces(n, b));
    members
        .find("aroundTheWorld")
        .flatMap(n -> loose.flag(n, "/aroundTheWorld", "aroundTheWorld"))
        .ifPresent(b::aroundTheWorld);
    members
        .find("headZone")
        .flatMap(n -> new HoleValues(loose).eachSide(n, "/headZone", "headZone"))
        .ifPresent(b::headZone);
    members.find("tension").ifPresent(n -> tension(n, b));
  }

  /** The words of an enumeration, as files write them. */
  static <E> List<String> words(E[] values, java.util.function.Function<E, String> word) {
    return Arrays.stream(values).map(word).toList();
  }

  private void frame(JsonNode node, LayoutBuilder b) {
    loose
        .object(node, "/frame", "frame")
        .ifPresent(
            o -> {
              MemberReader m =
                  MemberReader.of(loose, o, "/frame", "frame", List.of("length", "width"));
              Optional<Double> length = number(m, "length");
              Optional<Double> width = number(m, "width");
              if (length.isPresent() && width.isPresent()) {
                b.frame(length.get(), width.get());
              }
            });
  }

  private Optional<Double> number(MemberReader members, String name) {
    return members
        .need(name)
        .flatMap(n -> loose.number(n, members.pointer(name), members.title(name)));
  }

  private void pieces(JsonNode node, LayoutBuilder b) {
    String fix = "Write 1, 2 or \"either\".";
    if (node instanceof NumberNode) {
      Optional<Integer> pieces = loose.integer(node, "/pieces", "pieces");
      if (pieces.isPresent() && (pieces.get() == 1 || pieces.get() == 2)) {
        b.pieces(pieces.get());
      } else if (pieces.isPresent()) {
        wrongPieces(WRONG_VALUE, node, "pieces cannot be %s.".formatted(pieces.get()), fix);
      }
    } else if (!(node instanceof TextNode t)) {
      loose.wrongKind(node, "/pieces", "pieces", "1, 2 or \"either\"", fix);
    } else if (t.text().equals("1") || t.text().equals("2")) {
      wrongPieces(
          WRONG_TYPE, node, "pieces must be a number, not a text (\"" + t.text() + "\").", fix);
    } else if (!t.text().equals(EITHER)) {
      wrongPieces(WRONG_VALUE, node, "pieces cannot be " + Shown.quoted(t.text()) + ".", fix);
    }
  }

  private void wrongPieces(FindingCode code, JsonNode node, String message, String fix) {
    loose.wrong(code, node.place(), "/pieces", message, fix);
  }

  private void tension(JsonNode node, LayoutBuilder b) {
    loose
        .object(node, "/tension", "tension")
        .ifPresent(
            o -> {
              MemberReader m =
                  MemberReader.of(loose, o, "/tension", "tension", List.of("unit", "min", "max"));
              Optional<ForceUnit> unit =
                  m.need("unit")
                      .flatMap(
                          n ->
                              loose.word(
                                  n,
                                  "/tension/unit",
                                  "tension.unit",
                                  words(ForceUnit.values(), ForceUnit::symbol)))
                      .flatMap(ForceUnit::ofSymbol);
              Optional<Double> min = number(m, "min");
              Optional<Double> max = number(m, "max");
              if (unit.isPresent() && min.isPresent() && max.isPresent()) {
                b.tension(min.get(), max.get(), unit.get());
              }
            });
  }
}
