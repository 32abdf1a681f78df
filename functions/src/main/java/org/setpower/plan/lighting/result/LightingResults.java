package org.setpower.plan.lighting.result;

import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.ProjectTables;
import org.setpower.plan.lighting.protection.Disconnection;

/** Results beside the rows of the tables to fill. */
public final class LightingResults {
  public static final ResultTable<ProjectResult> PROJECT_RESULT =
      ResultTable.of(ProjectResult.class, Source.PLAN);
  public static final ResultTable<DayResult> DAY_RESULT = ResultTable.of(DayResult.class);
  public static final ResultTable<GroupResult> GROUP_RESULT = ResultTable.of(GroupResult.class);
  public static final ResultTable<SizeResult> SIZE_RESULT = ResultTable.of(SizeResult.class);
  public static final ResultTable<StockResult> STOCK_RESULT = ResultTable.of(StockResult.class);
  public static final ResultTable<SupplyResult> SUPPLY_RESULT =
      ResultTable.of(SupplyResult.class, Source.PLAN);
  public static final ResultTable<OutletResult> OUTLET_RESULT =
      ResultTable.of(OutletResult.class, Source.PLAN);
  public static final ResultTable<RunResult> RUN_RESULT =
      ResultTable.of(RunResult.class, Source.PLAN);
  public static final ResultTable<LoadResult> LOAD_RESULT =
      ResultTable.of(LoadResult.class, Source.PLAN);
  public static final ResultTable<EquipmentResult> EQUIPMENT_RESULT =
      ResultTable.of(EquipmentResult.class, Source.PLAN);
  public static final ResultTable<GeneratorResult> GENERATOR_RESULT =
      ResultTable.of(GeneratorResult.class, Source.PLAN_AND_SIZES);
  public static final ResultTable<ReadingResult> READING_RESULT =
      ResultTable.of(ReadingResult.class);

  private LightingResults() {}

