package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.NoRun;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.patterns.json.JsonText;
import org.hoopwright.patterns.json.Shown;
import org.hoopwright.units.LengthUnit;

/**
 * Writes layouts as layout files, format {@value LayoutReader#FORMAT}, in one canonical form.
 *
 * <p>Members stand in the order of {@link LayoutReader}; what is at its default is left out; what
 * is alike on both sides, or at both ends, is written once. Two-space indent, {@code \n}, objects
 * and lists on one line where they fit. Numbers are plain decimals, the shortest that read back as
 * the same double; minus zero is written as 0.
 *
 * <p>Reading what was written gives an equal layout, and writing that gives the same text. Comments
 * and {@code $schema} of a file are not part of a layout, so they are not written. The same layout
 * gives the same text in every locale and on every JVM. Thread-safe.
 */
public final class LayoutWriter {

  private LayoutWriter() {}

  /**
   * The layout as the text of a file, ending with a line end.
   *
   * <p>Any layout can be written whose file could be read again: what is wrong with its numbers and
   * holes is the reader's and the checks' affair.
   *
   * @throws IllegalArgumentException when a number is infinite or not a number, the pieces are
   *     neither 1 nor 2, or the name is one that no file may hold: no file can say that
   */
  public static String write(Layout layout) {
    checkName(layout.name());
    Map<String, Object> file = new LinkedHashMap<>();
    file.put("format", LayoutReader.FORMAT);
    file.put("name", layout.name());
    if (layout.game() != Game.OTHER) {
      file.put("game", layout.game().word());
    }
    if (layout.units() != LengthUnit.MILLIMETRE) {
      file.put("units", layout.units().symbol());
    }
    layout.frame().ifPresent(f -> file.put("frame", size(f.length(), f.width())));
    file.put("hoop", hoop(layout.hoop()));
    file.put("holes", holes(layout));
    file.put("mains", mains(layout));
    file.put("crosses", crosses(layout));
    layout.pieces().ifPresent(n -> file.put("pieces", pieces(n)));
    if (!layout.aroundTheWorld()) {
      file.put("aroundTheWorld", false);
    }
    layout.headZone().ifPresent(z -> file.put("headZone", pair(z)));
    layout
        .tension()
        .ifPresent(
            t -> {
              Map<String, Object> tension = new LinkedHashMap<>();
              tension.put("unit", t.unit().symbol());
              tension.put("min", t.min());
              tension.put("max", t.max());
              file.put("tension", tension);
            });
    return JsonText.of(file);
  }

  private static void checkName(String name) {
    Optional<String> why = NameText.refused(name);
    if (why.isEmpty() && name.codePointCount(0, name.length()) > Values.MAX_TEXT_LENGTH) {
      why = Optional.of("is longer than " + Values.MAX_TEXT_LENGTH + " characters");
    }
    if (why.isPresent()) {
      throw new IllegalArgumentException(
          "The layout's name ("
              + Shown.cut(name)
              + ") "
              + why.get()
              + ".\nMaybe give it another name before it is written.");
    }
  }

  private static Map<String, Object> size(double length, double width) {
    Map<String, Object> size = new LinkedHashMap<>();
    size.put("length", length);
    size.put("width", width);
    return size;
  }

  private static Map<String, Object> hoop(Hoop hoop) {
    Map<String, Object> written = new LinkedHashMap<>();
    if (hoop instanceof Hoop.Superellipse s) {
      written.put("shape", HoopBinder.ELLIPSE);
      written.putAll(size(s.length(), s.width()));
      if (s.exponent() != HoopBinder.DEFAULT_EXPONENT) {
        written.put("exponent", s.exponent());
      }
    } else if (hoop instanceof Hoop.Points p) {
      written.put("shape", HoopBinder.POINTS);
      written.put("points", p.points().stream().map(LayoutWriter::point).toList());
    }
    return written;
  }

  private static List<Object> point(Point point) {
    return List.of(point.x(), point.y());
  }

