package org.hoopwright.compare;

import java.util.List;
import java.util.Optional;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.NoRun;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** What a layout states, hole by hole, lengths in mm. */
final class LayoutFacts {

  private static final String NOT_STATED = "that is not stated";

  private final Layout layout;
  private final Facts facts = new Facts();

  private LayoutFacts(Layout layout) {
    this.layout = layout;
  }

  static Facts of(Layout layout) {
    LayoutFacts own = new LayoutFacts(layout);
    own.frame();
    own.holes();
    own.mains();
    own.crosses();
    own.maker();
    return own.facts;
  }

  private String mm(double stated) {
    return Show.number(layout.mm(stated));
  }

  private String mm(Point stated) {
    return Show.point(layout.mm(stated.x()), layout.mm(stated.y()));
  }

  private void frame() {
    facts.add(Topic.NAME, "name", layout.name(), "the frame is called", layout.name());
    facts.add(Topic.GAME, "game", layout.game().word(), "the game is", layout.game().word());
    facts.add(
        Topic.UNITS,
        "units",
        layout.units().symbol(),
        "lengths are stated in",
        layout.units().symbol());
    layout
        .frame()
        .ifPresent(
            f -> {
              String size = mm(f.length()) + " x " + mm(f.width()) + " mm";
              facts.add(Topic.FRAME, "frame", size, "the size of the frame is", size, NOT_STATED);
            });
    if (layout.hoop() instanceof Hoop.Superellipse s) {
      String size = mm(s.length()) + " x " + mm(s.width()) + " mm inside";
      String shape = size + ", a superellipse of exponent " + Show.number(s.exponent());
      facts.add(Topic.HOOP, "hoop", shape, "the hoop is", shape);
    } else if (layout.hoop() instanceof Hoop.Points p) {
      facts.add(
          Topic.HOOP,
          "hoop",
          p.points().size() + " points",
          "the hoop is",
          "a line of " + p.points().size() + " points");
      for (int i = 0; i < p.points().size(); i++) {
        String at = mm(p.points().get(i)) + " mm";
        facts.add(
            Topic.HOOP,
            "point " + (i + 1),
            at,
            "point " + (i + 1) + " of the hoop lies",
            "at " + at,
            "there is none");
      }
    }
  }

  private void holes() {
    for (Side side : Side.values()) {
      String name = Show.theSide(side);
      counted(Topic.HOLES_HEAD, name, layout.headHoles().of(side), "head");
      counted(Topic.HOLES_THROAT, name, layout.throatHoles().of(side), "throat");
    }
    each(Topic.TIE_OFF, layout.tieOff(), "tie-off hole", "is a tie-off hole", "it is none");
    each(Topic.SHARED, layout.shared(), "shared hole", "is a shared hole", "it is none");
    each(Topic.BLOCKED, layout.blocked(), "blocked", "is blocked", "it is not");
    layout
        .bore()
        .forEach(
            (ref, n) ->
                each(
                    Topic.BORE,
                    List.of(ref),
                    n.toString(),
                    "takes " + n + (n == 1 ? " string" : " strings") + " in all",
                    "it takes the usual number"));
    layout.at().forEach(this::at);
    for (NoRun no : layout.noRun()) {
      for (Side side : Side.values()) {
        Optional<HoleId> a = no.from().on(side);
        Optional<HoleId> b = no.to().on(side);
        if (a.isPresent() && b.isPresent()) {
          noRun(a.get(), b.get());
        }
      }
    }
  }

  private void counted(Topic topic, String side, int count, String end) {
    facts.add(topic, side, count, side + " counts from the " + end, count + " holes");
  }

  private void each(Topic topic, List<HoleRef> refs, String value, String is, String absent) {
    for (HoleRef ref : refs) {
      for (HoleId hole : ref.holes()) {
        facts.add(topic, hole.toString(), value, hole.toString(), is, absent);
      }
    }
  }

  private void at(HoleRef ref, Point stated) {
    for (HoleId hole : ref.holes()) {
      boolean mirror = ref.side().isEmpty() && hole.side() == Side.LEFT;
      String at = mm(mirror ? stated.mirrored() : stated) + " mm";
      facts.add(
          Topic.AT,
          hole.toString(),
          at,
          hole + " is stated to lie",
          "at " + at,
          "its place is not stated");
    }
  }

  private void noRun(HoleId a, HoleId b) {
    HoleId low = a.compareTo(b) <= 0 ? a : b;
    HoleId high = low.equals(a) ? b : a;
    facts.add(
        Topic.NO_RUN,
        low + "-" + high,
        "no run",
        "no run may pass",
        "between " + low + " and " + high,
        "it may");
  }

