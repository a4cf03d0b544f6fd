package org.hoopwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;

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

  @ArchTest
  static final ArchRule NO_CYCLES =
      slices().matching("org.hoopwright.(*)..").should().beFreeOfCycles();

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
}
