package org.setpower.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XComponent;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;

/** Does what first-ten-minutes.md says in an empty plan, and sees what it promises. */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class FirstTenMinutesIT {
  private static final Path TEMPLATE =
      Path.of("target/sheets/templates/en/lighting-power-plan.ots");

  @Test
  void five_lamps_on_a_distro_in_an_empty_plan(Office office) throws Exception {
    XComponent plan = office.open(TEMPLATE);
    TestSheet project = TestSheet.named(plan, "Project");
    Tab days = new Tab(plan, "Project");
    Tab supplies = new Tab(plan, "Sources & distro");
    Tab outlets = new Tab(plan, "Sources & distro", "Distro");
    Tab runs = new Tab(plan, "Cable runs");
    Tab loads = new Tab(plan, "Loads");

    field(project, "Units", "metric");
    field(project, "Default installation", "free");
    days.type(1, "Date", "2027-02-01", "Call", "07:00", "Wrap", "18:00", "Max. temp", "8");
    supplies.type(1, "Name", "quay", "Type", "utility", "System", "3PH", "Main breaker", "63");
    supplies.type(2, "Name", "A", "Type", "distro");
    outlets.type(1, "Distro", "A", "Numbers", "1–6", "Connector", "IEC 60309 16 A 3-pin");
    outlets.type(1, "Breaker", "16", "RCD", "30");
    runs.type(
        1, "Destination", "A", "From", "quay", "Length", "25", "Size", "5G16", "Type", "rubber");
    String[] lamps = {
      "LED fresnel 1 200 W", "LED fresnel 650 W", "LED panel 2 x 1", "haze machine", "tungsten 2 kW"
    };
    for (int i = 0; i < lamps.length; i++) {
      loads.type(i + 1, "Item", lamps[i], "Place", "A-" + (i + 1), "Qty", "1");
    }
    project.calculate();

    for (int i = 1; i <= lamps.length; i++) {
      assertThat(loads.shown(i, "Status")).as(loads.shown(i, "Reasons")).isIn("ok", "check");
      assertThat(loads.shown(i, "Leg")).isNotEmpty();
      assertThat(loads.shown(i, "Current")).isNotEmpty();
    }
    assertThat(supplies.shown(1, "Available")).isEqualTo("63.0");
    assertThat(supplies.shown(2, "Status")).isIn("ok", "check");
    assertThat(runs.shown(1, "Status")).as(runs.shown(1, "Reasons")).isEqualTo("check");

    runs.type(1, "Size", "5G2.5");
    project.calculate();
    assertThat(runs.shown(1, "Status")).isEqualTo("stop");
    assertThat(runs.shown(1, "Reasons")).contains("63 A does not protect this cable");
    Office.discard(plan);
  }

  /** Types into the cell right of a label. */
  private static void field(TestSheet sheet, String label, String value) throws Exception {
    int row = 0;
    while (!sheet.shown("B" + (row + 1)).equals(label)) {
      row++;
    }
    sheet.put("C" + (row + 1), value);
  }

  /** A table of a tab, reached by its headings as a reader reaches it. */
  private static final class Tab {
    private final TestSheet sheet;
    private final int heading;

    Tab(XComponent document, String name) {
      this(document, name, "");
    }

    /** The table whose second heading begins so. Below the headings stands the row of keys. */
    Tab(XComponent document, String name, String second) {
      sheet = TestSheet.named(document, name);
      int row = 0;
      while (!text(0, row).equals("Status") || !text(1, row).startsWith(second)) {
        row++;
      }
      heading = row;
    }

    /** Types into a row below the headings: heading, value, heading, value … */
    void type(int row, String... headingsAndValues) {
      for (int i = 0; i < headingsAndValues.length; i += 2) {
        XCell cell = cell(column(headingsAndValues[i]), heading + 1 + row);
        try {
          UnoRuntime.queryInterface(XPropertySet.class, cell)
              .setPropertyValue("FormulaLocal", headingsAndValues[i + 1]);
        } catch (com.sun.star.uno.Exception e) {
          throw new IllegalStateException(e);
        }
      }
    }

    String shown(int row, String headingText) {
      return text(column(headingText), heading + 1 + row);
    }

    private int column(String headingText) {
      for (int column = 0; column < 60; column++) {
        if (TestSheet.inOneLine(text(column, heading)).equals(headingText)) {
          return column;
        }
      }
      for (int column = 0; column < 60; column++) {
        if (TestSheet.inOneLine(text(column, heading)).startsWith(headingText)) {
          return column;
        }
      }
      throw new AssertionError("no column " + headingText);
    }

    private String text(int column, int row) {
      return UnoRuntime.queryInterface(XText.class, cell(column, row)).getString();
    }

    private XCell cell(int column, int row) {
      try {
        return sheet.sheet().getCellByPosition(column, row);
      } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
