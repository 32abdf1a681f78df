package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import java.util.ArrayList;
import java.util.List;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.registry.groups.PlanFunctions;
import org.setpower.registry.groups.SheetFunctions;
import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Answers;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The whole day by the clock: what is swapped and charged when, and the fewest packs. */
final class Day {
  private static final int PARTS = 3; // before, between and after two breaks
  private static final int NEVER = 900;
  private static final int EVENTS = 1000;
  private static final int ON_CLOCK = 80;
  private static final int HOURS = 26;
  private static final int HALVES = 12; // hours that fit in half-hour steps
  private static final int UNCHARGED = 300;

  private final Column spanNumber = Column.result("No.").as(Format.COUNT);
  private final Column spanPosition = Column.result("Row of Positions").as(Format.COUNT);
  private final Column part = Column.result("Part").as(Format.COUNT);
  private final Column where = Column.result("Position");
  private final Column watts = Column.result("Power").unit("W").as(Format.ONE);
  private final Column from = Column.result("From").unit("h").as(Format.TWO);
  private final Column to = Column.result("To").unit("h").as(Format.TWO);
  private final Column energy = Column.result("Pack").unit("Wh").as(Format.ONE);
  private final Column atOnce = Column.result("Packs at once").as(Format.COUNT);
  private final Column partFrom = Column.result("Part from").unit("h").as(Format.TWO);
  private final Column partTo = Column.result("Part to").unit("h").as(Format.TWO);
  private final Column spanFrom = Column.result("On from").unit("h").as(Format.TWO);
  private final Column spanTo = Column.result("On to").unit("h").as(Format.TWO);
  private final Table spans = Table.of("Parts of the day", Positions.ROOM * PARTS);

  private final Column breakNumber = Column.result("No.").as(Format.COUNT);
  private final Column breakFrom = Column.result("Break from").unit("h").as(Format.TWO);
  private final Column breakTo = Column.result("Break to").unit("h").as(Format.TWO);
  private final Column offFrom = Column.result("In order, from").unit("h").as(Format.TWO);
  private final Column offTo = Column.result("In order, to").unit("h").as(Format.TWO);
  private final Table breaks = Table.of("Breaks", 2);

  private final Column mainsNumber = Column.result("No.").as(Format.COUNT);
  private final Column opensAt = Column.result("Opens").unit("h").as(Format.TWO);
  private final Column closesAt = Column.result("Closes").unit("h").as(Format.TWO);
  private final Column mainsFrom = Column.result("Mains from").unit("h").as(Format.TWO);
  private final Column mainsTo = Column.result("Mains to").unit("h").as(Format.TWO);
  private final Table mains = Table.of("Mains of the day", 2);

  private final Column stockNumber = Column.result("No.").as(Format.COUNT);
  private final Column stockKind = Column.result("Kind");
  private final Column stockEnergy = Column.result("Wh of a pack").unit("Wh").as(Format.ONE);
  private final Column stockPieces = Column.result("Pieces").as(Format.COUNT);
  private final Column sizeEnergy = Column.result("Wh of a size").unit("Wh").as(Format.ONE);
  private final Column sizeHours = Column.result("Hours of a size").unit("h").as(Format.TWO);
  private final Table stock = Table.of("Packs of the day", OnHand.ROOM);

  final Column hour = Column.result("Hour").unit("h").as(Format.TWO);
  final Column device = Column.result("Part").as(Format.COUNT);
  final Column number = Column.result("Pack").as(Format.COUNT);
  final Column inUse = Column.result("In use").as(Format.COUNT);
  final Column charging = Column.result("Charging").as(Format.COUNT);
  final Column onShelf = Column.result("On the shelf").as(Format.COUNT);
  final Column waiting = Column.result("Waiting").as(Format.COUNT);
  final Column ofKind = Column.result("Kind").as(Format.COUNT);
  final Column what = Column.result("What");
  final Answers events;

  private final Column running = Column.result("Running number").as(Format.COUNT);
  private final Column eventNumber = Column.result("No.").as(Format.COUNT);
  final Table marks = Table.of("Events for the clock", EVENTS);

