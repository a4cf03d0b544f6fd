package org.hoopwright.patterns.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RoutePreference;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** The Java of {@code docs/new-preference.md} is compiled and run here. */
class PreferenceExampleTest {

  private static RouteRequest example() {
    // example: begin
    RoutePreference shortSideRight =
        new RoutePreference() {
          @Override
          public String name() {
            return "shortSideRight";
          }

          @Override
          public long value(Route route, Bed bed) {
            return route.shortSide() == Side.RIGHT ? 0 : 1;
          }

          @Override
          public String reason() {
            return "a short side on the right";
          }
        };
    List<RoutePreference> mine = new ArrayList<>(RoutePreferences.standard());
    mine.add(0, shortSideRight);
    RouteRequest request = RouteRequest.builder().preferences(mine).build();
    // example: end
    return request;
  }

  @Test
  void exampleDecides() {
    // One hole for a knot on one side only keeps mirror images apart.
    Bed bed =
        StatedAssignment.assign(Willowbank.hundred().tieOff("5H", "6T", "8T", "L12T").build())
            .bed()
            .orElseThrow();
    List<RankedRoute> ranked = RouteSearch.search(bed, example()).ranked();
    assertThat(ranked.get(0).route().shortSide()).isEqualTo(Side.RIGHT);
    assertThat(ranked.get(0).values()).containsEntry("shortSideRight", "0");
    assertThat(ranked).extracting(r -> r.route().shortSide()).contains(Side.LEFT);
    assertThat(ranked).extracting(RankedRoute::why).anyMatch(w -> w.contains("on the right"));
  }

  @Test
  void exampleIsThatOfTheDocument() {
    Repository.assertExample("docs/new-preference.md", "PreferenceExampleTest.java", code -> code);
  }
}
