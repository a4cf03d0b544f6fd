package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutArbitraries;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.LayoutGenerator.Feature;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** How runs are laid: recounted from drawn lines, and against every choice of halves. */
@Domain(LayoutArbitraries.class)
class LaidRunsTest {

  private static final int MOST_TRIED = 14;

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  /** The best, the middle and the last of a bed's routes. */
  private static List<Route> some(Bed bed, RouteRequest request) {
    List<RankedRoute> all = RouteSearch.search(bed, request).ranked();
    return all.isEmpty()
        ? List.of()
        : List.of(0, all.size() / 2, all.size() - 1).stream().map(i -> all.get(i).route()).toList();
  }

  private static List<Route> some(Bed bed) {
    return some(bed, RouteRequest.builder().build());
  }

  /** Runs are drawn as lines from hole to hole, and the points where two lines cross counted. */
  @Property(tries = 60)
  void noRunCrossesAnother(@ForAll Layout layout) {
    Bed bed = bed(layout);
    for (Route route : some(bed)) {
      LaidRuns laid = LaidRuns.of(bed, route);
      assertThat(new DrawnRuns(bed.ring(), laid, Map.of()).crossings()).as("%s", route).isEmpty();
    }
  }

  /** The recount can fail: two strings in a shared hole change places, and their runs cross. */
  @Test
  void stringsTheWrongWayRoundInASharedHoleCross() {
    Layout layout = LayoutGenerator.layout(Draw.from(11), 6, 9, Set.of(Feature.SHARED));
    Bed bed = bed(layout);
    int crossed = 0;
    for (Route route : some(bed)) {
      LaidRuns laid = LaidRuns.of(bed, route);
      for (Map.Entry<HoleId, List<LaidRuns.InHole>> hole : laid.holes().entrySet()) {
        List<LaidRuns.InHole> wrong = new ArrayList<>(hole.getValue());
        java.util.Collections.reverse(wrong);
        DrawnRuns drawn = new DrawnRuns(bed.ring(), laid, Map.of(hole.getKey(), wrong));
        crossed += drawn.crossings().size();
      }
    }
    assertThat(crossed).isPositive();
  }

  /** Every choice of halves is tried for runs that hang together, and none is better. */
  @Property(tries = 40)
  void noOtherHalvesAreBetter(@ForAll Layout layout) {
    Bed bed = bed(layout);
    for (Route route : some(bed)) {
      LaidRuns laid = LaidRuns.of(bed, route);
      for (List<LaidRuns.Laid> part : parts(bed.ring(), laid)) {
        if (part.size() <= MOST_TRIED) {
          int[] own = new int[part.size()];
          for (int i = 0; i < own.length; i++) {
            own[i] = part.get(i).half() == Half.FACE ? 0 : 1;
          }
          assertThat(cost(bed.ring(), part, own)).isEqualTo(least(bed.ring(), part));
        }
      }
    }
  }

  /** Runs that share stretches, directly or through others. */
  private static List<List<LaidRuns.Laid>> parts(Ring ring, LaidRuns laid) {
    List<List<LaidRuns.Laid>> parts = new ArrayList<>();
    for (LaidRuns.Laid l : laid.runs()) {
      List<LaidRuns.Laid> joined = new ArrayList<>(List.of(l));
      parts.removeIf(
          part -> {
            boolean meets = part.stream().anyMatch(o -> stretches(ring, o, l));
            return meets && joined.addAll(0, part);
          });
      parts.add(joined);
    }
    return parts;
  }

  private static Set<Integer> stretches(Ring ring, LaidRuns.Laid l) {
    Set<Integer> stretches = new TreeSet<>();
    int a = ring.place(l.run().from());
    int b = ring.place(l.run().to());
    for (int p = Math.min(a, b); p < Math.max(a, b) && !l.run().isCentreLoop(); p++) {
      stretches.add(p);
    }
    return stretches;
  }

  private static boolean stretches(Ring ring, LaidRuns.Laid a, LaidRuns.Laid b) {
    Set<Integer> both = stretches(ring, a);
    both.retainAll(stretches(ring, b));
    return a.run().side() == b.run().side() && !both.isEmpty();
  }

