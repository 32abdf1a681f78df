package org.setpower.templates.lighting;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.EnumMap;
import java.util.Map;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.shared.LeadsSheet;
import org.setpower.templates.shared.PlanHandover;
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

/** Template 1: the lighting power plan of a gaffer and a best boy. */
public final class LightingPlan implements TemplateDefinition {
  /** Rows of the list of open issues. */
  private static final int FINDINGS = 14;

  private final LightingJobSheet plan = new LightingJobSheet();
  private final EquipmentSheet kit = new EquipmentSheet(plan.job);
  private final SupplySheet supply = new SupplySheet();
  private final CableRunsSheet runs = new CableRunsSheet(plan, supply);
  private final LoadsSheet loads = new LoadsSheet(plan, kit, supply, runs);
  private final LegsSheet legs = new LegsSheet(plan, supply, loads);
  private final GeneratorSheet generator = new GeneratorSheet(plan, supply, loads, runs, legs);
  private final LightingPacksSheet packs = new LightingPacksSheet(plan, kit);
  private final ChargingSheet charging = new ChargingSheet(plan, kit, packs);
  private final BoxCardsSheet cards = new BoxCardsSheet(supply, loads);
  private final OrderSheet order = new OrderSheet(plan, kit, supply, loads, runs, packs, generator);
  private final LeadsSheet leads = new LeadsSheet(plan.job, plan.houseLimit);
  private final WorkbookSpec template;
  private final IssueList findings;

  /** Declares the plan. */
  public LightingPlan() {
    supply.declare(plan, kit, loads, runs);
    runs.declare(loads);
    loads.declare(charging, generator.terms.reckoned, generator.running);
    charging.declare(loads);
    template =
        WorkbookSpec.of("lighting-power-plan", "Lighting power plan", 2)
            .stamped(plan.job.stamp())
            .with(
                plan.tab(),
                supply.tab(),
                loads.tab(),
                runs.tab(),
                legs.tab(),
                generator.tab(),
                generator.log(),
                packs.tab(),
                charging.tab(),
                leads.tab("Leads"),
                cards.tab(),
                order.tab(),
                order.quoteTab());
    SheetSpec drawer = kit.tab().with(plan.standards.table);
    findings = IssueList.on(FINDINGS, template.tabs(drawer));
    template.with(
        result(),
        drawer,
        notes(),
        SheetSpec.working("Working")
            .with(loads.onLeg[0], loads.onLeg[1], loads.onLeg[2], loads.onRun)
            .with(generator.working())
            .with(order.working()));
  }

  @Override
  public WorkbookSpec template() {
    return template;
  }

  private SheetSpec result() {
    TableExcerpt ofSupply =
        TableExcerpt.of(supply.table)
            .column(supply.name, 45)
            .column(supply.used, 30)
            .column(supply.may, 30)
            .column(supply.at, 30)
            .column(supply.voltsHere, 30)
            .column(supply.table.status(), 15);
    TableExcerpt ofRuns =
        TableExcerpt.of(runs.table)
            .column(runs.to, 45)
            .column(runs.size, 30)
            .column(runs.amps, 15)
            .column(runs.rating, 15)
            .column(runs.ahead, 15)
            .column(runs.dropSince, 15)
            .column(runs.shareLost, 15)
            .column(runs.limit, 15)
            .column(runs.table.status(), 15);
    TableExcerpt ofPacks =
        TableExcerpt.of(packs.table)
            .column(packs.item, 60)
            .column(packs.feed.pack, 15)
            .column(packs.feed.feed, 15)
            .column(packs.feed.full, 15)
            .column(packs.feed.amps, 15)
            .column(packs.feed.atCutOff, 15)
            .column(packs.hours, 15)
            .column(packs.packs, 15)
            .column(packs.table.status(), 15);
    TableExcerpt ofLegs =
        TableExcerpt.of(legs.table)
            .column(legs.source, 45)
            .column(legs.day, 30)
            .column(legs.at, 15)
            .column(legs.amps[0], 15)
            .column(legs.amps[1], 15)
            .column(legs.amps[2], 15)
            .column(legs.neutral, 15)
            .column(legs.unbalance, 15)
            .column(legs.table.status(), 15);
    TableExcerpt ofCharging =
        TableExcerpt.of(charging.table)
            .column(charging.charger, 30)
            .column(charging.day, 30)
            .column(charging.pack, 15)
            .column(charging.count, 15)
            .column(charging.hours, 15)
            .column(charging.free, 15)
            .column(charging.needed, 30)
            .column(charging.ready, 15)
            .column(charging.table.status(), 15);
    TableExcerpt ofSet =
        TableExcerpt.of(generator.days)
            .column(generator.day, 30)
            .column(generator.date, 30)
            .column(generator.from, 15)
            .column(generator.to, 15)
            .column(generator.hours, 15)
            .column(generator.busiest, 15)
            .column(generator.share, 15)
            .column(generator.low, 15)
            .column(generator.fuel, 15)
            .column(generator.days.status(), 15);
    TableExcerpt ofVolts =
        TableExcerpt.of(leads.atOtherVolts)
            .column(leads.rowVolts, 30)
            .column(leads.amps, 30)
            .column(leads.heat, 30)
            .column(leads.heldAmps, 30)
            .column(leads.heldHeat, 30)
            .column(leads.smallest, 30);
    TableExcerpt ofSizes =
        TableExcerpt.of(leads.overGauges)
            .column(leads.gauge, 30)
            .column(leads.firstAmps, 30)
            .column(leads.firstLost, 30)
            .column(leads.firstShare, 15)
            .column(leads.otherAmps, 30)
            .column(leads.otherLost, 30)
            .column(leads.otherShare, 15);
    TableSpec supplies = ofSupply.rows("Sources and boxes", 8);
    return SheetSpec.result(
            "Summary to print. Planning figures only: the installation must be inspected"
                + " and tested by a competent person.")
        .with(
            KeyFigures.of("", 3, headlines()),
            BarChart.bars(
                "Peak leg current vs. available",
                8,
                "A a leg",
                ofSupply.shown(supply.name),
                ofSupply.shown(supply.used),
                ofSupply.shown(supply.may)),
            generator.chart())
        .newPage(findings.list())
        .with(cautions())
        .newPage(supplies)
        .with(ofLegs.rows("Legs at their busiest", 5), ofRuns.rows("Runs", 14))
        .newPage(ofPacks.rows("Packs", 14))
        .with(ofCharging.rows("Charging", 5), ofSet.rows("Days of the generator", 6))
        .newPage(forBudget())
        .with(
            TextBlock.notes(
                "",
                "To take it over: copy the figures of A day and Days, and paste them as values on"
                    + " the tab From the plan of the power budget. Its rows are the same."),
            ofVolts.rows("The lead of tab Leads at other volts", 3),
            ofSizes.rows("The lead of tab Leads over other sizes", 10));
  }

