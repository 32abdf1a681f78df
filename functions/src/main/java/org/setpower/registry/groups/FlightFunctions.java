package org.setpower.registry.groups;

import static org.setpower.registry.groups.FlightParameters.CARRIED;
import static org.setpower.registry.groups.FlightParameters.FLIGHT_CHEMISTRY;
import static org.setpower.registry.groups.FlightParameters.LABEL_WATT_HOURS;
import static org.setpower.registry.groups.FlightParameters.ON_DATE;
import static org.setpower.registry.groups.FlightParameters.PACKING;
import static org.setpower.registry.groups.FlightParameters.RULES;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.setpower.base.CalculationStep;
import org.setpower.base.Checks;
import org.setpower.base.TextEnum;
import org.setpower.base.Unit;
import org.setpower.flight.BaggageRule;
import org.setpower.flight.CargoRule;
import org.setpower.flight.FlightErrorCode;
import org.setpower.flight.FlightSequence;
import org.setpower.flight.PassengerCount;
import org.setpower.flight.RuleBook;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.RangeTable;

/** FLIGHT: packs in the air. */
public final class FlightFunctions {
  private FlightFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("FLIGHT", "batteries on flights");

  private static final String BAGGAGE_SOURCE =
      "ICAO Technical Instructions and IATA DGR Table 2.3.A; 49 CFR 175.10 and FAA PackSafe";
  private static final String CARGO_SOURCE = "IATA DGR PI 965, 966 and 967; 49 CFR 173.185";
  private static final String CAUTION =
      "Do not fly damaged or swollen batteries. Cover the terminals of each. Ask "
          + "before travel: the airline, its country and the country of departure decide."
          + " Carry only what the traveller uses, nothing for sale. Batteries bolted into"
          + " one block count together";

  private static final TextEnum.Lookup<RuleBook> BOOKS = new TextEnum.Lookup<>(RuleBook.class);

  private static final Parameter<LocalDate> NEWEST = ON_DATE.orElse(null, "the newest rules held");

  private static final Parameter<Object> WATT_HOURS_RANGE =
      Parameters.range(
          "watt_hours_range", "Watt-hours printed on one battery, type by type", Unit.WATT_HOUR);
  private static final Parameter<Object> QUANTITY_RANGE =
      Parameters.range("quantity_range", "Quantity of each type", Unit.PIECES);
  private static final Parameter<Object> DATES =
      Parameters.range("dates", "Days of the flights", Unit.NONE).asDate();
  private static final Parameter<Object> RULES_RANGE =
      Parameters.range("rules_range", "Rules of each flight: \"ICAO\" or \"US\"", Unit.NONE);
  private static final Parameter<Object> ANSWERS =
      Parameters.range(
          "answers",
          "Number per person that each airline agrees to; 0: it refuses, blank: no answer" + " yet",
          Unit.PIECES);

  public static final FunctionSpec CLASS =
      GROUP
          .function("CLASS")
          .description("Returns where a battery may travel with its owner")
          .parameters(LABEL_WATT_HOURS, CARRIED, FLIGHT_CHEMISTRY, RULES, ON_DATE)
          .returnsText("Class")
          .source(BAGGAGE_SOURCE)
          .caution(CAUTION)
          .errorCodes(FlightErrorCode.BEFORE_OLDEST, FlightErrorCode.AFTER_EDITION)
          .example("=FLIGHT.CLASS(98;\"spare\";\"Li-ion\";\"ICAO\";\"2026-06-01\")", "cabin")
          .example(
              "=FLIGHT.CLASS(150;\"spare\";\"Li-ion\";\"ICAO\";\"2026-06-01\")",
              "cabin, airline must agree")
          .steps(FlightFunctions::ruleShown)
          .implementation(a -> rule(a).verdict().word());

  public static final FunctionSpec LIMIT =
      GROUP
          .function("LIMIT")
          .description("Returns the max. number of such batteries per person")
          .parameters(LABEL_WATT_HOURS, CARRIED, FLIGHT_CHEMISTRY, RULES, ON_DATE)
          .returns(Unit.PIECES, "Max. per person")
          .source(BAGGAGE_SOURCE)
          .caution(CAUTION + ". The 20 spares are all types together. Airlines often allow fewer")
          .errorCodes(
              FlightErrorCode.BEFORE_OLDEST,
              FlightErrorCode.AFTER_EDITION,
              FlightErrorCode.NO_COUNT,
              FlightErrorCode.ASK_FIRST)
          .example("=FLIGHT.LIMIT(150;\"spare\";\"Li-ion\";\"ICAO\";\"2026-06-01\")", 2.0)
          .steps(FlightFunctions::ruleShown)
          .implementation(a -> (double) rule(a).limit());

