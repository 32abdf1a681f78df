package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.LoadFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** Sources and boxes, from the source outwards. */
final class SupplySheet {
  static final int ROOM = 40;

  private static final String[] CONNECTORS = {
    "IEC 60309 16 A",
    "IEC 60309 32 A",
    "IEC 60309 63 A",
    "IEC 60309 125 A",
    "single-pole cam-type set",
    "stage pin",
    "household socket",
    "19-pin multi-circuit",
    "hard wired"
  };

  final ColumnSpec name =
      ColumnSpec.input("Name")
          .required()
          .width(30)
          .help("What is written on it: quay, pans set, box A1.");
  final ColumnSpec kind =
      ColumnSpec.input("Kind")
          .options("generator", "house supply", "street supply", "wall socket", "box")
          .required()
          .width(24)
          .help("box for everything that is fed by a row above.");
  final ColumnSpec place = ColumnSpec.input("Place").width(20).help("Where it stands.");
  final ColumnSpec fedFrom =
      ColumnSpec.input("Fed from")
          .options(name)
          .width(26)
          .help("The row above that feeds it. Blank for a source.");
  final ColumnSpec system =
      ColumnSpec.input("System")
          .options("1PH", "split", "3PH")
          .required()
          .width(14)
          .help("1PH: one line and neutral. split: two lines, 120/240 V. 3PH: three lines.");
  final ColumnSpec volts =
      ColumnSpec.input("Volts")
          .unit("V")
          .number(CellFormat.WHOLE, 50, 1000)
          .width(12)
          .help(
              "Nominal: between lines for 3PH and split (400, 208, 240), else line to neutral."
                  + " Blank: those of the mains standard on Job.");
  final ColumnSpec inlet =
      ColumnSpec.input("Inlet")
          .width(34)
          .options(CONNECTORS)
          .orOther()
          .help("The connector it is fed by.");
  final ColumnSpec breaker =
      ColumnSpec.input("Breaker")
          .unit("A a leg")
          .number(CellFormat.WHOLE, 1, 4000)
          .required()
          .width(15)
          .help("Main breaker or fuse rating per leg.");
  final ColumnSpec outlets =
      ColumnSpec.input("Outlets").width(22).help("How many of which kind: 6 x 16 A household.");
  final ColumnSpec outletKind =
      ColumnSpec.input("Kind of outlet")
          .options(CONNECTORS)
          .orOther()
          .width(34)
          .help("What plugs into it: where a plug on Kit differs, an adaptor is on the order.");
  final ColumnSpec outlet =
      ColumnSpec.input("Breaker of each outlet")
          .unit("A")
          .number(CellFormat.WHOLE, 1, 4000)
          .width(17)
          .help("The smaller breaker in front of each outlet. Blank: there is none.");
  final ColumnSpec taken =
      ColumnSpec.input("Already taken")
          .unit("A a leg")
          .number(CellFormat.ONE, 0, 4000)
          .width(14)
          .help("Current drawn by others while we work. Measure it or ask the venue.");
  final ColumnSpec leg =
      ColumnSpec.input("Leg")
          .options("L1", "L2", "L3")
          .width(9)
          .help("For a 1PH box on a feed with several legs: the leg it hangs on.");
  final ColumnSpec rcd =
      ColumnSpec.input("RCD")
          .unit("mA")
          .number(CellFormat.WHOLE, 1, 3000)
          .width(12)
          .help("Trip current printed on the RCD or GFCI of the outlets.");
  final ColumnSpec loop =
      ColumnSpec.input("Loop measured")
          .unit("Ω")
          .number(CellFormat.TWO, 0.001, 10_000)
          .width(17)
          .help("Line–earth loop impedance measured at this source. Blank: not known.");
  final ColumnSpec who =
      ColumnSpec.input("Connects and signs")
          .width(28)
          .help("Role of the competent person, e.g. house electrician.");

  final ColumnSpec may =
      ColumnSpec.result("Available", calc("{}-{}", breaker, or(taken, 0)))
          .unit("A a leg")
          .format(CellFormat.ONE)
          .width(15);
  final ColumnSpec used =
      ColumnSpec.result("Peak load").unit("A a leg").format(CellFormat.ONE).width(16);
  final ColumnSpec at = ColumnSpec.result("Peak from").format(CellFormat.TIME).width(15);
  final ColumnSpec spare = ColumnSpec.result("Spare", calc("{}-{}", may, used)).unit("A a leg");
  final ColumnSpec voltsHere =
      ColumnSpec.result("Volts here").unit("V").format(CellFormat.ONE).width(12);

