package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Size;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.travel.BatteryTravelList;
import org.setpower.templates.uno.UnoAccess;
import org.setpower.text.MessageCatalog;

/**
 * Rows do not grow when figures change: each has room for what it may show before anybody asks for
 * print ranges, also beyond the first forty, in every language.
 */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class TravelRowsIT {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private static final List<String> ROLES =
      List.of(
          "first camera assistant",
          "second camera assistant",
          "production sound",
          "video assist",
          "gaffer",
          "best boy");

  private final PlanWorkbook workbook = new BatteryTravelList().workbook();

  private static Path template(String language) {
    return Path.of("target/sheets/templates/" + language + "/battery-travel-list.ots");
  }

  private static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  private static Map<String, Object> row(Object... cells) {
    Map<String, Object> row = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put((String) cells[i], cells[i + 1]);
    }
    return row;
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
  private static Map<String, Object>[] array(List<Map<String, Object>> rows) {
    return rows.toArray(new Map[0]);
  }

  @TestFactory
  Stream<DynamicTest> nothing_is_cut_without_setting_print_ranges(Office office) {
    return Stream.of("en", "de", "fr", "es")
        .filter(language -> Files.exists(template(language)))
        .map(language -> DynamicTest.dynamicTest(language, () -> nothingIsCut(office, language)));
  }

  private void nothingIsCut(Office office, String language) throws IOException {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    try (PlanSheet book = new PlanSheet(office, template(language), workbook, words)) {
      crowd(book);
      List<String> cut = new ArrayList<>();
      int shown = 0;
      for (PlanTab tab : workbook.tabs()) {
        for (PlanPart part : tab.parts()) {
          boolean fits = part instanceof PlanList list && !list.isWide() && !tab.isPage();
          shown += fits ? check(book, tab, (PlanList) part, cut) : 0;
        }
      }
      assertThat(shown).isGreaterThan(400);
      assertThat(cut).as(language).isEmpty();
    }
  }

  /** Adds the rows whose height is less than their text needs; gives how many show something. */
  private int check(PlanSheet book, PlanTab tab, PlanList list, List<String> cut) {
    int first = book.layout().place(list).row() + 1;
    int left = book.layout().place(list).column();
    int wide = book.layout().columns(list).size();
    XCellRange all = book.range(tab, left, first, wide, list.rows());
    Object[][] data = UnoRuntime.queryInterface(XCellRangeData.class, all).getDataArray();
    int shown = list.rows();
    while (shown > 0 && Stream.of(data[shown - 1]).allMatch(""::equals)) {
      shown--;
    }
    if (shown == 0) {
      return 0;
    }
    XCellRange rows = book.range(tab, left, first, 1, shown);
    int[] before = heights(rows, shown);
    UnoAccess.set(
        UnoRuntime.queryInterface(XColumnRowRange.class, rows).getRows(), "OptimalHeight", true);
    int[] needed = heights(rows, shown);
    for (int i = 0; i < shown; i++) {
      if (needed[i] > before[i] + 30) {
        cut.add(tab.name() + " row " + (i + 1) + ": " + before[i] + " of " + needed[i]);
      }
    }
    return shown;
  }

  private static int[] heights(XCellRange rows, int count) {
    int[] heights = new int[count];
    for (int i = 0; i < count; i++) {
      int row = i;
      heights[i] = height(UnoAccess.ask(() -> rows.getCellRangeByPosition(0, row, 0, row)));
    }
    return heights;
  }

  private static int height(XCellRange row) {
    return ((Size) UnoAccess.get(row, "Size")).Height;
  }

  /** Six travellers on three flights with a hundred batteries of all sorts. */
  private static void crowd(PlanSheet book) {
    book.type("project.production", "The Salt Road").type("project.issued", day("2026-05-20"));
    book.type("project.contact", "Unit desk, answered at any hour: +00 000 0000");
    book.type("project.rest", "cargo aircraft").type("project.handOver", day("2026-05-28"));
    book.type("project.back", "road").type("project.backOn", day("2026-06-20"));
    List<Map<String, Object>> flights = new ArrayList<>();
    List<Map<String, Object>> answers = new ArrayList<>();
    for (int f = 0; f < 3; f++) {
      Map<String, Object> flight =
          row("flight", "SA 10" + f, "date", day("2026-06-0" + (1 + f)), "carrier", "Salt Air");
      flight.put("rules", f == 1 ? "US" : "ICAO");
      if (f == 2) {
        flight.putAll(row("date", day("2027-02-09"), "carrier", "Quay Air"));
        flight.putAll(row("writtenSpares", 20.0, "writtenOver", 2.0, "writtenBanks", 2.0));
        flight.put("writtenReference", "mail 20");
      }
      flights.add(flight);
      for (String type : List.of("P150", "P155")) {
        Map<String, Object> answer = row("type", type, "energy", 160.0, "number", 2.0);
        answer.putAll(row("reference", "mail 17", "answered", day("2026-05-11")));
        answer.putAll(flight);
        answer.keySet().removeIf(k -> k.startsWith("written") || "rules".equals(k));
        answers.add(answer);
      }
    }
    book.rows("flights", array(flights)).rows("answers", array(answers));
    List<Map<String, Object>> people = new ArrayList<>();
    for (String role : ROLES) {
      people.add(row("traveller", role));
    }
    book.rows("travellers", array(people));
    List<Map<String, Object>> batteries = new ArrayList<>();
    for (int b = 1; b <= 100; b++) {
      batteries.add(battery(b));
    }
    book.rows("batteries", array(batteries));
  }

  private static Map<String, Object> battery(int b) {
    Map<String, Object> battery = row("battery", "Battery-" + b, "quantity", 1.0 + b % 3);
    battery.putAll(row("condition", "fine", "un383", "yes", "kilograms", 0.75));
    switch (b % 8) {
      case 0 -> battery.putAll(row("energy", 150.0, "type", "P150", "terminals", "yes"));
      case 1 -> battery.putAll(row("energy", 155.0, "type", "P155", "terminals", "yes"));
      case 2 -> battery.putAll(row("energy", 74.0, "carried", "power bank", "outputs", "yes"));
      case 3 -> battery.putAll(row("volts", 14.4, "ampHours", 6.8));
      case 4 -> battery.putAll(row("energy", 294.0, "charge", 0.3, "kilograms", 2.1));
      case 5 -> battery.putAll(row("energy", 98.0, "chemistry", "sodium-ion", "by", "road"));
      case 6 -> battery.putAll(row("energy", 48.0, "chemistry", "NiMH", "terminals", "yes"));
      default -> battery.putAll(row("energy", 98.0, "charge", 0.9, "by", "cargo aircraft"));
    }
    return battery;
  }
}
