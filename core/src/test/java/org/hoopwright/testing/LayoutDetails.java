package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/**
 * Says of a layout what a layout file can say beyond {@link LayoutGenerator}: game, inches, size of
 * the frame, an outline of points, measured offsets, first and last cross, head zone, bores,
 * coordinates, tension. What is said agrees with the layout, so it keeps its bed.
 */
public final class LayoutDetails {

  private static final double INCH_MM = 25.4;

  private final Draw draw;
  private final Layout layout;
  private final Bed bed;
  private final Outline outline;
  private final LayoutBuilder b;
  private double unit = 1;

  private LayoutDetails(Draw draw, Layout layout) {
    this.draw = draw;
    this.layout = layout;
    this.bed = StatedAssignment.assign(layout).bed().orElseThrow();
    this.outline = HoopOutline.of(layout).outline().orElseThrow();
    this.b = layout.toBuilder();
  }

  /**
   * The layout with more said about it.
   *
   * @param draw the source of choices
   * @param layout a layout in millimetres that has a bed
   */
  public static Layout add(Draw draw, Layout layout) {
    return new LayoutDetails(draw, layout).add();
  }

  private Layout add() {
    if (draw.chance(30)) {
      unit = INCH_MM;
      b.units(LengthUnit.INCH);
    }
    b.game(draw.oneOf(List.of(Game.values())));
    maybe(() -> b.frame(rounded(690), rounded(1.05 * outline.widthMm())));
    b.hoop(hoop());
    b.at(coordinates());
    maybe(
        () -> {
          EachSide<StringOffsets.Mains> measured = mains();
          if (growing(measured.left()) && growing(measured.right())) {
            b.mainsOffsets(measured);
          }
        });
    maybe(() -> b.crossesOffsets(crosses()));
    maybe(this::firstAndLast);
    maybe(() -> b.headZone(headZone()));
    maybe(this::bores);
    maybe(() -> b.tension(draw.between(80, 200) / 4.0, 55, draw.oneOf(units())));
    return b.build();
  }

  private void maybe(Runnable detail) {
    if (draw.chance(40)) {
      detail.run();
    }
  }

  private static List<ForceUnit> units() {
    return List.of(ForceUnit.values());
  }

  /** A length in the unit of the file: in millimetres to three decimals, in inches as it is. */
  private double rounded(double mm) {
    return unit == 1 ? Math.rint(mm * 1000) / 1000 : mm / unit;
  }

  private Hoop hoop() {
    Hoop.Superellipse s = (Hoop.Superellipse) layout.hoop();
    if (draw.chance(70)) {
      return new Hoop.Superellipse(
          rounded(s.length()), rounded(s.width()), draw.chance(30) ? 2 : s.exponent());
    }
    int quarter = draw.between(30, 60);
    List<Point> right = new ArrayList<>();
    double half = outline.halfLengthMm(Side.RIGHT);
    for (int i = 0; i <= 2 * quarter; i++) {
      Point p = outline.atArc(Side.RIGHT, Math.min(half, half * i / (2.0 * quarter)));
      right.add(new Point(rounded(Math.max(0, p.x())) + 0.0, rounded(p.y())));
    }
    List<Point> all = new ArrayList<>(right);
    for (int i = right.size() - 2; i > 0; i--) {
      all.add(right.get(i).mirrored());
    }
    return new Hoop.Points(all);
  }

  private Map<HoleRef, Point> coordinates() {
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    layout.at().forEach((r, p) -> at.put(r, new Point(rounded(p.x()), rounded(p.y()))));
    return at;
  }

  private EachSide<StringOffsets.Mains> mains() {
    StringOffsets.Mains left = mains(Side.LEFT);
    return draw.chance(50)
        ? new EachSide<>(left, mains(Side.RIGHT))
        : new EachSide<>(left, bed.symmetric() ? left : mains(Side.RIGHT));
  }

  /**
   * Mains past the widest part of a hoop have holes nearer the axis again, and are not measured.
   */
  private static boolean growing(StringOffsets.Mains mains) {
    return growing(mains.head()) && growing(mains.throat());
  }

  private static boolean growing(List<Double> offsets) {
    for (int i = 1; i < offsets.size(); i++) {
      if (offsets.get(i) <= offsets.get(i - 1)) {
        return false;
      }
    }
    return true;
  }

  private StringOffsets.Mains mains(Side side) {
    List<Double> head = new ArrayList<>();
    List<Double> throat = new ArrayList<>();
    for (Span main : bed.mains(side)) {
      head.add(rounded(Math.abs(main.fromPoint().x())));
      throat.add(rounded(Math.abs(main.toPoint().x())));
    }
    return new StringOffsets.Mains(head, throat);
  }

  private EachSide<StringOffsets.Crosses> crosses() {
    double top = outline.headAxisPoint().y();
    List<Double> left = new ArrayList<>();
    List<Double> right = new ArrayList<>();
    for (Span cross : bed.crosses()) {
      left.add(rounded(top - cross.fromPoint().y()));
      right.add(rounded(top - cross.toPoint().y()));
    }
    return new EachSide<>(
        new StringOffsets.Crosses(left), new StringOffsets.Crosses(bed.symmetric() ? left : right));
  }

  private void firstAndLast() {
    Span first = bed.crosses().get(0);
    Span last = bed.crosses().get(bed.crossCount() - 1);
    b.crossesFirst(new EachSide<>(first.from(), first.to()));
    b.crossesLast(new EachSide<>(last.from(), last.to()));
  }

  private EachSide<HoleId> headZone() {
    HoleId left = bed.headZone(Side.LEFT);
    boolean alike = bed.ring().has(left.mirrored()) && draw.chance(50);
    return new EachSide<>(left, alike ? left.mirrored() : bed.headZone(Side.RIGHT));
  }

  private void bores() {
    Map<HoleRef, Integer> bore = new LinkedHashMap<>(layout.bore());
    for (HoleRef ref : layout.tieOff()) {
      bore.putIfAbsent(ref, draw.between(2, 3));
    }
    b.bore(bore);
  }

  /** A layout of any usual size, with details; empty when the plain one has no bed. */
  public static Optional<Layout> any(Draw draw) {
    Layout plain = LayoutGenerator.any(draw);
    return StatedAssignment.assign(plain).bed().map(bed -> add(draw, plain));
  }
}
