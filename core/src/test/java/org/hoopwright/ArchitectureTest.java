package org.hoopwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.graph.GraphBuilder;
import com.google.common.graph.Graphs;
import com.google.common.graph.MutableGraph;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

@AnalyzeClasses(packages = "org.hoopwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule LEANS_ON_LITTLE =
      classes()
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "org.hoopwright..",
              "java.lang..",
              "java.math..",
              "java.text..",
              "java.util..",
              "java.time..",
              "com.google.common..",
              "com.google.errorprone.annotations..",
              "org.jspecify.annotations..");

  @ArchTest
  static final ArchRule NO_CLOCK =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(Instant.class, "now")
          .because("the same input must give the same answer");

  private static final String ROUTE_CHECK =
      "org\\.hoopwright\\.route\\.(Route(Form|Time|Knot|Measure|)Check|RouteEvent)(\\$.*)?";

  private static final String ROUTE_VALUES =
      "org\\.hoopwright\\.route\\."
          + "(Violation|Route|RouteRequest|RouteMeasures|CoveredHole|Family|Piece|StringEnd"
          + "|EndName|Pass|Knot|Moment)(\\$.*)?";

  @ArchTest
  static final ArchRule ROUTE_CHECK_SHARES_NO_CODE_WITH_THE_SEARCH =
      classes()
          .that()
          .haveNameMatching(ROUTE_CHECK)
          .should()
          .onlyDependOnClassesThat()
          .haveNameMatching(
              ROUTE_CHECK
                  + "|"
                  + ROUTE_VALUES
                  + "|java\\..*|\\[.*|org\\.jspecify\\..*"
                  + "|org\\.hoopwright\\.(bed|frame|geometry)\\..*");

  /**
   * The house: who may lean on whom. A package that is not named here may lean on nothing, so a new
   * one has to be entered on purpose.
   */
  private static final Map<String, Set<String>> ARROWS =
      Map.ofEntries(
          Map.entry("units", Set.of()),
          Map.entry("geometry", Set.of()),
          Map.entry("material", Set.of("units")),
          Map.entry("finding", Set.of()),
          Map.entry("frame", Set.of("units", "geometry", "finding")),
          Map.entry("bed", Set.of("units", "geometry", "finding", "frame")),
          Map.entry("route", Set.of("geometry", "finding", "frame", "bed")),
          Map.entry("weave", Set.of("bed", "route")),
          Map.entry("check", Set.of("units", "geometry", "finding", "frame", "bed", "route")),
          Map.entry(
              "bench", Set.of("units", "geometry", "material", "finding", "frame", "bed", "route")),
          Map.entry(
              "replay",
              Set.of("units", "geometry", "material", "finding", "frame", "bed", "route", "bench")),
          Map.entry(
              "judgement",
              Set.of("units", "material", "finding", "frame", "bed", "route", "bench", "replay")),
          Map.entry(
              "compare",
              Set.of("units", "geometry", "material", "frame", "bed", "route", "bench", "replay")));

  /**
   * Every dependency follows an arrow, so rooms without a circle of arrows have no circle either.
   */
  @Test
  void arrowsMakeNoCircle() {
    MutableGraph<String> house = GraphBuilder.directed().allowsSelfLoops(true).build();
    ARROWS.forEach((from, rooms) -> rooms.forEach(to -> house.putEdge(from, to)));
    assertThat(Graphs.hasCycle(house)).isFalse();
  }

  @Test
  void arrowsPointOneWay() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.hoopwright");
    Set<String> wrong = new TreeSet<>();
    for (JavaClass from : classes) {
      String room = room(from);
      for (Dependency d : from.getDirectDependenciesFromSelf()) {
        JavaClass to = d.getTargetClass();
        if (!to.getPackageName().startsWith("org.hoopwright") || room(to).equals(room)) {
          continue;
        }
        // The root is the facade: it may lean on every room, and no room on it.
        boolean allowed =
            room.isEmpty()
                ? ARROWS.containsKey(room(to))
                : ARROWS.getOrDefault(room, Set.of()).contains(room(to));
        if (!allowed) {
          wrong.add(from.getName() + " -> " + to.getName());
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(classes.stream().map(ArchitectureTest::room).filter(r -> !r.isEmpty()).distinct())
        .containsExactlyInAnyOrderElementsOf(ARROWS.keySet());
  }

  private static String room(JavaClass type) {
    String name = type.getPackageName();
    return name.equals("org.hoopwright") ? "" : name.substring("org.hoopwright.".length());
  }
}