  private static Map<String, Object> holes(Layout layout) {
    Map<String, Object> holes = new LinkedHashMap<>();
    holes.put("head", bySide(layout.headHoles()));
    holes.put("throat", bySide(layout.throatHoles()));
    putNames(holes, "tieOff", layout.tieOff());
    putNames(holes, "shared", layout.shared());
    putNames(holes, "blocked", layout.blocked());
    if (!layout.bore().isEmpty()) {
      Map<String, Object> bore = new LinkedHashMap<>();
      layout.bore().forEach((ref, n) -> bore.put(ref.toString(), n));
      holes.put("bore", bore);
    }
    if (!layout.at().isEmpty()) {
      Map<String, Object> at = new LinkedHashMap<>();
      layout.at().forEach((ref, p) -> at.put(ref.toString(), point(p)));
      holes.put("at", at);
    }
    if (!layout.noRun().isEmpty()) {
      holes.put("noRun", layout.noRun().stream().map(LayoutWriter::stretch).toList());
    }
    return holes;
  }

  private static void putNames(Map<String, Object> object, String member, List<HoleRef> refs) {
    if (!refs.isEmpty()) {
      object.put(member, names(refs));
    }
  }

  private static List<Object> names(Collection<?> names) {
    List<Object> texts = new ArrayList<>(names.size());
    names.forEach(n -> texts.add(n.toString()));
    return texts;
  }

  private static List<Object> stretch(NoRun stretch) {
    return names(List.of(stretch.from(), stretch.to()));
  }

  private static Map<String, Object> mains(Layout layout) {
    Map<String, Object> mains = new LinkedHashMap<>();
    mains.put("count", layout.mainsCount());
    layout.mainsStart().ifPresent(end -> mains.put("start", end.word()));
    layout.mainsSkip().ifPresent(skip -> mains.put("skip", names(skip)));
    layout
        .mainsOffsets()
        .ifPresent(o -> mains.put("offsets", bySide(o.same(), fan(o.left()), fan(o.right()))));
    layout.shortSide().ifPresent(side -> mains.put("shortSide", StringsBinder.word(side)));
    return mains;
  }

  private static Object fan(StringOffsets.Mains offsets) {
    if (offsets.head().equals(offsets.throat())) {
      return offsets.head();
    }
    Map<String, Object> ends = new LinkedHashMap<>();
    ends.put("head", offsets.head());
    ends.put("throat", offsets.throat());
    return ends;
  }

  private static Map<String, Object> crosses(Layout layout) {
    Map<String, Object> crosses = new LinkedHashMap<>();
    crosses.put("count", layout.crossesCount());
    putNames(crosses, "skip", layout.crossesSkip());
    layout
        .crossesOffsets()
        .ifPresent(
            o -> crosses.put("offsets", bySide(o.same(), o.left().below(), o.right().below())));
    layout.crossesFirst().ifPresent(p -> crosses.put("first", pair(p)));
    layout.crossesLast().ifPresent(p -> crosses.put("last", pair(p)));
    layout.direction().ifPresent(d -> crosses.put("direction", d.word()));
    layout.startSide().ifPresent(side -> crosses.put("startSide", StringsBinder.word(side)));
    return crosses;
  }

  private static Object bySide(EachSide<Integer> counts) {
    return bySide(counts.same(), counts.left(), counts.right());
  }

  private static Object bySide(boolean same, Object left, Object right) {
    if (same) {
      return left;
    }
    Map<String, Object> sides = new LinkedHashMap<>();
    sides.put("left", left);
    sides.put("right", right);
    return sides;
  }

  /** One name without side where both sides are alike, else the left name and the right one. */
  private static Object pair(EachSide<HoleId> pair) {
    HoleId left = pair.left();
    return left.side() == Side.LEFT && left.equals(pair.right().mirrored())
        ? HoleRef.both(left.end(), left.number()).toString()
        : names(List.of(left, pair.right()));
  }

  private static int pieces(int pieces) {
    if (pieces != 1 && pieces != 2) {
      throw new IllegalArgumentException(
          "The pieces of the layout ("
              + pieces
              + ") must be 1 or 2 in a file.\nMaybe leave them open in the builder.");
    }
    return pieces;
  }
}
