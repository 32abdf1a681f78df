package org.setpower.command.inspect;

import static org.setpower.command.message.CommandMessages.plural;
import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import com.sun.star.util.NumberFormat;
import com.sun.star.util.XNumberFormatTypes;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import com.sun.star.util.XProtectable;
import com.sun.star.view.XSelectionSupplier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.export.FormulaToValueConverter;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.register.Condition;
import org.setpower.plan.register.Inspection;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.text.DateText;
import org.setpower.uno.Uno;

/** Rows of a register that are to be marked as inspected. The plan says which may be. */
final class InspectedRows {
  private static final String TABLE = "batteries";
  private static final int NAMED = 8;
  private static final int MOST_LETTERS = 60;

  private final CalcDocument book;
  private final PlanFile plan;
  private final InputTable<?> table;
  private final RegisterPlan.Inspections register;
  private final List<Inspection> chosen = new ArrayList<>();
  private int hidden;

  private InspectedRows(CommandContext desk, List<CellRangeAddress> cells) throws Exception {
    book = desk.book();
    plan =
        PlanFile.of(book)
            .filter(p -> p.model() == RegisterPlan.MODEL)
            .orElseThrow(
                () -> new UserMessageException("This file is no battery register of Set Power."));
    String fault = plan.fault();
    if (!fault.isEmpty()) {
      throw new UserMessageException("The register cannot be read: {}", fault);
    }
    table =
        plan.model().inputs().stream().filter(t -> t.key().equals(TABLE)).findFirst().orElseThrow();
    register = RegisterPlan.inspections(plan.read());
    choose(cells);
  }

  /** The selected rows; those that a filter hides are left out. */
  static InspectedRows selected(CommandContext desk) throws Exception {
    desk.book();
    XSelectionSupplier view = Uno.as(XSelectionSupplier.class, desk.controller());
    Object selection = view == null ? null : view.getSelection();
    XSheetCellRanges several = Uno.as(XSheetCellRanges.class, selection);
    XCellRangeAddressable one = Uno.as(XCellRangeAddressable.class, selection);
    if (several != null) {
      return new InspectedRows(desk, CalcDocument.ranges(several));
    }
    return new InspectedRows(desk, one == null ? List.of() : List.of(one.getRangeAddress()));
  }

  /** The rows that an order names. */
  static InspectedRows named(CommandContext desk, CommandRequest order) throws Exception {
    CellAddress cell = CalcDocument.address(desk.book().cell(order.text("cell")));
    int more = Integer.parseInt(order.text("rows", "1")) - 1;
    return new InspectedRows(
        desk,
        List.of(
            new CellRangeAddress(cell.Sheet, cell.Column, cell.Row, cell.Column, cell.Row + more)));
  }

  private void choose(List<CellRangeAddress> cells) throws Exception {
    XCellRange serials = plan.typed(table, "serial");
    CellRangeAddress at = Uno.as(XCellRangeAddressable.class, serials).getRangeAddress();
    var rows = Uno.as(XColumnRowRange.class, serials).getRows();
    for (Inspection battery : register.batteries()) {
      int row = at.StartRow + battery.row() - 1;
      boolean isSelected =
          cells.stream().anyMatch(c -> c.Sheet == at.Sheet && c.StartRow <= row && row <= c.EndRow);
      if (isSelected && (Boolean) Uno.get(rows.getByIndex(battery.row() - 1), "IsVisible")) {
        chosen.add(battery);
      } else if (isSelected) {
        hidden++;
      }
    }
  }

  void refuseNone() {
    if (chosen.isEmpty()) {
      throw new UserMessageException(
          "Select the rows of the inspected batteries on the tab Batteries first.");
    }
    if (!register.stops().isEmpty()) {
      throw new UserMessageException("Correct Project first: {}", sentences(register.stops()));
    }
  }

  /** Today, or the day of the register where that is earlier. */
  LocalDate usualDay() {
    LocalDate today = LocalDate.now();
    return register.day().isBefore(today) ? register.day() : today;
  }

  /** Marks those that may be; gives what was done and what was left out, with reasons. */
  String mark(LocalDate day, String role) throws Exception {
    String by = role.strip();
    if (day == null || by.isEmpty() || by.length() > MOST_LETTERS) {
      throw new UserMessageException(
          "Type the day of the inspection and the role of whoever inspected, up to {} letters."
              + " Nothing was changed.",
          MOST_LETTERS);
    }
    if (day.isAfter(register.day())) {
      throw new UserMessageException(
          "An inspection cannot be later than the day of the register, {}. Correct that on Project"
              + " first. Nothing was changed.",
          shown(register.day()));
    }
    List<Inspection> rows = chosen.stream().filter(b -> b.isPossible(day)).toList();
    if (!rows.isEmpty()) {
      UndoStep.allOrNothing(
          book,
          MarkInspectedCommand.TITLE,
          () ->
              UndoStep.withoutCalculation(
                  book, MarkInspectedCommand.TITLE, () -> write(rows, day, by)));
    }
    return said(rows.size(), day, by);
  }