  /** Beside the settings. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record ProjectResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** Beside a day. */
  @Table(key = "days", heading = "Days", rows = 30)
  public record DayResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = Source.DAYS,
              rule = "The worst of Reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reasons",
              from = Source.DAYS,
              rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** Beside a group of loads. */
  @Table(key = "groups", heading = "Groups", rows = 20)
  public record GroupResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {Source.GROUPS},
              rule = "The worst of Reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reasons",
              from = {Source.GROUPS},
              rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** Beside a size on offer. */
  @Table(key = "sizes", heading = "Generators on offer", rows = 8)
  public record SizeResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {Source.SIZES},
              rule = "The worst of Reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reasons",
              from = {Source.SIZES},
              rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** Beside a cable in stock. */
  @Table(key = "cableStock", heading = "Cable stock", rows = 40)
  public record StockResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {Source.STOCK},
              rule = "The worst of Reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reasons",
              from = {Source.STOCK},
              rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** Beside a source or a distro. */
  @Table(key = "supplies", heading = "Sources & distro", rows = 40)
  public record SupplyResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(key = "fit", heading = "Fit", rule = "Whether papers print it.") boolean fit,
      @Result(
              key = "fedFrom",
              heading = "Fed from",
              from = {Source.SUPPLIES, Source.RUNS, Source.OUTLETS},
              rule = "The place at which its cable run begins.")
          String fedFrom,
      @Result(
              key = "available",
              heading = "Available",
              form = NumberForm.ONE_DECIMAL,
              unit = "A/leg",
              rule =
                  "The smallest of its own and all upstream breakers, less what others take there.")
          Double available,
      @Result(
              key = "amps1",
              heading = "L1",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L1: loads by power factor and pairs by vectors.")
          Double amps1,
      @Result(
              key = "amps2",
              heading = "L2",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L2.")
          Double amps2,
      @Result(
              key = "amps3",
              heading = "L3",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L3.")
          Double amps3,
      @Result(
              key = "neutral",
              heading = "Neutral",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(key = "peakDate", heading = "Peak on", rule = "Date of the peak of the busiest leg.")
          LocalDate peakDate,
      @Result(
              key = "peakAt",
              heading = "Peak at",
              unit = ProjectTables.CLOCK,
              rule = "Time at which the peak of the busiest leg begins.")
          Double peakAt,
      @Result(
              key = "headroom",
              heading = "Headroom",
              form = NumberForm.ONE_DECIMAL,
              unit = "A/leg",
              rule = "Available less the leg that carries most.")
          Double headroom,
      @Result(
              key = "imbalance",
              heading = "Imbalance",
              form = NumberForm.SHARE,
              rule = "Largest deviation of a leg from the mean, over the mean.")
          Double imbalance) {}

  /** Beside a row of outlets. */
  @Table(key = "outlets", heading = "Outlets", rows = 120)
  public record OutletResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "count",
              heading = "Outlets",
              unit = "pcs",
              from = {Source.SUPPLIES, Source.OUTLETS},
              rule = "How many outlets the row has.")
          Integer count,
      @Result(
              key = "used",
              heading = "In use",
              unit = "pcs",
              rule = "Outlets in which something is plugged.")
          Integer used,
      @Result(
              key = "legsOf",
              heading = "Legs of outlets",
              from = {Source.PROJECT, Source.SUPPLIES, Source.OUTLETS, Source.RUNS},
              rule = "Numbers of the outlets on each leg.")
          String legsOf,
      @Result(
              key = "peak",
              heading = "Peak",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Of the outlet or breaker that carries most.")
          Double peak,
      @Result(key = "peakPlace", heading = "Peak outlet", rule = "Which outlet that is.")
          String peakPlace,
      @Result(
              key = "protects",
              heading = "Upstream breaker",
              unit = "A",
              rule = "The smallest breaker from here to the source.")
          Double protects) {}

  /** Beside a cable run. */
  @Table(key = "runs", heading = "Cable runs", rows = 100)
  public record RunResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(key = "fit", heading = "Fit", rule = "Whether papers print it.") boolean fit,
      @Result(
              key = "upstream",
              heading = "Upstream breaker",
              unit = "A",
              rule = "The smallest breaker from its outlet to the source.")
          Double upstream,
      @Result(
              key = "protects",
              heading = "Protects",
              rule = "Whether that breaker protects the cable as laid.")
          String protects,
      @Result(
              key = "rating",
              heading = "Cable rating",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Table or maker's rating, times air, loaded conductors and installation.")
          Double rating,
      @Result(key = "ratingTable", heading = "Table", rule = "Where the rating is from.")
          String ratingTable,
      @Result(
              key = "airUsed",
              heading = "Air",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.TEMPERATURE,
              rule = "Typed, or the warmest day in use.")
          Double airUsed,
      @Result(
              key = "amps",
              heading = "Peak",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Of the leg that carries most.")
          Double amps,
      @Result(
              key = "peakAt",
              heading = "Peak at",
              unit = ProjectTables.CLOCK,
              rule = "Time at which the peak begins.")
          Double peakAt,
      @Result(
              key = "neutral",
              heading = "Neutral",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(
              key = "metres",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = "m",
              from = {Source.PROJECT, Source.RUNS},
              rule = "Length in metres.")
          Double metres,
      @Result(
              key = "system",
              heading = "System for drop",
              from = Source.RUNS,
              rule = "1PH: leg and what comes back are counted.")
          String system,
      @Result(
              key = "dropAmps",
              heading = "Current for drop",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule =
                  "Mean of the leg and of what flows back over the neutral, at the largest drop.")
          Double dropAmps,
      @Result(
              key = "powerFactor",
              heading = "Power factor",
              form = NumberForm.TWO_DECIMALS,
              rule = "Of all loads behind it, at the largest drop.")
          Double powerFactor,
      @Result(
              key = "drop",
              heading = "Voltage drop",
              form = NumberForm.TWO_DECIMALS,
              unit = "V",
              rule =
                  "CABLE.DROP of Current for drop: leg to neutral (IEC 60364-5-52 annex G), of a"
                      + " pair line to line.")
          Double drop,
      @Result(
              key = "totalDrop",
              heading = "Voltage drop from source",
              form = NumberForm.SHARE,
              rule = "Over all runs, with loads of constant power.")
          Double totalDrop,
      @Result(
              key = "volts",
              heading = "Voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              rule = "At its end at the peak.")
          Double volts,
      @Result(
              key = "minSize",
              heading = "Min. size",
              rule = "Smallest size that is rated for the breaker and keeps the max. drop.")
          String minSize,
      @Result(
              key = "maxLength",
              heading = "Max. length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              rule = "Longest run of this size that keeps the max. drop.")
          Double maxLength,
      @Result(
              key = "disconnects",
              heading = "Disconnects",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.SIZES
              },
              rule = "Whether an earth fault at its end is disconnected in time.")
          Disconnection disconnects,
      @Result(
              key = "loop",
              heading = "Zs",
              form = NumberForm.THREE_DECIMALS,
              unit = "Ω",
              rule = "Earth loop of source and cables.")
          Double loop) {}

  /** Beside a load. */
  @Table(key = "loads", heading = "Loads", rows = 200)
  public record LoadResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(key = "fit", heading = "Fit", rule = "Whether papers print it.") boolean fit,
      @Result(key = "legUsed", heading = "Leg", rule = "Of the outlet, decided, or suggested.")
          String legUsed,
      @Result(
              key = "power",
              heading = "Power",
              unit = "W",
              from = {Source.LOADS, Source.EQUIPMENT},
              rule = "Qty times power times level.")
          Double power,
      @Result(
              key = "apparent",
              heading = "Apparent power",
              unit = "VA",
              from = {Source.LOADS, Source.EQUIPMENT},
              rule = "Power over power factor.")
          Double apparent,
      @Result(
              key = "amps",
              heading = "Current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule =
                  "Of one leg, all pieces on one place, at the voltage there; heaters and tungsten"
                      + " at that of the source.")
          Double amps,
      @Result(
              key = "volts",
              heading = "Voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              rule = "At the load at the peak, with loads of constant power.")
          Double volts,
      @Result(
              key = "upstream",
              heading = "Upstream breaker",
              unit = "A",
              rule = "The smallest breaker from its place to the source.")
          Double upstream,
      @Result(
              key = "shared",
              heading = "On this breaker",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of all that hangs on its place.")
          Double shared) {}

  /** Beside a type of device. */
  @Table(key = "equipment", heading = "Equipment", rows = 60)
  public record EquipmentResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "atOnce",
              heading = "At once",
              unit = "pcs",
              rule = "The most that are in use at one time.")
          Double atOnce,
      @Result(key = "toHire", heading = "To hire", unit = "pcs", rule = "At once, less stock.")
          Double toHire) {}

  /** Beside a generator. */
  @Table(key = "generators", heading = "Generator", rows = 8)
  public record GeneratorResult(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "airUsed",
              heading = "Air",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.TEMPERATURE,
              from = {Source.PROJECT, Source.DAYS, Source.GENERATORS},
              rule = "The hotter of intake and day.")
          Double airUsed,
      @Result(
              key = "derating",
              heading = "Left after derating",
              form = NumberForm.SHARE,
              from = {Source.PROJECT, Source.DAYS, Source.GENERATORS},
              rule = "GENSET.DERATE of altitude and air; 100 % loses nothing.")
          Double derating,
      @Result(
              key = "load",
              heading = "Alternator load",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS
              },
              rule = "Legs times the kVA of the one that carries most.")
          Double load,
      @Result(
              key = "power",
              heading = "Engine load",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS
              },
              rule = "All legs together.")
          Double power,
      @Result(
              key = "starting",
              heading = "With largest start",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS
              },
              rule =
                  "Alternator load, or engine load / 0.8 if more, when the largest start comes on"
                      + " top.")
          Double starting,
      @Result(
              key = "needed",
              heading = "Required size",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS
              },
              rule =
                  "Alternator load, or engine load / 0.8 if more, with headroom or with the"
                      + " largest start, over derating.")
          Double needed,
      @Result(
              key = "proposed",
              heading = "Proposed size",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              rule = "Smallest on offer that is enough.")
          Double proposed,
      @Result(
              key = "left",
              heading = "After derating",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              rule = "Size times derating.")
          Double left,
      @Result(
              key = "engineLeft",
              heading = "Engine after derating",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule = "0.8 times the kVA after derating.")
          Double engineLeft,
      @Result(
              key = "share",
              heading = "Peak load",
              form = NumberForm.SHARE,
              rule = "Of alternator or engine after derating, whichever is loaded more.")
          Double share,
      @Result(
              key = "imbalance",
              heading = "Leg difference",
              form = NumberForm.SHARE,
              rule = "Highest leg less lowest, as a share of the rated current of a leg.")
          Double imbalance,
      @Result(
              key = "hours",
              heading = "Running",
              form = NumberForm.ONE_DECIMAL,
              unit = "h",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS
              },
              rule = "From before call to after wrap, without the hours off for sound.")
          Double hours,
      @Result(
              key = "mean",
              heading = "Mean load",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS
              },
              rule = "While it runs.")
          Double mean,
      @Result(
              key = "fuel",
              heading = "Fuel",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.VOLUME,
              rule = "GENSET.FUEL of each quarter hour.")
          Double fuel,
      @Result(
              key = "cost",
              heading = "Fuel cost",
              form = NumberForm.TWO_DECIMALS,
              rule = "Fuel times price.")
          Double cost,
      @Result(key = "co2", heading = "CO2", unit = "kg", rule = "Of the fuel.") Double co2,
      @Result(key = "refuelOn", heading = "Refuel by, day", rule = "Day of that time.")
          LocalDate refuelOn,
      @Result(
              key = "refuelAt",
              heading = "Refuel by",
              unit = ProjectTables.CLOCK,
              rule =
                  "Start before which to refuel; where a full tank does not last a run, when it is"
                      + " empty. Do not refuel while it runs.")
          Double refuelAt) {}

  /** Beside a reading. */
  @Table(key = "readings", heading = "Clamp-meter readings", rows = 24)
  public record ReadingResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.READINGS
              },
              rule = "The worst of Reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reasons",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.READINGS
              },
              rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "planned1",
              heading = "L1 planned",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.READINGS
              },
              rule = "At the time of the reading.")
          Double planned1,
      @Result(
              key = "planned2",
              heading = "L2 planned",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.READINGS
              },
              rule = "At the time of the reading.")
          Double planned2,
      @Result(
              key = "planned3",
              heading = "L3 planned",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.READINGS
              },
              rule = "At the time of the reading.")
          Double planned3) {}
}
