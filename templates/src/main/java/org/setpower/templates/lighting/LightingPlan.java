package org.setpower.templates.lighting;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.or;
import static org.setpower.templates.Formula.say;

import org.setpower.templates.BarChart;
import org.setpower.templates.Excerpt;
import org.setpower.templates.Figure;
import org.setpower.templates.Figures;
import org.setpower.templates.Filling;
import org.setpower.templates.Findings;
import org.setpower.templates.Format;
import org.setpower.templates.Formula;
import org.setpower.templates.Kit;
import org.setpower.templates.Leads;
import org.setpower.templates.Lines;
import org.setpower.templates.Tab;
import org.setpower.templates.Table;
import org.setpower.templates.Template;
import org.setpower.templates.Workbook;

/** Template 1: the lighting power plan of a gaffer and a best boy. */
public final class LightingPlan implements Workbook {
  private final PlanJob plan = new PlanJob();
  private final Kit kit = new Kit(plan.job);
  private final Supply supply = new Supply();
  private final Runs runs = new Runs(plan, supply);
  private final Loads loads = new Loads(plan, kit, supply, runs);
  private final Legs legs = new Legs(plan, supply, loads);
  private final Generator generator = new Generator(plan, supply, loads, runs, legs);
  private final Packs packs = new Packs(plan, kit);
  private final Charging charging = new Charging(plan, kit, packs);
  private final Leads leads = new Leads(plan.job, plan.houseLimit);
  private final Template template;

  /** Declares the plan. */
  public LightingPlan() {
    supply.declare(plan, kit, loads, runs);
    runs.declare(loads);
    loads.declare(charging);
    charging.declare(loads);
    template =
        Template.of("lighting-power-plan", "Lighting power plan", 1)
            .stamped(plan.job.stamp())
            .with(
                plan.tab(),
                supply.tab(),
                loads.tab(),
                runs.tab(),
                legs.tab(),
                generator.tab(),
                packs.tab(),
                charging.tab(),
                leads.tab("Leads"),
                result(),
                kit.tab().with(plan.standards.table),
                notes(),
                Tab.working("Working")
                    .with(loads.onLeg[0], loads.onLeg[1], loads.onLeg[2], loads.onRun)
                    .with(generator.working()));
  }

  @Override
  public Template template() {
    return template;
  }

  private Tab result() {
    Table[] tables = {
      supply.table,
      loads.table,
      runs.table,
      legs.table,
      legs.measured,
      generator.rating,
      generator.days,
      generator.typed,
      packs.table,
      charging.table,
      plan.job.days
    };
    Excerpt ofSupply =
        Excerpt.of(supply.table)
            .column(supply.name, 45)
            .column(supply.used, 30)
            .column(supply.may, 30)
            .column(supply.at, 30)
            .column(supply.voltsHere, 30)
            .column(supply.table.status(), 15);
    Excerpt ofRuns =
        Excerpt.of(runs.table)
            .column(runs.to, 45)
            .column(runs.size, 30)
            .column(runs.amps, 15)
            .column(runs.rating, 15)
            .column(runs.ahead, 15)
            .column(runs.dropSince, 15)
            .column(runs.shareLost, 15)
            .column(runs.limit, 15)
            .column(runs.table.status(), 15);
    Excerpt ofPacks =
        Excerpt.of(packs.table)
            .column(packs.item, 60)
            .column(packs.feed.pack, 15)
            .column(packs.feed.feed, 15)
            .column(packs.feed.full, 15)
            .column(packs.feed.amps, 15)
            .column(packs.feed.atCutOff, 15)
            .column(packs.hours, 15)
            .column(packs.packs, 15)
            .column(packs.table.status(), 15);
    Excerpt ofVolts =
        Excerpt.of(leads.atOtherVolts)
            .column(leads.rowVolts, 30)
            .column(leads.amps, 30)
            .column(leads.heat, 30)
            .column(leads.heldAmps, 30)
            .column(leads.heldHeat, 30)
            .column(leads.smallest, 30);
    Excerpt ofSizes =
        Excerpt.of(leads.overGauges)
            .column(leads.gauge, 30)
            .column(leads.firstAmps, 30)
            .column(leads.firstLost, 30)
            .column(leads.firstShare, 15)
            .column(leads.otherAmps, 30)
            .column(leads.otherLost, 30)
            .column(leads.otherShare, 15);
    Table supplies = ofSupply.rows("Sources and boxes", 8);
    return Tab.of(
            "Result",
            "To print and to talk about; nothing to fill. Planning figures: a competent person inspects and"
                + " tests the real thing.")
        .grid(12, 15)
        .portrait()
        .result()
        .with(
            Figures.of("", 3, headlines(tables)),
            BarChart.bars(
                "Amps on the busiest leg, and what each may give",
                11,
                "A a leg",
                ofSupply.shown(supply.name),
                ofSupply.shown(supply.used),
                ofSupply.shown(supply.may)),
            Findings.of("What needs a look", 9, tables))
        .newPage(cautions())
        .with(supplies, ofRuns.rows("Runs", 14))
        .newPage(ofPacks.rows("Packs", 14))
        .with(
            ofVolts.rows("The lead of tab Leads at other volts", 3),
            ofSizes.rows("The lead of tab Leads over other sizes", 10));
  }

