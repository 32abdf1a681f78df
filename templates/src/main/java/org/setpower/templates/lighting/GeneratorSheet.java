package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.GensetFunctions;
import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.ValidationRule;

/** The generator: its size, its days, its fuel, and the order for it. */
final class GeneratorSheet {
  /** Under this share of its rating a diesel soots up; over the other it wears day by day. */
  private static final String LOW = "30%";

  private static final String HIGH = "70%";

  private final LightingJobSheet plan;
  private final SupplySheet supply;
  private final LoadsSheet loads;
  private final CableRunsSheet runs;
  private final LegsSheet legs;
  final GeneratorTerms terms;
  final GeneratorHours running;

  final ColumnSpec size =
      ColumnSpec.input("Size on offer")
          .unit("kVA")
          .number(CellFormat.ONE, 1, 5000)
          .required()
          .help("Each size the rental house has, as it stands on the set.")
          .width(36);
  final ColumnSpec sizeKw = ColumnSpec.result("Rated").unit("kW").format(CellFormat.ONE).width(24);
  final ColumnSpec sizeShare = share("Load at the busiest").width(30);
  final ColumnSpec quietShare = share("Most load on the quietest day").width(36);
  final ColumnSpec enough = ColumnSpec.result("Sufficient?").mayBeBlank().width(24);
  final TableSpec sizes = TableSpec.of("Available sizes", 10);

  final ColumnSpec name = ColumnSpec.result("Set that is rated").width(60);
  final ColumnSpec watts =
      ColumnSpec.result("3 × busiest leg").unit("W").format(CellFormat.WHOLE).width(30);
  final ColumnSpec starting =
      ColumnSpec.result("Worst starting load").unit("W").format(CellFormat.WHOLE).width(30);
  final ColumnSpec needed =
      ColumnSpec.result("Required kVA").unit("kVA").format(CellFormat.ONE).width(24);
  final ColumnSpec pick =
      ColumnSpec.result("Size proposed").unit("kVA").format(CellFormat.ONE).width(24);
  final ColumnSpec counted =
      ColumnSpec.result("Size used").unit("kVA").format(CellFormat.ONE).width(24);
  final ColumnSpec rated = ColumnSpec.result("Rated").unit("kW").format(CellFormat.ONE).width(18);
  final ColumnSpec derated =
      ColumnSpec.result("Derated output").unit("kW").format(CellFormat.ONE).width(18);
  final TableSpec rating = TableSpec.of("Rating", 1);

  final ColumnSpec day = ColumnSpec.result("Day of the set").width(30);
  final ColumnSpec date = ColumnSpec.result("Date").format(CellFormat.DAY).width(24);
  final ColumnSpec from = ColumnSpec.result("Starts").format(CellFormat.TIME).width(12);
  final ColumnSpec to = ColumnSpec.result("Stops").format(CellFormat.TIME).width(12);
  final ColumnSpec hours = ColumnSpec.result("Run time").unit("h").format(CellFormat.TWO).width(12);
  final ColumnSpec busiest =
      ColumnSpec.result("Busiest").unit("kW").format(CellFormat.TWO).width(18);
  final ColumnSpec share = share("Load at the busiest").width(18);
  final ColumnSpec mean = share("Mean load").width(18);
  final ColumnSpec low =
      ColumnSpec.result("Under 30 % load").unit("h").format(CellFormat.TWO).width(18);
  final ColumnSpec energy =
      ColumnSpec.result("Energy").unit("kWh").format(CellFormat.ONE).width(18);
  final ColumnSpec fuel = ColumnSpec.result("Fuel").format(CellFormat.ONE).width(12);
  final ColumnSpec soFar = ColumnSpec.working("Fuel so far").format(CellFormat.ONE);
  final ColumnSpec carbon =
      ColumnSpec.result("CO2").unit("kg").format(CellFormat.ONE).mayBeBlank().width(12);
  final ColumnSpec manned =
      ColumnSpec.result("Operator").unit("h").format(CellFormat.TWO).width(18);
  final ColumnSpec fuelCost =
      ColumnSpec.result("Cost of fuel").format(CellFormat.MONEY).mayBeBlank().width(18);
  final ColumnSpec mannedCost =
      ColumnSpec.result("Cost of operator").format(CellFormat.MONEY).mayBeBlank().width(18);
  final ColumnSpec dayOfJob = ColumnSpec.working("Day of Job").format(CellFormat.COUNT);
  final ColumnSpec litres = ColumnSpec.working("Litres").unit("L").format(CellFormat.ONE);
  final TableSpec days = TableSpec.of("Generator days", JobSheet.DAYS);

