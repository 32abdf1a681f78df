package org.setpower.templates.lighting;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.call;

import org.setpower.sheet.CableFunctions;
import org.setpower.sheet.LoadFunctions;
import org.setpower.templates.Column;
import org.setpower.templates.Field;
import org.setpower.templates.Fields;
import org.setpower.templates.Format;
import org.setpower.templates.Formula;
import org.setpower.templates.Tab;
import org.setpower.templates.Table;

/** When you wonder: the same watts and lead at other volts, and over other gauges. */
final class Leads {
  private static final String PLATE = "Watts of the light at the level you use.";

  final Field length;
  final Field size =
      Field.input("Size of the lead").is("12 AWG").help("Printed on it: 12 AWG, 2.5 mm².");
  final Field watts = watts("Power", 200);
  final Field volts = volts("Volts of the feed", 24);
  final Field otherWatts = watts("Power, to compare", 400);
  final Field otherVolts = volts("Volts of the feed, to compare", 48);

  final Column rowVolts =
      Column.input("Volts of the feed")
          .unit("V")
          .number(Format.WHOLE, 1, 1000)
          .needed()
          .wide(52)
          .help("A volt class to compare: 12, 24, 48.");
  final Column amps = Column.result("Current at these volts").unit("A").as(Format.ONE).wide(38);
  final Column lost = Column.result("Lost in the lead").unit("V").as(Format.TWO).wide(24);
  final Column heat = Column.result("Heat").unit("W").as(Format.ONE).wide(20);
  final Column heldAmps = Column.result("Current, watts held").unit("A").as(Format.ONE).wide(26);
  final Column heldEnd =
      Column.result("At the light, watts held").unit("V").as(Format.TWO).wide(28);
  final Column heldHeat = Column.result("Heat, watts held").unit("W").as(Format.ONE).wide(24);
  final Column smallest = Column.result("Smallest size").wide(26);
  final Table atOtherVolts = Table.of("The same lead and watts at other volts", 6);

  final Column gauge =
      Column.input("Size").needed().wide(52).help("A size to compare: 16 AWG, 12 AWG, 2.5 mm².");
  final Column firstLost = Column.result("Lost, watts held").unit("V").as(Format.TWO).wide(38);
  final Column firstShare = Column.result("Lost, watts held").as(Format.SHARE).wide(24);
  final Column otherLost = Column.result("Lost, to compare").unit("V").as(Format.TWO).wide(20);
  final Column otherShare = Column.result("Lost, to compare").as(Format.SHARE).wide(26);
  final Table overGauges = Table.of("The same watts over other sizes", 12);

  private final PlanJob plan;

  Leads(PlanJob plan) {
    this.plan = plan;
    length =
        Field.input("Length, one way")
            .unit(plan.job.lengths())
            .number(Format.ONE, 0, 10_000)
            .is(10)
            .help("From the pack to the light, along the stand.");
    Formula warm = plan.conductorCelsius();
    Formula metres = plan.job.metres(length);
    amps.by(call(LoadFunctions.AMPS, watts, rowVolts, "DC"));
    lost.by(call(CableFunctions.DROP, size, metres, amps, "DC", 1, warm));
    heat.by(call(CableFunctions.HEAT, size, metres, amps, "DC", warm));
    heldAmps.by(call(CableFunctions.ENDAMPS, size, metres, watts, rowVolts, "DC", 1, warm));
    heldEnd.by(call(CableFunctions.ENDVOLTS, size, metres, watts, rowVolts, "DC", 1, warm));
    heldHeat.by(call(CableFunctions.HEAT, size, metres, heldAmps, "DC", warm));
    smallest.by(
        call(CableFunctions.GAUGE, metres, heldAmps, rowVolts, plan.houseLimit, plan.family, "DC"));
    atOtherVolts
        .columns(rowVolts, amps, lost, heat, heldAmps, heldEnd, heldHeat, smallest)
        .checks()
        .starts(Leads.class, "leads-volts.csv");
    firstLost.by(calc("{}-{}", volts, held(watts, volts)));
    firstShare.by(calc("{}/{}", firstLost, volts));
    otherLost.by(calc("{}-{}", otherVolts, held(otherWatts, otherVolts)));
    otherShare.by(calc("{}/{}", otherLost, otherVolts));
    overGauges
        .columns(gauge, firstLost, firstShare, otherLost, otherShare)
        .checks()
        .starts(Leads.class, "leads-sizes.csv");
  }

  private Formula held(Field load, Field feed) {
    return call(
        CableFunctions.ENDVOLTS,
        gauge,
        plan.job.metres(length),
        load,
        feed,
        "DC",
        1,
        plan.conductorCelsius());
  }

  private static Field watts(String heading, double start) {
    return Field.input(heading).unit("W").number(Format.WHOLE, 0, 100_000).is(start).help(PLATE);
  }

  private static Field volts(String heading, double start) {
    return Field.input(heading)
        .unit("V")
        .number(Format.WHOLE, 1, 1000)
        .is(start)
        .help("The volt class of plate or pack: 12, 24, 48.");
  }

  Tab tab() {
    return Tab.of(
            "Leads",
            "When you wonder which volts or which wire: the same watts at 12, 24 and 48 V, and over"
                + " thinner and thicker leads. Watts held: a light draws more current when its volts"
                + " sag.")
        .with(
            Fields.of("The lead", length, size, watts, volts, otherWatts, otherVolts),
            atOtherVolts,
            overGauges);
  }
}
