package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.LoadFunctions;
import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** Sources and boxes, from the source outwards. */
final class Supply {
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

  final Column name =
      Column.input("Name").needed().wide(30).help("What is written on it: quay, pans set, box A1.");
  final Column kind =
      Column.input("Kind")
          .oneOf("generator", "house supply", "street supply", "wall socket", "box")
          .needed()
          .wide(24)
          .help("box for everything that is fed by a row above.");
  final Column place = Column.input("Place").wide(20).help("Where it stands.");
  final Column fedFrom =
      Column.input("Fed from")
          .oneOf(name)
          .wide(26)
          .help("The row above that feeds it. Blank for a source.");
  final Column system =
      Column.input("System")
          .oneOf("1PH", "split", "3PH")
          .needed()
          .wide(14)
          .help("1PH: one line and neutral. split: two lines, 120/240 V. 3PH: three lines.");
  final Column volts =
      Column.input("Volts")
          .unit("V")
          .number(Format.WHOLE, 50, 1000)
          .wide(12)
          .help(
              "Nominal: between lines for 3PH and split (400, 208, 240), else line to neutral."
                  + " Blank: those of the mains standard on Job.");
  final Column inlet =
      Column.input("Inlet")
          .wide(34)
          .oneOf(CONNECTORS)
          .orOther()
          .help("The connector it is fed by.");
  final Column breaker =
      Column.input("Breaker")
          .unit("A a leg")
          .number(Format.WHOLE, 1, 4000)
          .needed()
          .wide(15)
          .help("The figure on its main breaker or fuse, for one leg.");
  final Column outlets =
      Column.input("Outlets").wide(22).help("How many of which kind: 6 x 16 A household.");
  final Column outletKind =
      Column.input("Kind of outlet")
          .oneOf(CONNECTORS)
          .orOther()
          .wide(34)
          .help("What plugs into it: where a plug on Kit differs, an adaptor is on the order.");
  final Column outlet =
      Column.input("Breaker of each outlet")
          .unit("A")
          .number(Format.WHOLE, 1, 4000)
          .wide(17)
          .help("The smaller breaker in front of each outlet. Blank: there is none.");
  final Column taken =
      Column.input("Already taken")
          .unit("A a leg")
          .number(Format.ONE, 0, 4000)
          .wide(14)
          .help("What the house or others draw there while we work: measure, or ask the house.");
  final Column leg =
      Column.input("Leg")
          .oneOf("L1", "L2", "L3")
          .wide(9)
          .help("For a 1PH box on a feed with several legs: the leg it hangs on.");
  final Column rcd =
      Column.input("RCD")
          .unit("mA")
          .number(Format.WHOLE, 1, 3000)
          .wide(12)
          .help("Trip current printed on the RCD or GFCI of the outlets.");
  final Column loop =
      Column.input("Loop measured")
          .unit("Ω")
          .number(Format.TWO, 0.001, 10_000)
          .wide(17)
          .help("Line to earth at this source, by a loop tester. Blank: not known.");
  final Column who =
      Column.input("Connects and signs")
          .wide(28)
          .help("The role of the competent person, such as: house electrician.");

  final Column may =
      Column.result("We may take", calc("{}-{}", breaker, or(taken, 0)))
          .unit("A a leg")
          .as(Format.ONE)
          .wide(15);
  final Column used = Column.result("Used at the busiest").unit("A a leg").as(Format.ONE).wide(16);
  final Column at = Column.result("Busiest from").as(Format.TIME).wide(15);
  final Column spare = Column.result("Spare", calc("{}-{}", may, used)).unit("A a leg");
  final Column voltsHere = Column.result("Volts here").unit("V").as(Format.ONE).wide(12);

  final Column nominal = Column.working("Nominal volts").unit("V").as(Format.WHOLE);
  final Column toNeutral = Column.working("Line to neutral").unit("V").as(Format.WHOLE);
  final Column source = Column.working("Source");
  final Column sourceNumber = Column.working("No. among the sources").as(Format.COUNT);
  final Column boxNumber = Column.working("No. among the boxes").as(Format.COUNT);
  final Column childKey = Column.working("No. among what one row feeds");
  final Column adaptor = Column.working("Adaptor");
  final Column boxWords = Column.working("Words of the box");
  final Column path = Column.working("Path");
  final Column legNow = Column.working("Leg now");
  final Column ahead = Column.working("Breaker ahead");
  final Column runPoint = Column.working("Nearest run");
  final Column share = Column.working("Share of the volts left");
  final Column[] onLeg = new Column[3];
  final Column shareUsed = Column.working("Share used").as(Format.SHARE);
  final Column busiest = Column.working("VA of the busiest leg");
  final Column busiestAt = Column.working("Row of Loads at the busiest");
  final Column least = Column.working("VA of the least leg then");

  final Table table = Table.of("", ROOM);

