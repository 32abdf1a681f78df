package org.setpower.templates;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.setpower.office.Office;

/** The arrows between the packages of the templates. */
class TemplatesArchitectureTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.setpower.templates", "org.setpower.office");

  @Test
  void both_packages_are_looked_at() {
    org.assertj.core.api.Assertions.assertThat(CLASSES.contain(Office.class)).isTrue();
    org.assertj.core.api.Assertions.assertThat(CLASSES.contain(TemplateRegistry.class)).isTrue();
  }

  /** The root package holds the programs that drive an office: it builds and exports the files. */
  @Test
  void only_the_writer_and_the_programs_speak_to_the_office() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "org.setpower.templates.uno..", "org.setpower.office..", "org.setpower.templates")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.sun.star..")
        .check(CLASSES);
  }

  @Test
  void knows_nothing_of_the_extension() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.setpower.addin..",
            "org.setpower.command..",
            "org.setpower.ui..",
            "org.setpower.uno..")
        .check(CLASSES);
  }

  @Test
  void the_vocabulary_knows_neither_pages_nor_the_writer() {
    noClasses()
        .that()
        .resideInAPackage("org.setpower.templates.spec..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.setpower.templates.layout..",
            "org.setpower.templates.uno..",
            "org.setpower.templates.example..",
            "org.setpower.office..")
        .check(CLASSES);
  }

  @Test
  void packages_have_no_cycles() {
    slices().matching("org.setpower.(**)").should().beFreeOfCycles().check(CLASSES);
  }
}
