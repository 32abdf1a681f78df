package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The stock by kind: how many, how many fit, how healthy, how many to buy. */
final class PackKindsSheet {
  static final int ROOM = 40;

  final ColumnSpec kind =
      ColumnSpec.input("Kind")
          .required()
          .width(40)
          .help("One row for each kind of pack; the list of Packs.");
  final ColumnSpec wanted =
      ColumnSpec.input("Wanted")
          .number(CellFormat.COUNT, 0, 10_000)
          .width(19)
          .help("How many must be fit to go out at a time. Blank: nothing is bought.");

  final ColumnSpec count = ColumnSpec.result("Packs").format(CellFormat.COUNT).width(19);
  final ColumnSpec out = ColumnSpec.result("Out now").format(CellFormat.COUNT).width(19);
  final ColumnSpec fit = ColumnSpec.result("Fit to go out").format(CellFormat.COUNT).width(19);
  final ColumnSpec service = ColumnSpec.result("In service").format(CellFormat.COUNT).width(19);
  final ColumnSpec average =
      ColumnSpec.result("Average health").format(CellFormat.SHARE).mayBeBlank().width(22);
  final ColumnSpec lowest =
      ColumnSpec.result("Lowest health").format(CellFormat.SHARE).mayBeBlank().width(22);
  final ColumnSpec range =
      ColumnSpec.result("Highest less lowest").format(CellFormat.SHARE).mayBeBlank().width(22);
  final ColumnSpec buy =
      ColumnSpec.result("To buy").format(CellFormat.COUNT).mayBeBlank().width(19);

  final TableSpec table = TableSpec.of("By kind", ROOM);

  void declare(FleetPacksSheet packs) {
    Formula kinds = packs.kind.all();
    count.formula(calc("COUNTIF({};{})", kinds, kind));
    out.formula(calc("SUMPRODUCT(({}={})*({}<>\"\"))", kinds, kind, packs.outTo.all()));
    fit.formula(calc("SUMIFS({};{};{})", packs.fit.all(), kinds, kind));
    service.formula(calc("COUNTIFS({};{};{};\"service\")", kinds, kind, packs.doNow.all()));
    average.formula(calc("AVERAGEIFS({};{};{})", packs.health.all(), kinds, kind));
    lowest.formula(
        calc("IF({}=\"\";\"\";MINIFS({};{};{}))", average, packs.health.all(), kinds, kind));
    range.formula(calc("MAXIFS({};{};{})-{}", packs.health.all(), kinds, kind, lowest));
    buy.formula(calc("MAX(0;{}-{}-{})", wanted, fit, service));
    table.columns(kind, wanted, count, out, fit, service, average, lowest, range, buy);
    table.checks(
        ValidationRule.stop(
            calc("COUNTIF({};{})>1", kind.all(), kind), say("Duplicate: {}. Keep one row.", kind)),
        ValidationRule.check(
            calc("{}>0", buy),
            say("{} wanted, {} fit and {} in service: buy {}.", wanted, fit, service, buy)),
        ValidationRule.check(
            calc("{}<{}", fit, wanted),
            say("{} wanted, {} fit now: get {} back from service first.", wanted, fit, service)),
        ValidationRule.check(calc("{}=0", or(count, 0)), say("Packs has no {} yet.", kind)));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "By kind",
            "Write each kind once, and how many of it you want fit to go out; the rest is counted"
                + " from Packs.")
        .with(table);
  }
}