  final Column planned = Column.result("Pieces").as(Format.COUNT);
  final Column plannedEnergy = Column.result("Wh").unit("Wh").as(Format.ONE);
  final Column always = Column.result("Pieces").as(Format.COUNT);
  final Column alwaysEnergy = Column.result("Wh").unit("Wh").as(Format.ONE);
  final Column never = Column.result("Pieces").as(Format.COUNT);
  final Column neverEnergy = Column.result("Wh").unit("Wh").as(Format.ONE);
  final Answers fewest;
  final Answers fewestAlways;
  final Answers fewestNever;

  final Column kind = Column.result("Kind").mayBeBlank().wide(60);
  final Column toPlan = Column.result("To plan with").as(Format.COUNT).mayBeBlank().wide(15);
  final Column need = Column.result("Fewest packs").as(Format.COUNT).mayBeBlank().wide(15);
  final Column shortOf = Column.result("Short of").as(Format.COUNT).mayBeBlank().wide(15);
  final Column needAlways =
      Column.result("Fewest, mains all day").as(Format.COUNT).mayBeBlank().wide(30);
  final Column needNever =
      Column.result("Fewest, nothing charged").as(Format.COUNT).mayBeBlank().wide(30);
  private final Column kindNumber = Column.working("No.").as(Format.COUNT);
  final Table kinds = Table.of("Packs for the day", 12);

  final Column clock = Column.result("Clock").as(Format.TIME).mayBeBlank().wide(15);
  final Column who = Column.result("Position").mayBeBlank().wide(60);
  final Column does = Column.result("What").mayBeBlank().wide(30);
  final Column count = Column.result("Packs").as(Format.COUNT).mayBeBlank().wide(15);
  final Column which = Column.result("Kind of pack").mayBeBlank().wide(30);
  final Column left = Column.result("Left on the shelf").as(Format.COUNT).mayBeBlank().wide(30);
  private final Column clockNumber = Column.working("No.").as(Format.COUNT);
  private final Column at = Column.working("Event").as(Format.COUNT);
  final Table byClock = Table.of("By the clock", ON_CLOCK);

  final Column oClock = Column.result("O'clock").mayBeBlank().wide(30);
  final Column shelf = Column.result("On the shelf").as(Format.COUNT).mayBeBlank().wide(30);
  final Column using = Column.result("In use").as(Format.COUNT).mayBeBlank().wide(30);
  final Column onCharge = Column.result("Charging").as(Format.COUNT).mayBeBlank().wide(30);
  final Column inLine = Column.result("Waiting to charge").as(Format.COUNT).mayBeBlank().wide(30);
  private final Column tick = Column.working("No.").as(Format.COUNT);
  private final Column moment = Column.working("Hour").unit("h").as(Format.ONE);
  private final Column momentAt = Column.working("Event").as(Format.COUNT);
  final Table overDay = Table.of("Packs over the day", HOURS);

  /** Hours that positions wait for a full pack, added up. */
  final Formula hoursLost;

  /** Why the day cannot be planned; no text when it can. */
  final Formula refused;

  private final DayJob day;
  private final Kit kit;
  private final Positions positions;
  private final OnHand onHand;
  private final Chargers chargers;

  Day(DayJob day, Kit kit, Positions positions, OnHand onHand, Chargers chargers) {
    this.day = day;
    this.kit = kit;
    this.positions = positions;
    this.onHand = onHand;
    this.chargers = chargers;
    Formula devices = watts.block(atOnce);
    Formula inDay = chargers.counts.all();
    Formula channels = calc("SUMIFS({};{};\"yes\")", chargers.channels.all(), inDay);
    Formula longest = calc("MAX(1;{})", sizeHours.all());
    Formula sizes = sizeEnergy.block(sizeHours);
    Formula windows = mainsFrom.block(mainsTo);
    Object[] whole = {
      devices, stockEnergy.block(stockPieces), channels, longest, day.coldest, windows, sizes
    };
    Formula plan = call(PlanFunctions.DAY, whole);
    hoursLost = calc("INDEX({};ROWS({});1)", plan, plan);
    List<Object> question = new ArrayList<>(List.of("PLAN.DAY"));
    question.addAll(List.of(whole));
    refused =
        calc(
            "IF(OR(COUNT({})>0;COUNT({})=0);\"\";\"stop: \"&IFERROR({};\"an input is in error\"))",
            hour.all(),
            watts.all(),
            call(SheetFunctions.WHY, question.toArray()));
    events =
        Answers.of(
            "Events", EVENTS, plan, hour, device, number, inUse, charging, onShelf, waiting, ofKind,
            what);
    fewest =
        Answers.of(
            "Fewest packs",
            OnHand.ROOM,
            call(PlanFunctions.PACKS, devices, channels, longest, day.coldest, windows, sizes),
            plannedEnergy,
            planned);
    fewestAlways =
        Answers.of(
            "Fewest packs, mains all day",
            OnHand.ROOM,
            call(PlanFunctions.PACKS, devices, channels, longest, day.coldest, "", sizes),
            alwaysEnergy,
            always);
    fewestNever =
        Answers.of(
            "Fewest packs, nothing charged",
            OnHand.ROOM,
            call(PlanFunctions.PACKS, devices, 0, 1, day.coldest),
            neverEnergy,
            never);
  }

