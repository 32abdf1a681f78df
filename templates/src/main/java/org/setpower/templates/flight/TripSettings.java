package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;

/** What holds for the whole trip. */
final class TripSettings {
  final JobSheet job = new JobSheet();

  final FieldSpec travellers =
      FieldSpec.input("Travellers")
          .number(CellFormat.COUNT, 1, 99)
          .is(1)
          .help("How many of you carry packs. They are numbered 1, 2, 3; no names here.")
          .rangeName("Job_Travellers");
  final FieldSpec flightRules =
      FieldSpec.input("Flight rules")
          .options("ICAO", "US")
          .is("ICAO")
          .help("Whose rules hold for flights whose own cell is blank: see Rules on Flights.")
          .rangeName("Job_Flight_rules");
  final FieldSpec bag =
      FieldSpec.input("Hand luggage, at most")
          .number(CellFormat.ONE, 0.1, 200)
          .help("A bag, by the airline that allows least. Blank: not compared.");
  final FieldSpec neededOn =
      FieldSpec.input("Full by")
          .format(CellFormat.DATE)
          .help("The first day on which packs sent ahead must be charged.")
          .rangeName("Job_Full_by");
  final FieldSpec neededAt =
      FieldSpec.input("Full at")
          .format(CellFormat.TIME)
          .is(7.0 / 24)
          .help("The unit call of that day: 07:00.")
          .rangeName("Job_Full_at");
  final FieldSpec channels =
      FieldSpec.input("Charger channels there")
          .number(CellFormat.COUNT, 1, 999)
          .is(4)
          .help("How many packs charge at a time where you arrive.");
  final FieldSpec amps =
      FieldSpec.input("Charge current, all in use")
          .unit("A")
          .number(CellFormat.ONE, 0.1, 200)
          .is(3)
          .help("On the charger: amps of one channel while all are in use.");
  final FieldSpec air =
      FieldSpec.input("Where they are charged")
          .number(CellFormat.WHOLE, -40, 140)
          .help(
              "Temperature of the packs there. Blank: 20 °C (68 °F). Below freezing: warm first.");

  TripSettings() {
    bag.unit(job.masses());
    air.unit(job.degrees());
  }

  /** The temperature at the chargers in °C. */
  Formula airCelsius() {
    return job.celsius(job.degrees(air, 20));
  }

  /** The moment at which packs must be full. */
  Formula needed() {
    return calc("({}+{})", neededOn, neededAt);
  }

  SheetSpec tab() {
    return job.tabWithoutDays(
        "Flight packing list",
        "Which packs fly, with whom, and how the rest gets there. Fill the yellow cells: this page,"
            + " then Flights, Packs, Carry, and Cargo, road; show Counter at the check-in.",
        FieldBlock.of("The trip", travellers, flightRules, bag),
        FieldBlock.of("Packs sent ahead", neededOn, neededAt, channels, amps, air));
  }
}
