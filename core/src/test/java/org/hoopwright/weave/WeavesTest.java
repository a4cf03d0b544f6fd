package org.hoopwright.weave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

class WeavesTest {

  private static Bed bed(LayoutBuilder layout) {
    return StatedAssignment.assign(layout.build()).bed().orElseThrow();
  }

  private static List<String> rightRows(Bed bed) {
    List<String> rows = new ArrayList<>();
    for (Span cross : bed.crosses()) {
      StringBuilder row = new StringBuilder();
      for (Crossing c : bed.crossings(cross.id())) {
        row.append(c.crossOver() ? 'o' : 'u');
      }
      rows.add(row.toString());
    }
    return rows;
  }

  private static String inverse(String row) {
    return row.replace('o', 'x').replace('u', 'o').replace('x', 'u');
  }

  @Test
  void rightWeaveAndItsInverseHaveNothingWrong() {
    Bed bed = bed(Willowbank.hundred());
    List<String> rows = rightRows(bed);
    WeaveReport right = Weaves.inspect(ObservedWeave.ofRows(bed, rows));
    assertThat(right).isEqualTo(new WeaveReport(List.of(), List.of(), false));
    assertThat(ObservedWeave.ofRows(bed, rows).rows()).isEqualTo(rows);

    rows.replaceAll(WeavesTest::inverse);
    assertThat(Weaves.inspect(ObservedWeave.ofRows(bed, rows)))
        .isEqualTo(new WeaveReport(List.of(), List.of(), true));
  }

  @Test
  void oneCrossShiftedByOneIsWovenAgain() {
    Bed bed = bed(Willowbank.hundred());
    List<String> rows = rightRows(bed);
    rows.set(11, inverse(rows.get(11)));
    WeaveReport report = Weaves.inspect(ObservedWeave.ofRows(bed, rows));
    assertThat(report.weaveAgain()).containsExactly(SpanId.cross(12));
    assertThat(report.inverted()).isFalse();
    // Along X12 all is well; along each main it meets X11, X12 and X13 lie on the same side.
    assertThat(report.misweaves()).hasSize(2 * 16).allMatch(m -> m.along().isMain());
    assertThat(report.misweaves().get(0))
        .hasToString("L8 lies over X11 and X12".replace("over", bedOver(bed) ? "under" : "over"));
  }

  private static boolean bedOver(Bed bed) {
    return bed.crossOver(SpanId.cross(11), SpanId.of("L8"));
  }

  @Test
  void crossingsThatNobodySawAreNotBlamed() {
    Bed bed = bed(Willowbank.teaching());
    List<String> rows = rightRows(bed);
    rows.set(1, "????");
    rows.set(3, "");
    WeaveReport report = Weaves.inspect(ObservedWeave.ofRows(bed, rows));
    assertThat(report.misweaves()).isEmpty();
    assertThat(report.weaveAgain()).isEmpty();
  }

  @Test
  void wrongRowsAreTheCallersMistake() {
    Bed bed = bed(Willowbank.teaching());
    assertThatThrownBy(() -> ObservedWeave.ofRows(bed, List.of("ouou")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("number of rows (1)");
    List<String> rows = rightRows(bed);
    rows.set(2, "ouo");
    assertThatThrownBy(() -> ObservedWeave.ofRows(bed, rows)).hasMessageContaining("4 letters");
    rows.set(2, "ouox");
    assertThatThrownBy(() -> ObservedWeave.ofRows(bed, rows)).hasMessageContaining("o, u or ?");
  }

  /** On a frame of 4 x 4 every set of strings is tried: none smaller will do. */
  @Property(tries = 150)
  void leastIsLeast(@ForAll long seed) {
    Bed bed = bed(Willowbank.teaching());
    Draw draw = Draw.from(seed);
    List<String> rows = new ArrayList<>();
    for (String right : rightRows(bed)) {
      StringBuilder row = new StringBuilder(right);
      for (int i = 0; i < row.length(); i++) {
        if (draw.chance(20)) {
          row.setCharAt(i, draw.oneOf(List.of('o', 'u', '?')));
        }
      }
      rows.add(row.toString());
    }
    ObservedWeave observed = ObservedWeave.ofRows(bed, rows);
    WeaveReport report = Weaves.inspect(observed);
    int least = Integer.MAX_VALUE;
    List<SpanId> all = bed.spans().stream().map(Span::id).toList();
    for (int set = 0; set < 1 << all.size(); set++) {
      List<SpanId> out = new ArrayList<>();
      for (int i = 0; i < all.size(); i++) {
        if (((set >> i) & 1) == 1) {
          out.add(all.get(i));
        }
      }
      if (alternates(bed, observed, out, false) || alternates(bed, observed, out, true)) {
        least = Math.min(least, out.size());
      }
    }
    assertThat(report.weaveAgain()).hasSize(least);
    assertThat(alternates(bed, observed, report.weaveAgain(), report.inverted())).isTrue();
  }

  private static boolean alternates(
      Bed bed, ObservedWeave observed, List<SpanId> out, boolean inverse) {
    return bed.crosses().stream()
        .flatMap(x -> bed.crossings(x.id()).stream())
        .filter(c -> !out.contains(c.cross()) && !out.contains(c.main()))
        .allMatch(
            c ->
                observed
                    .crossOver(c.cross(), c.main())
                    .map(o -> o == (c.crossOver() != inverse))
                    .orElse(true));
  }

  private static Map<SpanId, Hardness> hardness(String passes, boolean oneAhead) {
    RouteRequest request =
        RouteRequest.builder()
            .pieces(1)
            .mainsStart(End.THROAT)
            .direction(Direction.HEAD_TO_THROAT)
            .build();
    Route route =
        RouteSearch.search(bed(Willowbank.hundred().noRun(List.of())), request).ranked().stream()
            .map(RankedRoute::route)
            .filter(r -> RouteNotation.passes(r).equals(passes))
            .findFirst()
            .orElseThrow();
    return Hardness.of(route, oneAhead);
  }

  /**
   * The last open hole of a box pattern must come out hard (Racquet Sports Industry, "Catching Box
   * Pattern Misweaves", 2006/05).
   */
  @Test
  void lastCrossOfABoxIsHard() {
    for (String passes :
        List.of(
            "short L1-L7 | long R1-R8 X19 L8 X1-X18",
            "short L1-L7 X1 | long R1-R8 X19 L8 X2-X18")) {
      Map<SpanId, Hardness> hardness = hardness(passes, false);
      assertThat(hardness).hasSize(19).containsEntry(SpanId.cross(18), Hardness.HARD);
    }
  }

  /** Woven one ahead, crosses go along (Tennis Industry, "Weave Your Way …", 2015/04). */
  @Test
  void weavingOneAheadMakesCrossesEasy() {
    String passes = "short L1-L7 | long R1-R8 X19 L8 X1-X18";
    assertThat(hardness(passes, false).get(SpanId.cross(8))).isEqualTo(Hardness.HARD);
    assertThat(hardness(passes, true).get(SpanId.cross(8))).isEqualTo(Hardness.EASY);
    // Between the last cross but one and the bottom cross: along the one, against the other.
    assertThat(hardness(passes, true).get(SpanId.cross(18))).isEqualTo(Hardness.SEMI_HARD);
  }
}
