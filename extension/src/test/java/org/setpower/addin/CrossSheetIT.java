package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;

/** What the example of the budget took over is what the lighting plan's example gives. */
@ExtendWith(SharedOffice.class)
class CrossSheetIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");

  @Test
  void the_budget_counts_what_the_plan_says(Office office) throws Exception {
    for (String name : List.of("Plan_A_day", "Plan_Days")) {
      List<Object> plan = column(office, "lighting-power-plan", name);
      List<Object> budget = column(office, "power-budget", name);
      for (int i = 0; i < plan.size(); i++) {
        double given = (Double) plan.get(i);
        assertThat((Double) budget.get(i))
            .as(name + " " + i)
            .isCloseTo(given, within(1e-6 * given));
      }
    }
  }

  /** The filled cells of a named column. */
  private static List<Object> column(Office office, String example, String name) throws Exception {
    XComponent document = office.open(EXAMPLES.resolve(example + "-example.ods"));
    try {
      UnoRuntime.queryInterface(XCalculatable.class, document).calculateAll();
      XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, document);
      XNamedRanges names =
          UnoRuntime.queryInterface(XNamedRanges.class, properties.getPropertyValue("NamedRanges"));
      Object cells =
          UnoRuntime.queryInterface(XCellRangeReferrer.class, names.getByName(name))
              .getReferredCells();
      return Arrays.stream(UnoRuntime.queryInterface(XCellRangeData.class, cells).getDataArray())
          .map(row -> row[0])
          .filter(value -> !value.equals(""))
          .toList();
    } finally {
      Office.discard(document);
    }
  }
}
