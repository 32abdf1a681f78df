package org.setpower.templates.lighting;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.call;
import static org.setpower.templates.Formula.optional;
import static org.setpower.templates.Formula.or;
import static org.setpower.templates.Formula.say;

import org.setpower.sheet.BankFunctions;
import org.setpower.sheet.CableFunctions;
import org.setpower.sheet.LoadFunctions;
import org.setpower.sheet.PackFunctions;
import org.setpower.templates.Check;
import org.setpower.templates.Column;
import org.setpower.templates.Format;
import org.setpower.templates.Formula;
import org.setpower.templates.Kit;
import org.setpower.templates.Tab;
import org.setpower.templates.Table;

/** Lights on packs: whether the feed fits, how long it lasts, how many packs the shift takes. */
final class Packs {
  private static final double MILD = 20;

  final Column item;
  final Column day;
  final Column quantity =
      Column.input("Quantity")
          .number(Format.COUNT, 1, 999)
          .wide(16)
          .help("How many of them, each with packs of its own. Blank: 1.");
  final Column level =
      Column.input("Level").share().wide(12).help("The dimmer level, with %. Blank: 100 %.");
  final Column plate =
      Column.input("Plate")
          .unit("V class")
          .as(Format.COUNT)
          .oneOf("12", "24", "48")
          .needed()
          .wide(13)
          .help("The volt class the plate or lead asks for: 12, 24 or 48.");
  final Column pack;
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
  final Column leadLength;
  final Column leadSize =
      Column.input("Lead size")
          .oneOf(
              "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "6 AWG", "1.5 mm²", "2.5 mm²",
              "4 mm²", "6 mm²", "10 mm²")
          .orOther()
          .wide(17)
          .help("Printed on the lead between pack and light. Blank: no lead to speak of.");
  final Column from =
      Column.input("From").as(Format.TIME).needed().wide(12).help("Switched on, by the clock.");
  final Column to =
      Column.input("To")
          .as(Format.TIME)
          .needed()
          .wide(12)
          .help("Switched off. At or before From means the next morning.");
  final Column touchSafe =
      Column.input("Touch-safe")
          .oneOf("yes")
          .wide(14)
          .help("Over the touch limit on Job: yes, when no bare part can be touched.");

  final Column watts = Column.result("Power").unit("W").as(Format.WHOLE).wide(13);
  final Column feed = Column.result("Feed").unit("V class").as(Format.WHOLE).wide(13);
  final Column full = Column.result("Full packs").unit("V").as(Format.ONE).wide(13);
  final Column there = Column.result("Volts at the light").unit("V").as(Format.ONE).wide(14);
  final Column amps = Column.result("Current").unit("A").as(Format.ONE).wide(15);
  final Column atCutOff = Column.result("At cut-off").unit("A").as(Format.ONE).wide(13);
  final Column limit = Column.result("Packs may give").unit("A").as(Format.ONE).wide(14);
  final Column hours = Column.result("One set lasts").unit("h").as(Format.ONE).wide(13);
  final Column swaps = Column.result("Swaps").as(Format.COUNT).wide(13);
  final Column packs = Column.result("Packs for the shift").as(Format.COUNT).wide(14);

  final Column highest = Column.working("Highest output").as(Format.COUNT);
  final Column groups = Column.working("Halves side by side").as(Format.ONE).unit("0–1");
  final Column cells = Column.working("Cells seen").as(Format.ONE).unit("0–1");
  final Column lead = Column.working("Lead").unit("mΩ").as(Format.ONE);
  final Column needed = Column.working("Hours needed").unit("h").as(Format.TWO);
  final Column coldest = Column.working("Coldest").unit("°C").as(Format.ONE);
  final Column sameDay = Column.working("Same pack that day").as(Format.COUNT);
  final Column allDay = Column.working("Packs that day").as(Format.COUNT);

  final Table table = Table.of("", 60);

  private final PlanJob plan;
  private final Kit kit;

  Packs(PlanJob plan, Kit kit) {
    this.plan = plan;
    this.kit = kit;
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
    pack =
        Column.input("Pack").oneOf(kit.pack).needed().wide(18).help("The kind of pack, from Kit.");
    leadLength =
        Column.input("Lead")
            .unit(plan.job.lengths())
            .number(Format.ONE, 0, 1000)
            .wide(12)
            .help("From the pack to the light, one way. Blank: the pack sits on the light.");
    works();
    table.columns(
        item,
        day,
        quantity,
        level,
        plate,
        pack,
        series,
        parallel,
        leadLength,
        leadSize,
        from,
        to,
        touchSafe,
        watts,
        feed,
        full,
        there,
        amps,
        atCutOff,
        limit,
        hours,
        swaps,
        packs,
        highest,
        groups,
        cells,
        lead,
        needed,
        coldest,
        sameDay,
        allDay);
    table.checks(checks());
  }

  private Formula ofPack(Column column) {
    return column.where(kit.pack, pack);
  }

  private Formula ofItem(Column column) {
    return column.where(kit.item, item);
  }

