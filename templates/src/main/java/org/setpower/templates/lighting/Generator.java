package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.GensetFunctions;
import org.setpower.templates.shared.Job;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The generator: its size, its days, its fuel, and the order for it. */
final class Generator {
  /** Under this share of its rating a diesel soots up; over the other it wears day by day. */
  private static final String LOW = "30%";

  private static final String HIGH = "70%";

  private final PlanJob plan;
  private final Supply supply;
  private final Loads loads;
  private final Runs runs;
  private final Legs legs;
  final GeneratorTerms terms;
  final Running running;

  final Column size =
      Column.input("Size on offer")
          .unit("kVA")
          .number(Format.ONE, 1, 5000)
          .needed()
          .help("Each size the rental house has, as it stands on the set.")
          .wide(36);
  final Column sizeKw = Column.result("Rated").unit("kW").as(Format.ONE).wide(24);
  final Column sizeShare = share("Load at the busiest").wide(30);
  final Column quietShare = share("Most load on the quietest day").wide(36);
  final Column enough = Column.result("Enough?").mayBeBlank().wide(24);
  final Table sizes = Table.of("Sizes on offer", 10);

  final Column name = Column.result("Set that is rated").wide(60);
  final Column watts = Column.result("All legs as the busiest").unit("W").as(Format.WHOLE).wide(30);
  final Column starting =
      Column.result("When the worst starts").unit("W").as(Format.WHOLE).wide(30);
  final Column needed = Column.result("Rating needed").unit("kVA").as(Format.ONE).wide(24);
  final Column pick = Column.result("Size proposed").unit("kVA").as(Format.ONE).wide(24);
  final Column counted = Column.result("Size that counts").unit("kVA").as(Format.ONE).wide(24);
  final Column rated = Column.result("Rated").unit("kW").as(Format.ONE).wide(18);
  final Column derated = Column.result("Gives there").unit("kW").as(Format.ONE).wide(18);
  final Table rating = Table.of("Rating", 1);

  final Column day = Column.result("Day of the set").wide(30);
  final Column date = Column.result("Date").as(Format.DAY).wide(24);
  final Column from = Column.result("Starts").as(Format.TIME).wide(12);
  final Column to = Column.result("Stops").as(Format.TIME).wide(12);
  final Column hours = Column.result("Run time").unit("h").as(Format.TWO).wide(12);
  final Column busiest = Column.result("Busiest").unit("kW").as(Format.TWO).wide(18);
  final Column share = share("Load at the busiest").wide(18);
  final Column mean = share("Mean load").wide(18);
  final Column low = Column.result("Under 30 % load").unit("h").as(Format.TWO).wide(18);
  final Column energy = Column.result("Energy").unit("kWh").as(Format.ONE).wide(18);
  final Column fuel = Column.result("Fuel").as(Format.ONE).wide(12);
  final Column soFar = Column.working("Fuel so far").as(Format.ONE);
  final Column carbon = Column.result("CO2").unit("kg").as(Format.ONE).mayBeBlank().wide(12);
  final Column manned = Column.result("Operator").unit("h").as(Format.TWO).wide(18);
  final Column fuelCost = Column.result("Cost of fuel").as(Format.MONEY).mayBeBlank().wide(18);
  final Column mannedCost =
      Column.result("Cost of operator").as(Format.MONEY).mayBeBlank().wide(18);
  final Column dayOfJob = Column.working("Day of Job").as(Format.COUNT);
  final Column litres = Column.working("Litres").unit("L").as(Format.ONE);
  final Table days = Table.of("Days of the set", Job.DAYS);

