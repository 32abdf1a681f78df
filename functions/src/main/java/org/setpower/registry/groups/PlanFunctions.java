package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.RANGE;
import static org.setpower.registry.Parameter.Shape.SINGLE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.Mass;
import org.setpower.base.Unit;
import org.setpower.plan.batteries.BatteryPlanErrorCode;
import org.setpower.plan.batteries.ChargerSet;
import org.setpower.plan.batteries.CheapestMix;
import org.setpower.plan.batteries.DaySimulation;
import org.setpower.plan.batteries.Device;
import org.setpower.plan.batteryday.BatteryDayPlan;
import org.setpower.plan.batteryday.simulation.PowerHours;
import org.setpower.plan.budget.BudgetPlan;
import org.setpower.plan.lighting.LightingModel;
import org.setpower.plan.quote.QuotePlan;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.plan.travel.TravelPlan;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.PlanFunction;
import org.setpower.registry.RangeTable;

/** PLAN: the whole day; whole sheets. */
public final class PlanFunctions {
  private PlanFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("PLAN", "plans of a day and whole sheets");

  private static final double LATEST = 24 * 14;
  private static final double MOST = 10_000_000;

  private static final String CART =
      "rules of a charging cart: full batteries only, the one longest on the shelf"
          + " first; batteries that come off wait for the first free channel; energy"
          + " balance with PACK.COLD of Li-ion";
  private static final String CAUTION =
      "Do not charge a lithium battery below 0 °C (32 °F): let it warm up, and add "
          + "that time to charge_hours. Check amps and volts elsewhere: they are not "
          + "checked here. A battery that comes off part-used is charged before it goes "
          + "on again";

  private static final Parameter<List<Device>> DEVICES =
      Parameter.of(
          "devices",
          "Rows: watts, from (h), to (h), Wh of its batteries, batteries at a time; after"
              + " midnight hours continue past 24",
          Unit.NONE,
          RANGE,
          PlanFunctions::devices);

  private static final Parameter<List<DaySimulation.Stock>> STOCK =
      Parameter.of(
          "packs",
          "Rows: Wh on the label, quantity, state of health",
          Unit.NONE,
          RANGE,
          PlanFunctions::stock);

  private static final Parameter<Double> CHANNELS =
      Parameter.of(
          "channels",
          "Number of batteries that charge at the same time",
          Unit.PIECES,
          SINGLE,
          ArgumentParsers.number(
              (n, v) -> Checks.atMost(n, Checks.atLeast(n, Checks.whole(n, v), 0), 1000)));

  private static final Parameter<Double> CHARGE_HOURS =
      Parameters.positive(
          "charge_hours", "Hours for a charge, from any state of charge", Unit.HOUR);

  private static final Parameter<PowerHours> MAINS =
      Parameter.of(
              "mains", "Rows: from (h), to (h) with mains", Unit.HOUR, RANGE, PlanFunctions::mains)
          .orElse(PowerHours.always(), "always");

  private static final Parameter<Map<Double, Double>> SIZE_HOURS =
      Parameter.of(
              "size_hours",
              "Rows: Wh on the label, hours for a charge of that size",
              Unit.HOUR,
              RANGE,
              PlanFunctions::sizeHours)
          .orElse(Map.of(), "charge_hours for all");

  public static final FunctionSpec DAY =
      GROUP
          .function("DAY")
          .description("Returns the battery events of a day and the hours without power")
          .parameters(
              DEVICES, STOCK, CHANNELS, CHARGE_HOURS, Parameters.BATTERY_TEMP, MAINS, SIZE_HOURS)
          .returnsTable(
              "Events; the last row contains the hours lost",
              "hour (h)",
              "device (row)",
              "battery (number in its type)",
              "in use",
              "charging",
              "on the shelf",
              "waiting for a channel",
              "type (row of packs)",
              "what")
          .formula(
              "event by event at exact times: runtime of a battery = Wh · health · cold /"
                  + " watts")
          .source(CART)
          .caution(CAUTION)
          .errorCodes(
              BatteryPlanErrorCode.ENDS_BEFORE_START,
              BatteryPlanErrorCode.NO_SUCH_PACK,
              BatteryPlanErrorCode.TOO_MANY_DEVICES,
              BatteryPlanErrorCode.TOO_MANY_EVENTS,
              BatteryPlanErrorCode.TOO_MANY_PACKS)
          .example("=PLAN.DAY({49;7;9;98;1};{98;1;1};0;3;25)", 7.0)
          .implementation(PlanFunctions::day);