  /** The hours that a position is on, breaks taken off. */
  Formula hoursOf(Column position) {
    return calc(
        "SUMIFS({};{};{})-SUMIFS({};{};{})",
        spanTo.all(),
        where.all(),
        position,
        spanFrom.all(),
        where.all(),
        position);
  }

  void declare() {
    parts();
    charging();
    words();
  }

  private static Column numbered(Column column) {
    return column.by(column.rowNumber()).inBlankRowsToo();
  }

  private void parts() {
    numbered(breakNumber);
    breakFrom.by(ofBreak(day.hour(or(day.lunchFrom, 0)), day.hour(or(day.moveFrom, 0))));
    breakTo.by(
        ofBreak(
            day.end(or(day.lunchTo, 0), day.hour(or(day.lunchFrom, 0))),
            day.end(or(day.moveTo, 0), day.hour(or(day.moveFrom, 0)))));
    offFrom.by(calc("SMALL({};{})", breakFrom.all(), breakNumber));
    offTo.by(calc("SMALL({};{})", breakTo.all(), breakNumber));
    breaks.columns(breakNumber, breakFrom, breakTo, offFrom, offTo);

    numbered(spanNumber);
    spanPosition.by(calc("INT(({}-1)/" + PARTS + ")+1", spanNumber));
    part.by(calc("MOD({}-1;" + PARTS + ")", spanNumber));
    where.by(calc("{}&\"\"", at(positions.position)));
    Formula whole = calc("{}=\"yes\"", at(positions.staysOn));
    partFrom.by(
        calc(
            "IF({};IF({}=0;{};\"\");IF({}=0;{};MAX({};INDEX({};{}))))",
            whole,
            part,
            at(positions.first),
            part,
            at(positions.first),
            at(positions.first),
            offTo.all(),
            part));
    partTo.by(
        calc(
            "IF({};IF({}=0;{};\"\");IF({}=" + (PARTS - 1) + ";{};MIN({};INDEX({};{}+1))))",
            whole,
            part,
            at(positions.last),
            part,
            at(positions.last),
            at(positions.last),
            offFrom.all(),
            part));
    spanFrom.by(calc("IF({}>{};{};\"\")", partTo, partFrom, partFrom));
    spanTo.by(calc("IF({}>{};{};\"\")", partTo, partFrom, partTo));
    Formula lasts = at(positions.hours);
    Formula pack = kit.wattHours.where(kit.pack, at(positions.feed.pack));
    Formula set = calc("{}*{}", at(positions.series), at(positions.parallel));
    Formula pieces = calc("MAX(1;N({}))", at(positions.quantity));
    from.by(calc("IF({}=\"\";\"\";{})", lasts, spanFrom));
    to.by(calc("IF({}=\"\";\"\";{})", from, spanTo));
    watts.by(
        calc(
            "IF({}=\"\";\"\";{}*{}/{})",
            from,
            pieces,
            call(PackFunctions.RUNTIME, calc("{}*{}", pack, set), 1, 1, 1, day.coldest),
            lasts));
    energy.by(calc("IF({}=\"\";\"\";{})", from, pack));
    atOnce.by(calc("IF({}=\"\";\"\";{}*{})", from, set, pieces));
    spans.columns(
        spanNumber,
        spanPosition,
        part,
        where,
        watts,
        from,
        to,
        energy,
        atOnce,
        partFrom,
        partTo,
        spanFrom,
        spanTo);
  }