  final Column total = Column.result("Fuel in all").as(Format.ONE).wide(24);
  final Column full = Column.result("A full tank gives").as(Format.ONE).wide(24);
  final Column drops = Column.result("Deliveries needed").as(Format.COUNT).wide(24);
  final Column dropDay = Column.result("Deliver on").as(Format.DAY).mayBeBlank().wide(24);
  final Column dropBefore = Column.result("Deliver before").as(Format.TIME).mayBeBlank().wide(24);
  final Column carbonSum = Column.result("CO2").unit("kg").as(Format.ONE).wide(18);
  final Column fuelSum =
      Column.result("Fuel and deliveries").as(Format.MONEY).mayBeBlank().wide(30);
  final Column mannedSum = Column.result("Operator in all").as(Format.MONEY).mayBeBlank().wide(24);
  final Column charged =
      Column.result("Days charged").unit("days").as(Format.ONE).mayBeBlank().wide(24);
  final Column hire = Column.result("Hire").as(Format.MONEY).mayBeBlank().wide(24);
  final Column emptyRun = Column.working("Row on which the tank is empty").as(Format.COUNT);
  final Column emptyAt = Column.working("Empty at").unit("day").as(Format.TWO);
  final Table sums = Table.of("Fuel, operator and hire in all", 1);

  final Column quarterSum = Column.working("Burnt since full").unit("L").as(Format.TWO);
  final Table emptying =
      Table.of("Fuel in each quarter of the day that empties the tank", Running.QUARTERS);

  final Column clock = Column.result("From").as(Format.TIME);
  final Column clockShare = share("Load of the set");
  final Column clockLow = share("30 % of the set");
  private final Column clockDay = Column.working("Day of Job").as(Format.COUNT);
  private final Column moment = Column.working("Moment").unit("day").as(Format.TWO);
  final Table byHour = Table.of("Load in each half hour", 48);

  final Column readOn;
  final Column meterStart = meter("Hour meter at start").wide(24);
  final Column meterStop = meter("Hour meter at stop").wide(24);
  final Column delivered =
      Column.input("Delivered").number(Format.ONE, 0, 100_000).help("The delivery note.").wide(24);
  final Column ran = Column.result("Ran").unit("h").as(Format.TWO).mayBeBlank().wide(18);
  final Column planned = Column.result("Planned to run").unit("h").as(Format.TWO).wide(18);
  final Column deliveredSum = Column.result("Delivered so far").as(Format.ONE).wide(24);
  final Column burntSum = Column.result("Burnt by the plan").as(Format.ONE).wide(24);
  final Table typed = Table.of("Read at the set", 20);

  Generator(PlanJob plan, Supply supply, Loads loads, Runs runs, Legs legs) {
    this.plan = plan;
    this.supply = supply;
    this.loads = loads;
    this.runs = runs;
    this.legs = legs;
    terms = new GeneratorTerms(plan, supply);
    running = new Running(plan, terms, loads);
    readOn =
        Column.input("Read on")
            .as(Format.DAY)
            .oneOf(plan.job.date)
            .needed()
            .wide(30)
            .help("The date on which that run began.");
    sizes();
    rating();
    days();
    sums();
    byHour();
    readings();
  }

  private static Column share(String heading) {
    return Column.result(heading).as(Format.SHARE);
  }

  private static Column meter(String heading) {
    return Column.input(heading)
        .unit("h")
        .number(Format.ONE, 0, 1_000_000)
        .help("The hour meter on its panel.");
  }

  /** A figure of a table with one row. */
  private static Formula one(Column column) {
    return calc("INDEX({};1)", column.all());
  }

  private void sizes() {
    sizeKw.by(call(GensetFunctions.KW, size));
    Formula some = calc("COUNT({})=0", busiest.all());
    sizeShare
        .by(calc("IF({};\"\";{})", some, load(calc("MAX({})", busiest.all()), sizeKw)))
        .mayBeBlank();
    quietShare
        .by(calc("IF({};\"\";{})", some, load(calc("MIN({})", busiest.all()), sizeKw)))
        .mayBeBlank();
    enough.by(
        calc(
            "IF(ISNUMBER({});IF({}>={}-0.000001;\"yes\";\"no\");\"\")",
            one(needed),
            size,
            one(needed)));
    sizes.columns(size, sizeKw, sizeShare, quietShare, enough);
    sizes.checks().reasonWide(40);
    sizes.starts(LightingPlan.class, "generator-sizes.csv");
  }

  private static Formula load(Formula kw, Formula ratedKw) {
    return call(GensetFunctions.LOADSHARE, kw, ratedKw);
  }

