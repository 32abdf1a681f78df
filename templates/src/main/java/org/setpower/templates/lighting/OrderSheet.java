package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.ValidationRule;

/** What the plan needs, what we have of it, and what is to be ordered. */
final class OrderSheet {
  /** Lengths that the pieces of one run are read to. */
  private static final int PIECES = 5;

  /** Kinds of things that the list has room for. */
  private static final int KINDS = 80;

  /** Rows of what is needed: where the set stands, after which cable and adaptors follow. */
  private int setAt;

  private int cableFrom;
  private int adaptorsFrom;

  private final LightingJobSheet plan;
  private final EquipmentSheet kit;
  private final SupplySheet supply;
  private final LoadsSheet loads;
  private final CableRunsSheet runs;
  private final LightingPacksSheet packs;
  private final GeneratorSheet generator;

  final FieldSpec spareCable =
      FieldSpec.input("Spares of cable and adaptors")
          .share(0, 2)
          .is(0.1)
          .help("On top of what the plan needs, rounded to whole pieces.");
  final FieldSpec spareLights =
      FieldSpec.input("Spares of lights and packs")
          .share(0, 2)
          .is(0)
          .help("The same for what stands on Kit. 10 % of three lamps is one lamp.");

  final ColumnSpec ours;
  final ColumnSpec oursCount =
      ColumnSpec.input("We have")
          .number(CellFormat.COUNT, 0, 99_999)
          .required()
          .width(46)
          .help("Pieces on the truck and in the store.");
  final TableSpec stock = TableSpec.of("What we have of cable, boxes and adaptors", 20);

  final ColumnSpec section = ColumnSpec.result("Section").width(24);
  final ColumnSpec item = ColumnSpec.result("Item").width(60);
  final ColumnSpec needed = ColumnSpec.result("Needed").format(CellFormat.COUNT).width(16);
  final ColumnSpec spares = ColumnSpec.result("Incl. spares").format(CellFormat.COUNT).width(16);
  final ColumnSpec have =
      ColumnSpec.result("We have").format(CellFormat.COUNT).width(16).mayBeBlank();
  final ColumnSpec missing = ColumnSpec.result("Short").format(CellFormat.COUNT).width(16);
  final ColumnSpec mass = ColumnSpec.result("Mass").format(CellFormat.ONE).width(16).mayBeBlank();
  private final ColumnSpec row = ColumnSpec.working("Row").format(CellFormat.COUNT);
  final ColumnSpec shortNumber = ColumnSpec.working("No. among the short").format(CellFormat.COUNT);
  final TableSpec table = TableSpec.of("To order", KINDS).excludeFromIssues();

  private final ColumnSpec number = plain("No.");
  private final ColumnSpec candidate = ColumnSpec.working("Item");
  private final ColumnSpec kind = ColumnSpec.working("Section");
  private final ColumnSpec count = ColumnSpec.working("Pieces").format(CellFormat.COUNT);
  private final ColumnSpec found = ColumnSpec.working("No. among all").format(CellFormat.COUNT);
  private final TableSpec candidates;

  final ColumnSpec quoteSection = ColumnSpec.result("Section").width(30);
  final ColumnSpec quoteItem = ColumnSpec.result("Item").rangeName("Plan_Item").width(90);
  final ColumnSpec quantity =
      ColumnSpec.result("Quantity").rangeName("Plan_Quantity").format(CellFormat.COUNT).width(20);
  final ColumnSpec out = ColumnSpec.result("Out").format(CellFormat.DATE).width(32).mayBeBlank();
  final ColumnSpec back = ColumnSpec.result("Back").format(CellFormat.DATE).width(32).mayBeBlank();
  private final ColumnSpec quoteRow = ColumnSpec.working("Row").format(CellFormat.COUNT);
  final TableSpec forQuote = TableSpec.of("", KINDS);

  OrderSheet(
      LightingJobSheet plan,
      EquipmentSheet kit,
      SupplySheet supply,
      LoadsSheet loads,
      CableRunsSheet runs,
      LightingPacksSheet packs,
      GeneratorSheet generator) {
    this.plan = plan;
    this.kit = kit;
    this.supply = supply;
    this.loads = loads;
    this.runs = runs;
    this.packs = packs;
    this.generator = generator;
    ours =
        ColumnSpec.input("Item we have")
            .options(item)
            .orOther()
            .required()
            .width(60)
            .help("The words of the list below. What stands on Kit is counted there.");
    List<Source> sources = sources();
    int room = sources.stream().mapToInt(Source::rows).sum();
    candidates = TableSpec.of("What is needed, row by row", room);
    candidates(sources);
    order();
    quote();
  }

