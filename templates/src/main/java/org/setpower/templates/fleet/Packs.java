package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FleetFunctions;
import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Grid;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The packs of the house, one row for each piece. */
final class Packs {
  static final int ROOM = 300;

  /** What may be done with a pack; the first two leave it fit to go out. */
  static final String[] DEEDS = {"keep", "watch", "service", "set aside", "retire"};

  final Column serial =
      Column.input("Serial")
          .needed()
          .wide(24)
          .help("The number that stands on the pack, or the house's own. Each only once.");
  final Column kind =
      Column.input("Kind").orOther().needed().wide(20).help("As on By kind: P150, P294.");
  final Column bought = Column.input("Bought").as(Format.DATE).wide(32).help("From the invoice.");
  final Column price = Column.input("Price").number(Format.MONEY, 0, 1_000_000).wide(19);
  final Column energy =
      Column.input("Energy")
          .unit("Wh")
          .number(Format.WHOLE, 0.1, 100_000)
          .needed()
          .wide(16)
          .help("The Wh printed on the label; health is measured against it.");
  final Column cycles =
      Column.input("Cycles")
          .number(Format.COUNT, 0, 100_000)
          .wide(16)
          .help("Full charges so far: the pack's own counter, or the jobs it was on.");
  final Column shelf = Column.input("Shelf").wide(16).help("Where it lies when it is in: A2.");
  final Column outTo =
      Column.input("Out to").wide(30).help("The job or client that has it. Blank: it is in.");
  final Column backBy =
      Column.input("Back by").as(Format.DATE).wide(32).help("The date agreed for its return.");
  final Column condition =
      Column.input("Condition")
          .oneOf("fine", "dropped", "wet", "swollen", "contacts", "label unreadable")
          .needed()
          .wide(28)
          .help("What hand and eye say. contacts: bent, burnt or loose. The worst counts.");
  final Column summary =
      Column.input("UN 38.3 summary")
          .oneOf("yes", "no")
          .wide(20)
          .help("Is the maker's UN 38.3 test summary on file? Air and sea freight ask for it.");
  final Column warranty =
      Column.input("Warranty until").as(Format.DATE).wide(32).help("From the invoice.");
  final Column decided =
      Column.input("Decided")
          .oneOf(DEEDS)
          .wide(20)
          .help("What you do with it. Blank: what the register proposes beside this cell.");

  final Column proposed = Column.result("Proposed").wide(20);
  final Column lastTest =
      Column.result("Last test that counts").as(Format.DATE).mayBeBlank().wide(32);
  final Column health = Column.result("Health").as(Format.SHARE).wide(16);
  final Column loss = Column.result("Lost in 100 cycles").as(Format.SHARE).mayBeBlank().wide(19);
  final Column left = Column.result("Cycles left, at least").as(Format.COUNT).mayBeBlank().wide(19);
  final Column cost = Column.result("Cost so far").as(Format.MONEY).mayBeBlank().wide(22);
  final Column apart = Column.result("Apart from its kind").mayBeBlank().wide(19);
  final Column spread =
      Column.result("Cell spread").unit("V").as(Format.THREE).mayBeBlank().wide(17);
  final Column toDo = Column.result("On To do").mayBeBlank().wide(28);

  final Column testRow = Column.working("Row of the test");
  final Column doNow = Column.working("Do now");
  final Column fit = Column.working("Fit to go out");
  final Column due = Column.working("Test due").as(Format.DATE);
  final Column overdue = Column.working("Test overdue");
  final Column shelfKey = Column.working("Place and serial");
  final Column order = Column.working("Order by place");

  final Table table = Table.of("Packs", ROOM);
  final Grid odd;

  private final House house;

  Packs(House house) {
    this.house = house;
    price.unit(house.currency).help("What it cost, without tax: for the cost of a kWh.");
    cost.unit(calc("{}&\" a kWh\"", house.currency));
    odd =
        new Grid(
            "Packs that stand apart",
            ROOM,
            1,
            calc("IFERROR({};\"\")", call(FleetFunctions.ODD, health.all(), null, kind.all())));
  }

