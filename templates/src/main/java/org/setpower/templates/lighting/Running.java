package org.setpower.templates.lighting;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.or;

import org.setpower.templates.Column;
import org.setpower.templates.Format;
import org.setpower.templates.Formula;
import org.setpower.templates.Grid;
import org.setpower.templates.Job;
import org.setpower.templates.Table;

/** When the generator runs, and what it bears in each quarter of an hour. */
final class Running {
  /** Quarters of an hour from the start of a day's run: 26 hours. */
  static final int QUARTERS = 104;

  private final PlanJob plan;
  private final GeneratorTerms terms;
  private final Loads loads;

  final Column start = number("Start");
  final Column stop = number("Stop");
  final Column quietFrom = number("Quiet from");
  final Column quietTo = number("Quiet to");
  final Column isRun = number("Runs");
  final Column runNumber = number("No. of the run");
  final Table days = Table.of("When the set runs, below each day of Job", Job.DAYS);

  /** Load in each quarter of an hour (rows) of each day of Job (columns). */
  final Grid kilowatts;

  /** How much of each quarter it runs. */
  final Grid hours;

  Running(PlanJob plan, GeneratorTerms terms, Loads loads) {
    this.plan = plan;
    this.terms = terms;
    this.loads = loads;
    when();
    Formula from = calc("(TRANSPOSE({})+(ROW($A$1:$A$" + QUARTERS + ")-1)/96)", start.all());
    Formula middle = calc("({}+1/192)", from);
    Formula runs =
        calc(
            "(TRANSPOSE({})=1)*({}<TRANSPOSE({})-0.0001)*(1-({}>=TRANSPOSE({}))*({}<TRANSPOSE({})))",
            isRun.all(),
            from,
            stop.all(),
            middle,
            quietFrom.all(),
            middle,
            quietTo.all());
    kilowatts =
        new Grid(
            "kW of the set in each quarter of an hour, a column a day of Job",
            QUARTERS,
            Job.DAYS,
            calc("IF({}=1;{}/1000;0)", runs, watts(middle)));
    hours =
        new Grid(
            "Hours that the set runs in each quarter",
            QUARTERS,
            Job.DAYS,
            calc(
                "IF({}=1;IF({}+1/96<=TRANSPOSE({});0.25;24*(TRANSPOSE({})-{}));0)",
                runs,
                from,
                stop.all(),
                stop.all(),
                from));
  }

  private static Column number(String heading) {
    return Column.working(heading).as(Format.TWO).unit("day").inBlankRowsToo();
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

  private Formula ofJob(Column column) {
    return calc("INDEX({};ROWS({}))", column.all(), start.above());
  }

  private void when() {
    Job job = plan.job;
    start.by(
        calc(
            "IF(COUNT({};{};{})<3;0;{}+{}-N({})/1440)",
            ofJob(job.date),
            ofJob(job.call),
            ofJob(job.wrap),
            ofJob(job.date),
            ofJob(job.call),
            terms.before));
    stop.by(
        calc(
            "IF({}=0;0;{}+{}+({}<={})+N({})/1440)",
            start,
            ofJob(job.date),
            ofJob(job.wrap),
            ofJob(job.wrap),
            ofJob(job.call),
            terms.after));
    quietFrom.by(
        calc(
            "IF({}=0;0;IF(COUNT({};{})<2;0;INT({})+{}+({}<MOD({};1))))",
            start,
            terms.offFrom,
            terms.offTo,
            start,
            terms.offFrom,
            terms.offFrom,
            start));
    quietTo.by(
        calc("IF({}=0;0;{}+MOD({}-{};1))", quietFrom, quietFrom, terms.offTo, terms.offFrom));
    isRun.by(
        calc(
            "IF({}=0;0;IF({}=\"\";0;N({})))",
            start,
            or(terms.reckoned, ""),
            isLoaded(start, stop)));
    runNumber.by(calc("IF({}=1;SUM({})+1;0)", isRun, isRun.above()));
    days.columns(start, stop, quietFrom, quietTo, isRun, runNumber);
  }

  /** The kW of a day of Job. */
  Formula kilowattsOf(Formula dayOfJob) {
    return calc("INDEX({};0;{})", kilowatts.all(), dayOfJob);
  }

  /** The hours of a day of Job. */
  Formula hoursOf(Formula dayOfJob) {
    return calc("INDEX({};0;{})", hours.all(), dayOfJob);
  }
}
