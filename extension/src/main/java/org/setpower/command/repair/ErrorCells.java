package org.setpower.command.repair;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import java.util.LinkedHashSet;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.uno.Uno;

/** The cells of a document that are in error, as Loads.D5, in the order of its sheets. */
record ErrorCells(Set<String> cells) {
  /** Looks at every formula; what is to be calculated yet is calculated first. */
  static ErrorCells in(CalcDocument book) throws Exception {
    Uno.as(XCalculatable.class, book.document()).calculate();
    Set<String> cells = new LinkedHashSet<>();
    for (XSpreadsheet sheet : book.all()) {
      String name = CalcDocument.name(sheet) + ".";
      for (CellRangeAddress at :
          Uno.as(XCellRangesQuery.class, sheet)
              .queryFormulaCells(FormulaResult.ERROR)
              .getRangeAddresses()) {
        for (int row = at.StartRow; row <= at.EndRow; row++) {
          for (int column = at.StartColumn; column <= at.EndColumn; column++) {
            cells.add(name + CalcDocument.address(column, row));
          }
        }
      }
    }
    return new ErrorCells(cells);
  }

  int count() {
    return cells.size();
  }

  boolean isEmpty() {
    return cells.isEmpty();
  }

  String first() {
    return cells.iterator().next();
  }

  /** Those that are not among others. */
  ErrorCells without(ErrorCells others) {
    Set<String> rest = new LinkedHashSet<>(cells);
    rest.removeAll(others.cells);
    return new ErrorCells(rest);
  }
}
