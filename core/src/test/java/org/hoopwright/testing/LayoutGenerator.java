package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.NoRun;
import org.hoopwright.geometry.Side;

/**
 * Layouts as frames are drilled, valid by construction: mains next to the axis at both ends,
 * crosses on the flanks and in the holes that the mains leave out near their outside, tie-off holes
 * among the outer mains.
 *
 * <p>The same seed, numbers and features give the same layout on every machine. Whether a layout
 * has a route is left to chance.
 */
public final class LayoutGenerator {

  /** What a layout has beyond the plainest frame. */
  public enum Feature {
    /** The two sides are drilled on their own. */
    UNEVEN,
    /** Mains leave out up to three holes at each end of each side. */
    SKIPS,
    /** Up to two holes a side carry a main and a cross. */
    SHARED,
    /** A hole a side carries nothing. */
    UNUSED,
    /** A hole a side is blocked; the pattern passes it by. */
    BLOCKED,
    /** The frame forbids runs over one or two stretches. */
    NO_RUN,
    /** A few holes are a little outside the hoop's line. */
    DRILLED,
    /** The maker asks for a start, a direction, pieces or sides, or forbids around-the-world. */
    WISHES
  }

  private final Draw draw;
  private final int mains;
  private final int crosses;
  private final Set<Feature> features;

  private LayoutGenerator(Draw draw, int mains, int crosses, Set<Feature> features) {
    this.draw = draw;
    this.mains = mains;
    this.crosses = crosses;
    this.features = features;
  }

  /**
   * A layout of this size.
   *
   * @param draw the source of choices
   * @param mainsPerSide mains a side, at least 2
   * @param crosses crosses, at least 2
   * @param features what it may have; none for the plainest frame
   * @return a layout that has a bed
   * @throws IllegalArgumentException if there are too few mains or crosses
   */
  public static Layout layout(Draw draw, int mainsPerSide, int crosses, Set<Feature> features) {
    if (mainsPerSide < 2 || crosses < 2) {
      throw new IllegalArgumentException(
          "mains a side and crosses are " + mainsPerSide + " and " + crosses + "; give 2 or more");
    }
    return new LayoutGenerator(draw, mainsPerSide, crosses, features).make();
  }

  /**
   * A layout of any usual size with any features: 4 x 4 to 22 x 22.
   *
   * @param draw the source of choices
   * @return a layout that has a bed
   */
  public static Layout any(Draw draw) {
    Set<Feature> features = new LinkedHashSet<>();
    for (Feature feature : Feature.values()) {
      if (draw.chance(40)) {
        features.add(feature);
      }
    }
    return layout(draw, draw.between(2, 11), draw.between(4, 22), features);
  }

  private boolean has(Feature feature) {
    return features.contains(feature);
  }

  /** What a drilled hole is for. */
  private enum Use {
    MAIN,
    CROSS,
    BOTH,
    UNUSED,
    BLOCKED
  }

  /** One side: its holes from the head to the throat, the first {@code head} counted from there. */
  private record Half(List<Use> list, int head) {
    HoleId hole(Side side, int place) {
      return place < head
          ? new HoleId(side, End.HEAD, place + 1)
          : new HoleId(side, End.THROAT, list.size() - place);
    }
  }

  private Layout make() {
    Half left = half();
    Half right = has(Feature.UNEVEN) ? half() : left;
    EachSide<Half> halves = new EachSide<>(left, right);
    LayoutBuilder b =
        Layout.builder("Willowbank " + 2 * mains + " x " + crosses)
            .hoop(
                new Hoop.Superellipse(
                    draw.between(320, 350), draw.between(240, 270), draw.between(20, 24) / 10.0))
            .holes(
                new EachSide<>(left.head, right.head),
                new EachSide<>(left.list.size() - left.head, right.list.size() - right.head))
            .mains(2 * mains)
            .crosses(crosses)
            .shared(named(halves, Use.BOTH))
            .blocked(named(halves, Use.BLOCKED))
            .mainsSkip(Optional.of(skipped(halves)))
            .crossesSkip(named(halves, Use.UNUSED));
    tieOff(b, halves);
    if (has(Feature.NO_RUN)) {
      b.noRun(noRuns(halves));
    }
    if (has(Feature.WISHES)) {
      wishes(b);
    }
    Layout plain = b.build();
    return has(Feature.DRILLED)
        ? plain.toBuilder().at(BedLayouts.moved(draw, plain)).build()
        : plain;
  }

  private Half half() {
    int shared = has(Feature.SHARED) ? draw.between(0, Math.min(2, crosses - 1)) : 0;
    int left = crosses - shared;
    int atHead = has(Feature.SKIPS) ? draw.between(0, Math.min(3, left / 2)) : 0;
    int atThroat = has(Feature.SKIPS) ? draw.between(0, Math.min(3, left / 2)) : 0;
    List<Use> head = end(atHead);
    List<Use> throat = end(atThroat);
    for (int i = 0; i < shared; i++) {
      // The outermost mains' holes are those that are shared.
      List<Use> end = i % 2 == 0 ? head : throat;
      end.set(end.lastIndexOf(Use.MAIN), Use.BOTH);
    }
    List<Use> flank = new ArrayList<>();
    for (int i = atHead + atThroat + shared; i < crosses; i++) {
      flank.add(Use.CROSS);
    }
    if (has(Feature.UNUSED)) {
      flank.add(draw.between(0, flank.size()), Use.UNUSED);
    }
    if (has(Feature.BLOCKED)) {
      List<Use> list = draw.oneOf(List.of(head, flank, throat));
      list.add(draw.between(0, list == flank ? flank.size() : list.size() - 1), Use.BLOCKED);
    }
    List<Use> all = new ArrayList<>(head);
    all.addAll(flank);
    for (int i = throat.size() - 1; i >= 0; i--) {
      all.add(throat.get(i));
    }
    return new Half(List.copyOf(all), head.size() + draw.between(0, flank.size()));
  }