  private Figure[] headlines(Table... tables) {
    Formula load = supply.shareUsed.all();
    Formula busiest = calc("MATCH(MAX({});{};0)", load, load);
    Formula drop = runs.shareLost.all();
    Formula most = calc("MATCH(MAX({});{};0)", drop, drop);
    Formula hours = packs.hours.all();
    Formula shortest = calc("MATCH(MIN({});{};0)", hours, hours);
    return new Figure[] {
      Figure.of(
          "To stop for (rows)",
          Format.COUNT,
          count("stop", tables),
          "Nobody goes on before these."),
      Figure.of("To look at (rows)", Format.COUNT, count("look", tables), "Somebody must decide."),
      Figure.of(
          "Busiest supply (%)",
          Format.SHARE,
          calc("IF(COUNT({})=0;\"–\";MAX({}))", load, load),
          calc(
              "INDEX({};{})&\": \"&ROUND(INDEX({};{});1)&\" of \"&ROUND(INDEX({};{});0)&\" A a leg, from \"&TEXT(INDEX({};{});\"hh:mm\")",
              supply.name.all(),
              busiest,
              supply.used.all(),
              busiest,
              supply.may.all(),
              busiest,
              supply.at.all(),
              busiest)),
      Figure.of(
          "Most volts lost (%)",
          Format.SHARE,
          calc("IF(COUNT({})=0;\"–\";MAX({}))", drop, drop),
          calc(
              "INDEX({};{})&\": \"&ROUND(INDEX({};{});1)&\" V since the source, watts held\"",
              runs.to.all(),
              most,
              runs.dropSince.all(),
              most)),
      Figure.of(
          "Shortest pack time (h)",
          Format.ONE,
          calc("IF(COUNT({})=0;\"–\";MIN({}))", hours, hours),
          calc(
              "INDEX({};{})&\" on \"&INDEX({};{})",
              packs.item.all(),
              shortest,
              packs.feed.pack.all(),
              shortest)),
      Figure.of(
          "Packs to charge (pieces)",
          Format.COUNT,
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
              or(plan.shown, "")))
    };
  }

  private static Formula count(String word, Table... tables) {
    StringBuilder pattern = new StringBuilder("0");
    Object[] parts = new Object[tables.length];
    for (int i = 0; i < tables.length; i++) {
      pattern.append("+COUNTIF({};\"").append(word).append("\")");
      parts[i] = tables[i].status().all();
    }
    return calc(pattern.toString(), parts);
  }

  private Lines cautions() {
    return Lines.cautions(
        "Cautions",
        "These are planning figures. A competent person designs, inspects and tests the real thing:"
            + " polarity, earth continuity, loop, RCD trip, insulation.",
        "Outdoors every socket up to 32 A wants an RCD of 30 mA (class A GFCI where the NEC asks);"
            + " its type follows the load. No figure here checks it.",
        "Breakers are set at 30 °C in free air: side by side in a box in the sun they trip early."
            + " Inrush of many drivers at once is not in the amps.",
        say(
            "Single-core feeders: earth, then neutral first on, last off. Here legs are {}, neutral"
                + " {}, earth {}. A lost neutral puts up to the line voltage on the smallest load.",
            plan.legColours,
            plan.standards.neutral.where(plan.standards.standard, plan.mains),
            plan.standards.earth.where(plan.standards.standard, plan.mains)),
        "Over 60 V DC (30 V in the wet) bare parts are not safe to touch. Fuse DC at the pack, for"
            + " its volts and its short-circuit amps; an AC breaker may not break DC.");
  }

  private Tab notes() {
    return Tab.of("Notes", "What was assumed, what is left out, and where the figures come from.")
        .grid(12, 21)
        .with(
            Lines.notes(
                "Assumed in this plan",
                say(
                    "{} rows of Loads use the power factor assumed on Job ({}), because Kit has none.",
                    assumed(),
                    plan.powerFactor),
                "A load without a leg counts on every leg until somebody chooses; loads across two"
                    + " or three lines count on every leg too.",
                "Drops are worked out with the volt-amperes of the loads held as their volts sag, at"
                    + " the busiest moment of each run: a little more than the true drop.",
                "A three-phase run is reckoned balanced only when its legs are within 20 % of each"
                    + " other; otherwise as its busiest leg with the neutral, which loses more.",
                "Without a coldest temperature on Job the packs are taken at 20 °C. Hours are the"
                    + " shorter of two ways of reckoning: energy, and volts down to the light's"
                    + " lowest."),
            Lines.notes(
                "Left out",
                "Heat lost in a cable is not added to the watts of the cable before it.",
                "Inrush, harmonics in the neutral, earth-leakage currents and lightning.",
                "Box cards and the order list are not in this version of" + " the sheet."),
            Lines.notes(
                "Where the figures come from",
                "Cable resistance and ratings, drop limits, breakers: see the function pages of the"
                    + " handbook; each names document, edition and table.",
                "Packs: open-circuit curves and cold ratios of measured cells, named at PACK.LASTS"
                    + " and PACK.COLD.",
                "Every figure can be followed: put the cursor on it and choose How this number came"
                    + " about in the menu Set power."));
  }

  private Formula assumed() {
    return calc("SUM({})", loads.assumed.all());
  }

  @Override
  public void fill(Filling filling) {
    filling
        .fields(LightingPlan.class, "/org/setpower/templates/scenario/lighting-job.csv")
        .rows(plan.job.days, LightingPlan.class, "/org/setpower/templates/scenario/days.csv")
        .rows(kit.devices, LightingPlan.class, "/org/setpower/templates/scenario/kit-devices.csv")
        .rows(kit.packs, LightingPlan.class, "/org/setpower/templates/scenario/kit-packs.csv")
        .rows(supply.table, LightingPlan.class, scenario("supply"))
        .rows(loads.table, LightingPlan.class, scenario("loads"))
        .rows(runs.table, LightingPlan.class, scenario("runs"))
        .rows(legs.measured, LightingPlan.class, scenario("measured"))
        .rows(generator.sizes, LightingPlan.class, scenario("sizes"))
        .rows(generator.typed, LightingPlan.class, scenario("meter"))
        .shows(generator.days, 3)
        .rows(packs.table, LightingPlan.class, scenario("packs"))
        .rows(charging.table, LightingPlan.class, scenario("charging"));
  }

  private static String scenario(String table) {
    return "/org/setpower/templates/scenario/lighting-" + table + ".csv";
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – lighting power plan";
  }
}