  final ColumnSpec nominal = ColumnSpec.working("Nominal volts").unit("V").format(CellFormat.WHOLE);
  final ColumnSpec toNeutral =
      ColumnSpec.working("Line to neutral").unit("V").format(CellFormat.WHOLE);
  final ColumnSpec source = ColumnSpec.working("Source");
  final ColumnSpec sourceNumber =
      ColumnSpec.working("No. among the sources").format(CellFormat.COUNT);
  final ColumnSpec boxNumber = ColumnSpec.working("No. among the boxes").format(CellFormat.COUNT);
  final ColumnSpec childKey = ColumnSpec.working("No. among what one row feeds");
  final ColumnSpec adaptor = ColumnSpec.working("Adaptor");
  final ColumnSpec boxWords = ColumnSpec.working("Words of the box");
  final ColumnSpec path = ColumnSpec.working("Path");
  final ColumnSpec legNow = ColumnSpec.working("Leg now");
  final ColumnSpec ahead = ColumnSpec.working("Upstream breaker");
  final ColumnSpec runPoint = ColumnSpec.working("Nearest run");
  final ColumnSpec share = ColumnSpec.working("Share of the volts left");
  final ColumnSpec[] onLeg = new ColumnSpec[3];
  final ColumnSpec shareUsed = ColumnSpec.working("Share used").format(CellFormat.SHARE);
  final ColumnSpec busiest = ColumnSpec.working("VA of the busiest leg");
  final ColumnSpec busiestAt = ColumnSpec.working("Row of Loads at the busiest");
  final ColumnSpec least = ColumnSpec.working("VA of the least leg then");

  final TableSpec table = TableSpec.of("", ROOM);

  /** Declares the columns that follow from the rest of the sheet. */
  void declare(LightingJobSheet plan, EquipmentSheet kit, LoadsSheet loads, CableRunsSheet runs) {
    nominal.formula(calc("{}+0*LEN({})", or(volts, plan.volts(system)), system));
    toNeutral.formula(
        calc("IF({}=\"1PH\";{};{})", system, nominal, kit.toNeutral.lookup(kit.between, nominal)));
    source.formula(tree(name, source));
    sourceNumber.formula(
        calc(
            "IF(AND(LEN({})>0;{}=\"\");COUNT({})+1;\"\")",
            name,
            or(fedFrom, ""),
            sourceNumber.above()));
    boxNumber.formula(calc("IF({}=\"box\";COUNT({})+1;\"\")", kind, boxNumber.above()));
    childKey.formula(calc("{}&\"|\"&(COUNTIF({};{})+1)", fedFrom, fedFrom.above(), fedFrom));
    adaptor.formula(adaptor(above(outletKind), inlet));
    boxWords.formula(
        calc(
            "IF({}=\"box\";\"box, \"&{}&\" in\"&IF({}=\"\";\"\";\", \"&{}&\" out\");\"\")",
            kind,
            or(inlet, "?"),
            or(outlets, ""),
            or(outlets, "")));
    path.formula(calc("{}&{}&\"|\"", tree(Formula.of("|"), path), name));
    ahead.formula(calc("IF({}=\"\";{};{})", above(outlet), above(breaker), above(outlet)));
    legNow.formula(
        calc(
            "IF({}<>\"1PH\";\"\";IF({}<>\"\";{};IF({}=\"\";\"L1\";IF({}=\"\";\"all\";{}))))",
            system,
            or(leg, ""),
            or(leg, ""),
            or(fedFrom, ""),
            above(legNow),
            above(legNow)));
    runPoint.formula(
        calc(
            "IF(COUNTIF({};{})>0;{};{})",
            runs.to.all(),
            name,
            name,
            tree(Formula.of(""), runPoint)));
    share.formula(
        calc(
            "IF({}=\"\";1;{})",
            or(runPoint, ""),
            runs.shareLeft.lookup(runs.to, or(runPoint, ""))));
    for (int i = 0; i < onLeg.length; i++) {
      onLeg[i] =
          ColumnSpec.working(
                  "VA on L" + (i + 1),
                  calc("MAX(INDEX({};0;{}))", loads.onLeg[i].all(), name.rowNumber()))
              .inBlankRowsToo();
    }
    busiest.formula(calc("MAX({};{};{})+0*LEN({})", onLeg[0], onLeg[1], onLeg[2], name));
    used.formula(call(LoadFunctions.AMPS, busiest, calc("{}*{}", toNeutral, share), "1PH", 1));
    Formula row = name.rowNumber();
    busiestAt.formula(
        calc(
            "IF({}=0;\"\";MATCH({};IF({}={};INDEX({};0;{});IF({}={};INDEX({};0;{});INDEX({};0;{})));0))",
            busiest,
            busiest,
            onLeg[0],
            busiest,
            loads.onLeg[0].all(),
            row,
            onLeg[1],
            busiest,
            loads.onLeg[1].all(),
            row,
            loads.onLeg[2].all(),
            row));
    busiestAt.mayBeBlank();
    at.formula(
            calc(
                "IF({}=\"\";\"\";ROUND(1440*MOD(INDEX({};{});1);0)/1440)",
                busiestAt,
                loads.moment.all(),
                busiestAt))
        .mayBeBlank();
    least.formula(
        calc(
            "IF({}=\"\";0;MIN(INDEX({};{};{});INDEX({};{};{});INDEX({};{};{})))",
            busiestAt,
            loads.onLeg[0].all(),
            busiestAt,
            row,
            loads.onLeg[1].all(),
            busiestAt,
            row,
            loads.onLeg[2].all(),
            busiestAt,
            row));
    shareUsed.formula(calc("{}/{}", used, may));
    voltsHere.formula(calc("{}*{}", nominal, share));
    spare.format(CellFormat.ONE).width(13);
    table.columns(
        name,
        kind,
        place,
        fedFrom,
        system,
        volts,
        inlet,
        breaker,
        outlets,
        outletKind,
        outlet,
        taken,
        leg,
        rcd,
        loop,
        who,
        may,
        used,
        at,
        spare,
        voltsHere,
        nominal,
        toNeutral,
        source,
        sourceNumber,
        boxNumber,
        childKey,
        adaptor,
        boxWords,
        path,
        legNow,
        ahead,
        runPoint,
        share,
        onLeg[0],
        onLeg[1],
        onLeg[2],
        busiest,
        busiestAt,
        least,
        shareUsed);
    table.checks(checks());
  }

