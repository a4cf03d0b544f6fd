package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
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
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/** Layouts that state all that the format can say, in every way it can be said; few make sense. */
final class StatedLayouts {

  private static final List<String> NAMES =
      List.of("Willowbank", "Ä \"quoted\" \\ name", "弦 🎾", "  spaced  ", "a/b~c", "\u00a0\u2028");

  private final Draw draw;

  private StatedLayouts(Draw draw) {
    this.draw = draw;
  }

  static Layout any(long seed) {
    Draw draw = Draw.from(seed);
    return new StatedLayouts(draw).stated(LayoutGenerator.any(draw));
  }

  private Layout stated(Layout base) {
    LayoutBuilder b =
        Layout.builder(draw.oneOf(NAMES))
            .game(draw.oneOf(List.of(Game.values())))
            .units(draw.oneOf(List.of(LengthUnit.values())))
            .hoop(hoop())
            .holes(base.headHoles(), base.throatHoles())
            .tieOff(maybe(base.tieOff(), this::refs))
            .shared(maybe(base.shared(), this::refs))
            .blocked(maybe(base.blocked(), this::refs))
            .bore(maybe(base.bore(), () -> table(() -> draw.between(-3, 9))))
            .at(maybe(base.at(), () -> table(this::point)))
            .noRun(maybe(base.noRun(), this::stretches))
            .mains(maybe(base.mainsCount(), () -> draw.between(0, 30)))
            .mainsSkip(draw.chance(20) ? Optional.empty() : maybe(base.mainsSkip(), this::someRefs))
            .crosses(maybe(base.crossesCount(), () -> draw.between(0, 30)))
            .crossesSkip(maybe(base.crossesSkip(), this::refs))
            .aroundTheWorld(draw.chance(50));
    if (draw.chance(50)) {
      b.frame(number(), number());
    }
    if (draw.chance(50)) {
      b.mainsOffsets(sides(this::mains));
    }
    if (draw.chance(50)) {
      b.crossesOffsets(sides(() -> new StringOffsets.Crosses(numbers())));
    }
    if (draw.chance(50)) {
      b.crossesFirst(pair());
    }
    if (draw.chance(50)) {
      b.crossesLast(pair());
    }
    if (draw.chance(50)) {
      b.headZone(pair());
    }
    if (draw.chance(50)) {
      b.tension(number(), number(), draw.oneOf(List.of(ForceUnit.values())));
    }
    if (draw.chance(50)) {
      b.mainsStart(draw.oneOf(List.of(End.values())));
    }
    if (draw.chance(50)) {
      b.direction(draw.oneOf(List.of(Direction.values())));
    }
    if (draw.chance(50)) {
      b.pieces(draw.between(1, 2));
    }
    if (draw.chance(50)) {
      b.shortSide(side());
    }
    if (draw.chance(50)) {
      b.startSide(side());
    }
    return b.build();
  }

  private <T> T maybe(T usual, Supplier<T> other) {
    return draw.chance(50) ? usual : other.get();
  }

  private Hoop hoop() {
    if (draw.chance(30)) {
      List<Point> points = new ArrayList<>();
      for (int i = draw.between(0, 12); i > 0; i--) {
        points.add(point());
      }
      return new Hoop.Points(points);
    }
    return new Hoop.Superellipse(number(), number(), draw.chance(50) ? 2 : number());
  }

  /** Short decimals, all digits of a double, tiny ones and huge ones. */
  private double number() {
    return switch (draw.between(0, 5)) {
      case 0 -> draw.between(-500, 500);
      case 1 -> draw.between(-5000, 5000) / 10.0;
      case 2 -> draw.between(1, 100_000) / 7.0;
      case 3 -> draw.between(1, 9) * Math.pow(10, draw.between(-300, 300));
      case 4 -> 2e-3 * draw.between(1, 100_000);
      default -> Double.MIN_VALUE * draw.between(1, 1000);
    };
  }

  private List<Double> numbers() {
    List<Double> numbers = new ArrayList<>();
    for (int i = draw.between(0, 12); i > 0; i--) {
      numbers.add(number());
    }
    return numbers;
  }

  private Point point() {
    return new Point(number(), number());
  }

  private StringOffsets.Mains mains() {
    return draw.chance(50)
        ? StringOffsets.Mains.parallel(numbers())
        : new StringOffsets.Mains(numbers(), numbers());
  }

  private <T> EachSide<T> sides(Supplier<T> part) {
    return draw.chance(50) ? EachSide.both(part.get()) : new EachSide<>(part.get(), part.get());
  }

  private Side side() {
    return draw.oneOf(List.of(Side.values()));
  }

  private HoleId hole() {
    return new HoleId(
        side(), draw.oneOf(List.of(End.values())), draw.between(1, HoleId.MAX_NUMBER));
  }

  private EachSide<HoleId> pair() {
    HoleId one = hole();
    return draw.chance(50) ? new EachSide<>(one, one.mirrored()) : new EachSide<>(one, hole());
  }

  private HoleRef ref() {
    HoleId hole = hole();
    return draw.chance(50) ? HoleRef.of(hole) : HoleRef.both(hole.end(), hole.number());
  }

  private List<HoleRef> refs() {
    List<HoleRef> refs = new ArrayList<>();
    for (int i = draw.between(0, 6); i > 0; i--) {
      refs.add(ref());
    }
    return refs;
  }

  private Optional<List<HoleRef>> someRefs() {
    return Optional.of(refs());
  }

  private <T> Map<HoleRef, T> table(Supplier<T> value) {
    Map<HoleRef, T> table = new LinkedHashMap<>();
    refs().forEach(ref -> table.put(ref, value.get()));
    return table;
  }

  private List<NoRun> stretches() {
    return refs().stream().map(ref -> new NoRun(ref, ref())).toList();
  }
}
