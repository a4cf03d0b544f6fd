package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.BedLayouts;
import org.hoopwright.testing.Draw;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class SharedChoiceTest {

  /** One way to choose, as the holes of the crosses on each side. */
  private record Choice(List<HoleId> left, List<HoleId> right, double cost) {}

  /** Every way, worked out without the programme: all subsets of the shared holes. */
  private static List<Choice> all(Layout layout, HolePositions positions, boolean alike) {
    List<List<HoleId>> left = subsets(layout, Side.LEFT);
    List<List<HoleId>> right = subsets(layout, Side.RIGHT);
    List<Choice> found = new ArrayList<>();
    for (List<HoleId> l : left) {
      for (List<HoleId> r : right) {
        if (!alike || l.stream().map(HoleId::mirrored).toList().equals(r)) {
          found.add(new Choice(l, r, cost(layout, positions, l, r)));
        }
      }
    }
    found.sort(Comparator.comparingDouble(Choice::cost));
    return found;
  }

  private static List<List<HoleId>> subsets(Layout layout, Side side) {
    List<HoleId> items = items(layout, side);
    List<List<HoleId>> found = new ArrayList<>();
    for (int mask = 0; mask < 1 << items.size(); mask++) {
      List<HoleId> picked = new ArrayList<>();
      boolean all = true;
      for (int i = 0; i < items.size(); i++) {
        if ((mask >> i & 1) == 1) {
          picked.add(items.get(i));
        } else if (!carriesMain(layout, items.get(i))) {
          all = false;
        }
      }
      if (all && picked.size() == layout.crossesCount()) {
        found.add(picked);
      }
    }
    return found;
  }

  private static boolean carriesMain(Layout layout, HoleId hole) {
    List<HoleRef> skip = layout.mainsSkip().orElseThrow();
    int before = 0;
    for (int i = 1; i <= hole.number(); i++) {
      HoleId h = new HoleId(hole.side(), hole.end(), i);
      boolean skipped = skip.stream().anyMatch(r -> r.holes().contains(h));
      if (i == hole.number()) {
        return !skipped && before < layout.mainsPerSide();
      }
      before += skipped ? 0 : 1;
    }
    return false;
  }

  /** Free and shared holes of a side, head to throat. */
  private static List<HoleId> items(Layout layout, Side side) {
    List<HoleId> list = new ArrayList<>();
    IntStream.rangeClosed(1, layout.headHoles().of(side))
        .forEach(i -> list.add(new HoleId(side, End.HEAD, i)));
    IntStream.iterate(layout.throatHoles().of(side), i -> i >= 1, i -> i - 1)
        .forEach(i -> list.add(new HoleId(side, End.THROAT, i)));
    list.removeIf(
        h ->
            layout.crossesSkip().stream().anyMatch(r -> r.holes().contains(h))
                || (carriesMain(layout, h)
                    && layout.shared().stream().noneMatch(r -> r.holes().contains(h))));
    return list;
  }

  private static double cost(
      Layout layout, HolePositions positions, List<HoleId> left, List<HoleId> right) {
    double sum = 0;
    for (int j = 0; j < left.size(); j++) {
      double yl = y(positions, left.get(j));
      double yr = y(positions, right.get(j));
      if (layout.crossesOffsets().isPresent()) {
        double top = ((Hoop.Superellipse) layout.hoop()).length() / 2;
        sum += Math.abs(yl - top + layout.crossesOffsets().get().left().below().get(j));
        sum += Math.abs(yr - top + layout.crossesOffsets().get().right().below().get(j));
        continue;
      }
      sum += Math.abs(yl - yr);
      for (List<HoleId> side : List.of(left, right)) {
        if (j > 0) {
          List<HoleId> items = items(layout, side.get(j).side());
          double pitch =
              Math.max(
                  1,
                  (y(positions, items.get(0)) - y(positions, items.get(items.size() - 1)))
                      / (side.size() - 1));
          double gap = y(positions, side.get(j - 1)) - y(positions, side.get(j));
          sum += 0.5 * (gap - pitch) * (gap - pitch) / pitch;
        }
      }
    }
    return sum;
  }

  private static double y(HolePositions positions, HoleId hole) {
    return positions.points().getOrDefault(hole, new Point(0, Double.MAX_VALUE)).y();
  }

  private static void assertBest(Layout layout, boolean alike) {
    HolePositions positions = HolePositions.of(layout);
    List<Choice> all = all(layout, positions, alike);
    Assume.that(all.size() <= 20_000);
    Assignment assignment = StatedAssignment.assign(layout);
    Bed bed = assignment.bed().orElseThrow();
    List<HoleId> left = bed.crosses().stream().map(Span::from).toList();
    List<HoleId> right = bed.crosses().stream().map(Span::to).toList();
    assertThat(cost(layout, positions, left, right)).isCloseTo(all.get(0).cost(), within(1e-3));
    var warning =
        assignment.findings().stream()
            .filter(f -> f.code() == FindingCode.SHARED_CHOICE)
            .findFirst();
    assertThat(warning.isPresent()).isEqualTo(all.size() > 1);
    if (all.size() > 1) {
      String text = warning.orElseThrow().message();
      double more = all.get(1).cost() - all.get(0).cost();
      if (more < 0.049) {
        assertThat(text).contains("would do as well");
      } else if (more > 0.051) {
        assertThat(text).containsPattern("would (cost|lie) \\d+\\.\\d mm");
        double said = Double.parseDouble(text.replaceAll(".* (\\d+\\.\\d) mm .*", "$1"));
        assertThat(said).isCloseTo(more, within(0.051));
      }
    }
  }

  @Property(tries = 400)
  void unevenSidesTakeTheCheapestOfAllWays(@ForAll long seed) {
    Layout layout = BedLayouts.uneven(Draw.from(seed), 5, true);
    assertBest(layout, false);
  }

  @Property(tries = 150)
  void evenSidesTakeTheCheapestOfAllWaysAlike(@ForAll long seed) {
    Layout layout = BedLayouts.even(Draw.from(seed), 5, true);
    assertBest(layout, true);
    // And taking different holes on the two sides is never cheaper.
    HolePositions positions = HolePositions.of(layout);
    List<Choice> free = all(layout, positions, false);
    List<Choice> alike = all(layout, positions, true);
    assertThat(alike.get(0).cost()).isCloseTo(free.get(0).cost(), within(1e-9));
  }

  @Property(tries = 150)
  void measuredHeightsDecide(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    Layout plain = BedLayouts.uneven(draw, 4, true).toBuilder().at(Map.of()).build();
    double top = ((Hoop.Superellipse) plain.hoop()).length() / 2;
    HolePositions positions = HolePositions.of(plain);
    List<HoleId> left = draw.oneOf(subsets(plain, Side.LEFT));
    List<HoleId> right = draw.oneOf(subsets(plain, Side.RIGHT));
    Layout layout =
        plain.toBuilder()
            .crossesOffsets(
                new EachSide<>(
                    measured(draw, top, positions, left), measured(draw, top, positions, right)))
            .build();
    Assignment assignment = StatedAssignment.assign(layout);
    Bed bed =
        assignment.bed().orElseThrow(() -> new AssertionError(assignment.findings().toString()));
    assertThat(bed.crosses()).extracting(Span::from).isEqualTo(left);
    assertThat(bed.crosses()).extracting(Span::to).isEqualTo(right);
    List<Choice> all = all(layout, positions, false);
    assertThat(all.get(0).left()).isEqualTo(left);
    assertThat(all.get(0).right()).isEqualTo(right);
  }

  /** Offsets as somebody might measure them who has these holes in front of him. */
  private static StringOffsets.Crosses measured(
      Draw draw, double top, HolePositions positions, List<HoleId> holes) {
    return new StringOffsets.Crosses(
        holes.stream().map(h -> top - y(positions, h) + draw.between(0, 10) / 1000.0).toList());
  }

  /** A side of many holes, all of which carry mains and are shared. */
  private static Layout crowded(boolean even, int crosses) {
    Map<HoleRef, Point> at = new TreeMap<>(Comparator.comparing(HoleRef::toString));
    if (!even) {
      HolePositions plain = HolePositions.of(crowded(true, crosses));
      plain
          .points()
          .forEach(
              (hole, p) -> {
                if (hole.side() == Side.LEFT && hole.number() % 3 == 0) {
                  at.put(HoleRef.of(hole), new Point(p.x(), p.y() + 0.1));
                }
              });
    }
    Set<HoleRef> shared = new HashSet<>();
    IntStream.rangeClosed(1, 250)
        .forEach(
            i -> {
              shared.add(HoleRef.both(End.HEAD, i));
              shared.add(HoleRef.both(End.THROAT, i));
            });
    return Layout.builder("Willowbank crowded")
        .hoop(new Hoop.Superellipse(330, 248, 2.1))
        .holes(250, 250)
        .at(at)
        .shared(shared.stream().sorted(Comparator.comparing(HoleRef::toString)).toList())
        .mains(500)
        .mainsSkip(Optional.of(List.of()))
        .crosses(crosses)
        .build();
  }

  @Test
  void fiveHundredSharedHolesOfASideAreBounded() {
    Assertions.assertTimeout(
        Duration.ofSeconds(20),
        () -> {
          for (int crosses : new int[] {2, 30, 250, 499, 500}) {
            assertThat(StatedAssignment.assign(crowded(true, crosses)).bed()).isPresent();
          }
        });
  }

  @Test
  void unevenCrowdsEndAtTheLimitAndSaySo() {
    Layout layout = crowded(false, 250);
    Assertions.assertTimeout(
        Duration.ofSeconds(20),
        () -> {
          Assignment assignment = StatedAssignment.assign(layout);
          assertThat(assignment.bed()).isPresent();
          assertThat(assignment.findings())
              .filteredOn(f -> f.code() == FindingCode.SHARED_CHOICE)
              .singleElement()
              .satisfies(f -> assertThat(f.message()).endsWith("ended at its limit."));
        });
  }

  @Test
  void almostAllOfManyUnevenHolesAreStillExact() {
    assertThat(StatedAssignment.assign(crowded(false, 498)).findings())
        .filteredOn(f -> f.code() == FindingCode.SHARED_CHOICE)
        .singleElement()
        .satisfies(f -> assertThat(f.message()).doesNotContain("limit"));
  }
}
