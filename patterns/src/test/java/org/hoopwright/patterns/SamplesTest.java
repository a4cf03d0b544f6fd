package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;
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
    return result.ranked().stream().map(RankedRoute::route).map(RouteNotation::passes).toList();
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
    assertThat(Checker.layout(layout)).allMatch(f -> f.severity() == Severity.NOTE);
    Assignment assignment = StatedAssignment.assign(layout);
    assertThat(assignment.bed()).isPresent();
    assertThat(assignment.findings()).allMatch(f -> f.severity() == Severity.NOTE);
  }

  @ParameterizedTest
  @MethodSource("names")
  void hasRoutes(String name) {
    RouteResult result = RouteSearch.search(bed(Samples.layout(name)), RouteRequest.defaults());
    assertThat(result.status()).isEqualTo(RouteResult.Status.FOUND);
    assertThat(result.ranked()).isNotEmpty();
  }

  @Test
  void goesRoundWhereOnePieceMustComeFromTheHead() {
    RouteResult result =
        RouteSearch.search(
            bed(Samples.layout("willowbank-100")),
            RouteRequest.builder().pieces(1).direction(Direction.HEAD_TO_THROAT).build());
    assertThat(passes(result).get(0)).isEqualTo("short L1-L7 | long R1-R8 X19 L8 X1-X18");
  }

  @Test
  void passesByTheWornHole() {
    assertThat(
            Checker.bed(Samples.layout("willowbank-100-worn"), StatedAssignment::assign).findings())
        .extracting(Finding::code)
        .contains(FindingCode.CROSS_HOLE_BLOCKED)
        .allMatch(c -> c.severity() == Severity.NOTE);
  }

  @Test
  void theTeachingBoardCanBeStrungInOnePieceAndInTwo() {
    Bed bed = bed(Samples.layout("willowbank-teaching"));
    for (int pieces = 1; pieces <= 2; pieces++) {
      RouteRequest request = RouteRequest.builder().pieces(pieces).build();
      assertThat(RouteSearch.search(bed, request).ranked()).isNotEmpty();
    }
  }

  @Test
  void theListIsTheIndexAndEveryFileIsInIt() throws Exception {
    Path folder = Path.of("src/main/resources/org/hoopwright/patterns/samples");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".json")))
          .containsExactlyInAnyOrderElementsOf(names().map(n -> n + ".json").toList());
    }
    assertThat(names()).hasSizeGreaterThanOrEqualTo(9).doesNotHaveDuplicates();
  }

  @Test
  void aNameThatIsNoneIsTheCallersMistake() {
    assertThatThrownBy(() -> Samples.text("../cli/version.properties"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("../cli/version.properties")
        .hasMessageContaining("willowbank-100");
  }
}
