package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.export.PdfText;
import org.setpower.office.Office;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.quote.RentalQuote;

/**
 * The cells of a rental quote: its page adds up, withholds what is not known, and shows nothing of
 * the desk's. Expected amounts are worked out by hand; rules are common practice of rental houses.
 */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class RentalQuoteIT {
  static final Path TEMPLATE = Path.of("target/sheets/templates/en/rental-quote.ots");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private final PlanWorkbook workbook = new RentalQuote().workbook();

  static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  static Map<String, Object> row(Object... cells) {
    Map<String, Object> row = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put((String) cells[i], cells[i + 1]);
    }
    return row;
  }

  /** House, client and order in full, 1 to 16 February, a three-day week, 20 % tax; no row. */
  static PlanSheet empty(Office office, PlanWorkbook workbook) throws IOException {
    return filled(PlanSheet.blank(office, TEMPLATE, workbook));
  }

  /** The same in a document that is open. */
  static PlanSheet filled(PlanSheet book) {
    return book.typing(() -> head(book));
  }

  private static void head(PlanSheet book) {
    Stream.of("house.name", "house.address", "house.taxNumber", "house.contact", "house.bank")
        .forEach(p -> book.type(p, "our " + p));
    book.type("house.payment", "within 14 days").type("house.daysPerWeek", 3.0);
    book.type("client.name", "production X9").type("client.billing", "quay 1");
    book.type("order.number", "Q1").type("order.date", day("2027-01-20"));
    book.type("order.validUntil", day("2027-01-27")).type("order.currency", "EUR");
    book.type("order.out", day("2027-02-01")).type("order.back", day("2027-02-16"));
    book.type("order.tax", 0.2).type("order.insuredUntil", day("2027-03-31"));
  }

  private PlanSheet empty(Office office) throws IOException {
    return empty(office, workbook);
  }

  private static double number(String cell) {
    return Double.parseDouble(cell);
  }

  private static List<String> kinds(PlanSheet book, String label) {
    List<String> labels = book.column("document.label");
    List<String> amounts = book.column("document.amount");
    List<String> found = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      if (labels.get(i).startsWith(label)) {
        found.add(i < amounts.size() ? amounts.get(i) : "");
      }
    }
    return found;
  }

  private static double amount(PlanSheet book, String label) {
    List<String> found = kinds(book, label);
    assertThat(found).as(label).hasSize(1);
    return number(found.get(0));
  }

  private static PlanSheet worked(PlanSheet book) {
    book.type("order.discount", 0.075).type("order.waiver", 0.08).type("order.downPayment", 0.3);
    return book.rows(
        "items",
        row(
            "item",
            "panel",
            "qty",
            3.0,
            "weekRate",
            190.0,
            "secondWeekRate",
            140.0,
            "rate",
            63.35,
            "discount",
            0.1),
        row("item", "battery", "qty", 10.0, "rate", 8.15, "agreedDays", 8.0),
        row(
            "item",
            "stand",
            "qty",
            1.0,
            "rate",
            45.05,
            "agreedDays",
            8.0,
            "discount",
            0.3333,
            "tax",
            0.1),
        row("item", "gel", "qty", 1.0, "type", "sold", "rate", 86.45),
        row("item", "delivery", "qty", 1.0, "type", "service", "rate", 120.0));
  }

  /** The example of 1 to 16 February, worked out by hand to the cent. */
  @Test
  void the_page_has_discount_waiver_services_and_tax_and_adds_up(Office office) throws IOException {
    try (PlanSheet book = worked(empty(office))) {
      assertThat(amount(book, "Hire")).isEqualTo(2125.37);
      assertThat(amount(book, "Order discount 7.5 % of 2,125.37")).isEqualTo(-159.40);
      assertThat(amount(book, "Damage waiver 8 % of 1,965.97, not insurance")).isEqualTo(157.28);
      assertThat(amount(book, "Net at 20 %")).isEqualTo(1950.16);
      assertThat(amount(book, "Net at 10 %")).isEqualTo(222.26);
      assertThat(amount(book, "Net, not taxed: damage waiver")).isEqualTo(157.28);
      assertThat(amount(book, "VAT 20 %")).isEqualTo(390.03);
      assertThat(amount(book, "VAT 10 %")).isEqualTo(22.23);
      assertThat(amount(book, "Total EUR")).isEqualTo(2741.96);
      assertThat(amount(book, "Deposit 30 %")).isEqualTo(822.59);
      assertThat(amount(book, "Balance")).isEqualTo(1919.37);
      assertThat(book.column("document.discount")).contains("0.3333");
      assertThat(book.column("closing.text"))
          .contains("Payment: within 14 days", "Bank: our house.bank")
          .anyMatch(t -> t.startsWith("Accepted"));
    }
  }

  /** 0, 5.5, 10 and 20 %: 10, 20, 30 and 40 a piece, one piece, sold. */
  @Test
  void every_rate_of_tax_is_on_the_page_and_none_that_is_not_there(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("order.taxReason", "export");
      book.rows(
          "items",
          row("item", "a", "qty", 1.0, "type", "sold", "rate", 10.0, "tax", 0.0),
          row("item", "b", "qty", 1.0, "type", "sold", "rate", 20.0, "tax", 0.055),
          row("item", "c", "qty", 1.0, "type", "sold", "rate", 30.0, "tax", 0.1),
          row("item", "d", "qty", 1.0, "type", "sold", "rate", 40.0));
      assertThat(kinds(book, "Net at")).containsExactly("20.0", "30.0", "40.0");
      assertThat(amount(book, "Net, not taxed: export")).isEqualTo(10);
      assertThat(kinds(book, "VAT")).containsExactly("0.0", "1.1", "3.0", "8.0");
      assertThat(amount(book, "Total EUR")).isEqualTo(112.10);
      assertThat(book.column("taxes.rate")).hasSize(4);
      book.rows("items", row("item", "d", "qty", 1.0, "type", "sold", "rate", 40.0));
      // a single rate: its net is that of the quote
      assertThat(kinds(book, "Net")).containsExactly("40.0");
      assertThat(book.column("taxes.rate")).containsExactly("0.2");
    }
  }

  @TestFactory
  Stream<DynamicTest> a_row_that_is_a_stop_keeps_the_whole_page_back(Office office) {
    return Stream.of(
        stopped(office, "qty 2.5", row("item", "x", "qty", 2.5, "rate", 5.0)),
        stopped(office, "rate 1e12", row("item", "x", "qty", 1.0, "rate", 1e12)),
        stopped(office, "no item", row("qty", 1.0, "rate", 5.0)),
        stopped(office, "no quantity", row("item", "x", "rate", 5.0)),
        stopped(office, "negative", row("item", "x", "qty", -1.0, "rate", 5.0)),
        stopped(office, "no rate", row("item", "x", "qty", 1.0)),
        stopped(office, "rate as text", row("item", "x", "qty", 1.0, "rate", "98,5")),
        stopped(office, "date as text", row("item", "x", "qty", 1.0, "rate", 5.0, "out", "soon")),
        stopped(office, "tax 20", row("item", "x", "qty", 1.0, "rate", 5.0, "tax", 20.0)));
  }

  private DynamicTest stopped(Office office, String name, Map<String, Object> wrong) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          try (PlanSheet book = empty(office)) {
            book.rows("items", row("item", "fine", "qty", 1.0, "rate", 777.0), wrong);
            withheld(book, "row 2");
          }
        });
  }

  private static void withheld(PlanSheet book, String where) {
    assertThat(book.column("document.label")).hasSize(1);
    assertThat(book.column("document.label").get(0)).startsWith("Not to be issued: " + where);
    assertThat(book.column("document.amount")).isEmpty();
    assertThat(book.column("closing.text")).isEmpty();
    assertThat(book.single("summary.mayIssue")).isEqualTo("no");
    assertThat(book.single("summary.total")).isEmpty();
    assertThat(book.page("Client quote"))
        .doesNotContain("777", "fine", "our house", "X9", "Accepted");
  }

  @Test
  void an_order_that_cannot_be_read_keeps_the_page_back(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("items", row("item", "fine", "qty", 1.0, "rate", 777.0));
      book.type("order.tax", "");
      withheld(book, "Project");
      book.type("order.tax", 0.2).type("order.currency", "EURO");
      withheld(book, "Project");
      book.type("order.currency", "EUR").type("order.back", day("2027-01-01"));
      withheld(book, "Project");
      book.type("order.back", day("2027-02-16"));
      assertThat(book.single("summary.mayIssue")).isEqualTo("yes");
    }
  }

  /** The same item twice, with dates of its own: each return is judged by its row. */
  @Test
  void a_late_return_is_judged_by_its_row(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "items",
          row(
              "item",
              "panel",
              "qty",
              2.0,
              "rate",
              50.0,
              "out",
              day("2027-02-01"),
              "back",
              day("2027-02-02")),
          row(
              "item",
              "panel",
              "qty",
              2.0,
              "rate",
              50.0,
              "out",
              day("2027-02-08"),
              "back",
              day("2027-02-10")));
      book.rows(
          "returns",
          row("line", 1.0, "item", "panel", "qty", 2.0, "date", day("2027-02-02")),
          row("line", 2.0, "item", "panel", "qty", 2.0, "date", day("2027-02-10")));
      assertThat(book.column("returns.daysLate")).containsExactly("0.0", "0.0");
      assertThat(book.single("summary.lateFees")).isIn("0.00", "0");
      assertThat(book.single("summary.lateRows")).isEqualTo("0");
    }
  }

  /** Out 1, due 3, back 5 February: five days, three charged; two days late that cost nothing. */
  @Test
  void late_days_count_where_the_weekly_cap_charges_nothing(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("order.back", day("2027-02-03")).type("order.discount", 0.1);
      book.rows("items", row("item", "panel", "qty", 1.0, "rate", 100.0));
      book.rows(
          "returns", row("line", 1.0, "item", "panel", "qty", 1.0, "date", day("2027-02-05")));
      assertThat(book.column("returns.daysLate")).containsExactly("2.0");
      assertThat(book.column("returns.fee")).containsExactly("0.0");
      assertThat(book.single("summary.lateRows")).isEqualTo("1");
      // uncapped: two more days of 100 less the order discount of 10 %
      book.type("house.late", "every day");
      assertThat(book.column("returns.fee")).containsExactly("180.0");
    }
  }

  /** Two pieces, 60 a day for 1.5 days agreed; the other house bills 3 days of 36.125. */
  @Test
  void the_margin_on_sub_hire_counts_the_days_of_the_other_house(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "items",
          row(
              "item",
              "x",
              "qty",
              2.0,
              "rate",
              60.0,
              "agreedDays",
              1.5,
              "subFrom",
              "house B",
              "subRate",
              36.125,
              "subDays",
              3.0));
      assertThat(book.column("items.subCost")).containsExactly("216.75");
      assertThat(number(book.column("items.margin").get(0))).isCloseTo(-36.75, within(1e-9));
      assertThat(book.column("items.verdict")).containsExactly("check");
      assertThat(book.page("Client quote")).doesNotContain("house B", "36.125", "216.75");
    }
  }

  @Test
  void insurance_that_ends_before_the_last_return_is_a_check(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("items", row("item", "x", "qty", 1.0, "rate", 5.0));
      book.rows("stock", row("item", "x", "owned", 1.0, "value", 9.0, "weight", 1.0));
      assertThat(book.single("order.verdict")).isEqualTo("ok");
      book.type("order.insuredUntil", day("2027-02-15"));
      assertThat(book.single("order.verdict")).isEqualTo("check");
      assertThat(book.single("order.reasons")).contains("insured until 15 Feb 2027");
      assertThat(book.single("summary.mayIssue")).isEqualTo("yes");
      book.type("order.insuredUntil", day("2027-02-16"));
      book.rows("returns", row("line", 1.0, "item", "x", "qty", 1.0, "date", day("2027-02-18")));
      assertThat(book.single("order.verdict")).isEqualTo("check");
    }
  }

  @Test
  void rates_in_another_currency_are_never_relabelled(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("stock", row("item", "x", "owned", 1.0, "dayRate", 100.0));
      book.rows("items", row("item", "x", "qty", 1.0, "agreedDays", 1.0));
      book.type("house.currency", "EUR");
      assertThat(amount(book, "Hire")).isEqualTo(100);
      book.type("order.currency", "GBP");
      assertThat(book.single("summary.mayIssue")).isEqualTo("no");
      book.type("order.exchange", 0.85);
      assertThat(amount(book, "Hire")).isEqualTo(85);
      assertThat(amount(book, "Total GBP")).isEqualTo(102);
    }
  }

  @Test
  void stock_counts_all_rows_on_their_dates_and_what_is_booked_elsewhere(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("stock", row("item", "x", "owned", 5.0, "outOfService", 1.0, "dayRate", 1.0));
      book.rows("items", row("item", "x", "qty", 2.0), row("item", "x", "qty", 1.0));
      assertThat(book.column("items.missing")).containsExactly("0.0", "0.0");
      book.rows(
          "booked",
          row("item", "x", "qty", 3.0, "from", day("2027-02-10"), "to", day("2027-02-11")));
      assertThat(book.column("items.missing")).containsExactly("2.0", "2.0");
      assertThat(book.column("items.verdict")).containsOnly("check");
      assertThat(book.single("summary.mayIssue")).isEqualTo("yes");
    }
  }

  @Test
  void papers_have_the_rows_that_are_fit_with_their_cautions(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "stock",
          row(
              "item",
              "x",
              "owned",
              5.0,
              "dayRate",
              1.0,
              "value",
              40.0,
              "weight",
              2.0,
              "caution",
              "Do not charge below 0 °C.",
              "origin",
              "FR"));
      book.rows("items", row("item", "x", "qty", 2.0), row("item", "y", "qty", 2.5, "rate", 1.0));
      book.rows("picked", row("line", 1.0, "item", "x", "serials", "X1, X2", "carnet", "yes"));
      for (String paper :
          List.of("Delivery note", "Return note", "Insurer's list", "Carnet list")) {
        assertThat(book.page(paper)).contains("Not to be issued: row 2").doesNotContain("X1");
      }
      book.rows("items", row("item", "x", "qty", 2.0), row("item", "y", "qty", 2.0, "rate", 1.0));
      book.rows("picked", row("line", 2.0, "item", "x", "serials", "X1, X2", "carnet", "yes"));
      for (String paper :
          List.of("Delivery note", "Return note", "Insurer's list", "Carnet list")) {
        assertThat(book.page(paper)).contains("Picking, row 1").doesNotContain("X1");
      }
      book.rows("picked", row("line", 1.0, "item", "x", "serials", "X1, X2", "carnet", "yes"));
      assertThat(book.column("delivery.item")).containsExactly("x", "Total");
      book.rows(
          "picked",
          row("line", 1.0, "item", "x", "serials", "X1, X2", "carnet", "yes"),
          row("line", 2.0, "item", "y"));
      assertThat(book.column("delivery.item"))
          .containsExactly("x", "y", "Total, incomplete: rows without a weight: 1");
      assertThat(book.column("delivery.serials")).containsExactly("X1, X2");
      assertThat(book.column("due.item")).containsExactly("x", "y");
      assertThat(book.column("delivery.caution")).containsExactly("Do not charge below 0 °C.");
      assertThat(book.column("delivery.weight")).containsExactly("4.0", "", "4.0");
      assertThat(book.column("values.serials")).containsExactly("X1, X2");
      assertThat(book.column("values.value")).containsExactly("80.0", "", "80.0");
      assertThat(book.column("carnet.origin")).containsExactly("FR");
      assertThat(book.page("Delivery note")).contains("Do not charge lithium batteries below 0 °C");
      assertThat(book.page("Client quote")).doesNotContain("lithium");
    }
  }

  /** Rows inserted and deleted by our commands take the numbers on Picking and Returns along. */
  @Test
  void row_numbers_follow_the_rows_of_the_quote(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "items",
          row("item", "x", "qty", 1.0, "rate", 1.0),
          row("item", "y", "qty", 2.0, "rate", 1.0),
          row("item", "z", "qty", 3.0, "rate", 1.0));
      book.rows("picked", row("line", 3.0, "item", "z"), row("line", 1.0, "item", "x"));
      book.rows("returns", row("line", 3.0, "item", "z", "qty", 1.0, "date", day("2027-02-16")));
      Place top = book.layout().place(book.table("items").inputs().column("item"));
      String first = "Quote." + CalcDocument.address(top.column(), top.row());
      String second = "Quote." + CalcDocument.address(top.column(), top.row() + 1);
      CommandDriver.command(office, book.document(), "add", "cell", second, "rows", "2");
      // after row 3: blank rows 4 and 5, so nothing moves but what is below
      assertThat(numbers(book, "picked", 2)).containsExactly("3.0", "1.0");
      CommandDriver.command(office, book.document(), "add", "cell", first);
      assertThat(numbers(book, "picked", 2)).containsExactly("4.0", "1.0");
      assertThat(numbers(book, "returns", 1)).containsExactly("4.0");
      CommandDriver.command(office, book.document(), "remove", "cell", second);
      assertThat(numbers(book, "picked", 2)).containsExactly("3.0", "1.0");
      String said = CommandDriver.command(office, book.document(), "remove", "cell", first);
      assertThat(said).contains("1 row of another tab named a removed row");
      assertThat(numbers(book, "picked", 2)).containsExactly("2.0", "");
      assertThat(book.column("picked.verdict")).containsExactly("ok", "stop");
      assertThat(book.page("Delivery note")).contains("Picking, row 2");
    }
  }

  private static List<String> numbers(PlanSheet book, String table, int rows) {
    List<String> numbers = new ArrayList<>();
    for (Object[] row :
        UnoRuntime.queryInterface(XCellRangeData.class, book.inputs(table, 0, rows))
            .getDataArray()) {
      numbers.add(String.valueOf(row[0]));
    }
    return numbers;
  }

  /**
   * Six ordered at 2 kg; five on the shelf go out: 10 kg. The balloon of another house: unknown.
   */
  @Test
  void papers_follow_picking_and_say_what_they_do_not_know(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("order.waiver", 0.08).type("order.insuredUntil", "");
      assertThat(book.page("Internal check")).contains("Fill in Tax on the waiver on Assumptions");
      book.type("house.waiverTax", 0.2);
      assertThat(book.page("Internal check")).doesNotContain("Tax on the waiver");
      book.rows(
          "stock",
          row("item", "x", "owned", 6.0, "dayRate", 1.0, "value", 40.0, "weight", 2.0),
          row("item", "tape", "value", 9.0));
      book.rows(
          "items",
          row("item", "x", "qty", 6.0),
          row("item", "tape", "qty", 6.0, "type", "sold", "rate", 9.5),
          row("item", "balloon", "qty", 1.0, "rate", 260.0, "subFrom", "B", "subRate", 180.0));
      book.rows(
          "picked",
          row("line", 1.0, "item", "x", "qty", 5.0, "serials", "X1 to X5"),
          row("line", 2.0, "item", "tape"),
          row("line", 3.0, "item", "balloon"));
      assertThat(book.column("delivery.pieces")).containsExactly("5.0", "6.0", "1.0");
      assertThat(book.column("delivery.weight")).containsExactly("10.0", "", "", "10.0");
      assertThat(book.column("due.item")).containsExactly("x", "balloon");
      assertThat(book.single("summary.withoutWeight")).isEqualTo("1");
      assertThat(book.single("summary.withoutValue")).isEqualTo("1");
      assertThat(book.page("Client quote"))
          .contains("no certificate of insurance is asked for")
          .doesNotContain("Replacement value");
      book.type("order.insuredUntil", day("2027-02-16"));
      assertThat(book.page("Client quote")).contains("incomplete: rows without a value: 1");
      assertThat(book.page("Delivery note")).doesNotContain("Not to be issued");
    }
  }

  /** 99 pieces at 380 000: 37 620 000; 16 days of 1 to 16 February, eight charged: 9 777 770.64. */
  @Test
  void a_dear_order_prints_its_figures(Office office) throws Exception {
    try (PlanSheet book = empty(office)) {
      book.type("order.discount", 0.125).type("order.security", 2_000_000.0);
      book.rows(
          "stock",
          row(
              "item",
              "x",
              "owned",
              198.0,
              "dayRate",
              12_345.67,
              "weekRate",
              45_678.9,
              "value",
              380_000.0,
              "weight",
              1980.0));
      book.rows(
          "items", row("item", "x", "qty", 99.0), row("item", "x", "qty", 99.0, "basis", "week"));
      book.rows("picked", row("line", 1.0, "item", "x", "qty", 99.0, "carnet", "yes"));
      book.calculated();
      Path pdf = office.newFolder().resolve("dear.pdf");
      office.store(book.document(), "calc_pdf_Export", pdf);
      assertThat(PdfText.of(pdf))
          .contains("9,777,770.64", "45,678.90", "37,620,000.00", "75,240,000.00", "196,020.00")
          .doesNotContain("###", "Internal check");
    }
  }

  /**
   * Eight tubes at 18 a day, 10 % off, 20 % tax; two back two days late: 2 × 18 × 2 × 0.9 = 64.80
   * and 12.96. A battery of 290 lost: 367.76 off a deposit of 1500.
   */
  @Test
  void only_what_differs_is_typed_and_the_statement_puts_it_together(Office office)
      throws Exception {
    try (PlanSheet book = empty(office)) {
      book.type("house.daysPerWeek", "").type("order.discount", 0.1).type("order.security", 1500.0);
      book.type("order.insuredUntil", day("2027-03-31")).type("client.site", "gaffer, telephone 2");
      book.rows(
          "stock",
          row("item", "tube", "owned", 8.0, "dayRate", 18.0, "value", 420.0, "weight", 1.5),
          row("item", "battery", "owned", 12.0, "dayRate", 10.0, "value", 290.0, "weight", 2.0));
      book.rows("items", row("item", "tube", "qty", 8.0), row("item", "battery", "qty", 12.0));
      assertThat(book.column("items.row")).containsExactly("1.0", "2.0");
      assertThat(book.column("items.price")).containsExactly("18.0", "10.0");
      assertThat(book.column("statement.label")).isEmpty();
      book.rows(
          "returns",
          row("line", 1.0, "item", "tube", "qty", 2.0, "date", day("2027-02-18")),
          row(
              "line",
              2.0,
              "item",
              "battery",
              "qty",
              1.0,
              "date",
              day("2027-02-16"),
              "state",
              "lost"));
      assertThat(book.column("due.open")).containsExactly("6.0", "11.0");
      assertThat(book.single("summary.openPoints")).isEqualTo("2");
      book.type("order.restBack", "yes");
      assertThat(book.column("due.open")).containsExactly("0.0", "0.0");
      assertThat(book.column("statement.label"))
          .containsExactly(
              "tube: late, 2 of 2 days charged at 18.00, less 10 %",
              "battery: lost",
              "Charges",
              "Less security deposit",
              "Security deposit to give back",
              "Balance of the quote, due apart from this");
      assertThat(book.column("statement.amount").subList(0, 5))
          .containsExactly("77.76", "290.0", "367.76", "-1500.0", "1132.24");
      assertThat(book.single("summary.giveBack")).isEqualTo("1,132.24");
      assertThat(book.page("Return statement")).contains("our house.name", "production X9");
      Path pdf = office.newFolder().resolve("papers.pdf");
      office.store(book.document(), "calc_pdf_Export", pdf);
      assertThat(PdfText.of(pdf))
          .contains("Delivery note", "Contact on site: gaffer, telephone 2", "Received complete")
          .contains("Weight", "36.00")
          .doesNotContain("Goes out with the kit", "Rows 2", "###", "Err:", "#NAME");
    }
  }
}
