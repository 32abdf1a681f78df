package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.shared.LeadsSheet;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableExcerpt;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;

/** Template 2: a battery day of camera, sound and video. */
public final class BatteryDay implements TemplateDefinition {
  private static final int CARD = 40;
  private static final int FINDINGS = 10;

  private final BatteryJobSheet job = new BatteryJobSheet();
  private final EquipmentSheet kit = new EquipmentSheet(job.job);
  private final PacksOnHandSheet onHand = new PacksOnHandSheet(job, kit);
  private final PositionsSheet positions = new PositionsSheet(job, kit);
  private final DevicesSheet devices = new DevicesSheet(kit, positions);
  private final ChargersSheet chargers = new ChargersSheet(job, kit);
  private final DaySheet day = new DaySheet(job, kit, positions, onHand, chargers);
  private final SmallCellsSheet smallCells = new SmallCellsSheet(job);
  private final PackStackSheet stack = new PackStackSheet(job, kit);
  private final LeadsSheet leads = new LeadsSheet(job.job, job.dropLimit);
  private final WorkbookSpec template;
  private final IssueList findings;

  /** Declares the file. */
  public BatteryDay() {
    onHand.declare(day);
    devices.declare(job, positions);
    positions.declare(devices, onHand, day);
    day.declare();
    template =
        WorkbookSpec.of("battery-day", "Battery day", 1)
            .stamped(job.job.stamp())
            .with(
                job.tab(),
                onHand.tab(),
                positions.tab(),
                devices.tab(),
                chargers.tab(),
                day.tab(),
                smallCells.tab(),
                stack.tab(),
                leads.tab("Compare voltage"));
    SheetSpec drawer = kit.tab();
    findings = IssueList.on(FINDINGS, template.tabs(drawer));
    template.with(result(), drawer, notes(), day.working().with(stack.working()));
  }

  @Override
  public WorkbookSpec template() {
    return template;
  }

  private SheetSpec result() {
    TableSpec packs =
        TableExcerpt.of(onHand.table)
            .column(onHand.kind, 45)
            .column(onHand.toPlan, 15)
            .column(onHand.fewest, 15)
            .column(onHand.spare, 15)
            .column(onHand.dead, 15)
            .column(onHand.lent, 15)
            .column(onHand.lentTo, 15)
            .column(onHand.backOn, 30)
            .column(onHand.table.status(), 15)
            .rows("Lent out", 6);
    TableSpec card =
        TableExcerpt.of(day.byClock)
            .column(day.clock, 15)
            .column(day.who, 60)
            .column(day.does, 30)
            .column(day.count, 15)
            .column(day.which, 30)
            .column(day.left, 30)
            .rows("Battery change card", CARD);
    TableSpec charge =
        TableExcerpt.of(chargers.table)
            .column(chargers.charger, 45)
            .column(chargers.takes, 15)
            .column(chargers.pieces, 15)
            .column(chargers.hours, 15)
            .column(chargers.free, 30)
            .column(chargers.needed, 30)
            .column(chargers.ready, 15)
            .column(chargers.table.status(), 15)
            .rows("What to charge before the next call", 6);
    TableExcerpt ofPositions =
        TableExcerpt.of(positions.table)
            .column(positions.position, 60)
            .column(positions.feed.pack, 15)
            .column(positions.feed.feed, 15)
            .column(positions.watts, 15)
            .column(positions.feed.atCutOff, 15)
            .column(positions.hours, 15)
            .column(positions.onFor, 15)
            .column(positions.swaps, 15)
            .column(positions.table.status(), 15);
    TableSpec sets = ofPositions.rows("How long a set lasts", 12);
    return SheetSpec.of(
            "Result",
            "Print for the charging cart. Planning figures only: always check the"
                + " battery gauges.")
        .grid(12, 17)
        .portrait()
        .result()
        .with(KeyFigures.of("", 3, headlines()), day.chart(12), findings.list())
        .newPage(cautions())
        .with(card, day.more(CARD))
        .newPage(sets)
        .with(
            BarChart.bars(
                "Hours of a set, and hours it is on",
                9,
                "Hours",
                ofPositions.shown(positions.position),
                ofPositions.shown(positions.hours),
                ofPositions.shown(positions.onFor)),
            charge,
            packs);
  }

