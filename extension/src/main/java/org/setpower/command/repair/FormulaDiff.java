package org.setpower.command.repair;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.export.FormulaToValueConverter;
import org.setpower.command.message.FallibleAction;
import org.setpower.command.message.Progress;
import org.setpower.uno.Uno;

/**
 * Where the formulas of a document are not those of its template: found first without a change,
 * then restored all at once.
 */
final class FormulaDiff {
  private final List<FallibleAction> formulas = new ArrayList<>();
  private final List<FallibleAction> looks = new ArrayList<>();

  private FormulaDiff() {}

  /** Compares them sheet by sheet; the progress goes to 90 per cent. */
  static FormulaDiff between(CalcDocument book, TemplateFormulas right, Progress progress)
      throws Exception {
    FormulaDiff differences = new FormulaDiff();
    differences.findNames(right.names(), names(book));
    List<TemplateFormulas.Tab> tabs = right.tabs();
    for (int i = 0; i < tabs.size(); i++) {
      String name = tabs.get(i).name();
      progress.at(30 + 60 * i / tabs.size(), say("Formulas of the sheet {}", name));
      XSpreadsheet sheet = book.sheet(name);
      differences.findFormulas(tabs.get(i), sheet);
      differences.findLooks(tabs.get(i), sheet);
    }
    return differences;
  }

  /** How many formulas differ, in cells or behind names; an array counts once. */
  int count() {
    return formulas.size();
  }

  boolean isEmpty() {
    return formulas.isEmpty() && looks.isEmpty();
  }

  /** Restores everything to the state of the template. */
  void mend() throws Exception {
    for (FallibleAction formula : formulas) {
      formula.run();
    }
    for (FallibleAction look : looks) {
      look.run();
    }
  }

  private static XNamedRanges names(CalcDocument book) throws Exception {
    return Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
  }

  /** Names that stand for cells or formulas; what users named themselves stays. */
  private void findNames(List<TemplateFormulas.Name> all, XNamedRanges to) throws Exception {
    for (TemplateFormulas.Name wanted : all) {
      if (!to.hasByName(wanted.name())) {
        formulas.add(
            () ->
                to.addNewByName(wanted.name(), wanted.content(), wanted.position(), wanted.type()));
      } else {
        XNamedRange there = Uno.as(XNamedRange.class, to.getByName(wanted.name()));
        if (!isSame(wanted.content(), there.getContent())) {
          formulas.add(() -> there.setContent(wanted.content()));
        }
      }
    }
  }

  private void findFormulas(TemplateFormulas.Tab from, XSpreadsheet to) throws Exception {
    Set<TemplateFormulas.Array> arrays = new LinkedHashSet<>();
    for (TemplateFormulas.Area area : from.areas()) {
      String[][] wanted = area.formulas();
      String[][] there = TemplateFormulas.formulas(to, area.at());
      for (int r = 0; r < wanted.length; r++) {
        for (int c = 0; c < wanted[r].length; c++) {
          int column = area.at().StartColumn + c;
          int row = area.at().StartRow + r;
          String formula = wanted[r][c];
          if (isSame(formula, there[r][c]) || isToFill(to, column, row)) {
            continue;
          }
          if (formula.startsWith("{")) {
            arrays.add(from.array(column, row));
          } else {
            formulas.add(() -> to.getCellByPosition(column, row).setFormula(formula));
          }
        }
      }
    }
    arrays.forEach(a -> formulas.add(() -> setArray(to, a)));
  }

  /** Cells to fill that were dragged leave plain, locked ones behind: their styles are restored. */
  private void findLooks(TemplateFormulas.Tab from, XSpreadsheet to) throws Exception {
    for (TemplateFormulas.Look look : from.looks()) {
      if (!look.style().equals(Uno.get(cells(to, look.at()), "CellStyle"))) {
        looks.add(
            () -> unlocked(to, () -> Uno.set(cells(to, look.at()), "CellStyle", look.style())));
      }
    }
  }

  private static XCellRange cells(XSpreadsheet sheet, CellRangeAddress at) throws Exception {
    return sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
  }

  private static boolean isSame(String wanted, String there) {
    return wanted.equals(there) || plain(wanted).equals(plain(there));
  }

  /** After a move Calc names the sheet at both ends of a range. */
  private static String plain(String formula) {
    return formula.replaceAll(":\\$('[^']*'|[\\w\\p{L} ]+)\\.", ":");
  }

  private static boolean isToFill(XSpreadsheet sheet, int column, int row) throws Exception {
    return !((CellProtection) Uno.get(sheet.getCellByPosition(column, row), "CellProtection"))
        .IsLocked;
  }

  /** An array is written as a whole, which a protected sheet refuses. */
  private static void setArray(XSpreadsheet to, TemplateFormulas.Array array) throws Exception {
    unlocked(
        to,
        () -> {
          XCellRange cells = cells(to, array.at());
          Uno.as(XSheetOperation.class, cells).clearContents(CellFlags.FORMULA);
          Uno.as(XArrayFormulaRange.class, cells).setArrayFormula(array.formula());
        });
  }

  private static void unlocked(XSpreadsheet sheet, FallibleAction writing) throws Exception {
    boolean wasLocked = FormulaToValueConverter.unlock(sheet);
    try {
      writing.run();
    } finally {
      if (wasLocked) {
        Uno.as(XProtectable.class, sheet).protect("");
      }
    }
  }
}