  /** A figure of the lunch in the first row, of the move in the second; never if not filled. */
  private Formula ofBreak(Formula lunch, Formula move) {
    return calc(
        "IF({}=1;IF(OR({}=\"\";{}=\"\");"
            + NEVER
            + ";{});IF(OR({}=\"\";{}=\"\");"
            + NEVER
            + ";{}))",
        breakNumber,
        or(day.lunchFrom, ""),
        or(day.lunchTo, ""),
        lunch,
        or(day.moveFrom, ""),
        or(day.moveTo, ""),
        move);
  }

  private Formula at(Column ofPositions) {
    return calc("INDEX({};{})", ofPositions.all(), spanPosition);
  }

  private void charging() {
    Formula inDay = chargers.counts.all();
    Formula opens = calc("MAXIFS({};{};\"yes\")", chargers.fromHour.all(), inDay);
    Formula closes = calc("MINIFS({};{};\"yes\")", chargers.toHour.all(), inDay);
    Formula quiet = calc("MINIFS({};{};\"yes\")", chargers.deadFromHour.all(), inDay);
    Formula again = calc("MAXIFS({};{};\"yes\")", chargers.deadToHour.all(), inDay);
    numbered(mainsNumber);
    opensAt.by(
        calc(
            "IF({}=1;{};IF({}=0;" + NEVER + ";MAX({};{})))",
            mainsNumber,
            opens,
            quiet,
            opens,
            again));
    closesAt.by(
        calc("IF(AND({}=1;{}>0);MIN({};{});MAX(1;{}))", mainsNumber, quiet, closes, quiet, closes));
    mainsFrom.by(calc("IF({}<{};{};\"\")", opensAt, closesAt, opensAt));
    mainsTo.by(calc("IF({}<{};{};\"\")", opensAt, closesAt, closesAt));
    mains.columns(mainsNumber, opensAt, closesAt, mainsFrom, mainsTo);

    numbered(stockNumber);
    stockKind.by(calc("INDEX({};{})&\"\"", onHand.kind.all(), stockNumber));
    Formula label = calc("INDEX({};{})", onHand.energy.all(), stockNumber);
    stockEnergy.by(calc("IF(N(+{})=0;\"\";{})", label, label));
    stockPieces.by(
        calc(
            "IF({}=\"\";\"\";MAX(0;INDEX({};{})))", stockEnergy, onHand.toPlan.all(), stockNumber));
    sizeEnergy.by(stockEnergy);
    Formula charge =
        chargers.hoursOf(
            stockKind,
            calc("MINIFS({};{};\"yes\")", chargers.amps.all(), inDay),
            calc("MINIFS({};{};\"yes\")", chargers.celsius.all(), inDay));
    sizeHours.by(
        calc(
            "IF({}=\"\";\"\";IFERROR({}+MAXIFS({};{};\"yes\")/60+MAXIFS({};{};\"yes\");"
                + UNCHARGED
                + "))",
            stockEnergy,
            charge,
            chargers.runner.all(),
            inDay,
            chargers.warming.all(),
            inDay));
    stock.columns(stockNumber, stockKind, stockEnergy, stockPieces, sizeEnergy, sizeHours);
  }

