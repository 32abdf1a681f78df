package org.setpower.command.document;

import com.sun.star.sheet.ComplexReference;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.ReferenceFlags;
import com.sun.star.sheet.SingleReference;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import java.util.Arrays;

/** References of a formula, which are kept relative to its cell. */
public final class RelativeReferences {
  private static final int RELATIVE =
      ReferenceFlags.COLUMN_RELATIVE | ReferenceFlags.ROW_RELATIVE | ReferenceFlags.SHEET_RELATIVE;
  private static final int DELETED =
      ReferenceFlags.COLUMN_DELETED | ReferenceFlags.ROW_DELETED | ReferenceFlags.SHEET_DELETED;

  private final CellAddress base;

  public RelativeReferences(CellAddress base) {
    this.base = base;
  }

  /** The range that a token refers to; null if it refers to none. */
  public CellRangeAddress range(FormulaToken token) {
    if (token.Data instanceof SingleReference one) {
      return range(one, one);
    }
    return token.Data instanceof ComplexReference both
        ? range(both.Reference1, both.Reference2)
        : null;
  }

  private CellRangeAddress range(SingleReference first, SingleReference last) {
    if (((first.Flags | last.Flags) & DELETED) != 0) {
      return null;
    }
    SingleReference from = fixed(first);
    SingleReference to = fixed(last);
    return new CellRangeAddress((short) from.Sheet, from.Column, from.Row, to.Column, to.Row);
  }

  /** The tokens with references that mean the same from any cell. */
  public FormulaToken[] fixed(FormulaToken[] tokens) {
    return Arrays.stream(tokens).map(this::fixed).toArray(FormulaToken[]::new);
  }

  private FormulaToken fixed(FormulaToken token) {
    if (token.Data instanceof SingleReference one) {
      return new FormulaToken(token.OpCode, fixed(one));
    }
    if (token.Data instanceof ComplexReference both) {
      return new FormulaToken(
          token.OpCode, new ComplexReference(fixed(both.Reference1), fixed(both.Reference2)));
    }
    return token;
  }

  private SingleReference fixed(SingleReference one) {
    SingleReference fixed = new SingleReference();
    fixed.Flags = one.Flags & ~RELATIVE;
    fixed.Column =
        at(one.Flags, ReferenceFlags.COLUMN_RELATIVE, one.Column, base.Column + one.RelativeColumn);
    fixed.Row = at(one.Flags, ReferenceFlags.ROW_RELATIVE, one.Row, base.Row + one.RelativeRow);
    fixed.Sheet =
        at(one.Flags, ReferenceFlags.SHEET_RELATIVE, one.Sheet, base.Sheet + one.RelativeSheet);
    return fixed;
  }

  private static int at(int flags, int flag, int absolute, int relative) {
    return (flags & flag) == 0 ? absolute : relative;
  }
}
