package org.setpower;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/**
 * The arrows between the rooms. Plain tests: Surefire 3.5.3 passes over ArchUnit's own fields
 * (TNG/ArchUnit issue 1442).
 */
class ArchitectureTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.setpower");

  @Test
  void knows_no_office() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.sun.star..", "org.apache.poi..")
        .check(CLASSES);
  }

  @Test
  void base_imports_no_room() {
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
            "..sheet..")
        .check(CLASSES);
  }

  @Test
  void no_room_imports_the_sheet() {
    noClasses()
        .that()
        .resideOutsideOfPackage("..sheet..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("..sheet..")
        .check(CLASSES);
  }

  @Test
  void rooms_have_no_cycles() {
    slices().matching("org.setpower.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void some_rooms_stand_alone() {
    noClasses()
        .that()
        .resideInAnyPackage("..cable..", "..flight..", "..supply..", "..hire..", "..fleet..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("..pack..", "..bank..", "..charge..", "..plan..")
        .check(CLASSES);
  }
}