  private KeyFigure[] headlines() {
    return new KeyFigure[] {
      findings.stops(),
      findings.checks(),
      KeyFigure.of(
          "Busiest supply (%)",
          CellFormat.SHARE,
          KeyFigure.max(supply.shareUsed),
          calc(
              "{}&\": \"&ROUND({};1)&\" of \"&ROUND({};0)&\" A a leg, from \"&TEXT({};\"hh:mm\")",
              supply.name.lookupAtMax(supply.shareUsed),
              supply.used.lookupAtMax(supply.shareUsed),
              supply.may.lookupAtMax(supply.shareUsed),
              supply.at.lookupAtMax(supply.shareUsed))),
      KeyFigure.of(
          "Max. voltage drop (%)",
          CellFormat.SHARE,
          KeyFigure.max(runs.shareLost),
          calc(
              "{}&\": \"&ROUND({};1)&\" V since the source, constant power\"",
              runs.to.lookupAtMax(runs.shareLost),
              runs.dropSince.lookupAtMax(runs.shareLost))),
      KeyFigure.of(
          "Shortest battery runtime (h)",
          CellFormat.ONE,
          KeyFigure.min(packs.hours),
          calc(
              "{}&\" on \"&{}",
              packs.item.lookupAtMin(packs.hours),
              packs.feed.pack.lookupAtMin(packs.hours))),
      KeyFigure.of(
          "Batteries to charge",
          CellFormat.COUNT,
          calc(
              "IF(COUNT({})=0;\"–\";IF({}=\"\";MAX({});SUMIFS({};{};{})))",
              packs.allDay.all(),
              or(plan.shown, ""),
              packs.allDay.all(),
              packs.packs.all(),
              packs.day.all(),
              or(plan.shown, 0)),
          calc(
              "IF({}=\"\";\"on the day that takes most\";\"on the day shown\")",
              or(plan.shown, ""))),
      generatorSize(),
      fuel(),
      delivery(),
      neutral(),
      charged(),
      KeyFigure.of(
          "Items short",
          CellFormat.COUNT,
          calc("IF(COUNT({})=0;\"–\";COUNT({}))", order.needed.all(), order.shortNumber.all()),
          "To order: cable, boxes, adaptors, lights, packs.")
    };
  }

  private KeyFigure generatorSize() {
    Formula share = generator.share.all();
    return KeyFigure.of(
        "Generator (kVA)",
        CellFormat.ONE,
        KeyFigure.max(generator.counted),
        calc(
            "IF(COUNT({})=0;\"no generator on Supply\";ROUND(100*MAX({});0)&\" % loaded at the"
                + " busiest, \"&ROUND(100*MIN({});0)&\" % on its quietest day\")",
            share, share, share));
  }

