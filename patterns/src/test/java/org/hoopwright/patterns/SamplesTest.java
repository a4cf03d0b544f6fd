package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutCheck;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SamplesTest {

  static Stream<String> names() {
    return Samples.list().stream().map(Sample::name);
  }

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  private static List<String> passes(RouteResult result) {
    return result.routes().stream().map(RankedRoute::route).map(RouteNotation::passes).toList();
  }

  @ParameterizedTest
  @MethodSource("names")
  void saysInItsFirstLineWhyItIsThere(String name) {
    Sample sample =
        Samples.list().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    assertThat(sample.reason()).hasSizeGreaterThan(40).endsWith(".");
    assertThat(Samples.text(name)).startsWith("// " + sample.reason() + "\n");
  }

  @ParameterizedTest
  @MethodSource("names")
  void readsWithoutAnyFinding(String name) throws UnreadableFile {
    ReadResult result = LayoutReader.read(name, Samples.text(name).getBytes(UTF_8));
    assertThat(result.findings()).isEmpty();
    assertThat(result.layout()).contains(Samples.layout(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void hasABedAndNothingToFindFault(String name) {
    Layout layout = Samples.layout(name);
    assertThat(LayoutCheck.check(layout)).isEmpty();
    Assignment assignment = StatedAssignment.assign(layout);
    assertThat(assignment.bed()).isPresent();
    assertThat(assignment.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
  }

  @ParameterizedTest
  @MethodSource("names")
  void hasRoutes(String name) {
    RouteResult result = RouteSearch.search(bed(Samples.layout(name)), RouteRequest.defaults());
    assertThat(result.status()).isEqualTo(RouteResult.Status.FOUND);
    assertThat(result.routes()).isNotEmpty();
    System.out.println(name + " " + result.routes().size() + " " + passes(result).get(0));
    for (int p=1;p<=2;p++) System.out.println("  pieces " + p + " " + passes(RouteSearch.search(bed(Samples.layout(name)), RouteRequest.builder().pieces(p).build())).stream().limit(3).toList());
  }
}
