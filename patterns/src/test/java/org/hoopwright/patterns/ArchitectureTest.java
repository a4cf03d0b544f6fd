package org.hoopwright.patterns;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(
    packages = "org.hoopwright.patterns",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule COMMAND_LINE_IS_ON_TOP =
      noClasses()
          .that()
          .resideOutsideOfPackage("..cli..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.hoopwright.patterns.cli..", "picocli..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule NO_WINDOWS =
      noClasses().should().dependOnClassesThat().resideInAnyPackage("java.awt..", "javax.swing..");
}
