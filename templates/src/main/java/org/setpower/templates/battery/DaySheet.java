package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import java.util.ArrayList;
import java.util.List;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.registry.groups.PlanFunctions;
import org.setpower.registry.groups.SheetFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;

/** The whole day by the clock: what is swapped and charged when, and the fewest packs. */
final class DaySheet {
  private static final int PARTS = 3; // before, between and after two breaks
  private static final int NEVER = 900;
  private static final int EVENTS = 1000;
  private static final int ON_CLOCK = 80;
  private static final int HOURS = 26;
  private static final int HALVES = 12; // hours that fit in half-hour steps
  private static final int UNCHARGED = 300;

  private final ColumnSpec spanNumber = ColumnSpec.result("No.").format(CellFormat.COUNT);
  private final ColumnSpec spanPosition =
      ColumnSpec.result("Row of Positions").format(CellFormat.COUNT);
  private final ColumnSpec part = ColumnSpec.result("Part").format(CellFormat.COUNT);
  private final ColumnSpec where = ColumnSpec.result("Position");
  private final ColumnSpec watts = ColumnSpec.result("Power").unit("W").format(CellFormat.ONE);
  private final ColumnSpec from = ColumnSpec.result("From").unit("h").format(CellFormat.TWO);
  private final ColumnSpec to = ColumnSpec.result("To").unit("h").format(CellFormat.TWO);
  private final ColumnSpec energy = ColumnSpec.result("Pack").unit("Wh").format(CellFormat.ONE);
  private final ColumnSpec atOnce = ColumnSpec.result("Packs at once").format(CellFormat.COUNT);
  private final ColumnSpec partFrom =
      ColumnSpec.result("Part from").unit("h").format(CellFormat.TWO);
  private final ColumnSpec partTo = ColumnSpec.result("Part to").unit("h").format(CellFormat.TWO);
  private final ColumnSpec spanFrom = ColumnSpec.result("On from").unit("h").format(CellFormat.TWO);
  private final ColumnSpec spanTo = ColumnSpec.result("On to").unit("h").format(CellFormat.TWO);
  private final TableSpec spans = TableSpec.of("Parts of the day", PositionsSheet.ROOM * PARTS);

  private final ColumnSpec breakNumber = ColumnSpec.result("No.").format(CellFormat.COUNT);
  private final ColumnSpec breakFrom =
      ColumnSpec.result("Break from").unit("h").format(CellFormat.TWO);
  private final ColumnSpec breakTo = ColumnSpec.result("Break to").unit("h").format(CellFormat.TWO);
  private final ColumnSpec offFrom =
      ColumnSpec.result("In order, from").unit("h").format(CellFormat.TWO);
  private final ColumnSpec offTo =
      ColumnSpec.result("In order, to").unit("h").format(CellFormat.TWO);
  private final TableSpec breaks = TableSpec.of("Breaks", 2);

  private final ColumnSpec mainsNumber = ColumnSpec.result("No.").format(CellFormat.COUNT);
  private final ColumnSpec opensAt = ColumnSpec.result("Opens").unit("h").format(CellFormat.TWO);
  private final ColumnSpec closesAt = ColumnSpec.result("Closes").unit("h").format(CellFormat.TWO);
  private final ColumnSpec mainsFrom =
      ColumnSpec.result("Mains from").unit("h").format(CellFormat.TWO);
  private final ColumnSpec mainsTo = ColumnSpec.result("Mains to").unit("h").format(CellFormat.TWO);
  private final TableSpec mains = TableSpec.of("Mains of the day", 2);

  private final ColumnSpec stockNumber = ColumnSpec.result("No.").format(CellFormat.COUNT);
  private final ColumnSpec stockKind = ColumnSpec.result("Kind");
  private final ColumnSpec stockEnergy =
      ColumnSpec.result("Wh of a pack").unit("Wh").format(CellFormat.ONE);
  private final ColumnSpec stockPieces = ColumnSpec.result("Pieces").format(CellFormat.COUNT);
  private final ColumnSpec stockHealth =
      ColumnSpec.result("Health of a pack").format(CellFormat.SHARE);
  private final ColumnSpec sizeEnergy =
      ColumnSpec.result("Wh of a size").unit("Wh").format(CellFormat.ONE);
  private final ColumnSpec sizeHours =
      ColumnSpec.result("Hours of a size").unit("h").format(CellFormat.TWO);
  private final TableSpec stock = TableSpec.of("Packs of the day", PacksOnHandSheet.ROOM);

