package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** When you wonder: the rule for a pack on any day, before any airline has answered. */
final class OtherDatesSheet {
  final ColumnSpec pack = ColumnSpec.input("Pack").required().width(36).help("What you call it.");
  final ColumnSpec energy =
      ColumnSpec.input("Energy")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0, 1_000_000)
          .required()
          .width(18)
          .help("The Wh printed on the label; 0 if none are printed.");
  final ColumnSpec carried =
      ColumnSpec.input("How carried")
          .options("spare", "in equipment", "power bank", "damaged")
          .required()
          .width(24)
          .help("spare: by itself. power bank: made to charge other things.");
  final ColumnSpec rules =
      ColumnSpec.input("Rules").options("ICAO", "US").width(16).help("As on Flights.");
  final ColumnSpec date =
      ColumnSpec.input("Date").format(CellFormat.DATE).required().width(32).help("Of the flight.");
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .unit("a person")
          .number(CellFormat.COUNT, 0, 999)
          .width(20)
          .help("How many one person would take.");

  final ColumnSpec verdict = ColumnSpec.result("Class").width(42);
  final ColumnSpec most =
      ColumnSpec.result("Max. per person").format(CellFormat.COUNT).mayBeBlank().width(18);
  final ColumnSpec rule = ColumnSpec.result("The rule").width(110);

  final TableSpec table = TableSpec.of("Other days", 40).excludeFromIssues();

  OtherDatesSheet(TripSettings trip) {
    Object[] asked = {energy, carried, "Li-ion", or(rules, trip.flightRules), date};
    verdict.formula(call(FlightFunctions.CLASS, asked));
    most.formula(call(FlightFunctions.LIMIT, asked));
    rule.formula(call(FlightFunctions.RULE, asked));
    table
        .columns(pack, energy, carried, rules, date, pieces, verdict, most, rule)
        .checks(
            ValidationRule.stop(
                calc("OR({}=\"cargo only\";{}=\"not by air\")", verdict, verdict),
                say("{}: not with a traveller.", verdict)),
            ValidationRule.stop(
                calc("{}>{}", pieces, most),
                say("{} a person, at most {} on that day.", pieces, most)),
            ValidationRule.check(
                calc("RIGHT({};10)=\"must agree\"", verdict),
                Formula.of("The airline must agree first: ask in writing.")),
            ValidationRule.check(
                calc("{}=\"ask the airline\"", verdict),
                Formula.of("Ask the airline: no rule is confirmed for this.")));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Other days",
            "When you wonder: the rule for one pack on one day, before any airline has answered."
                + " Result shows the first eight rows on its last page.")
        .with(table);
  }
}
