package org.setpower.command.trace;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XFormulaParser;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.CellValues;
import org.setpower.command.document.FormulaOpcodes;
import org.setpower.command.document.RelativeReferences;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** Reads what a formula passes to our functions, as the office would pass it. */
final class ArgumentReader implements AutoCloseable {
  private static final long MOST_CELLS = 200_000;

  private final CalcDocument book;
  private final FormulaOpcodes opcodes;
  private final CellAddress base;
  private final RelativeReferences references;
  private ScratchEvaluator scratch;

  ArgumentReader(CalcDocument book, FormulaOpcodes opcodes, CellAddress base) {
    this.book = book;
    this.opcodes = opcodes;
    this.base = base;
    references = new RelativeReferences(base);
  }

  Argument read(FormulaToken... tokens) throws Exception {
    if (tokens.length == 0 || (tokens.length == 1 && tokens[0].OpCode == opcodes.missing)) {
      return Argument.of(null, say("left out"));
    }
    FormulaToken only = tokens.length == 1 ? tokens[0] : null;
    if (only != null && (only.Data instanceof Double || only.Data instanceof String)) {
      return Argument.of(only.Data, say("typed in the formula"));
    }
    CellRangeAddress range = only == null ? null : references.range(only);
    String where = range == null ? printed(tokens) : where(range);
    try {
      return Argument.of(range == null ? workedOut(tokens) : value(range, only), where);
    } catch (UserMessageException trouble) {
      return Argument.troubled(where, trouble.getMessage());
    }
  }

  private Object value(CellRangeAddress at, FormulaToken token) throws Exception {
    if (token.Data instanceof com.sun.star.sheet.SingleReference) {
      return CellValues.of(book.cell(new CellAddress(at.Sheet, at.StartColumn, at.StartRow)));
    }
    long cells = (at.EndColumn - at.StartColumn + 1L) * (at.EndRow - at.StartRow + 1L);
    if (cells > MOST_CELLS) {
      throw new UserMessageException("it has {} cells, too many for a function", cells);
    }
    return CellValues.of(book.range(at));
  }

  private Object workedOut(FormulaToken... tokens) throws Exception {
    if (scratch == null) {
      scratch = new ScratchEvaluator(book, opcodes);
    }
    return scratch.value(references.fixed(tokens));
  }

  private String where(CellRangeAddress at) throws Exception {
    String first = CalcDocument.address(at.StartColumn, at.StartRow);
    String last = CalcDocument.address(at.EndColumn, at.EndRow);
    String cells = first.equals(last) ? first : first + ":" + last;
    return at.Sheet == base.Sheet ? cells : CalcDocument.name(book.sheet(at.Sheet)) + "." + cells;
  }

  /** The tokens as the user writes formulas. */
  String printed(FormulaToken... tokens) throws Exception {
    XFormulaParser parser =
        Uno.as(
            XFormulaParser.class,
            book.factory().createInstance("com.sun.star.sheet.FormulaParser"));
    return parser.printFormula(tokens, base);
  }

  @Override
  public void close() throws Exception {
    if (scratch != null) {
      scratch.close();
    }
  }
}