  final ColumnSpec hour = ColumnSpec.result("Hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec device = ColumnSpec.result("Part").format(CellFormat.COUNT);
  final ColumnSpec number = ColumnSpec.result("Pack").format(CellFormat.COUNT);
  final ColumnSpec inUse = ColumnSpec.result("In use").format(CellFormat.COUNT);
  final ColumnSpec charging = ColumnSpec.result("Charging").format(CellFormat.COUNT);
  final ColumnSpec onShelf = ColumnSpec.result("On the shelf").format(CellFormat.COUNT);
  final ColumnSpec waiting = ColumnSpec.result("Waiting").format(CellFormat.COUNT);
  final ColumnSpec ofKind = ColumnSpec.result("Kind").format(CellFormat.COUNT);
  final ColumnSpec what = ColumnSpec.result("What");
  final ArrayResult events;

  private final ColumnSpec running = ColumnSpec.result("Running number").format(CellFormat.COUNT);
  private final ColumnSpec eventNumber = ColumnSpec.result("No.").format(CellFormat.COUNT);
  final TableSpec marks = TableSpec.of("Events for the clock", EVENTS);

  final ColumnSpec planned = ColumnSpec.result("Pieces").format(CellFormat.COUNT);
  final ColumnSpec plannedEnergy = ColumnSpec.result("Wh").unit("Wh").format(CellFormat.ONE);
  final ColumnSpec always = ColumnSpec.result("Pieces").format(CellFormat.COUNT);
  final ColumnSpec alwaysEnergy = ColumnSpec.result("Wh").unit("Wh").format(CellFormat.ONE);
  final ColumnSpec never = ColumnSpec.result("Pieces").format(CellFormat.COUNT);
  final ColumnSpec neverEnergy = ColumnSpec.result("Wh").unit("Wh").format(CellFormat.ONE);
  final ArrayResult fewest;
  final ArrayResult fewestAlways;
  final ArrayResult fewestNever;

  final ColumnSpec kind = ColumnSpec.result("Kind").mayBeBlank().width(60);
  final ColumnSpec toPlan =
      ColumnSpec.result("Available").format(CellFormat.COUNT).mayBeBlank().width(15);
  final ColumnSpec need =
      ColumnSpec.result("Fewest packs").format(CellFormat.COUNT).mayBeBlank().width(15);
  final ColumnSpec shortOf =
      ColumnSpec.result("Short of").format(CellFormat.COUNT).mayBeBlank().width(15);
  final ColumnSpec needAlways =
      ColumnSpec.result("Fewest, mains all day").format(CellFormat.COUNT).mayBeBlank().width(30);
  final ColumnSpec needNever =
      ColumnSpec.result("Min. without charging").format(CellFormat.COUNT).mayBeBlank().width(30);
  private final ColumnSpec kindNumber = ColumnSpec.working("No.").format(CellFormat.COUNT);
  final TableSpec kinds = TableSpec.of("Packs for the day", 12);

  final ColumnSpec clock = ColumnSpec.result("Time").format(CellFormat.TIME).mayBeBlank().width(15);
  final ColumnSpec who = ColumnSpec.result("Position").mayBeBlank().width(60);
  final ColumnSpec does = ColumnSpec.result("What").mayBeBlank().width(30);
  final ColumnSpec count =
      ColumnSpec.result("Packs").format(CellFormat.COUNT).mayBeBlank().width(15);
  final ColumnSpec which = ColumnSpec.result("Kind of pack").mayBeBlank().width(30);
  final ColumnSpec left =
      ColumnSpec.result("Remaining").format(CellFormat.COUNT).mayBeBlank().width(30);
  private final ColumnSpec clockNumber = ColumnSpec.working("No.").format(CellFormat.COUNT);
  private final ColumnSpec at = ColumnSpec.working("Event").format(CellFormat.COUNT);
  final TableSpec byClock = TableSpec.of("Timeline", ON_CLOCK);

  final ColumnSpec oClock = ColumnSpec.result("Time").mayBeBlank().width(30);
  final ColumnSpec shelf =
      ColumnSpec.result("On the shelf").format(CellFormat.COUNT).mayBeBlank().width(30);
  final ColumnSpec using =
      ColumnSpec.result("In use").format(CellFormat.COUNT).mayBeBlank().width(30);
  final ColumnSpec onCharge =
      ColumnSpec.result("Charging").format(CellFormat.COUNT).mayBeBlank().width(30);
  final ColumnSpec inLine =
      ColumnSpec.result("Waiting to charge").format(CellFormat.COUNT).mayBeBlank().width(30);
  private final ColumnSpec tick = ColumnSpec.working("No.").format(CellFormat.COUNT);
  private final ColumnSpec moment = ColumnSpec.working("Hour").unit("h").format(CellFormat.ONE);
  private final ColumnSpec momentAt = ColumnSpec.working("Event").format(CellFormat.COUNT);
  final TableSpec overDay = TableSpec.of("Packs over the day", HOURS);

  /** Hours that positions wait for a full pack, added up. */
  final Formula hoursLost;

  /** Why the day cannot be planned; no text when it can. */
  final Formula refused;

  private final BatteryJobSheet day;
  private final EquipmentSheet kit;
  private final PositionsSheet positions;
  private final PacksOnHandSheet onHand;
  private final ChargersSheet chargers;

  DaySheet(
      BatteryJobSheet day,
      EquipmentSheet kit,
      PositionsSheet positions,
      PacksOnHandSheet onHand,
      ChargersSheet chargers) {
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
      devices, stockEnergy.block(stockHealth), channels, longest, day.coldest, windows, sizes
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
        ArrayResult.of(
            "Events", EVENTS, plan, hour, device, number, inUse, charging, onShelf, waiting, ofKind,
            what);
    fewest =
        ArrayResult.of(
            "Fewest packs",
            PacksOnHandSheet.ROOM,
            call(PlanFunctions.PACKS, devices, channels, longest, day.coldest, windows, sizes),
            plannedEnergy,
            planned);
    fewestAlways =
        ArrayResult.of(
            "Fewest packs, mains all day",
            PacksOnHandSheet.ROOM,
            call(PlanFunctions.PACKS, devices, channels, longest, day.coldest, "", sizes),
            alwaysEnergy,
            always);
    fewestNever =
        ArrayResult.of(
            "Fewest packs, nothing charged",
            PacksOnHandSheet.ROOM,
            call(PlanFunctions.PACKS, devices, 0, 1, day.coldest),
            neverEnergy,
            never);
  }

  /** The hours that a position is on, breaks taken off. */
  Formula hoursOf(ColumnSpec position) {
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

  private static ColumnSpec numbered(ColumnSpec column) {
    return column.formula(column.rowNumber()).inBlankRowsToo();
  }

  private void parts() {
    numbered(breakNumber);
    breakFrom.formula(ofBreak(day.hour(or(day.lunchFrom, 0)), day.hour(or(day.moveFrom, 0))));
    breakTo.formula(
        ofBreak(
            day.end(or(day.lunchTo, 0), day.hour(or(day.lunchFrom, 0))),
            day.end(or(day.moveTo, 0), day.hour(or(day.moveFrom, 0)))));
    offFrom.formula(calc("SMALL({};{})", breakFrom.all(), breakNumber));
    offTo.formula(calc("SMALL({};{})", breakTo.all(), breakNumber));
    breaks.columns(breakNumber, breakFrom, breakTo, offFrom, offTo);

    numbered(spanNumber);
    spanPosition.formula(calc("INT(({}-1)/" + PARTS + ")+1", spanNumber));
    part.formula(calc("MOD({}-1;" + PARTS + ")", spanNumber));
    where.formula(calc("{}&\"\"", at(positions.position)));
    Formula whole = calc("{}=\"yes\"", at(positions.staysOn));
    partFrom.formula(
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
    partTo.formula(
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
    spanFrom.formula(calc("IF({}>{};{};\"\")", partTo, partFrom, partFrom));
    spanTo.formula(calc("IF({}>{};{};\"\")", partTo, partFrom, partTo));
    Formula lasts = at(positions.hours);
    Formula pack = kit.wattHours.lookup(kit.pack, at(positions.feed.pack));
    Formula set = calc("{}*{}", at(positions.series), at(positions.parallel));
    Formula pieces = calc("MAX(1;N({}))", at(positions.quantity));
    from.formula(calc("IF({}=\"\";\"\";{})", lasts, spanFrom));
    to.formula(calc("IF({}=\"\";\"\";{})", from, spanTo));
    watts.formula(
        calc(
            "IF({}=\"\";\"\";{}*{}/{})",
            from,
            pieces,
            call(PackFunctions.RUNTIME, calc("{}*{}", pack, set), 1, 1, 1, day.coldest, "Li-ion"),
            lasts));
    energy.formula(calc("IF({}=\"\";\"\";{})", from, pack));
    atOnce.formula(calc("IF({}=\"\";\"\";{}*{})", from, set, pieces));
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

  private Formula at(ColumnSpec ofPositions) {
    return calc("INDEX({};{})", ofPositions.all(), spanPosition);
  }

  private void charging() {
    Formula inDay = chargers.counts.all();
    Formula opens = calc("MAXIFS({};{};\"yes\")", chargers.fromHour.all(), inDay);
    Formula closes = calc("MINIFS({};{};\"yes\")", chargers.toHour.all(), inDay);
    Formula quiet = calc("MINIFS({};{};\"yes\")", chargers.deadFromHour.all(), inDay);
    Formula again = calc("MAXIFS({};{};\"yes\")", chargers.deadToHour.all(), inDay);
    numbered(mainsNumber);
    opensAt.formula(
        calc(
            "IF({}=1;{};IF({}=0;" + NEVER + ";MAX({};{})))",
            mainsNumber,
            opens,
            quiet,
            opens,
            again));
    closesAt.formula(
        calc("IF(AND({}=1;{}>0);MIN({};{});MAX(1;{}))", mainsNumber, quiet, closes, quiet, closes));
    mainsFrom.formula(calc("IF({}<{};{};\"\")", opensAt, closesAt, opensAt));
    mainsTo.formula(calc("IF({}<{};{};\"\")", opensAt, closesAt, closesAt));
    mains.columns(mainsNumber, opensAt, closesAt, mainsFrom, mainsTo);

    numbered(stockNumber);
    stockKind.formula(calc("INDEX({};{})&\"\"", onHand.kind.all(), stockNumber));
    Formula label = calc("INDEX({};{})", onHand.energy.all(), stockNumber);
    stockEnergy.formula(calc("IF(N(+{})=0;\"\";{})", label, label));
    stockPieces.formula(
        calc(
            "IF({}=\"\";\"\";MAX(0;INDEX({};{})))", stockEnergy, onHand.toPlan.all(), stockNumber));
    stockHealth.formula(calc("IF({}=\"\";\"\";1)", stockEnergy));
    sizeEnergy.formula(stockEnergy);
    Formula charge =
        chargers.hoursOf(
            stockKind,
            calc("MINIFS({};{};\"yes\")", chargers.amps.all(), inDay),
            calc("MINIFS({};{};\"yes\")", chargers.celsius.all(), inDay));
    sizeHours.formula(
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
    stock.columns(
        stockNumber, stockKind, stockEnergy, stockPieces, stockHealth, sizeEnergy, sizeHours);
  }

  private void words() {
    numbered(eventNumber);
    Formula earlier = calc("MAX(1;{}-1)", eventNumber);
    running.formula(
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
    at.formula(calc("MATCH({};{};0)", clockNumber, running.all()));
    clock.formula(calc("MOD({};24)/24", event(hour)));
    who.formula(calc("INDEX({};{})", where.all(), event(device)));
    does.formula(event(what));
    count.formula(
        calc(
            "IF({}=0;\"\";COUNTIFS({};{};{};{};{};{}))",
            event(ofKind),
            hour.all(),
            event(hour),
            device.all(),
            event(device),
            what.all(),
            event(what)));
    which.formula(
        calc("IF({}=0;\"\";INDEX({};{}))", event(ofKind), onHand.kind.all(), event(ofKind)));
    left.formula(event(onShelf));
    byClock.columns(clock, who, does, count, which, left, clockNumber, at);

    numbered(kindNumber);
    Formula energyOfRow = calc("INDEX({};{})", onHand.energy.all(), kindNumber);
    kind.formula(calc("INDEX({};{})&\"\"", onHand.kind.all(), kindNumber));
    toPlan.formula(ofKind(onHand.toPlan));
    need.formula(ofKind(onHand.fewest));
    shortOf.formula(calc("MAX(0;{}-{})", need, toPlan));
    needAlways.formula(fewestOf(always, alwaysEnergy, energyOfRow));
    needNever.formula(fewestOf(never, neverEnergy, energyOfRow));
    kinds.columns(kind, toPlan, need, shortOf, needAlways, needNever, kindNumber);

    numbered(tick);
    Formula begins = calc("FLOOR(MIN({});1)", from.all());
    Formula length = calc("MAX({})-{}", to.all(), begins);
    moment.formula(calc("{}+({}-1)*IF({}>" + HALVES + ";1;0.5)", begins, tick, length));
    momentAt.formula(
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
    oClock.formula(calc("IF({}=\"\";\"\";TEXT(MOD({};24)/24;\"hh:mm\"))", momentAt, moment));
    shelf.formula(calc("INDEX({};{})", onShelf.all(), momentAt));
    using.formula(calc("INDEX({};{})", inUse.all(), momentAt));
    onCharge.formula(calc("INDEX({};{})", charging.all(), momentAt));
    inLine.formula(calc("INDEX({};{})", waiting.all(), momentAt));
    overDay.columns(oClock, shelf, using, onCharge, inLine, tick, moment, momentAt);
  }

  private Formula ofKind(ColumnSpec ofOnHand) {
    return calc("IF({}=\"\";\"\";INDEX({};{}))", kind, ofOnHand.all(), kindNumber);
  }

  private Formula event(ColumnSpec of) {
    return calc("INDEX({};{})", of.all(), at);
  }

  /** The fewest packs of a kind with which no position waits. */
  Formula fewestOf(ColumnSpec kindEnergy) {
    return fewestOf(planned, plannedEnergy, kindEnergy);
  }

  private static Formula fewestOf(ColumnSpec pieces, ColumnSpec ofEnergy, Formula kindEnergy) {
    return calc(
        "IF(OR({}=\"\";COUNT({})=0);\"\";IFERROR({};0))",
        kindEnergy,
        ofEnergy.all(),
        pieces.lookup(ofEnergy, kindEnergy));
  }

  /** Says that there is more than a table shows. */
  TextBlock more(int room) {
    return TextBlock.notes(
        "",
        calc(
            "IF(MAX({})>"
                + room
                + ";\"check: \"&MAX({})-"
                + room
                + "&\" more than fit here.\";\"\")",
            running.all(),
            running.all()));
  }

  BarChart chart(int rows) {
    return BarChart.lines(
        "Packs over the day", rows, "Packs", oClock, shelf, using, onCharge, inLine);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Day",
            "Nothing to fill: what happens by the clock with the packs to plan with and the"
                + " chargers that say yes at In the day. All packs start full.")
        .grid(12, 15)
        .portrait()
        .with(TextBlock.notes("", refused), kinds, chart(14))
        .newPage(byClock)
        .with(more(ON_CLOCK))
        .newPage(overDay);
  }

  /** Figures that nobody reads. */
  SheetSpec working() {
    return SheetSpec.working("Working")
        .with(spans, breaks, mains, stock, events, marks, fewest, fewestAlways, fewestNever);
  }
}
