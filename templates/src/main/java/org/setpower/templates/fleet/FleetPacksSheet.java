package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FleetFunctions;
import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.MatrixBlock;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The packs of the house, one row for each piece. */
final class FleetPacksSheet {
  static final int ROOM = 300;

  /** What may be done with a pack; the first two leave it fit to go out. */
  static final String[] DEEDS = {"keep", "watch", "service", "set aside", "retire"};

  final ColumnSpec serial =
      ColumnSpec.input("Serial")
          .required()
          .width(24)
          .help("The number that stands on the pack, or the house's own. Each only once.");
  final ColumnSpec kind =
      ColumnSpec.input("Kind").orOther().required().width(20).help("As on By kind: P150, P294.");
  final ColumnSpec bought =
      ColumnSpec.input("Bought").format(CellFormat.DATE).width(32).help("From the invoice.");
  final ColumnSpec price =
      ColumnSpec.input("Price").number(CellFormat.MONEY, 0, 1_000_000).width(19);
  final ColumnSpec energy =
      ColumnSpec.input("Energy")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0.1, 100_000)
          .required()
          .width(16)
          .help("The Wh printed on the label; health is measured against it.");
  final ColumnSpec cycles =
      ColumnSpec.input("Cycles")
          .number(CellFormat.COUNT, 0, 100_000)
          .width(16)
          .help("Full charges so far: the pack's own counter, or the jobs it was on.");
  final ColumnSpec shelf =
      ColumnSpec.input("Shelf").width(16).help("Where it lies when it is in: A2.");
  final ColumnSpec outTo =
      ColumnSpec.input("Out to").width(30).help("The job or client that has it. Blank: it is in.");
  final ColumnSpec backBy =
      ColumnSpec.input("Back by")
          .format(CellFormat.DATE)
          .width(32)
          .help("The date agreed for its return.");
  final ColumnSpec condition =
      ColumnSpec.input("Condition")
          .options("fine", "dropped", "wet", "swollen", "contacts", "label unreadable")
          .required()
          .width(28)
          .help("Visual check. contacts: bent, burnt or loose. Enter the worst.");
  final ColumnSpec summary =
      ColumnSpec.input("UN 38.3 summary")
          .options("yes", "no")
          .width(20)
          .help("Is the maker's UN 38.3 test summary on file? Air and sea freight ask for it.");
  final ColumnSpec warranty =
      ColumnSpec.input("Warranty until")
          .format(CellFormat.DATE)
          .width(32)
          .help("From the invoice.");
  final ColumnSpec decided =
      ColumnSpec.input("Decided")
          .options(DEEDS)
          .width(20)
          .help("What you do with it. Blank: what the register proposes beside this cell.");

  final ColumnSpec proposed = ColumnSpec.result("Proposed").width(20);
  final ColumnSpec lastTest =
      ColumnSpec.result("Last test that counts").format(CellFormat.DATE).mayBeBlank().width(32);
  final ColumnSpec health = ColumnSpec.result("Health").format(CellFormat.SHARE).width(16);
  final ColumnSpec loss =
      ColumnSpec.result("Fade per 100 cycles").format(CellFormat.SHARE).mayBeBlank().width(19);
  final ColumnSpec left =
      ColumnSpec.result("Min. cycles remaining").format(CellFormat.COUNT).mayBeBlank().width(19);
  final ColumnSpec cost =
      ColumnSpec.result("Cost per kWh to date").format(CellFormat.MONEY).mayBeBlank().width(22);
  final ColumnSpec apart = ColumnSpec.result("Outlier").mayBeBlank().width(19);
  final ColumnSpec spread =
      ColumnSpec.result("Cell spread").unit("V").format(CellFormat.THREE).mayBeBlank().width(17);
  final ColumnSpec toDo = ColumnSpec.result("On To do").mayBeBlank().width(28);

  final ColumnSpec testRow = ColumnSpec.working("Row of the test");
  final ColumnSpec doNow = ColumnSpec.working("Status now");
  final ColumnSpec fit = ColumnSpec.working("Fit to go out");
  final ColumnSpec due = ColumnSpec.working("Test due").format(CellFormat.DATE);
  final ColumnSpec overdue = ColumnSpec.working("Test overdue");
  final ColumnSpec shelfKey = ColumnSpec.working("Place and serial");
  final ColumnSpec order = ColumnSpec.working("Order by place");

  final TableSpec table = TableSpec.of("Packs", ROOM);
  final MatrixBlock odd;

  private final RegisterSettings house;

  FleetPacksSheet(RegisterSettings house) {
    this.house = house;
    price.unit(house.currency).help("What it cost, without tax: for the cost of a kWh.");
    cost.unit(calc("{}&\" a kWh\"", house.currency));
    odd =
        new MatrixBlock(
            "Packs that stand apart",
            ROOM,
            1,
            calc("IFERROR({};\"\")", call(FleetFunctions.OUTLIER, health.all(), null, kind.all())));
  }

  /** Declares the columns that follow from the rest of the register. */
  void declare(PackTestsSheet tests, PackKindsSheet kinds, PackTasksSheet list) {
    kind.options(kinds.kind);
    Formula fitTests = tests.key.all();
    lastTest.formula(
        calc(
            "IF(COUNTIFS({};{};{};\"fit\")=0;\"\";MAXIFS({};{};{};{};\"fit\"))",
            tests.serial.all(),
            serial,
            tests.compare.all(),
            tests.date.all(),
            tests.serial.all(),
            serial,
            tests.compare.all()));
    testRow.formula(calc("MATCH({}&\"|\"&{};{};0)", serial, lastTest, fitTests));
    health.formula(
        call(
            FleetFunctions.HEALTH,
            calc("INDEX({};{}+0*LEN({}))", tests.measured.all(), testRow, kind),
            energy));
    Formula atMostNew = calc("MIN(1;{})", health);
    loss.formula(calc("IF({}=0;\"\";{})", cycles, call(FleetFunctions.FADE, cycles, atMostNew)));
    left.formula(call(FleetFunctions.CYCLESLEFT, cycles, atMostNew, house.retire));
    cost.formula(call(HireFunctions.PERKWH, price, energy, cycles, atMostNew));
    Formula isOdd = calc("INDEX({};{})", odd.all(), serial.rowNumber());
    apart.formula(
        calc(
            "IF({}=\"\";\"\";IF({}=0;\"no\";IF({}<AVERAGEIFS({};{};{});\"below\";\"above\")))",
            isOdd,
            isOdd,
            health,
            health.all(),
            kind.all(),
            kind));
    spread.formula(calc("INDEX({};{})", tests.spread.all(), testRow));
    proposed.formula(
        calc(
            "IF({};\"set aside\";IF({}<{};\"retire\";IF(OR({}=\"contacts\";{}=\"label"
                + " unreadable\";{};{}=\"\");\"service\";IF(OR({}<{};{}=\"below\");\"watch\";\"keep\"))))",
            hurt(),
            or(health, 9),
            house.retire,
            condition,
            condition,
            drifts(),
            or(health, ""),
            or(health, 9),
            house.watch,
            or(apart, "")));
    toDo.formula(
        calc(
            "{}&\" \"&TEXT({};\"d mmm\")",
            list.task.lookup(list.openKey, serial),
            list.due.lookup(list.openKey, serial)));
    doNow.formula(or(decided, proposed));
    fit.formula(calc("IF(OR({}=\"keep\";{}=\"watch\");1;0)", doNow, doNow));
    due.formula(calc("{}+{}", lastTest, house.every));
    overdue.formula(
        calc(
            "IF(OR({}=\"set aside\";{}=\"retire\");0;IF({}<={};1;0))",
            doNow,
            doNow,
            or(due, 0),
            house.today()));
    shelfKey.formula(
        calc(
            "IF({}<>\"\";\"out: \"&{};IF({}=\"\";\"no shelf\";\"shelf \"&{}))&\"|\"&{}",
            or(outTo, ""),
            or(outTo, ""),
            or(shelf, ""),
            or(shelf, ""),
            serial));
    order.formula(calc("COUNTIF({};\"<\"&{})", shelfKey.all(), shelfKey));
    table.columns(
        serial, kind, bought, price, energy, cycles, shelf, outTo, backBy, condition, summary,
        warranty, decided, proposed, lastTest, health, loss, left, cost, apart, spread, toDo,
        testRow, doNow, fit, due, overdue, shelfKey, order);
    table.checks(checks(kinds));
  }

  /** True for what is set aside whatever the figures say. */
  private Formula hurt() {
    return calc("OR({}=\"swollen\";{}=\"dropped\";{}=\"wet\")", condition, condition, condition);
  }

  private Formula drifts() {
    return calc("{}>{}", or(spread, 0), house.spread);
  }

  private Formula undecided(Formula when) {
    return calc("AND({}=\"\";{})", or(decided, ""), when);
  }

  private ValidationRule[] checks(PackKindsSheet kinds) {
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("COUNTIF({};{})>1", serial.all(), serial),
          say("Duplicate: {}. Keep one row, and read the number on the pack.", serial)),
      ValidationRule.stop(
          calc("AND({};{}=1)", hurt(), fit),
          say(
              "Do not issue a battery that is {}, whatever was decided. Quarantine it once "
                  + "cold.",
              condition)),
      ValidationRule.stop(
          calc("AND({};{}<>\"\")", hurt(), or(outTo, "")),
          say(
              "{}, and out to {}: do not charge it. Do not fly it. Tell the borrower now.",
              condition,
              outTo)),
      ValidationRule.stop(
          undecided(hurt()),
          say(
              "{}: do not charge it. Quarantine it once cold, away from people and batteries,"
                  + " whatever its figures say. Then enter set aside under Decided.",
              condition)),
      ValidationRule.stop(
          calc("AND({}=0;{}<>\"\";{}<>\"service\")", fit, or(outTo, ""), doNow),
          say("{}, but out to {}: call it back.", doNow, outTo)),
      ValidationRule.check(
          calc(
              "AND({}<{};{}>={};{}<>\"retire\")",
              health,
              house.retire,
              warranty,
              house.today(),
              or(decided, "")),
          say(
              "Health {} is under {}, and the warranty runs until {}: claim it first.",
              health,
              house.retire,
              warranty)),
      ValidationRule.check(
          undecided(calc("{}<{}", health, house.retire)),
          say(
              "Health {} is under {}: retire it, then type retire under Decided.",
              health,
              house.retire)),
      ValidationRule.check(
          undecided(drifts()),
          say(
              "A cell stands {} V apart, at most {} V: balance it on its charger, rest it, test it"
                  + " again.",
              spread,
              house.spread)),
      ValidationRule.check(
          undecided(calc("{}=\"contacts\"", condition)),
          Formula.of(
              "Clean or replace the contacts: a bad one burns. Then set Condition to fine.")),
      ValidationRule.check(
          undecided(calc("{}=\"label unreadable\"", condition)),
          Formula.of(
              "Ask the maker for a new label: without printed Wh it neither flies nor ships.")),
      ValidationRule.check(
          calc("AND({}<{};{}<>\"\")", backBy, house.today(), or(outTo, "")),
          say("Overdue: out to {}, due {}.", or(outTo, ""), backBy)),
      ValidationRule.check(
          undecided(calc("{}=\"\"", or(health, ""))),
          Formula.of("No test counts yet: test it at room temperature before it goes out.")),
      ValidationRule.check(
          calc("AND({}=1;{}<>\"\")", overdue, or(outTo, "")),
          say("Test due {} while out to {}: test it when it is back.", due, or(outTo, ""))),
      ValidationRule.check(
          calc("{}=1", overdue), say("Test due {}: the last one is too old.", due)),
      ValidationRule.check(
          undecided(calc("{}=\"below\"", apart)),
          say("Health {} stands apart from its kind: test it again, then decide.", health)),
      ValidationRule.check(
          undecided(calc("{}<{}", health, house.watch)),
          say("Health {} is near the end: test it often, then type watch.", health)),
      ValidationRule.check(
          calc("{}=\"no\"", summary),
          Formula.of("No UN 38.3 test summary: ask the maker; freight refuses it without.")),
      ValidationRule.check(
          calc("COUNTIF({};{})=0", kinds.kind.all(), kind),
          say("By kind has no {}: add it there, so that it is counted.", kind))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Packs",
            "One row per battery. Fill in serial, kind, energy and condition first;"
                + " paste from your stock list. The proposal is next to the cell for your"
                + " decision.")
        .with(table);
  }
}