  /** Declares the columns that follow from the rest of the register. */
  void declare(Tests tests, Kinds kinds, ToDo list) {
    kind.oneOf(kinds.kind);
    Formula fitTests = tests.key.all();
    lastTest.by(
        calc(
            "IF(COUNTIFS({};{};{};\"fit\")=0;\"\";MAXIFS({};{};{};{};\"fit\"))",
            tests.serial.all(),
            serial,
            tests.compare.all(),
            tests.date.all(),
            tests.serial.all(),
            serial,
            tests.compare.all()));
    testRow.by(calc("MATCH({}&\"|\"&{};{};0)", serial, lastTest, fitTests));
    health.by(
        call(
            FleetFunctions.HEALTH,
            calc("INDEX({};{}+0*LEN({}))", tests.measured.all(), testRow, kind),
            energy));
    Formula atMostNew = calc("MIN(1;{})", health);
    loss.by(calc("IF({}=0;\"\";{})", cycles, call(FleetFunctions.LOSS, cycles, atMostNew)));
    left.by(call(FleetFunctions.CYCLESLEFT, cycles, atMostNew, house.retire));
    cost.by(call(HireFunctions.PERKWH, price, energy, cycles, atMostNew));
    Formula isOdd = calc("INDEX({};{})", odd.all(), serial.rowNumber());
    apart.by(
        calc(
            "IF({}=\"\";\"\";IF({}=0;\"no\";IF({}<AVERAGEIFS({};{};{});\"below\";\"above\")))",
            isOdd,
            isOdd,
            health,
            health.all(),
            kind.all(),
            kind));
    spread.by(calc("INDEX({};{})", tests.spread.all(), testRow));
    proposed.by(
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
    toDo.by(
        calc(
            "{}&\" \"&TEXT({};\"d mmm\")",
            list.task.where(list.openKey, serial),
            list.due.where(list.openKey, serial)));
    doNow.by(or(decided, proposed));
    fit.by(calc("IF(OR({}=\"keep\";{}=\"watch\");1;0)", doNow, doNow));
    due.by(calc("{}+{}", lastTest, house.every));
    overdue.by(
        calc(
            "IF(OR({}=\"set aside\";{}=\"retire\");0;IF({}<={};1;0))",
            doNow,
            doNow,
            or(due, 0),
            house.today()));
    shelfKey.by(
        calc(
            "IF({}<>\"\";\"out: \"&{};IF({}=\"\";\"no shelf\";\"shelf \"&{}))&\"|\"&{}",
            or(outTo, ""),
            or(outTo, ""),
            or(shelf, ""),
            or(shelf, ""),
            serial));
    order.by(calc("COUNTIF({};\"<\"&{})", shelfKey.all(), shelfKey));
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

  private Check[] checks(Kinds kinds) {
    return new Check[] {
      Check.stop(
          calc("COUNTIF({};{})>1", serial.all(), serial),
          say("{} stands here twice: keep one row, and read the number on the pack.", serial)),
      Check.stop(
          calc("AND({};{}=1)", hurt(), fit),
          say(
              "Do not issue a battery that is {}, whatever was decided. Quarantine it once "
                  + "cold.",
              condition)),
      Check.stop(
          calc("AND({};{}<>\"\")", hurt(), or(outTo, "")),
          say(
              "{}, and out to {}: do not charge it. Do not fly it. Tell the borrower now.",
              condition,
              outTo)),
      Check.stop(
          undecided(hurt()),
          say(
              "{}: do not charge it. Quarantine it once cold, away from people and batteries,"
                  + " whatever its figures say. Then enter set aside under Decided.",
              condition)),
      Check.stop(
          calc("AND({}=0;{}<>\"\";{}<>\"service\")", fit, or(outTo, ""), doNow),
          say("{}, but out to {}: call it back.", doNow, outTo)),
      Check.look(
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
      Check.look(
          undecided(calc("{}<{}", health, house.retire)),
          say(
              "Health {} is under {}: retire it, then type retire under Decided.",
              health,
              house.retire)),
      Check.look(
          undecided(drifts()),
          say(
              "A cell stands {} V apart, at most {} V: balance it on its charger, rest it, test it"
                  + " again.",
              spread,
              house.spread)),
      Check.look(
          undecided(calc("{}=\"contacts\"", condition)),
          Formula.of(
              "Clean or replace the contacts: a bad one burns. Then set Condition to fine.")),
      Check.look(
          undecided(calc("{}=\"label unreadable\"", condition)),
          Formula.of(
              "Ask the maker for a new label: without printed Wh it neither flies nor ships.")),
      Check.look(
          calc("AND({}<{};{}<>\"\")", backBy, house.today(), or(outTo, "")),
          say("Out to {}, due back {}: call them.", or(outTo, ""), backBy)),
      Check.look(
          undecided(calc("{}=\"\"", or(health, ""))),
          Formula.of("No test counts yet: test it at room temperature before it goes out.")),
      Check.look(
          calc("AND({}=1;{}<>\"\")", overdue, or(outTo, "")),
          say("Test due {} while out to {}: test it when it is back.", due, or(outTo, ""))),
      Check.look(calc("{}=1", overdue), say("Test due {}: the last one is too old.", due)),
      Check.look(
          undecided(calc("{}=\"below\"", apart)),
          say("Health {} stands apart from its kind: test it again, then decide.", health)),
      Check.look(
          undecided(calc("{}<{}", health, house.watch)),
          say("Health {} is near the end: test it often, then type watch.", health)),
      Check.look(
          calc("{}=\"no\"", summary),
          Formula.of("No UN 38.3 test summary: ask the maker; freight refuses it without.")),
      Check.look(
          calc("COUNTIF({};{})=0", kinds.kind.all(), kind),
          say("By kind has no {}: add it there, so that it is counted.", kind))
    };
  }

  Tab tab() {
    return Tab.of(
            "Packs",
            "One row for each pack. Fill serial, kind, energy and condition first; paste from your"
                + " stock list. What is proposed stands beside the cell in which you decide.")
        .with(table);
  }
}