  final ColumnSpec total = ColumnSpec.result("Total fuel").format(CellFormat.ONE).width(24);
  final ColumnSpec full =
      ColumnSpec.result("Usable fuel per tank").format(CellFormat.ONE).width(24);
  final ColumnSpec drops =
      ColumnSpec.result("Deliveries needed").format(CellFormat.COUNT).width(24);
  final ColumnSpec dropDay =
      ColumnSpec.result("Deliver on").format(CellFormat.DAY).mayBeBlank().width(24);
  final ColumnSpec dropBefore =
      ColumnSpec.result("Deliver by").format(CellFormat.TIME).mayBeBlank().width(24);
  final ColumnSpec carbonSum = ColumnSpec.result("CO2").unit("kg").format(CellFormat.ONE).width(18);
  final ColumnSpec fuelSum =
      ColumnSpec.result("Fuel and deliveries").format(CellFormat.MONEY).mayBeBlank().width(30);
  final ColumnSpec mannedSum =
      ColumnSpec.result("Operator total").format(CellFormat.MONEY).mayBeBlank().width(24);
  final ColumnSpec charged =
      ColumnSpec.result("Days charged").unit("days").format(CellFormat.ONE).mayBeBlank().width(24);
  final ColumnSpec hire = ColumnSpec.result("Hire").format(CellFormat.MONEY).mayBeBlank().width(24);
  final ColumnSpec emptyRun =
      ColumnSpec.working("Row on which the tank is empty").format(CellFormat.COUNT);
  final ColumnSpec emptyAt = ColumnSpec.working("Empty at").unit("day").format(CellFormat.TWO);
  final TableSpec sums = TableSpec.of("Fuel, operator and hire totals", 1);

  final ColumnSpec quarterSum =
      ColumnSpec.working("Burnt since full").unit("L").format(CellFormat.TWO);
  final TableSpec emptying =
      TableSpec.of(
          "Fuel in each quarter of the day that empties the tank", GeneratorHours.QUARTERS);

  final ColumnSpec clock = ColumnSpec.result("From").format(CellFormat.TIME);
  final ColumnSpec clockShare = share("Load of the set");
  final ColumnSpec clockLow = share("30 % of the set");
  private final ColumnSpec clockDay = ColumnSpec.working("Day of Job").format(CellFormat.COUNT);
  private final ColumnSpec moment = ColumnSpec.working("Moment").unit("day").format(CellFormat.TWO);
  final TableSpec byHour = TableSpec.of("Load in each half hour", 48);

  final ColumnSpec readOn;
  final ColumnSpec meterStart = meter("Hour meter at start").width(24);
  final ColumnSpec meterStop = meter("Hour meter at stop").width(24);
  final ColumnSpec delivered =
      ColumnSpec.input("Delivered")
          .number(CellFormat.ONE, 0, 100_000)
          .help("The delivery note.")
          .width(24);
  final ColumnSpec ran =
      ColumnSpec.result("Ran").unit("h").format(CellFormat.TWO).mayBeBlank().width(18);
  final ColumnSpec planned =
      ColumnSpec.result("Planned (h)").unit("h").format(CellFormat.TWO).width(18);
  final ColumnSpec deliveredSum =
      ColumnSpec.result("Delivered so far").format(CellFormat.ONE).width(24);
  final ColumnSpec burntSum = ColumnSpec.result("Planned fuel").format(CellFormat.ONE).width(24);
  final TableSpec typed = TableSpec.of("Hour-meter log", 20);

