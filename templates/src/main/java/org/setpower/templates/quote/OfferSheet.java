package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;

/** The rows of the quote as the client sees them. */
final class OfferSheet {
  final TableSpec table = TableSpec.of("Offer", QuoteLinesSheet.ROOM);

  private final ColumnSpec number = ColumnSpec.working("No.");

  OfferSheet(QuoteTerms hire, QuoteLinesSheet quote) {
    number.formula(number.rowNumber());
    table.columns(
        shown(quote.section).width(42),
        shown(quote.item).width(52),
        shown(quote.insteadOf).width(36),
        shown(quote.quantity).width(18),
        shown(quote.from).format(CellFormat.DATE).width(32),
        shown(quote.to).format(CellFormat.DATE).width(32),
        shown(quote.days).unit("days").width(18),
        price(hire, quote.rate).width(20),
        price(hire, quote.discount).width(18),
        price(hire, quote.amount).width(24),
        number);
  }

  private ColumnSpec shown(ColumnSpec column) {
    Formula cell = calc("INDEX({};{})", column.all(), number);
    return ColumnSpec.result(column.heading(), calc("IF({}=\"\";\"\";{})", cell, cell))
        .format(column.format())
        .mayBeBlank();
  }

  private ColumnSpec price(QuoteTerms hire, ColumnSpec column) {
    Formula cell = calc("INDEX({};{})", column.all(), number);
    ColumnSpec shown =
        ColumnSpec.result(
                column.heading(),
                calc("IF(OR({}=\"\";{}<>\"each line\");\"\";{})", cell, hire.prices, cell))
            .format(column.format())
            .mayBeBlank();
    return column.format() == CellFormat.MONEY ? shown.unit(hire.currency) : shown;
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Offer",
            "What is offered, row by row: these pages go to the client behind Result. Nothing to"
                + " fill here.")
        .with(table);
  }
}
