package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Job;
import org.hoopwright.frame.Layout;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteCheck;
import org.hoopwright.route.RouteResult;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every route of every bundled layout is legal, and its plan is proven. */
class SamplePlansProvenTest {

  static java.util.List<String> names() {
    return Samples.list().stream().map(Sample::name).toList();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyRouteIsLegalAndItsPlanProven(String name) {
    Layout layout = Samples.layout(name);
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    RouteResult routes = Hoopwright.routes(bed, Job.standard());
    assertThat(routes.status()).isEqualTo(RouteResult.Status.FOUND);
    int planned = 0;
    for (RankedRoute ranked : routes.ranked()) {
      assertThat(RouteCheck.check(bed, ranked.route(), routes.request()))
          .as(ranked.route().toString())
          .isEmpty();
      Optional<Plan> plan = Hoopwright.planOf(bed, ranked, Job.standard());
      if (plan.isPresent()) {
        planned++;
        assertThat(Replay.check(plan.get().bench())).isEmpty();
      }
    }
    // Where a clamp finds no place with any of its knots, a route has no plan; none of these frames
    // has such a route.
    assertThat(planned).isEqualTo(routes.ranked().size());
  }
}