  /** Mains from the axis outwards, with holes for crosses among the outer ones. */
  private List<Use> end(int left) {
    List<Use> list = new ArrayList<>();
    for (int k = 1; k <= mains; k++) {
      list.add(Use.MAIN);
    }
    for (int i = 0; i < left; i++) {
      list.add(draw.between(Math.max(1, list.size() - 4), list.size() - 1), Use.CROSS);
    }
    return list;
  }

  /** The holes of this use, without side where both sides are alike. */
  private List<HoleRef> named(EachSide<Half> halves, Use use) {
    return refs(
        halves,
        half -> {
          List<Integer> places = new ArrayList<>();
          for (int p = 0; p < half.list.size(); p++) {
            if (half.list.get(p) == use) {
              places.add(p);
            }
          }
          return places;
        });
  }

  /** What the mains leave out: holes without a main before the last main of an end. */
  private List<HoleRef> skipped(EachSide<Half> halves) {
    return refs(
        halves,
        half -> {
          List<Integer> places = new ArrayList<>();
          int size = half.list.size();
          for (int p = 0; p < size; p++) {
            boolean main = isMain(half.list.get(p));
            long before = half.list.subList(0, p).stream().filter(LayoutGenerator::isMain).count();
            long after =
                half.list.subList(p, size).stream().filter(LayoutGenerator::isMain).count();
            if (!main && (p < half.head ? before : after) < mains) {
              places.add(p);
            }
          }
          return places;
        });
  }

  private static boolean isMain(Use use) {
    return use == Use.MAIN || use == Use.BOTH;
  }

  private List<HoleRef> refs(EachSide<Half> halves, Function<Half, List<Integer>> places) {
    List<HoleRef> refs = new ArrayList<>();
    for (Side side : Side.values()) {
      Half half = halves.of(side);
      for (int p : places.apply(half)) {
        HoleId hole = half.hole(side, p);
        if (has(Feature.UNEVEN)) {
          refs.add(HoleRef.of(hole));
        } else if (side == Side.LEFT) {
          refs.add(HoleRef.both(hole.end(), hole.number()));
        }
      }
    }
    return refs;
  }

  /** Two tie-off holes at each end, among the outer mains, and one anywhere. */
  private void tieOff(LayoutBuilder b, EachSide<Half> halves) {
    Map<HoleRef, Integer> bore = new LinkedHashMap<>();
    List<HoleRef> holes =
        refs(
            halves,
            half -> {
              int size = half.list.size();
              Set<Integer> places = new TreeSet<>();
              for (int i = 0; i < 2; i++) {
                int out = draw.between(0, Math.min(3, mains - 1));
                places.add(nth(half, mains - out));
                places.add(nth(half, mains + 1 + draw.between(0, Math.min(3, mains - 1))));
              }
              places.add(draw.between(0, size - 1));
              places.removeIf(p -> half.list.get(p) == Use.BLOCKED);
              return List.copyOf(places);
            });
    for (HoleRef hole : holes) {
      for (HoleId id : hole.holes()) {
        Half half = halves.of(id.side());
        int place = id.end() == End.HEAD ? id.number() - 1 : half.list.size() - id.number();
        if (half.list.get(place) == Use.BOTH) {
          bore.put(hole, 3);
        }
      }
    }
    b.tieOff(holes).bore(bore);
  }

  /** The place of the k-th main hole of a side's list, from 1; mains at the throat follow. */
  private static int nth(Half half, int k) {
    int found = 0;
    for (int p = 0; p < half.list.size(); p++) {
      found += isMain(half.list.get(p)) ? 1 : 0;
      if (found == k) {
        return p;
      }
    }
    throw new IllegalArgumentException("main hole " + k + " of " + found);
  }

  private List<NoRun> noRuns(EachSide<Half> halves) {
    List<NoRun> all = new ArrayList<>();
    int count = draw.between(1, 2);
    for (int i = 0; i < count; i++) {
      Side side = draw.oneOf(List.of(Side.values()));
      Half half = halves.of(side);
      int from = draw.between(0, half.list.size() - 2);
      int to = Math.min(half.list.size() - 1, from + draw.between(1, 2));
      HoleRef a = HoleRef.of(half.hole(side, from));
      HoleRef b = HoleRef.of(half.hole(side, to));
      all.add(new NoRun(a, b));
      if (!has(Feature.UNEVEN)) {
        all.add(new NoRun(a, b).mirrored());
      }
    }
    return all;
  }

  private void wishes(LayoutBuilder b) {
    if (draw.chance(30)) {
      b.mainsStart(draw.oneOf(List.of(End.values())));
    }
    if (draw.chance(30)) {
      b.direction(draw.oneOf(List.of(Direction.values())));
    }
    if (draw.chance(30)) {
      b.pieces(draw.between(1, 2));
    }
    if (draw.chance(20)) {
      b.shortSide(draw.oneOf(List.of(Side.values())));
    }
    if (draw.chance(20)) {
      b.startSide(draw.oneOf(List.of(Side.values())));
    }
    b.aroundTheWorld(draw.chance(70));
  }
}