  private KeyFigure fuel() {
    Formula unit = plan.job.volumes();
    Formula burnt = generator.fuel.all();
    return KeyFigure.of(
        "Peak daily fuel",
        CellFormat.TEXT,
        calc("IF(COUNT({})=0;\"–\";ROUND(MAX({});1)&\" \"&{})", burnt, burnt, unit),
        calc(
            "IF(COUNT({})=0;\"\";\"in all \"&ROUND(SUM({});0)&\" \"&{}&\", \"&ROUND(SUM({});0)&\""
                + " kg CO2\"&IF(COUNT({})=0;\"\";\", with deliveries \"&ROUND(SUM({});0)&\""
                + " \"&{}))",
            burnt,
            burnt,
            unit,
            generator.carbon.all(),
            generator.fuelSum.all(),
            generator.fuelSum.all(),
            generator.terms.currency));
  }

  private KeyFigure delivery() {
    Formula first = generator.dropDay.all();
    return KeyFigure.of(
        "First fuel delivery",
        CellFormat.TEXT,
        calc(
            "IF(COUNT({})=0;\"–\";IF(COUNT({})=0;\"none\";TEXT(MAX({});\"d mmm\")&\""
                + " \"&TEXT(MAX({});\"hh:mm\")))",
            generator.total.all(),
            first,
            first,
            generator.dropBefore.all()),
        calc(
            "IF(COUNT({})=0;\"\";ROUND(SUM({});0)&\" of \"&ROUND(SUM({});0)&\" \"&{}&\" that a full"
                + " tank gives\"&IF(SUM({})>0;\"; \"&SUM({})&\" deliveries\";\"\"))",
            generator.total.all(),
            generator.total.all(),
            generator.full.all(),
            plan.job.volumes(),
            generator.drops.all(),
            generator.drops.all()));
  }

  private KeyFigure neutral() {
    return KeyFigure.of(
        "Max. neutral current (A)",
        CellFormat.ONE,
        KeyFigure.max(legs.neutral),
        calc("{}&\", at its busiest hour\"", legs.source.lookupAtMax(legs.neutral)));
  }

  private KeyFigure charged() {
    Formula ready = charging.ready.all();
    return KeyFigure.of(
        "Charged by next call",
        CellFormat.TEXT,
        calc(
            "IF(COUNTIF({};\"no\")>0;\"no\";IF(COUNTIF({};\"yes\")>0;\"yes\";\"–\"))",
            ready,
            ready),
        calc(
            "IF(COUNTIF({};\"?*\")+COUNTIF({};\"no\")+COUNTIF({};\"yes\")=0;\"\";COUNTIF({};\"yes\")&\""
                + " rows of Charging are, \"&COUNTIF({};\"no\")&\" are not\")",
            ready,
            ready,
            ready,
            ready,
            ready));
  }

  /** What a budget takes over. */
  private TableSpec forBudget() {
    Map<PlanHandover, PlanHandover.Row> rows = new EnumMap<>(PlanHandover.class);
    Formula set = or(generator.terms.reckoned, "");
    Formula house =
        calc(
            "SUMIFS({};{};\"<>\"&{})",
            loads.energy.all(),
            loads.source.all(),
            calc("IF({}=\"\";\"(none)\";{})", set, set));
    rows.put(PlanHandover.HOUSE_ENERGY, spread(house, calc("SUM({})", loads.newHouseDay.all())));
    rows.put(PlanHandover.SET_ENERGY, ofSet(generator.energy));
    rows.put(PlanHandover.FUEL, ofSet(generator.litres));
    rows.put(PlanHandover.RUN_HOURS, ofSet(generator.hours));
    rows.put(PlanHandover.OPERATOR, ofSet(generator.manned));
    Formula packDays = calc("SUM({})", packs.newDay.all());
    rows.put(PlanHandover.PACKS, spread(calc("SUM({})", packs.packs.all()), packDays));
    rows.put(PlanHandover.CHARGING, spread(calc("SUM({})/1000", packs.wall.all()), packDays));
    Formula call = plan.job.call.all();
    Formula wrap = plan.job.wrap.all();
    rows.put(
        PlanHandover.CREW,
        spread(
            calc(
                "SUMPRODUCT(ISNUMBER({})*ISNUMBER({})*24*({}-{}+({}<={})))",
                call,
                wrap,
                wrap,
                call,
                wrap,
                call),
            calc("SUMPRODUCT(ISNUMBER({})*ISNUMBER({}))", call, wrap)));
    rows.put(
        PlanHandover.MASS,
        spread(plan.job.kilograms(calc("SUM({})", order.mass.all())), Formula.of(1)));
    return PlanHandover.block("For the budget", rows);
  }

