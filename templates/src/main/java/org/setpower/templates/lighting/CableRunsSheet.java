package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.CableFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The cables, from the source outwards, so that each begins at a row above. */
final class CableRunsSheet {
  static final int ROOM = 100;

  /** The sizes offered; others may be typed. */
  static final String[] SIZES = {
    "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²", "25 mm²", "35 mm²", "50 mm²",
    "70 mm²", "95 mm²", "120 mm²", "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG",
    "6 AWG", "4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG"
  };

  private final LightingJobSheet plan;
  private final SupplySheet supply;
  private LoadsSheet loads;

  final ColumnSpec to =
      ColumnSpec.input("To")
          .required()
          .width(30)
          .help("The box of Supply it feeds, or a name for its far end, such as: fresnel drum.");
  final ColumnSpec from;
  final ColumnSpec length;
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .width(21)
          .help("Individual lengths, e.g. 25+25 (packing list only).");
  final ColumnSpec size =
      ColumnSpec.input("Size")
          .options(SIZES)
          .orOther()
          .required()
          .width(17)
          .help("Printed on the sheath: 5G16 is 16 mm², SOOW 12/3 is 12 AWG.");
  final ColumnSpec kind =
      ColumnSpec.input("Cable kind")
          .options("flexible", "cord", "rubber", "feeder", "building")
          .width(17)
          .help(
              "rubber: heavy-duty multicore. cord: light-duty. feeder: single-core,"
                  + " spaced. Blank: the lower of cord and rubber.");
  final ColumnSpec laid =
      ColumnSpec.input("Laid")
          .options(
              "free",
              "bunched 2",
              "bunched 3",
              "bunched 4",
              "bunched 6",
              "bunched 9",
              "drum 1 layer",
              "drum 2 layers",
              "drum 3 layers",
              "drum 4 layers",
              "radial drum",
              "radial drum ventilated")
          .width(24)
          .help("Installation method. On a drum the rating is far lower. Blank: free in air.");
  final ColumnSpec parallel =
      ColumnSpec.input("Side by side")
          .number(CellFormat.COUNT, 1, 12)
          .width(12)
          .help("Equal cables with the same ends that share the current. Blank: 1.");

  final ColumnSpec amps =
      ColumnSpec.result("At the busiest").unit("A").format(CellFormat.ONE).width(15);
  final ColumnSpec rating = ColumnSpec.result("Rating").unit("A").format(CellFormat.ONE).width(14);
  final ColumnSpec ahead =
      ColumnSpec.result("Upstream breaker").unit("A").format(CellFormat.WHOLE).width(15);
  final ColumnSpec drop =
      ColumnSpec.result("Drop, this run").unit("V").format(CellFormat.ONE).width(18);
  final ColumnSpec dropSince =
      ColumnSpec.result("Drop from source").unit("V").format(CellFormat.ONE).width(15);
  final ColumnSpec shareLost =
      ColumnSpec.result("Drop from source").format(CellFormat.SHARE).width(15);
  final ColumnSpec limit = ColumnSpec.result("Limit").format(CellFormat.SHARE).width(12);
  final ColumnSpec end =
      ColumnSpec.result("Voltage at end").unit("V").format(CellFormat.ONE).width(15);
  final ColumnSpec reckoned = ColumnSpec.result("Calculated as").width(17);
  final ColumnSpec smallest = ColumnSpec.result("Smallest size").width(17).mayBeBlank();
  final ColumnSpec longest =
      ColumnSpec.result("Longest run").format(CellFormat.WHOLE).width(15).mayBeBlank();
  final ColumnSpec heat =
      ColumnSpec.result("Heat in the cable").unit("W").format(CellFormat.WHOLE).width(15);
  final ColumnSpec trips = ColumnSpec.result("Instant trip on earth fault").width(18).mayBeBlank();

  final ColumnSpec box = ColumnSpec.working("Box");
  final ColumnSpec path = ColumnSpec.working("Path");
  final ColumnSpec source = ColumnSpec.working("Source");
  final ColumnSpec system = ColumnSpec.working("System");
  final ColumnSpec metres = ColumnSpec.working("Metres").unit("m").format(CellFormat.ONE);
  final ColumnSpec va =
      ColumnSpec.working("VA of the busiest leg").unit("VA").format(CellFormat.WHOLE);
  final ColumnSpec watts = ColumnSpec.working("Carried").unit("VA").format(CellFormat.WHOLE);
  final ColumnSpec nominal = ColumnSpec.working("Nominal volts").unit("V").format(CellFormat.ONE);
  final ColumnSpec before = ColumnSpec.working("Share of the volts at its start");
  final ColumnSpec shareLeft = ColumnSpec.working("Share of the volts at its end");
  final ColumnSpec loop = ColumnSpec.working("Loop at its end").unit("Ω").format(CellFormat.TWO);

  final TableSpec table = TableSpec.of("", ROOM);

