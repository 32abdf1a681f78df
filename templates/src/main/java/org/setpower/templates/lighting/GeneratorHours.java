package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.TableSpec;

/** When the generator runs, and what it bears in each quarter of an hour. */
final class GeneratorHours {
  /** Quarters of an hour from the start of a day's run: 26 hours. */
  static final int QUARTERS = 104;

  private final LightingJobSheet plan;
  private final GeneratorTerms terms;
  private final LoadsSheet loads;

  final ColumnSpec start = number("Start");
  final ColumnSpec stop = number("Stop");
  final ColumnSpec quietFrom = number("Quiet from");
  final ColumnSpec quietTo = number("Quiet to");
  final ColumnSpec isRun = number("Runs");
  final ColumnSpec runNumber = number("No. of the run");
  final TableSpec days = TableSpec.of("When the set runs, below each day of Job", JobSheet.DAYS);

  /** Load in each quarter of an hour (rows) of each day of Job (columns). */
  private final ColumnSpec[] kilowatts = new ColumnSpec[JobSheet.DAYS];

  /** How much of each quarter it runs. */
  private final ColumnSpec[] hours = new ColumnSpec[JobSheet.DAYS];

  final TableSpec quarters =
      TableSpec.of("Quarters of an hour from the start of each day of Job", QUARTERS);

  GeneratorHours(LightingJobSheet plan, GeneratorTerms terms, LoadsSheet loads) {
    this.plan = plan;
    this.terms = terms;
    this.loads = loads;
    when();
    for (int i = 0; i < JobSheet.DAYS; i++) {
      quarters(i);
    }
    quarters.columns(hours).columns(kilowatts);
  }

  /** Plain cells, not one matrix: what does not run costs next to nothing. */
  private void quarters(int i) {
    ColumnSpec part = number("Hours of day " + (i + 1));
    Formula begin = calc("({}+({}-1)/96)", of(start, i), part.rowNumber());
    Formula middle = calc("{}+1/192", begin);
    part.formula(
        calc(
            "IF({}=0;0;IF({}>={}-0.0001;0;IF(AND({}>={};{}<{});0;MIN(0.25;24*({}-{})))))",
            of(isRun, i),
            begin,
            of(stop, i),
            middle,
            of(quietFrom, i),
            middle,
            of(quietTo, i),
            of(stop, i),
            begin));
    hours[i] = part;
    kilowatts[i] =
        number("kW of day " + (i + 1)).formula(calc("IF({}=0;0;{}/1000)", part, watts(middle)));
  }

  private static Formula of(ColumnSpec column, int i) {
    return calc("INDEX({};" + (i + 1) + ")", column.all());
  }

  private static ColumnSpec number(String heading) {
    return ColumnSpec.working(heading).format(CellFormat.TWO).unit("day").inBlankRowsToo();
  }

  /** The watts on the set at a moment. */
  Formula watts(Formula moment) {
    return calc(
        "SUMIFS({};{};{};{};\"<=\"&{};{};\">\"&{})",
        loads.watts.all(),
        loads.source.all(),
        terms.reckoned,
        loads.onAt.all(),
        moment,
        loads.offAt.all(),
        moment);
  }

  /** True when a load of the set is on between two moments. */
  Formula isLoaded(Formula from, Formula to) {
    return calc(
        "COUNTIFS({};{};{};\"<\"&{};{};\">\"&{})>0",
        loads.source.all(),
        terms.reckoned,
        loads.onAt.all(),
        to,
        loads.offAt.all(),
        from);
  }

  private Formula ofJob(ColumnSpec column) {
    return calc("INDEX({};{})", column.all(), start.rowNumber());
  }

  private void when() {
    JobSheet job = plan.job;
    start.formula(
        calc(
            "IF(COUNT({};{};{})<3;0;{}+{}-N({})/1440)",
            ofJob(job.date),
            ofJob(job.call),
            ofJob(job.wrap),
            ofJob(job.date),
            ofJob(job.call),
            terms.before));
    stop.formula(
        calc(
            "IF({}=0;0;{}+{}+({}<={})+N({})/1440)",
            start,
            ofJob(job.date),
            ofJob(job.wrap),
            ofJob(job.wrap),
            ofJob(job.call),
            terms.after));
    quietFrom.formula(
        calc(
            "IF({}=0;0;IF(COUNT({};{})<2;0;INT({})+{}+({}<MOD({};1))))",
            start,
            terms.offFrom,
            terms.offTo,
            start,
            terms.offFrom,
            terms.offFrom,
            start));
    quietTo.formula(
        calc("IF({}=0;0;{}+MOD({}-{};1))", quietFrom, quietFrom, terms.offTo, terms.offFrom));
    isRun.formula(
        calc(
            "IF({}=0;0;IF({}=\"\";0;N({})))",
            start,
            or(terms.reckoned, ""),
            isLoaded(start, stop)));
    runNumber.formula(calc("IF({}=1;SUM({})+1;0)", isRun, isRun.above()));
    days.columns(start, stop, quietFrom, quietTo, isRun, runNumber);
  }

  /** The kW of a day of Job. */
  Formula kilowattsOf(Formula dayOfJob) {
    return calc("INDEX({};0;{})", kilowatts[0].block(kilowatts[JobSheet.DAYS - 1]), dayOfJob);
  }

  /** The hours of a day of Job. */
  Formula hoursOf(Formula dayOfJob) {
    return calc("INDEX({};0;{})", hours[0].block(hours[JobSheet.DAYS - 1]), dayOfJob);
  }

  /** The kW of a quarter of an hour of a day of Job. */
  Formula kilowattsOf(Formula dayOfJob, Formula quarter) {
    return calc("INDEX({};{})", kilowattsOf(dayOfJob), quarter);
  }

  /** The hours of a quarter of an hour of a day of Job. */
  Formula hoursOf(Formula dayOfJob, Formula quarter) {
    return calc("INDEX({};{})", hoursOf(dayOfJob), quarter);
  }
}
