package org.setpower.command.distro;

import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.lighting.LightingModel;
import org.setpower.plan.lighting.distro.DistroAddition;
import org.setpower.plan.lighting.distro.DistroAddition.NewRow;
import org.setpower.plan.lighting.distro.DistroAddition.Order;
import org.setpower.plan.lighting.distro.DistroAddition.Refusal;
import org.setpower.plan.lighting.distro.DistroKind;
import org.setpower.uno.Uno;

/** Writes a distro into the tables of a plan; what it takes is decided by the plan. */
final class NewDistro {
  private final CalcDocument book;
  private final PlanFile plan;
  private final DistroAddition addition;

  private NewDistro(PlanFile plan) throws Exception {
    book = plan.book();
    this.plan = plan;
    String fault = plan.fault();
    if (!fault.isEmpty()) {
      throw new UserMessageException("The plan cannot be read: {}", fault);
    }
    addition = new DistroAddition(plan.read());
  }

  static Optional<PlanFile> plan(CommandContext desk) throws Exception {
    return PlanFile.of(desk.book()).filter(p -> p.model() == LightingModel.MODEL);
  }

  static NewDistro in(CommandContext desk) throws Exception {
    return new NewDistro(
        plan(desk)
            .orElseThrow(
                () -> new UserMessageException("This document has no lighting power plan.")));
  }

  DistroAddition addition() {
    return addition;
  }

  DistroKind kind(String name) {
    return addition.kinds().stream()
        .filter(k -> k.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new UserMessageException("There is no type of distro “{}”.", name));
  }

  /** Writes all rows in one step; gives what was written. */
  String add(CommandContext desk, Order order) throws Exception {
    Optional<Refusal> refusal = addition.refusal(order);
    if (refusal.isPresent()) {
      throw refused(refusal.get(), order);
    }
    List<NewRow> rows = addition.rows(order);
    UndoStep.allOrNothing(
        book,
        AddDistroCommand.TITLE,
        () ->
            UndoStep.withoutCalculation(
                book,
                AddDistroCommand.TITLE,
                () -> {
                  for (NewRow row : rows) {
                    write(row);
                  }
                }));
    show(desk);
    NewRow run = rows.get(rows.size() - 1);
    String language = book.language();
    boolean same = language.startsWith(CommandMessages.language());
    return CommandMessages.in(same ? language : "") // its tabs say RCD or GFCI
        .plural(
            "{2} is added with {1} row of Outlets and its cable run from {3}. Read their status, and"
                + " correct breakers and RCDs by the box at hand.",
            "{2} is added with {1} rows of Outlets and its cable run from {3}. Read their status, and"
                + " correct breakers and RCDs by the box at hand.",
            rows.size() - 2L,
            order.name().strip(),
            run.cells().get("from"));
  }

  private static UserMessageException refused(Refusal refusal, Order order) {
    return switch (refusal) {
      case UNITS_BLANK ->
          new UserMessageException("Pick the units on Project first. Nothing was changed.");
      case NAME_BLANK -> new UserMessageException("Type a name. Nothing was changed.");
      case NAME_TAKEN ->
          new UserMessageException(
              "The name “{}” is taken: type another one. Nothing was changed.", order.name());
      case PLACE_UNKNOWN ->
          new UserMessageException(
              "There is no one place “{}”: pick a source or an outlet. Nothing was changed.",
              order.from());
      case LENGTH -> new UserMessageException("Type the length of its cable. Nothing was changed.");
      case SIZE ->
          new UserMessageException(
              "“{}” is no size of a cable: write 5G16, 35 mm² or 4/0. Nothing was changed.",
              order.size());
      case NO_ROOM ->
          new UserMessageException(
              "Sources & distro, Outlets or Cable runs have no blank rows left at their end."
                  + " Nothing was changed.");
    };
  }

  private void write(NewRow row) throws Exception {
    InputTable<?> table =
        plan.model().inputs().stream()
            .filter(t -> t.key().equals(row.table()))
            .findFirst()
            .orElseThrow();
    // cell by cell: LibreOffice 7.4 does not undo setDataArray where cells were blank
    for (Map.Entry<String, Object> cell : row.cells().entrySet()) {
      XCellRange column = plan.typed(table, cell.getKey());
      XCell at = column.getCellByPosition(0, row.row() - 1);
      if (cell.getValue() instanceof Double number) {
        at.setValue(number);
      } else {
        Uno.as(XText.class, at).setString(String.valueOf(cell.getValue()));
      }
    }
  }

  private void show(CommandContext desk) throws Exception {
    XSpreadsheetView view = Uno.as(XSpreadsheetView.class, desk.controller());
    var at = plan.address("Supplies");
    if (view != null && at != null) {
      view.setActiveSheet(book.sheet(at.Sheet));
    }
  }
}