  CableRunsSheet(LightingJobSheet plan, SupplySheet supply) {
    this.plan = plan;
    this.supply = supply;
    from =
        ColumnSpec.input("From")
            .options(supply.name)
            .orOther()
            .required()
            .width(26)
            .help("The row of Supply, or the end of a run above, where it begins.");
    length =
        ColumnSpec.input("Length")
            .unit(plan.job.lengths())
            .number(CellFormat.ONE, 0.1, 20_000)
            .required()
            .width(14)
            .help("One way, all pieces together, along the ground and up the stand.");
    longest.unit(plan.job.lengths());
  }

  void declare(LoadsSheet all) {
    loads = all;
    metres.formula(plan.job.metres(length));
    box.formula(bySupply(from, above(box)));
    source.formula(bySupply(supply.source.lookup(supply.name, from), above(source)));
    path.formula(
        calc(
            "IF({};{};{}&{}&\"|\")",
            isBox(),
            ofTo(supply.path),
            bySupply(supply.path.lookup(supply.name, from), above(path)),
            to));
    system.formula(
        calc(
            "IF({};{};IF({};\"3PH\";IF({};\"2 lines\";\"1PH\")))",
            isBox(),
            ofTo(supply.system),
            feeds(3),
            feeds(2)));
    va.formula(
        calc(
            "IF({};{};MAX(INDEX({};0;{})))",
            isBox(),
            ofTo(supply.busiest),
            loads.onRun.all(),
            to.rowNumber()));
    reckoned.formula(
        calc(
            "IF({}=\"3PH\";IF({};\"3PH\";\"1PH\");IF({}=\"2 lines\";\"line to line\";\"1PH\"))",
            system,
            isEven(),
            system));
    Formula toNeutral = supply.toNeutral.lookup(supply.name, box);
    nominal.formula(
        calc("IF({}=\"1PH\";{};{})", reckoned, toNeutral, supply.nominal.lookup(supply.name, box)));
    watts.formula(
        calc(
            "IF({}=\"3PH\";3*{};IF({}=\"line to line\";{}*{}/{};{}))",
            reckoned,
            va,
            reckoned,
            va,
            nominal,
            toNeutral,
            va));
    before.formula(shareHandedOn());
    cable();
    limit.formula(
        calc(
            "IF({}=\"generator\";{};{})",
            supply.kind.lookup(supply.name, source),
            plan.ownLimit,
            plan.houseLimit));
    ahead.formula(
        bySupply(
            calc(
                "IF({}=\"\";{};{})",
                supply.outlet.lookup(supply.name, from),
                supply.breaker.lookup(supply.name, from),
                supply.outlet.lookup(supply.name, from)),
            above(ahead)));
    loop.formula(call(CableFunctions.LOOP, size, metres, loopHandedOn(), size));
    trips.formula(
        calc("IF({}=1;\"yes\";\"no\")", call(CableFunctions.TRIPS, loop, ahead, "C", toNeutral)));
    table.columns(
        to, from, length, pieces, size, kind, laid, parallel, amps, rating, ahead, drop, dropSince,
        shareLost, limit, end, reckoned, smallest, longest, heat, trips, box, path, source, system,
        metres, va, watts, nominal, before, shareLeft, loop);
    table.checks(checks());
  }

  /** What the cable does, with our functions. */
  private void cable() {
    Formula start = calc("{}*{}", nominal, before);
    Formula phases = calc("IF({}=\"3PH\";\"3PH\";\"1PH\")", reckoned);
    Formula warm = plan.conductorCelsius();
    Formula side = or(parallel, 1);
    amps.formula(
        loaded(
            0, call(CableFunctions.LOADAMPS, size, metres, watts, start, phases, 1, warm, side)));
    end.formula(
        loaded(
            start,
            call(CableFunctions.LOADVOLTS, size, metres, watts, start, phases, 1, warm, side)));
    drop.formula(calc("{}*{}-{}", nominal, before, end));
    dropSince.formula(calc("{}-{}", nominal, end));
    shareLeft.formula(calc("{}/{}", end, nominal));
    shareLost.formula(calc("1-{}", shareLeft));
    heat.formula(loaded(0, call(CableFunctions.HEAT, size, metres, amps, phases, warm, side)));
    Formula conductors = calc("IF({}=\"3PH\";3;2)", system);
    Formula air = plan.ambientCelsius();
    Formula method = or(kind, "flexible");
    Formula lies = or(laid, "free");
    rating.formula(call(CableFunctions.AMPACITY, size, method, air, conductors, lies));
    Formula left = calc("{}-1+{}", limit, before);
    Formula current = calc("MAX({};0.000001)", amps);
    smallest.formula(
        call(
            CableFunctions.GAUGE,
            metres,
            current,
            nominal,
            left,
            plan.family,
            phases,
            ahead,
            1,
            air,
            conductors,
            method,
            lies));
    longest
        .formula(
            loaded(
                "",
                plan.job.fromMetres(
                    call(
                        CableFunctions.REACH,
                        size,
                        amps,
                        nominal,
                        left,
                        phases,
                        1,
                        warm,
                        air,
                        conductors,
                        method,
                        lies))))
        .mayBeBlank();
  }

