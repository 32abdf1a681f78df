package org.setpower.templates.fleet;

import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;

/** What holds for the whole register: when a test counts, and when a pack is not fit. */
final class RegisterSettings {
  final JobSheet job =
      new JobSheet(
          FieldSpec.input("Stock")
              .help("What is registered here: packs of the house, packs of a job.")
              .rangeName("Job_Stock"));

  final FieldSpec asOf =
      FieldSpec.input("As of")
          .format(CellFormat.DATE)
          .help("The day on which tests and returns are due. Blank: today.")
          .rangeName("Job_As_of");
  final FieldSpec currency = JobSheet.currency();

  final FieldSpec coldest =
      FieldSpec.input("Test at least at")
          .unit(job.degrees())
          .number(CellFormat.WHOLE, -40, 140)
          .help("A colder pack gives less: its test is not compared. Blank: 15 °C (59 °F).");
  final FieldSpec warmest =
      FieldSpec.input("Test at most at")
          .unit(job.degrees())
          .number(CellFormat.WHOLE, -40, 140)
          .help("Warm batteries test too high. Blank: 30 °C (86 °F).");
  final FieldSpec rested =
      FieldSpec.input("Rested before a test")
          .unit("h")
          .number(CellFormat.ONE, 0, 100)
          .is(1)
          .help("Hours off the charger, so that the cell volts have settled.");
  final FieldSpec testLoad =
      FieldSpec.input("Test load, at most")
          .share(0.01, 5)
          .is(0.5)
          .help("Watts over the Wh on the label: 50 % empties it in two hours.");

  final FieldSpec retire =
      FieldSpec.input("Retire below")
          .share(0.3, 1)
          .is(0.8)
          .help("End-of-life threshold; 80 % is usual.")
          .rangeName("Job_Retire_below");
  final FieldSpec watch =
      FieldSpec.input("Watch below")
          .share(0.3, 1)
          .is(0.85)
          .help("Health from which on a pack is tested more often.")
          .rangeName("Job_Watch_below");
  final FieldSpec spread =
      FieldSpec.input("Cell spread, at most")
          .unit("V")
          .number(CellFormat.THREE, 0.001, 1)
          .is(0.05)
          .help("Volts between the best and the worst cell, rested. More: one is drifting.")
          .rangeName("Job_Cell_spread");
  final FieldSpec every =
      FieldSpec.input("Test again after")
          .unit("days")
          .number(CellFormat.WHOLE, 1, 3650)
          .is(180)
          .help("Days after the last test that counts. Packs in daily use: every 50 cycles.")
          .rangeName("Job_Test_again_after");

  /** The lowest temperature of a test, in the chosen unit. */
  Formula coldest() {
    return job.degrees(coldest, 15);
  }

  /** The highest temperature of a test, in the chosen unit. */
  Formula warmest() {
    return job.degrees(warmest, 30);
  }

  /** The day that counts. */
  Formula today() {
    return Formula.or(asOf, Formula.calc("TODAY()"));
  }

  SheetSpec tab() {
    return job.tabWithoutDays(
        "Fleet register",
        "Which packs are fit to go out, which want a test, service or retirement, and why. Fill the"
            + " yellow cells: Packs first, then paste Tests; read Result.",
        FieldBlock.of("General settings", asOf, currency),
        FieldBlock.of(
            "Tests that can be compared (common practice; set your own)",
            coldest,
            warmest,
            rested,
            testLoad),
        FieldBlock.of(
            "When a pack is not fit (common practice; set your own)",
            retire,
            watch,
            spread,
            every));
  }
}
