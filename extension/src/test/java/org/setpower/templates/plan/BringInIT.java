package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.templates.battery.BatteryPlan;
import org.setpower.templates.budget.PowerBudget;
import org.setpower.templates.quote.RentalQuote;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.templates.travel.BatteryTravelList;
import org.setpower.uno.Uno;

/** Rows of one file brought into another, the first time and again. */
@ExtendWith(SharedOffice.class)
class BringInIT {
  private static final Path TEMPLATES = Path.of("target/sheets/templates/en");
  private static final double DAY = 46_428; // 10 February 2027

  @TempDir Path folder;
  private Office office;
  private final List<PlanSheet> open = new ArrayList<>();

  @BeforeEach
  void office(Office shared) {
    office = shared;
  }

  @AfterEach
  void close() {
    open.forEach(PlanSheet::close);
  }

  private PlanSheet file(String name, PlanWorkbook workbook) throws Exception {
    PlanSheet file = new PlanSheet(office, TEMPLATES.resolve(name + ".ots"), workbook);
    open.add(file);
    return file;
  }

  private static Map<String, Object> row(Object... cells) {
    Map<String, Object> row = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put((String) cells[i], cells[i + 1]);
    }
    return row;
  }

  /** Stores a file, so that another one can bring it in. */
  private String stored(PlanSheet file, String name) throws Exception {
    Path path = folder.resolve(name);
    office.store(file.document(), "calc8", path);
    return office.copyIn(path);
  }

  private String bring(PlanSheet into, String file, String... options) {
    String[] all = Arrays.copyOf(options, options.length + 2);
    all[options.length] = "file";
    all[options.length + 1] = file;
    return CommandDriver.command(office, into.document(), "bring", all);
  }

  private static Object typed(PlanSheet file, String path, int row) {
    String table = path.substring(0, path.indexOf('.'));
    List<String> keys =
        file.table(table).inputs().columns().stream().map(InputColumn::path).toList();
    return UnoRuntime.queryInterface(XCellRangeData.class, file.inputs(table, row - 1, 1))
        .getDataArray()[0][keys.indexOf(path)];
  }

  private static void type(PlanSheet file, String path, int row, Object value) throws Exception {
    String table = path.substring(0, path.indexOf('.'));
    List<String> keys =
        file.table(table).inputs().columns().stream().map(InputColumn::path).toList();
    int column = keys.indexOf(path);
    var cell = file.inputs(table, row - 1, 1).getCellRangeByPosition(column, 0, column, 0);
    UnoRuntime.queryInterface(XCellRangeData.class, cell).setDataArray(new Object[][] {{value}});
  }

  private static Object[][] all(PlanSheet file, String table) {
    int rows = file.table(table).inputs().rows();
    return UnoRuntime.queryInterface(XCellRangeFormula.class, file.inputs(table, 0, rows))
        .getFormulaArray();
  }

  private static String[] tabs(PlanSheet file) {
    return UnoRuntime.queryInterface(XSpreadsheetDocument.class, file.document())
        .getSheets()
        .getElementNames();
  }

  private static XUndoManager undo(PlanSheet file) {
    return UnoRuntime.queryInterface(XUndoManagerSupplier.class, file.document()).getUndoManager();
  }

  private PlanSheet register() throws Exception {
    PlanSheet register = file("battery-register", new BatteryRegister().workbook());
    register.type("project.asOf", DAY).type("project.untested", "goes out");
    register.rows("types", row("type", "P1", "chemistry", "Li-ion"));
    register.rows(
        "batteries",
        fine("P1-01"),
        fine("P1-02"),
        row("serial", "P1-03", "type", "P1", "condition", "swollen", "energy", 98.0));
    return register.calculated();
  }

  private static Map<String, Object> fine(String serial) {
    Map<String, Object> battery = row("serial", serial, "type", "P1", "condition", "fine");
    battery.putAll(row("energy", 98.0, "un383", "yes"));
    battery.putAll(row("inspected", DAY, "inspectedBy", "technician"));
    return battery;
  }

  private PlanSheet quote() throws Exception {
    PlanSheet quote = file("rental-quote", new RentalQuote().workbook());
    quote.type("order.number", "Q1").type("order.date", DAY).type("order.currency", "EUR");
    quote.type("order.validUntil", DAY + 5).type("order.tax", 0.2).type("order.discount", 0.05);
    quote.type("order.out", DAY + 10).type("order.back", DAY + 12).type("order.security", 500.0);
    quote.type("house.name", "rental desk");
    quote.rows(
        "stock",
        row("item", "P98", "owned", 20.0, "dayRate", 5.0, "value", 260.0, "weight", 0.75),
        row("item", "tube", "owned", 20.0, "dayRate", 9.0, "value", 420.0, "weight", 1.4));
    quote.rows(
        "items",
        row("item", "P98", "section", "batteries", "qty", 10.0, "discount", 0.1),
        row("item", "tube", "section", "lights", "qty", 8.0));
    return quote.calculated();
  }

  private PlanSheet budget() throws Exception {
    PlanSheet budget = file("power-budget", new PowerBudget().workbook());
    budget.rows("lines");
    return budget.type("project.currency", "EUR").type("project.tax", 0.2);
  }

  @Test
  @Tag("one-office")
  void a_quote_becomes_lines_of_a_budget_to_the_cent() throws Exception {
    String quote = stored(quote(), "quote.ods");
    PlanSheet budget = budget();
    int steps = undo(budget).getAllUndoActionTitles().length;
    Object[][] before = all(budget, "lines");
    String said = bring(budget, quote);
    assertThat(said).contains("From “", "(Rental quote").contains("4 rows added, 0 cells changed.");
    budget.calculated();
    assertThat(typed(budget, "lines.description", 1)).isEqualTo("P98");
    assertThat(typed(budget, "lines.supplier", 1)).isEqualTo("rental desk");
    assertThat(typed(budget, "lines.times", 1)).isEqualTo(3.0);
    assertThat(typed(budget, "deposits.amount", 1)).isEqualTo(500.0);
    // 10 × 5 × 3 less 10 % = 135, 8 × 9 × 3 = 216, 351 less 5 % = 17.55: 333.45
    assertThat(budget.single("summary.finalCost")).isEqualTo("333.45");
    assertThat(undo(budget).getAllUndoActionTitles()).hasSize(steps + 1);
    assertThat(bring(budget, quote)).contains("Nothing differs from it.");

    undo(budget).undo();
    assertThat(all(budget, "lines")).isDeepEqualTo(before);
    assertThat(tabs(budget)).doesNotContain("Brought in");
    undo(budget).redo();
    assertThat(typed(budget, "lines.description", 2)).isEqualTo("tube");
    assertThat(bring(budget, quote)).contains("Nothing differs from it.");
  }

  /** When a quote is paid is text there, and a late fee is on another paper: both are said. */
  @Test
  @Tag("one-office")
  void what_a_quote_does_not_bring_in_is_said() throws Exception {
    PlanSheet quote = quote();
    assertThat(bring(budget(), stored(quote, "plain.ods"))).doesNotContain("Due", "Late fees");
    quote.type("order.downPayment", 0.3);
    quote.rows("returns", row("line", 1.0, "qty", 1.0, "date", DAY + 20));
    assertThat(bring(budget(), stored(quote.calculated(), "late.ods")))
        .contains("The lines come without Due", "Late fees are not brought in");
  }

  @Test
  @Tag("one-office")
  void a_second_time_shows_what_changed_and_keeps_what_was_typed() throws Exception {
    PlanSheet source = quote();
    String quote = stored(source, "quote.ods");
    PlanSheet budget = budget();
    bring(budget, quote);
    type(budget, "lines.account", 1, "2200");
    type(budget, "lines.qty", 2, 7.0);
    type(budget, "lines.po", 1, "PO 1");

    type(source, "items.qty", 1, 12.0);
    type(source, "items.qty", 2, 9.0);
    source.calculated();
    quote = stored(source, "quote.ods");
    String list = bring(budget, quote, "list", "yes");
    assertThat(list)
        .contains("Changed there: P98, row 1. Qty: 10 here, 12 there.")
        .contains("Differs here: tube, row 2. Qty: 7 here, 9 there.");
    assertThat(typed(budget, "lines.qty", 1)).isEqualTo(10.0);
    bring(budget, quote);
    assertThat(typed(budget, "lines.qty", 1)).isEqualTo(12.0);
    assertThat(typed(budget, "lines.qty", 2)).isEqualTo(7.0);
    assertThat(typed(budget, "lines.account", 1)).isEqualTo("2200");
    assertThat(typed(budget, "lines.po", 1)).isEqualTo("PO 1");

    // what is remembered is stored with the document
    stored(budget, "budget.ods");
    PlanSheet again =
        new PlanSheet(office, folder.resolve("budget.ods"), new PowerBudget().workbook());
    open.add(again);
    assertThat(bring(again, quote)).contains("Nothing differs from it.");
    assertThat(tabs(again)).contains("Brought in");
  }

  @Test
  @Tag("one-office")
  void an_answer_decides() throws Exception {
    String quote = stored(quote(), "quote.ods");
    PlanSheet budget = budget();
    assertThat(bring(budget, quote, "no", "tube")).contains("3 rows added");
    assertThat(bring(budget, quote, "list", "yes")).contains("left out before: tube");
    assertThat(bring(budget, quote)).contains("Nothing differs from it.");
    assertThat(bring(budget, quote, "yes", "tube")).contains("1 row added");
  }

  @Test
  @Tag("one-office")
  void a_register_fills_travel_list_and_stock_and_withholds_what_is_unfit() throws Exception {
    PlanSheet source = register();
    String register = stored(source, "register.ods");
    PlanSheet plan = file("battery-plan", new BatteryPlan().workbook());
    assertThat(bring(plan, register)).contains("1 row added").contains("P1-03");
    assertThat(typed(plan, "stock.owned", 1)).isEqualTo(2.0);

    PlanSheet travel = file("battery-travel-list", new BatteryTravelList().workbook());
    assertThat(bring(travel, register)).contains("2 rows added");
    assertThat(typed(travel, "batteries.battery", 2)).isEqualTo("P1-02");

    type(source, "batteries.condition", 2, "dropped");
    source.calculated();
    register = stored(source, "register.ods");
    assertThat(bring(travel, register, "no", "P1-02")).contains("2 cells changed");
    assertThat(typed(travel, "batteries.register", 2)).isEqualTo("quarantine");
    travel.calculated();
    assertThat(travel.column("batteries.verdict").get(1)).isEqualTo("stop");

    // whoever types over it gets it again
    type(travel, "batteries.register", 2, "keep");
    assertThat(bring(travel, register, "no", "P1-02")).contains("1 cell changed");
    assertThat(typed(travel, "batteries.register", 2)).isEqualTo("quarantine");
  }

  private PlanSheet plan() throws Exception {
    PlanSheet plan = file("battery-plan", new BatteryPlan().workbook());
    plan.rows("stock", row("type", "P1", "hired", 6.0));
    Map<String, Object> position = row("position", "camera A", "type", "P1", "quantity", 2.0);
    position.putAll(row("volts", 12.0, "power", 58.0, "input", "11-17"));
    plan.rows("positions", position);
    return plan.calculated();
  }

  /** A price list has its own names; what another file calls an item is typed beside it once. */
  @Test
  @Tag("one-office")
  void an_item_is_found_by_what_another_file_calls_it() throws Exception {
    String plan = stored(plan(), "plan.ods");
    PlanSheet quote = quote();
    String list = bring(quote, plan, "list", "yes");
    assertThat(list).contains("Not on Equipment: P1.", "Not on Equipment: camera A.");
    int steps = undo(quote).getAllUndoActionTitles().length;

    assertThat(bring(quote, plan, "name", "P1", "as", "P98", "list", "yes"))
        .contains("Differs here: P98, row 1. Qty: 10 here, 6 there.")
        .contains("Not on Equipment: camera A.");
    assertThat(typed(quote, "stock.also", 1)).isEqualTo("");
    assertThat(bring(quote, plan, "name", "P1", "as", "P98", "yes", "Differs here: P98"))
        .contains("0 rows added, 1 cell changed.");
    assertThat(typed(quote, "stock.also", 1)).isEqualTo("P1");
    assertThat(typed(quote, "items.qty", 1)).isEqualTo(6.0);
    assertThat(undo(quote).getAllUndoActionTitles()).hasSize(steps + 1);
    assertThat(bring(quote, plan)).contains("Nothing differs from it.");

    type(quote, "stock.also", 2, "lamp; camera A");
    assertThat(bring(quote, plan, "list", "yes"))
        .contains("Differs here: tube, row 2. Qty: 8 here, 2 there.");
    assertThatThrownBy(() -> bring(quote, plan, "name", "camera A", "as", "crane"))
        .hasMessageContaining("“crane” is not on Equipment.");
  }

  private void refuses(PlanSheet into, String table, String file, String sentence)
      throws Exception {
    Object[][] before = all(into, table);
    int steps = undo(into).getAllUndoActionTitles().length;
    String[] tabs = tabs(into);
    assertThatThrownBy(() -> bring(into, file))
        .hasMessageContaining(sentence)
        .hasMessageContaining("Nothing was changed.");
    assertThat(all(into, table)).isDeepEqualTo(before);
    assertThat(undo(into).getAllUndoActionTitles()).hasSize(steps);
    assertThat(tabs(into)).isEqualTo(tabs);
  }

  @Test
  @Tag("one-office")
  void what_cannot_be_brought_in_leaves_the_file_as_it_is() throws Exception {
    PlanSheet budget = budget();
    String quote = stored(quote(), "quote.ods");
    bring(budget, quote);

    refuses(budget, "lines", quote.replace("quote.ods", "lost.ods"), "is not there any more");
    Path text = Files.writeString(folder.resolve("text.ods"), "no spreadsheet at all");
    refuses(budget, "lines", office.copyIn(text), "could not be opened");
    XComponent plain = office.newSpreadsheet();
    Path empty = folder.resolve("empty.ods");
    office.store(plain, "calc8", empty);
    Office.discard(plain);
    refuses(budget, "lines", office.copyIn(empty), "is no file of Set Power");
    refuses(budget, "lines", stored(register(), "register.ods"), "is of another kind");

    PlanSheet stopped = quote();
    type(stopped, "items.qty", 1, 2.5);
    stopped.calculated();
    refuses(budget, "lines", stored(stopped, "stopped.ods"), "is not to be issued");
    assertThat(bring(budget, quote)).contains("Nothing differs from it.");
  }

  @Test
  @Tag("one-office")
  void a_file_of_another_version_is_refused_with_the_way_out() throws Exception {
    PlanSheet old = quote();
    Object names = Uno.get(old.document(), "NamedRanges");
    Object answer = Uno.as(com.sun.star.container.XNameAccess.class, names).getByName("Answer");
    var cells = Uno.as(com.sun.star.sheet.XCellRangeReferrer.class, answer).getReferredCells();
    cells.getCellByPosition(1, 0).setFormula("older");
    PlanSheet budget = budget();
    refuses(budget, "lines", stored(old, "old.ods"), "Update file…");
  }

  @Test
  void a_file_is_not_brought_into_itself() throws Exception {
    stored(budget(), "budget.ods");
    PlanSheet itself =
        new PlanSheet(office, folder.resolve("budget.ods"), new PowerBudget().workbook());
    open.add(itself);
    String url = Uno.as(XModel.class, itself.document()).getURL();
    refuses(itself, "lines", url, "is this file itself");
  }
}