  /** Declares the columns that follow from the rest of the sheet. */
  void declare(PlanJob plan, Kit kit, Loads loads, Runs runs) {
    nominal.by(calc("{}+0*LEN({})", or(volts, plan.volts(system)), system));
    toNeutral.by(
        calc("IF({}=\"1PH\";{};{})", system, nominal, kit.toNeutral.where(kit.between, nominal)));
    source.by(tree(name, source));
    sourceNumber.by(
        calc(
            "IF(AND(LEN({})>0;{}=\"\");COUNT({})+1;\"\")",
            name,
            or(fedFrom, ""),
            sourceNumber.above()));
    boxNumber.by(calc("IF({}=\"box\";COUNT({})+1;\"\")", kind, boxNumber.above()));
    childKey.by(calc("{}&\"|\"&(COUNTIF({};{})+1)", fedFrom, fedFrom.above(), fedFrom));
    adaptor.by(adaptor(above(outletKind), inlet));
    boxWords.by(
        calc(
            "IF({}=\"box\";\"box, \"&{}&\" in\"&IF({}=\"\";\"\";\", \"&{}&\" out\");\"\")",
            kind,
            or(inlet, "?"),
            or(outlets, ""),
            or(outlets, "")));
    path.by(calc("{}&{}&\"|\"", tree(Formula.of("|"), path), name));
    ahead.by(calc("IF({}=\"\";{};{})", above(outlet), above(breaker), above(outlet)));
    legNow.by(
        calc(
            "IF({}<>\"1PH\";\"\";IF({}<>\"\";{};IF({}=\"\";\"L1\";IF({}=\"\";\"all\";{}))))",
            system,
            or(leg, ""),
            or(leg, ""),
            or(fedFrom, ""),
            above(legNow),
            above(legNow)));
    runPoint.by(
        calc(
            "IF(COUNTIF({};{})>0;{};{})",
            runs.to.all(),
            name,
            name,
            tree(Formula.of(""), runPoint)));
    share.by(
        calc(
            "IF({}=\"\";1;{})", or(runPoint, ""), runs.shareLeft.where(runs.to, or(runPoint, ""))));
    for (int i = 0; i < onLeg.length; i++) {
      onLeg[i] =
          Column.working(
                  "VA on L" + (i + 1),
                  calc("MAX(INDEX({};0;{}))", loads.onLeg[i].all(), name.rowNumber()))
              .inBlankRowsToo();
    }
    busiest.by(calc("MAX({};{};{})+0*LEN({})", onLeg[0], onLeg[1], onLeg[2], name));
    used.by(call(LoadFunctions.AMPS, busiest, calc("{}*{}", toNeutral, share), "1PH"));
    Formula row = name.rowNumber();
    busiestAt.by(
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
    at.by(
            calc(
                "IF({}=\"\";\"\";ROUND(1440*MOD(INDEX({};{});1);0)/1440)",
                busiestAt,
                loads.moment.all(),
                busiestAt))
        .mayBeBlank();
    least.by(
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
    shareUsed.by(calc("{}/{}", used, may));
    voltsHere.by(calc("{}*{}", nominal, share));
    spare.as(Format.ONE).wide(13);
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

  private Check[] checks() {
    return new Check[] {
      Check.wrong(
          calc("COUNTIF({};{})>1", name.all(), name),
          say("{} stands here twice: give each box its own name.", name)),
      Check.wrong(
          calc("IFERROR(MATCH({};{};0);9999)>={}", fedFrom, name.all(), name.rowNumber()),
          say("{} is not a row above: write what feeds it first.", fedFrom)),
      Check.wrong(
          calc("AND({}<>\"box\";{}<>\"\")", kind, or(fedFrom, "")),
          say("A {} is a source: leave Fed from blank, or call it a box.", kind)),
      Check.wrong(
          calc("AND({}=\"box\";{}=\"\")", kind, or(fedFrom, "")),
          Formula.of("Fill in Fed from: a box is fed by a row above.")),
      Check.wrong(
          calc("N({})=0", or(nominal, "")),
          say("The mains standard on Job has no volts for {}: fill in Volts.", system)),
      Check.wrong(
          calc("{}=\"\"", or(toNeutral, "")),
          say("Mains on Kit has no {} V between lines: add them there.", nominal)),
      Check.stop(
          calc("{}>{}", used, may),
          say("{} A on a leg from {}, it may give {} A: move loads or times.", used, at, may)),
      Check.stop(
          calc("{}>{}", ahead, breaker),
          say(
              "The {} A breaker ahead does not protect this box of {} A: feed it from a smaller"
                  + " outlet.",
              ahead,
              breaker)),
      Check.look(
          calc("{}=\"all\"", legNow),
          Formula.of("Which leg does it hang on? Until you say so it counts on every leg.")),
      Check.look(
          calc("AND({}<=32;OR({}=\"\";{}>30))", outlet, or(rcd, ""), or(rcd, 0)),
          Formula.of("Outlets up to 32 A require a 30 mA RCD (Class A GFCI). Enter it here.")),
      Check.look(
          calc("{}>0.8*{}", used, may), say("{} A of {} A from {}: little is left.", used, may, at))
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
  private Formula tree(Formula own, Column column) {
    return calc("IF({}=\"\";{};{})", or(fedFrom, ""), own, above(column));
  }

  /** The value of a column in the row that feeds this one. */
  private Formula above(Column column) {
    return calc("INDEX({};MATCH({};{};0))", column.above(), or(fedFrom, ""), name.above());
  }

  Tab tab() {
    return Tab.of(
            "Supply",
            "Every source and every box, from the source outwards. Fill name, kind, system, volts"
                + " and breaker first; a box also says what feeds it.")
        .with(table);
  }
}