  private void rating() {
    Formula system = supply.system.where(supply.name, name);
    Formula lines = calc("IF({}=\"3PH\";3;IF({}=\"split\";2;1))", system, system);
    Formula factor = legs.powerFactor.where(legs.source, name);
    Formula kind = or(terms.engine, "diesel turbo");
    name.by(calc("{}&\"\"", terms.reckoned));
    watts.by(calc("{}*{}*{}", lines, supply.busiest.where(supply.name, name), factor));
    starting.by(
        calc("{}+{}*MAXIFS({};{};{})", watts, lines, loads.surge.all(), loads.source.all(), name));
    needed.by(
        calc(
            "IF({}=0;0;{})",
            watts,
            call(
                GensetFunctions.KVA,
                watts,
                factor,
                or(terms.spare, 0.2),
                terms.metres(),
                terms.celsius(),
                kind,
                starting)));
    pick.by(
        calc(
            "IF({}=0;MIN({});{})",
            needed,
            size.all(),
            call(GensetFunctions.PICK, needed, size.all())));
    counted.by(calc("IF({}=\"\";{};{})", or(terms.ordered, ""), pick, or(terms.ordered, "")));
    rated.by(call(GensetFunctions.KW, counted));
    derated.by(
        calc("{}*{}", rated, call(GensetFunctions.DERATE, terms.metres(), terms.celsius(), kind)));
    rating.columns(name, watts, starting, needed, pick, counted, rated, derated);
    rating.asks(terms.inputs());
    rating.checks(
        Check.stop(
            calc("{}>{}+0.000001", needed, counted),
            say("{} kVA are too few: {} are needed.", counted, needed)),
        Check.look(
            calc("AND({}=\"\";COUNTIF({};\"generator\")>1)", or(terms.set, ""), supply.kind.all()),
            say("Supply has more than one generator: this page reckons {} only.", name)),
        Check.look(
            calc("{}<>\"\"", or(plan.shown, "")),
            Formula.of("Rated for the day shown on Job only: clear it there before you order.")));
  }

  private Formula ofRun(Column column) {
    return calc("INDEX({};{})", column.all(), dayOfJob);
  }

  private static Formula clockOf(Formula moment) {
    return calc("ROUND(1440*MOD({};1);0)/1440", moment);
  }

  private void days() {
    Job job = plan.job;
    Formula kilowatts = running.kilowattsOf(dayOfJob);
    Formula runs = running.hoursOf(dayOfJob);
    Formula burnt = call(GensetFunctions.FUELFOR, kilowatts, runs, one(rated));
    dayOfJob.by(calc("MATCH({};{};0)", day.rowNumber(), running.runNumber.all()));
    date.by(calc("INDEX({};{})", job.date.all(), dayOfJob));
    day.by(
        calc(
            "IF(INDEX({};{})=\"\";TEXT({};\"d mmm\");INDEX({};{}))",
            job.day.all(),
            dayOfJob,
            date,
            job.day.all(),
            dayOfJob));
    from.by(clockOf(ofRun(running.start)));
    to.by(clockOf(ofRun(running.stop)));
    hours.by(calc("SUM({})", runs));
    busiest.by(calc("MAX({})", kilowatts));
    share.by(load(busiest, one(rated)));
    energy.by(calc("SUMPRODUCT({};{})", kilowatts, runs));
    mean.by(load(calc("{}/{}", energy, hours), one(rated)));
    low.by(calc("SUMPRODUCT(({}<" + LOW + "*{})*{})", kilowatts, one(rated), runs));
    litres.by(burnt);
    fuel.unit(job.volumes())
        .by(job.fromLitres(burnt))
        .waiting(
            "No fuel figure: the chart holds diesel sets of 20 to 200 kW. Ask the rental house.");
    soFar.unit(job.volumes()).by(calc("SUM({})+{}", fuel.above(), fuel));
    carbon.by(call(GensetFunctions.CO2, litres));
    manned.by(
        calc(
            "IF({}=\"\";24*({}-{});{})",
            or(terms.operatorHours, ""),
            ofRun(running.stop),
            ofRun(running.start),
            or(terms.operatorHours, "")));
    fuelCost.unit(terms.currency).by(terms.fee(terms.price, fuel, 1));
    mannedCost.unit(terms.currency).by(terms.fee(terms.operatorRate, manned, 1));
    days.columns(
        day,
        date,
        from,
        to,
        hours,
        busiest,
        share,
        mean,
        low,
        energy,
        fuel,
        carbon,
        manned,
        fuelCost,
        mannedCost,
        dayOfJob,
        soFar,
        litres);
    days.tall(3);
    Formula quiet = ofRun(running.quietFrom);
    days.checks(
        Check.wrong(
            calc("{}>{}", busiest, one(derated)),
            say("{} kW at the busiest are more than the set gives there: a bigger one.", busiest)),
        Check.stop(
            calc("AND({}>0;{})", quiet, running.isLoaded(quiet, ofRun(running.quietTo))),
            Formula.of("Loads are planned on it while it is off for quiet.")),
        Check.look(
            calc("{}<" + LOW, share),
            calc(
                "\"Low load, never over \"&ROUND(100*{};0)&\" %: a diesel soots up. \"&"
                    + "IF(MIN({})<{};\"A smaller set for that day, or packs.\";\"No smaller set on"
                    + " offer: packs that day, or more load on it.\")",
                share, size.all(), one(counted))),
        Check.look(
            calc("{}>" + HIGH, mean),
            say("{} mean load: over 70 % is more than a set bears day by day.", mean)));
  }

