package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The packs of the order: what they hold, whether they fly, what must go with them. */
final class OrderPacks {
  private static final int ROOM = 20;

  final Column energyAll;
  final Field pieces;
  final Field energy;
  final Field channels;
  final Field turns;
  private final Table table;

  OrderPacks(Hire hire, Quote quote, Stock stock) {
    Column number = Column.working("No.");
    number.by(number.rowNumber());
    Column pack =
        Column.result("Pack", quote.item.where(quote.packNumber, number)).mayBeBlank().wide(60);
    Column count =
        Column.result(
                "Pieces", calc("SUMIFS({};{};{})", quote.quantity.all(), quote.item.all(), pack))
            .as(Format.COUNT)
            .mayBeBlank()
            .wide(46);
    Column each = of("Energy", stock.wattHours, stock, pack).unit("Wh").as(Format.WHOLE).wide(18);
    energyAll =
        Column.result("Energy of all", calc("{}*{}", each, count))
            .unit("Wh")
            .as(Format.WHOLE)
            .mayBeBlank()
            .wide(20);
    Column flight =
        Column.result("By air, as a spare", call(FlightFunctions.CLASS, each))
            .mayBeBlank()
            .wide(42);
    Column gear = of("Goes with", stock.goesWith, stock, pack).wide(36);
    Column gearCount =
        Column.result(
                "Of it on Quote",
                calc("SUMIFS({};{};{})", quote.quantity.all(), quote.item.all(), gear))
            .as(Format.COUNT)
            .mayBeBlank()
            .wide(20);
    Column spares =
        Column.result(
                "Spares to offer",
                calc(
                    "IF({}=0;\"\";ROUNDUP(ROUND({}*{};6);0))",
                    or(hire.sparePacks, 0),
                    count,
                    or(hire.sparePacks, 0)))
            .as(Format.COUNT)
            .mayBeBlank()
            .wide(20);
    Column mass =
        Column.result("Mass of all", calc("{}*{}", stock.mass.where(stock.item, pack), count))
            .unit(hire.job.masses())
            .as(Format.ONE)
            .mayBeBlank()
            .wide(20);
    table =
        Table.of("Packs in the order", ROOM)
            .columns(
                pack,
                count,
                each,
                energyAll,
                of("Outputs", stock.outputs, stock, pack).unit("V class").wide(24),
                flight,
                mass,
                gear,
                gearCount,
                spares,
                number);
    pieces = Field.result("Packs", calc("SUM({})", count.all())).as(Format.COUNT);
    energy =
        Field.result("They hold", calc("SUM({})", energyAll.all())).unit("Wh").as(Format.WHOLE);
    channels =
        Field.result("Charger channels", calc("SUM({})", quote.channels.all())).as(Format.COUNT);
    turns =
        Field.result("Turns to charge all", calc("ROUNDUP({}/{};0)", pieces, channels))
            .as(Format.COUNT)
            .help("Packs over channels, rounded up. Blank: no charger in the order.");
  }

  private static Column of(String heading, Column column, Stock stock, Column pack) {
    Formula cell = column.where(stock.item, pack);
    return Column.result(heading, calc("IF({}=\"\";\"\";{})", cell, cell)).mayBeBlank();
  }

  Tab tab() {
    return Tab.of(
            "Packs",
            "The packs of the quote, and what must go with them; nothing to fill. Volts that do not"
                + " go together are told on Quote.")
        .titled("Packs in the order")
        .with(Fields.of("In all", pieces, energy, channels, turns), table);
  }
}
