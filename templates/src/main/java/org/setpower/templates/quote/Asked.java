package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.FromPlan;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What a lighting plan asks for, against what stands on the quote. */
final class Asked {
  final Column item =
      Column.input("Item")
          .named("Plan_Item")
          .needed()
          .wide(70)
          .help("Pasted from For the quote of the plan.");
  final Column section = Column.input("Section").wide(24).help("Pasted with the item.");
  final Column quantity =
      Column.input("Quantity")
          .named("Plan_Quantity")
          .number(Format.COUNT, 0, 99_999)
          .needed()
          .wide(18)
          .help("Pasted with the item: pieces that the plan is short of.");
  final Column out = Column.input("Out").as(Format.DATE).wide(32).help("Pasted with the item.");
  final Column back = Column.input("Back").as(Format.DATE).wide(32).help("Pasted with the item.");
  private final Column source =
      Column.input("Plan and revision")
          .wide(50)
          .help("Which plan it comes from, and its revision: lights at the pans, revision 3.");
  private final Column quotedAs =
      Column.input("Quoted as").wide(40).help("The item of Quote, if it has another name there.");
  private final Column notFromUs =
      Column.input("Not from us")
          .oneOf("yes")
          .wide(18)
          .help("yes: the client has it or hires it elsewhere.");

  private final Column quoted = Column.result("On Quote").as(Format.COUNT).wide(18);
  private final Column missing = Column.result("Missing").as(Format.COUNT).wide(18);

  final Table table = Table.of(FromPlan.TITLE, 80);

  Asked(Quote quote) {
    quotedAs.oneOf(quote.item);
    Formula name = or(quotedAs, item);
    quoted.by(
        calc("SUMIFS({};{};{})+0*LEN({})", quote.quantity.all(), quote.item.all(), name, item));
    missing.by(
        calc(
            "IF({}=\"yes\";0;MAX(0;{}-{}))",
            or(notFromUs, ""),
            calc("SUMIFS({};{};{})", quantity.all(), item.all(), item),
            quoted));
    table
        .columns(item, section, quantity, out, back, source, quotedAs, notFromUs, quoted, missing)
        .checks(
            Check.wrong(
                calc(
                    "AND({}<>\"\";{}<>\"\";{}>{})",
                    or(out, ""),
                    or(back, ""),
                    or(out, 0),
                    or(back, 0)),
                say("Back {} is before out {}: swap them.", back, out)),
            Check.look(
                calc("AND({}>0;{}=0)", missing, quoted),
                Formula.of(
                    "Not on Quote: add it there, pick what it is quoted as, or put yes under Not"
                        + " from us.")),
            Check.look(calc("{}>0", missing), say("{} asked for, {} on Quote.", quantity, quoted)),
            Check.look(
                calc("{}=\"\"", or(source, "")),
                Formula.of("Note the plan and its revision, so that an old list is seen.")));
  }

  Tab tab() {
    return Tab.of(
            FromPlan.TITLE,
            "Only if the client sends a lighting plan: paste its rows of For the quote as values."
                + " What is not on Quote yet is told.")
        .with(table);
  }
}