  /** Fuel since the tank was full, quarter by quarter on the day on which it gets empty. */
  private void sums() {
    Formula row = one(emptyRun);
    Formula dayThen = calc("INDEX({};{})", dayOfJob.all(), row);
    Formula quarter = quarterSum.rowNumber();
    Formula kw = running.kilowattsOf(dayThen, quarter);
    Formula part = running.hoursOf(dayThen, quarter);
    quarterSum.by(
        calc(
            "IF(ISNUMBER({});N(INDEX({};{}-1))*({}>1)+{}*{};\"\")",
            row,
            quarterSum.all(),
            quarter,
            quarter,
            call(GensetFunctions.FUEL, kw, one(rated)),
            part));
    emptying.columns(quarterSum);
    full.unit(plan.job.volumes());
    total.unit(plan.job.volumes());
    total.by(calc("IF(COUNT({})=0;\"\";SUM({}))", fuel.all(), fuel.all()));
    full.by(calc("{}+0*{}", terms.full(), total));
    drops.by(calc("MAX(0;ROUNDUP(ROUND({}/{};6);0)-1)", total, full));
    emptyRun.by(calc("IF({}>{};COUNTIF({};\"<=\"&{})+1;\"\")", total, full, soFar.all(), full));
    Formula before =
        calc("SUM({})-SUMIFS({};{};\">\"&{})", fuel.all(), fuel.all(), soFar.all(), full);
    Formula left = plan.job.litres(calc("({}-({}))", full, before));
    Formula begin = calc("INDEX({};INDEX({};{}))", running.start.all(), dayOfJob.all(), emptyRun);
    emptyAt.by(calc("{}+COUNTIF({};\"<=\"&{})/96", begin, quarterSum.all(), left));
    dropDay.by(calc("INT({}+1/2880)", emptyAt));
    dropBefore.by(clockOf(emptyAt));
    carbonSum.by(calc("IF(COUNT({})=0;\"\";SUM({}))", carbon.all(), carbon.all()));
    fuelSum
        .unit(terms.currency)
        .by(
            calc(
                "IF(COUNT({})=0;\"\";SUM({})+N({}))",
                fuelCost.all(),
                fuelCost.all(),
                terms.fee(terms.drop, drops, 1)));
    mannedSum
        .unit(terms.currency)
        .by(calc("IF(COUNT({})=0;\"\";SUM({}))", mannedCost.all(), mannedCost.all()));
    charged.by(terms.chargedDays());
    hire.unit(terms.currency).by(terms.fee(terms.dayRate, Formula.of(1), charged));
    sums.columns(
        total,
        full,
        drops,
        dropDay,
        dropBefore,
        carbonSum,
        fuelSum,
        mannedSum,
        charged,
        hire,
        emptyRun,
        emptyAt);
    sums.checks(
        Check.stop(
            calc(
                "AND(COUNT({};{})=2;{}=\"\")",
                or(terms.onHire, ""),
                or(terms.offHire, ""),
                or(charged, "")),
            Formula.of("Off hire lies before on hire, or years after it: mend the dates.")),
        Check.stop(
            calc(
                "OR(AND(COUNT({})=1;COUNT({})=0);AND(COUNT({};{})=2;{}=\"\"))",
                or(terms.price, ""),
                fuelCost.all(),
                or(terms.dayRate, ""),
                or(charged, ""),
                or(hire, "")),
            say("{} is not a currency: three letters, such as EUR.", terms.currency)));
  }

