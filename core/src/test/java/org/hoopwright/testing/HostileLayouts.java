package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.NoRun;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/** Layouts that nobody would draw: any numbers, any names, as the builder lets them through. */
public final class HostileLayouts {

  private static final double[] NUMBERS = {
    0.0,
    -0.0,
    1e-300,
    -1.0,
    0.5,
    1.0,
    2.0,
    12.7,
    99.0,
    248.0,
    330.0,
    9_999.0,
    10_001.0,
    1e18,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.MIN_VALUE,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY
  };

  private final Draw draw;
  private final boolean wild;

  private HostileLayouts(Draw draw) {
    this.draw = draw;
    this.wild = draw.chance(50);
  }

  /** A hostile layout. */
  public static Layout of(Draw draw) {
    return new HostileLayouts(draw).layout();
  }

  private Layout layout() {
    LayoutBuilder b = draw.chance(40) ? BedLayouts.uneven(draw, 6, true).toBuilder() : scribble();
    maybe(() -> b.blocked(refs()));
    maybe(() -> b.shared(refs()));
    maybe(() -> b.frame(number(), number()));
    maybe(() -> b.bore(table(draw.oneOf(List.of(-1, 0, 1, 2, 9, 10, Integer.MAX_VALUE)))));
    maybe(() -> b.at(points()));
    maybe(() -> b.noRun(List.of(new NoRun(ref(), ref()), new NoRun(ref(), ref()))));
    maybe(() -> b.mainsOffsets(new EachSide<>(mains(), mains())));
    maybe(
        () ->
            b.crossesOffsets(
                new EachSide<>(
                    new StringOffsets.Crosses(offsets()), new StringOffsets.Crosses(offsets()))));
    maybe(() -> b.mainsStart(End.HEAD));
    maybe(() -> b.shortSide(Side.LEFT));
    maybe(() -> b.crossesFirst(pair()));
    maybe(() -> b.crossesLast(pair()));
    maybe(() -> b.direction(Direction.HEAD_TO_THROAT));
    maybe(() -> b.startSide(Side.RIGHT));
    maybe(() -> b.pieces(draw.between(-1, 4)));
    maybe(() -> b.headZone(pair()));
    maybe(() -> b.tension(number(), number(), ForceUnit.POUND_FORCE));
    return b.build();
  }

  private LayoutBuilder scribble() {
    LayoutBuilder b =
        Layout.builder("Willowbank scribble")
            .game(draw.oneOf(List.of(Game.values())))
            .units(draw.oneOf(List.of(LengthUnit.values())))
            .hoop(hoop())
            .holes(
                new EachSide<>(count(), count()),
                draw.chance(50) ? EachSide.both(count()) : new EachSide<>(count(), count()))
            .tieOff(refs())
            .shared(refs())
            .blocked(draw.chance(60) ? List.of() : refs())
            .mains(draw.chance(70) ? 2 * draw.between(2, 8) : count())
            .crosses(draw.chance(70) ? draw.between(2, 20) : count())
            .crossesSkip(draw.chance(60) ? List.of() : refs())
            .aroundTheWorld(draw.chance(50));
    if (draw.chance(85)) {
      b.mainsSkip(Optional.of(draw.chance(40) ? List.of() : refs()));
    }
    return b;
  }

  private void maybe(Runnable setting) {
    if (draw.chance(15)) {
      setting.run();
    }
  }

  private int count() {
    return wild
        ? draw.oneOf(List.of(Integer.MIN_VALUE, -1, 0, 1, 3, 17, 60, 500, 501, Integer.MAX_VALUE))
        : draw.between(4, 20);
  }

  private double number() {
    return wild ? NUMBERS[draw.between(0, NUMBERS.length - 1)] : draw.between(1, 400);
  }

  private Point point() {
    double x = number();
    double y = number();
    return new Point(Double.isFinite(x) ? x : -7, Double.isFinite(y) ? y : 150);
  }

  private Hoop hoop() {
    if (draw.chance(70)) {
      return wild && draw.chance(50)
          ? new Hoop.Superellipse(number(), number(), number())
          : new Hoop.Superellipse(330, 248, 2.1);
    }
    List<Point> points = new ArrayList<>();
    int size = draw.between(0, 30);
    for (int i = 0; i < size; i++) {
      points.add(
          wild
              ? point()
              : new Point(
                  120 * Math.sin((i + 0.5) * 2 * Math.PI / size),
                  draw.between(150, 170) * Math.cos((i + 0.5) * 2 * Math.PI / size)));
    }
    return new Hoop.Points(points);
  }

  private HoleRef ref() {
    String side = draw.oneOf(List.of("", "L", "R"));
    int number = wild ? draw.oneOf(List.of(1, 2, 9, 17, 60, 61, 500)) : draw.between(1, 12);
    return HoleRef.of(side + number + draw.oneOf(List.of("H", "T")));
  }

  private List<HoleRef> refs() {
    List<HoleRef> refs = new ArrayList<>();
    int size = draw.between(0, 4);
    for (int i = 0; i < size; i++) {
      refs.add(ref());
    }
    return refs;
  }

  private <T> Map<HoleRef, T> table(T value) {
    Map<HoleRef, T> map = new LinkedHashMap<>();
    refs().forEach(r -> map.put(r, value));
    return map;
  }

  private Map<HoleRef, Point> points() {
    Map<HoleRef, Point> map = new LinkedHashMap<>();
    refs().forEach(r -> map.put(r, point()));
    return map;
  }

  private StringOffsets.Mains mains() {
    return new StringOffsets.Mains(offsets(), offsets());
  }

  private List<Double> offsets() {
    List<Double> list = new ArrayList<>();
    int size = draw.between(0, 20);
    for (int i = 0; i < size; i++) {
      list.add(draw.chance(20) ? number() : 15.0 * (i + 1));
    }
    return list;
  }

  private EachSide<HoleId> pair() {
    List<HoleId> left = ref().holes();
    List<HoleId> right = ref().holes();
    return new EachSide<>(left.get(0), right.get(right.size() - 1));
  }
}
