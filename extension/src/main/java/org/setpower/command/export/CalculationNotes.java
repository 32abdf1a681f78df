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
import java.util.Set;
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
  private record Note(String sheet, CellAddress at, String text) {}

  private final List<Note> notes = new ArrayList<>();

  private CalculationNotes() {}

  /** Those of the cells that are not hidden on these sheets. */
  static CalculationNotes read(CalcDocument book, Set<String> wanted, Progress progress)
      throws Exception {
    CalculationNotes all = new CalculationNotes();
    CalculationTracer explainer = new CalculationTracer(book);
    for (XSpreadsheet sheet : book.all()) {
      String name = CalcDocument.name(sheet);
      if (wanted.contains(name)) {
        XCellRangesQuery seen =
            Uno.as(
                XCellRangesQuery.class, Uno.as(XCellRangesQuery.class, sheet).queryVisibleCells());
        for (CellRangeAddress at :
            CalcDocument.ranges(seen.queryContentCells((short) CellFlags.FORMULA))) {
          String words = say("Working of the cells on {}", name);
          all.read(name, book.range(at), explainer, p -> progress.at(p, words));
        }
      }
    }
    return all;
  }

  private void read(
      String sheet,
      XCellRange range,
      CalculationTracer explainer,
      java.util.function.IntConsumer at)
      throws Exception {
    String[][] formulas = Uno.as(XCellRangeFormula.class, range).getFormulaArray();
    for (int r = 0; r < formulas.length; r++) {
      at.accept(100 * r / formulas.length);
      for (int c = 0; c < formulas[r].length; c++) {
        if (FunctionCall.mentionedIn(formulas[r][c])) {
          XCell cell = range.getCellByPosition(c, r);
          notes.add(new Note(sheet, CalcDocument.address(cell), explainer.explain(cell).text()));
        }
      }
    }
  }

  /** Writes them into a document with the same cells, whose sheets are not protected. */
  void write(CalcDocument copy) throws Exception {
    for (XSpreadsheet sheet : copy.all()) {
      var annotations = Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
      for (Note note : notes) {
        if (note.sheet.equals(CalcDocument.name(sheet))) {
          annotations.insertNew(note.at, note.text);
        }
      }
    }
  }
}