  /** Pairs upon each other, mains' runs at the back, crosses' runs at the face. */
  private static List<Integer> cost(Ring ring, List<LaidRuns.Laid> part, int[] halves) {
    int stacked = 0;
    int mains = 0;
    int crosses = 0;
    for (int i = 0; i < halves.length; i++) {
      for (int j = 0; j < i; j++) {
        stacked += halves[i] == halves[j] && stretches(ring, part.get(i), part.get(j)) ? 1 : 0;
      }
      Run run = part.get(i).run();
      List<Boolean> kinds =
          List.of(run.after(), run.before()).stream()
              .flatMap(Optional::stream)
              .map(SpanId::isMain)
              .distinct()
              .toList();
      mains += kinds.equals(List.of(true)) && halves[i] == 1 ? 1 : 0;
      crosses += kinds.equals(List.of(false)) && halves[i] == 0 ? 1 : 0;
    }
    return List.of(stacked, mains, crosses);
  }

  private static List<Integer> least(Ring ring, List<LaidRuns.Laid> part) {
    List<Integer> least = List.of(Integer.MAX_VALUE, 0, 0);
    for (int choice = 0; choice < 1 << part.size(); choice++) {
      int[] halves = new int[part.size()];
      for (int i = 0; i < halves.length; i++) {
        halves[i] = choice >> i & 1;
      }
      List<Integer> cost = cost(ring, part, halves);
      if (java.util.Arrays.compare(cost.toArray(new Integer[0]), least.toArray(new Integer[0]))
          < 0) {
        least = cost;
      }
    }
    return least;
  }

  @Property(tries = 40)
  void whatLiesBesideAndUponIsWhatSharesAStretch(@ForAll Layout layout) {
    Bed bed = bed(layout);
    for (Route route : some(bed)) {
      LaidRuns laid = LaidRuns.of(bed, route);
      int doubled = 0;
      int stacked = 0;
      for (int i = 0; i < laid.runs().size(); i++) {
        LaidRuns.Laid l = laid.runs().get(i);
        Map<Half, List<Run>> met = new HashMap<>();
        for (LaidRuns.Laid earlier : laid.runs().subList(0, i)) {
          if (stretches(bed.ring(), l, earlier)) {
            met.computeIfAbsent(earlier.half(), h -> new ArrayList<>()).add(earlier.run());
          }
        }
        assertThat(l.upon()).isEqualTo(met.getOrDefault(l.half(), List.of()));
        assertThat(l.beside()).isEqualTo(met.getOrDefault(l.half().other(), List.of()));
        doubled += l.doubled() ? 1 : 0;
        stacked += l.upon().size();
        for (Run beneath : l.upon()) {
          assertThat(onOneStretch(bed.ring(), laid, l.run(), beneath)).isGreaterThan(2);
        }
      }
      assertThat(doubled).isEqualTo(route.measures().doubled());
      assertThat(stacked).isEqualTo(laid.stacked());
      assertThat(RoutePreferences.STACKED.value(route, bed)).isEqualTo(stacked);
    }
  }

  /** The most runs on any stretch that two share: a run lies upon another only for want of room. */
  private static int onOneStretch(Ring ring, LaidRuns laid, Run a, Run b) {
    Map<Run, Set<Integer>> stretches = new HashMap<>();
    laid.runs().stream()
        .filter(l -> l.run().side() == a.side())
        .forEach(l -> stretches.put(l.run(), stretches(ring, l)));
    return stretches.getOrDefault(a, Set.of()).stream()
        .filter(stretches.getOrDefault(b, Set.of())::contains)
        .mapToInt(p -> (int) stretches.values().stream().filter(s -> s.contains(p)).count())
        .max()
        .orElse(0);
  }

  /**
   * A main stays in the same half of neighbouring shared holes (Tennis Industry, "Use Care When
   * Sharing", 2016/09).
   */
  @Property(tries = 60)
  void aMainKeepsItsHalfFromSharedHoleToSharedHole(@ForAll Layout layout) {
    Bed bed = bed(layout);
    for (Route route : some(bed)) {
      LaidRuns laid = LaidRuns.of(bed, route);
      for (LaidRuns.Laid l : laid.runs()) {
        if (l.run().after().filter(SpanId::isMain).isPresent()
            && l.run().before().filter(SpanId::isMain).isPresent()) {
          Set<Boolean> inFront = new java.util.HashSet<>();
          for (HoleId hole : List.of(l.run().from(), l.run().to())) {
            List<LaidRuns.InHole> in = laid.holes().getOrDefault(hole, List.of());
            if (in.size() == 2
                && in.stream().allMatch(s -> s.span().isPresent())
                && in.stream().filter(s -> s.span().orElseThrow().isMain()).count() == 1) {
              inFront.add(in.get(0).span().orElseThrow().isMain());
            }
          }
          assertThat(inFront).as("%s of %s", l.run(), route).hasSizeLessThan(2);
        }
      }
    }
  }