  private static PlanHandover.Row ofSet(ColumnSpec column) {
    return spread(calc("SUM({})", column.all()), calc("COUNT({})", column.all()));
  }

  /** A sum over so many days; blank when it is nothing. */
  private static PlanHandover.Row spread(Formula sum, Formula days) {
    return new PlanHandover.Row(
        calc("IF({}=0;\"\";({})/({}))", sum, sum, days), calc("IF({}=0;\"\";{})", sum, days));
  }

  private TextBlock cautions() {
    return TextBlock.cautions(
        "Planning figures only. Have the installation designed, inspected and tested by"
            + " a competent person: polarity, earth (ground) continuity, loop impedance, RCD "
            + "operation, insulation resistance.",
        "Protect socket outlets up to 32 A with a 30 mA RCD (Class A GFCI under the "
            + "NEC) of a type suited to the load. This sheet does not verify it.",
        "Breakers are rated at 30 °C in free air; grouped in a distro in the sun they "
            + "trip early. Inrush current is not included.",
        say(
            "Single-core feeders: switch the supply off before connecting or disconnecting."
                + " Lock it off. Connect earth (ground) first, then neutral, then phases. "
                + "Disconnect in reverse order. Colours here: phases {}, neutral {}, earth {}. A "
                + "lost neutral can put up to the line-to-line voltage on the smallest load.",
            plan.legColours,
            plan.standards.neutral.lookup(plan.standards.standard, plan.mains),
            plan.standards.earth.lookup(plan.standards.standard, plan.mains)),
        "Do not touch bare parts above 60 V DC (30 V DC in the wet). Do not use an AC "
            + "breaker for DC. Fit a DC fuse at the battery, rated for its full voltage and "
            + "its short-circuit current.");
  }

  private SheetSpec notes() {
    return SheetSpec.notes(
            TextBlock.notes(
                "Assumed in this plan",
                say(
                    "{} rows of Loads use the power factor assumed on Job ({}), because Kit has"
                        + " none.",
                    assumed(),
                    plan.powerFactor),
                "A load without a leg counts on the leg suggested: the one that carries least while"
                    + " it is on, with what is decided and with the rows above. Loads across two or"
                    + " three lines count on every leg.",
                "The third harmonic of a neutral is not known: all that lowers the power factor of"
                    + " the loads is taken as one, at most 80 %, in phase on all legs: the worst"
                    + " case.",
                "The generator is rated with all legs as the busiest. Its load is looked at every"
                    + " quarter of an hour; a tank is full when it comes and at each delivery.",
                "Packs charge from empty to full after wrap; a row of Charging has its channels for"
                    + " itself. Mains watts of a charger are a mean: its plate says more.",
                "Drops are worked out with the volt-amperes of the loads held as their volts sag,"
                    + " at the busiest moment of each run: a little more than the true drop.",
                "A three-phase run is calculated as balanced only when its legs are within"
                    + " 20 % of each other; otherwise as its busiest leg with the neutral, which"
                    + " loses more.",
                "Without a coldest temperature on Job the packs are taken at 20 °C. Hours"
                    + " are the shorter of two ways of calculation: energy, and volts down to the"
                    + " light's lowest."),
            TextBlock.leftOut(
                "Generator, its log and its order are of one set at a time: pick another at Set, or"
                    + " keep a copy of this file for a second.",
                "Heat lost in a cable is not added to the watts of the cable before it.",
                "Inrush, earth-leakage currents and lightning. The legs of a generator are not held"
                    + " against its limit of uneven load: ask for it.",
                "The energy from house and street holds the chargers that stand on Loads; the"
                    + " energy to charge packs is what their packs take from the wall: count one of"
                    + " them."))
        .newPage(
            TextBlock.sources(
                "Cable resistance and ratings, drop limits, breakers: see the function pages of the"
                    + " handbook; each names document, edition and table.",
                "Packs: open-circuit curves and cold ratios of measured cells, named at PACK.DISCHARGE"
                    + " and PACK.COLD."));
  }

  private Formula assumed() {
    return calc("SUM({})", loads.assumed.all());
  }

  @Override
  public void fill(ExampleLoader filling) {
    filling
        .fields("lighting-job")
        .rows(plan.job.days, "days")
        .rows(kit.devices, "kit-devices")
        .rows(kit.packs, "kit-packs")
        .rows(supply.table, "lighting-supply")
        .rows(loads.table, "lighting-loads")
        .rows(runs.table, "lighting-runs")
        .rows(legs.measured, "lighting-measured")
        .rows(generator.sizes, "lighting-sizes")
        .rows(generator.typed, "lighting-meter")
        .shows(generator.days, 3)
        .rows(packs.table, "lighting-packs")
        .rows(charging.table, "lighting-charging");
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – lighting power plan";
  }
}
