package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The rows of the quote as the client sees them. */
final class Offer {
  final Table table = Table.of("Offer", Quote.ROOM);

  private final Column number = Column.working("No.");

  Offer(Hire hire, Quote quote) {
    number.by(number.rowNumber());
    table.columns(
        shown(quote.section).wide(42),
        shown(quote.item).wide(52),
        shown(quote.insteadOf).wide(36),
        shown(quote.quantity).wide(18),
        shown(quote.from).as(Format.DATE).wide(32),
        shown(quote.to).as(Format.DATE).wide(32),
        shown(quote.days).unit("days").wide(18),
        price(hire, quote.rate).wide(20),
        price(hire, quote.discount).wide(18),
        price(hire, quote.amount).wide(24),
        number);
  }

  private Column shown(Column column) {
    Formula cell = calc("INDEX({};{})", column.all(), number);
    return Column.result(column.heading(), calc("IF({}=\"\";\"\";{})", cell, cell))
        .as(column.format())
        .mayBeBlank();
  }

  private Column price(Hire hire, Column column) {
    Formula cell = calc("INDEX({};{})", column.all(), number);
    Column shown =
        Column.result(
                column.heading(),
                calc("IF(OR({}=\"\";{}<>\"each line\");\"\";{})", cell, hire.prices, cell))
            .as(column.format())
            .mayBeBlank();
    return column.format() == Format.MONEY ? shown.unit(hire.currency) : shown;
  }

  Tab tab() {
    return Tab.of(
            "Offer",
            "What is offered, row by row: these pages go to the client behind Result. Nothing to"
                + " fill here.")
        .with(table);
  }
}
