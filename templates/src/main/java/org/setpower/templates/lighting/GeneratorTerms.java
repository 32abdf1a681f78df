package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import java.util.Arrays;
import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.shared.Job;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;

/** What is agreed about the generator: when it runs, what it costs. */
final class GeneratorTerms {
  private final PlanJob plan;

  final Field set;
  final Field reckoned;
  final Field before =
      Field.input("Starts before call")
          .unit("min")
          .number(Format.WHOLE, 0, 600)
          .is(45)
          .help("For lights to be up and tested at call.");
  final Field after =
      Field.input("Stops after wrap")
          .unit("min")
          .number(Format.WHOLE, 0, 600)
          .is(30)
          .help("For the last truck to be loaded by its light.");
  final Field offFrom =
      Field.input("Off from")
          .as(Format.TIME)
          .help("Stopped for quiet, each day that it runs then: from. Blank: never.");
  final Field offTo = Field.input("Off to").as(Format.TIME).help("Stopped for quiet: to.");
  final Field spare =
      Field.input("Spare on top")
          .share(0, 2)
          .is(0.2)
          .help("Room for what nobody planned: 20 % is usual.");
  final Field ordered =
      Field.input("Size decided")
          .unit("kVA")
          .number(Format.ONE, 1, 5000)
          .help("The size you order. Blank: the proposal below counts.");

  final Field currency = Job.currency();
  final Field tank;
  final Field usable =
      Field.input("Usable share of the tank")
          .share(0.1, 1)
          .is(0.9)
          .help("The last tenth stays in: dirt and air.");
  final Field price =
      Field.input("Fuel price, delivered")
          .number(Format.THREE, 0, 1000)
          .help("As the fuel company brings it. Blank: no fuel in the cost.");
  final Field drop =
      Field.input("Each delivery")
          .number(Format.MONEY, 0, 100_000)
          .help("What each visit of the fuel truck costs besides. Blank: nothing.");
  final Field operatorRate =
      Field.input("Operator, an hour")
          .number(Format.MONEY, 0, 10_000)
          .help("Blank: no operator in the cost.");
  final Field operatorHours =
      Field.input("Operator, hours a day")
          .unit("h")
          .number(Format.ONE, 0, 24)
          .help("Blank: from the start of the set to its stop.");
  final Field dayRate =
      Field.input("Day rate of the set")
          .number(Format.MONEY, 0, 1_000_000)
          .help("The rental house's list. Blank: no hire in the cost.");
  final Field onHire = Field.input("On hire").as(Format.DATE).help("The first day it is paid for.");
  final Field offHire =
      Field.input("Off hire").as(Format.DATE).help("The last day: call it off in writing.");
  final Field week =
      Field.input("Days charged a week")
          .number(Format.COUNT, 1, 7)
          .is(3)
          .help("The rental house's rule: 3 is common.");
  final Field least =
      Field.input("Least hire")
          .unit("days")
          .number(Format.COUNT, 0, 366)
          .help("Days that are charged however short the hire is. Blank: none.");

  final Field altitude;
  final Field air;
  final Field engine =
      Field.input("Engine")
          .oneOf("diesel turbo", "diesel", "petrol")
          .is("diesel turbo")
          .help("On its plate; nearly all towed sets are diesel turbo.");

  GeneratorTerms(PlanJob plan, Supply supply) {
    this.plan = plan;
    set =
        Field.input("Set")
            .oneOf(supply.name)
            .help("A row of Supply. Blank: the first generator there.");
    reckoned =
        Field.result(
                "Set that is reckoned",
                calc(
                    "IF({}<>\"\";{};INDEX({};MATCH(\"generator\";{};0)))",
                    or(set, ""),
                    or(set, ""),
                    supply.name.all(),
                    supply.kind.all()))
            .help("Blank while Supply has no generator.");
    tank =
        Field.input("Tank")
            .unit(plan.job.volumes())
            .number(Format.WHOLE, 1, 100_000)
            .is(120)
            .help("On the set's data sheet.");
    altitude =
        Field.input("Altitude")
            .unit(plan.job.lengths())
            .number(Format.WHOLE, -500, 20_000)
            .is(0)
            .help("Thin air takes power from an engine.");
    air =
        Field.input("Air at its intake")
            .unit(plan.job.degrees())
            .number(Format.WHOLE, -60, 150)
            .help("At its hottest: behind sound screens it breathes its own heat. Blank: 25 °C.");
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
  Formula fee(Field rate, Formula count, Object days) {
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
  Field[] inputs() {
    return Arrays.stream(fields())
        .flatMap(f -> f.fields().stream())
        .filter(Field::isInput)
        .toArray(Field[]::new);
  }

  Fields[] fields() {
    return new Fields[] {
      Fields.of("The set", set, reckoned, before, after, offFrom, offTo, spare, ordered),
      Fields.of(
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
      Fields.of("If you know better", altitude, air, engine)
    };
  }
}
