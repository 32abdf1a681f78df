package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.PlanFunctions;
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** Which packs together would be the cheapest for the same days. */
final class PackMixSheet {
  private static final int PACKS = 8;
  private static final int REASON = 28;

  private final ColumnSpec part =
      ColumnSpec.input("Part of the day").required().width(60).help("Morning, night, under way.");
  private final ColumnSpec hours =
      ColumnSpec.input("Lasts")
          .unit("h")
          .number(CellFormat.TWO, 0.01, 24)
          .required()
          .width(46)
          .help("Hours of this part.");
  private final ColumnSpec needed =
      ColumnSpec.input("Takes")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0, 10_000_000)
          .required()
          .width(24)
          .help("What all devices take in it: lighting plan or battery day.");
  final TableSpec needs =
      TableSpec.of("What the packs must give", 6).columns(part, hours, needed).checks();

  final FieldSpec mostMass;
  final FieldSpec people =
      FieldSpec.input("Travellers")
          .number(CellFormat.COUNT, 1, 1000)
          .help("Who carry them in the cabin. Blank: nobody flies.");

  private final ColumnSpec pack =
      ColumnSpec.input("Pack")
          .required()
          .width(60)
          .help("One row for each size that can be hired.");
  private final ColumnSpec energy =
      ColumnSpec.input("Energy")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0.1, 1_000_000)
          .required()
          .width(46)
          .help("As it is today and in the cold, not new and warm.");
  private final ColumnSpec watts =
      ColumnSpec.input("At most")
          .unit("W")
          .number(CellFormat.WHOLE, 0.1, 1_000_000)
          .required()
          .width(24)
          .help("Amps it may give times its volts.");
  private final ColumnSpec mass;
  private final ColumnSpec price;
  private final ColumnSpec limit =
      ColumnSpec.input("In the cabin")
          .unit("a person")
          .number(CellFormat.COUNT, 0, 1000)
          .width(24)
          .help("How many one traveller may carry: flight packing list. Blank: no limit.");

  private final ColumnSpec pieces = ColumnSpec.result("Pieces").format(CellFormat.COUNT).width(20);
  private final ColumnSpec hirePart;
  private final ColumnSpec massPart;
  final TableSpec packs = TableSpec.of("Packs to choose from", PACKS);

  private final ColumnSpec option = ColumnSpec.result("Row").format(CellFormat.COUNT).width(60);
  private final ColumnSpec found =
      ColumnSpec.result("Pieces found").format(CellFormat.COUNT).width(46);
  private final ArrayResult mix;

  final FieldSpec hireDay;
  final FieldSpec allMass;
  private final FieldSpec allPieces;

  PackMixSheet(BudgetTerms terms) {
    mostMass =
        FieldSpec.input("Max. weight")
            .unit(terms.job.masses())
            .number(CellFormat.ONE, 0.1, 1_000_000)
            .help("What all packs together may weigh. Blank: no limit.");
    mass =
        ColumnSpec.input("Mass")
            .unit(terms.job.masses())
            .number(CellFormat.TWO, 0, 10_000)
            .required()
            .width(20)
            .help("Of one.");
    price = terms.moneyInput("Hire a day").required().help("Of one, before discount.");
    ColumnSpec wh = feeds("Wh", energy);
    ColumnSpec w = feeds("W", watts);
    ColumnSpec kg = feeds("kg", terms.job.kilograms(mass));
    ColumnSpec cost = feeds("price", price);
    ColumnSpec cabin = feeds("cabin", optional(limit));
    ColumnSpec length = feeds("hours", hours);
    ColumnSpec takes = feeds("Wh needed", needed);
    needs.columns(length, takes);
    needs.reasonWide(REASON);

    mix =
        ArrayResult.of(
            "The cheapest mix",
            PACKS,
            call(
                PlanFunctions.MIX,
                wh.block(cabin),
                length.block(takes),
                calc("IF({}=\"\";\"\";{})", or(mostMass, ""), terms.job.kilograms(mostMass)),
                optional(people)),
            option,
            found);
    ColumnSpec row = ColumnSpec.working("Row here");
    row.formula(row.rowNumber());
    pieces.formula(calc("{}+0*LEN({})", found.lookup(option, row), pack)).mayBeBlank();
    hirePart = terms.money("Hire of them", terms.fee(price, pieces)).mayBeBlank();
    massPart =
        ColumnSpec.result("Mass of them", calc("{}*{}", mass, pieces))
            .unit(terms.job.masses())
            .format(CellFormat.ONE)
            .mayBeBlank()
            .width(20);
    packs
        .columns(
            pack, energy, watts, mass, price, limit, pieces, hirePart, massPart, wh, w, kg, cost,
            cabin, row)
        .checks(
            ValidationRule.wrong(
                calc("COUNTIF({};{})>1", pack.all(), pack),
                say("Duplicate: {}. One row for each size.", pack)))
        .reasonWide(40);
    hireDay =
        FieldSpec.result("Hire a day", terms.rounded(sum(hirePart)))
            .unit(terms.currency)
            .format(CellFormat.MONEY);
    allMass =
        FieldSpec.result("Mass", sum(massPart)).unit(terms.job.masses()).format(CellFormat.ONE);
    allPieces = FieldSpec.result("Pieces", sum(pieces)).format(CellFormat.COUNT);
  }

  private static ColumnSpec feeds(String heading, Formula value) {
    return ColumnSpec.working(heading, value);
  }

  private static Formula sum(ColumnSpec column) {
    return calc("IF(COUNT({})=0;NA();SUM({}))", column.all(), column.all());
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Mix",
            "Only if packs are a way: which of them together are the cheapest. Fill in what they"
                + " must give, then the packs; Options takes the mix.")
        .with(
            FieldBlock.of("Limits", mostMass, people),
            needs,
            packs,
            FieldBlock.of("The mix", allPieces, hireDay, allMass),
            mix);
  }
}
