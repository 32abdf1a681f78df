package org.setpower.templates.fleet;

import org.setpower.templates.shared.Job;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;

/** What holds for the whole register: when a test counts, and when a pack is not fit. */
final class House {
  final Job job =
      new Job(
          Field.input("Stock")
              .help("What is registered here: packs of the house, packs of a job.")
              .named("Job_Stock"));

  final Field asOf =
      Field.input("As of")
          .as(Format.DATE)
          .help("The day on which tests and returns are due. Blank: today.")
          .named("Job_As_of");
  final Field currency = Job.currency();

  final Field coldest =
      Field.input("Test at least at")
          .unit(job.degrees())
          .number(Format.WHOLE, -40, 140)
          .help("A colder pack gives less: its test is not compared. Blank: 15 °C (59 °F).");
  final Field warmest =
      Field.input("Test at most at")
          .unit(job.degrees())
          .number(Format.WHOLE, -40, 140)
          .help("A warmer pack flatters. Blank: 30 °C (86 °F).");
  final Field rested =
      Field.input("Rested before a test")
          .unit("h")
          .number(Format.ONE, 0, 100)
          .is(1)
          .help("Hours off the charger, so that the cell volts have settled.");
  final Field testLoad =
      Field.input("Test load, at most")
          .share(0.01, 5)
          .is(0.5)
          .help("Watts over the Wh on the label: 50 % empties it in two hours.");

  final Field retire =
      Field.input("Retire below")
          .share(0.3, 1)
          .is(0.8)
          .help("Health at which a pack has done its work. 80 % is the usual line.")
          .named("Job_Retire_below");
  final Field watch =
      Field.input("Watch below")
          .share(0.3, 1)
          .is(0.85)
          .help("Health from which on a pack is tested more often.")
          .named("Job_Watch_below");
  final Field spread =
      Field.input("Cell spread, at most")
          .unit("V")
          .number(Format.THREE, 0.001, 1)
          .is(0.05)
          .help("Volts between the best and the worst cell, rested. More: one is drifting.")
          .named("Job_Cell_spread");
  final Field every =
      Field.input("Test again after")
          .unit("days")
          .number(Format.WHOLE, 1, 3650)
          .is(180)
          .help("Days after the last test that counts. Packs in daily use: every 50 cycles.")
          .named("Job_Test_again_after");

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

  Tab tab() {
    return job.tabWithoutDays(
        "Fleet register",
        "Which packs are fit to go out, which want a test, service or retirement, and why. Fill the"
            + " yellow cells: Packs first, then paste Tests; read Result.",
        Fields.of("What holds everywhere", asOf, currency),
        Fields.of(
            "Tests that can be compared (common practice; set your own)",
            coldest,
            warmest,
            rested,
            testLoad),
        Fields.of(
            "When a pack is not fit (common practice; set your own)",
            retire,
            watch,
            spread,
            every));
  }
}
