package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteCheck;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every route of every bundled layout is legal, and its plan is proven: in one and two pieces, with
 * mains that go on into crosses, with crosses of another string, without a starting clamp. {@code
 * -Dhoopwright.proofs=all} adds every start of the mains, and for each route its mirror image.
 */
class SamplePlansProvenTest {

  private static final boolean ALL = "all".equals(System.getProperty("hoopwright.proofs"));

  private static final StringSpec FIRM = new StringSpec(Gauge.G17, Material.POLYESTER);
  private static final StringSpec SOFT = new StringSpec(Gauge.G17, Material.NYLON);

  private static Stream<Named<Job>> jobs() {
    List<Named<Job>> jobs = new ArrayList<>();
    Bench noStartingClamp = Bench.builder().startingClamps(0).build();
    RouteRequest twoPieces = RouteRequest.builder().pieces(2).build();
    jobs.add(Named.of("standard", Job.standard()));
    jobs.add(Named.of("crosses of another string", Job.builder().strings(FIRM, SOFT).build()));
    jobs.add(
        Named.of(
            "of another string, starting knots only",
            Job.builder().strings(FIRM, SOFT).bench(noStartingClamp).build()));
    jobs.add(
        Named.of(
            "one piece, no starting clamp",
            Job.builder()
                .routes(RouteRequest.builder().pieces(1).build())
                .bench(noStartingClamp)
                .build()));
    if (ALL) {
      jobs.add(
          Named.of(
              "two pieces, no starting clamp",
              Job.builder().routes(twoPieces).bench(noStartingClamp).build()));
      for (StartMethod start : StartMethod.values()) {
        jobs.add(Named.of(start.word(), Job.builder().startMethod(start).build()));
      }
    }
    return jobs.stream();
  }

  static Stream<Arguments> samplesAndJobs() {
    return Samples.list().stream()
        .flatMap(sample -> jobs().map(job -> Arguments.of(sample.name(), job)));
  }

  static Stream<String> names() {
    return Samples.list().stream().map(Sample::name);
  }

  private static Bed bed(String sample) {
    return StatedAssignment.assign(Samples.layout(sample)).bed().orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("samplesAndJobs")
  void everyRouteIsLegalAndItsPlanProven(String name, Job job) {
    Bed bed = bed(name);
    RouteResult routes = Hoopwright.routes(bed, job);
    assertThat(routes.status()).isEqualTo(RouteResult.Status.FOUND);
    int planned = 0;
    for (RankedRoute ranked : routes.ranked()) {
      assertThat(RouteCheck.check(bed, ranked.route(), routes.request()))
          .as(ranked.route().toString())
          .isEmpty();
      Optional<Plan> plan = Hoopwright.planOf(bed, ranked, job);
      if (plan.isPresent()) {
        planned++;
        assertThat(Replay.check(plan.get().bench())).isEmpty();
      }
      if (ALL && bed.symmetric()) {
        BenchPlan image = Planner.plan(bed, ranked.route().mirrored(), job).orElseThrow();
        assertThat(Replay.check(image)).isEmpty();
      }
    }
    // Where a clamp finds no place with any of its knots, a route has no plan; none of these frames
    // has such a route.
    assertThat(planned).isEqualTo(routes.ranked().size());
  }

  /** The best order in one piece and in two, tied in every way. */
  @ParameterizedTest
  @MethodSource("names")
  void everyWayToKnotTheBestOrdersIsLegalAndItsPlanProven(String name) {
    Bed bed = bed(name);
    for (int pieces = 1; pieces <= 2; pieces++) {
      RouteRequest request = RouteRequest.builder().pieces(pieces).build();
      RouteResult routes = RouteSearch.search(bed, request);
      List<Route> variants =
          routes.ranked().stream()
              .limit(ALL ? Long.MAX_VALUE : 1)
              .flatMap(r -> RouteSearch.knotVariants(bed, request, r.route()).stream())
              .toList();
      int planned = 0;
      for (Route variant : variants) {
        assertThat(RouteCheck.check(bed, variant, request)).as(variant.toString()).isEmpty();
        BenchPlan plan = Planner.plan(bed, variant, Job.standard()).orElse(null);
        if (plan != null) {
          planned++;
          assertThat(Replay.check(plan)).as(variant.toString()).isEmpty();
        }
      }
      assertThat(planned).as("ways to knot that have a plan").isEqualTo(variants.size());
    }
  }
}
