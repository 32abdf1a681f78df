package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.LoadFunctions;
import org.setpower.registry.groups.PhaseFunctions;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The legs of each source at its busiest hour, and what a clamp meter reads. */
final class Legs {
  static final int SOURCES = 12;

  private final Supply supply;
  private final Loads loads;

  final Column source = Column.result("Source").wide(52);
  final Column at = Column.result("Busiest from").as(Format.TIME).wide(46);
  final Column day = Column.result("On").as(Format.DAY).wide(24);
  final Column system = Column.result("System").wide(18);
  final Column[] amps = legs("L");
  final Column neutral = Column.result("Neutral").unit("A").as(Format.ONE).wide(18);
  final Column unbalance = Column.result("Furthest from the mean").as(Format.SHARE).wide(20);
  final Column may = Column.result("We may take").unit("A a leg").as(Format.ONE).wide(18);
  final Column breaker = Column.result("Breaker").unit("A a leg").as(Format.WHOLE).wide(18);

  private final Column row = Column.working("Row of Supply");
  private final Column moment = Column.working("Row of Loads");
  final Column powerFactor = Column.working("Power factor then").unit("0–1").as(Format.TWO);
  private final Column harmonic = Column.working("Third harmonic").unit("0–1").as(Format.TWO);

  final Table table = Table.of("Sources at their busiest", SOURCES);

  final Field tolerance =
      Field.input("To look at from")
          .unit("A over the plan")
          .number(Format.ONE, 0.1, 1000)
          .is(5)
          .help("A leg that reads so much more than planned is worth finding out about.");

  final Column where;
  final Column date;
  final Column clock =
      Column.input("At").as(Format.TIME).needed().wide(18).help("When it was read, by the clock.");
  final Column[] read = {reading("L1"), reading("L2"), reading("L3")};
  final Column[] planned = legs("Plan L");
  final Column over = Column.result("Most over the plan").unit("A").as(Format.ONE).wide(20);
  final Column under = Column.result("Most under the plan").unit("A").as(Format.ONE).wide(20);
  final Table measured = Table.of("Measured", 40);

  Legs(PlanJob plan, Supply supply, Loads loads) {
    this.supply = supply;
    this.loads = loads;
    where =
        Column.input("Where")
            .oneOf(supply.name)
            .needed()
            .wide(52)
            .help("The row of Supply whose feed was clamped; what the house takes is not in it.");
    date =
        Column.input("Day")
            .as(Format.DAY)
            .oneOf(plan.job.date)
            .needed()
            .wide(46)
            .help("The date it was read on; after midnight the next one.");
    busiest();
    readings();
  }

  private static Column[] legs(String heading) {
    Column[] legs = new Column[3];
    for (int i = 0; i < legs.length; i++) {
      legs[i] = Column.result(heading + (i + 1)).unit("A").as(Format.ONE).wide(18).mayBeBlank();
    }
    return legs;
  }

  private static Column reading(String leg) {
    return Column.input(leg + " read")
        .unit("A")
        .number(Format.ONE, 0, 4000)
        .wide(18)
        .help("Clamp meter, true rms, around this leg alone. Blank: not read.");
  }

  private Formula ofSupply(Column column) {
    return calc("INDEX({};{})", column.all(), row);
  }

  private void busiest() {
    row.by(calc("MATCH({};{};0)", source.rowNumber(), supply.sourceNumber.all()));
    source.by(ofSupply(supply.name));
    moment.by(ofSupply(supply.busiestAt));
    Formula then = calc("INDEX({};{})", loads.moment.all(), moment);
    at.by(calc("ROUND(1440*MOD({};1);0)/1440", then)).mayBeBlank();
    day.by(calc("INT({}+1/2880)", then)).mayBeBlank();
    system.by(ofSupply(supply.system));
    for (int i = 0; i < amps.length; i++) {
      Formula va = calc("INDEX({};{};{})", loads.onLeg[i].all(), moment, row);
      Formula used =
          call(
              LoadFunctions.AMPS,
              va,
              calc("{}*{}", ofSupply(supply.toNeutral), ofSupply(supply.share)),
              "1PH");
      String has = i == 0 ? "TRUE()" : i == 1 ? "{}<>\"1PH\"" : "{}=\"3PH\"";
      amps[i].by(
          i == 0 ? calc("{}+0*{}", used, moment) : calc("IF(" + has + ";{};\"\")", system, used));
    }
    powerFactor.by(calc("{}/{}", then(loads.watts), then(loads.va)));
    // where nobody knows the third harmonic, all that lowers the power factor counts as one
    harmonic.by(calc("MIN(0.8;SQRT(MAX(0;1/{}^2-1)))", powerFactor));
    neutral
        .by(
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
        .by(
            calc(
                "IF({}=\"3PH\";{};\"\")",
                system,
                call(PhaseFunctions.UNBALANCE, amps[0], amps[1], amps[2])))
        .mayBeBlank();
    may.by(ofSupply(supply.may));
    breaker.by(ofSupply(supply.breaker));
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
        Check.stop(
            calc("{}>{}", neutral, breaker),
            say(
                "Neutral {} A, unprotected: use a larger neutral or move non-linear loads.",
                neutral)),
        Check.look(
            calc("ROUND({}-{};1)>0", neutral, highest),
            say("{} A in the neutral, more than in any leg: size it for that.", neutral)),
        Check.look(
            calc("{}>{}", highest, may),
            say("More than {} A on a leg: see Supply and Loads.", may)));
  }

  /** The sum of a column of Loads over what hangs on the source at its busiest. */
  private Formula then(Column figures) {
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
            supply.toNeutral.where(supply.name, where),
            supply.share.where(supply.name, where));
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
      planned[i].by(call(LoadFunctions.AMPS, va, feed, "1PH"));
    }
    over.by(calc("MAX({};{};{})+0*{}", difference(0), difference(1), difference(2), planned[0]));
    under.by(calc("0*{}-MIN({};{};{})", planned[0], difference(0), difference(1), difference(2)));
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
        Check.look(
            calc("COUNT({};{};{})=0", or(read[0], ""), or(read[1], ""), or(read[2], "")),
            Formula.of("Type what the meter read on each leg.")),
        Check.look(
            calc("ROUND({};2)>={}", over, tolerance),
            say(
                "{} A more on a leg than planned: something is plugged in that is not on Loads.",
                over)),
        Check.look(
            calc("ROUND({};2)>={}", under, tolerance),
            say("{} A less on a leg than planned: is something off, or on another leg?", under)));
  }

  private Formula difference(int leg) {
    return calc("IF({}=\"\";0;{}-{})", or(read[leg], ""), or(read[leg], ""), or(planned[leg], 0));
  }

  Tab tab() {
    return Tab.of(
            "Legs",
            "How evenly each source is loaded at its busiest hour; nothing to fill above. Clamp the"
                + " legs at lunch and type below what the meter reads.")
        .with(
            table,
            Lines.notes(
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
        .newPage(Fields.of("Clamp meter against plan", tolerance))
        .with(measured);
  }
}
