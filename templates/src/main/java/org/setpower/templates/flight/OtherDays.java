package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** When you wonder: the rule for a pack on any day, before any airline has answered. */
final class OtherDays {
  final Column pack = Column.input("Pack").needed().wide(36).help("What you call it.");
  final Column energy =
      Column.input("Energy")
          .unit("Wh")
          .number(Format.WHOLE, 0, 1_000_000)
          .needed()
          .wide(18)
          .help("The Wh printed on the label; 0 if none are printed.");
  final Column carried =
      Column.input("How carried")
          .oneOf("spare", "in equipment", "power bank", "damaged")
          .needed()
          .wide(24)
          .help("spare: by itself. power bank: made to charge other things.");
  final Column rules = Column.input("Rules").oneOf("ICAO", "US").wide(16).help("As on Flights.");
  final Column date = Column.input("Date").as(Format.DATE).needed().wide(32).help("Of the flight.");
  final Column pieces =
      Column.input("Pieces")
          .unit("a person")
          .number(Format.COUNT, 0, 999)
          .wide(20)
          .help("How many one person would take.");

  final Column verdict = Column.result("Class").wide(42);
  final Column most = Column.result("Most a person").as(Format.COUNT).mayBeBlank().wide(18);
  final Column rule = Column.result("The rule").wide(110);

  final Table table = Table.of("Other days", 40).apart();

  OtherDays(Trip trip) {
    Object[] asked = {energy, carried, "Li-ion", or(rules, trip.flightRules), date};
    verdict.by(call(FlightFunctions.CLASS, asked));
    most.by(call(FlightFunctions.LIMIT, asked));
    rule.by(call(FlightFunctions.RULE, asked));
    table
        .columns(pack, energy, carried, rules, date, pieces, verdict, most, rule)
        .checks(
            Check.stop(
                calc("OR({}=\"cargo only\";{}=\"not by air\")", verdict, verdict),
                say("{}: not with a traveller.", verdict)),
            Check.stop(
                calc("{}>{}", pieces, most),
                say("{} a person, at most {} on that day.", pieces, most)),
            Check.look(
                calc("RIGHT({};10)=\"must agree\"", verdict),
                Formula.of("The airline must agree first: ask in writing.")),
            Check.look(
                calc("{}=\"ask the airline\"", verdict),
                Formula.of("Ask the airline: no rule is confirmed for this.")));
  }

  Tab tab() {
    return Tab.of(
            "Other days",
            "When you wonder: the rule for one pack on one day, before any airline has answered."
                + " Result shows the first eight rows on its last page.")
        .with(table);
  }
}