  public static final FunctionSpec PEOPLE =
      GROUP
          .function("PEOPLE")
          .description(
              "Returns the min. number of travellers for these lithium-ion spare batteries")
          .parameters(WATT_HOURS_RANGE, QUANTITY_RANGE, RULES, ON_DATE)
          .returns(Unit.PIECES, "Travellers")
          .formula("the larger of ⌈batteries over 100 Wh / 2⌉ and ⌈all batteries / 20⌉")
          .source(BAGGAGE_SOURCE)
          .caution(CAUTION + ". Airlines often allow fewer")
          .errorCodes(
              FlightErrorCode.NOT_IN_CABIN,
              FlightErrorCode.BEFORE_OLDEST,
              FlightErrorCode.AFTER_EDITION)
          .example("=FLIGHT.PEOPLE({98|150};{10|8};\"ICAO\";\"2026-06-01\")", 4.0)
          .implementation(
              a -> (double) PassengerCount.fewest(packs(a), a.get(RULES), a.get(ON_DATE)));

  public static final FunctionSpec STRICTEST =
      GROUP
          .function("STRICTEST")
          .description(
              "Returns where a battery may travel with its owner on all of several flights")
          .parameters(LABEL_WATT_HOURS, DATES, RULES_RANGE, ANSWERS, CARRIED, FLIGHT_CHEMISTRY)
          .returnsText("Class")
          .formula("the strictest class; an airline that agreed no longer has to, 0 leaves cargo")
          .source(BAGGAGE_SOURCE)
          .caution(CAUTION + ". Have the answer in writing")
          .errorCodes(FlightErrorCode.BEFORE_OLDEST, FlightErrorCode.AFTER_EDITION)
          .example(
              "=FLIGHT.STRICTEST(150;{\"2026-06-01\"|\"2026-06-02\"};{\"ICAO\"|\"US\"};{2|1};\"spare\";\"Li-ion\")",
              "cabin")
          .implementation(
              a ->
                  FlightSequence.strictest(
                          flights(a),
                          a.get(LABEL_WATT_HOURS),
                          a.get(CARRIED),
                          a.get(FLIGHT_CHEMISTRY))
                      .word());

  public static final FunctionSpec MINLIMIT =
      GROUP
          .function("MINLIMIT")
          .description(
              "Returns the max. number of such batteries per person on all of several flights")
          .parameters(LABEL_WATT_HOURS, DATES, RULES_RANGE, ANSWERS, CARRIED, FLIGHT_CHEMISTRY)
          .returns(Unit.PIECES, "Max. per person")
          .formula("the smallest of the rules' numbers and the airlines' answers")
          .source(BAGGAGE_SOURCE)
          .caution(CAUTION + ". Have the answer in writing")
          .errorCodes(
              FlightErrorCode.BEFORE_OLDEST,
              FlightErrorCode.AFTER_EDITION,
              FlightErrorCode.ANSWER_MISSING,
              FlightErrorCode.NO_COUNT)
          .example(
              "=FLIGHT.MINLIMIT(150;{\"2026-06-01\"|\"2026-06-02\"};{\"ICAO\"|\"US\"};{2|1};\"spare\";\"Li-ion\")",
              1.0)
          .implementation(
              a ->
                  (double)
                      FlightSequence.fewest(
                          flights(a),
                          a.get(LABEL_WATT_HOURS),
                          a.get(CARRIED),
                          a.get(FLIGHT_CHEMISTRY)));

  public static final FunctionSpec CARGO =
      GROUP
          .function("CARGO")
          .description(
              "Returns UN number, packing instruction and section for batteries as air cargo")
          .parameters(LABEL_WATT_HOURS, PACKING, FLIGHT_CHEMISTRY, ON_DATE)
          .returnsText("Shipment as cargo")
          .source(CARGO_SOURCE)
          .caution("Have it declared by a trained shipper. Airline and forwarder may refuse it")
          .errorCodes(
              FlightErrorCode.CARGO_CHEMISTRY,
              FlightErrorCode.CARGO_NOT_PRINTED,
              FlightErrorCode.BEFORE_OLDEST,
              FlightErrorCode.AFTER_EDITION)
          .example(
              "=FLIGHT.CARGO(294;\"alone\";\"Li-ion\";\"2026-06-01\")",
              "UN 3480, PI 965 Section IA, cargo aircraft only; UN 38.3 test summary; a trained"
                  + " shipper")
          .implementation(
              a ->
                  CargoRule.section(
                              a.get(LABEL_WATT_HOURS),
                              a.get(PACKING),
                              a.get(FLIGHT_CHEMISTRY),
                              a.get(ON_DATE))
                          .says()
                      + "; UN 38.3 test summary; a trained shipper");

