package org.setpower.command.export;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.FunctionCall;
import org.setpower.command.message.Progress;
import org.setpower.command.trace.CalculationTracer;
import org.setpower.uno.Uno;

/**
 * The calculation of every cell with our functions as a note in the cell: read while the formulas
 * are there, written after they were replaced by values, which removes notes.
 */
final class CalculationNotes {
  private record Note(CellAddress at, String text) {}

  private final CalcDocument book;
  private final List<Note> notes = new ArrayList<>();

  private CalculationNotes(CalcDocument book) {
    this.book = book;
  }

  static CalculationNotes read(CalcDocument book, Progress progress) throws Exception {
    CalculationNotes all = new CalculationNotes(book);
    CalculationTracer explainer = new CalculationTracer(book);
    for (XSpreadsheet sheet : book.all()) {
      for (CellRangeAddress at :
          CalcDocument.ranges(
              Uno.as(XCellRangesQuery.class, sheet).queryContentCells((short) CellFlags.FORMULA))) {
        String words = say("Working of the cells on {}", CalcDocument.name(sheet));
        all.read(book.range(at), explainer, p -> progress.at(p, words));
      }
    }
    return all;
  }

  private void read(
      XCellRange range, CalculationTracer explainer, java.util.function.IntConsumer at)
      throws Exception {
    String[][] formulas = Uno.as(XCellRangeFormula.class, range).getFormulaArray();
    for (int r = 0; r < formulas.length; r++) {
      at.accept(100 * r / formulas.length);
      for (int c = 0; c < formulas[r].length; c++) {
        if (FunctionCall.mentionedIn(formulas[r][c])) {
          XCell cell = range.getCellByPosition(c, r);
          notes.add(new Note(CalcDocument.address(cell), explainer.explain(cell).text()));
        }
      }
    }
  }

  /** Writes them into a document with the same cells, whose sheets are not protected. */
  void write(CalcDocument copy) throws Exception {
    for (XSpreadsheet sheet : copy.all()) {
      short index =
          Uno.as(com.sun.star.sheet.XCellRangeAddressable.class, sheet).getRangeAddress().Sheet;
      var annotations = Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
      for (Note note : notes) {
        if (note.at.Sheet == index) {
          annotations.insertNew(note.at, note.text);
        }
      }
    }
  }
}
