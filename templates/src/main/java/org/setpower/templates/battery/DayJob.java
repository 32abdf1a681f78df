package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.shared.Job;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;

/** The job of a battery day: which day is planned, its breaks, and what holds for every row. */
final class DayJob {
  private static final double MILD = 20;
  private static final String OFF =
      "Everything is off then, but positions that stay on in breaks. Blank: none.";

  final Job job = new Job();

  final Field shown =
      Field.input("Day shown")
          .as(Format.DATE)
          .oneOf(job.date)
          .help(
              "One date of the list below. Blank: the coldest of all days, and all that is lent or"
                  + " set aside is away.")
          .named("Job_Day_shown");
  final Field turns =
      Field.input("A new day begins at")
          .as(Format.TIME)
          .is(4.0 / 24)
          .help("Times before it belong to the night before: 03:00 ends a night.");
  final Field lunchFrom = time("Lunch from");
  final Field lunchTo = time("Lunch to");
  final Field moveFrom = time("Move from");
  final Field moveTo = time("Move to");
  final Field converter =
      Field.input("Converter efficiency")
          .share(0.3, 1)
          .is(0.92)
          .help("Of what sits between pack and device: its label. 92 % is assumed if not known.");

  final Field dropLimit =
      Field.input("Drop limit, DC leads")
          .share(0.001, 0.5)
          .is(0.03)
          .help("Share of the volts a lead may lose: 3 % is common practice.");

  final Field coldest =
      Field.result(
              "Packs as cold as",
              calc(
                  "IF({}=\"\";IF(COUNT({})=0;" + MILD + ";{});{})",
                  or(shown, ""),
                  job.coldest.all(),
                  job.celsius(calc("MIN({})", job.coldest.all())),
                  job.coldest(or(shown, 0), MILD)))
          .unit("°C")
          .as(Format.ONE);

  final Field shootingDays =
      Field.result("Shooting days", shooting(job.date, job.kind)).as(Format.COUNT);

  /** In days after the midnight that begins the day. */
  final Field wrap;

  /** In days after the midnight that begins the day. */
  final Field nextCall;

  DayJob() {
    Column date = job.date;
    Formula day = or(shown, 0);
    wrap =
        Field.result(
                "Last wrap of that day",
                calc(
                    "IF(COUNTIFS({};{};{};\"<>\")=0;\"\";SUMPRODUCT(MAX(({}={})*({}<>\"\")*({}+({}<={})))))",
                    date.all(),
                    day,
                    job.wrap.all(),
                    date.all(),
                    day,
                    job.wrap.all(),
                    job.wrap.all(),
                    job.wrap.all(),
                    job.call.all()))
            .as(Format.TIME);
    Formula next =
        calc("MINIFS({};{};\">\"&{};{};\"<>\")", date.all(), date.all(), day, job.call.all());
    nextCall =
        Field.result(
                "Next call",
                calc(
                    "IF(OR({}=\"\";{}=0);\"\";{}-{}+MINIFS({};{};{}))",
                    or(shown, ""),
                    next,
                    next,
                    day,
                    job.call.all(),
                    date.all(),
                    next))
            .as(Format.TIME);
  }

  /** Dates with a shoot or a night, each once. */
  private static Formula shooting(Column date, Column kind) {
    Formula dates = date.all();
    Formula kinds = kind.all();
    Formula same =
        calc(
            "(COUNTIFS({};{};{};\"shoot\")+COUNTIFS({};{};{};\"night\"))",
            dates,
            dates,
            kinds,
            dates,
            dates,
            kinds);
    return calc(
        "SUMPRODUCT((({}=\"shoot\")+({}=\"night\"))/({}+({}=0)))", kinds, kinds, same, same);
  }

  private static Field time(String heading) {
    return Field.input(heading).as(Format.TIME).help(OFF);
  }

  /** Hours after the midnight that begins the day. */
  Formula hour(Formula time) {
    return calc("24*({}+({}<{}))", time, time, turns);
  }

  /** The end of something that began at an hour. */
  Formula end(Formula time, Formula begun) {
    return calc("{}+24*({}<={})", hour(time), hour(time), begun);
  }

  Tab tab() {
    return job.tab(
        "Battery day",
        "Which pack hangs where, how long it lasts, what is swapped and charged when. Fill the"
            + " yellow cells: this page, then On hand, Positions, Devices; read Result.",
        Fields.of("The day", shown, turns, lunchFrom, lunchTo, moveFrom, moveTo),
        Fields.of(
            "What holds everywhere",
            converter,
            job.touchLimit,
            job.family,
            dropLimit,
            job.conductor),
        Fields.of("Read from the days below", coldest, wrap, nextCall, shootingDays));
  }
}