  private void works() {
    Formula each = or(series, 1);
    Formula side = or(parallel, 1);
    Formula chemistry = calc("{}&\"\"", ofPack(kit.chemistry));
    Formula health = calc("IF({}=\"\";1;{})", ofPack(kit.health), ofPack(kit.health));
    Formula metres = plan.job.metres(or(leadLength, 0));
    Formula warm = plan.conductorCelsius();
    watts
        .by(calc("{}*{}", ofItem(kit.watts), or(level, 1)))
        .failing("Kit has no watts for it: fill them in there.");
    feed.by(
        call(
            BankFunctions.VOLTS,
            call(
                PackFunctions.FEED,
                calc("{}&\"\"", ofPack(kit.outputs)),
                calc("{}/{}", plate, each)),
            each));
    highest.by(ofPack(kit.highest));
    groups.by(calc("MAX(1;{}*{}/{})", highest, each, plate));
    cells.by(calc("{}/{}", ofPack(kit.cells), groups));
    full.by(call(BankFunctions.FULLVOLTS, cells, each, chemistry));
    there.by(
        calc(
            "IF(OR({}=\"\";{}=0);{};{})",
            optional(leadSize),
            or(leadLength, 0),
            feed,
            call(
                CableFunctions.ENDVOLTS,
                or(leadSize, "1.5 mm²"),
                metres,
                watts,
                feed,
                "DC",
                1,
                warm)));
    amps.by(call(LoadFunctions.AMPS, watts, there, "DC"));
    atCutOff.by(call(LoadFunctions.AMPS, watts, ofItem(kit.worksFrom), "DC"));
    limit.by(call(BankFunctions.MAXAMPS, ofPack(kit.maxAmps), side));
    lead.by(
        calc(
            "IF(OR({}=\"\";{}=0);0;1000*{})",
            optional(leadSize),
            or(leadLength, 0),
            call(CableFunctions.DROP, or(leadSize, "1.5 mm²"), metres, 1, "DC", 1, warm)));
    coldest.by(plan.job.coldest(day, MILD));
    hours.by(
        calc(
            "IF({}=\"\";\"\";MIN({};{}))",
            feed,
            call(
                PackFunctions.LASTS,
                calc("{}*{}", cells, each),
                call(BankFunctions.AMPHOURS, calc("{}*{}", ofPack(kit.ampHours), groups), side),
                call(
                    BankFunctions.MILLIOHMS,
                    calc("{}/{}/{}", ofPack(kit.milliohms), groups, groups),
                    each,
                    side),
                watts,
                ofItem(kit.worksFrom),
                chemistry,
                1,
                health,
                coldest,
                lead),
            call(
                PackFunctions.RUNTIME,
                calc("{}*{}*{}", ofPack(kit.wattHours), each, side),
                watts,
                1,
                health,
                coldest,
                0,
                chemistry)));
    needed.by(calc("24*MOD({}-{};1)+24*({}={})", to, from, to, from));
    swaps.by(calc("{}-1", call(PackFunctions.COUNT, needed, hours)));
    packs.by(calc("({}+1)*{}*{}*{}", swaps, each, side, or(quantity, 1)));
    sameDay.by(calc("SUMIFS({};{};{};{};{})", packs.all(), pack.all(), pack, day.all(), day));
    allDay.by(calc("SUMIFS({};{};{})", packs.all(), day.all(), day));
  }

  private Check[] checks() {
    Formula worksFrom = ofItem(kit.worksFrom);
    Formula worksTo = ofItem(kit.worksTo);
    Formula pieces = ofPack(kit.packPieces);
    return new Check[] {
      Check.wrong(
          calc("AND(LEN({})>0;{}<>\"DC\")", item, ofItem(kit.feed)),
          say("{} runs on mains: plan it on Loads.", item)),
      Check.wrong(
          calc("AND(LEN({})>0;OR(N({})=0;N({})=0))", item, worksFrom, worksTo),
          say("Fill in on Kit from and to how many volts {} works.", item)),
      Check.stop(
          calc("{}>{}", full, worksTo),
          calc(
              "ROUND({};1)&\" V just off the charger, \"&{}&\" works to \"&ROUND({};1)&\" V: another"
                  + " pack, or a converter.\"",
              full,
              item,
              worksTo)),
      Check.stop(
          calc("{}<{}", there, worksFrom),
          calc(
              "ROUND({};1)&\" V arrive, \"&{}&\" works from \"&ROUND({};1)&\" V.\"",
              there,
              item,
              worksFrom)),
      Check.stop(
          calc("AND({}>{};{}<>\"yes\")", full, plan.warning, or(touchSafe, "")),
          say(
              "{} V DC is over the touch limit of {} V: nothing bare, then write yes at Touch-safe.",
              full,
              plan.warning)),
      Check.stop(
          calc("{}>{}", atCutOff, limit),
          say(
              "{} A when nearly empty, the packs may give {} A: more side by side.",
              atCutOff,
              limit)),
      Check.stop(
          calc(
              "IF(OR({}=\"\";{}=0);FALSE();{}>{})",
              optional(leadSize),
              or(leadLength, 0),
              atCutOff,
              call(CableFunctions.AMPACITY, or(leadSize, "1.5 mm²"))),
          say("{} A when nearly empty are too many for a lead of {}.", atCutOff, leadSize)),
      Check.look(
          calc("(N({})=0)+({}=\"\")=1", or(leadLength, 0), optional(leadSize)),
          Formula.of("Fill in both lead and lead size, or neither.")),
      Check.look(
          calc("AND(N({})>0;{}>{})", pieces, sameDay, pieces),
          calc(
              "{}&\" of \"&{}&\" that day, Kit has \"&{}&\": charge between, or hire.\"",
              sameDay,
              pack,
              pieces))
    };
  }

  Tab tab() {
    return Tab.of(
            "Packs",
            "Lights that run on packs: light, day, the plate's volts, the pack and the times. Each row"
                + " says whether it fits, how long it lasts and how many packs the shift takes.")
        .with(table);
  }
}