  public static final FunctionSpec CARGOCHARGE =
      GROUP
          .function("CARGOCHARGE")
          .description("Returns the max. state of charge of lithium batteries as air cargo")
          .parameters(PACKING, LABEL_WATT_HOURS, ON_DATE)
          .returns(Unit.SHARE, "Share of the rated Wh")
          .source(CARGO_SOURCE)
          .caution(
              "The share is of the rated Wh: the gauge of an aged battery reads higher at the"
                  + " same charge. Above it two states must approve")
          .errorCodes(
              FlightErrorCode.AFTER_EDITION,
              FlightErrorCode.CHARGE_RECOMMENDED,
              FlightErrorCode.CHARGE_FREE)
          .example("=FLIGHT.CARGOCHARGE(\"alone\";98;\"2026-06-01\")", 0.3)
          .implementation(
              a ->
                  CargoRule.highestCharge(a.get(LABEL_WATT_HOURS), a.get(PACKING), a.get(ON_DATE))
                      .charge());

  public static final FunctionSpec RULE =
      GROUP
          .function("RULE")
          .description(
              "Returns the rule for a battery in one sentence, with authority, edition and"
                  + " date")
          .parameters(LABEL_WATT_HOURS, CARRIED, FLIGHT_CHEMISTRY, RULES, NEWEST)
          .returnsText("Rule")
          .source(BAGGAGE_SOURCE)
          .caution(CAUTION)
          .errorCodes(FlightErrorCode.BEFORE_OLDEST, FlightErrorCode.AFTER_EDITION)
          .example(
              "=FLIGHT.RULE(200;\"spare\";\"Li-ion\";\"ICAO\")",
              "A battery over 160 Wh does not travel with its owner, only as declared cargo."
                  + " ICAO/IATA, DGR Table 2.3.A, 2018, same limits in the 67th edition 2026; in"
                  + " force since 2018-01-01, held here until 2026-12-31.")
          .implementation(a -> rule(a).sentence());

  private static BaggageRule rule(Arguments a) {
    return BaggageRule.of(
        a.get(LABEL_WATT_HOURS),
        a.get(CARRIED),
        a.get(FLIGHT_CHEMISTRY),
        a.get(RULES),
        a.get(ON_DATE));
  }

  private static List<CalculationStep> ruleShown(Arguments a) {
    BaggageRule rule = rule(a);
    return List.of(
        new CalculationStep("rule", "The rule", rule.sentence(), Unit.NONE, rule.source()));
  }

  private static List<PassengerCount.Packs> packs(Arguments a) {
    String[] columns = {"watt_hours_range", "quantity_range"};
    List<PassengerCount.Packs> packs = new ArrayList<>();
    for (RangeTable.Row row :
        RangeTable.beside("the batteries", columns, a.get(WATT_HOURS_RANGE), a.get(QUANTITY_RANGE))
            .filledRows()) {
      packs.add(
          new PassengerCount.Packs(
              row.number(),
              Checks.atLeast(row.nameOf(0), row.number(0), 0),
              (long)
                  Checks.atMost(
                      row.nameOf(1), wholeFromZero(row.nameOf(1), row.number(1)), 1_000_000)));
    }
    return packs;
  }

  private static List<FlightSequence.Flight> flights(Arguments a) {
    String[] columns = {"dates", "rules_range", "answers"};
    List<FlightSequence.Flight> flights = new ArrayList<>();
    for (RangeTable.Row row :
        RangeTable.beside("the flights", columns, a.get(DATES), a.get(RULES_RANGE), a.get(ANSWERS))
            .filledRows()) {
      OptionalInt answer =
          row.leavesOut(2)
              ? OptionalInt.empty()
              : OptionalInt.of(
                  (int)
                      Checks.atMost(
                          row.nameOf(2), wholeFromZero(row.nameOf(2), row.number(2)), 1000));
      flights.add(new FlightSequence.Flight(row.number(), row.date(0), row.word(1, BOOKS), answer));
    }
    return flights;
  }

  private static double wholeFromZero(String name, double value) {
    return Checks.atLeast(name, Checks.whole(name, value), 0);
  }
}
