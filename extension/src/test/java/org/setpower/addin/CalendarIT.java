package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.Date;
import java.io.IOException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;

/** Dates in documents that count their days from another day than 1899-12-30. */
@ExtendWith(SharedOffice.class)
class CalendarIT {
  private TestSheet sheet;

  @BeforeEach
  void open(Office office) throws IOException {
    sheet = TestSheet.firstOf(office.newSpreadsheet());
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  @Test
  void a_date_is_the_day_the_cell_shows_in_either_calendar() throws com.sun.star.uno.Exception {
    assertTheCapStartsOn27March();
    UnoRuntime.queryInterface(XPropertySet.class, sheet.document())
        .setPropertyValue("NullDate", new Date((short) 1, (short) 1, (short) 1904));
    assertTheCapStartsOn27March();
  }

  /** ICAO Doc 9284, Addendum No. 1: at most two power banks a person from 2026-03-27. */
  private void assertTheCapStartsOn27March() {
    sheet.put("A1", "=DATE(2026;3;26)").put("A2", "=DATE(2026;3;27)");
    sheet.put("B1", "=FLIGHT.LIMIT(74;\"power bank\";\"Li-ion\";\"ICAO\";A1)");
    sheet.put("B2", "=FLIGHT.LIMIT(74;\"power bank\";\"Li-ion\";\"ICAO\";A2)");
    sheet.array("C1:C2", "=FLIGHT.LIMIT(74;\"power bank\";\"Li-ion\";\"ICAO\";A1:A2)");
    sheet.calculate();
    assertThat(sheet.number("B1")).isEqualTo(20);
    assertThat(sheet.number("B2")).isEqualTo(2);
    assertThat(sheet.number("C1")).isEqualTo(20);
    assertThat(sheet.number("C2")).isEqualTo(2);
  }
}