  public static final FunctionSpec PACKS =
      GROUP
          .function("PACKS")
          .description("Returns the min. number of batteries of each size that power all devices")
          .parameters(DEVICES, CHANNELS, CHARGE_HOURS, Parameters.BATTERY_TEMP, MAINS, SIZE_HOURS)
          .returnsTable("Min. batteries", "Wh", "pieces")
          .formula("the max. number of a size that is off the shelf at the same time")
          .source(CART)
          .caution(CAUTION + ". Spare batteries are not included")
          .errorCodes(
              BatteryPlanErrorCode.ENDS_BEFORE_START,
              BatteryPlanErrorCode.TOO_MANY_DEVICES,
              BatteryPlanErrorCode.TOO_MANY_EVENTS,
              BatteryPlanErrorCode.TOO_MANY_PACKS)
          .example("=PLAN.PACKS({49;7;11;98;1};1;1;25)", 98.0)
          .implementation(PlanFunctions::packs);

  private static final Parameter<List<CheapestMix.Option>> OPTIONS =
      Parameter.of(
          "options",
          "Rows: Wh, max. watts, kg, price, cabin limit per person (blank: none)",
          Unit.NONE,
          RANGE,
          PlanFunctions::options);

  private static final Parameter<double[]> HOURS_WH =
      Parameter.of(
          "hours_wh",
          "Rows: hours of a part of the day, Wh required",
          Unit.NONE,
          RANGE,
          PlanFunctions::need);

  private static final Parameter<Double> MAX_KG =
      Parameter.of(
              "max_kg",
              "Max. weight of the mix; also text such as \"50 lb\"",
              Unit.KILOGRAM,
              SINGLE,
              ArgumentParsers.amount(Mass::kilograms, PlanFunctions::figure))
          .orElse(Double.POSITIVE_INFINITY, "no limit");

  private static final Parameter<Double> PEOPLE =
      Parameter.of(
              "people",
              "Travellers who take it as carry-on",
              Unit.PIECES,
              SINGLE,
              ArgumentParsers.number(
                  (n, v) -> Checks.atMost(n, Checks.atLeast(n, Checks.whole(n, v), 1), 1000)))
          .orElse(Double.POSITIVE_INFINITY, "nobody flies, cabin limits do not count")
          .zeroIsGiven();

  public static final FunctionSpec MIX =
      GROUP
          .function("MIX")
          .description(
              "Returns the number of batteries of each option in the cheapest mix for a job")
          .parameters(OPTIONS, HOURS_WH, MAX_KG, PEOPLE)
          .returnsTable("Cheapest mix", "option (row)", "pieces")
          .formula("min. Σ n · price with Σ n · Wh ≥ Wh required, Σ n · W ≥ the highest Wh / h")
          .source("integer programme, solved to its proven optimum")
          .caution(
              "Options with the same or a lower cabin limit count together. Enter Wh and"
                  + " watts as they are today and in the cold")
          .errorCodes(
              BatteryPlanErrorCode.NO_MIX,
              BatteryPlanErrorCode.MIX_TOO_LARGE,
              BatteryPlanErrorCode.MIX_TOO_HARD)
          .example("=PLAN.MIX({98;120;0.75;5;20|294;400;2.1;14;0};{3;600})", 1.0)
          .implementation(PlanFunctions::mix);

  public static final FunctionSpec REGISTER = PlanFunction.of(GROUP, RegisterPlan.MODEL);

  public static final FunctionSpec BATTERIES = PlanFunction.of(GROUP, BatteryDayPlan.MODEL);

  public static final FunctionSpec QUOTE = PlanFunction.of(GROUP, QuotePlan.MODEL);
  public static final FunctionSpec BUDGET = PlanFunction.of(GROUP, BudgetPlan.MODEL);
  public static final FunctionSpec TRAVEL = PlanFunction.of(GROUP, TravelPlan.MODEL);
  public static final FunctionSpec LIGHTING = PlanFunction.of(GROUP, LightingModel.MODEL);

  private static List<Device> devices(String name, Object raw) {
    List<Device> devices = new ArrayList<>();
    for (RangeTable.Row row :
        RangeTable.of(name, raw, "watts", "from", "to", "pack_wh", "packs_at_once").filledRows()) {
      devices.add(
          new Device(
              row.number(),
              Checks.atLeast(row.nameOf(0), row.number(0), 0),
              hour(row, 1),
              hour(row, 2),
              Checks.above(row.nameOf(3), row.number(3), 0),
              (int) pieces(row, 4, 1, 100)));
    }
    return devices;
  }

  private static double hour(RangeTable.Row row, int column) {
    String name = row.nameOf(column);
    return Checks.atMost(name, Checks.atLeast(name, row.number(column), 0), LATEST);
  }

  private static double pieces(RangeTable.Row row, int column, double least, double most) {
    String name = row.nameOf(column);
    double value = Checks.whole(name, row.number(column));
    return Checks.atMost(name, Checks.atLeast(name, value, least), most);
  }

