package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.LoadFunctions;
import org.setpower.registry.groups.PhaseFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.MatrixBlock;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** Everything that is plugged in, of all departments. */
final class LoadsSheet {
  static final int ROOM = 200;

  private final LightingJobSheet plan;
  private final EquipmentSheet kit;
  private final SupplySheet supply;
  private final CableRunsSheet runs;

  final ColumnSpec item;
  final ColumnSpec department =
      ColumnSpec.input("Department")
          .width(21)
          .help("Who brings it: electric, make-up, catering, camera.");
  final ColumnSpec day;
  final ColumnSpec place = ColumnSpec.input("Place").width(18).help("Where it stands.");
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 1, 9999)
          .required()
          .width(16)
          .help("How many of them on this box and circuit.");
  final ColumnSpec level =
      ColumnSpec.input("Level")
          .share()
          .width(12)
          .help("The dimmer level they are planned at, with %. Blank: 100 %.");
  final ColumnSpec from =
      ColumnSpec.input("From")
          .format(CellFormat.TIME)
          .required()
          .width(12)
          .help("When it is switched on, by the clock.");
  final ColumnSpec to =
      ColumnSpec.input("To")
          .format(CellFormat.TIME)
          .required()
          .width(12)
          .help("When it is switched off. At or before From means the next morning.");
  final ColumnSpec fedBy;
  final ColumnSpec circuit =
      ColumnSpec.input("Circuit").width(14).help("The outlet or breaker of that box: 1, 2, 3 …");
  final ColumnSpec legs =
      ColumnSpec.input("Legs")
          .format(CellFormat.COUNT)
          .options("1", "2", "3")
          .width(10)
          .help("How many lines its plug uses: 1 for line and neutral (blank), 2 line to line, 3.");
  final ColumnSpec leg =
      ColumnSpec.input("Leg used")
          .options("L1", "L2", "L3")
          .width(11)
          .help("On a box with several legs: the leg it is plugged into. The decision counts.");

  final ColumnSpec suggested = ColumnSpec.result("Suggested leg").width(18).mayBeBlank();
  final ColumnSpec watts = ColumnSpec.result("Power").unit("W").format(CellFormat.WHOLE).width(14);
  final ColumnSpec va = ColumnSpec.result("Apparent").unit("VA").format(CellFormat.WHOLE).width(17);
  final ColumnSpec amps = ColumnSpec.result("Current").unit("A").format(CellFormat.ONE).width(15);
  final ColumnSpec voltsThere =
      ColumnSpec.result("Voltage at load")
          .unit("V")
          .format(CellFormat.ONE)
          .width(14)
          .pendingMessage("What feeds it is not settled: see its rows on Supply and Runs.");
  final ColumnSpec atOnce =
      ColumnSpec.result("In use at once").format(CellFormat.COUNT).width(14).mayBeBlank();

  final ColumnSpec onAt = ColumnSpec.working("On").format(CellFormat.TWO).unit("day");
  final ColumnSpec offAt = ColumnSpec.working("Off").format(CellFormat.TWO).unit("day");
  final ColumnSpec moment = ColumnSpec.working("Moment").format(CellFormat.TWO).unit("day");
  final ColumnSpec box = ColumnSpec.working("Box");
  final ColumnSpec path = ColumnSpec.working("Path");
  final ColumnSpec lines = ColumnSpec.working("Lines used").format(CellFormat.COUNT);
  final ColumnSpec nominal = ColumnSpec.working("Nominal volts").unit("V").format(CellFormat.WHOLE);
  final ColumnSpec factor = ColumnSpec.working("Power factor").unit("0–1").format(CellFormat.TWO);
  final ColumnSpec source = ColumnSpec.working("Source");
  final ColumnSpec decided = ColumnSpec.working("Leg decided");
  final ColumnSpec legNow = ColumnSpec.working("Leg now");
  final ColumnSpec[] carried = new ColumnSpec[3];
  final ColumnSpec vaOfALeg = ColumnSpec.working("VA of a leg").unit("VA").format(CellFormat.WHOLE);
  final ColumnSpec plain =
      ColumnSpec.working("VA of a leg or 0").unit("VA").format(CellFormat.WHOLE);
  final ColumnSpec[] vaOnLeg = new ColumnSpec[3];
  final ColumnSpec assumed = ColumnSpec.working("Factor assumed").format(CellFormat.COUNT);
  final ColumnSpec card = ColumnSpec.working("Line of a box card");
  final ColumnSpec cardBox = ColumnSpec.working("Box of a new line");
  final ColumnSpec cardKey = ColumnSpec.working("No. of the line on its card");
  final ColumnSpec cardWords = ColumnSpec.working("Words of the line");
  final ColumnSpec energy = ColumnSpec.working("Energy").unit("kWh").format(CellFormat.TWO);
  final ColumnSpec newHouseDay =
      ColumnSpec.working("First of its day on the house").format(CellFormat.COUNT);
  final ColumnSpec adaptor = ColumnSpec.working("Adaptor");
  final ColumnSpec adaptors = ColumnSpec.working("Adaptors at once").format(CellFormat.COUNT);
  final ColumnSpec surge =
      ColumnSpec.working("More when one starts").unit("W").format(CellFormat.WHOLE).mayBeBlank();
  final ColumnSpec onCircuit =
      ColumnSpec.working("A on the circuit").unit("A").format(CellFormat.ONE);

  /** VA at each moment (a row of this table) below each row of Supply, one matrix a leg. */
  final MatrixBlock[] onLeg = new MatrixBlock[3];

  /** VA of a leg at each moment below the end of each row of Runs. */
  final MatrixBlock onRun;

  final TableSpec table = TableSpec.of("", ROOM);

  LoadsSheet(LightingJobSheet plan, EquipmentSheet kit, SupplySheet supply, CableRunsSheet runs) {
    this.plan = plan;
    this.kit = kit;
    this.supply = supply;
    this.runs = runs;
    item =
        ColumnSpec.input("Item")
            .options(kit.item)
            .orOther()
            .required()
            .width(44)
            .help("From Kit; what is missing is added there. Or a charger named on Charging.");
    day =
        ColumnSpec.input("Day")
            .format(CellFormat.DAY)
            .options(plan.job.date)
            .required()
            .width(20)
            .help("One of the dates on Job. Several days: a row for each.");
    fedBy =
        ColumnSpec.input("Fed by")
            .options(supply.name)
            .orOther()
            .required()
            .width(28)
            .help("The box it is plugged into, or the end of a run as it stands on Runs.");
    for (int i = 0; i < onLeg.length; i++) {
      vaOnLeg[i] =
          ColumnSpec.working(
                  "VA on L" + (i + 1),
                  calc("IF(OR({}=\"L" + (i + 1) + "\";{}=\"all\");{};0)", legNow, legNow, plain))
              .unit("VA")
              .format(CellFormat.WHOLE)
              .inBlankRowsToo();
      onLeg[i] =
          new MatrixBlock(
              "VA on L" + (i + 1) + " at each load's start, below each row of Supply",
              ROOM,
              SupplySheet.ROOM,
              below(supply.name, vaOnLeg[i]));
    }
    onRun =
        new MatrixBlock(
            "VA of a leg at each load's start, below each run's end",
            ROOM,
            CableRunsSheet.ROOM,
            below(runs.to, plain));
  }

  /** What is on at each moment, times what hangs below each name. */
  private Formula below(ColumnSpec names, ColumnSpec figures) {
    return calc(
        "MMULT(ISNUMBER({})*(TRANSPOSE({})<={})*(TRANSPOSE({})>{});"
            + "ISNUMBER(SEARCH(\"|\"&TRANSPOSE({})&\"|\";{}))*{})",
        moment.all(),
        onAt.all(),
        moment.all(),
        offAt.all(),
        moment.all(),
        names.all(),
        path.all(),
        figures.all());
  }

  void declare(ChargingSheet charging, FieldSpec set, GeneratorHours running) {
    watts
        .formula(
            calc(
                "{}*{}*IF(COUNTIF({};{})=0;MAXIFS({};{};{});{})",
                quantity,
                or(level, 1),
                kit.item.all(),
                item,
                charging.watts.all(),
                charging.charger.all(),
                item,
                kit.watts.lookup(kit.item, item)))
        .errorMessage("Kit has no watts for it: fill them in there.");
    card.formula(
        calc(
            "IF(ISNUMBER({});{}&\"|\"&{}&\"|\"&{}&\"|\"&{}&\"|\"&{};\"\")",
            moment,
            box,
            fedBy,
            or(circuit, ""),
            item,
            legNow));
    cardBox.formula(calc("IF(COUNTIF({};{})=0;{};\"\")", card.above(), card, box));
    cardKey.formula(calc("{}&\"|\"&(COUNTIF({};{})+1)", cardBox, cardBox.above(), cardBox));
    cardWords.formula(
        calc("{}&\" × \"&{}&IF({}={};\"\";\", on run \"&{})", quantity, item, fedBy, box, fedBy));
    energy.formula(calc("{}*24*({}-{})/1000", watts, offAt, onAt));
    newHouseDay.formula(
        calc(
            "IF({}={};0;N(COUNTIFS({};{};{};\"<>\"&{})=0))",
            source,
            or(set, ""),
            day.above(),
            day,
            source.above(),
            or(set, "")));
    adaptor.formula(
        calc(
            "IFERROR({};\"\")",
            SupplySheet.adaptor(supply.outletKind.lookup(supply.name, fedBy), ofKit(kit.plug))));
    adaptors.formula(
        calc(
            "IF({}=\"\";0;SUMIFS({};{};{};{}))",
            or(adaptor, ""),
            quantity.all(),
            adaptor.all(),
            or(adaptor, ""),
            onNow()));
    surge.formula(calc("MAX(0;N({})-N({}))+0*{}", ofKit(kit.starting), ofKit(kit.watts), watts));
    factor.formula(
        calc(
            "IF({}=\"\";{};{})", ofKit(kit.powerFactor), plan.powerFactor, ofKit(kit.powerFactor)));
    assumed.formula(calc("N({}=\"\")", ofKit(kit.powerFactor)));
    va.formula(call(LoadFunctions.VA, watts, factor));
    onAt.formula(calc("{}+{}", day, from));
    offAt.formula(calc("{}+{}+({}<={})", day, to, to, from));
    moment.formula(calc("IF({};{};\"\")", plan.isShown(day), onAt));
    box.formula(bySupply(fedBy, runs.box.lookup(runs.to, fedBy)));
    path.formula(
        bySupply(supply.path.lookup(supply.name, fedBy), runs.path.lookup(runs.to, fedBy)));
    Formula system = supply.system.lookup(supply.name, box);
    lines.formula(
        calc("IF({}=\"1PH\";1;MIN({};IF({}=\"split\";2;3)))", system, or(legs, 1), system));
    nominal.formula(
        calc(
            "IF({}=1;{};{})",
            lines,
            supply.toNeutral.lookup(supply.name, box),
            supply.nominal.lookup(supply.name, box)));
    amps.formula(
        call(LoadFunctions.AMPS, watts, nominal, calc("IF({}=3;\"3PH\";\"1PH\")", lines), factor));
    voltsThere.formula(
        calc(
            "{}*{}",
            nominal,
            bySupply(
                supply.share.lookup(supply.name, fedBy), runs.shareLeft.lookup(runs.to, fedBy))));
    atOnce.formula(calc("SUMIFS({};{};{};{})", quantity.all(), item.all(), item, onNow()));
    source.formula(supply.source.lookup(supply.name, box));
    decided.formula(
        calc(
            "IF({}>1;\"all\";IF({}=\"1PH\";{};{}))",
            lines,
            system,
            supply.legNow.lookup(supply.name, box),
            or(leg, "")));
    suggestion(system);
    legNow.formula(
        calc(
            "IF({}>1;\"all\";IF({}<>\"\";{};IF({}=\"\";\"all\";{})))",
            lines,
            or(decided, ""),
            or(decided, ""),
            or(suggested, ""),
            or(suggested, "")));
    vaOfALeg.formula(
        calc(
            "IF({}=3;{}/3;IF({}=2;{}*{}/{};{}))",
            lines,
            va,
            lines,
            va,
            supply.toNeutral.lookup(supply.name, box),
            nominal,
            va));
    plain.formula(calc("IF(ISNUMBER({});{};0)", vaOfALeg, vaOfALeg)).inBlankRowsToo();
    onCircuit.formula(
        calc(
            "SUMIFS({};{};{};{};{};{})",
            amps.all(),
            fedBy.all(),
            fedBy,
            circuit.all(),
            circuit,
            onNow()));
    table.columns(
        item,
        department,
        day,
        place,
        quantity,
        level,
        from,
        to,
        fedBy,
        circuit,
        legs,
        leg,
        suggested,
        watts,
        va,
        amps,
        voltsThere,
        atOnce,
        onAt,
        offAt,
        moment,
        box,
        path,
        lines,
        nominal,
        factor,
        source,
        decided,
        carried[0],
        carried[1],
        carried[2],
        legNow,
        vaOfALeg,
        plain,
        vaOnLeg[0],
        vaOnLeg[1],
        vaOnLeg[2],
        assumed,
        card,
        cardBox,
        cardKey,
        cardWords,
        energy,
        newHouseDay,
        adaptor,
        adaptors,
        surge,
        onCircuit);
    table.checks(checks(system, charging, set, running));
  }

  /**
   * The leg that carries least while this load is on: with all that is decided, and with what was
   * suggested to rows above.
   */
  private void suggestion(Formula system) {
    for (int i = 0; i < carried.length; i++) {
      String leg = "\"L" + (i + 1) + "\"";
      carried[i] =
          ColumnSpec.working("VA on L" + (i + 1) + " while it is on")
              .formula(
                  calc(
                      "IF({}<>\"\";\"\";SUMPRODUCT(({}="
                          + leg
                          + ")*({}={})*({}<{})*({}>{});{})+SUMPRODUCT(({}="
                          + leg
                          + ")*({}={})*({}<{})*({}>{});{}))",
                      or(decided, ""),
                      decided.all(),
                      source.all(),
                      source,
                      onAt.all(),
                      offAt,
                      offAt.all(),
                      onAt,
                      plain.all(),
                      suggested.above(),
                      source.above(),
                      source,
                      onAt.above(),
                      offAt,
                      offAt.above(),
                      onAt,
                      plain.above()));
    }
    suggested.formula(
        calc(
            "IF({}<>\"\";\"\";\"L\"&INDEX({};1;1))",
            or(decided, ""),
            call(
                PhaseFunctions.ASSIGN,
                vaOfALeg,
                calc("IF({}=\"split\";2;3)", system),
                calc(
                    "IF({}=\"split\";{};{})",
                    system,
                    carried[0].to(carried[1]),
                    carried[0].to(carried[2])))));
  }

  /** A figure of Kit; blank for a charger that only Charging knows. */
  private Formula ofKit(ColumnSpec column) {
    return calc("IFERROR({};\"\")", column.lookup(kit.item, item));
  }

  private Formula bySupply(Formula known, Formula otherwise) {
    return calc("IF(ISNUMBER(MATCH({};{};0));{};{})", fedBy, supply.name.all(), known, otherwise);
  }

  /** Criteria for SUMIFS: the rows that are on when this one starts. */
  private Formula onNow() {
    return calc("{};\"<=\"&{};{};\">\"&{}", onAt.all(), onAt, offAt.all(), onAt);
  }

  private ValidationRule[] checks(
      Formula system, ChargingSheet charging, FieldSpec set, GeneratorHours running) {
    Formula worksFrom = ofKit(kit.worksFrom);
    Formula worksTo = ofKit(kit.worksTo);
    Formula outlet = supply.outlet.lookup(supply.name, fedBy);
    Formula pieces = ofKit(kit.pieces);
    return new ValidationRule[] {
      ValidationRule.wrong(
          calc(
              "AND(ISNA(MATCH({};{};0));ISNA(MATCH({};{};0)))",
              fedBy,
              supply.name.all(),
              fedBy,
              runs.to.all()),
          say(
              "Neither Supply nor Runs knows {}: write it there first, or correct the name.",
              fedBy)),
      ValidationRule.wrong(
          calc(
              "AND(LEN({})>0;COUNTIF({};{})=0;COUNTIF({};{})=0)",
              item,
              kit.item.all(),
              item,
              charging.charger.all(),
              item),
          say("{} is not on Kit: add it there, or pick it from the list.", item)),
      ValidationRule.stop(
          calc("{}=\"DC\"", ofKit(kit.feed)),
          say("{} runs on DC: plan it on Packs, its charger here.", item)),
      ValidationRule.stop(
          calc("AND(N({})>0;{}<{})", worksFrom, voltsThere, worksFrom),
          say("{} V arrive, less than {} works from.", voltsThere, item)),
      ValidationRule.stop(
          calc("AND(N({})>0;{}>{})", worksTo, nominal, worksTo),
          say("{} V are more than {} works to.", nominal, item)),
      ValidationRule.stop(
          calc("IF(N({})>0;ROUND({};3)>{};FALSE())", outlet, onCircuit, outlet),
          say(
              "{} A on circuit {} from {} exceeds its {} A breaker. Move load.",
              onCircuit,
              circuit,
              from,
              outlet)),
      ValidationRule.check(
          calc("AND({}<>\"1PH\";{}=1;{}=\"\")", system, lines, or(leg, "")),
          calc(
              "IF({}=\"\";\"Which leg? Until you choose it counts on every leg.\";\"Plug it into"
                  + " \"&{}&\" and choose that; until then it counts there.\")",
              or(suggested, ""),
              or(suggested, ""))),
      ValidationRule.check(
          calc(
              "IF({}={};COUNTIFS({};\"<=\"&({}+0.0001);{};\">=\"&({}-0.0001))=0;FALSE())",
              source,
              or(set, ""),
              running.start.all(),
              onAt,
              running.stop.all(),
              offAt),
          Formula.of("The set does not run all that time: see when it starts on Generator.")),
      ValidationRule.check(
          calc("AND(N({})>0;{}>{})", pieces, atOnce, pieces),
          say("{} in use from {}; {} in stock.", atOnce, from, pieces))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Loads", "All mains loads of every department. One row per item, day and circuit.")
        .with(table);
  }
}
