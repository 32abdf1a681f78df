package org.setpower.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XComponent;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;

/** Does what first-ten-minutes.md says in an empty plan, and sees what it promises. */
@ExtendWith(SharedOffice.class)
class FirstTenMinutesIT {
  private static final Path TEMPLATE =
      Path.of("target/sheets/templates/en/lighting-power-plan.ots");

  @Test
  void five_lamps_and_two_packs_in_an_empty_plan(Office office) throws Exception {
    XComponent plan = office.open(TEMPLATE);
    Tab job = new Tab(plan, "Job", "Day");
    Tab supply = new Tab(plan, "Supply", "Name");
    Tab loads = new Tab(plan, "Loads", "Item");
    Tab kit = new Tab(plan, "Kit", "Item");
    Tab packs = new Tab(plan, "Packs", "Light");

    job.type(1, "Day", "first day", "Date", "2027-02-01", "Kind", "shoot");
    job.type(1, "Call", "07:00", "Wrap", "18:00", "Coldest", "8", "Warmest", "15");
    supply.type(1, "Name", "quay", "Kind", "street supply", "System", "3PH");
    supply.type(1, "Breaker", "63");
    String[] lamps = {
      "LED fresnel 1 200 W", "LED fresnel 650 W", "LED panel 2 x 1", "haze machine", "tungsten 2 kW"
    };
    for (int i = 0; i < lamps.length; i++) {
      loads.type(i + 1, "Item", lamps[i], "Day", "2027-02-01", "Quantity", "1");
      loads.type(i + 1, "From", "07:30", "To", "12:00", "Fed by", "quay");
    }
    int free = kit.firstFree();
    kit.type(free, "Item", "our panel, half", "Fed with", "DC", "Power (W)", "200");
    kit.type(free, "Works from", "20", "Works to", "36");
    kit.type(free + 1, "Item", "our panel, full", "Fed with", "DC", "Power (W)", "400");
    kit.type(free + 1, "Works from", "40", "Works to", "70");
    Map<Integer, String> lights = Map.of(1, "our panel, half", 2, "our panel, full");
    lights.forEach(
        (row, light) -> {
          packs.type(row, "Light", light, "Day", "2027-02-01", "Quantity", "1");
          packs.type(row, "Pack", "290 Wh 12/24 V", "Lead (m)", "10", "Lead size", "12 AWG");
          packs.type(row, "Plate", row == 1 ? "24" : "48", "From", "07:30", "To", "11:30");
        });
    packs.type(2, "In series", "2");
    job.sheet.calculate();

    assertThat(job.shown(1, "Status")).isIn("", "ok");
    for (int i = 1; i <= lamps.length; i++) {
      assertThat(loads.shown(i, "Power")).isNotEmpty();
      assertThat(loads.shown(i, "Status")).as(loads.shown(i, "Reason")).isIn("", "ok", "check");
    }
    assertThat(supply.shown(1, "Spare")).isNotEmpty();
    assertThat(packs.shown(1, "Current")).isEqualTo("8.7");
    assertThat(packs.shown(1, "Volts at the light")).isEqualTo("22.9");
    assertThat(packs.shown(1, "One set lasts")).startsWith("1.");
    assertThat(packs.shown(1, "Status")).as(packs.shown(1, "Reason")).isEqualTo("ok");
    assertThat(packs.shown(2, "Full packs")).isEqualTo("67.2");
    assertThat(packs.shown(2, "Status")).isEqualTo("stop");
    assertThat(packs.shown(2, "Reason")).contains("67.2 V").contains("Touch-safe");

    packs.type(2, "Touch-safe", "yes");
    packs.sheet.calculate();
    assertThat(packs.shown(2, "Status")).as(packs.shown(2, "Reason")).isEqualTo("ok");
    Office.discard(plan);
  }

  /** A table of a tab, reached by its headings as a reader reaches it. */
  private static final class Tab {
    private final TestSheet sheet;
    private final int heading;

    Tab(XComponent document, String name, String firstHeading) {
      sheet = TestSheet.named(document, name);
      int row = 0;
      while (!text(0, row).equals(firstHeading)) {
        row++;
      }
      heading = row;
    }

    /** Types into a row below the headings: heading, value, heading, value … */
    void type(int row, String... headingsAndValues) {
      for (int i = 0; i < headingsAndValues.length; i += 2) {
        XCell cell = cell(column(headingsAndValues[i]), heading + row);
        try {
          UnoRuntime.queryInterface(XPropertySet.class, cell)
              .setPropertyValue("FormulaLocal", headingsAndValues[i + 1]);
        } catch (com.sun.star.uno.Exception e) {
          throw new IllegalStateException(e);
        }
      }
    }

    int firstFree() {
      int row = 1;
      while (!text(0, heading + row).isEmpty()) {
        row++;
      }
      return row;
    }

    String shown(int row, String headingText) {
      return text(column(headingText), heading + row);
    }

    private int column(String headingText) {
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
