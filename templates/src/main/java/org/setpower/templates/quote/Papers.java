package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The lists for the insurer and for the customs, out of what was picked. */
final class Papers {
  final Field carnetPieces;
  final Field carnetValue;
  private final Field carnetMass;
  private final Field insured;
  final Table insurer = Table.of("What is insured", Quote.ROOM);
  final Table general = Table.of("General list", Quote.ROOM);

  Papers(Hire hire, Return picked) {
    Column row = number();
    insurer.columns(
        shown(picked.item, calc("INDEX({};{})", picked.item.all(), row)).wide(60),
        shown(picked.pieces, calc("INDEX({};{})", picked.pieces.all(), row)).wide(46),
        shown(picked.serials, calc("INDEX({};{})", picked.serials.all(), row)).wide(60),
        shown(picked.each, calc("INDEX({};{})", picked.each.all(), row))
            .unit(hire.currency)
            .wide(26),
        shown(picked.value, calc("INDEX({};{})", picked.value.all(), row))
            .unit(hire.currency)
            .wide(26),
        row);
    insured = money("Value", calc("SUM({})", picked.value.all()), hire);

    Column number = number();
    Column no =
        Column.result(
                "Number",
                calc("IF({}>MAX(0;{});\"\";{})", number, picked.carnetNumber.all(), number))
            .as(Format.COUNT)
            .mayBeBlank()
            .wide(60);
    Formula serials = picked.serials.where(picked.carnetNumber, number);
    Column goods =
        Column.result(
                "Goods and serials",
                calc(
                    "{}&IF({}=\"\";\"\";\", \"&{})",
                    picked.item.where(picked.carnetNumber, number),
                    serials,
                    serials))
            .mayBeBlank()
            .wide(90);
    Column pieces = shown(picked.pieces, picked.pieces.where(picked.carnetNumber, number));
    Column mass =
        shown(picked.mass, picked.mass.where(picked.carnetNumber, number)).unit(hire.job.masses());
    Column value =
        shown(picked.value, picked.value.where(picked.carnetNumber, number)).unit(hire.currency);
    general.columns(
        no,
        goods,
        pieces.wide(18),
        mass.wide(20),
        value.wide(26),
        shown(picked.origin, picked.origin.where(picked.carnetNumber, number)).wide(20),
        number);
    carnetPieces = Field.result("Pieces", calc("SUM({})", pieces.all())).as(Format.COUNT);
    carnetMass =
        Field.result("Mass", calc("SUM({})", mass.all())).unit(hire.job.masses()).as(Format.ONE);
    carnetValue = money("Value", calc("SUM({})", value.all()), hire);
  }

  private static Column number() {
    Column number = Column.working("No.");
    return number.by(number.rowNumber());
  }

  private static Field money(String heading, Formula formula, Hire hire) {
    return Field.result(heading, formula).unit(hire.currency).as(Format.MONEY);
  }

  private static Column shown(Column column, Formula cell) {
    return Column.result(column.heading(), calc("IF({}=\"\";\"\";{})", cell, cell))
        .as(column.format())
        .mayBeBlank();
  }

  Tab insurerTab() {
    return Tab.of(
            "Insurer",
            "For the insurer: everything on Return with its serials and replacement value. Nothing"
                + " to fill here.")
        .titled("List for the insurer")
        .with(Fields.of("In all", insured), insurer);
  }

  Tab carnetTab() {
    return Tab.of(
            "Carnet",
            "General list for a carnet: what is marked yes on Return. Numbers stay with their"
                + " goods; nothing to fill here.")
        .titled("General list for the carnet")
        .with(Fields.of("In all", carnetPieces, carnetMass, carnetValue), general);
  }
}
