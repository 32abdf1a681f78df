package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;

/** A workbook is drawn again when something changes that it is made from, and only then. */
class DrawingInputsTest {
  private static final Path SOURCES = Path.of("src/main/java");

  static List<PlanTemplate> workbooks() {
    return TemplateRegistry.plans();
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void a_workbook_is_made_from_its_own_classes_and_from_no_other_workbook_s(PlanTemplate workbook) {
    DrawingInputs inputs = new DrawingInputs(workbook);
    for (PlanTemplate other : TemplateRegistry.plans()) {
      assertThat(inputs.make(file(other.getClass())))
          .as(workbook.getClass() + " from " + other.getClass())
          .isEqualTo(other.getClass() == workbook.getClass());
      assertThat(DrawingInputs.draw(file(other.getClass()))).isFalse();
    }
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void a_workbook_is_made_from_what_all_share(PlanTemplate workbook) {
    DrawingInputs inputs = new DrawingInputs(workbook);
    for (Class<?> shared :
        List.of(PlanWriter.class, PlanLayout.class, FieldSpec.class, PlanFiller.class)) {
      assertThat(inputs.make(file(shared))).as(shared.getName()).isTrue();
      assertThat(DrawingInputs.draw(file(shared))).as(shared.getName()).isTrue();
    }
    assertThat(inputs.make("org/setpower/templates/initial/budget/lines.csv")).isTrue();
  }

  /** What one workbook read of another would not be noticed. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void no_class_but_the_lists_of_workbooks_mentions_a_workbook_s_package(PlanTemplate workbook)
      throws IOException {
    String own = workbook.getClass().getPackageName();
    Path folder = SOURCES.resolve(DrawingInputs.folder(workbook));
    try (Stream<Path> found = Files.walk(SOURCES)) {
      for (Path source : found.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (!source.startsWith(folder)
            && !source.endsWith(TemplateRegistry.class.getSimpleName() + ".java")) {
          assertThat(Files.readString(source)).as(source.toString()).doesNotContain(own + ".");
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void what_works_in_the_extension_counts_and_its_handbook_does_not(PlanTemplate workbook) {
    DrawingInputs inputs = new DrawingInputs(workbook);
    assertThat(inputs.work("lib/functions.jar")).isTrue();
    assertThat(inputs.work("CalcAddIns.xcu")).isTrue();
    assertThat(inputs.work("org/setpower/command/print/PrintRangeFitter.class")).isTrue();
    assertThat(inputs.work("org/setpower/command/Command.class")).isTrue();
    assertThat(inputs.work("org/setpower/addin/AddIn.class")).isTrue();
    assertThat(inputs.work("org/setpower/command/export/PlainContent.class")).isFalse();
    assertThat(inputs.work("org/setpower/ui/Dialog.class")).isFalse();
    assertThat(inputs.work("handbook/index.html")).isFalse();
    assertThat(inputs.work("NOTICE.txt")).isFalse();
  }

  /** The plan that a workbook carries counts, with what that plan uses; other plans do not. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void a_workbook_is_made_from_its_own_plan(PlanTemplate workbook) throws IOException {
    DrawingInputs inputs = new DrawingInputs(workbook);
    assertThat(inputs.work("org/setpower/plan/common/InputTable.class")).isTrue();
    String plan = workbook.workbook().model().getClass().getPackageName();
    assertThat(inputs.work(plan.replace('.', '/') + "/Any.class")).isTrue();
    Path sources = Path.of("../functions/src/main/java");
    try (Stream<Path> found = Files.walk(sources.resolve(plan.replace('.', '/')))) {
      for (Path source : found.filter(f -> f.toString().endsWith(".java")).toList()) {
        for (String line : Files.readAllLines(source)) {
          if (line.startsWith("import org.setpower.plan.")) {
            String used = line.replaceAll("import |;", "").replace('.', '/') + ".class";
            assertThat(inputs.work(used)).as(source + ": " + line).isTrue();
          }
        }
      }
    }
    assertThat(
            TemplateRegistry.plans().stream()
                .filter(o -> !inputs.work(file(o.workbook().model().getClass()))))
        .hasSizeGreaterThanOrEqualTo(TemplateRegistry.plans().size() - 2);
  }

  private static String file(Class<?> one) {
    return one.getName().replace('.', '/') + ".class";
  }
}