  private void write(List<Inspection> rows, LocalDate day, String role) throws Exception {
    XCellRange conditions = plan.typed(table, "condition");
    XCellRange days = plan.typed(table, "inspected");
    XCellRange roles = plan.typed(table, "inspectedBy");
    XCellRange agreed = plan.typed(table, "backBy");
    double serial = InputColumn.serial(day) - plan.days();
    List<XCell> plain = new ArrayList<>();
    // cell by cell: LibreOffice 7.4 does not undo setDataArray where cells were blank
    for (Inspection battery : rows) {
      int row = battery.row();
      put(conditions, row, Condition.FINE.word());
      XCell cell = days.getCellByPosition(0, row - 1);
      cell.setValue(serial);
      if (!isDate(cell)) { // what was pasted has the format of elsewhere
        plain.add(cell);
      }
      put(roles, row, role);
      if (battery.returning()) { // it is in, and this is the inspection of its return
        put(agreed, row, "");
      }
    }
    if (!plain.isEmpty()) {
      showDates(days, plain);
    }
  }

  /** Pasted cells may be locked as well, and then refuse a format. */
  private void showDates(XCellRange column, List<XCell> cells) throws Exception {
    int dates = dateFormat(column);
    XSpreadsheet sheet = Uno.as(XSheetCellRange.class, column).getSpreadsheet();
    boolean wasLocked = FormulaToValueConverter.unlock(sheet);
    try {
      for (XCell cell : cells) {
        Uno.set(cell, "NumberFormat", dates);
      }
    } finally {
      if (wasLocked) {
        Uno.as(XProtectable.class, sheet).protect("");
      }
    }
  }

  /** The format of the last cell of a column, which is rarely written over; else the usual one. */
  private int dateFormat(XCellRange column) throws Exception {
    int rows = Uno.as(XColumnRowRange.class, column).getRows().getCount();
    XCell last = column.getCellByPosition(0, rows - 1);
    return isDate(last)
        ? (Integer) Uno.get(last, "NumberFormat")
        : Uno.as(XNumberFormatTypes.class, formats())
            .getStandardFormat(NumberFormat.DATE, new com.sun.star.lang.Locale());
  }

  private boolean isDate(XCell cell) throws Exception {
    Object type = Uno.get(formats().getByKey((Integer) Uno.get(cell, "NumberFormat")), "Type");
    return ((Short) type & NumberFormat.DATE) != 0;
  }

  private XNumberFormats formats() {
    return Uno.as(XNumberFormatsSupplier.class, book.document()).getNumberFormats();
  }

  private static void put(XCellRange column, int row, String text) throws Exception {
    Uno.as(XText.class, column.getCellByPosition(0, row - 1)).setString(text);
  }

  private String said(int marked, LocalDate day, String role) {
    Map<String, List<String>> left = new LinkedHashMap<>();
    for (Inspection battery : chosen) {
      if (!battery.isPossible(day)) {
        left.computeIfAbsent(reason(battery), r -> new ArrayList<>()).add(name(battery));
      }
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        marked == 0
            ? say("No battery was marked.")
            : plural(
                "{} battery marked as inspected on {} by {}.",
                "{} batteries marked as inspected on {} by {}.",
                marked,
                shown(day),
                role));
    int count = chosen.size() - marked;
    if (count > 0) {
      lines.add(plural("{} battery left out:", "{} batteries left out:", count));
      left.forEach((reason, names) -> lines.add("• " + named(names) + ": " + reason));
    }
    if (hidden > 0) {
      lines.add(
          plural(
              "{} row that a filter hides was left out.",
              "{} rows that a filter hides were left out.",
              hidden));
    }
    return String.join("\n", lines);
  }

  private static String named(List<String> names) {
    return names.stream().limit(NAMED).collect(Collectors.joining(", "))
        + (names.size() > NAMED ? ", …" : "");
  }

  private static String name(Inspection battery) {
    return battery.serial() == null ? say("row {}", battery.row()) : battery.serial();
  }

  private static String reason(Inspection battery) {
    if (!battery.against().isEmpty()) {
      return sentences(battery.against().subList(0, 1));
    }
    return battery.out()
        ? say("It is out. Clear Out to when it is back.")
        : say("It has an inspection of that day or later.");
  }

  private static String sentences(List<Finding> findings) {
    return Messages.in(CommandMessages.tag()).sentences(findings, locale());
  }

  private static Locale locale() {
    return Locale.forLanguageTag(CommandMessages.tag());
  }

  private static String shown(LocalDate day) {
    return DateText.of(day, locale());
  }
}