  /** The load over the day shown, or over the busiest. */
  private void byHour() {
    clockDay.by(
        calc(
            "INDEX({};IF({}=\"\";MATCH(MAX({});{};0);MATCH({};{};0)))",
            dayOfJob.all(),
            or(plan.shown, ""),
            busiest.all(),
            busiest.all(),
            or(plan.shown, 0),
            date.all()));
    Formula start = calc("INDEX({};{})", running.start.all(), clockDay);
    moment.by(calc("INT(24*{}+0.0001)/24+({}-1)/48", start, clock.rowNumber()));
    clock.by(clockOf(moment));
    Formula middle = calc("({}+1/96)", moment);
    Formula off =
        calc(
            "OR({}<{};{}>INDEX({};{});AND({}>INDEX({};{});{}<INDEX({};{})))",
            middle,
            start,
            middle,
            running.stop.all(),
            clockDay,
            middle,
            running.quietFrom.all(),
            clockDay,
            middle,
            running.quietTo.all(),
            clockDay);
    clockShare.by(load(calc("IF({};0;{}/1000)", off, running.watts(middle)), one(rated)));
    clockLow.by(calc(LOW + "+0*{}", clockShare));
    byHour.columns(clock, clockShare, clockLow, clockDay, moment);
  }

  private void readings() {
    ran.by(calc("{}-{}", meterStop, meterStart));
    planned.by(calc("SUMIFS({};{};{})", hours.all(), date.all(), readOn));
    delivered.unit(plan.job.volumes());
    deliveredSum
        .unit(plan.job.volumes())
        .by(calc("SUMIFS({};{};\"<=\"&{})", delivered.all(), readOn.all(), readOn));
    burntSum
        .unit(plan.job.volumes())
        .by(calc("SUMIFS({};{};\"<=\"&{})", fuel.all(), date.all(), readOn));
    typed.columns(readOn, meterStart, meterStop, delivered, ran, planned, deliveredSum, burntSum);
    typed.checks(
        Check.wrong(
            calc("{}>{}", meterStart, meterStop),
            Formula.of("The meter cannot run backwards: read both again.")),
        Check.look(
            calc("{}=0", planned), Formula.of("By the plan the set does not run on that date.")),
        Check.look(
            calc("ABS({}-{})>=1", ran, planned),
            say("Ran {} h, planned were {} h: pay for what ran, mend the plan.", ran, planned)));
  }

  /** A line of the order, or that it waits. */
  private static Formula line(String pattern, Object... parts) {
    return calc("IFERROR({};\"(not settled: see Rating)\")", calc(pattern, parts));
  }

