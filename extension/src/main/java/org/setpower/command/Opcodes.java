package org.setpower.command;

import com.sun.star.sheet.FormulaLanguage;
import com.sun.star.sheet.FormulaMapGroup;
import com.sun.star.sheet.FormulaMapGroupSpecialOffset;
import com.sun.star.sheet.FormulaOpCodeMapEntry;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XFormulaOpCodeMapper;
import com.sun.star.uno.Exception;

/** The numbers under which the office keeps the words of formulas. */
final class Opcodes {
  final int external;
  final int open;
  final int close;
  final int separator;
  final int rows;
  final int columns;
  final int missing;
  final int spaces;

  Opcodes(Book book) throws Exception {
    XFormulaOpCodeMapper mapper =
        Uno.as(
            XFormulaOpCodeMapper.class,
            book.factory().createInstance("com.sun.star.sheet.FormulaOpCodeMapper"));
    FormulaToken[] words =
        mapper.getMappings(new String[] {"(", ")", ";", "ROWS", "COLUMNS"}, FormulaLanguage.ODFF);
    FormulaOpCodeMapEntry[] special =
        mapper.getAvailableMappings(FormulaLanguage.ODFF, FormulaMapGroup.SPECIAL);
    external = mapper.getOpCodeExternal();
    open = words[0].OpCode;
    close = words[1].OpCode;
    separator = words[2].OpCode;
    rows = words[3].OpCode;
    columns = words[4].OpCode;
    missing = special[FormulaMapGroupSpecialOffset.MISSING].Token.OpCode;
    spaces = special[FormulaMapGroupSpecialOffset.SPACES].Token.OpCode;
  }
}
