package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import java.util.ArrayList;
import java.util.List;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;

/** Cards to tape to the boxes: what feeds each, and what hangs on it. */
final class BoxCardsSheet {
  private static final int ACROSS = 2;
  private static final int DOWN = 2;
  private static final int LINES = 8;
  private static final int CARDS = ACROSS * DOWN;

  private final SupplySheet supply;
  private final LoadsSheet loads;
  private final FieldSpec begin =
      FieldSpec.input("Begin with box")
          .number(CellFormat.COUNT, 1, SupplySheet.ROOM)
          .is(1)
          .help("Four cards stand on a page. For the next four write 5, then 9.");

  BoxCardsSheet(SupplySheet supply, LoadsSheet loads) {
    this.supply = supply;
    this.loads = loads;
  }

  /** Where a box of this page stands on Supply. */
  private Formula row(int card) {
    return calc("MATCH({}+" + card + ";{};0)", or(begin, 1), supply.boxNumber.all());
  }

  private Formula of(int card, ColumnSpec column) {
    return calc("INDEX({};{})", column.all(), row(card));
  }

  private KeyFigure name(int card) {
    return KeyFigure.of(
        "",
        CellFormat.TEXT,
        calc("IFERROR(\"\u00a0\"&{};\"\")", of(card, supply.name)),
        calc(
            "\"\u00a0\u00a0fed by \"&{}&IF({}=\"\";\"\";\", \"&{})"
                + "&\". Isolate before changing connections.\"",
            of(card, supply.fedFrom),
            of(card, supply.place),
            of(card, supply.place)));
  }

  private KeyFigure breaker(int card) {
    return KeyFigure.of(
        "",
        CellFormat.TEXT,
        calc("IFERROR({}&\" A\";\"\")", of(card, supply.breaker)),
        calc(
            "\"main breaker, \"&{}&\" \"&{}&\" V\"&IF({}=\"\";\"\";\", outlets \"&{}&\""
                + " A\")&IF({}=\"\";\"\";\", RCD \"&{}&\" mA\")",
            of(card, supply.system),
            of(card, supply.nominal),
            of(card, supply.outlet),
            of(card, supply.outlet),
            of(card, supply.rcd),
            of(card, supply.rcd)));
  }

  private ColumnSpec[] columns(int card, ColumnSpec number) {
    ColumnSpec circuit = ColumnSpec.result("Circuit").width(22);
    ColumnSpec what = ColumnSpec.result("What").width(66);
    ColumnSpec amps = ColumnSpec.result("Load").unit("A").format(CellFormat.ONE).width(22);
    ColumnSpec leg = ColumnSpec.result("Leg").width(22);
    Formula box = of(card, supply.name);
    Formula count = calc("COUNTIF({};{})", loads.cardBox.all(), box);
    Formula boxes = calc("COUNTIF({};{})", supply.fedFrom.all(), box);
    Formula load = calc("MATCH({}&\"|\"&{};{};0)", box, number, loads.cardKey.all());
    Formula child = calc("MATCH({}&\"|\"&({}-{});{};0)", box, number, count, supply.childKey.all());
    Formula isMore = calc("AND({}=" + LINES + ";{}+{}>" + LINES + ")", number, count, boxes);
    Formula isLoad = calc("{}<={}", number, count);
    circuit.formula(
        calc(
            "IF({};\"\";IF({};INDEX({};{})&\"\";IF({}>0;\"feed\";\"\")))",
            isMore,
            isLoad,
            loads.circuit.all(),
            load,
            child));
    what.formula(
        calc(
            "IF({};\"and \"&({}+{}-"
                + (LINES - 1)
                + ")&\" more: see Loads\";IF({};INDEX({};{});"
                + "INDEX({};{})))",
            isMore,
            count,
            boxes,
            isLoad,
            loads.cardWords.all(),
            load,
            supply.name.all(),
            child));
    amps.formula(
        calc(
            "IF({};\"\";IF({};INDEX({};{});INDEX({};{})))",
            isMore,
            isLoad,
            loads.amps.all(),
            load,
            supply.used.all(),
            child));
    leg.formula(
        calc(
            "IF({};\"\";IF({};INDEX({};{})&\"\";INDEX({};{})&\"\"))",
            isMore,
            isLoad,
            loads.legNow.all(),
            load,
            supply.legNow.all(),
            child));
    return new ColumnSpec[] {circuit, what, amps, leg};
  }

  private TableSpec lines(int firstCard) {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    List<ColumnSpec> all = new ArrayList<>();
    for (int card = firstCard; card < firstCard + ACROSS; card++) {
      all.addAll(List.of(columns(card, number)));
    }
    all.forEach(ColumnSpec::mayBeBlank);
    all.add(number);
    return TableSpec.of("", LINES).columns(all.toArray(new ColumnSpec[0]));
  }

  SheetSpec tab() {
    Formula boxes = calc("MAX({})", supply.boxNumber.all());
    SheetSpec tab =
        SheetSpec.of(
                "Box cards",
                "To print and tape to the boxes: what feeds each, and what hangs on which circuit."
                    + " For one day choose it at Day shown on Job.")
            .grid(24, 11)
            .with(
                FieldBlock.of("", begin),
                TextBlock.notes(
                    "",
                    calc(
                        "N({})&\" boxes on Supply; this page holds \"&"
                            + CARDS
                            + "&\" cards from box \"&{}&\" on.\"",
                        boxes,
                        or(begin, 1))));
    for (int card = 0; card < CARDS; card += ACROSS) {
      KeyFigures heads =
          KeyFigures.of(
              "", 2 * ACROSS, name(card), breaker(card), name(card + 1), breaker(card + 1));
      TableSpec lines = lines(card);
      tab.with(heads, lines).framed(ACROSS, heads, lines);
      if (card == 0) {
        tab.printsFrom(heads);
      }
    }
    return tab;
  }
}
