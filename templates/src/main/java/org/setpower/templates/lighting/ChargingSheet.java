package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.ChargeFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The packs of a day on their chargers until the next call. */
final class ChargingSheet {
  private static final String NONE = "999999"; // a moment that never comes

  private final LightingJobSheet plan;
  private final EquipmentSheet kit;
  private final LightingPacksSheet packs;

  final ColumnSpec charger;
  final ColumnSpec day;
  final ColumnSpec pack;
  final ColumnSpec pieces =
      ColumnSpec.input("To charge")
          .number(CellFormat.COUNT, 1, 9999)
          .width(15)
          .help("Packs of this kind. Blank: all that Packs takes on that day.");
  final ColumnSpec channels =
      ColumnSpec.input("Channels")
          .number(CellFormat.COUNT, 1, 1000)
          .required()
          .width(17)
          .help("Of all these chargers together: how many packs charge at the same time.");
  final ColumnSpec amps =
      ColumnSpec.input("A channel, all in use")
          .unit("A")
          .number(CellFormat.ONE, 0.1, 1000)
          .required()
          .width(16)
          .help("Label of the charger: what each gets when all are in use.");
  final ColumnSpec mainsFrom =
      ColumnSpec.input("Mains from")
          .format(CellFormat.TIME)
          .width(13)
          .help("Blank: mains all the time.");
  final ColumnSpec mainsTo =
      ColumnSpec.input("Mains to")
          .format(CellFormat.TIME)
          .width(13)
          .help("At or before Mains from means the next morning.");
  final ColumnSpec runner =
      ColumnSpec.input("There and back")
          .unit("min")
          .number(CellFormat.WHOLE, 0, 1440)
          .width(14)
          .help("The runner from set to the charger and back. Blank: it stands on set.");
  final ColumnSpec air;
  final ColumnSpec warming =
      ColumnSpec.input("Warming")
          .unit("h")
          .number(CellFormat.ONE, 0, 24)
          .width(17)
          .help(
              "Hours indoors until the whole battery is above 0 °C (32 °F). Measure; large "
                  + "ones take over an hour.");

  final ColumnSpec count = ColumnSpec.result("Packs").format(CellFormat.COUNT).width(14);
  final ColumnSpec hours =
      ColumnSpec.result("Charge time per battery").unit("h").format(CellFormat.TWO).width(14);
  final ColumnSpec nextCall = ColumnSpec.result("Next call").format(CellFormat.TIME).width(13);
  final ColumnSpec free =
      ColumnSpec.result("Hours to charge").unit("h").format(CellFormat.TWO).width(15);
  final ColumnSpec needed =
      ColumnSpec.result("Channels needed").format(CellFormat.COUNT).width(17).mayBeBlank();
  final ColumnSpec ready = ColumnSpec.result("Ready by next call?").width(15);
  final ColumnSpec watts = ColumnSpec.result("Mains").unit("W").format(CellFormat.WHOLE).width(14);
  final ColumnSpec energy =
      ColumnSpec.result("Mains energy").unit("Wh").format(CellFormat.WHOLE).width(14);

  private final ColumnSpec celsius = ColumnSpec.working("Air").unit("°C").format(CellFormat.ONE);
  private final ColumnSpec wrapAt = moment("Wrap");
  private final ColumnSpec callAt = moment("Call");
  private final ColumnSpec fromAt = moment("Mains from");
  private final ColumnSpec toAt = moment("Mains to");

  final TableSpec table = TableSpec.of("", 40);

  ChargingSheet(LightingJobSheet plan, EquipmentSheet kit, LightingPacksSheet packs) {
    this.plan = plan;
    this.kit = kit;
    this.packs = packs;
    charger =
        ColumnSpec.input("Charger")
            .options(kit.item)
            .orOther()
            .required()
            .width(40)
            .help(
                "As it stands on Kit and Loads, or a name of its own: Loads then takes its watts.");
    day =
        ColumnSpec.input("Packs of")
            .format(CellFormat.DAY)
            .options(plan.job.date)
            .required()
            .width(20)
            .help("The day whose packs it charges after wrap.");
    pack =
        ColumnSpec.input("Pack").options(kit.pack).required().width(18).help("The kind, from Kit.");
    air =
        ColumnSpec.input("Air there")
            .unit(plan.job.degrees())
            .number(CellFormat.WHOLE, -60, 140)
            .width(14)
            .help("At the charger while it charges. Blank: indoors, 20 °C (68 °F).");
  }

  private static ColumnSpec moment(String heading) {
    return ColumnSpec.working(heading).unit("day").format(CellFormat.TWO);
  }

  private Formula ofPack(ColumnSpec column) {
    return column.lookup(kit.pack, pack);
  }

