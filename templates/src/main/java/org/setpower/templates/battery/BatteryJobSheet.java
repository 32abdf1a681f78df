package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;

/** The job of a battery day: which day is planned, its breaks, and what holds for every row. */
final class BatteryJobSheet {
  private static final double MILD = 20;
  private static final String OFF =
      "Everything is off then, but positions that stay on in breaks. Blank: none.";

  final JobSheet job = new JobSheet();

  final FieldSpec shown =
      FieldSpec.input("Day shown")
          .format(CellFormat.DATE)
          .options(job.date)
          .help(
              "One date of the list below. Blank: the coldest of all days, and all that is lent or"
                  + " set aside is away.")
          .rangeName("Job_Day_shown");
  final FieldSpec turns =
      FieldSpec.input("A new day begins at")
          .format(CellFormat.TIME)
          .is(4.0 / 24)
          .help("Times before it belong to the night before: 03:00 ends a night.");
  final FieldSpec lunchFrom = time("Lunch from");
  final FieldSpec lunchTo = time("Lunch to");
  final FieldSpec moveFrom = time("Move from");
  final FieldSpec moveTo = time("Move to");
  final FieldSpec converter =
      FieldSpec.input("Converter efficiency")
          .share(0.3, 1)
          .is(0.92)
          .help("Of what sits between pack and device: its label. 92 % is assumed if not known.");

  final FieldSpec dropLimit =
      FieldSpec.input("Max. voltage drop, DC cable")
          .share(0.001, 0.5)
          .is(0.03)
          .help("Share of the volts a lead may lose: 3 % is common practice.");

  final FieldSpec coldest =
      FieldSpec.result(
              "Packs as cold as",
              calc(
                  "IF({}=\"\";IF(COUNT({})=0;" + MILD + ";{});{})",
                  or(shown, ""),
                  job.coldest.all(),
                  job.celsius(calc("MIN({})", job.coldest.all())),
                  job.coldest(or(shown, 0), MILD)))
          .unit("°C")
          .format(CellFormat.ONE);

  final FieldSpec shootingDays =
      FieldSpec.result("Shooting days", shooting(job.date, job.kind)).format(CellFormat.COUNT);

  /** In days after the midnight that begins the day. */
  final FieldSpec wrap;

  /** In days after the midnight that begins the day. */
  final FieldSpec nextCall;

  BatteryJobSheet() {
    ColumnSpec date = job.date;
    Formula day = or(shown, 0);
    wrap =
        FieldSpec.result(
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
            .format(CellFormat.TIME);
    Formula next =
        calc("MINIFS({};{};\">\"&{};{};\"<>\")", date.all(), date.all(), day, job.call.all());
    nextCall =
        FieldSpec.result(
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
            .format(CellFormat.TIME);
  }

  /** Dates with a shoot or a night, each once. */
  private static Formula shooting(ColumnSpec date, ColumnSpec kind) {
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

  private static FieldSpec time(String heading) {
    return FieldSpec.input(heading).format(CellFormat.TIME).help(OFF);
  }

  /** Hours after the midnight that begins the day. */
  Formula hour(Formula time) {
    return calc("24*({}+({}<{}))", time, time, turns);
  }

  /** The end of something that began at an hour. */
  Formula end(Formula time, Formula begun) {
    return calc("{}+24*({}<={})", hour(time), hour(time), begun);
  }

  SheetSpec tab() {
    return job.tab(
        "Battery day",
        "Which pack hangs where, how long it lasts, what is swapped and charged when. Fill the"
            + " yellow cells: this page, then On hand, Positions, Devices; read Result.",
        FieldBlock.of("The day", shown, turns, lunchFrom, lunchTo, moveFrom, moveTo),
        FieldBlock.of(
            "General settings", converter, job.touchLimit, job.family, dropLimit, job.conductor),
        FieldBlock.of("Read from the days below", coldest, wrap, nextCall, shootingDays));
  }
}