  private static List<DaySimulation.Stock> stock(String name, Object raw) {
    List<DaySimulation.Stock> stock = new ArrayList<>();
    for (RangeTable.Row row : RangeTable.of(name, raw, "Wh", "pieces", "health").filledRows()) {
      stock.add(
          new DaySimulation.Stock(
              row.number(),
              Checks.above(row.nameOf(0), row.number(0), 0),
              (int) pieces(row, 1, 0, 5000),
              health(row.nameOf(2), row.number(2))));
    }
    return stock;
  }

  private static double health(String name, double value) {
    return Math.min(1, Checks.above(name, Checks.atMost(name, value, 1.1), 0));
  }

  private static PowerHours mains(String name, Object raw) {
    List<PowerHours.Span> spans = new ArrayList<>();
    for (RangeTable.Row row : RangeTable.of(name, raw, "from", "to").filledRows()) {
      double from = hour(row, 0);
      double to = hour(row, 1);
      if (to <= from) {
        throw new EvaluationException(
            BatteryPlanErrorCode.ENDS_BEFORE_START, row.number(), name, from, to);
      }
      spans.add(new PowerHours.Span(from, to));
    }
    return PowerHours.within(spans);
  }

  private static Map<Double, Double> sizeHours(String name, Object raw) {
    Map<Double, Double> hours = new HashMap<>();
    for (RangeTable.Row row : RangeTable.of(name, raw, "pack_wh", "charge_hours").filledRows()) {
      hours.put(row.number(0), Checks.above(row.nameOf(1), row.number(1), 0));
    }
    return hours;
  }

  private static ChargerSet chargers(Arguments a) {
    return new ChargerSet(
        a.get(CHANNELS).intValue(), a.get(CHARGE_HOURS), a.get(SIZE_HOURS), a.get(MAINS));
  }

  private static Object[][] day(Arguments a) {
    DaySimulation plan =
        DaySimulation.of(a.get(DEVICES), a.get(STOCK), chargers(a), a.get(Parameters.BATTERY_TEMP));
    List<Object[]> rows = new ArrayList<>();
    for (DaySimulation.Event e : plan.events()) {
      rows.add(
          new Object[] {
            e.hour(),
            (double) e.device(),
            (double) e.pack(),
            (double) e.inUse(),
            (double) e.charging(),
            (double) e.onShelf(),
            (double) e.waiting(),
            (double) e.kind(),
            e.what().words()
          });
    }
    rows.add(new Object[] {plan.hoursLost(), 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, "hours lost"});
    return rows.toArray(Object[][]::new);
  }

  private static Object[][] packs(Arguments a) {
    return DaySimulation.fewestPacks(a.get(DEVICES), chargers(a), a.get(Parameters.BATTERY_TEMP))
        .entrySet()
        .stream()
        .map(e -> new Object[] {e.getKey(), (double) e.getValue()})
        .toArray(Object[][]::new);
  }

  private static List<CheapestMix.Option> options(String name, Object raw) {
    List<CheapestMix.Option> options = new ArrayList<>();
    for (RangeTable.Row row :
        RangeTable.of(name, raw, "Wh", "max_watts", "kg", "price", "cabin_limit").filledRows()) {
      options.add(
          new CheapestMix.Option(
              row.number(),
              Checks.above(row.nameOf(0), figure(row, 0), 0),
              Checks.above(row.nameOf(1), figure(row, 1), 0),
              figure(row, 2),
              figure(row, 3),
              row.leavesOut(4) ? Double.POSITIVE_INFINITY : pieces(row, 4, 0, 1000),
              Double.POSITIVE_INFINITY));
    }
    return options;
  }

  /** From 0 to what no set ever sees: the search needs figures of a size. */
  private static double figure(RangeTable.Row row, int column) {
    return figure(row.nameOf(column), row.number(column));
  }

  private static double figure(String name, double value) {
    return Checks.atMost(name, Checks.atLeast(name, value, 0), MOST);
  }

  /** Wh in all, and the highest watts of a part. */
  private static double[] need(String name, Object raw) {
    double wattHours = 0;
    double watts = 0;
    for (RangeTable.Row row : RangeTable.of(name, raw, "hours", "Wh").filledRows()) {
      double hours = Checks.above(row.nameOf(0), row.number(0), 0);
      double energy = figure(row, 1);
      wattHours += energy;
      watts = Math.max(watts, energy / hours);
    }
    return new double[] {wattHours, watts};
  }

  private static Object[][] mix(Arguments a) {
    double[] need = a.get(HOURS_WH);
    List<CheapestMix.Option> options = a.get(OPTIONS);
    int[] mix =
        CheapestMix.of(
            options, new CheapestMix.Job(need[0], need[1], a.get(MAX_KG), a.get(PEOPLE)));
    Object[][] rows = new Object[mix.length][];
    for (int i = 0; i < mix.length; i++) {
      rows[i] = new Object[] {(double) options.get(i).row(), (double) mix[i]};
    }
    return rows;
  }
}