  private static ColumnSpec plain(String heading) {
    return ColumnSpec.working(heading).format(CellFormat.COUNT).inBlankRowsToo();
  }

  /**
   * Where needs come from: so many rows, in the order of the list.
   *
   * @param rows how many
   * @param section of the quote
   * @param words what the row needs; {} stands for its number
   * @param pieces how many
   */
  private record Source(int rows, Formula section, Formula words, Formula pieces) {}

  private List<Source> sources() {
    List<Source> all = new ArrayList<>();
    int before = 0;
    Formula at = at(before);
    Formula device = calc("INDEX({};{})", kit.item.all(), at);
    Formula used =
        calc(
            "MAX(MAXIFS({};{};{});MAXIFS({};{};{}))",
            loads.atOnce.all(),
            loads.item.all(),
            device,
            packs.lights.all(),
            packs.item.all(),
            device);
    all.add(
        new Source(
            kit.devices.room(),
            calc(
                "IF(INDEX({};{})=\"\";\"lights\";INDEX({};{}))",
                kit.department.all(),
                at,
                kit.department.all(),
                at),
            device,
            used));
    before += kit.devices.room();
    Formula pack = calc("INDEX({};{})", kit.pack.all(), at(before));
    all.add(
        new Source(
            kit.packs.room(),
            Formula.of("packs"),
            pack,
            calc("MAXIFS({};{};{})", packs.sameDay.all(), packs.feed.pack.all(), pack)));
    before += kit.packs.room();
    setAt = before + 1;
    all.add(
        new Source(
            1,
            Formula.of("power"),
            calc("\"generator, \"&INDEX({};1)&\" kVA\"", generator.counted.all()),
            calc("N(ISNUMBER(INDEX({};1)))", generator.counted.all())));
    before += 1;
    all.add(
        new Source(
            SupplySheet.ROOM,
            Formula.of("power"),
            calc("INDEX({};{})", supply.boxWords.all(), at(before)),
            Formula.of(1)));
    before += SupplySheet.ROOM;
    cableFrom = before;
    Formula run = calc("(INT(({}-1)/" + PIECES + ")+1)", at(before));
    Formula piece = calc("(MOD({}-1;" + PIECES + ")+1)", at(before));
    Formula written = calc("INDEX({};{})", runs.pieces.all(), run);
    Formula length =
        calc(
            "IF({}=\"\";IF({}=1;INDEX({};{})&\"\";\"\");TRIM(MID(SUBSTITUTE({};\"+\";REPT(\""
                + " \";50));({}-1)*50+1;50)))",
            written,
            piece,
            runs.length.all(),
            run,
            written,
            piece);
    all.add(
        new Source(
            CableRunsSheet.ROOM * PIECES,
            Formula.of("cable"),
            calc(
                "IF({}=\"\";\"\";\"cable, \"&INDEX({};{})&\""
                    + " \"&IF(INDEX({};{})=\"\";\"flexible\";INDEX({};{}))&\", \"&{}&\" \"&{})",
                length,
                runs.size.all(),
                run,
                runs.kind.all(),
                run,
                runs.kind.all(),
                run,
                length,
                plan.job.lengths()),
            calc("MAX(1;N(INDEX({};{})))", runs.parallel.all(), run)));
    before += CableRunsSheet.ROOM * PIECES;
    adaptorsFrom = before;
    all.add(
        new Source(
            LoadsSheet.ROOM,
            Formula.of("cable"),
            calc("INDEX({};{})", loads.adaptor.all(), at(before)),
            calc("INDEX({};{})", loads.adaptors.all(), at(before))));
    before += LoadsSheet.ROOM;
    all.add(
        new Source(
            SupplySheet.ROOM,
            Formula.of("cable"),
            calc("INDEX({};{})", supply.adaptor.all(), at(before)),
            Formula.of(1)));
    return all;
  }

  private Formula at(int before) {
    return calc("({}-" + before + ")", number);
  }

  private void candidates(List<Source> sources) {
    number.formula(number.rowNumber());
    candidate.formula(cascade(sources, s -> calc("{}&\"\"", s.words())));
    kind.formula(cascade(sources, Source::section));
    count.formula(calc("IF({}=\"\";0;{})", or(candidate, ""), cascade(sources, Source::pieces)));
    found.formula(
        calc(
            "IF({}=\"\";\"\";IF(N({})=0;\"\";IF(COUNTIFS({};{};{};\">0\")>0;\"\";COUNT({})+1)))",
            or(candidate, ""),
            or(count, 0),
            candidate.above(),
            or(candidate, ""),
            count.above(),
            found.above()));
    candidates.columns(number, candidate, kind, count, found);
  }

