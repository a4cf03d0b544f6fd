package org.hoopwright.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.hoopwright.testing")
class FixturesTest {
  @ArchTest
  static final ArchRule NEED_NO_TEST_FRAMEWORK =
      classes()
          .that()
          .haveSimpleNameNotEndingWith("Test")
          .and()
          .haveSimpleNameNotEndingWith("Arbitraries")
          .and()
          .haveNameNotMatching(".*\\.Choco[^.]*") // the routes by a constraint solver
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("org.hoopwright..", "java..", "org.jspecify.annotations..");
}