  /** The order, line by line. */
  Lines order() {
    Formula run = calc("MATCH({};{};0)", terms.reckoned, runs.from.all());
    Formula has = calc("{}<>\"\"", terms.reckoned);
    return Lines.notes(
        "The order, to mail",
        line(
            "IF({};\"Please confirm in writing for \"&{}&\", revision \"&{}&\":\";\"No generator on"
                + " Supply.\")",
            has,
            plan.job.production,
            plan.job.revision),
        line(
            "IF({};\"Generator, silenced, \"&{}&\" kVA (\"&ROUND({};1)&\" kVA needed at \"&{}&\""
                + " \"&{}&\" altitude and \"&ROUND({};0)&\" °C at its intake), \"&{}&\", \"&{}&\""
                + " V, outlet: \"&{}&\".\";\"\")",
            has,
            one(counted),
            one(needed),
            or(terms.altitude, 0),
            plan.job.lengths(),
            terms.celsius(),
            supply.system.where(supply.name, terms.reckoned),
            supply.nominal.where(supply.name, terms.reckoned),
            supply.outlets.where(supply.name, terms.reckoned)),
        line(
            "IF({};\"To \"&{}&\". On hire \"&IF({}=\"\";\"(date)\";TEXT({};\"d mmm yyyy\"))&\", off"
                + " hire \"&IF({}=\"\";\"(date)\";TEXT({};\"d mmm yyyy\"))&IF(N({})>0;\", \"&{}&\""
                + " days charged\";\"\")&\".\";\"\")",
            has,
            supply.place.where(supply.name, terms.reckoned),
            or(terms.onHire, ""),
            or(terms.onHire, ""),
            or(terms.offHire, ""),
            or(terms.offHire, ""),
            one(charged),
            one(charged)),
        line(
            "IF({};\"Runs on \"&COUNT({})&\" days, first on \"&TEXT(MIN({});\"d mmm\")&\" from"
                + " \"&TEXT(INDEX({};1);\"hh:mm\")&\", at most \"&ROUND(MAX({});1)&\" h a"
                + " day\"&IF(COUNT({};{})=2;\", off"
                + " \"&TEXT({};\"hh:mm\")&\"–\"&TEXT({};\"hh:mm\")&\" for quiet\";\"\")&\"."
                + " Operator: \"&ROUND(SUM({});1)&\" h in all.\";\"\")",
            has,
            date.all(),
            date.all(),
            from.all(),
            hours.all(),
            terms.offFrom,
            terms.offTo,
            terms.offFrom,
            terms.offTo,
            manned.all()),
        line(
            "IF({};IFERROR(\"It stands away for noise: \"&INDEX({};{})&\" \"&{}&\" of"
                + " \"&INDEX({};{})&\" to \"&INDEX({};{})&\", our cable.\";\"Cable to set for"
                + " noise: see Runs.\");\"\")",
            has,
            runs.length.all(),
            run,
            plan.job.lengths(),
            runs.size.all(),
            run,
            runs.to.all(),
            run),
        line(
            "IF({};\"Fuel by the plan \"&ROUND(N({});0)&\" \"&{}&\"; comes with a full tank of"
                + " \"&{}&\" \"&{}&\". \"&IF(N({})=0;\"No delivery needed before off"
                + " hire.\";\"Deliveries: \"&{}&\", the first on \"&TEXT({};\"d mmm\")&\" before"
                + " \"&TEXT({};\"hh:mm\")&\".\");\"\")",
            has,
            one(total),
            plan.job.volumes(),
            or(terms.tank, 0),
            plan.job.volumes(),
            one(drops),
            one(drops),
            one(dropDay),
            one(dropBefore)));
  }

  BarChart chart() {
    return BarChart.lines(
        "Load of the set over the day shown, or over the busiest",
        10,
        "%",
        clock,
        clockShare,
        clockLow);
  }

  Tab tab() {
    return Tab.of(
            "Generator",
            "How big a set, when it runs, what it burns and costs. Fill when it starts and stops;"
                + " the sizes on offer stand on Generator log, the order to mail below.")
        .grid(54, 6)
        .with(terms.fields())
        .newPage(rating)
        .with(sums, order(), chart())
        .newPage(days);
  }

  /** The lists that grow: on a tab whose rows can be added, removed and sorted. */
  Tab log() {
    return Tab.of(
            "Generator log",
            "The sizes that the rental house offers; and, on the day, what is read at the set,"
                + " beside the plan.")
        .with(sizes, typed);
  }

  /** The working figures. */
  Block[] working() {
    return new Block[] {running.days, running.quarters, emptying, byHour};
  }
}
