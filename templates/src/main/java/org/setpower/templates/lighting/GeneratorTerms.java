package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import java.util.Arrays;
import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;

/** What is agreed about the generator: when it runs, what it costs. */
final class GeneratorTerms {
  private final LightingJobSheet plan;

  final FieldSpec set;
  final FieldSpec reckoned;
  final FieldSpec before =
      FieldSpec.input("Starts before call")
          .unit("min")
          .number(CellFormat.WHOLE, 0, 600)
          .is(45)
          .help("Warm-up and testing before call.");
  final FieldSpec after =
      FieldSpec.input("Stops after wrap")
          .unit("min")
          .number(CellFormat.WHOLE, 0, 600)
          .is(30)
          .help("Wrap lighting after wrap.");
  final FieldSpec offFrom =
      FieldSpec.input("Off from")
          .format(CellFormat.TIME)
          .help("Off for sound, from (every running day). Blank: never.");
  final FieldSpec offTo =
      FieldSpec.input("Off to").format(CellFormat.TIME).help("Stopped for quiet: to.");
  final FieldSpec spare =
      FieldSpec.input("Headroom")
          .share(0, 2)
          .is(0.2)
          .help("Allowance for unplanned loads; 20 % is usual.");
  final FieldSpec ordered =
      FieldSpec.input("Size ordered")
          .unit("kVA")
          .number(CellFormat.ONE, 1, 5000)
          .help("The size you order. Blank: the proposal below counts.");

  final FieldSpec currency = JobSheet.currency();
  final FieldSpec tank;
  final FieldSpec usable =
      FieldSpec.input("Usable tank capacity")
          .share(0.1, 1)
          .is(0.9)
          .help("Leave 10 % in the tank (sediment, air).");
  final FieldSpec price =
      FieldSpec.input("Fuel price, delivered")
          .number(CellFormat.THREE, 0, 1000)
          .help("Delivered price. Blank: fuel cost not included.");
  final FieldSpec drop =
      FieldSpec.input("Each delivery")
          .number(CellFormat.MONEY, 0, 100_000)
          .help("Delivery charge per visit. Blank: none.");
  final FieldSpec operatorRate =
      FieldSpec.input("Operator, an hour")
          .number(CellFormat.MONEY, 0, 10_000)
          .help("Blank: no operator in the cost.");
  final FieldSpec operatorHours =
      FieldSpec.input("Operator, hours a day")
          .unit("h")
          .number(CellFormat.ONE, 0, 24)
          .help("Blank: from the start of the set to its stop.");
  final FieldSpec dayRate =
      FieldSpec.input("Day rate of the set")
          .number(CellFormat.MONEY, 0, 1_000_000)
          .help("The rental house's list. Blank: no hire in the cost.");
  final FieldSpec onHire =
      FieldSpec.input("On hire").format(CellFormat.DATE).help("The first day it is paid for.");
  final FieldSpec offHire =
      FieldSpec.input("Off hire")
          .format(CellFormat.DATE)
          .help("The last day: call it off in writing.");
  final FieldSpec week =
      FieldSpec.input("Days charged a week")
          .number(CellFormat.COUNT, 1, 7)
          .is(3)
          .help("The rental house's rule: 3 is common.");
  final FieldSpec least =
      FieldSpec.input("Least hire")
          .unit("days")
          .number(CellFormat.COUNT, 0, 366)
          .help("Minimum number of days charged. Blank: none.");

  final FieldSpec altitude;
  final FieldSpec air;
  final FieldSpec engine =
      FieldSpec.input("Engine")
          .options("diesel turbo", "diesel", "petrol")
          .is("diesel turbo")
          .help("On its plate; nearly all towed sets are diesel turbo.");

  GeneratorTerms(LightingJobSheet plan, SupplySheet supply) {
    this.plan = plan;
    set =
        FieldSpec.input("Set")
            .options(supply.name)
            .help("A row of Supply. Blank: the first generator there.");
    reckoned =
        FieldSpec.result(
                "Generator calculated",
                calc(
                    "IF({}<>\"\";{};INDEX({};MATCH(\"generator\";{};0)))",
                    or(set, ""),
                    or(set, ""),
                    supply.name.all(),
                    supply.kind.all()))
            .help("Blank while Supply has no generator.");
    tank =
        FieldSpec.input("Tank")
            .unit(plan.job.volumes())
            .number(CellFormat.WHOLE, 1, 100_000)
            .is(120)
            .help("On the set's data sheet.");
    altitude =
        FieldSpec.input("Altitude")
            .unit(plan.job.lengths())
            .number(CellFormat.WHOLE, -500, 20_000)
            .is(0)
            .help("Engine output falls with altitude.");
    air =
        FieldSpec.input("Air at its intake")
            .unit(plan.job.degrees())
            .number(CellFormat.WHOLE, -60, 150)
            .help("Maximum; higher behind sound baffles. Blank: 25 °C (77 °F).");
    price.unit(calc("{}&\" a \"&{}", currency, plan.job.volumes()));
    drop.unit(currency);
    operatorRate.unit(currency);
    dayRate.unit(currency);
  }

  /** The altitude in metres. */
  Formula metres() {
    return plan.job.metres(or(altitude, 0));
  }

  /** The air at the intake in °C. */
  Formula celsius() {
    return calc("IF({}=\"\";25;{})", or(air, ""), plan.job.celsius(or(air, 25)));
  }

  /** The fuel that a full tank gives, in the chosen unit. */
  Formula full() {
    return calc("{}*{}", or(tank, 0), or(usable, 1));
  }

  /** A price times a count; blank without a price. */
  Formula fee(FieldSpec rate, Formula count, Object days) {
    return calc(
        "IF({}=\"\";\"\";{})",
        or(rate, ""),
        call(HireFunctions.FEE, or(rate, 0), count, days, 0, or(currency, "EUR")));
  }

  /** The days that are charged for its hire. */
  Formula chargedDays() {
    return call(HireFunctions.DAYS, onHire, offHire, or(week, 3), or(least, 0));
  }

  /** All cells to fill. */
  FieldSpec[] inputs() {
    return Arrays.stream(fields())
        .flatMap(f -> f.fields().stream())
        .filter(FieldSpec::isInput)
        .toArray(FieldSpec[]::new);
  }

  FieldBlock[] fields() {
    return new FieldBlock[] {
      FieldBlock.of("Generator", set, reckoned, before, after, offFrom, offTo, spare, ordered),
      FieldBlock.of(
          "Fuel, hire and operator",
          currency,
          tank,
          usable,
          price,
          drop,
          operatorRate,
          operatorHours,
          dayRate,
          onHire,
          offHire,
          week,
          least),
      FieldBlock.of("Site conditions (optional)", altitude, air, engine)
    };
  }
}