  @Property(tries = 40)
  void mirroredRoutesAreLaidAsMirrorImages(@ForAll Layout layout) {
    Bed bed = bed(layout);
    Bed image = bed(layout.mirrored());
    for (Route route : some(bed)) {
      assertThat(shown(LaidRuns.of(image, route.mirrored()), true))
          .isEqualTo(shown(LaidRuns.of(bed, route), false));
    }
  }

  private static List<String> shown(LaidRuns laid, boolean mirror) {
    List<String> shown = new ArrayList<>();
    for (LaidRuns.Laid l : laid.runs()) {
      if (!l.run().isCentreLoop()) {
        shown.add(
            name(l.run(), mirror)
                + " "
                + l.half()
                + l.beside().stream().map(r -> name(r, mirror)).toList()
                + l.upon().stream().map(r -> name(r, mirror)).toList());
      }
    }
    laid.holes()
        .forEach(
            (hole, in) ->
                shown.add(
                    (mirror ? hole.mirrored() : hole)
                        + in.stream().map(s -> name(s.run(), mirror)).toList().toString()));
    return shown.stream().sorted().collect(Collectors.toList());
  }

  private static String name(Run r, boolean mirror) {
    Run shown =
        mirror
            ? new Run(
                r.end(),
                r.after().map(SpanId::mirrored),
                r.before().map(SpanId::mirrored),
                r.from().mirrored(),
                r.to().mirrored())
            : r;
    return shown.isCentreLoop() ? "centre loop" : shown.name();
  }

  @Test
  void runsOfAnOrdinaryFrame() {
    Bed bed = bed(Willowbank.hundred().build());
    RankedRoute best = RouteSearch.search(bed, RouteRequest.builder().build()).ranked().get(0);
    LaidRuns laid = best.laidRuns();
    LaidRuns.Laid run = laid.to(SpanId.of("X2")).orElseThrow();
    assertThat(run.run().name()).isEqualTo("X1>X2");
    assertThat(run.half()).isEqualTo(Half.BACK);
    assertThat(run.beside()).extracting(Run::name).containsExactly("R7>R8");
    assertThat(laid.to(SpanId.of("L1"))).isEmpty();
    assertThat(laid.runs().get(0).run().isCentreLoop()).isTrue();
    assertThat(laid.toKnot(EndName.START).run().name()).endsWith(">X1");
    assertThat(laid.stacked()).isZero();
    assertThat(laid.meeting()).extracting(l -> l.run().name()).contains("R7>R8", "X1>X2");
  }

  @Test
  void anEndThatARouteDoesNotHaveIsRefused() {
    Bed bed = bed(Willowbank.teaching().build());
    RouteRequest one = RouteRequest.builder().pieces(1).build();
    LaidRuns laid = LaidRuns.of(bed, some(bed, one).get(0));
    assertThatThrownBy(() -> laid.toKnot(EndName.START))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("start");
  }

  /** With the preference first, another route stands first: the usual best has to stack runs. */
  @Test
  void asAPreferenceItDecides() {
    Layout layout = Willowbank.ninetyFive().tieOff(List.of()).tieOff("8H", "11H", "9T").build();
    Bed bed = bed(layout);
    List<RoutePreference> mine = new ArrayList<>(RoutePreferences.standard());
    mine.add(0, RoutePreferences.STACKED);
    RouteRequest usual = RouteRequest.builder().pieces(1).build();
    RouteRequest own = RouteRequest.builder().pieces(1).preferences(mine).build();
    List<RankedRoute> ranked = RouteSearch.search(bed, own).ranked();
    RankedRoute first = RouteSearch.search(bed, usual).ranked().get(0);
    assertThat(first.values()).doesNotContainKey("stacked");
    assertThat(first.laidRuns().stacked()).isPositive();
    assertThat(ranked.get(0).values()).containsEntry("stacked", "0");
    assertThat(ranked).extracting(r -> (long) r.laidRuns().stacked()).isSorted();
  }
}
