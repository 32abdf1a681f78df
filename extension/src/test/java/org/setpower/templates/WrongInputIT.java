package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.uno.UnoAccess;

/**
 * Something wrong is typed into every cell to fill of every example: no error code shows anywhere,
 * a sentence says what to do, and what was typed is still there.
 */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class WrongInputIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");
  private static final double NO_CLOCK = 17;
  private static final double NO_DATE = 5;

  private TestWorkbook book;
  private final List<String> faults = new ArrayList<>();

  @TestFactory
  Stream<DynamicTest> wrong_input_is_told_in_words(Office office) {
    return TemplateRegistry.all().stream()
        .map(
            w ->
                DynamicTest.dynamicTest(
                    w.template().fileName(),
                    () -> {
                      Path file = EXAMPLES.resolve(w.template().fileName() + "-example.ods");
                      faults.clear();
                      try (TestWorkbook opened = new TestWorkbook(office, file, w.template())) {
                        book = opened;
                        UnoAccess.as(com.sun.star.sheet.XCalculatable.class, book.document())
                            .enableAutomaticCalculation(false);
                        columns();
                        fields();
                        swappedDates();
                      }
                      assertThat(faults).isEmpty();
                    }));
  }

  /** What may be typed wrongly, by its kind. */
  private static Map<String, Object> wrong(CellSpec<?> item) {
    Map<String, Object> wrong = new LinkedHashMap<>();
    if (item.isRequired()) {
      wrong.put("blank", "");
    }
    if (item.isList() && item.onlyListed()) {
      wrong.put("unknown word", "nonsense");
    }
    if (item.format().isText()) {
      return wrong;
    }
    wrong.put("text for a number", "twelve");
    switch (item.format()) {
      case TIME -> wrong.put("no time of day", NO_CLOCK);
      case DATE, DAY -> wrong.put("no date", NO_DATE);
      case SHARE -> {
        if (item.most() < 3) {
          wrong.put("3 for 3 %", 3.0);
        }
        wrong.put("negative share", item.least() - 1);
      }
      default -> {
        if (!Double.isInfinite(item.least())) {
          wrong.put("too little", item.least() - 1);
        }
        if (!Double.isInfinite(item.most())) {
          wrong.put("too much", item.most() + 1);
        }
        if (item.format() == CellFormat.COUNT && item.options().isEmpty()) {
          wrong.put("fraction for a whole number", Math.max(item.least(), 0) + 0.5);
        }
      }
    }
    return wrong;
  }

  private record Typed(TableSpec table, ColumnSpec column, int row, String kind, Object value) {}

  /** In every table each filled row takes one wrong value at a time. */
  private void columns() {
    Map<TableSpec, String[][]> before = new LinkedHashMap<>();
    Map<TableSpec, Deque<Typed>> waiting = new LinkedHashMap<>();
    for (TableSpec table : book.toFill()) {
      before.put(table, typed(table));
      Deque<Typed> all = new ArrayDeque<>();
      for (ColumnSpec column : table.inputs()) {
        wrong(column).forEach((kind, value) -> all.add(new Typed(table, column, 0, kind, value)));
      }
      waiting.put(table, all);
    }
    waiting.keySet().removeIf(t -> filled(before.get(t)) == 0);
    while (waiting.values().stream().anyMatch(w -> !w.isEmpty())) {
      List<Typed> now = new ArrayList<>();
      waiting.forEach(
          (table, all) -> {
            for (int row = 0; row < filled(before.get(table)) && !all.isEmpty(); row++) {
              Typed t = all.remove();
              boolean alone =
                  Arrays.stream(before.get(table)[row]).filter(x -> !x.isEmpty()).count() < 2;
              if (!alone || !t.value().equals("")) {
                now.add(new Typed(table, t.column(), row, t.kind(), t.value()));
              }
            }
          });
      now.forEach(t -> type(book.cell(t.column(), t.row()), t.value()));
      book.calculated();
      now.forEach(this::told);
      book.errors().forEach(e -> faults.add("error at " + e + " after " + now));
      before.forEach(this::restore);
    }
  }

  private void told(Typed typed) {
    TableSpec table = typed.table();
    String what = book.layout().tab(table).name() + ", " + typed.column() + ", " + typed.kind();
    if (!stands(book.cell(typed.column(), typed.row()), typed.value())) {
      faults.add(what + ": what was typed is gone");
    }
    if (table.status() == null) {
      faults.add(what + ": the table has no status");
      return;
    }
    String status = TestWorkbook.shown(book.cell(table.status(), typed.row()));
    String reason = TestWorkbook.shown(book.cell(table.reason(), typed.row()));
    if (status.isEmpty() || status.equals("ok") || reason.length() < 10) {
      faults.add(what + ": says \"" + status + "\" \"" + reason + "\"");
    }
  }

  /** All single cells are wrong in one way, then all in the next. */
  private void fields() {
    List<FieldSpec> fields = book.template().fields().stream().filter(CellSpec::isInput).toList();
    for (int i = 0; fields.stream().map(f -> ways(f).size()).max(Integer::compare).get() > i; i++) {
      Map<FieldSpec, String> before = new LinkedHashMap<>();
      Map<FieldSpec, Object> now = new LinkedHashMap<>();
      for (FieldSpec field : fields) {
        if (ways(field).size() > i) {
          before.put(field, book.cell(field).getFormula());
          now.put(field, ways(field).get(i));
        }
      }
      now.forEach((field, value) -> type(book.cell(field), value));
      book.calculated();
      book.errors().forEach(e -> faults.add("error at " + e + " after " + now));
      now.forEach(this::told);
      before.forEach(
          (field, text) -> {
            if (field.format().isText()) {
              UnoAccess.as(XText.class, book.cell(field)).setString(text);
            } else {
              book.cell(field).setFormula(text);
            }
          });
    }
    book.calculated();
  }

  private static List<Object> ways(FieldSpec field) {
    Map<String, Object> wrong = wrong(field);
    wrong.remove("blank"); // a table that needs it says so
    return List.copyOf(wrong.values());
  }

  private void told(FieldSpec field, Object value) {
    Layout.CellPosition help = book.layout().help(field);
    String beside = shown(help.tab(), help.column(), help.row());
    if (!beside.startsWith("stop")) {
      faults.add(field + ", " + value + ": beside it stands \"" + beside + "\"");
    }
    if (!stands(book.cell(field), value)) {
      faults.add(field + ", " + value + ": what was typed is gone");
    }
    SheetSpec last =
        book.template().tabs().stream().filter(t -> !t.isHidden()).reduce((a, b) -> b).get();
    if (!shown(last, 0, 2).startsWith("stop: correct a cell on")) {
      faults.add(field + ", " + value + ": the other tabs do not say so");
    }
  }

  private String shown(SheetSpec tab, int column, int row) {
    return TestWorkbook.shown(UnoAccess.ask(() -> book.sheet(tab).getCellByPosition(column, row)));
  }

  private static void type(XCell cell, Object value) {
    if (value instanceof Double number) {
      cell.setValue(number);
    } else {
      UnoAccess.as(XText.class, cell).setString(value.toString());
    }
  }

  private static boolean stands(XCell cell, Object value) {
    return value instanceof Double number
        ? cell.getValue() == number
        : TestWorkbook.shown(cell).equals(value);
  }

  /** What is typed in a table, row by row. */
  private String[][] typed(TableSpec table) {
    String[][] rows = new String[table.room()][table.inputs().size()];
    for (int c = 0; c < table.inputs().size(); c++) {
      String[][] cells = formulas(table.inputs().get(c)).getFormulaArray();
      for (int r = 0; r < rows.length; r++) {
        rows[r][c] = cells[r][0];
      }
    }
    return rows;
  }

  private void restore(TableSpec table, String[]... rows) {
    for (int c = 0; c < table.inputs().size(); c++) {
      String[][] cells = new String[rows.length][1];
      for (int r = 0; r < rows.length; r++) {
        cells[r][0] = rows[r][c];
      }
      formulas(table.inputs().get(c)).setFormulaArray(cells);
    }
  }

  private XCellRangeFormula formulas(ColumnSpec column) {
    return UnoAccess.as(XCellRangeFormula.class, book.cells(column));
  }

  private static int filled(String[]... typed) {
    int filled = 0;
    while (filled < typed.length && !Arrays.stream(typed[filled]).allMatch(String::isEmpty)) {
      filled++;
    }
    return filled;
  }

  /** An end before its start. */
  private void swappedDates() {
    for (TableSpec table : book.toFill()) {
      List<ColumnSpec> inputs = table.inputs();
      for (int i = 1; i < inputs.size(); i++) {
        ColumnSpec start = inputs.get(i - 1);
        ColumnSpec end = inputs.get(i);
        if (start.format().isDate() && end.format().isDate() && end.heading().equals("Back")) {
          book.cell(start, 0).setValue(46_430);
          book.cell(end, 0).setValue(46_420);
          book.calculated();
          told(new Typed(table, end, 0, "end before start", 46_420.0));
        }
      }
    }
  }
}
