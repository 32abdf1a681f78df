package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.GensetFunctions;
import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** Up to four ways to power the same days, beside each other; own or hire. */
final class PowerOptionsSheet {
  static final int ROOM = 4;

  final ColumnSpec way =
      ColumnSpec.input("Way")
          .required()
          .width(45)
          .help("Packs, generator, house supply, or a mix.");
  final ColumnSpec fromMix =
      ColumnSpec.input("From Mix")
          .options("yes")
          .width(18)
          .help("yes: hire a day and mass are those of the mix that Mix has found.");
  final ColumnSpec hireDay;
  final ColumnSpec days =
      ColumnSpec.input("Days charged").unit("days").number(CellFormat.ONE, 0, 3660).width(20);
  final ColumnSpec discount = ColumnSpec.input("Discount").share().width(18);
  final ColumnSpec litres = number("Fuel", "litres", "Lighting plan, Result.");
  final ColumnSpec energy =
      number("Energy", "kWh", "From the grid, with the loss of the chargers.");
  final ColumnSpec calledIn;
  final ColumnSpec kilometres = number("Way by truck", "km", "There and back.");
  final ColumnSpec crew = number("Crew hours", "h", "Laying, swapping, charging.");
  final ColumnSpec operator = number("Operator hours", "h", "With the generator.");
  final ColumnSpec mass;
  final ColumnSpec fails =
      ColumnSpec.input("What can fail").width(62).help("What stops the day, and what then.");

  final ColumnSpec massOfAll;
  final ColumnSpec hireCost;
  final ColumnSpec fuelCost;
  final ColumnSpec energyCost;
  final ColumnSpec wayCost;
  final ColumnSpec crewCost;
  final ColumnSpec total;
  final ColumnSpec co2;
  final TableSpec table = TableSpec.of("Options", ROOM);
  final TableSpec owning;

  PowerOptionsSheet(BudgetTerms terms, PackMixSheet mix) {
    hireDay = terms.moneyInput("Hire a day").help("Of all its pieces, before discount.");
    calledIn = terms.moneyInput("Connection and calls").help("Tie-in, connection, fuel drops.");
    mass =
        ColumnSpec.input("Mass")
            .unit(terms.job.masses())
            .number(CellFormat.ONE, 0, 1_000_000)
            .width(18)
            .help("What has to be carried or towed.");
    days.help("By the rule of the house; blank: 1.");
    discount.help("Off the hire. 10% or 0.1. Blank: none.");

    hireCost =
        terms.money(
            "Hire",
            calc(
                "{}+0*LEN({})",
                call(
                    HireFunctions.FEE,
                    calc(
                        "IF({}=\"yes\";{};{})",
                        or(fromMix, ""),
                        or(mix.hireDay, calc("NA()")),
                        or(hireDay, 0)),
                    1,
                    or(days, 1),
                    optional(discount),
                    terms.currency),
                way));
    fuelCost = cost(terms, "Fuel cost", terms.fee(terms.fuelPrice, litres));
    energyCost = cost(terms, "Energy cost", terms.fee(terms.energyPrice, energy));
    wayCost = cost(terms, "Transport", terms.fee(terms.kilometrePrice, kilometres));
    crewCost =
        cost(
            terms,
            "Crew and operator",
            calc(
                "{}+{}",
                terms.fee(terms.crewPrice, crew),
                terms.fee(terms.operatorPrice, operator)));
    total =
        terms.money(
            "Total",
            terms.rounded(
                calc(
                    "{}+{}+{}+{}+{}+{}",
                    hireCost,
                    fuelCost,
                    energyCost,
                    wayCost,
                    crewCost,
                    or(calledIn, 0))));
    co2 =
        ColumnSpec.result(
                "CO2",
                calc(
                    "IF(LEN({})=0;0;{})+IF({}=0;0;{})",
                    way,
                    call(GensetFunctions.CO2, or(litres, 0), terms.fuel),
                    or(energy, 0),
                    call(GensetFunctions.GRIDCO2, or(energy, 0), or(terms.grid, "?"))))
            .unit("kg")
            .format(CellFormat.ONE)
            .errorMessage("CO2: fill in Grid of on Job, a country that the handbook lists.");
    massOfAll =
        ColumnSpec.result(
                "Mass of all",
                calc(
                    "IF({}=\"yes\";{};{})+0*LEN({})",
                    or(fromMix, ""),
                    or(mix.allMass, calc("NA()")),
                    or(mass, 0),
                    way))
            .unit(terms.job.masses())
            .format(CellFormat.ONE)
            .width(18);
    table
        .columns(
            way,
            fromMix,
            hireDay,
            days,
            discount,
            litres,
            energy,
            calledIn,
            kilometres,
            crew,
            operator,
            mass,
            fails,
            hireCost,
            fuelCost,
            energyCost,
            wayCost,
            crewCost,
            total,
            massOfAll,
            co2)
        .checks(
            ValidationRule.wrong(
                calc(
                    "AND({}=\"yes\";OR({}<>\"\";{}<>\"\"))",
                    or(fromMix, ""),
                    or(hireDay, ""),
                    or(mass, "")),
                Formula.of("From Mix: leave hire a day and mass blank, or take the yes out.")),
            ValidationRule.wrong(
                calc("AND({}=\"yes\";{}=\"\")", or(fromMix, ""), or(mix.hireDay, "")),
                Formula.of("Mix has found none yet: see there.")),
            terms.unpriced(litres, terms.fuelPrice),
            terms.unpriced(energy, terms.energyPrice),
            terms.unpriced(kilometres, terms.kilometrePrice),
            terms.unpriced(crew, terms.crewPrice),
            terms.unpriced(operator, terms.operatorPrice),
            ValidationRule.check(
                calc("AND({}<>\"\";{}=\"\")", way, or(fails, "")),
                Formula.of("Say what can fail: every way has something.")));
    owning = owning(terms);
  }

