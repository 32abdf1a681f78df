package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The packs there are, less those that are lent, kept as spare or set aside. */
final class OnHand {
  static final int ROOM = 40;

  final Column kind;
  final Column ours = pieces("Ours", "Packs that belong to us or came with the camera.");
  final Column hired = pieces("Hired", "Packs on the delivery note of the rental house.");
  final Column spare = pieces("Kept as spare", "Not planned with: one of each kind is usual.");
  final Column lent = pieces("Lent", "Packs that another department has.");
  final Column lentTo =
      Column.input("Lent to").wide(20).help("The department that has them: sound, electric.");
  final Column lentFrom =
      Column.input("Lent from").as(Format.DAY).wide(20).help("First day. Blank: already lent.");
  final Column backOn =
      Column.input("Back on")
          .as(Format.DAY)
          .wide(20)
          .help("The last day they are lent. Blank: not promised yet.");
  final Column dead =
      pieces(
          "Dead or set aside",
          "Dropped, wet, swollen or without output. Quarantine these. Do not charge them.");
  final Column since =
      Column.input("Set aside since").as(Format.DAY).wide(20).help("First day without them.");

  final Column energy = Column.result("Energy").unit("Wh").as(Format.WHOLE).wide(15);
  final Column toPlan = Column.result("To plan with").as(Format.COUNT).wide(14);

  final Column fewest = Column.result("Fewest that day").as(Format.COUNT).mayBeBlank().wide(17);

  final Table table = Table.of("On hand", ROOM);

  private final DayJob day;

  OnHand(DayJob day, Kit kit) {
    this.day = day;
    kind =
        Column.input("Kind")
            .oneOf(kit.pack)
            .needed()
            .wide(45)
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
    energy.by(kit.wattHours.where(kit.pack, kind)).failing("Kit has no such pack: add it there.");
    toPlan.by(
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

  private static Column pieces(String heading, String help) {
    return Column.input(heading).number(Format.COUNT, 0, 999).wide(15).help(help);
  }

  void declare(Day plan) {
    fewest.by(plan.fewestOf(energy));
    table.checks(
        Check.stop(
            calc("COUNTIF({};{})>1", kind.all(), kind),
            say("{} stands here twice: keep one row.", kind)),
        Check.stop(
            calc("{}<0", toPlan),
            say("{} packs lent, kept or set aside that are not there: count again.", kind)),
        Check.stop(
            calc("{}>{}", lentFrom, backOn), Formula.of("Back on is before Lent from: swap them.")),
        Check.look(
            calc("AND({}>0;{}=\"\")", or(lent, 0), or(lentTo, "")),
            Formula.of("Write which department has them, in Lent to.")),
        Check.look(
            calc("AND({}>{};{}>0)", or(day.shown, 0), backOn, lent),
            say("{} should be back from {} since {}: fetch them.", lent, lentTo, backOn)),
        Check.look(
            calc("{}>{}", fewest, toPlan),
            say(
                "{} needed that day, {} to plan with: hire, charge more, or go to mains.",
                fewest,
                toPlan)),
        Check.look(
            calc("COUNTIF({};{})>1", energy.all(), energy),
            Formula.of("Two kinds with the same Wh: the day counts them together.")));
  }

  Tab tab() {
    return Tab.of(
            "On hand",
            "How many packs of each kind there are, and who has them. What is lent, kept as spare"
                + " or set aside is taken off.")
        .with(table);
  }
}
