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
import org.setpower.templates.shared.Kit;
import org.setpower.templates.shared.PackFeed;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** Lights on packs: whether the feed fits, how long it lasts, how many packs the shift takes. */
final class Packs {
  private static final double MILD = 20;

  final PackFeed feed;
  final Column item;
  final Column day;
  final Column quantity =
      Column.input("Quantity")
          .number(Format.COUNT, 1, 999)
          .wide(16)
          .help("How many of them, each with packs of its own. Blank: 1.");
  final Column level =
      Column.input("Level").share().wide(12).help("The dimmer level, with %. Blank: 100 %.");
  final Column series =
      Column.input("In series")
          .number(Format.COUNT, 1, 4)
          .wide(12)
          .help("Packs one behind the other; only where the maker allows it. Blank: 1.");
  final Column parallel =
      Column.input("Side by side")
          .number(Format.COUNT, 1, 12)
          .wide(12)
          .help("Equal, equally full packs that share the current. Blank: 1.");
  final Column from =
      Column.input("From").as(Format.TIME).needed().wide(12).help("Switched on, by the clock.");
  final Column to =
      Column.input("To")
          .as(Format.TIME)
          .needed()
          .wide(12)
          .help("Switched off. At or before From means the next morning.");
  final Column watts = Column.result("Power").unit("W").as(Format.WHOLE).wide(13);
  final Column hours = Column.result("One set lasts").unit("h").as(Format.ONE).wide(13);
  final Column swaps = Column.result("Swaps").as(Format.COUNT).wide(13);
  final Column packs = Column.result("Packs for the shift").as(Format.COUNT).wide(14);

  final Column needed = Column.working("Hours needed").unit("h").as(Format.TWO);
  final Column coldest = Column.working("Coldest").unit("°C").as(Format.ONE);
  final Column lights = Column.working("Of this light that day").as(Format.COUNT);
  final Column quantityNow = Column.working("Pieces").as(Format.COUNT);
  final Column newDay = Column.working("First row of its day").as(Format.COUNT);
  final Column wall = Column.working("From the wall").unit("Wh").as(Format.WHOLE);
  final Column sameDay = Column.working("Same pack that day").as(Format.COUNT);
  final Column allDay = Column.working("Packs that day").as(Format.COUNT);

  final Table table = Table.of("", 60);

  private final PlanJob plan;
  private final Kit kit;

  Packs(PlanJob plan, Kit kit) {
    this.plan = plan;
    this.kit = kit;
    feed = new PackFeed(plan.job, kit, "light");
    item =
        Column.input("Light")
            .oneOf(kit.item)
            .needed()
            .wide(50)
            .help("From the list; a row of Kit that is fed with DC.");
    day =
        Column.input("Day")
            .as(Format.DAY)
            .oneOf(plan.job.date)
            .needed()
            .wide(20)
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

  private Formula ofItem(Column column) {
    return column.where(kit.item, item);
  }

  private void works() {
    Formula each = or(series, 1);
    Formula side = or(parallel, 1);
    watts
        .by(calc("{}*{}", ofItem(kit.watts), or(level, 1)))
        .failing("Kit has no watts for it: fill them in there.");
    Formula worksFrom = ofItem(kit.worksFrom);
    feed.works(watts, worksFrom, each, side, side);
    coldest.by(plan.job.coldest(day, MILD));
    hours.by(feed.hours(worksFrom, coldest, 0));
    needed.by(calc("24*MOD({}-{};1)+24*({}={})", to, from, to, from));
    swaps.by(calc("{}-1", call(PackFunctions.COUNT, needed, hours)));
    packs.by(calc("({}+1)*{}*{}*{}", swaps, each, side, or(quantity, 1)));
    sameDay.by(
        calc("SUMIFS({};{};{};{};{})", packs.all(), feed.pack.all(), feed.pack, day.all(), day));
    quantityNow.by(calc("{}+0*LEN({})", or(quantity, 1), item));
    lights.by(calc("SUMIFS({};{};{};{};{})", quantityNow.all(), item.all(), item, day.all(), day));
    newDay.by(calc("N(COUNTIF({};{})=0)", day.above(), day));
    wall.by(calc("{}*{}", packs, call(ChargeFunctions.MAINS, feed.ofPack(kit.wattHours))));
    allDay.by(calc("SUMIFS({};{};{})", packs.all(), day.all(), day));
  }

  private Check[] checks() {
    Formula worksFrom = ofItem(kit.worksFrom);
    Formula worksTo = ofItem(kit.worksTo);
    Formula pieces = feed.ofPack(kit.packPieces);
    List<Check> checks = new ArrayList<>();
    Collections.addAll(
        checks,
        Check.wrong(
            calc("AND(LEN({})>0;{}<>\"DC\")", item, ofItem(kit.feed)),
            say("{} runs on mains: plan it on Loads.", item)),
        Check.wrong(
            calc("AND(LEN({})>0;OR(N({})=0;N({})=0))", item, worksFrom, worksTo),
            say("Fill in on Kit from and to how many volts {} works.", item)),
        Check.stop(
            calc("{}>{}", feed.full, worksTo),
            calc(
                "ROUND({};1)&\" V just off the charger, \"&{}&\" works to \"&ROUND({};1)&\" V:"
                    + " another pack, or a converter.\"",
                feed.full,
                item,
                worksTo)),
        Check.stop(
            calc("{}<{}", feed.there, worksFrom),
            calc(
                "ROUND({};1)&\" V arrive, \"&{}&\" works from \"&ROUND({};1)&\" V.\"",
                feed.there,
                item,
                worksFrom)));
    Collections.addAll(checks, feed.checks("more side by side"));
    checks.add(
        Check.look(
            calc("AND(N({})>0;{}>{})", pieces, sameDay, pieces),
            calc(
                "{}&\" of \"&{}&\" that day, Kit has \"&{}&\": charge between, or hire.\"",
                sameDay,
                feed.pack,
                pieces)));
    return checks.toArray(new Check[0]);
  }

  Tab tab() {
    return Tab.of(
            "Packs",
            "Lights that run on packs: light, day, the plate's volts, the pack and the times. Each"
                + " row says whether it fits, how long it lasts and how many packs the shift"
                + " takes.")
        .with(table);
  }
}