  private static ColumnSpec number(String heading, String unit, String help) {
    return ColumnSpec.input(heading)
        .unit(unit)
        .number(CellFormat.ONE, 0, 1_000_000)
        .width(20)
        .help(help);
  }

  private ColumnSpec cost(BudgetTerms terms, String heading, Formula amount) {
    return terms.money(heading, calc("{}+0*LEN({})", amount, way));
  }

  private static TableSpec owning(BudgetTerms terms) {
    ColumnSpec item = ColumnSpec.input("Item").required().width(45).help("What could be bought.");
    ColumnSpec purchase = terms.moneyInput("Purchase").required().help("Price when new.");
    ColumnSpec resale =
        terms.moneyInput("Resale").required().help("What it still brings afterwards.");
    ColumnSpec rate = terms.moneyInput("Day rate").required().help("What its hire costs a day.");
    ColumnSpec upkeep =
        terms.moneyInput("Maintenance per day").help("Tests, storage, repair. Blank: none.");
    ColumnSpec energy =
        ColumnSpec.input("Energy")
            .unit("Wh")
            .number(CellFormat.WHOLE, 0.1, 10_000_000)
            .width(20)
            .help("Packs: the Wh on the label.");
    ColumnSpec cycles =
        ColumnSpec.input("Cycles")
            .number(CellFormat.COUNT, 1, 100_000)
            .width(20)
            .help("Packs: full cycles it lasts, from the maker.");
    return TableSpec.of("Own or hire", 12)
        .columns(
            item,
            purchase,
            resale,
            rate,
            upkeep,
            energy,
            cycles,
            ColumnSpec.result(
                    "Break-even",
                    call(HireFunctions.BREAKEVEN, purchase, resale, rate, or(upkeep, 0)))
                .unit("days")
                .format(CellFormat.WHOLE)
                .width(24),
            terms
                .money("Cost per kWh", call(HireFunctions.PERKWH, purchase, energy, cycles))
                .mayBeBlank())
        .checks(
            ValidationRule.wrong(
                calc("{}>{}", resale, purchase), Formula.of("Resale is above purchase.")));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Options", "Up to four ways to power the same days, one a row; prices come from Job.")
        .with(table);
  }

  SheetSpec owningTab() {
    return SheetSpec.of(
            "Own or hire",
            "What could be bought, and after how many days owning is cheaper than hiring.")
        .with(owning);
  }
}
