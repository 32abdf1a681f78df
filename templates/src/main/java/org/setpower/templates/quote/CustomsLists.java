package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;

/** The lists for the insurer and for the customs, out of what was picked. */
final class CustomsLists {
  final FieldSpec carnetPieces;
  final FieldSpec carnetValue;
  private final FieldSpec carnetMass;
  private final FieldSpec insured;
  final TableSpec insurer = TableSpec.of("What is insured", QuoteLinesSheet.ROOM);
  final TableSpec general = TableSpec.of("General list", QuoteLinesSheet.ROOM);

  CustomsLists(QuoteTerms hire, ReturnSheet picked) {
    ColumnSpec row = number();
    insurer.columns(
        shown(picked.item, calc("INDEX({};{})", picked.item.all(), row)).width(60),
        shown(picked.pieces, calc("INDEX({};{})", picked.pieces.all(), row)).width(46),
        shown(picked.serials, calc("INDEX({};{})", picked.serials.all(), row)).width(60),
        shown(picked.each, calc("INDEX({};{})", picked.each.all(), row))
            .unit(hire.currency)
            .width(26),
        shown(picked.value, calc("INDEX({};{})", picked.value.all(), row))
            .unit(hire.currency)
            .width(26),
        row);
    insured = money("Value", calc("SUM({})", picked.value.all()), hire);

    ColumnSpec number = number();
    ColumnSpec no =
        ColumnSpec.result(
                "Number",
                calc("IF({}>MAX(0;{});\"\";{})", number, picked.carnetNumber.all(), number))
            .format(CellFormat.COUNT)
            .mayBeBlank()
            .width(60);
    Formula serials = picked.serials.lookup(picked.carnetNumber, number);
    ColumnSpec goods =
        ColumnSpec.result(
                "Goods and serials",
                calc(
                    "{}&IF({}=\"\";\"\";\", \"&{})",
                    picked.item.lookup(picked.carnetNumber, number),
                    serials,
                    serials))
            .mayBeBlank()
            .width(90);
    ColumnSpec pieces = shown(picked.pieces, picked.pieces.lookup(picked.carnetNumber, number));
    ColumnSpec mass =
        shown(picked.mass, picked.mass.lookup(picked.carnetNumber, number)).unit(hire.job.masses());
    ColumnSpec value =
        shown(picked.value, picked.value.lookup(picked.carnetNumber, number)).unit(hire.currency);
    general.columns(
        no,
        goods,
        pieces.width(18),
        mass.width(20),
        value.width(26),
        shown(picked.origin, picked.origin.lookup(picked.carnetNumber, number)).width(20),
        number);
    carnetPieces =
        FieldSpec.result("Pieces", calc("SUM({})", pieces.all())).format(CellFormat.COUNT);
    carnetMass =
        FieldSpec.result("Mass", calc("SUM({})", mass.all()))
            .unit(hire.job.masses())
            .format(CellFormat.ONE);
    carnetValue = money("Value", calc("SUM({})", value.all()), hire);
  }

  private static ColumnSpec number() {
    ColumnSpec number = ColumnSpec.working("No.");
    return number.formula(number.rowNumber());
  }

  private static FieldSpec money(String heading, Formula formula, QuoteTerms hire) {
    return FieldSpec.result(heading, formula).unit(hire.currency).format(CellFormat.MONEY);
  }

  private static ColumnSpec shown(ColumnSpec column, Formula cell) {
    return ColumnSpec.result(column.heading(), calc("IF({}=\"\";\"\";{})", cell, cell))
        .format(column.format())
        .mayBeBlank();
  }

  SheetSpec insurerTab() {
    return SheetSpec.of(
            "Insurer",
            "For the insurer: everything on Return with its serials and replacement value. Nothing"
                + " to fill here.")
        .titled("List for the insurer")
        .with(FieldBlock.of("In all", insured), insurer);
  }

  SheetSpec carnetTab() {
    return SheetSpec.of(
            "Carnet",
            "General list for a carnet: what is marked yes on Return. Numbers stay with their"
                + " goods; nothing to fill here.")
        .titled("General list for the carnet")
        .with(FieldBlock.of("In all", carnetPieces, carnetMass, carnetValue), general);
  }
}
