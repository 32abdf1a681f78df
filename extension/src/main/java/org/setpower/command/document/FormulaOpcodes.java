package org.setpower.command.document;

import com.sun.star.sheet.FormulaLanguage;
import com.sun.star.sheet.FormulaMapGroup;
import com.sun.star.sheet.FormulaMapGroupSpecialOffset;
import com.sun.star.sheet.FormulaOpCodeMapEntry;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XFormulaOpCodeMapper;
import com.sun.star.uno.Exception;
import org.setpower.uno.Uno;

/** The numbers under which the office keeps the words of formulas. */
public final class FormulaOpcodes {
  final int external;
  public final int missing;
  final int spaces;
  public final FormulaToken open;
  public final FormulaToken close;
  final FormulaToken separator;
  public final FormulaToken rows;
  public final FormulaToken columns;

  public FormulaOpcodes(CalcDocument book) throws Exception {
    XFormulaOpCodeMapper mapper =
        Uno.as(
            XFormulaOpCodeMapper.class,
            book.factory().createInstance("com.sun.star.sheet.FormulaOpCodeMapper"));
    FormulaToken[] words =
        mapper.getMappings(new String[] {"(", ")", ";", "ROWS", "COLUMNS"}, FormulaLanguage.ODFF);
    FormulaOpCodeMapEntry[] special =
        mapper.getAvailableMappings(FormulaLanguage.ODFF, FormulaMapGroup.SPECIAL);
    external = mapper.getOpCodeExternal();
    open = words[0];
    close = words[1];
    separator = words[2];
    rows = words[3];
    columns = words[4];
    missing = special[FormulaMapGroupSpecialOffset.MISSING].Token.OpCode;
    spaces = special[FormulaMapGroupSpecialOffset.SPACES].Token.OpCode;
  }
}
