package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.lang.XComponent;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.register.RegisterPlan;

/** A sheet of a plan where the extension is missing: nothing old passes for calculated. */
@ExtendWith(SharedOffice.class)
class PlanWithoutExtensionIT {
  @TempDir Path folder;

  @Test
  void no_result_of_the_last_calculation_is_shown(Office office) throws Exception {
    PlanDocument plan = PlanDocument.of(office, RegisterPlan.MODEL, 4, 8);
    plan.type("project", "asOf", 1, 46_428).type("types", "type", 1, "P1");
    plan.type("types", "chemistry", 1, "Li-ion");
    plan.type("batteries", "serial", 1, "P1-01").type("batteries", "type", 1, "P1");
    plan.type("batteries", "condition", 1, "fine").type("batteries", "energy", 1, 98);
    plan.type("batteries", "inspected", 1, 46_420).type("batteries", "inspectedBy", 1, "bench");
    assertThat(plan.shown("batteries", "verdict", 1)).isEqualTo("check");
    Path ods = folder.resolve("plan.ods");
    Path xlsx = folder.resolve("plan.xlsx");
    office.store(plan.document(), "calc8", ods);
    office.store(plan.document(), "Calc MS Excel 2007 XML", xlsx);
    plan.close();
    try (Office without = Office.start()) {
      for (Path file : List.of(ods, xlsx)) {
        PlanDocument opened = plan.in(without.open(file));
        assertNothingOld(opened, file + " as opened");
        opened.type("batteries", "energy", 1, 97);
        assertNothingOld(opened, file + " after an edit");
        opened.close();
      }
    }
    for (Path file : List.of(ods, xlsx)) {
      PlanDocument opened = plan.in(office.open(file));
      assertThat(opened.status()).as(file.toString()).isEqualTo("ok ");
      assertThat(opened.shown("batteries", "verdict", 1)).isEqualTo("check");
      assertThat(opened.tab("batteries").shown(PlanDocument.MISSING)).isEmpty();
      opened.type("batteries", "condition", 1, "swollen");
      assertThat(opened.shown("batteries", "verdict", 1)).isEqualTo("stop");
      opened.close();
    }
  }

  /** The same of the shipped example: every cell that shows a verdict, in rows and in lists. */
  @Test
  void no_verdict_of_the_example_is_shown(Office office) throws Exception {
    XComponent filled = office.open(Path.of("target/sheets/examples/battery-register-example.ods"));
    Path ods = folder.resolve("register.ods");
    Path xlsx = folder.resolve("register.xlsx");
    assertThat(TestSheet.named(filled, "Batteries").shown("A8")).isIn("ok", "check", "stop");
    office.store(filled, "calc8", ods);
    office.store(filled, "Calc MS Excel 2007 XML", xlsx);
    Office.discard(filled);
    try (Office without = Office.start()) {
      for (Path file : List.of(ods, xlsx)) {
        XComponent opened = without.open(file);
        for (String tab : List.of("Batteries", "Tests", "Actions", "Stocktake list")) {
          for (Object[] row : TestSheet.named(opened, tab).data("A1:A60")) {
            assertThat(row[0]).as(file + " " + tab).isNotIn("ok", "check", "stop");
          }
        }
        Office.discard(opened);
      }
    }
  }

  private static void assertNothingOld(PlanDocument plan, String when) {
    for (String table : List.of("project", "types", "batteries", "tests")) {
      TestSheet tab = plan.tab(table);
      assertThat(tab.shown(PlanDocument.MISSING)).as(when).isEqualTo(PlanDocument.IS_MISSING);
      assertThat(tab.shown(PlanDocument.NOTICE)).as(when).isEqualTo("#NAME?");
      ResultTable<?> results =
          RegisterPlan.MODEL.results().stream()
              .filter(r -> r.key().equals(table))
              .findFirst()
              .orElseThrow();
      for (ResultColumn column : results.columns()) {
        assertThat(plan.shown(table, column.key(), 1))
            .as(when + " " + column.path())
            .isEqualTo("#NAME?");
      }
    }
  }
}
