/**
 * The ready sheets: what is on them, and the builder that draws them.
 *
 * <p>A file is declared once, in a class that implements {@link
 * org.setpower.templates.example.TemplateDefinition} and stands in {@link
 * org.setpower.templates.TemplateRegistry}. It touches no office. How to declare one:
 *
 * <ol>
 *   <li>Make the cells: {@code ColumnSpec.input("Length").unit("m").number(CellFormat.ONE, 0,
 *       5000).required().help("…")} to fill, {@code ColumnSpec.result("Voltage drop",
 *       formula).unit("V")} worked out, {@code ColumnSpec.working("…")} hidden; {@code
 *       FieldSpec.input(…)} and {@code FieldSpec.result(…)} for single cells. A cell to fill has an
 *       input help; its error message comes by itself from its format, limits or list.
 *   <li>Write formulas with the cells themselves: {@code call(CableFunctions.DROP, SIZE, LENGTH,
 *       AMPS, "DC")}, {@code calc("{}-{}", MAY, USED)}, {@code or(LEVEL, 1)} for a cell that may be
 *       blank, {@code optional(CELL)} to let a function take its own default. A column stands for
 *       the cell of the row; {@code COLUMN.all()}, {@code above()}, {@code below()}, {@code
 *       rowNumber()} and {@code RESULT.lookup(KEY, value)} for more; {@code say("{} A is over {}
 *       A", …)} for words. A result is blank while a cell it needs is blank; refusals go to the
 *       status by themselves. Hidden columns hold a name, and the name the formula, unless it looks
 *       at rows above or below: what a check needs of those is best a column of its own.
 *   <li>Put the columns into a {@code TableSpec.of("Runs",
 *       100).columns(…).checks(ValidationRule.stop(when, words), ValidationRule.check(when,
 *       words))}: cells to fill first. Status and reason are added. The order of what is said:
 *       missing, wrong kind, refused, then the checks. A table without cells to fill may have
 *       checks too: its rows count while their first column says something. {@code
 *       alsoChecks(FIELD, …)} makes a table report single cells that are filled in wrongly.
 *   <li>Other blocks: {@code FieldBlock}, {@code ArrayResult} (an array result), {@code
 *       KeyFigures}, {@code BarChart}, {@code IssueList.on(…)} (all rows that are stop or check),
 *       {@code TextBlock.notes} and {@code cautions}, {@code MatrixBlock} (a native matrix on a
 *       working tab).
 *   <li>Put the blocks on tabs: {@code SheetSpec.of("Runs", "What it is for; what to fill
 *       first.").with(…)}; the first one {@code first()}, then {@code SheetSpec.result("…")}, or
 *       {@code onePage()} where it must not run on, last {@code SheetSpec.notes(…)}.
 *   <li>What several files have in common is declared once: {@code JobSheet} and its days, {@code
 *       EquipmentSheet}, {@code PackFeed} (what hangs on packs), {@code LeadsSheet}, {@code
 *       PlanHandover} (the rows that a plan hands to a budget).
 * </ol>
 *
 * <p>What stays out: formulas of physics, law or money. A sheet adds, looks up and compares; for
 * the rest it calls functions.
 */
package org.setpower.templates;
