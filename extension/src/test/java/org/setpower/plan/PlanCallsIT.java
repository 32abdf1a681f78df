package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.MacroExecMode;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.lang.XComponent;
import com.sun.star.script.XLibraryContainer;
import com.sun.star.script.provider.XScriptProviderFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.plan.register.RegisterPlan;

/** How often a plan is calculated, and that several at a time do not mix. */
@ExtendWith(SharedOffice.class)
class PlanCallsIT {
  private static final String PROGRAM =
      """
      Global n As Long
      Function CountedCall() As Boolean
        n = n + 1
        CountedCall = True
      End Function
      Function CallsSoFar() As Long
        CallsSoFar = n
      End Function
      """;

  private Office office;

  private long calls() throws Exception {
    Object calls =
        office
            .service(
                XScriptProviderFactory.class,
                "com.sun.star.script.provider.MasterScriptProviderFactory")
            .createScriptProvider("")
            .getScript(
                "vnd.sun.star.script:Standard.PlanCalls.CallsSoFar?language=Basic&location=application")
            .invoke(new Object[0], new short[1][0], new Object[1][0]);
    return ((Number) calls).longValue();
  }

  /** Newer offices run a Basic function in a cell only where the document may run macros. */
  private XComponent blankWithMacros() throws Exception {
    PropertyValue mode = new PropertyValue();
    mode.Name = "MacroExecutionMode";
    mode.Value = MacroExecMode.ALWAYS_EXECUTE_NO_WARN;
    return office
        .service(XComponentLoader.class, "com.sun.star.frame.Desktop")
        .loadComponentFromURL("private:factory/scalc", "_blank", 0, new PropertyValue[] {mode});
  }

  @Test
  void an_edit_is_one_calculation_and_an_unrelated_one_is_none(Office shared) throws Exception {
    office = shared;
    XLibraryContainer libraries =
        office.service(
            XLibraryContainer.class, "com.sun.star.script.ApplicationScriptLibraryContainer");
    libraries.loadLibrary("Standard");
    com.sun.star.container.XNameContainer modules =
        com.sun.star.uno.UnoRuntime.queryInterface(
            com.sun.star.container.XNameContainer.class, libraries.getByName("Standard"));
    modules.insertByName("PlanCalls", PROGRAM);
    PlanDocument plan = PlanDocument.of(blankWithMacros(), RegisterPlan.MODEL, 8, 8);
    try {
      plan.callAlso("COUNTEDCALL()");
      TestSheet other = TestSheet.named(plan.document(), "Other");
      plan.type("batteries", "serial", 1, "P1-01");
      assertThat(plan.shown("batteries", "verdict", 1)).isEqualTo("stop");
      long before = calls();
      assertThat(before).isPositive();
      plan.type("batteries", "condition", 1, "wet");
      assertThat(plan.shown("batteries", "reasons", 1)).contains("wet");
      assertThat(calls() - before).as("an edit").isEqualTo(1);
      before = calls();
      other.put("A1", 7).put("A2", "=A1*2");
      assertThat(other.number("A2")).isEqualTo(14);
      plan.tab("batteries").text("AZ1", "beside the table");
      assertThat(plan.shown("batteries", "reasons", 1)).contains("wet");
      assertThat(calls() - before).as("an unrelated edit").isZero();
    } finally {
      plan.close();
      modules.removeByName("PlanCalls");
    }
  }

  /** Four people, each with a file of 1,200 tests, at the same time. */
  @Test
  void four_files_at_a_time_do_not_mix(Office shared) throws Exception {
    List<Callable<List<String>>> people = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      int energy = 100 * i;
      people.add(() -> edits(shared, energy));
    }
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Future<List<String>>> all = pool.invokeAll(people);
      for (Future<List<String>> one : all) {
        assertThat(one.get()).containsOnly("right");
      }
    } finally {
      pool.shutdown();
    }
  }

  private static List<String> edits(Office office, int energy) throws Exception {
    PlanDocument plan = PlanDocument.of(office, RegisterPlan.MODEL, 1200, 300);
    List<String> seen = new ArrayList<>();
    plan.type("project", "asOf", 1, 46_428);
    plan.fill("types", List.of(Map.of("type", "P1", "chemistry", "Li-ion")));
    List<Map<String, Object>> tests = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("serial", "S-" + i % 200);
      row.put("date", 46_400.0);
      row.put("measured", energy * 0.9);
      row.put("load", energy * 0.4);
      row.put("temperature", 20.0);
      row.put("charge", 1.0);
      row.put("rested", 2.0);
      tests.add(row);
    }
    plan.fill("tests", tests);
    List<Map<String, Object>> batteries = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      batteries.add(
          Map.of("serial", "S-" + i, "type", "P1", "condition", "fine", "energy", (double) energy));
    }
    plan.fill("batteries", batteries);
    for (int edit = 0; edit < 10; edit++) {
      double changed = energy + edit;
      plan.type("batteries", "energy", 200, changed);
      double health = plan.tab("batteries").number(plan.result("batteries", "health", 200));
      boolean own = Math.abs(health - energy * 0.9 / changed) < 1e-9;
      boolean others =
          Math.abs(plan.tab("batteries").number(plan.result("batteries", "health", 7)) - 0.9)
              < 1e-9;
      seen.add(own && others ? "right" : health + " of " + energy + " after " + edit);
    }
    plan.close();
    return seen;
  }
}
