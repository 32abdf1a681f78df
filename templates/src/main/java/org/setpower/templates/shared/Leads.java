package org.setpower.templates.shared;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.CableFunctions;
import org.setpower.registry.groups.LoadFunctions;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** When you wonder: the same watts and lead at other volts, and over other gauges. */
public final class Leads {
  private static final String PLATE = "Watts of the device, a light at the level you use.";

  public final Field length;
  public final Field size =
      Field.input("Size of the lead").is("12 AWG").help("Printed on it: 12 AWG, 2.5 mm².");
  public final Field watts = watts("Power", 200);
  public final Field volts = volts("Volts of the feed", 24);
  public final Field otherWatts = watts("Power, to compare", 400);
  public final Field otherVolts = volts("Volts of the feed, to compare", 48);

  public final Column rowVolts =
      Column.input("Volts of the feed")
          .unit("V")
          .number(Format.WHOLE, 1, 1000)
          .needed()
          .wide(52)
          .help("A volt class to compare: 12, 24, 48.");
  public final Column amps =
      Column.result("Current at these volts").unit("A").as(Format.ONE).wide(38);
  public final Column lost = Column.result("Lost in the lead").unit("V").as(Format.TWO).wide(24);
  public final Column heat = Column.result("Heat").unit("W").as(Format.ONE).wide(20);
  public final Column heldAmps =
      Column.result("Current, watts held").unit("A").as(Format.ONE).wide(26);
  public final Column heldEnd =
      Column.result("At the device, watts held").unit("V").as(Format.TWO).wide(28);
  public final Column heldHeat =
      Column.result("Heat, watts held").unit("W").as(Format.ONE).wide(24);
  public final Column smallest = Column.result("Smallest size").wide(26);
  public final Table atOtherVolts = Table.of("The same lead and watts at other volts", 6);

  public final Column gauge =
      Column.input("Size").needed().wide(52).help("A size to compare: 16 AWG, 12 AWG, 2.5 mm².");
  public final Column rating = Column.result("Rating").unit("A").as(Format.ONE).wide(38);
  public final Column firstAmps =
      Column.result("Current, watts held").unit("A").as(Format.ONE).wide(24);
  public final Column firstLost =
      Column.result("Lost, watts held").unit("V").as(Format.TWO).wide(20);
  public final Column firstShare = Column.result("Lost, watts held").as(Format.SHARE).wide(24);
  public final Column otherAmps =
      Column.result("Current, to compare").unit("A").as(Format.ONE).wide(28);
  public final Column otherLost =
      Column.result("Lost, to compare").unit("V").as(Format.TWO).wide(20);
  public final Column otherShare = Column.result("Lost, to compare").as(Format.SHARE).wide(26);
  public final Table overGauges = Table.of("The same watts over other sizes", 12);

  private final Job job;

  /** Leads of a job; {@code dropLimit} is the share of the volts that may be lost. */
  public Leads(Job job, Field dropLimit) {
    this.job = job;
    length =
        Field.input("Length, one way")
            .unit(job.lengths())
            .number(Format.ONE, 0, 10_000)
            .is(10)
            .help("From the pack to the device, along the stand.");
    Formula warm = job.conductorCelsius();
    Formula metres = job.metres(length);
    amps.by(call(LoadFunctions.AMPS, watts, rowVolts, "DC"));
    lost.by(call(CableFunctions.DROP, size, metres, amps, "DC", 1, warm));
    heat.by(call(CableFunctions.HEAT, size, metres, amps, "DC", warm));
    heldAmps.by(call(CableFunctions.ENDAMPS, size, metres, watts, rowVolts, "DC", 1, warm));
    heldEnd.by(call(CableFunctions.ENDVOLTS, size, metres, watts, rowVolts, "DC", 1, warm));
    heldHeat.by(call(CableFunctions.HEAT, size, metres, heldAmps, "DC", warm));
    smallest.by(
        call(CableFunctions.GAUGE, metres, heldAmps, rowVolts, dropLimit, job.family, "DC"));
    atOtherVolts
        .columns(rowVolts, amps, lost, heat, heldAmps, heldEnd, heldHeat, smallest)
        .checks()
        .apart()
        .starts(Leads.class, "leads-volts.csv");
    rating.by(call(CableFunctions.AMPACITY, gauge)).mayBeBlank();
    firstAmps.by(held(CableFunctions.ENDAMPS, watts, volts));
    otherAmps.by(held(CableFunctions.ENDAMPS, otherWatts, otherVolts));
    firstLost.by(calc("{}-{}", volts, held(CableFunctions.ENDVOLTS, watts, volts)));
    firstShare.by(calc("{}/{}", firstLost, volts));
    otherLost.by(calc("{}-{}", otherVolts, held(CableFunctions.ENDVOLTS, otherWatts, otherVolts)));
    otherShare.by(calc("{}/{}", otherLost, otherVolts));
    overGauges
        .columns(gauge, rating, firstAmps, firstLost, firstShare, otherAmps, otherLost, otherShare)
        .checks(
            Check.look(
                calc("MAX({};{})>{}", firstAmps, otherAmps, rating),
                say("Bears {} A: too thin for one of the two.", rating)))
        .apart()
        .starts(Leads.class, "leads-sizes.csv");
  }

  private Formula held(FunctionSpec function, Field load, Field feed) {
    return call(function, gauge, job.metres(length), load, feed, "DC", 1, job.conductorCelsius());
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

  /** The tab to wonder on. */
  public Tab tab(String name) {
    return Tab.of(
            name,
            "When you wonder which volts or which wire: the same watts at 12, 24 and 48 V, and over"
                + " thinner and thicker leads. Watts held: a device draws more current when its"
                + " volts sag.")
        .with(
            Fields.of("The lead", length, size, watts, volts, otherWatts, otherVolts),
            atOtherVolts,
            BarChart.bars(
                "Current and heat at other volts, watts held",
                11,
                "A, W",
                rowVolts,
                heldAmps,
                heldHeat))
        .newPage(overGauges);
  }
}
