package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;

/** The job of a lighting plan: what holds for every row. */
final class LightingJobSheet {
  final JobSheet job = new JobSheet();

  final FieldSpec shown =
      FieldSpec.input("Day shown")
          .format(CellFormat.DATE)
          .options(job.date)
          .help("Choose a date. Blank: all days, worst case shown.")
          .rangeName("Job_Day_shown");
  final MainsStandards standards = new MainsStandards();
  final FieldSpec mains =
      FieldSpec.input("Mains standard")
          .options(standards.standard)
          .is("230/400 V")
          .help("Used where Volts is blank on Supply. Add more standards on Kit.")
          .rangeName("Job_Mains");
  final FieldSpec legColours =
      FieldSpec.result("Colours of the legs", standards.legColours(mains))
          .help("L1, L2, L3 in that standard. Old or foreign cables may be marked otherwise: ask.")
          .rangeName("Job_Leg_colours");
  final FieldSpec family = job.family;
  final FieldSpec houseLimit =
      FieldSpec.input("Max. voltage drop, utility supply")
          .share(0.001, 0.2)
          .is(0.03)
          .help(
              "Share of the volts lost from the source to the load. IEC 60364-5-52: 3 % for light.")
          .rangeName("Job_Drop_limit_house");
  final FieldSpec ownLimit =
      FieldSpec.input("Max. voltage drop, generator")
          .share(0.001, 0.2)
          .is(0.06)
          .help("The same from a private supply. IEC 60364-5-52: 6 % for light.")
          .rangeName("Job_Drop_limit_own");
  final FieldSpec conductor = job.conductor;
  final FieldSpec ambient =
      FieldSpec.input("Air at the cables")
          .unit(job.degrees())
          .number(CellFormat.WHOLE, -40, 200)
          .is(30)
          .help("At the hottest section, including sun on black cable. Default 30 °C (86 °F).")
          .rangeName("Job_Air_at_the_cables");
  final FieldSpec powerFactor =
      FieldSpec.input("Default power factor")
          .unit("0–1")
          .number(CellFormat.TWO, 0.1, 1)
          .is(0.9)
          .help("Assumed for rows of Kit without one; Notes says how many loads rest on it.");
  final FieldSpec warning = job.touchLimit;

  SheetSpec tab() {
    return job.tab(
        "Lighting power plan",
        "What is plugged in where, on which day, and whether cables, breakers and packs bear it."
            + " Fill the yellow cells: this page, then Supply, Loads, Runs, Packs; read Result.",
        FieldBlock.of(
            "General settings",
            shown,
            mains,
            legColours,
            family,
            houseLimit,
            ownLimit,
            conductor,
            ambient,
            powerFactor,
            warning));
  }

  /** The conductor temperature in °C. */
  Formula conductorCelsius() {
    return job.conductorCelsius();
  }

  /** The air at the cables in °C. */
  Formula ambientCelsius() {
    return job.celsius(ambient);
  }

  /** The volts of a system in the mains standard; 0 where it has none. */
  Formula volts(Formula system) {
    return standards.volts(mains, system);
  }

  /** True when rows of this date count. */
  Formula isShown(Formula date) {
    return calc("IF({}=\"\";TRUE();{}={})", Formula.or(shown, ""), date, Formula.or(shown, 0));
  }
}
