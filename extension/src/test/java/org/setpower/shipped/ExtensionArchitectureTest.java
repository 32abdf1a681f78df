package org.setpower.shipped;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.setpower.addin.FunctionsAddIn;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.templates.TemplateRegistry;

/** The arrows between the packages of the extension. */
class ExtensionArchitectureTest {
  private static final JavaClasses CLASSES = classes(FunctionsAddIn.class);
  private static final JavaClasses ALL =
      classes(FunctionsAddIn.class, FunctionRegistry.class, TemplateRegistry.class);

  /** The classes of the modules that these come from. */
  private static JavaClasses classes(Class<?>... some) {
    return new ClassFileImporter()
        .importUrls(
            Stream.of(some)
                .map(one -> one.getProtectionDomain().getCodeSource().getLocation())
                .toList());
  }

  @Test
  void all_modules_are_looked_at() {
    assertThat(ALL.contain("org.setpower.base.ErrorCode")).isTrue();
    assertThat(ALL.contain("org.setpower.templates.spec.FieldSpec")).isTrue();
    assertThat(ALL.contain("org.setpower.command.menu.CommandRegistry")).isTrue();
  }

  @Test
  void ships_nothing_of_the_templates_module() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.setpower.templates..", "org.setpower.office..")
        .check(CLASSES);
  }

  /**
   * The entry is loaded by the office itself, {@code org.setpower.XFunctions} is made from IDL, and
   * the programs of {@code org.setpower.templates} drive an office to build and export the files.
   */
  @Test
  void only_these_packages_speak_to_the_office() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "org.setpower.addin..",
            "org.setpower.uno..",
            "org.setpower.ui..",
            "org.setpower.command..",
            "org.setpower.entry..",
            "org.setpower",
            "org.setpower.office..",
            "org.setpower.templates.uno..",
            "org.setpower.templates")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.sun.star..")
        .check(ALL);
  }

  @Test
  void the_adapter_knows_no_command() {
    noClasses()
        .that()
        .resideInAnyPackage("org.setpower.addin..", "org.setpower.uno..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.setpower.command..", "org.setpower.ui..")
        .check(CLASSES);
  }

  @Test
  void the_entry_stands_alone() {
    noClasses()
        .that()
        .resideInAPackage("org.setpower.entry..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.setpower.addin..", "org.setpower.command..", "org.setpower.registry..")
        .check(CLASSES);
  }

  @Test
  void packages_have_no_cycles() {
    slices().matching("org.setpower.(**)").should().beFreeOfCycles().check(CLASSES);
  }
}