  private void mains() {
    facts.add(
        Topic.MAINS_COUNT, "mains", layout.mainsCount(), "the mains number", layout.mainsCount());
    boolean stated = layout.mainsSkip().isPresent();
    facts.add(
        Topic.MAINS_SKIP,
        "mains",
        stated ? "stated" : "to be read off the holes",
        "what the mains leave out is",
        stated ? "stated" : "to be read off the holes");
    layout
        .mainsSkip()
        .ifPresent(
            refs ->
                each(
                    Topic.MAINS_SKIP,
                    refs,
                    "left out by the mains",
                    "is left out by the mains",
                    "it is not"));
    layout
        .mainsOffsets()
        .ifPresent(
            offsets -> {
              for (Side side : Side.values()) {
                for (End end : End.values()) {
                  offsets(side, end, offsets.of(side));
                }
              }
            });
    facts.add(
        Topic.MAINS_START,
        "mains",
        word(layout.mainsStart().map(End::word)),
        "the mains start",
        "at " + layout.mainsStart().map(e -> "the " + e.word()).orElse("either end"));
    side(Topic.SHORT_SIDE, "short side", layout.shortSide(), "the short side is");
  }

  private void offsets(Side side, End end, StringOffsets.Mains mains) {
    for (int i = 0; i < mains.at(end).size(); i++) {
      String main = (side == Side.LEFT ? "L" : "R") + (i + 1);
      String from = mm(mains.at(end).get(i)) + " mm";
      facts.add(
          Topic.MAINS_OFFSETS,
          main + " at the " + end.word(),
          from,
          main + " at the " + end.word() + " was measured",
          from + " from the long axis",
          "it was not measured");
    }
  }

  private void crosses() {
    facts.add(
        Topic.CROSSES_COUNT,
        "crosses",
        layout.crossesCount(),
        "the crosses number",
        layout.crossesCount());
    each(
        Topic.CROSSES_SKIP,
        layout.crossesSkip(),
        "left out by the crosses",
        "is left out by the crosses",
        "it is not");
    layout
        .crossesOffsets()
        .ifPresent(
            offsets -> {
              for (Side side : Side.values()) {
                List<Double> below = offsets.of(side).below();
                for (int i = 0; i < below.size(); i++) {
                  String cross = "X" + (i + 1) + " on the " + Show.side(side);
                  String mm = mm(below.get(i)) + " mm";
                  facts.add(
                      Topic.CROSSES_OFFSETS,
                      cross,
                      mm,
                      cross + " was measured",
                      mm + " below the inside of the head",
                      "it was not measured");
                }
              }
            });
    ends(Topic.CROSSES_FIRST, layout.crossesFirst(), "the cross nearest the head takes");
    ends(Topic.CROSSES_LAST, layout.crossesLast(), "the cross nearest the throat takes");
    facts.add(
        Topic.DIRECTION,
        "crosses",
        word(layout.direction().map(d -> d.word())),
        "the crosses go in",
        layout.direction().map(Show::direction).orElse("from the head down or the throat up"));
    side(Topic.START_SIDE, "crosses", layout.startSide(), "the side where the crosses start is");
  }

  private void ends(Topic topic, Optional<EachSide<HoleId>> stated, String lead) {
    stated.ifPresent(
        each -> {
          for (Side side : Side.values()) {
            facts.add(topic, Show.theSide(side), each.of(side), lead, each.of(side), NOT_STATED);
          }
        });
  }

  private void maker() {
    String pieces =
        layout.pieces().isPresent() ? Integer.toString(layout.pieces().getAsInt()) : "either";
    facts.add(
        Topic.PIECES,
        "pieces",
        pieces,
        "the number of pieces is",
        pieces.equals("either") ? "free" : "to be " + pieces);
    facts.add(
        Topic.AROUND_THE_WORLD,
        "around-the-world",
        layout.aroundTheWorld() ? "allowed" : "forbidden",
        "around-the-world is",
        layout.aroundTheWorld() ? "allowed" : "forbidden");
    ends(Topic.HEAD_ZONE, layout.headZone(), "the head zone ends at");
    layout
        .tension()
        .ifPresent(
            t -> {
              String range =
                  Show.number(t.min()) + " to " + Show.number(t.max()) + " " + t.unit().symbol();
              facts.add(
                  Topic.TENSION,
                  "tension",
                  range,
                  "the reference tension may be",
                  range,
                  NOT_STATED);
            });
  }

  private void side(Topic topic, String about, Optional<Side> side, String lead) {
    facts.add(topic, about, word(side.map(Show::side)), lead, side.map(Show::side).orElse("free"));
  }

  private static String word(Optional<String> word) {
    return word.orElse("either");
  }
}