  private void words() {
    numbered(eventNumber);
    Formula earlier = calc("MAX(1;{}-1)", eventNumber);
    running.by(
        calc(
            "IF(AND(N(INDEX({};{}))>0;OR({}=1;INDEX({};{})<>INDEX({};{});INDEX({};{})<>INDEX({};{});"
                + "INDEX({};{})<>INDEX({};{})));MAX(0;{})+1;\"\")",
            device.all(),
            eventNumber,
            eventNumber,
            hour.all(),
            eventNumber,
            hour.all(),
            earlier,
            device.all(),
            eventNumber,
            device.all(),
            earlier,
            what.all(),
            eventNumber,
            what.all(),
            earlier,
            running.above()));
    marks.columns(eventNumber, running);

    numbered(clockNumber);
    at.by(calc("MATCH({};{};0)", clockNumber, running.all()));
    clock.by(calc("MOD({};24)/24", event(hour)));
    who.by(calc("INDEX({};{})", where.all(), event(device)));
    does.by(event(what));
    count.by(
        calc(
            "IF({}=0;\"\";COUNTIFS({};{};{};{};{};{}))",
            event(ofKind),
            hour.all(),
            event(hour),
            device.all(),
            event(device),
            what.all(),
            event(what)));
    which.by(calc("IF({}=0;\"\";INDEX({};{}))", event(ofKind), onHand.kind.all(), event(ofKind)));
    left.by(event(onShelf));
    byClock.columns(clock, who, does, count, which, left, clockNumber, at);

    numbered(kindNumber);
    Formula energyOfRow = calc("INDEX({};{})", onHand.energy.all(), kindNumber);
    kind.by(calc("INDEX({};{})&\"\"", onHand.kind.all(), kindNumber));
    toPlan.by(ofKind(onHand.toPlan));
    need.by(ofKind(onHand.fewest));
    shortOf.by(calc("MAX(0;{}-{})", need, toPlan));
    needAlways.by(fewestOf(always, alwaysEnergy, energyOfRow));
    needNever.by(fewestOf(never, neverEnergy, energyOfRow));
    kinds.columns(kind, toPlan, need, shortOf, needAlways, needNever, kindNumber);

    numbered(tick);
    Formula begins = calc("FLOOR(MIN({});1)", from.all());
    Formula length = calc("MAX({})-{}", to.all(), begins);
    moment.by(calc("{}+({}-1)*IF({}>" + HALVES + ";1;0.5)", begins, tick, length));
    momentAt.by(
        calc(
            "IF(OR({}>MAX({})+1;AND({}>MAX({});COUNTIF({};\"hours lost\")=0));\"\";"
                + "COUNTIFS({};\"<=\"&{};{};\"<>hours lost\"))",
            moment,
            to.all(),
            moment, // more events than fit: nothing is shown after the last of them
            hour.all(),
            what.all(),
            hour.all(),
            moment,
            what.all()));
    oClock.by(calc("IF({}=\"\";\"\";TEXT(MOD({};24)/24;\"hh:mm\"))", momentAt, moment));
    shelf.by(calc("INDEX({};{})", onShelf.all(), momentAt));
    using.by(calc("INDEX({};{})", inUse.all(), momentAt));
    onCharge.by(calc("INDEX({};{})", charging.all(), momentAt));
    inLine.by(calc("INDEX({};{})", waiting.all(), momentAt));
    overDay.columns(oClock, shelf, using, onCharge, inLine, tick, moment, momentAt);
  }

  private Formula ofKind(Column ofOnHand) {
    return calc("IF({}=\"\";\"\";INDEX({};{}))", kind, ofOnHand.all(), kindNumber);
  }

  private Formula event(Column of) {
    return calc("INDEX({};{})", of.all(), at);
  }

  /** The fewest packs of a kind with which no position waits. */
  Formula fewestOf(Column kindEnergy) {
    return fewestOf(planned, plannedEnergy, kindEnergy);
  }

  private static Formula fewestOf(Column pieces, Column ofEnergy, Formula kindEnergy) {
    return calc(
        "IF(OR({}=\"\";COUNT({})=0);\"\";IFERROR({};0))",
        kindEnergy,
        ofEnergy.all(),
        pieces.where(ofEnergy, kindEnergy));
  }

  /** Says that there is more than a table shows. */
  Lines more(int room) {
    return Lines.notes(
        "",
        calc(
            "IF(MAX({})>"
                + room
                + ";\"look: \"&MAX({})-"
                + room
                + "&\" more than fit here.\";\"\")",
            running.all(),
            running.all()));
  }

  BarChart chart(int rows) {
    return BarChart.lines(
        "Packs over the day", rows, "Packs", oClock, shelf, using, onCharge, inLine);
  }

  Tab tab() {
    return Tab.of(
            "Day",
            "Nothing to fill: what happens by the clock with the packs to plan with and the"
                + " chargers that say yes at In the day. All packs start full.")
        .grid(12, 15)
        .portrait()
        .with(Lines.notes("", refused), kinds, chart(14))
        .newPage(byClock)
        .with(more(ON_CLOCK))
        .newPage(overDay);
  }

  /** Figures that nobody reads. */
  Tab working() {
    return Tab.working("Working")
        .with(spans, breaks, mains, stock, events, marks, fewest, fewestAlways, fewestNever);
  }
}