  private Formula cascade(List<Source> sources, Function<Source, Formula> of) {
    StringBuilder pattern = new StringBuilder();
    List<Object> parts = new ArrayList<>();
    int last = 0;
    for (Source source : sources) {
      last += source.rows();
      pattern.append("IF({}<=").append(last).append(";{};");
      parts.add(number);
      parts.add(of.apply(source));
    }
    pattern.append("\"\"").append(")".repeat(sources.size()));
    return calc(pattern.toString(), parts.toArray());
  }

  private void order() {
    stock.columns(ours, oursCount);
    stock.checks(
        ValidationRule.wrong(
            calc("COUNTIF({};{})>1", ours.all(), ours),
            say("Duplicate: {}. Add them up in one row.", ours)),
        ValidationRule.check(
            calc("COUNTIF({};{})=0", item.all(), ours), say("The plan needs no {}.", ours)));
    Formula isDevice = calc("{}<=" + kit.devices.room(), row);
    Formula isKit = calc("{}<=" + (kit.devices.room() + kit.packs.room()), row);
    row.formula(calc("MATCH({};{};0)", section.rowNumber(), found.all()));
    section.formula(calc("INDEX({};{})", kind.all(), row));
    item.formula(calc("INDEX({};{})", candidate.all(), row));
    // the same adaptor is needed by several rows at once, cable and boxes add up
    needed.formula(
        calc(
            "IF({}>" + adaptorsFrom + ";MAXIFS({};{};{});SUMIFS({};{};{}))",
            row,
            count.all(),
            candidate.all(),
            item,
            count.all(),
            candidate.all(),
            item));
    spares.formula(
        calc(
            "ROUND({}*(1+IF({};{};IF({}>" + cableFrom + ";{};0)));0)",
            needed,
            isKit,
            or(spareLights, 0),
            row,
            or(spareCable, 0)));
    Formula fromKit =
        calc(
            "IF({};{};{})",
            isDevice,
            kit.pieces.lookup(kit.item, item),
            kit.packPieces.lookup(kit.pack, item));
    have.formula(
        calc(
            "IF({};IF({}=\"\";\"\";{});SUMIFS({};{};{}))",
            isKit,
            fromKit,
            fromKit,
            oursCount.all(),
            ours.all(),
            item));
    missing.formula(calc("MAX(0;{}-N({}))", spares, or(have, 0)));
    mass.unit(plan.job.masses());
    mass.formula(
        calc(
            "IF({};{}*IF({};{};{});\"\")",
            isKit,
            needed,
            isDevice,
            kit.mass.lookup(kit.item, item),
            kit.packMass.lookup(kit.pack, item)));
    shortNumber.formula(calc("IF({}>0;COUNT({})+1;\"\")", missing, shortNumber.above()));
    table.columns(item, section, needed, spares, have, missing, mass, row, shortNumber);
    table.checks(
        ValidationRule.check(
            calc("AND({}>0;{}=\"\")", missing, or(have, "")),
            Formula.of("Pieces are blank on Kit: counted as none of ours.")),
        ValidationRule.check(calc("{}>0", missing), say("Hire {}.", missing)));
  }

  private void quote() {
    quoteRow.formula(calc("MATCH({};{};0)", quoteSection.rowNumber(), shortNumber.all()));
    quoteSection.formula(calc("INDEX({};{})", section.all(), quoteRow));
    quoteItem.formula(calc("INDEX({};{})", item.all(), quoteRow));
    quantity.formula(calc("INDEX({};{})", missing.all(), quoteRow));
    out.formula(hireOfSet(generator.terms.onHire));
    back.formula(hireOfSet(generator.terms.offHire));
    forQuote.columns(quoteItem, quoteSection, quantity, out, back, quoteRow);
  }

  private Formula hireOfSet(FieldSpec date) {
    return calc("IF(INDEX({};{})=" + setAt + ";{};\"\")", row.all(), quoteRow, or(date, ""));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "To order",
            "What the plan needs at its busiest: lights, packs, the generator, boxes, cable by size"
                + " and piece, adaptors; and what is short of it.")
        .with(
            FieldBlock.of("Spares", spareCable, spareLights),
            TextBlock.notes(
                "",
                calc(
                    "IF(MAX({})>"
                        + KINDS
                        + ";\"The plan needs \"&MAX({})&\" kinds of things: here are the first "
                        + KINDS
                        + ".\";\"\")",
                    found.all(),
                    found.all())),
            stock,
            table);
  }

  SheetSpec quoteTab() {
    return SheetSpec.of(
            "For the quote",
            "What is short, in the columns of the rental quote: copy the rows, and paste them as"
                + " values at Item of its tab From the plan.")
        .with(forQuote);
  }

  Block working() {
    return candidates;
  }
}