  void declare(LoadsSheet loads) {
    JobSheet job = plan.job;
    count.formula(
        calc(
            "IF({}=\"\";SUMIFS({};{};{};{};{});{})",
            or(pieces, ""),
            packs.packs.all(),
            packs.feed.pack.all(),
            pack,
            packs.day.all(),
            day,
            or(pieces, "")));
    celsius.formula(calc("IF({}=\"\";20;{})", or(air, ""), job.celsius(or(air, 20))));
    hours.formula(
        call(
            ChargeFunctions.HOURS,
            ofPack(kit.ampHours),
            amps,
            calc("{}&\"\"", ofPack(kit.chemistry)),
            celsius,
            0,
            1,
            ofPack(kit.cells),
            ofPack(kit.milliohms)));
    wrapAt.formula(
        calc(
            "SUMPRODUCT(MAX(({}={})*({}<>\"\")*({}+{}+({}<={}))))",
            job.date.all(),
            day,
            job.wrap.all(),
            job.date.all(),
            job.wrap.all(),
            job.wrap.all(),
            job.call.all()));
    callAt.formula(
        calc(
            "SUMPRODUCT(MIN(IF(({}<>\"\")*({}+{}>{});{}+{};" + NONE + ")))",
            job.call.all(),
            job.date.all(),
            job.call.all(),
            wrapAt,
            job.date.all(),
            job.call.all()));
    nextCall
        .formula(
            calc(
                "IF(OR({}<1;{}=" + NONE + ");NA();ROUND(1440*MOD({};1);0)/1440)",
                wrapAt,
                callAt,
                callAt))
        .errorMessage("That day needs a wrap on Job, and a later day a call.");
    fromAt.formula(
        calc(
            "IF(COUNT({};{})<2;0;{}+{}+({}+{}+({}<={})<={}))",
            or(mainsFrom, ""),
            or(mainsTo, ""),
            day,
            or(mainsFrom, 0),
            day,
            or(mainsTo, 0),
            or(mainsTo, 0),
            or(mainsFrom, 0),
            wrapAt));
    toAt.formula(
        calc(
            "IF({}=0;" + NONE + ";INT({}+1/2880)+{}+({}<={}))",
            fromAt,
            fromAt,
            or(mainsTo, 0),
            or(mainsTo, 0),
            or(mainsFrom, 0)));
    free.formula(
        calc(
            "IF({}=\"\";\"\";MAX(0;24*(MIN({};{}-{}/2880)-MAX({};{}+{}/2880))-{}))",
            nextCall,
            toAt,
            callAt,
            or(runner, 0),
            fromAt,
            wrapAt,
            or(runner, 0),
            or(warming, 0)));
    needed.formula(call(ChargeFunctions.CHANNELS, count, free, hours));
    ready.formula(
        calc(
            "IF({}=0;\"yes\";IF({}<{};\"no\";IF({}>{};\"no\";\"yes\")))",
            count,
            free,
            hours,
            or(needed, 0),
            channels));
    Formula wall = call(ChargeFunctions.MAINS, ofPack(kit.wattHours));
    watts.formula(calc("{}*{}/{}", channels, wall, hours));
    energy.formula(calc("{}*{}", count, wall));
    table.columns(
        charger, day, pack, pieces, channels, amps, mainsFrom, mainsTo, runner, air, warming, count,
        hours, nextCall, free, needed, ready, watts, energy, celsius, wrapAt, callAt, fromAt, toAt);
    table.checks(checks(loads));
  }

  private ValidationRule[] checks(LoadsSheet loads) {
    Formula coldest = plan.job.coldest(day, 20);
    return new ValidationRule[] {
      ValidationRule.check(
          calc("({}=\"\")<>({}=\"\")", or(mainsFrom, ""), or(mainsTo, "")),
          Formula.of("Enter both Mains from and Mains to, or leave both blank.")),
      ValidationRule.stop(
          calc("AND({}<0;{}=\"\")", coldest, or(warming, "")),
          calc(
              "\"Packs come back at \"&ROUND({};0)&\" °C and must not charge below 0 °C: write at"
                  + " Warming for how long.\"",
              coldest)),
      ValidationRule.check(
          calc("{}=0", count), say("Packs has no {} on that day: nothing to charge here.", pack)),
      ValidationRule.stop(
          calc("{}<{}", free, hours),
          say(
              "{} h before the next call, one pack takes {} h: other packs, mains earlier, or hire"
                  + " a second set.",
              free,
              hours)),
      ValidationRule.stop(
          calc("{}>{}", needed, channels),
          say(
              "{} channels needed, there are {}: more chargers, or fewer packs.",
              needed,
              channels)),
      ValidationRule.check(
          calc(
              "AND(LEN({})>0;COUNTIFS({};{};{};{})=0)",
              charger,
              loads.item.all(),
              charger,
              loads.day.all(),
              day),
          say("{} is not on Loads that day: add it there, so that its watts count.", charger))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Charging",
            "The packs of a day on their chargers after wrap: ready by the next call or not. One"
                + " row for each kind of pack; share the channels of a charger out between its"
                + " rows.")
        .with(table);
  }
}
