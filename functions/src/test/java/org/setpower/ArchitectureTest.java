package org.setpower;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/**
 * The arrows between the packages. Plain tests: Surefire 3.5.3 passes over ArchUnit's own fields
 * (TNG/ArchUnit issue 1442).
 */
class ArchitectureTest {
  private static final String[] TRADES = {
    "org.setpower.cable..",
    "org.setpower.supply..",
    "org.setpower.pack..",
    "org.setpower.bank..",
    "org.setpower.charge..",
    "org.setpower.flight..",
    "org.setpower.hire..",
    "org.setpower.fleet.."
  };

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.setpower");

  @Test
  void knows_no_office_and_no_template() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "com.sun.star..",
            "org.apache.poi..",
            "org.setpower.templates..",
            "org.setpower.office..",
            "org.setpower.addin..",
            "org.setpower.command..")
        .check(CLASSES);
  }

  @Test
  void base_imports_no_other_package() {
    noClasses()
        .that()
        .resideInAPackage("org.setpower.base..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(TRADES)
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("org.setpower.plan..", "org.setpower.registry..", "org.setpower.text..")
        .check(CLASSES);
  }

  @Test
  void trades_import_neither_plans_nor_the_registry() {
    noClasses()
        .that()
        .resideInAnyPackage(TRADES)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.setpower.plan..", "org.setpower.registry..", "org.setpower.text..")
        .check(CLASSES);
  }

  @Test
  void plans_do_not_import_the_registry() {
    noClasses()
        .that()
        .resideInAPackage("org.setpower.plan..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.setpower.registry..")
        .check(CLASSES);
  }

  @Test
  void the_registry_does_not_import_its_groups() {
    noClasses()
        .that()
        .resideInAPackage("org.setpower.registry")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.setpower.registry.groups..")
        .check(CLASSES);
  }

  @Test
  void packages_have_no_cycles() {
    slices().matching("org.setpower.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void some_trades_stand_alone() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "org.setpower.cable..",
            "org.setpower.flight..",
            "org.setpower.supply..",
            "org.setpower.hire..",
            "org.setpower.fleet..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.setpower.pack..", "org.setpower.bank..", "org.setpower.charge..")
        .check(CLASSES);
  }
}