  GeneratorSheet(
      LightingJobSheet plan,
      SupplySheet supply,
      LoadsSheet loads,
      CableRunsSheet runs,
      LegsSheet legs) {
    this.plan = plan;
    this.supply = supply;
    this.loads = loads;
    this.runs = runs;
    this.legs = legs;
    terms = new GeneratorTerms(plan, supply);
    running = new GeneratorHours(plan, terms, loads);
    readOn =
        ColumnSpec.input("Read on")
            .format(CellFormat.DAY)
            .options(plan.job.date)
            .required()
            .width(30)
            .help("The date on which that run began.");
    sizes();
    rating();
    days();
    sums();
    byHour();
    readings();
  }

  private static ColumnSpec share(String heading) {
    return ColumnSpec.result(heading).format(CellFormat.SHARE);
  }

  private static ColumnSpec meter(String heading) {
    return ColumnSpec.input(heading)
        .unit("h")
        .number(CellFormat.ONE, 0, 1_000_000)
        .help("The hour meter on its panel.");
  }

  /** A figure of a table with one row. */
  private static Formula one(ColumnSpec column) {
    return calc("INDEX({};1)", column.all());
  }

  private void sizes() {
    sizeKw.formula(call(GensetFunctions.KW, size));
    Formula some = calc("COUNT({})=0", busiest.all());
    sizeShare
        .formula(calc("IF({};\"\";{})", some, load(calc("MAX({})", busiest.all()), sizeKw)))
        .mayBeBlank();
    quietShare
        .formula(calc("IF({};\"\";{})", some, load(calc("MIN({})", busiest.all()), sizeKw)))
        .mayBeBlank();
    enough.formula(
        calc(
            "IF(ISNUMBER({});IF({}>={}-0.000001;\"yes\";\"no\");\"\")",
            one(needed),
            size,
            one(needed)));
    sizes.columns(size, sizeKw, sizeShare, quietShare, enough);
    sizes.checks().reasonWide(40);
    sizes.initialRows(LightingPlan.class, "generator-sizes.csv");
  }

  private static Formula load(Formula kw, Formula ratedKw) {
    return call(GensetFunctions.LOADSHARE, kw, ratedKw);
  }

  private void rating() {
    Formula system = supply.system.lookup(supply.name, name);
    Formula lines = calc("IF({}=\"3PH\";3;IF({}=\"split\";2;1))", system, system);
    Formula factor = legs.powerFactor.lookup(legs.source, name);
    Formula kind = or(terms.engine, "diesel turbo");
    name.formula(calc("{}&\"\"", terms.reckoned));
    watts.formula(calc("{}*{}*{}", lines, supply.busiest.lookup(supply.name, name), factor));
    starting.formula(
        calc("{}+{}*MAXIFS({};{};{})", watts, lines, loads.surge.all(), loads.source.all(), name));
    needed.formula(
        calc(
            "IF({}=0;0;{})",
            watts,
            call(
                GensetFunctions.KVA,
                watts,
                terms.metres(),
                terms.celsius(),
                kind,
                factor,
                or(terms.spare, 0.2),
                starting)));
    pick.formula(
        calc(
            "IF({}=0;MIN({});{})",
            needed,
            size.all(),
            call(GensetFunctions.SIZE, needed, size.all())));
    counted.formula(calc("IF({}=\"\";{};{})", or(terms.ordered, ""), pick, or(terms.ordered, "")));
    rated.formula(call(GensetFunctions.KW, counted));
    derated.formula(
        calc("{}*{}", rated, call(GensetFunctions.DERATE, terms.metres(), terms.celsius(), kind)));
    rating.columns(name, watts, starting, needed, pick, counted, rated, derated);
    rating.alsoChecks(terms.inputs());
    rating.checks(
        ValidationRule.stop(
            calc("{}>{}+0.000001", needed, counted),
            say("{} kVA are too few: {} are needed.", counted, needed)),
        ValidationRule.check(
            calc("AND({}=\"\";COUNTIF({};\"generator\")>1)", or(terms.set, ""), supply.kind.all()),
            say("Supply has more than one generator: this page calculates {} only.", name)),
        ValidationRule.check(
            calc("{}<>\"\"", or(plan.shown, "")),
            Formula.of("Rated for the day shown on Job only: clear it there before you order.")));
  }