  private KeyFigure[] headlines() {
    return new KeyFigure[] {
      findings.stops(),
      findings.checks(),
      KeyFigure.of(
          "Shortest runtime (h)",
          CellFormat.ONE,
          KeyFigure.min(positions.hours),
          calc(
              "{}&\" on \"&{}",
              positions.position.lookupAtMin(positions.hours),
              positions.feed.pack.lookupAtMin(positions.hours))),
      KeyFigure.of(
          "Battery changes",
          CellFormat.COUNT,
          calc("SUM({})", positions.swaps.all()),
          calc(
              "IF({}=\"\";\"on the coldest of all days\";TEXT({};\"ddd d mmm\")&\", packs at"
                  + " \"&ROUND({};0)&\" °C\")",
              or(job.shown, ""),
              or(job.shown, 0),
              job.coldest)),
      KeyFigure.of(
          "Batteries short",
          CellFormat.COUNT,
          KeyFigure.sum(day.shortOf),
          "To hire, or to charge more: see Day."),
      KeyFigure.of(
          "Downtime (h)",
          CellFormat.ONE,
          day.hoursLost,
          calc(
              "IF({}<>\"\";{};\"Hours that positions wait for a full pack, added up.\")",
              day.refused,
              day.refused)),
      KeyFigure.of(
          "Stack lasts (h)",
          CellFormat.ONE,
          KeyFigure.shown(stack.lasts),
          calc(
              "IF({}=\"\";\"see Stack\";COUNT({})&\" packs under \"&ROUND({};0)&\" W\")",
              stack.lasts,
              stack.share.all(),
              or(stack.watts, 0))),
      KeyFigure.of(
          "Not ready by next call (rows)",
          CellFormat.COUNT,
          calc(
              "COUNTA({})-COUNTIF({};\"yes\")-SUMPRODUCT(({}=\"\")*({}<>\"\"))",
              chargers.charger.all(),
              chargers.ready.all(),
              chargers.pieces.all(),
              chargers.charger.all()),
          calc(
              "IF({}=\"\";\"pick Day shown on Job\";\"next call \"&TEXT({};\"hh:mm\"))",
              job.nextCall,
              job.nextCall)),
      KeyFigure.of(
          "Small cells (a day)",
          CellFormat.COUNT,
          calc("SUM({})", smallCells.aDay.all()),
          calc("SUM({})&\" for the job\"", smallCells.forJob.all()))
    };
  }

  private static TextBlock cautions() {
    return TextBlock.cautions(
        TextBlock.HOT,
        TextBlock.DAMAGED,
        TextBlock.CHARGING,
        "Do not connect batteries at different states of charge directly in parallel: "
            + "uncontrolled current flows between them. Use a hot-swap plate. Connect in "
            + "series only batteries of the same type and state of charge, and only where the"
            + " manufacturer permits it.",
        "Do not touch bare parts above 60 V DC (30 V DC in the wet). Do not unplug "
            + "under load above 60 V DC. Fit a DC fuse at the battery.");
  }

  private SheetSpec notes() {
    return SheetSpec.notes(
        TextBlock.reckoned(
            "A position counts with the most that is on at the same time, from its first"
                + " device to its last, breaks taken off. Hours are the shorter of two ways of"
                + " calculation: energy, and volts down to the highest of the devices' lowest.",
            "The day starts with all packs full. A full pack goes on, the one longest on the shelf"
                + " first; what comes off, empty or not, queues for the first free channel and is"
                + " charged before it goes on again.",
            "Fewest packs: so many that no position waits, without a spare.",
            "Packs are as cold as the coldest of the day, from the first minute. No credit is given"
                + " for their own warmth.",
            "Charge time per battery: from empty, with all channels in use. The runner's"
                + " way and the warming come on top in the day."),
        TextBlock.leftOut(
            "Starting currents of motors, packs that are not equal in one set, self-discharge.",
            "Which person swaps: the sheet knows positions and departments only."),
        TextBlock.sources(
            "Hours, cold, charging and the plan of the day: see PACK, CHARGE and PLAN in the"
                + " handbook; each page names its source."));
  }

  @Override
  public void fill(ExampleLoader filling) {
    filling
        .fields("battery-job")
        .rows(job.job.days, "days")
        .rows(kit.devices, "kit-devices")
        .rows(kit.packs, "kit-packs")
        .rows(onHand.table, "battery-onhand")
        .rows(positions.table, "battery-positions")
        .rows(devices.table, "battery-devices")
        .rows(chargers.table, "battery-chargers")
        .rows(smallCells.table, "battery-cells")
        .rows(stack.packs, "battery-stack");
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – battery day";
  }
}
