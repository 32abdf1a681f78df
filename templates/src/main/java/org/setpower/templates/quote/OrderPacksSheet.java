package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;

/** The packs of the order: what they hold, whether they fly, what must go with them. */
final class OrderPacksSheet {
  private static final int ROOM = 20;

  final ColumnSpec energyAll;
  final FieldSpec pieces;
  final FieldSpec energy;
  final FieldSpec channels;
  final FieldSpec turns;
  private final TableSpec table;

  OrderPacksSheet(QuoteTerms hire, QuoteLinesSheet quote, StockSheet stock) {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    ColumnSpec pack =
        ColumnSpec.result("Pack", quote.item.lookup(quote.packNumber, number))
            .mayBeBlank()
            .width(60);
    ColumnSpec count =
        ColumnSpec.result(
                "Pieces", calc("SUMIFS({};{};{})", quote.quantity.all(), quote.item.all(), pack))
            .format(CellFormat.COUNT)
            .mayBeBlank()
            .width(46);
    ColumnSpec each =
        of("Energy", stock.wattHours, stock, pack).unit("Wh").format(CellFormat.WHOLE).width(18);
    energyAll =
        ColumnSpec.result("Energy of all", calc("{}*{}", each, count))
            .unit("Wh")
            .format(CellFormat.WHOLE)
            .mayBeBlank()
            .width(20);
    ColumnSpec flight =
        ColumnSpec.result(
                "By air, as a spare (2026)",
                call(FlightFunctions.CLASS, each, "spare", "Li-ion", "ICAO", "2026-12-31"))
            .mayBeBlank()
            .width(42);
    ColumnSpec gear = of("Goes with", stock.goesWith, stock, pack).width(36);
    ColumnSpec gearCount =
        ColumnSpec.result(
                "Of it on Quote",
                calc("SUMIFS({};{};{})", quote.quantity.all(), quote.item.all(), gear))
            .format(CellFormat.COUNT)
            .mayBeBlank()
            .width(20);
    ColumnSpec spares =
        ColumnSpec.result(
                "Spares to offer",
                calc(
                    "IF({}=0;\"\";ROUNDUP(ROUND({}*{};6);0))",
                    or(hire.sparePacks, 0),
                    count,
                    or(hire.sparePacks, 0)))
            .format(CellFormat.COUNT)
            .mayBeBlank()
            .width(20);
    ColumnSpec mass =
        ColumnSpec.result("Mass of all", calc("{}*{}", stock.mass.lookup(stock.item, pack), count))
            .unit(hire.job.masses())
            .format(CellFormat.ONE)
            .mayBeBlank()
            .width(20);
    table =
        TableSpec.of("Packs in the order", ROOM)
            .columns(
                pack,
                count,
                each,
                energyAll,
                of("Outputs", stock.outputs, stock, pack).unit("nominal V").width(24),
                flight,
                mass,
                gear,
                gearCount,
                spares,
                number);
    pieces = FieldSpec.result("Packs", calc("SUM({})", count.all())).format(CellFormat.COUNT);
    energy =
        FieldSpec.result("Total energy", calc("SUM({})", energyAll.all()))
            .unit("Wh")
            .format(CellFormat.WHOLE);
    channels =
        FieldSpec.result("Charger channels", calc("SUM({})", quote.channels.all()))
            .format(CellFormat.COUNT);
    turns =
        FieldSpec.result("Turns to charge all", calc("ROUNDUP({}/{};0)", pieces, channels))
            .format(CellFormat.COUNT)
            .help("Packs over channels, rounded up. Blank: no charger in the order.");
  }

  private static ColumnSpec of(
      String heading, ColumnSpec column, StockSheet stock, ColumnSpec pack) {
    Formula cell = column.lookup(stock.item, pack);
    return ColumnSpec.result(heading, calc("IF({}=\"\";\"\";{})", cell, cell)).mayBeBlank();
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Packs",
            "The packs of the quote, and what must go with them; nothing to fill."
                + " Voltage mismatches are flagged on Quote.")
        .titled("Packs in the order")
        .with(FieldBlock.of("In all", pieces, energy, channels, turns), table);
  }
}
