package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.PlanFunctions;
import org.setpower.templates.spec.Answers;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** Which packs together would be the cheapest for the same days. */
final class Mix {
  private static final int PACKS = 8;
  private static final int REASON = 28;

  private final Column part =
      Column.input("Part of the day").needed().wide(60).help("Morning, night, under way.");
  private final Column hours =
      Column.input("Lasts")
          .unit("h")
          .number(Format.TWO, 0.01, 24)
          .needed()
          .wide(46)
          .help("Hours of this part.");
  private final Column needed =
      Column.input("Takes")
          .unit("Wh")
          .number(Format.WHOLE, 0, 10_000_000)
          .needed()
          .wide(24)
          .help("What all devices take in it: lighting plan or battery day.");
  final Table needs = Table.of("What the packs must give", 6).columns(part, hours, needed).checks();

  final Field mostMass;
  final Field people =
      Field.input("Travellers")
          .number(Format.COUNT, 1, 1000)
          .help("Who carry them in the cabin. Blank: nobody flies.");

  private final Column pack =
      Column.input("Pack").needed().wide(60).help("One row for each size that can be hired.");
  private final Column energy =
      Column.input("Energy")
          .unit("Wh")
          .number(Format.WHOLE, 0.1, 1_000_000)
          .needed()
          .wide(46)
          .help("As it is today and in the cold, not new and warm.");
  private final Column watts =
      Column.input("At most")
          .unit("W")
          .number(Format.WHOLE, 0.1, 1_000_000)
          .needed()
          .wide(24)
          .help("Amps it may give times its volts.");
  private final Column mass;
  private final Column price;
  private final Column limit =
      Column.input("In the cabin")
          .unit("a person")
          .number(Format.COUNT, 0, 1000)
          .wide(24)
          .help("How many one traveller may carry: flight packing list. Blank: no limit.");

  private final Column pieces = Column.result("Pieces").as(Format.COUNT).wide(20);
  private final Column hirePart;
  private final Column massPart;
  final Table packs = Table.of("Packs to choose from", PACKS);

  private final Column option = Column.result("Row").as(Format.COUNT).wide(60);
  private final Column found = Column.result("Pieces found").as(Format.COUNT).wide(46);
  private final Answers mix;

  final Field hireDay;
  final Field allMass;
  private final Field allPieces;

  Mix(Terms terms) {
    mostMass =
        Field.input("Most mass")
            .unit(terms.job.masses())
            .number(Format.ONE, 0.1, 1_000_000)
            .help("What all packs together may weigh. Blank: no limit.");
    mass =
        Column.input("Mass")
            .unit(terms.job.masses())
            .number(Format.TWO, 0, 10_000)
            .needed()
            .wide(20)
            .help("Of one.");
    price = terms.moneyInput("Hire a day").needed().help("Of one, before discount.");
    Column wh = feeds("Wh", energy);
    Column w = feeds("W", watts);
    Column kg = feeds("kg", terms.job.kilograms(mass));
    Column cost = feeds("price", price);
    Column cabin = feeds("cabin", optional(limit));
    Column length = feeds("hours", hours);
    Column takes = feeds("Wh needed", needed);
    needs.columns(length, takes);
    needs.reasonWide(REASON);

    mix =
        Answers.of(
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
    Column row = Column.working("Row here");
    row.by(row.rowNumber());
    pieces.by(calc("{}+0*LEN({})", found.where(option, row), pack)).mayBeBlank();
    hirePart = terms.money("Hire of them", terms.fee(price, pieces)).mayBeBlank();
    massPart =
        Column.result("Mass of them", calc("{}*{}", mass, pieces))
            .unit(terms.job.masses())
            .as(Format.ONE)
            .mayBeBlank()
            .wide(20);
    packs
        .columns(
            pack, energy, watts, mass, price, limit, pieces, hirePart, massPart, wh, w, kg, cost,
            cabin, row)
        .checks(
            Check.wrong(
                calc("COUNTIF({};{})>1", pack.all(), pack),
                say("{} stands here twice: one row for each size.", pack)))
        .reasonWide(40);
    hireDay =
        Field.result("Hire a day", terms.rounded(sum(hirePart)))
            .unit(terms.currency)
            .as(Format.MONEY);
    allMass = Field.result("Mass", sum(massPart)).unit(terms.job.masses()).as(Format.ONE);
    allPieces = Field.result("Pieces", sum(pieces)).as(Format.COUNT);
  }

  private static Column feeds(String heading, Formula value) {
    return Column.working(heading, value);
  }

  private static Formula sum(Column column) {
    return calc("IF(COUNT({})=0;NA();SUM({}))", column.all(), column.all());
  }

  Tab tab() {
    return Tab.of(
            "Mix",
            "Only if packs are a way: which of them together are the cheapest. Fill in what they"
                + " must give, then the packs; Options takes the mix.")
        .with(
            Fields.of("Limits", mostMass, people),
            needs,
            packs,
            Fields.of("The mix", allPieces, hireDay, allMass),
            mix);
  }
}
