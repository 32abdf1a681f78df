package org.setpower.shipped;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.net.URL;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.setpower.addin.FunctionsAddIn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultTable;
import org.setpower.registry.groups.FunctionRegistry;

/** What the Java that ships cannot do, as the classes it does not use. */
class SecurityTest {
  private static final JavaClasses SHIPPED =
      new ClassFileImporter()
          .importUrls(List.of(home(FunctionsAddIn.class), home(FunctionRegistry.class)));

  /** Where the jar or the folder is that a class comes from. */
  private static URL home(Class<?> type) {
    return type.getProtectionDomain().getCodeSource().getLocation();
  }

  /** They work on the text of an address and reach nothing. */
  private static final Set<String> TEXT_OF_ADDRESSES =
      Set.of("java.net.URI", "java.net.URISyntaxException", "java.net.URLDecoder");

  private static DescribedPredicate<JavaClass> named(String... names) {
    Set<String> all = Set.of(names);
    return DescribedPredicate.describe(
        "one of " + all, javaClass -> all.contains(javaClass.getName()));
  }

  @Test
  void both_jars_are_looked_at() {
    assertThat(SHIPPED.contain("org.setpower.addin.FunctionsAddIn")).isTrue();
    assertThat(SHIPPED.contain("org.setpower.command.menu.CommandRegistry")).isTrue();
    assertThat(SHIPPED.contain("org.setpower.registry.groups.FunctionRegistry")).isTrue();
  }

  @Test
  void reaches_no_network() {
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.net..", "java.rmi..", "javax.net..", "javax.naming..")
                .and(
                    DescribedPredicate.describe(
                        "more than the text of an address",
                        javaClass -> !TEXT_OF_ADDRESSES.contains(javaClass.getName()))))
        .check(SHIPPED);
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                "java.nio.channels..", "com.sun.star.connection..", "com.sun.star.bridge.."))
        .check(SHIPPED);
  }

  @Test
  void starts_no_program() {
    noClasses()
        .should()
        .dependOnClassesThat(
            named("java.lang.Runtime", "java.lang.ProcessBuilder", "java.lang.Process"))
        .check(SHIPPED);
  }

  /** Files are reached through the office, at the place that the user chose in its window. */
  @Test
  void opens_no_file_by_itself() {
    noClasses()
        .should()
        .dependOnClassesThat(
            named(
                "java.io.File",
                "java.io.FileInputStream",
                "java.io.FileOutputStream",
                "java.io.FileReader",
                "java.io.FileWriter",
                "java.io.RandomAccessFile",
                "java.nio.file.Files",
                "java.nio.file.FileSystems"))
        .check(SHIPPED);
  }

  private static ArchRule reflects(Class<?> type, String... with) {
    return classes()
        .that()
        .haveFullyQualifiedName(type.getName())
        .should()
        .onlyDependOnClassesThat(
            not(resideInAnyPackage("java.lang.reflect..", "java.lang.invoke..")).or(named(with)));
  }

  /**
   * What answers where Java is too old reflects on our own interface alone; a table of a plan on
   * the components and the constructor of the record that declares it, as far as they are public.
   */
  @Test
  void neither_reflects_nor_loads_nor_reads_objects() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.setpower.entry..")
        .and(not(named(InputTable.class.getName(), ResultTable.class.getName())))
        .should()
        .dependOnClassesThat(resideInAnyPackage("java.lang.reflect.."))
        .check(SHIPPED);
    reflects(InputTable.class, "java.lang.reflect.Constructor", "java.lang.reflect.RecordComponent")
        .check(SHIPPED);
    reflects(
            ResultTable.class,
            "java.lang.reflect.Constructor",
            "java.lang.reflect.Method",
            "java.lang.reflect.RecordComponent")
        .check(SHIPPED);
    noClasses()
        .that()
        .resideOutsideOfPackage("org.setpower.entry..")
        .should()
        .callMethodWhere(
            JavaCall.Predicates.target(
                HasName.Predicates.nameMatching("setAccessible|trySetAccessible")))
        .check(SHIPPED);
    noClasses()
        .that()
        .resideOutsideOfPackage("org.setpower.entry..")
        .should()
        .callMethod(Class.class, "forName", String.class)
        .check(SHIPPED);
    noClasses()
        .that()
        .resideOutsideOfPackage("org.setpower.entry..")
        .should()
        .dependOnClassesThat(
            named("java.lang.ClassLoader", "java.io.ObjectInputStream")
                .or(resideInAnyPackage("javax.script..", "javax.tools..")))
        .check(SHIPPED);
  }

  /** Then no parser of ours can be led to an external entity. */
  @Test
  void parses_no_xml() {
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("javax.xml..", "org.xml..", "org.w3c..", "com.sun.star.xml.."))
        .check(SHIPPED);
  }

  @Test
  void runs_no_macro() {
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                "com.sun.star.script.provider..",
                "com.sun.star.script.browse..",
                "com.sun.star.script.vba.."))
        .check(SHIPPED);
  }
}