  private Formula ofRun(ColumnSpec column) {
    return calc("INDEX({};{})", column.all(), dayOfJob);
  }

  private static Formula clockOf(Formula moment) {
    return calc("ROUND(1440*MOD({};1);0)/1440", moment);
  }

  private void days() {
    JobSheet job = plan.job;
    Formula kilowatts = running.kilowattsOf(dayOfJob);
    Formula runs = running.hoursOf(dayOfJob);
    Formula burnt = call(GensetFunctions.FUELFOR, kilowatts, runs, one(rated), "diesel");
    dayOfJob.formula(calc("MATCH({};{};0)", day.rowNumber(), running.runNumber.all()));
    date.formula(calc("INDEX({};{})", job.date.all(), dayOfJob));
    day.formula(
        calc(
            "IF(INDEX({};{})=\"\";TEXT({};\"d mmm\");INDEX({};{}))",
            job.day.all(),
            dayOfJob,
            date,
            job.day.all(),
            dayOfJob));
    from.formula(clockOf(ofRun(running.start)));
    to.formula(clockOf(ofRun(running.stop)));
    hours.formula(calc("SUM({})", runs));
    busiest.formula(calc("MAX({})", kilowatts));
    share.formula(load(busiest, one(rated)));
    energy.formula(calc("SUMPRODUCT({};{})", kilowatts, runs));
    mean.formula(load(calc("{}/{}", energy, hours), one(rated)));
    low.formula(calc("SUMPRODUCT(({}<" + LOW + "*{})*{})", kilowatts, one(rated), runs));
    litres.formula(burnt);
    fuel.unit(job.volumes())
        .formula(job.fromLitres(burnt))
        .pendingMessage(
            "No fuel figure: the chart holds diesel sets of 20 to 200 kW. Ask the rental house.");
    soFar.unit(job.volumes()).formula(calc("SUM({})+{}", fuel.above(), fuel));
    carbon.formula(call(GensetFunctions.CO2, litres));
    manned.formula(
        calc(
            "IF({}=\"\";24*({}-{});{})",
            or(terms.operatorHours, ""),
            ofRun(running.stop),
            ofRun(running.start),
            or(terms.operatorHours, "")));
    fuelCost.unit(terms.currency).formula(terms.fee(terms.price, fuel, 1));
    mannedCost.unit(terms.currency).formula(terms.fee(terms.operatorRate, manned, 1));
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
    days.linesPerRow(3);
    Formula quiet = ofRun(running.quietFrom);
    days.checks(
        ValidationRule.wrong(
            calc("{}>{}", busiest, one(derated)),
            say("{} kW at the busiest are more than the set gives there: a bigger one.", busiest)),
        ValidationRule.stop(
            calc("AND({}>0;{})", quiet, running.isLoaded(quiet, ofRun(running.quietTo))),
            Formula.of("Loads are planned on it while it is off for quiet.")),
        ValidationRule.check(
            calc("{}<" + LOW, share),
            calc(
                "\"Low load, max. \"&ROUND(100*{};0)&\" %: risk of wet stacking."
                    + " \"&IF(MIN({})<{};\"Use a smaller generator or batteries that day.\";\"No"
                    + " smaller generator available: use batteries that day or add load.\")",
                share, size.all(), one(counted))),
        ValidationRule.check(
            calc("{}>" + HIGH, mean),
            say("{} mean load: over 70 % is too much for a generator day after day.", mean)));
  }

