package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.flight.FlightList;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.uno.KeyFigureReader;

/** The flight packing list on days that the rules held do not reach: no class, and why. */
@ExtendWith(SharedOffice.class)
class FlightDatesIT {
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/flight-packing-list-example.ods");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  @Test
  void days_after_the_edition_stop_flights_packs_and_cargo(Office office) throws IOException {
    try (TestWorkbook book = new TestWorkbook(office, EXAMPLE, new FlightList().template())) {
      TableSpec flights = book.table("Flights");
      TableSpec packs = book.table("Packs");
      TableSpec freight = book.table("Cargo, road");
      assertThat(status(book.calculated(), flights, 0)).isEqualTo("ok");
      assertThat(shown(book, packs, "Class", 0)).isEqualTo("cabin");
      assertThat(shown(book, freight, "How it is declared", 0)).startsWith("UN 3480");

      date(book, flights, "Date", 0, LocalDate.of(2026, 12, 31));
      date(book, flights, "Date", 1, LocalDate.of(2026, 12, 31));
      assertThat(status(book.calculated(), flights, 1)).isEqualTo("ok");

      date(book, flights, "Date", 1, LocalDate.of(2027, 1, 1));
      book.calculated();
      assertThat(status(book, flights, 0)).isEqualTo("ok");
      assertStopped(book, flights, 1);
      assertStopped(book, packs, 0);
      assertThat(shown(book, packs, "Class", 0)).isEmpty();

      date(book, flights, "Date", 1, LocalDate.of(2035, 6, 1));
      book.cell(TestWorkbook.column(flights, "Rules"), 1).setFormula("US");
      date(book, freight, "Hand over", 0, LocalDate.of(2035, 6, 1));
      book.calculated();
      assertStopped(book, flights, 1);
      assertThat(shown(book, freight, "How it is declared", 0)).isEmpty();
      assertThat(status(book, freight, 0)).isEqualTo("stop");
      assertThat(reason(book, freight, 0)).contains("do not answer", "ask the airline", "2035");
      assertThat(book.errors()).isEmpty();
      Map<String, String> results = KeyFigureReader.of(book.document());
      assertThat(Integer.parseInt(results.get("Stop"))).isGreaterThan(5);
    }
  }

  private static void assertStopped(TestWorkbook book, TableSpec table, int row) {
    assertThat(status(book, table, row)).isEqualTo("stop");
    assertThat(reason(book, table, row)).contains("end on 2026-12-31", "ask the operating carrier");
  }

  private static String status(TestWorkbook book, TableSpec table, int row) {
    return TestWorkbook.shown(book.cell(table.status(), row));
  }

  private static String reason(TestWorkbook book, TableSpec table, int row) {
    return TestWorkbook.shown(book.cell(table.reason(), row));
  }

  private static String shown(TestWorkbook book, TableSpec table, String heading, int row) {
    return TestWorkbook.shown(book.cell(TestWorkbook.column(table, heading), row));
  }

  private static void date(
      TestWorkbook book, TableSpec table, String heading, int row, LocalDate day) {
    book.cell(TestWorkbook.column(table, heading), row)
        .setValue(ChronoUnit.DAYS.between(DAY_ZERO, day));
  }
}
