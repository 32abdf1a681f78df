package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.PlanHandover;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What a lighting plan asks for, against what stands on the quote. */
final class RequestedItemsSheet {
  final ColumnSpec item =
      ColumnSpec.input("Item")
          .rangeName("Plan_Item")
          .required()
          .width(70)
          .help("Pasted from For the quote of the plan.");
  final ColumnSpec section = ColumnSpec.input("Section").width(24).help("Pasted with the item.");
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .rangeName("Plan_Quantity")
          .number(CellFormat.COUNT, 0, 99_999)
          .required()
          .width(18)
          .help("Pasted with the item: pieces that the plan is short of.");
  final ColumnSpec out =
      ColumnSpec.input("Out").format(CellFormat.DATE).width(32).help("Pasted with the item.");
  final ColumnSpec back =
      ColumnSpec.input("Back").format(CellFormat.DATE).width(32).help("Pasted with the item.");
  private final ColumnSpec source =
      ColumnSpec.input("Plan and revision")
          .width(50)
          .help("Which plan it comes from, and its revision: lights at the pans, revision 3.");
  private final ColumnSpec quotedAs =
      ColumnSpec.input("Quoted as")
          .width(40)
          .help("The item of Quote, if it has another name there.");
  private final ColumnSpec notFromUs =
      ColumnSpec.input("Not from us")
          .options("yes")
          .width(18)
          .help("yes: the client has it or hires it elsewhere.");

  private final ColumnSpec quoted =
      ColumnSpec.result("On Quote").format(CellFormat.COUNT).width(18);
  private final ColumnSpec missing =
      ColumnSpec.result("Missing").format(CellFormat.COUNT).width(18);

  final TableSpec table = TableSpec.of(PlanHandover.TITLE, 80);

  RequestedItemsSheet(QuoteLinesSheet quote) {
    quotedAs.options(quote.item);
    Formula name = or(quotedAs, item);
    quoted.formula(
        calc("SUMIFS({};{};{})+0*LEN({})", quote.quantity.all(), quote.item.all(), name, item));
    missing.formula(
        calc(
            "IF({}=\"yes\";0;MAX(0;{}-{}))",
            or(notFromUs, ""),
            calc("SUMIFS({};{};{})", quantity.all(), item.all(), item),
            quoted));
    table
        .columns(item, section, quantity, out, back, source, quotedAs, notFromUs, quoted, missing)
        .checks(
            ValidationRule.wrong(
                calc(
                    "AND({}<>\"\";{}<>\"\";{}>{})",
                    or(out, ""),
                    or(back, ""),
                    or(out, 0),
                    or(back, 0)),
                say("Back {} is before out {}: swap them.", back, out)),
            ValidationRule.check(
                calc("AND({}>0;{}=0)", missing, quoted),
                Formula.of(
                    "Not on Quote: add it there, pick what it is quoted as, or put yes under Not"
                        + " from us.")),
            ValidationRule.check(
                calc("{}>0", missing), say("{} requested, {} quoted.", quantity, quoted)),
            ValidationRule.check(
                calc("{}=\"\"", or(source, "")),
                Formula.of("Note the plan and its revision, so that an old list is seen.")));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            PlanHandover.TITLE,
            "Only if the client sends a lighting plan: paste its rows of For the quote"
                + " as values. What is not on Quote yet is listed.")
        .with(table);
  }
}
