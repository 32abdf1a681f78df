package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The packs there are, less those that are lent, kept as spare or set aside. */
final class PacksOnHandSheet {
  static final int ROOM = 40;

  final ColumnSpec kind;
  final ColumnSpec ours = pieces("Ours", "Packs that belong to us or came with the camera.");
  final ColumnSpec hired = pieces("Hired", "Packs on the delivery note of the rental house.");
  final ColumnSpec spare = pieces("Kept as spare", "Not planned with: one of each kind is usual.");
  final ColumnSpec lent = pieces("Lent", "Packs that another department has.");
  final ColumnSpec lentTo =
      ColumnSpec.input("Lent to").width(20).help("The department that has them: sound, electric.");
  final ColumnSpec lentFrom =
      ColumnSpec.input("Lent from")
          .format(CellFormat.DAY)
          .width(20)
          .help("First day. Blank: already lent.");
  final ColumnSpec backOn =
      ColumnSpec.input("Back on")
          .format(CellFormat.DAY)
          .width(20)
          .help("The last day they are lent. Blank: not promised yet.");
  final ColumnSpec dead =
      pieces(
          "Dead or set aside",
          "Dropped, wet, swollen or without output. Quarantine these. Do not charge them.");
  final ColumnSpec since =
      ColumnSpec.input("Set aside since")
          .format(CellFormat.DAY)
          .width(20)
          .help("First day without them.");

  final ColumnSpec energy =
      ColumnSpec.result("Energy").unit("Wh").format(CellFormat.WHOLE).width(15);
  final ColumnSpec toPlan = ColumnSpec.result("Available").format(CellFormat.COUNT).width(14);

  final ColumnSpec fewest =
      ColumnSpec.result("Required").format(CellFormat.COUNT).mayBeBlank().width(17);

  final TableSpec table = TableSpec.of("On hand", ROOM);

  private final BatteryJobSheet day;

  PacksOnHandSheet(BatteryJobSheet day, EquipmentSheet kit) {
    this.day = day;
    kind =
        ColumnSpec.input("Kind")
            .options(kit.pack)
            .required()
            .width(45)
            .help("The kind of pack, from Kit. One row for each kind.");
    Formula shown = or(day.shown, "");
    Formula date = or(day.shown, 0);
    Formula away =
        calc(
            "IF({}=\"\";{};{}*AND({}<={};{}>={}))",
            shown,
            or(lent, 0),
            or(lent, 0),
            or(lentFrom, 0),
            date,
            or(backOn, 99_999),
            date);
    Formula out =
        calc("IF({}=\"\";{};{}*({}<={}))", shown, or(dead, 0), or(dead, 0), or(since, 0), date);
    energy
        .formula(kit.wattHours.lookup(kit.pack, kind))
        .errorMessage("Kit has no such pack: add it there.");
    toPlan.formula(
        calc(
            "IF({}=\"\";\"\";{}+{}-{}-{}-{})",
            kind,
            or(ours, 0),
            or(hired, 0),
            or(spare, 0),
            away,
            out));
    table.columns(
        kind, ours, hired, spare, lent, lentTo, lentFrom, backOn, dead, since, energy, toPlan,
        fewest);
  }

  private static ColumnSpec pieces(String heading, String help) {
    return ColumnSpec.input(heading).number(CellFormat.COUNT, 0, 999).width(15).help(help);
  }

  void declare(DaySheet plan) {
    fewest.formula(plan.fewestOf(energy));
    table.checks(
        ValidationRule.stop(
            calc("COUNTIF({};{})>1", kind.all(), kind), say("Duplicate: {}. Keep one row.", kind)),
        ValidationRule.stop(
            calc("{}<0", toPlan),
            say("{} packs lent, kept or set aside that are not there: count again.", kind)),
        ValidationRule.stop(
            calc("{}>{}", lentFrom, backOn), Formula.of("Back on is before Lent from: swap them.")),
        ValidationRule.check(
            calc("AND({}>0;{}=\"\")", or(lent, 0), or(lentTo, "")),
            Formula.of("Write which department has them, in Lent to.")),
        ValidationRule.check(
            calc("AND({}>{};{}>0)", or(day.shown, 0), backOn, lent),
            say("{} should be back from {} since {}: fetch them.", lent, lentTo, backOn)),
        ValidationRule.check(
            calc("{}>{}", fewest, toPlan),
            say(
                "{} required, {} available: hire, charge more or use mains power.",
                fewest,
                toPlan)),
        ValidationRule.check(
            calc("COUNTIF({};{})>1", energy.all(), energy),
            Formula.of("Two kinds with the same Wh: the day counts them together.")));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "On hand",
            "How many packs of each kind there are, and who has them. What is lent, kept as spare"
                + " or set aside is taken off.")
        .with(table);
  }
}
