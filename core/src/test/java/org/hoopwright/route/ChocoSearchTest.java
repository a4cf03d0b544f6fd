package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.LayoutGenerator.Feature;
import org.hoopwright.testing.SearchComparison;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/**
 * On full-size frames the search finds what a constraint solver finds, and the same best. Drawn
 * frames are few in an ordinary build; {@code -Dhoopwright.proofs=all} draws more.
 */
class ChocoSearchTest {

  private static final boolean ALL = "all".equals(System.getProperty("hoopwright.proofs"));

  /** Compares the set of orders and the best route; how many orders there are. */
  private static int compare(Bed bed, RouteRequest request) {
    SearchComparison.Outcome outcome = SearchComparison.compare(bed, request);
    assertThat(outcome.differences()).isEmpty();
    return outcome.orders();
  }

  @Test
  void ordinaryFramesInOnePiece() {
    RouteRequest request = RouteRequest.builder().pieces(1).build();
    Bed sixteen = BruteForceSearchTest.bed(Willowbank.hundred().noRun(List.of()).build());
    assertThat(compare(sixteen, request)).isEqualTo(72); // 18 an end and a direction
    assertThat(compare(BruteForceSearchTest.bed(Willowbank.ninetyFive().build()), request))
        .isEqualTo(72);
    compare(BruteForceSearchTest.bed(Willowbank.hundred().build()), request);
  }

  @Test
  void ordinaryFrameInTwoPieces() {
    RouteRequest request =
        RouteRequest.builder()
            .pieces(2)
            .mainsStart(End.THROAT)
            .direction(Direction.HEAD_TO_THROAT)
            .knotLimit(4)
            .build();
    Bed bed = BruteForceSearchTest.bed(Willowbank.hundred().noRun(List.of()).build());
    assertThat(compare(bed, request)).isGreaterThan(20);
  }

  @Test
  void drawnFramesOfFullSize() {
    Draw draw = Draw.from(7);
    int frames = ALL ? 40 : 4;
    int orders = 0;
    for (int i = 0; i < frames; i++) {
      Set<Feature> features = new LinkedHashSet<>();
      for (Feature feature : Feature.values()) {
        if (draw.chance(30)) {
          features.add(feature);
        }
      }
      LayoutBuilder layout =
          LayoutGenerator.layout(draw, draw.between(7, 11), draw.between(15, 22), features)
              .toBuilder();
      if (draw.chance(30)) {
        layout.startSide(draw.chance(50) ? Side.LEFT : Side.RIGHT);
      }
      if (draw.chance(30)) {
        layout.shortSide(draw.chance(50) ? Side.LEFT : Side.RIGHT);
      }
      Bed bed = BruteForceSearchTest.bed(layout.build());
      RouteRequest.Builder request = RouteRequest.builder().runLimit(draw.between(3, 5));
      if (!ALL || draw.chance(50)) {
        request.pieces(1); // few orders, so that an ordinary build stays short
      }
      orders += compare(bed, request.build());
    }
    assertThat(orders).isGreaterThan(20);
  }
}
