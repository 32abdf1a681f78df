package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.setpower.templates.plan.RentalQuoteIT.day;
import static org.setpower.templates.plan.RentalQuoteIT.row;

import com.sun.star.awt.Size;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.command.export.PdfText;
import org.setpower.office.Office;
import org.setpower.templates.budget.PowerBudget;
import org.setpower.templates.layout.PlanLayout;

/**
 * The cells of a power budget: its cost report, totals, scenarios and cash. Expected amounts are
 * worked out by hand; rules are common practice of production accounting.
 */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class PowerBudgetIT {
  private static final Path TEMPLATE = Path.of("target/sheets/templates/en/power-budget.ots");
  private static final Path EXAMPLE = Path.of("target/sheets/examples/power-budget-example.ods");

  private final PlanWorkbook workbook = new PowerBudget().workbook();

  /** A budget in EUR, 20 % tax, reclaimed, ordered 18 and delivered 28 January; no line. */
  private PlanSheet empty(Office office) throws IOException {
    PlanSheet book = PlanSheet.blank(office, TEMPLATE, workbook);
    book.rows("lines");
    book.type("project.currency", "EUR").type("project.tax", 0.2);
    book.type("project.ordered", day("2027-01-18")).type("project.delivered", day("2027-01-28"));
    return book.type("project.back", day("2027-02-09"));
  }

  private static List<Double> numbers(PlanSheet book, String path) {
    return book.column(path).stream().map(c -> c.isEmpty() ? null : Double.valueOf(c)).toList();
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
  private static Map<String, Object>[] array(List<Map<String, Object>> rows) {
    return rows.toArray(new Map[0]);
  }

  private static double sum(List<Double> numbers) {
    return numbers.stream().filter(n -> n != null).mapToDouble(n -> n).sum();
  }

  /** The figures of a row of the cost report, by its label: the last where several have it. */
  private static List<Double> reported(PlanSheet book, String label) {
    int at = book.column("report.label").lastIndexOf(label);
    assertThat(at).as(label).isNotNegative();
    List<Double> figures = new ArrayList<>();
    for (String key :
        List.of(
            "budget", "invoiced", "open", "costToDate", "toComplete", "finalCost", "variance")) {
      figures.add(numbers(book, "report." + key).get(at));
    }
    return figures;
  }

  /** Planned, ordered, invoiced 2,000 / 2,000 / 2,450; 2,000 / 1,500 / 1,500; that complete. */
  @Test
  void what_is_overspent_reaches_the_variance(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      Map<String, Object> half =
          row(
              "description",
              "half",
              "type",
              "rental",
              "price",
              2000.0,
              "ordered",
              1500.0,
              "invoiced",
              1500.0);
      Map<String, Object> complete = row("complete", "yes");
      complete.putAll(half);
      book.rows(
          "lines",
          row(
              "description",
              "over",
              "type",
              "rental",
              "price",
              400.0,
              "qty",
              5.0,
              "ordered",
              2000.0,
              "invoiced",
              2450.0),
          half,
          complete);
      assertThat(numbers(book, "lines.variance")).containsExactly(-450.0, 0.0, 500.0);
      assertThat(numbers(book, "lines.finalCost")).containsExactly(2450.0, 2000.0, 1500.0);
      assertThat(book.column("lines.reasons").get(0))
          .contains("The estimated final cost 2,450.00 exceeds the budget 2,000.00 by 450.00.");
      assertThat(book.column("lines.verdict").get(0)).isEqualTo("check");
      book.type("project.contingency", 0.1);
      // contingency is a line of its own: it takes nothing off what is over
      assertThat(reported(book, "Total"))
          .containsExactly(6600.0, 5450.0, 0.0, 5450.0, 1100.0, 6550.0, 50.0);
      assertThat(reported(book, "Contingency"))
          .containsExactly(600.0, 0.0, 0.0, 0.0, 600.0, 600.0, 0.0);
    }
  }

  /** Generator operator 11.5 h on 5 days: 57.5 h in all, at 38.35. */
  @Test
  void a_linked_count_is_never_ignored(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("counts", row("count", "operator", "value", 57.5, "inAll", "yes"));
      Map<String, Object> line =
          row(
              "description",
              "operator",
              "type",
              "crew",
              "count",
              "operator",
              "unit",
              "hour",
              "price",
              38.35);
      book.rows("lines", line);
      assertThat(numbers(book, "lines.budgetNow")).containsExactly(2205.13);
      line.put("qty", 1.0);
      book.rows("lines", line);
      assertThat(numbers(book, "lines.budgetNow")).containsExactly(2205.13);
      line.put("times", 36.0);
      book.rows("lines", line);
      assertThat(book.column("lines.verdict")).containsExactly("stop");
      assertThat(book.column("lines.budgetNow")).isEmpty();
      assertThat(book.single("summary.withheld")).isEqualTo("1");
      assertThat(book.column("issues.reasons").get(0)).contains("is already in all");
    }
  }

  /** Planned and ordered 376.50: the same basis, whatever is reclaimed and however it is typed. */
  @Test
  void planned_and_ordered_are_in_one_basis(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "lines",
          row("description", "x", "type", "rental", "price", 376.5, "ordered", 376.5, "po", "P"));
      for (String columns : List.of("net", "with unrecoverable tax")) {
        for (String amounts : List.of("without tax", "with tax")) {
          book.type("project.columns", columns).type("project.amounts", amounts);
          book.type("project.recoverable", 0.5);
          assertThat(numbers(book, "lines.variance")).containsExactly(0.0);
        }
      }
      book.type("project.amounts", "without tax");
      // 376.50 and half of its tax of 75.30
      assertThat(numbers(book, "lines.finalCost")).containsExactly(414.15);
      assertThat(book.page("Budget lines"))
          .contains("Amounts in EUR with tax not reclaimed, budget: draft");
    }
  }

  /** 5 days of 12 h at 340 for 10 h, after 10 h × 1.5: 5 × 13 × 34 = 2,210. */
  @Test
  void crew_by_the_day_has_overtime_fringes_and_per_diem(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      Map<String, Object> gaffer =
          row("description", "gaffer", "type", "crew", "unit", "day", "times", 5.0, "price", 340.0);
      gaffer.put("hours", 12.0);
      gaffer.put("coveredHours", 10.0);
      book.rows("lines", gaffer);
      assertThat(book.column("lines.verdict")).containsExactly("check");
      assertThat(book.column("lines.reasons").get(0)).contains("Overtime is blank");
      assertThat(numbers(book, "lines.pay")).containsExactly(1700.0);
      book.rows("tiers", row("after", 10.0, "factor", 1.5));
      assertThat(book.column("lines.verdict")).containsExactly("ok");
      assertThat(numbers(book, "lines.pay")).containsExactly(2210.0);
      // 25 % on pay with overtime, 40 for each of 3 days away
      book.type("project.fringe", 0.25).type("project.perDiem", 40.0);
      gaffer.put("daysAway", 3.0);
      book.rows("lines", gaffer);
      assertThat(numbers(book, "lines.fringes")).containsExactly(552.5);
      assertThat(numbers(book, "lines.perDiems")).containsExactly(120.0);
      assertThat(numbers(book, "lines.finalCost")).containsExactly(2882.5);
    }
  }

  @Test
  void all_accounts_and_departments_stand_on_summary_with_both_totals(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("project.contingency", 0.1);
      List<Map<String, Object>> lines = new ArrayList<>();
      for (int i = 0; i < 22; i++) {
        lines.add(
            row(
                "description",
                "x",
                "type",
                "fuel",
                "price",
                100.0 + i,
                "account",
                "A" + (10 + i % 11),
                "department",
                "D" + i % 6));
      }
      book.rows("lines", array(lines));
      List<String> labels = book.column("report.label");
      assertThat(labels).hasSize(2 + 11 + 6 + 2 * 3).startsWith("Accounts", "A10");
      assertThat(labels.stream().filter("Total"::equals)).hasSize(2);
      int first = labels.indexOf("Total");
      int second = labels.lastIndexOf("Total");
      List<Double> budgets = numbers(book, "report.budget");
      // 22 × 100 + 0 … 21, and 10 % of it
      assertThat(budgets.get(first)).isEqualTo(2674.1).isEqualTo(budgets.get(second));
      assertThat(labels.get(first - 2)).isEqualTo("Subtotal");
      assertThat(budgets.get(first - 2)).isEqualTo(2431.0);
      assertThat(budgets.get(first - 2))
          .isEqualTo(Math.rint(sum(budgets.subList(1, first - 2)) * 100) / 100);
    }
  }

  /** Planned 3,000, contingency 300, invoiced 3,800.80: overspent by 500.80 before any change. */
  @Test
  void scenarios_state_what_they_leave_of_the_contingency(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("project.contingency", 0.1);
      book.rows(
          "lines",
          row(
              "description",
              "x",
              "type",
              "rental",
              "price",
              3000.0,
              "invoiced",
              3800.8,
              "invoice",
              "I"));
      book.rows("scenarios", row("scenario", "truck late", "other", 300.0));
      assertThat(numbers(book, "scenarios.left")).containsExactly(-800.8);
      assertThat(book.column("scenarios.reasons").get(0))
          .startsWith("300.00 more: the contingency is overspent by 800.80.");
      assertThat(book.column("scenarios.verdict")).containsExactly("check");
      book.rows("scenarios", row("scenario", "dearer", "type", "rental", "dearer", 0.05));
      // all of it is invoiced: nothing gets dearer
      assertThat(numbers(book, "scenarios.more")).containsExactly(0.0);
      assertThat(numbers(book, "scenarios.left")).containsExactly(-500.8);
    }
  }

  @Test
  void a_budget_is_a_draft_until_it_is_approved(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      Map<String, Object> line = row("description", "x", "type", "rental", "price", 2000.0);
      book.rows("lines", line);
      assertThat(book.single("summary.approved")).isEqualTo("no");
      assertThat(book.page("Summary")).contains("budget: draft");
      book.type("project.approved", day("2027-01-10"));
      line.put("budget", 1900.0);
      line.put("changes", 50.0);
      book.rows("lines", line, row("description", "later", "type", "fuel", "price", 10.0));
      assertThat(numbers(book, "lines.budgetNow")).containsExactly(1950.0, 0.0);
      assertThat(numbers(book, "lines.variance")).containsExactly(-50.0, -10.0);
      assertThat(book.single("summary.approved")).isEqualTo("yes");
      assertThat(book.page("Summary")).contains("budget approved on 10 Jan 2027");
    }
  }

  /** 5 × 400 and 10: one command writes both and the day, and one step takes them back. */
  @Test
  void approving_writes_what_is_planned_and_the_day(Office office) throws Exception {
    try (PlanSheet book = empty(office)) {
      book.type("project.contingency", 0.1);
      Map<String, Object> lamps =
          row("description", "lamps", "type", "rental", "price", 400.0, "qty", 5.0);
      Map<String, Object> fuel = row("description", "fuel", "type", "fuel", "price", 10.0);
      book.rows("lines", lamps, row("type", "fuel", "price", 1.0), fuel);
      assertThatThrownBy(() -> approve(office, book))
          .hasMessage(
              "Lines that are a stop: 2. Correct or clear them first. Nothing was changed.");
      assertThat(book.typed("project.approved")).isEqualTo("");
      book.rows("lines", lamps, row("description", "no", "type", "fuel", "struck", "yes"), fuel);
      assertThat(approve(office, book))
          .isEqualTo(
              "Budget of 2 lines approved on 10 Jan 2027: 2,010.00 EUR and 201.00 EUR of"
                  + " contingency.");
      assertThat(book.typed("project.approved")).isEqualTo(day("2027-01-10"));
      assertThat(numbers(book, "lines.budgetNow")).containsExactly(2000.0, 0.0, 10.0);
      assertThat(book.typed("project.approvedTotal")).isEqualTo(2010.0);
      assertThat(book.typed("project.approvedContingency")).isEqualTo(201.0);
      assertThat(book.typed("project.approvals"))
          .isEqualTo("10 Jan 2027: 2,010.00 EUR and 201.00 EUR of contingency");
      assertThat(book.single("project.verdict")).isEqualTo("ok");
      assertThat(book.column("byLine.label"))
          .containsExactly("lamps", "fuel", "Subtotal", "Contingency", "Total");
      assertThat(numbers(book, "byLine.budget"))
          .containsExactly(2000.0, 10.0, 2010.0, 201.0, 2211.0);
      assertThat(book.single("summary.approved")).isEqualTo("yes");
      assertThatThrownBy(() -> approve(office, book)).hasMessageContaining("was approved on");
      XUndoManager undo =
          UnoRuntime.queryInterface(XUndoManagerSupplier.class, book.document()).getUndoManager();
      undo.undo();
      assertThat(book.typed("project.approved")).isEqualTo("");
      assertThat(book.single("summary.approved")).isEqualTo("no");
    }
  }

  private static String approve(Office office, PlanSheet book) {
    return CommandDriver.command(office, book.document(), "approve", "date", "2027-01-10");
  }

  /** What is ordered or invoiced without its number is a check. */
  @Test
  void numbers_of_orders_and_invoices_are_asked_for(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "lines",
          row(
              "description",
              "x",
              "type",
              "fuel",
              "price",
              10.0,
              "ordered",
              10.0,
              "invoiced",
              10.0));
      assertThat(book.column("lines.reasons").get(0))
          .contains("without a PO number", "the supplier is blank", "without an invoice number");
    }
  }

  @Test
  void options_stand_side_by_side_and_a_missing_price_is_a_stop(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "options",
          row("option", "generator", "hire", 140.0, "fuel", 19.0, "risk", "noise"),
          row("option", "batteries", "hire", 382.0, "risk", "cold"));
      assertThat(book.column("options.verdict")).containsExactly("stop", "ok");
      assertThat(book.column("options.reasons").get(0))
          .startsWith("Fuel price of Project is blank");
      book.type("project.fuelPrice", 1.62);
      assertThat(numbers(book, "options.cost")).containsExactly(170.78, 382.0);
      assertThat(numbers(book, "options.more")).containsExactly(0.0, 211.22);
      assertThat(book.single("summary.lowestOption")).isEqualTo("generator");
    }
  }

  /** 1,000 and 200 tax paid on 28 January, back 30 days later; 500 out on the 18th and back. */
  @Test
  void cash_by_week_is_the_plan_with_tax(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("lines", row("description", "x", "type", "rental", "price", 1000.0));
      book.rows("deposits", row("to", "desk", "amount", 500.0, "back", day("2027-02-10")));
      assertThat(numbers(book, "weeks.cash")).containsExactly(500.0, 1200.0, -500.0, -200.0);
      assertThat(book.column("weeks.label"))
          .containsExactly("18 Jan 2027", "25 Jan 2027", "8 Feb 2027", "22 Feb 2027");
      book.type("project.delivered", "");
      assertThat(book.column("lines.reasons").get(0)).contains("It is not in Cash flow");
      assertThat(book.page("Cash flow")).contains("Not in Cash flow");
    }
  }

  /** A cell that cannot be read hurts its own row only. */
  @TestFactory
  Stream<DynamicTest> a_line_that_is_a_stop_is_in_no_total(Office office) {
    return Stream.of(
        stopped(office, "price as text", "price", "98,5"),
        stopped(office, "qty below 0", "qty", -1.0),
        stopped(office, "tax 20", "tax", 20.0),
        stopped(office, "discount 15", "discount", 15.0),
        stopped(office, "unknown type", "type", "lamps"),
        stopped(office, "unknown currency", "currency", "EURO"),
        stopped(office, "currency without a rate", "currency", "USD"),
        stopped(office, "unknown count", "count", "hours"),
        stopped(office, "invoice amount as text", "invoiced", "soon"));
  }

  private DynamicTest stopped(Office office, String name, String key, Object wrong) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          try (PlanSheet book = empty(office)) {
            Map<String, Object> line = row("description", "x", "type", "fuel", "price", 5.0);
            line.put(key, wrong);
            book.rows("lines", row("description", "y", "type", "fuel", "price", 70.0), line);
            assertThat(book.column("lines.verdict")).containsExactly("ok", "stop");
            assertThat(numbers(book, "lines.finalCost")).containsExactly(70.0);
            assertThat(reported(book, "Total").get(5)).isEqualTo(70.0);
            assertThat(book.single("summary.verdict")).isEqualTo("stop");
            assertThat(book.single("summary.withheld")).isEqualTo("1");
          }
        });
  }

  /** By account, by department, by line and by week the example comes to the same. */
  @Test
  void the_example_adds_up_on_all_tabs(Office office) throws IOException {
    try (PlanSheet book = new PlanSheet(office, EXAMPLE, workbook).calculated()) {
      List<String> labels = book.column("report.label");
      List<Double> finals = numbers(book, "report.finalCost");
      int accounts = labels.indexOf("Total");
      int departments = labels.lastIndexOf("Total");
      int heading = labels.indexOf("Departments");
      double before = finals.get(labels.indexOf("Subtotal"));
      assertThat(cents(before)).isEqualTo(cents(sum(numbers(book, "lines.finalCost"))));
      assertThat(cents(sum(finals.subList(1, accounts)) - before))
          .isEqualTo(cents(finals.get(accounts)));
      assertThat(cents(sum(finals.subList(heading + 1, departments)) - before))
          .isEqualTo(cents(finals.get(departments)))
          .isEqualTo(cents(finals.get(accounts)));
      double kept = finals.get(labels.indexOf("Contingency"));
      assertThat(cents(sum(numbers(book, "lines.finalCost")) + kept))
          .isEqualTo(cents(finals.get(accounts)));
      assertThat(cents(sum(numbers(book, "weeks.payments"))))
          .isEqualTo(cents(sum(numbers(book, "lines.toPay"))));
      // by hand, week of 18 January: rental and connection 11583.61, their tax 2316.72, less 216
      // paid, deposit 2000: 15684.33; of 25 January: diesel, drop, electrician 448.76, tax 89.75;
      // a third of the crew's 2004.50 in each of three weeks; of 8 February: truck 576, tax 115.20
      assertThat(book.single("summary.peak")).isEqualTo("18,918.54");
    }
  }

  /** Four pages at most, and every account and department with its total on one of them. */
  @Test
  void the_papers_are_four_pages_with_all_accounts_on_one() throws Exception {
    Path papers = Path.of("target/sheets/examples/power-budget-example.pdf");
    List<String> pages = List.of(PdfText.of(papers).split("\\f"));
    assertThat(pages).hasSizeLessThanOrEqualTo(4);
    assertThat(pages)
        .anySatisfy(
            p ->
                assertThat(p)
                    .contains("camera rental", "connections", "crew", "fuel", "insurance")
                    .contains("lighting rental", "power rental", "transport", "Departments")
                    .contains("effects", "electric", "production", "sound", "Variance"))
        .allSatisfy(p -> assertThat(p).doesNotContain("###", "#NAME", "Err:"))
        .filteredOn(p -> p.startsWith("Cost report by line"))
        .allSatisfy(p -> assertThat(p).contains("Variance"))
        .hasSize(1);
  }

  /**
   * Everything that a working can have, in the words of the longest language: its row has as many
   * lines as the office itself takes for the same text in a single cell of that width.
   */
  @Test
  void a_working_is_never_cut(Office office) throws Exception {
    try (PlanSheet book = new PlanSheet(office, EXAMPLE, workbook)) {
      book.type("project.fringe", 0.185).type("project.perDiem", 45.5);
      book.rows("tiers", row("after", 10.0, "factor", 1.5), row("after", 12.0, "factor", 2.0));
      book.rows("exchange", row("currency", "GBP", "rate", 1.172345));
      Map<String, Object> line =
          row("description", "Charging and night watch, second unit", "type", "crew");
      line.putAll(row("unit", "week", "qty", 12.0, "times", 3.25, "price", 12_345.678));
      line.putAll(row("currency", "GBP", "hours", 13.5, "coveredHours", 10.0, "daysAway", 20.0));
      line.putAll(row("discount", 0.125, "account", "lighting crew", "department", "electric"));
      book.rows("lines", line, row("description", "fuel", "type", "fuel", "price", 10.0));
      String worked = book.column("byLine.worked").get(0);
      assertThat(worked).contains("GBP", "12.5 %", "fringes", "per diem");
      CommandDriver.command(office, book.document(), "fit");
      PlanTab tab =
          workbook.tabs().stream()
              .filter(t -> t.name().equals("Cost report by line"))
              .findFirst()
              .orElseThrow();
      PlanList list = (PlanList) tab.parts().get(0);
      PlanLayout.Column column =
          book.layout().columns(list).stream()
              .filter(c -> c.result().path().equals("byLine.worked"))
              .findFirst()
              .orElseThrow();
      int first = book.layout().headingRow(list) + 1;
      XCellRange shown = book.range(tab, column.at(), first, column.span(), 1);
      int wide =
          UnoRuntime.queryInterface(XPropertySet.class, shown).getPropertyValue("Size")
                  instanceof Size size
              ? size.Width
              : 0;
      int tall = height(shown);
      assertThat(tall).isGreaterThanOrEqualTo(optimal(office, worked, wide));
      // and lower again once it is short
      line.keySet().removeAll(List.of("discount", "daysAway", "hours", "coveredHours", "currency"));
      book.rows("lines", line);
      CommandDriver.command(office, book.document(), "fit");
      assertThat(height(shown)).isLessThan(tall);
    }
  }

  private static int height(XCellRange cells) throws Exception {
    Object rows = UnoRuntime.queryInterface(XColumnRowRange.class, cells).getRows();
    return (int) UnoRuntime.queryInterface(XPropertySet.class, rows).getPropertyValue("Height");
  }

  /** The height that the office takes for a text in a cell of its own. */
  private static int optimal(Office office, String text, int wide) throws Exception {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    try {
      sheet.text("A1", text).style("A1", "IsTextWrapped", true).column("A1", "Width", wide);
      sheet.style("A1", "CharFontName", "Liberation Sans");
      XCellRange cell = sheet.range("A1");
      Object rows = UnoRuntime.queryInterface(XColumnRowRange.class, cell).getRows();
      UnoRuntime.queryInterface(XPropertySet.class, rows).setPropertyValue("OptimalHeight", true);
      return height(cell);
    } finally {
      Office.discard(sheet.document());
    }
  }

  private static long cents(double amount) {
    return Math.round(amount * 100);
  }
}
