package org.setpower;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between the rooms. */
@AnalyzeClasses(packages = "org.setpower", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule knows_no_office =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.sun.star..", "org.apache.poi..");

  @ArchTest
  static final ArchRule base_imports_no_room =
      noClasses()
          .that()
          .resideInAPackage("..base..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "..cable..",
              "..pack..",
              "..bank..",
              "..charge..",
              "..flight..",
              "..supply..",
              "..hire..",
              "..fleet..",
              "..plan..",
              "..sheet..");

  @ArchTest
  static final ArchRule no_room_imports_the_sheet =
      noClasses()
          .that()
          .resideOutsideOfPackage("..sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("..sheet..");

  @ArchTest
  static final ArchRule rooms_have_no_cycles =
      slices().matching("org.setpower.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule some_rooms_stand_alone =
      noClasses()
          .that()
          .resideInAnyPackage("..cable..", "..flight..", "..supply..", "..hire..", "..fleet..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..pack..", "..bank..", "..charge..", "..plan..")
          .allowEmptyShould(true);
}
