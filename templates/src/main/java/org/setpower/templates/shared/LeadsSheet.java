package org.setpower.templates.shared;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.CableFunctions;
import org.setpower.registry.groups.LoadFunctions;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** When you wonder: the same watts and lead at other volts, and over other gauges. */
public final class LeadsSheet {
  private static final String PLATE = "Watts of the device, a light at the level you use.";

  public final FieldSpec length;
  public final FieldSpec size =
      FieldSpec.input("Size of the lead").is("12 AWG").help("Printed on it: 12 AWG, 2.5 mm².");
  public final FieldSpec watts = watts("Power", 200);
  public final FieldSpec volts = volts("Volts of the feed", 24);
  public final FieldSpec otherWatts = watts("Power, to compare", 400);
  public final FieldSpec otherVolts = volts("Volts of the feed, to compare", 48);

  public final ColumnSpec rowVolts =
      ColumnSpec.input("Volts of the feed")
          .unit("V")
          .number(CellFormat.WHOLE, 1, 1000)
          .required()
          .width(52)
          .help("Nominal voltage to compare: 12, 24, 48.");
  public final ColumnSpec amps =
      ColumnSpec.result("Current at these volts").unit("A").format(CellFormat.ONE).width(38);
  public final ColumnSpec lost =
      ColumnSpec.result("Lost in the lead").unit("V").format(CellFormat.TWO).width(24);
  public final ColumnSpec heat =
      ColumnSpec.result("Heat").unit("W").format(CellFormat.ONE).width(20);
  public final ColumnSpec heldAmps =
      ColumnSpec.result("Current, constant power").unit("A").format(CellFormat.ONE).width(26);
  public final ColumnSpec heldEnd =
      ColumnSpec.result("At the device, constant power").unit("V").format(CellFormat.TWO).width(28);
  public final ColumnSpec heldHeat =
      ColumnSpec.result("Heat, constant power").unit("W").format(CellFormat.ONE).width(24);
  public final ColumnSpec smallest = ColumnSpec.result("Smallest size").width(26);
  public final TableSpec atOtherVolts = TableSpec.of("The same lead and watts at other volts", 6);

  public final ColumnSpec gauge =
      ColumnSpec.input("Size")
          .required()
          .width(52)
          .help("A size to compare: 16 AWG, 12 AWG, 2.5 mm².");
  public final ColumnSpec rating =
      ColumnSpec.result("Rating").unit("A").format(CellFormat.ONE).width(38);
  public final ColumnSpec firstAmps =
      ColumnSpec.result("Current, constant power").unit("A").format(CellFormat.ONE).width(24);
  public final ColumnSpec firstLost =
      ColumnSpec.result("Lost, constant power").unit("V").format(CellFormat.TWO).width(20);
  public final ColumnSpec firstShare =
      ColumnSpec.result("Lost, constant power").format(CellFormat.SHARE).width(24);
  public final ColumnSpec otherAmps =
      ColumnSpec.result("Current, to compare").unit("A").format(CellFormat.ONE).width(28);
  public final ColumnSpec otherLost =
      ColumnSpec.result("Lost, to compare").unit("V").format(CellFormat.TWO).width(20);
  public final ColumnSpec otherShare =
      ColumnSpec.result("Lost, to compare").format(CellFormat.SHARE).width(26);
  public final TableSpec overGauges = TableSpec.of("The same watts over other sizes", 12);

  private final JobSheet job;

  /** Leads of a job; {@code dropLimit} is the share of the volts that may be lost. */
  public LeadsSheet(JobSheet job, FieldSpec dropLimit) {
    this.job = job;
    length =
        FieldSpec.input("Length, one way")
            .unit(job.lengths())
            .number(CellFormat.ONE, 0, 10_000)
            .is(10)
            .help("From the pack to the device, along the stand.");
    Formula warm = job.conductorCelsius();
    Formula metres = job.metres(length);
    amps.formula(call(LoadFunctions.AMPS, watts, rowVolts, "DC"));
    lost.formula(call(CableFunctions.DROP, size, metres, amps, "DC", 1, warm));
    heat.formula(call(CableFunctions.HEAT, size, metres, amps, "DC", warm));
    heldAmps.formula(call(CableFunctions.LOADAMPS, size, metres, watts, rowVolts, "DC", 1, warm));
    heldEnd.formula(call(CableFunctions.LOADVOLTS, size, metres, watts, rowVolts, "DC", 1, warm));
    heldHeat.formula(call(CableFunctions.HEAT, size, metres, heldAmps, "DC", warm));
    smallest.formula(
        call(
            CableFunctions.GAUGE,
            metres,
            heldAmps,
            rowVolts,
            dropLimit,
            job.family,
            "DC",
            call(
                CableFunctions.BREAKER,
                heldAmps,
                calc("IF({}=\"mm²\";\"IEC\";\"NEC\")", job.family)),
            1,
            30,
            2,
            "flexible",
            "free"));
    atOtherVolts
        .columns(rowVolts, amps, lost, heat, heldAmps, heldEnd, heldHeat, smallest)
        .checks()
        .excludeFromIssues()
        .initialRows(LeadsSheet.class, "leads-volts.csv");
    rating.formula(call(CableFunctions.AMPACITY, gauge, "flexible", 30, 2, "free")).mayBeBlank();
    firstAmps.formula(held(CableFunctions.LOADAMPS, watts, volts));
    otherAmps.formula(held(CableFunctions.LOADAMPS, otherWatts, otherVolts));
    firstLost.formula(calc("{}-{}", volts, held(CableFunctions.LOADVOLTS, watts, volts)));
    firstShare.formula(calc("{}/{}", firstLost, volts));
    otherLost.formula(
        calc("{}-{}", otherVolts, held(CableFunctions.LOADVOLTS, otherWatts, otherVolts)));
    otherShare.formula(calc("{}/{}", otherLost, otherVolts));
    overGauges
        .columns(gauge, rating, firstAmps, firstLost, firstShare, otherAmps, otherLost, otherShare)
        .checks(
            ValidationRule.check(
                calc("MAX({};{})>{}", firstAmps, otherAmps, rating),
                say("Rated {} A: too small for at least one load.", rating)))
        .excludeFromIssues()
        .initialRows(LeadsSheet.class, "leads-sizes.csv");
  }

  private Formula held(FunctionSpec function, FieldSpec load, FieldSpec feed) {
    return call(function, gauge, job.metres(length), load, feed, "DC", 1, job.conductorCelsius());
  }

  private static FieldSpec watts(String heading, double start) {
    return FieldSpec.input(heading)
        .unit("W")
        .number(CellFormat.WHOLE, 0, 100_000)
        .is(start)
        .help(PLATE);
  }

  private static FieldSpec volts(String heading, double start) {
    return FieldSpec.input(heading)
        .unit("V")
        .number(CellFormat.WHOLE, 1, 1000)
        .is(start)
        .help("Nominal voltage of plate or battery: 12, 24, 48.");
  }

  /** The tab to wonder on. */
  public SheetSpec tab(String name) {
    return SheetSpec.of(
            name,
            "Compares cable loss for the same power at 12, 24 and 48 V and across cable"
                + " sizes. Constant power: current rises as voltage falls.")
        .with(
            FieldBlock.of("The lead", length, size, watts, volts, otherWatts, otherVolts),
            atOtherVolts,
            BarChart.bars(
                "Current and heat at other volts, constant power",
                11,
                "A, W",
                rowVolts,
                heldAmps,
                heldHeat))
        .newPage(overGauges);
  }
}
