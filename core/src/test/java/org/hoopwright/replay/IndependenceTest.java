package org.hoopwright.replay;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** A proof is worth something when it shares nothing with what it proves. */
@AnalyzeClasses(packages = "org.hoopwright", importOptions = ImportOption.DoNotIncludeTests.class)
class IndependenceTest {

  private static final String VALUES =
      "org\\.hoopwright\\.(bench\\.(Bench|BenchPlan|ClampOn|ClampSide|HalfDone|Job|MachineClampKind|Start|StartMethod|Step|StrungEnd"
          + "|StrungPiece|Tensioner|WayOn)"
          + "|route\\.(EndName|Knot|Moment|Pass|Piece|Route|RouteRequest|StringEnd))(\\$.*)?";

  @ArchTest
  static final ArchRule READS_ONLY_VALUES_OF_ROUTE_AND_BENCH =
      classes()
          .that()
          .resideInAPackage("org.hoopwright.replay")
          .should()
          .onlyDependOnClassesThat(
              DescribedPredicate.or(
                  nameMatching(VALUES).forSubtype(),
                  not(resideInAnyPackage("org.hoopwright.route..", "org.hoopwright.bench.."))));

  @ArchTest
  static final ArchRule PLANNER_AND_SEARCH_DO_NOT_USE_THE_REPLAY =
      noClasses()
          .that()
          .resideInAnyPackage("org.hoopwright.route..", "org.hoopwright.bench..")
          .should()
          .dependOnClassesThat(resideInAPackage("org.hoopwright.replay"));
}