  private ValidationRule[] checks() {
    return new ValidationRule[] {
      ValidationRule.wrong(
          calc("COUNTIF({};{})>1", name.all(), name),
          say("Duplicate: {}. Give each box its own name.", name)),
      ValidationRule.wrong(
          calc("IFERROR(MATCH({};{};0);9999)>={}", fedFrom, name.all(), name.rowNumber()),
          say("{} must be a row above this one. Enter the feeding source first.", fedFrom)),
      ValidationRule.wrong(
          calc("AND({}<>\"box\";{}<>\"\")", kind, or(fedFrom, "")),
          say("A {} is a source: leave Fed from blank, or call it a box.", kind)),
      ValidationRule.wrong(
          calc("AND({}=\"box\";{}=\"\")", kind, or(fedFrom, "")),
          Formula.of("Fill in Fed from: a box is fed by a row above.")),
      ValidationRule.wrong(
          calc("N({})=0", or(nominal, "")),
          say("The mains standard on Job has no volts for {}: fill in Volts.", system)),
      ValidationRule.wrong(
          calc("{}=\"\"", or(toNeutral, "")),
          say("Mains on Kit has no {} V between lines: add them there.", nominal)),
      ValidationRule.stop(
          calc("{}>{}", used, may),
          say("{} A on a leg from {}, it may give {} A: move loads or times.", used, at, may)),
      ValidationRule.stop(
          calc("{}>{}", ahead, breaker),
          say(
              "The {} A upstream breaker does not protect this box of {} A: feed it from a"
                  + " smaller outlet.",
              ahead,
              breaker)),
      ValidationRule.check(
          calc("{}=\"all\"", legNow), Formula.of("No leg chosen: counted on every leg.")),
      ValidationRule.check(
          calc("AND({}<=32;OR({}=\"\";{}>30))", outlet, or(rcd, ""), or(rcd, 0)),
          Formula.of("Outlets up to 32 A require a 30 mA RCD (Class A GFCI). Enter it here.")),
      ValidationRule.check(
          calc("{}>0.8*{}", used, may), say("{} of {} A from {}: little headroom.", used, may, at))
    };
  }

  /** The words of the adaptor between an outlet and a plug; nothing where they fit. */
  static Formula adaptor(Formula outlet, Formula plug) {
    return calc(
        "IF(OR({}=\"\";{}=\"\";{}={};{}=\"hard wired\");\"\";\"adaptor, \"&{}&\" to \"&{})",
        outlet,
        plug,
        outlet,
        plug,
        plug,
        outlet,
        plug);
  }

  /** A value handed down: of a source {@code own}, of a box that of the row that feeds it. */
  private Formula tree(Formula own, ColumnSpec column) {
    return calc("IF({}=\"\";{};{})", or(fedFrom, ""), own, above(column));
  }

  /** The value of a column in the row that feeds this one. */
  private Formula above(ColumnSpec column) {
    return calc("INDEX({};MATCH({};{};0))", column.above(), or(fedFrom, ""), name.above());
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Supply",
            "List every source and distribution box, starting at the source. Enter name,"
                + " type, system, voltage and breaker; for a distro also what feeds it.")
        .with(table);
  }
}
