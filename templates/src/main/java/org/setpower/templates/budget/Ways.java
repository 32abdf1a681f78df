package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.GensetFunctions;
import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** Up to four ways to power the same days, beside each other; own or hire. */
final class Ways {
  static final int ROOM = 4;

  final Column way =
      Column.input("Way").needed().wide(45).help("Packs, generator, house supply, or a mix.");
  final Column fromMix =
      Column.input("From Mix")
          .oneOf("yes")
          .wide(18)
          .help("yes: hire a day and mass are those of the mix that Mix has found.");
  final Column hireDay;
  final Column days =
      Column.input("Days charged").unit("days").number(Format.ONE, 0, 3660).wide(20);
  final Column discount = Column.input("Discount").share().wide(18);
  final Column litres = number("Fuel", "litres", "Lighting plan, Result.");
  final Column energy = number("Energy", "kWh", "From the grid, with the loss of the chargers.");
  final Column calledIn;
  final Column kilometres = number("Way by truck", "km", "There and back.");
  final Column crew = number("Crew hours", "h", "Laying, swapping, charging.");
  final Column operator = number("Operator hours", "h", "With the generator.");
  final Column mass;
  final Column fails =
      Column.input("What can fail").wide(62).help("What stops the day, and what then.");

  final Column massOfAll;
  final Column hireCost;
  final Column fuelCost;
  final Column energyCost;
  final Column wayCost;
  final Column crewCost;
  final Column total;
  final Column co2;
  final Table table = Table.of("Options", ROOM);
  final Table owning;

  Ways(Terms terms, Mix mix) {
    hireDay = terms.moneyInput("Hire a day").help("Of all its pieces, before discount.");
    calledIn = terms.moneyInput("Connection and calls").help("Tie-in, connection, fuel drops.");
    mass =
        Column.input("Mass")
            .unit(terms.job.masses())
            .number(Format.ONE, 0, 1_000_000)
            .wide(18)
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
        Column.result(
                "CO2",
                calc(
                    "IF(LEN({})=0;0;{})+IF({}=0;0;{})",
                    way,
                    call(GensetFunctions.CO2, or(litres, 0), terms.fuel),
                    or(energy, 0),
                    call(GensetFunctions.GRIDCO2, or(energy, 0), or(terms.grid, "?"))))
            .unit("kg")
            .as(Format.ONE)
            .failing("CO2: fill in Grid of on Job, a country that the handbook lists.");
    massOfAll =
        Column.result(
                "Mass of all",
                calc(
                    "IF({}=\"yes\";{};{})+0*LEN({})",
                    or(fromMix, ""),
                    or(mix.allMass, calc("NA()")),
                    or(mass, 0),
                    way))
            .unit(terms.job.masses())
            .as(Format.ONE)
            .wide(18);
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
            Check.wrong(
                calc(
                    "AND({}=\"yes\";OR({}<>\"\";{}<>\"\"))",
                    or(fromMix, ""),
                    or(hireDay, ""),
                    or(mass, "")),
                Formula.of("From Mix: leave hire a day and mass blank, or take the yes out.")),
            Check.wrong(
                calc("AND({}=\"yes\";{}=\"\")", or(fromMix, ""), or(mix.hireDay, "")),
                Formula.of("Mix has found none yet: see there.")),
            terms.unpriced(litres, terms.fuelPrice),
            terms.unpriced(energy, terms.energyPrice),
            terms.unpriced(kilometres, terms.kilometrePrice),
            terms.unpriced(crew, terms.crewPrice),
            terms.unpriced(operator, terms.operatorPrice),
            Check.look(
                calc("AND({}<>\"\";{}=\"\")", way, or(fails, "")),
                Formula.of("Say what can fail: every way has something.")));
    owning = owning(terms);
  }

  private static Column number(String heading, String unit, String help) {
    return Column.input(heading).unit(unit).number(Format.ONE, 0, 1_000_000).wide(20).help(help);
  }

  private Column cost(Terms terms, String heading, Formula amount) {
    return terms.money(heading, calc("{}+0*LEN({})", amount, way));
  }

  private static Table owning(Terms terms) {
    Column item = Column.input("Item").needed().wide(45).help("What could be bought.");
    Column purchase = terms.moneyInput("Purchase").needed().help("Price when new.");
    Column resale = terms.moneyInput("Resale").needed().help("What it still brings afterwards.");
    Column rate = terms.moneyInput("Day rate").needed().help("What its hire costs a day.");
    Column upkeep = terms.moneyInput("Upkeep a day").help("Tests, storage, repair. Blank: none.");
    Column energy =
        Column.input("Energy")
            .unit("Wh")
            .number(Format.WHOLE, 0.1, 10_000_000)
            .wide(20)
            .help("Packs: the Wh on the label.");
    Column cycles =
        Column.input("Cycles")
            .number(Format.COUNT, 1, 100_000)
            .wide(20)
            .help("Packs: full cycles it lasts, from the maker.");
    return Table.of("Own or hire", 12)
        .columns(
            item,
            purchase,
            resale,
            rate,
            upkeep,
            energy,
            cycles,
            Column.result(
                    "Owning is cheaper after",
                    call(HireFunctions.BREAKEVEN, purchase, resale, rate, or(upkeep, 0)))
                .unit("days")
                .as(Format.WHOLE)
                .wide(24),
            terms
                .money("A delivered kWh", call(HireFunctions.PERKWH, purchase, energy, cycles))
                .mayBeBlank())
        .checks(
            Check.wrong(calc("{}>{}", resale, purchase), Formula.of("Resale is above purchase.")));
  }

  Tab tab() {
    return Tab.of(
            "Options", "Up to four ways to power the same days, one a row; prices come from Job.")
        .with(table);
  }

  Tab owningTab() {
    return Tab.of(
            "Own or hire",
            "What could be bought, and after how many days owning is cheaper than hiring.")
        .with(owning);
  }
}
