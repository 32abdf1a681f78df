package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.setpower.registry.groups.ChargeFunctions;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.shared.PackFeed;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** Lights on packs: whether the feed fits, how long it lasts, how many packs the shift takes. */
final class LightingPacksSheet {
  private static final double MILD = 20;

  final PackFeed feed;
  final ColumnSpec item;
  final ColumnSpec day;
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 1, 999)
          .width(16)
          .help("How many of them, each with packs of its own. Blank: 1.");
  final ColumnSpec level =
      ColumnSpec.input("Level").share().width(12).help("The dimmer level, with %. Blank: 100 %.");
  final ColumnSpec series =
      ColumnSpec.input("In series")
          .number(CellFormat.COUNT, 1, 4)
          .width(12)
          .help("Packs one behind the other; only where the maker allows it. Blank: 1.");
  final ColumnSpec parallel =
      ColumnSpec.input("Side by side")
          .number(CellFormat.COUNT, 1, 12)
          .width(12)
          .help("Equal, equally full packs that share the current. Blank: 1.");
  final ColumnSpec from =
      ColumnSpec.input("From")
          .format(CellFormat.TIME)
          .required()
          .width(12)
          .help("Switched on, by the clock.");
  final ColumnSpec to =
      ColumnSpec.input("To")
          .format(CellFormat.TIME)
          .required()
          .width(12)
          .help("Switched off. At or before From means the next morning.");
  final ColumnSpec watts = ColumnSpec.result("Power").unit("W").format(CellFormat.WHOLE).width(13);
  final ColumnSpec hours =
      ColumnSpec.result("One set lasts").unit("h").format(CellFormat.ONE).width(13);
  final ColumnSpec swaps = ColumnSpec.result("Swaps").format(CellFormat.COUNT).width(13);
  final ColumnSpec packs =
      ColumnSpec.result("Batteries per shift").format(CellFormat.COUNT).width(14);

  final ColumnSpec needed = ColumnSpec.working("Hours needed").unit("h").format(CellFormat.TWO);
  final ColumnSpec coldest = ColumnSpec.working("Coldest").unit("°C").format(CellFormat.ONE);
  final ColumnSpec lights = ColumnSpec.working("Of this light that day").format(CellFormat.COUNT);
  final ColumnSpec quantityNow = ColumnSpec.working("Pieces").format(CellFormat.COUNT);
  final ColumnSpec newDay = ColumnSpec.working("First row of its day").format(CellFormat.COUNT);
  final ColumnSpec wall = ColumnSpec.working("Mains energy").unit("Wh").format(CellFormat.WHOLE);
  final ColumnSpec sameDay = ColumnSpec.working("Same pack that day").format(CellFormat.COUNT);
  final ColumnSpec allDay = ColumnSpec.working("Packs that day").format(CellFormat.COUNT);

  final TableSpec table = TableSpec.of("", 60);

  private final LightingJobSheet plan;
  private final EquipmentSheet kit;

  LightingPacksSheet(LightingJobSheet plan, EquipmentSheet kit) {
    this.plan = plan;
    this.kit = kit;
    feed = new PackFeed(plan.job, kit, "light");
    item =
        ColumnSpec.input("Light")
            .options(kit.item)
            .required()
            .width(50)
            .help("From the list; a row of Kit that is fed with DC.");
    day =
        ColumnSpec.input("Day")
            .format(CellFormat.DAY)
            .options(plan.job.date)
            .required()
            .width(20)
            .help("One of the dates on Job; its coldest hour counts.");
    works();
    table.columns(
        item,
        day,
        quantity,
        level,
        feed.plate,
        feed.pack,
        series,
        parallel,
        feed.leadLength,
        feed.leadSize,
        from,
        to,
        feed.touchSafe,
        watts,
        feed.feed,
        feed.full,
        feed.there,
        feed.amps,
        feed.atCutOff,
        feed.limit,
        hours,
        swaps,
        packs,
        needed,
        coldest,
        lights,
        quantityNow,
        newDay,
        wall,
        sameDay,
        allDay);
    table.columns(feed.working());
    table.checks(checks());
  }

  private Formula ofItem(ColumnSpec column) {
    return column.lookup(kit.item, item);
  }

  private void works() {
    Formula each = or(series, 1);
    Formula side = or(parallel, 1);
    watts
        .formula(calc("{}*{}", ofItem(kit.watts), or(level, 1)))
        .errorMessage("Kit has no watts for it: fill them in there.");
    Formula worksFrom = ofItem(kit.worksFrom);
    feed.works(watts, worksFrom, each, side, side);
    coldest.formula(plan.job.coldest(day, MILD));
    hours.formula(feed.hours(worksFrom, coldest, 0));
    needed.formula(calc("24*MOD({}-{};1)+24*({}={})", to, from, to, from));
    swaps.formula(calc("{}-1", call(PackFunctions.COUNT, needed, hours, 0)));
    packs.formula(calc("({}+1)*{}*{}*{}", swaps, each, side, or(quantity, 1)));
    sameDay.formula(
        calc("SUMIFS({};{};{};{};{})", packs.all(), feed.pack.all(), feed.pack, day.all(), day));
    quantityNow.formula(calc("{}+0*LEN({})", or(quantity, 1), item));
    lights.formula(
        calc("SUMIFS({};{};{};{};{})", quantityNow.all(), item.all(), item, day.all(), day));
    newDay.formula(calc("N(COUNTIF({};{})=0)", day.above(), day));
    wall.formula(calc("{}*{}", packs, call(ChargeFunctions.MAINS, feed.ofPack(kit.wattHours))));
    allDay.formula(calc("SUMIFS({};{};{})", packs.all(), day.all(), day));
  }

  private ValidationRule[] checks() {
    Formula worksFrom = ofItem(kit.worksFrom);
    Formula worksTo = ofItem(kit.worksTo);
    Formula pieces = feed.ofPack(kit.packPieces);
    List<ValidationRule> checks = new ArrayList<>();
    Collections.addAll(
        checks,
        ValidationRule.wrong(
            calc("AND(LEN({})>0;{}<>\"DC\")", item, ofItem(kit.feed)),
            say("{} runs on mains: plan it on Loads.", item)),
        ValidationRule.wrong(
            calc("AND(LEN({})>0;OR(N({})=0;N({})=0))", item, worksFrom, worksTo),
            say("Fill in on Kit from and to how many volts {} works.", item)),
        ValidationRule.stop(
            calc("{}>{}", feed.full, worksTo),
            calc(
                "ROUND({};1)&\" V just off the charger, \"&{}&\" works to \"&ROUND({};1)&\" V:"
                    + " another pack, or a converter.\"",
                feed.full,
                item,
                worksTo)),
        ValidationRule.stop(
            calc("{}<{}", feed.there, worksFrom),
            calc(
                "ROUND({};1)&\" V arrive, \"&{}&\" works from \"&ROUND({};1)&\" V.\"",
                feed.there,
                item,
                worksFrom)));
    Collections.addAll(checks, feed.checks("more side by side"));
    checks.add(
        ValidationRule.check(
            calc("AND(N({})>0;{}>{})", pieces, sameDay, pieces),
            calc(
                "{}&\" of \"&{}&\" that day, Kit has \"&{}&\": charge between, or hire.\"",
                sameDay,
                feed.pack,
                pieces)));
    return checks.toArray(new ValidationRule[0]);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Packs",
            "Battery-powered lights: battery plate, battery and times. Each row shows"
                + " compatibility, runtime and batteries per shift.")
        .with(table);
  }
}
