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
}
