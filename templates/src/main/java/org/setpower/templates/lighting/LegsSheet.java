package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.LoadFunctions;
import org.setpower.registry.groups.PhaseFunctions;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.ValidationRule;

/** The legs of each source at its busiest hour, and what a clamp meter reads. */
final class LegsSheet {
  static final int SOURCES = 12;

  private final SupplySheet supply;
  private final LoadsSheet loads;

  final ColumnSpec source = ColumnSpec.result("Source").width(52);
  final ColumnSpec at = ColumnSpec.result("Peak from").format(CellFormat.TIME).width(46);
  final ColumnSpec day = ColumnSpec.result("On").format(CellFormat.DAY).width(24);
  final ColumnSpec system = ColumnSpec.result("System").width(18);
  final ColumnSpec[] amps = legs("L");
  final ColumnSpec neutral =
      ColumnSpec.result("Neutral").unit("A").format(CellFormat.ONE).width(18);
  final ColumnSpec unbalance = ColumnSpec.result("Imbalance").format(CellFormat.SHARE).width(20);
  final ColumnSpec may =
      ColumnSpec.result("Available").unit("A a leg").format(CellFormat.ONE).width(18);
  final ColumnSpec breaker =
      ColumnSpec.result("Breaker").unit("A a leg").format(CellFormat.WHOLE).width(18);

  private final ColumnSpec row = ColumnSpec.working("Row of Supply");
  private final ColumnSpec moment = ColumnSpec.working("Row of Loads");
  final ColumnSpec powerFactor =
      ColumnSpec.working("Power factor then").unit("0–1").format(CellFormat.TWO);
  private final ColumnSpec harmonic =
      ColumnSpec.working("Third harmonic").unit("0–1").format(CellFormat.TWO);

  final TableSpec table = TableSpec.of("Sources at peak load", SOURCES);

  final FieldSpec tolerance =
      FieldSpec.input("Alarm above")
          .unit("A over the plan")
          .number(CellFormat.ONE, 0.1, 1000)
          .is(5)
          .help("Difference above plan that raises a check.");

  final ColumnSpec where;
  final ColumnSpec date;
  final ColumnSpec clock =
      ColumnSpec.input("At")
          .format(CellFormat.TIME)
          .required()
          .width(18)
          .help("When it was read, by the clock.");
  final ColumnSpec[] read = {reading("L1"), reading("L2"), reading("L3")};
  final ColumnSpec[] planned = legs("Plan L");
  final ColumnSpec over =
      ColumnSpec.result("Max. above plan").unit("A").format(CellFormat.ONE).width(20);
  final ColumnSpec under =
      ColumnSpec.result("Most under the plan").unit("A").format(CellFormat.ONE).width(20);
  final TableSpec measured = TableSpec.of("Measured", 40);

  LegsSheet(LightingJobSheet plan, SupplySheet supply, LoadsSheet loads) {
    this.supply = supply;
    this.loads = loads;
    where =
        ColumnSpec.input("Where")
            .options(supply.name)
            .required()
            .width(52)
            .help("The row of Supply whose feed was clamped; what the house takes is not in it.");
    date =
        ColumnSpec.input("Day")
            .format(CellFormat.DAY)
            .options(plan.job.date)
            .required()
            .width(46)
            .help("The date it was read on; after midnight the next one.");
    busiest();
    readings();
  }

  private static ColumnSpec[] legs(String heading) {
    ColumnSpec[] legs = new ColumnSpec[3];
    for (int i = 0; i < legs.length; i++) {
      legs[i] =
          ColumnSpec.result(heading + (i + 1))
              .unit("A")
              .format(CellFormat.ONE)
              .width(18)
              .mayBeBlank();
    }
    return legs;
  }

  private static ColumnSpec reading(String leg) {
    return ColumnSpec.input(leg + " read")
        .unit("A")
        .number(CellFormat.ONE, 0, 4000)
        .width(18)
        .help("Clamp meter, true rms, around this leg alone. Blank: not read.");
  }

  private Formula ofSupply(ColumnSpec column) {
    return calc("INDEX({};{})", column.all(), row);
  }

