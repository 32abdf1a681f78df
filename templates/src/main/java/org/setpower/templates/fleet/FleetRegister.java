package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableExcerpt;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;

/** Template 5: the fleet register of a rental house. */
public final class FleetRegister implements TemplateDefinition {
  private static final int FINDINGS = 19;
  private static final int KINDS = 9;

  private final RegisterSettings house = new RegisterSettings();
  private final FleetPacksSheet packs = new FleetPacksSheet(house);
  private final PackTestsSheet tests = new PackTestsSheet(house, packs);
  private final PackKindsSheet kinds = new PackKindsSheet();
  private final PackTasksSheet list = new PackTasksSheet(house);
  private final RegisterPrintouts papers = new RegisterPrintouts(packs);
  private final WorkbookSpec template;
  private final IssueList findings;

  /** Declares the register. */
  public FleetRegister() {
    packs.declare(tests, kinds, list);
    kinds.declare(packs);
    list.declare(packs, tests);
    template =
        WorkbookSpec.of("fleet-register", "Fleet register", 1)
            .stamped(house.job.stamp())
            .with(house.tab(), packs.tab(), tests.tab(), kinds.tab(), list.tab());
    findings = IssueList.on(FINDINGS, template.tabs());
    template.with(
        result(),
        papers.shelfList(),
        papers.slip(),
        notes(),
        SheetSpec.working("Working").with(packs.odd));
  }

  @Override
  public WorkbookSpec template() {
    return template;
  }

  private SheetSpec result() {
    TableExcerpt stock =
        TableExcerpt.of(kinds.table)
            .column(kinds.kind, 30)
            .column(kinds.count, 15)
            .column(kinds.out, 15)
            .column(kinds.fit, 15)
            .column(kinds.service, 15)
            .column(kinds.average, 15)
            .column(kinds.lowest, 15)
            .column(kinds.range, 15)
            .column(kinds.wanted, 15)
            .column(kinds.buy, 15)
            .column(kinds.table.status(), 15);
    TableSpec byKind = stock.rows("By kind", KINDS);
    return SheetSpec.result(
            "To print and to talk about; nothing to fill. A good figure is no proof that a pack is"
                + " sound.")
        .with(
            KeyFigures.of("", 3, headlines()),
            BarChart.bars(
                "Health by kind",
                10,
                "Health",
                stock.shown(kinds.kind),
                stock.shown(kinds.average),
                stock.shown(kinds.lowest)),
            cautions(),
            byKind)
        .newPage(findings.list());
  }

  private KeyFigure[] headlines() {
    Formula health = packs.health.all();
    return new KeyFigure[] {
      findings.stops(),
      findings.checks(),
      KeyFigure.of(
          "Packs (pieces)",
          CellFormat.COUNT,
          filled(packs.serial),
          calc(
              "SUM({})&\" of them out\"&IF({}>"
                  + KINDS
                  + ";\"; first "
                  + KINDS
                  + " kinds below\";\"\")",
              kinds.out.all(),
              filled(kinds.kind))),
      KeyFigure.of(
          "Fit to go out (pieces)",
          CellFormat.COUNT,
          calc("SUM({})", packs.fit.all()),
          "Kept or watched; the rest stays in."),
      KeyFigure.of(
          "Set aside or retire (pieces)",
          CellFormat.COUNT,
          calc(
              "COUNTIF({};\"set aside\")+COUNTIF({};\"retire\")",
              packs.doNow.all(),
              packs.doNow.all()),
          calc("COUNTIF({};\"service\")&\" more in service\"", packs.doNow.all())),
      KeyFigure.of(
          "Average health (%)",
          CellFormat.SHARE,
          calc("AVERAGE({})", health),
          calc(
              "\"lowest \"&ROUND(100*MIN({});1)&\" %: \"&INDEX({};MATCH(MIN({});{};0))",
              health, packs.serial.all(), health, health)),
      KeyFigure.of(
          "Tests not compared (rows)",
          CellFormat.COUNT,
          calc("SUMPRODUCT(({}<>\"\")*({}<>\"fit\"))", tests.serial.all(), tests.compare.all()),
          calc("\"of \"&{}&\" tests\"", filled(tests.serial))),
      KeyFigure.of(
          "Tests due (packs)",
          CellFormat.COUNT,
          calc("SUM({})", packs.overdue.all()),
          "No test that counts, or too old."),
      KeyFigure.of(
          "To buy (pieces)",
          CellFormat.COUNT,
          calc("SUM({})", kinds.buy.all()),
          "Wanted, less fit and in service.")
    };
  }

  private static Formula filled(ColumnSpec column) {
    return calc("SUMPRODUCT(({}<>\"\")*1)", column.all());
  }

  private static TextBlock cautions() {
    return TextBlock.cautions(
        TextBlock.HOT,
        "Dropped, wet or swollen, and cold: quarantine it whatever its figures say, "
            + "outdoors or in a fireproof place, away from people and batteries. Do not "
            + "charge it. Do not fly it. Do not ship it as a sound battery.",
        "Do not rely on a good health figure: it is the result of one test, no proof "
            + "that a battery is sound.",
        "Cycles remaining: worst of six measured cells less 40 %. Other cells may"
            + " have fewer; retest every 50 cycles.");
  }

  private SheetSpec notes() {
    return SheetSpec.notes(
        TextBlock.notes(
            "How condition is assessed",
            "A test counts when it has a date, was made within the temperatures on Job, rested, at"
                + " no more than the test load. Of these the newest counts. None is deleted.",
            "Health is the Wh measured over the Wh on the label; a new pack may be over 100 %.",
            "Proposed, in this order: set aside (swollen, dropped, wet), retire (health below the"
                + " line), service (contacts, label, a drifting cell, no test that counts), watch"
                + " (near the line, or below its kind), else keep.",
            "A pack stands apart when its health lies far from the middle of its kind, measured"
                + " with the usual distance there; a kind needs five tested packs.",
            "Fade per 100 cycles: the average since new; the next hundred may cost more.",
            "LFP cells show their spread only when full or nearly empty.",
            "Cost per kWh to date: the price over the kWh delivered until today, if it"
                + " were retired now, without the electricity."),
        TextBlock.leftOut(
            "Why a pack ages, and what is safe to use: that is for eyes, hands and the maker.",
            "Self-discharge on the shelf, and charge lost in the cold."),
        TextBlock.sources(
            "Cycles left, packs that stand apart, cell spread, cost of a kWh: see FLEET and HIRE in"
                + " the handbook; each page names its source.",
            "The limits on Job are common practice of rental houses, not a standard."));
  }

  @Override
  public void fill(ExampleLoader filling) {
    filling
        .fields("fleet-job")
        .rows(kinds.table, "fleet-kinds")
        .rows(packs.table, "fleet-packs")
        .rows(tests.table, "fleet-tests")
        .rows(list.table, "fleet-todo");
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – fleet register";
  }
}
