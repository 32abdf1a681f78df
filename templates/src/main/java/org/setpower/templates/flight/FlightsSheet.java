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

/** The flights of the trip and what the airlines answered; the strictest counts. */
final class FlightsSheet {
  static final int ROOM = 12;

  final ColumnSpec date =
      ColumnSpec.input("Date")
          .format(CellFormat.DATE)
          .required()
          .width(32)
          .help("Day of departure, local.");
  final ColumnSpec from = ColumnSpec.input("From").width(24).help("Airport of departure.");
  final ColumnSpec to = ColumnSpec.input("To").width(24).help("Airport of arrival.");
  final ColumnSpec airline =
      ColumnSpec.input("Airline that flies it")
          .required()
          .width(36)
          .help("The one that flies, not the one that sold the ticket: \"operated by\".");
  final ColumnSpec rules =
      ColumnSpec.input("Rules")
          .options("ICAO", "US")
          .width(16)
          .help(
              "ICAO for most of the world; US for flights from, to and within the United States."
                  + " Blank: those on Job.");
  final ColumnSpec over =
      answer("Over 100 Wh", "packs over 100 Wh. 0: none. Blank: no answer yet").width(20);
  final ColumnSpec small =
      answer("To 100 Wh", "packs up to 100 Wh. Blank: as many as the rules allow").width(20);
  final ColumnSpec banks =
      answer("Power banks", "power banks. Blank: as many as the rules allow").width(20);
  final ColumnSpec reference =
      ColumnSpec.input("Reference")
          .width(36)
          .help("Mail, number or booking note; bring it printed.");
  final ColumnSpec answered =
      ColumnSpec.input("Answered on")
          .format(CellFormat.DAY)
          .width(26)
          .help("The day of the answer.");

  final ColumnSpec since = ColumnSpec.result("Rules since").format(CellFormat.DATE).width(32);
  final ColumnSpec until =
      ColumnSpec.result("Edition until").format(CellFormat.DATE).mayBeBlank().width(32);
  final ColumnSpec rulesHeld = ColumnSpec.working("Rules that hold");
  final ColumnSpec rule = ColumnSpec.working("Rule over 100 Wh");
  final ColumnSpec none = ColumnSpec.working("No answer", Formula.of("")).inBlankRowsToo();

  final TableSpec table = TableSpec.of("Flights", ROOM);

  private static ColumnSpec answer(String heading, String what) {
    return ColumnSpec.input(heading)
        .unit("a person")
        .number(CellFormat.COUNT, 0, 1000)
        .help("The airline's answer: how many a person may take of " + what + ".");
  }

  void declare(TripSettings trip, FlightPacksSheet packs) {
    rulesHeld.formula(calc("IF({}>0;{};\"\")", date, or(rules, trip.flightRules)));
    rule.formula(call(FlightFunctions.RULE, 150, "spare", "Li-ion", rulesHeld));
    // On a day that the rules do not reach, the status column gives the reason of this call.
    since.formula(day(1, call(FlightFunctions.RULE, 150, "spare", "Li-ion", rulesHeld, date)));
    until.formula(day(2, rule));
    table
        .columns(
            date, from, to, airline, rules, over, small, banks, reference, answered, since, until,
            rulesHeld, rule, none)
        .rowLabel(airline)
        .checks(
            ValidationRule.stop(
                calc("{}>{}", answered, date),
                Formula.of("The answer is dated after the flight: correct one of the two.")),
            ValidationRule.check(
                calc(
                    "AND({}=\"\";COUNTIF({};\"over 100 Wh\")>0;{}<>\"\")",
                    or(over, ""),
                    packs.sort.all(),
                    date),
                say(
                    "No answer yet: ask {} in writing how many packs over 100 Wh a person may"
                        + " take.",
                    airline)),
            ValidationRule.check(
                calc(
                    "AND({}<>\"\";OR({}=\"\";{}=\"\"))",
                    or(over, ""),
                    or(reference, ""),
                    or(answered, "")),
                Formula.of("Note reference and day of the answer: the counter will ask for it.")));
  }

  /** A date that the sentence of a rule names. */
  private static Formula day(int number, Formula sentence) {
    return calc("DATEVALUE(REGEX({};\"[0-9]{4}-[0-9]{2}-[0-9]{2}\";;" + number + "))", sentence);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Flights",
            "Every flight of the trip, also those that change planes. Ask the airlines early and in"
                + " writing; no answer counts as none. The strictest flight counts for all.")
        .with(table);
  }
}
