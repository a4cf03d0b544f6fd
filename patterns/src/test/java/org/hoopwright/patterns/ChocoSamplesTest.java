package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.testing.SearchComparison;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Of every bundled layout the search finds the orders that a constraint solver finds, and the same
 * best route. The standard request holds one piece, two pieces and mains that go on into crosses
 * together; {@code -Dhoopwright.proofs=all} asks for each of them, for crosses of another string,
 * and with other limits, too.
 */
class ChocoSamplesTest {

  private static final boolean ALL = "all".equals(System.getProperty("hoopwright.proofs"));

  static Stream<Arguments> requests() {
    List<RouteRequest> wide =
        List.of(
            RouteRequest.builder().pieces(1).build(),
            RouteRequest.builder().pieces(2).build(),
            RouteRequest.builder().crossesOfOtherString(true).build(),
            RouteRequest.builder().startingClamps(0).build(),
            RouteRequest.builder().runLimit(5).knotLimit(4).build());
    return Samples.list().stream()
        .flatMap(
            sample ->
                Stream.concat(Stream.of(RouteRequest.defaults()), ALL ? wide.stream() : Stream.of())
                    .map(request -> Arguments.of(sample.name(), request)));
  }

  @ParameterizedTest
  @MethodSource("requests")
  void theSolverHasTheSameOrdersAndTheSameBest(String sample, RouteRequest request) {
    Bed bed = StatedAssignment.assign(Samples.layout(sample)).bed().orElseThrow();

    SearchComparison.Outcome outcome = SearchComparison.compare(bed, request);

    assertThat(outcome.differences()).isEmpty();
  }
}