  /** A figure of a run that carries something, or what holds for one that carries nothing. */
  private Formula loaded(Object nothing, Formula figure) {
    return calc("IF({}=0;{};{})", watts, nothing, figure);
  }

  private ValidationRule[] checks() {
    return new ValidationRule[] {
      ValidationRule.wrong(
          calc("COUNTIF({};{})>1", to.all(), to),
          say("{} is the end of two runs: side by side goes into its own column.", to)),
      ValidationRule.wrong(
          calc("AND(LEN({})>0;{}=\"\")", from, or(source, "")),
          say("{} is neither on Supply nor the end of a run above: write that first.", from)),
      ValidationRule.wrong(
          calc("AND(LEN({})>0;{}=\"\")", from, or(before, "")),
          say("{} is not settled: its own run must be in a row above, without a stop.", from)),
      ValidationRule.stop(
          calc("{}<{}", rating, ahead),
          say(
              "Not protected by the {} A upstream breaker: {} is rated {} A. Use a smaller breaker,"
                  + " unwind the drum or use a larger cable.",
              ahead,
              size,
              rating)),
      ValidationRule.stop(
          calc("{}>{}", amps, rating), say("Peak {} A exceeds cable rating {} A.", amps, rating)),
      ValidationRule.stop(
          calc("{}>{}", amps, ahead),
          say("{} A at the busiest: the {} A upstream breaker trips.", amps, ahead)),
      ValidationRule.stop(
          calc(
              "AND({}>1;ISERROR(SEARCH(\"mm\";{}));{}<{})",
              parallel,
              size,
              call(CableFunctions.AREA, size),
              call(CableFunctions.AREA, "1/0")),
          say("{} may not be paralleled: NEC allows 1/0 AWG and larger only.", size)),
      ValidationRule.check(
          calc("{}>1", parallel),
          Formula.of(
              "Side by side: each cable needs its own protection, same length, same plugs.")),
      ValidationRule.check(
          calc("IF({};{}<>{};FALSE())", isBox(), ofTo(supply.fedFrom), from),
          say("Supply says that {} is fed from somewhere else than {}.", to, from)),
      ValidationRule.check(
          calc("{}>{}", shareLost, limit),
          calc(
              "ROUND(100*{};1)&\" % lost since \"&{}&\", the limit is \"&ROUND(100*{};1)&\""
                  + " %\"&IF({}=\"\";\".\";\": take \"&{}&\".\")",
              shareLost, source, limit, smallest, smallest)),
      ValidationRule.check(
          calc("{}=\"no\"", trips),
          Formula.of(
              "An earth fault may not trip the breaker instantly: provide RCD protection or use a"
                  + " larger cable."))
    };
  }

  private Formula isBox() {
    return calc("ISNUMBER(MATCH({};{};0))", to, supply.name.all());
  }

  private Formula ofTo(ColumnSpec column) {
    return column.lookup(supply.name, to);
  }

  /** Whether a load at its end uses so many lines. */
  private Formula feeds(int lines) {
    return calc("COUNTIFS({};{};{};" + lines + ")>0", loads.fedBy.all(), to, loads.lines.all());
  }

  /** On three lines whose loads are nearly equal the neutral carries little. */
  private Formula isEven() {
    return calc("IF({};{}>=0.8*{};TRUE())", isBox(), ofTo(supply.least), ofTo(supply.busiest));
  }

  private Formula bySupply(Formula known, Formula otherwise) {
    return calc("IF(ISNUMBER(MATCH({};{};0));{};{})", from, supply.name.all(), known, otherwise);
  }

  /** The value of a column in the row above that ends where this one begins. */
  private Formula above(ColumnSpec column) {
    return calc("INDEX({};MATCH({};{};0))", column.above(), from, to.above());
  }

  /** The loop at the start: measured at a source, or that of the run that leads here. */
  private Formula loopHandedOn() {
    Formula nearest = supply.runPoint.lookup(supply.name, from);
    return bySupply(
        calc(
            "IF({}=\"\";{};INDEX({};MATCH({};{};0)))",
            nearest,
            supply.loop.lookup(supply.name, source),
            loop.above(),
            nearest,
            to.above()),
        above(loop));
  }

  /** The share of the volts at the start: whole at a source, else what the ends above have. */
  private Formula shareHandedOn() {
    Formula nearest = supply.runPoint.lookup(supply.name, from);
    return bySupply(calc("IF({}=\"\";1;{})", nearest, shareAbove(nearest)), shareAbove(from));
  }

  private Formula shareAbove(Formula point) {
    return calc(
        "INDEX({};MATCH({};{};0))/INDEX({};MATCH({};{};0))",
        end.above(),
        point,
        to.above(),
        nominal.above(),
        point,
        to.above());
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Runs",
            "List cables starting at the source. Each row starts at a source or at the"
                + " end of a row above. Voltage drop assumes constant-power loads.")
        .with(table);
  }
}
