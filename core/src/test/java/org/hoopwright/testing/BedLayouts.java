package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.HolePositions;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** Random layouts that have a bed under their stated skip rules. */
public final class BedLayouts {

  private BedLayouts() {}

  /**
   * A layout whose two sides are drawn on their own: counts, skips, shared holes and moved holes.
   *
   * @param draw the source of choices
   * @param mostMains the most mains a side, at least 2
   * @param sharing whether crosses need shared holes where there are any
   * @return a layout that has a bed
   */
  public static Layout uneven(Draw draw, int mostMains, boolean sharing) {
    int n = draw.between(2, mostMains);
    Half left = new Half(draw, Side.LEFT, n);
    Half right = new Half(draw, Side.RIGHT, n);
    int least = Math.max(2, Math.max(left.free.size(), right.free.size()));
    int most =
        Math.min(left.free.size() + left.shared.size(), right.free.size() + right.shared.size());
    int crosses =
        sharing && most >= least
            ? draw.between(least, most)
            : Math.max(2, Math.min(left.free.size(), right.free.size()));
    List<HoleRef> skip = new ArrayList<>();
    for (Half half : List.of(left, right)) {
      while (half.free.size() > crosses) {
        skip.add(HoleRef.of(half.free.remove(draw.between(0, half.free.size() - 1))));
      }
    }
    if (left.free.size() + left.shared.size() < crosses
        || right.free.size() + right.shared.size() < crosses) {
      return uneven(draw, mostMains, sharing);
    }
    List<HoleRef> shared = new ArrayList<>();
    List<HoleRef> mainsSkip = new ArrayList<>();
    for (Half half : List.of(left, right)) {
      half.shared.forEach(h -> shared.add(HoleRef.of(h)));
      half.skip.forEach(h -> mainsSkip.add(HoleRef.of(h)));
    }
    Layout plain =
        Layout.builder("Willowbank uneven")
            .hoop(
                new Hoop.Superellipse(
                    draw.between(120, 400), draw.between(100, 280), draw.between(20, 26) / 10.0))
            .holes(new EachSide<>(left.head, right.head), new EachSide<>(left.throat, right.throat))
            .shared(shared)
            .mains(2 * n)
            .mainsSkip(java.util.Optional.of(mainsSkip))
            .crosses(crosses)
            .crossesSkip(skip)
            .build();
    return plain.toBuilder().at(moved(draw, plain)).build();
  }

  /** A few holes a little outside the place that the arc law gives them. */
  static Map<HoleRef, Point> moved(Draw draw, Layout layout) {
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    HolePositions.of(layout)
        .points()
        .forEach(
            (hole, p) -> {
              if (draw.chance(10)) {
                at.put(HoleRef.of(hole), new Point(1.01 * p.x(), 1.01 * p.y()));
              }
            });
    return at;
  }

  /** The same layout with the right side made the mirror image of the left. */
  public static Layout even(Draw draw, int mostMains, boolean sharing) {
    Layout l = uneven(draw, mostMains, sharing);
    return l.toBuilder()
        .holes(EachSide.both(l.headHoles().left()), EachSide.both(l.throatHoles().left()))
        .shared(bothSides(l.shared()))
        .mainsSkip(l.mainsSkip().map(BedLayouts::bothSides))
        .crossesSkip(bothSides(l.crossesSkip()))
        .at(Map.of())
        .build();
  }

  private static List<HoleRef> bothSides(List<HoleRef> refs) {
    return refs.stream()
        .filter(r -> r.side().equals(java.util.Optional.of(Side.LEFT)))
        .map(r -> HoleRef.both(r.end(), r.number()))
        .toList();
  }

  /** One side. */
  private static final class Half {
    final int head;
    final int throat;
    final List<HoleId> skip = new ArrayList<>();
    final List<HoleId> shared = new ArrayList<>();
    final List<HoleId> free = new ArrayList<>();

    Half(Draw draw, Side side, int mains) {
      head = mains + draw.between(0, 5);
      throat = mains + draw.between(0, 5);
      List<HoleId> mainHoles = new ArrayList<>();
      end(draw, side, End.HEAD, head, mains, mainHoles);
      List<HoleId> low = new ArrayList<>(free);
      free.clear();
      end(draw, side, End.THROAT, throat, mains, mainHoles);
      Collections.reverse(free);
      low.addAll(free);
      free.clear();
      free.addAll(low);
      for (HoleId hole : mainHoles) {
        if (draw.chance(30)) {
          shared.add(hole);
        }
      }
    }

    private void end(Draw draw, Side side, End end, int count, int mains, List<HoleId> mainHoles) {
      List<HoleId> all = new ArrayList<>();
      for (int i = 1; i <= count; i++) {
        all.add(new HoleId(side, end, i));
      }
      List<HoleId> used = new ArrayList<>(all);
      while (used.size() > mains) {
        HoleId out = used.remove(draw.between(0, used.size() - 1));
        if (used.stream().anyMatch(h -> h.number() > out.number())) {
          skip.add(out);
        }
      }
      mainHoles.addAll(used);
      for (HoleId hole : all) {
        if (!used.contains(hole)) {
          free.add(hole);
        }
      }
    }
  }
}