  /** Fuel since the tank was full, quarter by quarter on the day on which it gets empty. */
  private void sums() {
    Formula row = one(emptyRun);
    Formula dayThen = calc("INDEX({};{})", dayOfJob.all(), row);
    Formula quarter = quarterSum.rowNumber();
    Formula kw = running.kilowattsOf(dayThen, quarter);
    Formula part = running.hoursOf(dayThen, quarter);
    quarterSum.formula(
        calc(
            "IF(ISNUMBER({});N(INDEX({};{}-1))*({}>1)+{}*{};\"\")",
            row,
            quarterSum.all(),
            quarter,
            quarter,
            call(GensetFunctions.FUEL, kw, one(rated), "diesel"),
            part));
    emptying.columns(quarterSum);
    full.unit(plan.job.volumes());
    total.unit(plan.job.volumes());
    total.formula(calc("IF(COUNT({})=0;\"\";SUM({}))", fuel.all(), fuel.all()));
    full.formula(calc("{}+0*{}", terms.full(), total));
    drops.formula(calc("MAX(0;ROUNDUP(ROUND({}/{};6);0)-1)", total, full));
    emptyRun.formula(
        calc("IF({}>{};COUNTIF({};\"<=\"&{})+1;\"\")", total, full, soFar.all(), full));
    Formula before =
        calc("SUM({})-SUMIFS({};{};\">\"&{})", fuel.all(), fuel.all(), soFar.all(), full);
    Formula left = plan.job.litres(calc("({}-({}))", full, before));
    Formula begin = calc("INDEX({};INDEX({};{}))", running.start.all(), dayOfJob.all(), emptyRun);
    emptyAt.formula(calc("{}+COUNTIF({};\"<=\"&{})/96", begin, quarterSum.all(), left));
    dropDay.formula(calc("INT({}+1/2880)", emptyAt));
    dropBefore.formula(clockOf(emptyAt));
    carbonSum.formula(calc("IF(COUNT({})=0;\"\";SUM({}))", carbon.all(), carbon.all()));
    fuelSum
        .unit(terms.currency)
        .formula(
            calc(
                "IF(COUNT({})=0;\"\";SUM({})+N({}))",
                fuelCost.all(),
                fuelCost.all(),
                terms.fee(terms.drop, drops, 1)));
    mannedSum
        .unit(terms.currency)
        .formula(calc("IF(COUNT({})=0;\"\";SUM({}))", mannedCost.all(), mannedCost.all()));
    charged.formula(terms.chargedDays());
    hire.unit(terms.currency).formula(terms.fee(terms.dayRate, Formula.of(1), charged));
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
        ValidationRule.stop(
            calc(
                "AND(COUNT({};{})=2;{}=\"\")",
                or(terms.onHire, ""),
                or(terms.offHire, ""),
                or(charged, "")),
            Formula.of("Off hire lies before on hire, or years after it: correct the dates.")),
        ValidationRule.stop(
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
    clockDay.formula(
        calc(
            "INDEX({};IF({}=\"\";MATCH(MAX({});{};0);MATCH({};{};0)))",
            dayOfJob.all(),
            or(plan.shown, ""),
            busiest.all(),
            busiest.all(),
            or(plan.shown, 0),
            date.all()));
    Formula start = calc("INDEX({};{})", running.start.all(), clockDay);
    moment.formula(calc("INT(24*{}+0.0001)/24+({}-1)/48", start, clock.rowNumber()));
    clock.formula(clockOf(moment));
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
    clockShare.formula(load(calc("IF({};0;{}/1000)", off, running.watts(middle)), one(rated)));
    clockLow.formula(calc(LOW + "+0*{}", clockShare));
    byHour.columns(clock, clockShare, clockLow, clockDay, moment);
  }

  private void readings() {
    ran.formula(calc("{}-{}", meterStop, meterStart));
    planned.formula(calc("SUMIFS({};{};{})", hours.all(), date.all(), readOn));
    delivered.unit(plan.job.volumes());
    deliveredSum
        .unit(plan.job.volumes())
        .formula(calc("SUMIFS({};{};\"<=\"&{})", delivered.all(), readOn.all(), readOn));
    burntSum
        .unit(plan.job.volumes())
        .formula(calc("SUMIFS({};{};\"<=\"&{})", fuel.all(), date.all(), readOn));
    typed.columns(readOn, meterStart, meterStop, delivered, ran, planned, deliveredSum, burntSum);
    typed.checks(
        ValidationRule.wrong(
            calc("{}>{}", meterStart, meterStop),
            Formula.of("The meter cannot run backwards: read both again.")),
        ValidationRule.check(
            calc("{}=0", planned), Formula.of("By the plan the set does not run on that date.")),
        ValidationRule.check(
            calc("ABS({}-{})>=1", ran, planned),
            say("Run {} h, planned {} h: update the plan.", ran, planned)));
  }

  /** A line of the order, or that it waits. */
  private static Formula line(String pattern, Object... parts) {
    return calc("IFERROR({};\"(not settled: see Rating)\")", calc(pattern, parts));
  }

  /** The order, line by line. */
  TextBlock order() {
    Formula run = calc("MATCH({};{};0)", terms.reckoned, runs.from.all());
    Formula has = calc("{}<>\"\"", terms.reckoned);
    return TextBlock.notes(
        "Order text",
        line(
            "IF({};\"Please confirm in writing for \"&{}&\", revision \"&{}&\":\";\"No generator on"
                + " Supply.\")",
            has,
            plan.job.production,
            plan.job.revision),
        line(
            "IF({};\"Silenced generator, \"&{}&\" kVA (\"&ROUND({};1)&\" kVA needed at"
                + " \"&{}&\" \"&{}&\" altitude and \"&ROUND({};0)&\" °C at its intake),"
                + " \"&{}&\", \"&{}&\" V, outlet: \"&{}&\".\";\"\")",
            has,
            one(counted),
            one(needed),
            or(terms.altitude, 0),
            plan.job.lengths(),
            terms.celsius(),
            supply.system.lookup(supply.name, terms.reckoned),
            supply.nominal.lookup(supply.name, terms.reckoned),
            supply.outlets.lookup(supply.name, terms.reckoned)),
        line(
            "IF({};\"To \"&{}&\". On hire \"&IF({}=\"\";\"(date)\";TEXT({};\"d mmm yyyy\"))&\", off"
                + " hire \"&IF({}=\"\";\"(date)\";TEXT({};\"d mmm yyyy\"))&IF(N({})>0;\", \"&{}&\""
                + " days charged\";\"\")&\".\";\"\")",
            has,
            supply.place.lookup(supply.name, terms.reckoned),
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
            "IF({};IFERROR(\"Positioned for noise: \"&INDEX({};{})&\" \"&{}&\" of"
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
            "IF({};\"Fuel by the plan \"&ROUND(N({});0)&\" \"&{}&\"; comes with a full"
                + " tank of \"&{}&\" \"&{}&\". \"&IF(N({})=0;\"No fuel delivery required before"
                + " off-hire.\";\"Deliveries: \"&{}&\", the first on \"&TEXT({};\"d mmm\")&\""
                + " before \"&TEXT({};\"hh:mm\")&\".\");\"\")",
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
        "Generator load, selected or peak day", 10, "%", clock, clockShare, clockLow);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Generator",
            "Generator size, running times, fuel and cost. Enter start and stop times;"
                + " available sizes are on Generator log.")
        .grid(54, 6)
        .with(terms.fields())
        .newPage(rating)
        .with(sums, order(), chart())
        .newPage(days);
  }

  /** The lists that grow: on a tab whose rows can be added, removed and sorted. */
  SheetSpec log() {
    return SheetSpec.of(
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
