package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The stock by kind: how many, how many fit, how healthy, how many to buy. */
final class Kinds {
  static final int ROOM = 40;

  final Column kind =
      Column.input("Kind")
          .needed()
          .wide(40)
          .help("One row for each kind of pack; the list of Packs.");
  final Column wanted =
      Column.input("Wanted")
          .number(Format.COUNT, 0, 10_000)
          .wide(19)
          .help("How many must be fit to go out at a time. Blank: nothing is bought.");

  final Column count = Column.result("Packs").as(Format.COUNT).wide(19);
  final Column out = Column.result("Out now").as(Format.COUNT).wide(19);
  final Column fit = Column.result("Fit to go out").as(Format.COUNT).wide(19);
  final Column service = Column.result("In service").as(Format.COUNT).wide(19);
  final Column average = Column.result("Average health").as(Format.SHARE).mayBeBlank().wide(22);
  final Column lowest = Column.result("Lowest health").as(Format.SHARE).mayBeBlank().wide(22);
  final Column range = Column.result("Highest less lowest").as(Format.SHARE).mayBeBlank().wide(22);
  final Column buy = Column.result("To buy").as(Format.COUNT).mayBeBlank().wide(19);

  final Table table = Table.of("By kind", ROOM);

  void declare(Packs packs) {
    Formula kinds = packs.kind.all();
    count.by(calc("COUNTIF({};{})", kinds, kind));
    out.by(calc("SUMPRODUCT(({}={})*({}<>\"\"))", kinds, kind, packs.outTo.all()));
    fit.by(calc("SUMIFS({};{};{})", packs.fit.all(), kinds, kind));
    service.by(calc("COUNTIFS({};{};{};\"service\")", kinds, kind, packs.doNow.all()));
    average.by(calc("AVERAGEIFS({};{};{})", packs.health.all(), kinds, kind));
    lowest.by(calc("IF({}=\"\";\"\";MINIFS({};{};{}))", average, packs.health.all(), kinds, kind));
    range.by(calc("MAXIFS({};{};{})-{}", packs.health.all(), kinds, kind, lowest));
    buy.by(calc("MAX(0;{}-{}-{})", wanted, fit, service));
    table.columns(kind, wanted, count, out, fit, service, average, lowest, range, buy);
    table.checks(
        Check.stop(
            calc("COUNTIF({};{})>1", kind.all(), kind),
            say("{} stands here twice: keep one row.", kind)),
        Check.look(
            calc("{}>0", buy),
            say("{} wanted, {} fit and {} in service: buy {}.", wanted, fit, service, buy)),
        Check.look(
            calc("{}<{}", fit, wanted),
            say("{} wanted, {} fit now: get {} back from service first.", wanted, fit, service)),
        Check.look(calc("{}=0", or(count, 0)), say("Packs has no {} yet.", kind)));
  }

  Tab tab() {
    return Tab.of(
            "By kind",
            "Write each kind once, and how many of it you want fit to go out; the rest is counted"
                + " from Packs.")
        .with(table);
  }
}