  private void busiest() {
    row.formula(calc("MATCH({};{};0)", source.rowNumber(), supply.sourceNumber.all()));
    source.formula(ofSupply(supply.name));
    moment.formula(ofSupply(supply.busiestAt));
    Formula then = calc("INDEX({};{})", loads.moment.all(), moment);
    at.formula(calc("ROUND(1440*MOD({};1);0)/1440", then)).mayBeBlank();
    day.formula(calc("INT({}+1/2880)", then)).mayBeBlank();
    system.formula(ofSupply(supply.system));
    for (int i = 0; i < amps.length; i++) {
      Formula va = calc("INDEX({};{};{})", loads.onLeg[i].all(), moment, row);
      Formula used =
          call(
              LoadFunctions.AMPS,
              va,
              calc("{}*{}", ofSupply(supply.toNeutral), ofSupply(supply.share)),
              "1PH",
              1);
      String has = i == 0 ? "TRUE()" : i == 1 ? "{}<>\"1PH\"" : "{}=\"3PH\"";
      amps[i].formula(
          i == 0 ? calc("{}+0*{}", used, moment) : calc("IF(" + has + ";{};\"\")", system, used));
    }
    powerFactor.formula(calc("{}/{}", then(loads.watts), then(loads.va)));
    // where nobody knows the third harmonic, all that lowers the power factor counts as one
    harmonic.formula(calc("MIN(0.8;SQRT(MAX(0;1/{}^2-1)))", powerFactor));
    neutral
        .formula(
            calc(
                "IF({}=\"1PH\";{};{})",
                system,
                amps[0],
                call(
                    PhaseFunctions.NEUTRAL,
                    amps[0],
                    amps[1],
                    calc("N({})", or(amps[2], 0)),
                    1,
                    1,
                    1,
                    harmonic,
                    system)))
        .mayBeBlank();
    unbalance
        .formula(
            calc(
                "IF({}=\"3PH\";{};\"\")",
                system,
                call(PhaseFunctions.UNBALANCE, amps[0], amps[1], amps[2])))
        .mayBeBlank();
    may.formula(ofSupply(supply.may));
    breaker.formula(ofSupply(supply.breaker));
    table.columns(
        source,
        at,
        day,
        system,
        amps[0],
        amps[1],
        amps[2],
        neutral,
        unbalance,
        may,
        breaker,
        row,
        moment,
        powerFactor,
        harmonic);
    Formula highest = calc("MAX({};{};{})", amps[0], or(amps[1], 0), or(amps[2], 0));
    table.checks(
        ValidationRule.stop(
            calc("{}>{}", neutral, breaker),
            say(
                "Neutral {} A, unprotected: use a larger neutral or move non-linear loads.",
                neutral)),
        ValidationRule.check(
            calc("ROUND({}-{};1)>0", neutral, highest),
            say("{} A in the neutral, more than in any leg: size it for that.", neutral)),
        ValidationRule.check(
            calc("{}>{}", highest, may),
            say("More than {} A on a leg: see Supply and Loads.", may)));
  }

  /** The sum of a column of Loads over what hangs on the source at its busiest. */
  private Formula then(ColumnSpec figures) {
    Formula then = calc("INDEX({};{})", loads.moment.all(), moment);
    return calc(
        "SUMIFS({};{};{};{};\"<=\"&{};{};\">\"&{})",
        figures.all(),
        loads.source.all(),
        source,
        loads.onAt.all(),
        then,
        loads.offAt.all(),
        then);
  }

  private void readings() {
    Formula when = calc("({}+{}+1/86400)", date, clock);
    Formula feed =
        calc(
            "{}*{}",
            supply.toNeutral.lookup(supply.name, where),
            supply.share.lookup(supply.name, where));
    for (int i = 0; i < planned.length; i++) {
      Formula va =
          calc(
              "SUMPRODUCT(({}<={})*({}>{})*ISNUMBER(SEARCH(\"|\"&{}&\"|\";{}))*{})",
              loads.onAt.all(),
              when,
              loads.offAt.all(),
              when,
              where,
              loads.path.all(),
              loads.vaOnLeg[i].all());
      planned[i].formula(call(LoadFunctions.AMPS, va, feed, "1PH", 1));
    }
    over.formula(
        calc("MAX({};{};{})+0*{}", difference(0), difference(1), difference(2), planned[0]));
    under.formula(
        calc("0*{}-MIN({};{};{})", planned[0], difference(0), difference(1), difference(2)));
    measured.columns(
        where,
        date,
        clock,
        read[0],
        read[1],
        read[2],
        planned[0],
        planned[1],
        planned[2],
        over,
        under);
    measured.checks(
        ValidationRule.check(
            calc("COUNT({};{};{})=0", or(read[0], ""), or(read[1], ""), or(read[2], "")),
            Formula.of("Type what the meter read on each leg.")),
        ValidationRule.check(
            calc("ROUND({};2)>={}", over, tolerance),
            say("{} A above plan on one leg: unlisted load?", over)),
        ValidationRule.check(
            calc("ROUND({};2)>={}", under, tolerance),
            say("{} A less on a leg than planned: is something off, or on another leg?", under)));
  }

  private Formula difference(int leg) {
    return calc("IF({}=\"\";0;{}-{})", or(read[leg], ""), or(read[leg], ""), or(planned[leg], 0));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Legs",
            "Load balance of each source at peak. Enter clamp-meter readings in the"
                + " second table.")
        .with(
            table,
            TextBlock.notes(
                "",
                calc(
                    "IF(MAX({})>"
                        + SOURCES
                        + ";\"Supply has \"&MAX({})&\" sources: here are the first "
                        + SOURCES
                        + ".\";\"\")",
                    supply.sourceNumber.all(),
                    supply.sourceNumber.all())),
            BarChart.bars("Load by leg", 14, "A", source, amps[0], amps[1], amps[2]).ofLegs())
        .newPage(FieldBlock.of("Measured vs. planned", tolerance))
        .with(measured);
  }
}
