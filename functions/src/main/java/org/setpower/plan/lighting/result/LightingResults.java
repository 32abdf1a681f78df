package org.setpower.plan.lighting.result;

import java.time.LocalDate;
import java.util.List;
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
      ResultTable.of(ProjectResult.class);
  public static final ResultTable<DayResult> DAY_RESULT = ResultTable.of(DayResult.class);
  public static final ResultTable<SupplyResult> SUPPLY_RESULT = ResultTable.of(SupplyResult.class);
  public static final ResultTable<OutletResult> OUTLET_RESULT = ResultTable.of(OutletResult.class);
  public static final ResultTable<RunResult> RUN_RESULT = ResultTable.of(RunResult.class);
  public static final ResultTable<LoadResult> LOAD_RESULT = ResultTable.of(LoadResult.class);
  public static final ResultTable<EquipmentResult> EQUIPMENT_RESULT =
      ResultTable.of(EquipmentResult.class);
  public static final ResultTable<GeneratorResult> GENERATOR_RESULT =
      ResultTable.of(GeneratorResult.class);
  public static final ResultTable<ReadingResult> READING_RESULT =
      ResultTable.of(ReadingResult.class);

  private LightingResults() {}

  /** Beside the settings. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record ProjectResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {Source.PROJECT, Source.DAYS},
              rule = "The worst of Reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reasons",
              from = {Source.PROJECT, Source.DAYS},
              rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** Beside a day. */
  @Table(key = "days", heading = "Days", rows = 60)
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

  /** Beside a source or a distro. */
  @Table(key = "supplies", heading = "Sources & distro", rows = 60)
  public record SupplyResult(
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
                Source.GENERATORS
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
                Source.GENERATORS
              },
              rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "fit",
              heading = "Fit",
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
              rule = "Whether papers print it.")
          boolean fit,
      @Result(
              key = "fedFrom",
              heading = "Fed from",
              from = {Source.SUPPLIES, Source.RUNS, Source.OUTLETS},
              rule = "The place at which its cable run begins.")
          String fedFrom,
      @Result(
              key = "available",
              heading = "Available",
              unit = "A/leg",
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
                  "The smallest of its own and all upstream breakers, less what others take there.")
          Double available,
      @Result(
              key = "amps1",
              heading = "L1",
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
                Source.GENERATORS
              },
              rule = "Peak of L1: loads by power factor and pairs by vectors.")
          Double amps1,
      @Result(
              key = "amps2",
              heading = "L2",
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
                Source.GENERATORS
              },
              rule = "Peak of L2.")
          Double amps2,
      @Result(
              key = "amps3",
              heading = "L3",
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
                Source.GENERATORS
              },
              rule = "Peak of L3.")
          Double amps3,
      @Result(
              key = "neutral",
              heading = "Neutral",
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
                Source.GENERATORS
              },
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(
              key = "peakDate",
              heading = "Peak on",
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
              rule = "Day of the peak.")
          LocalDate peakDate,
      @Result(
              key = "peakAt",
              heading = "Peak at",
              unit = ProjectTables.CLOCK,
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
              rule = "Time at which the peak begins.")
          Double peakAt,
      @Result(
              key = "headroom",
              heading = "Headroom",
              unit = "A/leg",
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
              rule = "Available less the leg that carries most.")
          Double headroom,
      @Result(
              key = "imbalance",
              heading = "Imbalance",
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
              rule = "Largest deviation of a leg from the mean, over the mean.")
          Double imbalance) {}

  /** Beside a row of outlets. */
  @Table(key = "outlets", heading = "Outlets", rows = 120)
  public record OutletResult(
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
                Source.GENERATORS
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
                Source.GENERATORS
              },
              rule = "What is wrong, worst first.")
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
              rule = "Outlets in which something is plugged.")
          Integer used,
      @Result(
              key = "peak",
              heading = "Peak",
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
                Source.GENERATORS
              },
              rule = "Of the outlet or breaker that carries most.")
          Double peak,
      @Result(
              key = "peakPlace",
              heading = "Peak outlet",
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
              rule = "Which outlet that is.")
          String peakPlace,
      @Result(
              key = "protects",
              heading = "Upstream breaker",
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
                Source.GENERATORS
              },
              rule = "The smallest breaker from here to the source.")
          Double protects) {}

  /** Beside a cable run. */
  @Table(key = "runs", heading = "Cable runs", rows = 100)
  public record RunResult(
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
                Source.GENERATORS
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
                Source.GENERATORS
              },
              rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "fit",
              heading = "Fit",
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
              rule = "Whether papers print it.")
          boolean fit,
      @Result(
              key = "upstream",
              heading = "Upstream breaker",
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
                Source.GENERATORS
              },
              rule = "The smallest breaker from its outlet to the source.")
          Double upstream,
      @Result(
              key = "protects",
              heading = "Protects",
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
              rule = "Whether that breaker protects the cable as laid.")
          String protects,
      @Result(
              key = "rating",
              heading = "Cable rating",
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
                Source.GENERATORS
              },
              rule = "Table or maker's rating, times air, loaded conductors and installation.")
          Double rating,
      @Result(
              key = "ratingTable",
              heading = "Table",
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
              rule = "Where the rating is from.")
          String ratingTable,
      @Result(
              key = "airUsed",
              heading = "Air",
              unit = ProjectTables.TEMPERATURE,
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
              rule = "Typed, or the warmest day in use.")
          Double airUsed,
      @Result(
              key = "amps",
              heading = "Peak",
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
                Source.GENERATORS
              },
              rule = "Of the leg that carries most.")
          Double amps,
      @Result(
              key = "peakAt",
              heading = "Peak at",
              unit = ProjectTables.CLOCK,
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
              rule = "Time at which the peak begins.")
          Double peakAt,
      @Result(
              key = "neutral",
              heading = "Neutral",
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
                Source.GENERATORS
              },
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(
              key = "drop",
              heading = "Voltage drop",
              unit = "V",
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
              rule = "CABLE.DROP of the peak.")
          Double drop,
      @Result(
              key = "totalDrop",
              heading = "Voltage drop from source",
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
              rule = "Over all runs, with loads of constant power.")
          Double totalDrop,
      @Result(
              key = "volts",
              heading = "Voltage",
              unit = "V",
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
              rule = "At its end at the peak.")
          Double volts,
      @Result(
              key = "minSize",
              heading = "Min. size",
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
              rule = "Smallest size that is rated for the breaker and keeps the max. drop.")
          String minSize,
      @Result(
              key = "maxLength",
              heading = "Max. length",
              unit = ProjectTables.LENGTH,
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
              unit = "Ω",
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
              rule = "Earth loop of source and cables.")
          Double loop) {}

  /** Beside a load. */
  @Table(key = "loads", heading = "Loads", rows = 200)
  public record LoadResult(
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
                Source.GENERATORS
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
                Source.GENERATORS
              },
              rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "fit",
              heading = "Fit",
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
              rule = "Whether papers print it.")
          boolean fit,
      @Result(
              key = "legUsed",
              heading = "Leg",
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
              rule = "Of the outlet, decided, or suggested.")
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
                Source.GENERATORS
              },
              rule = "Of one leg, all pieces on one place.")
          Double amps,
      @Result(
              key = "volts",
              heading = "Voltage",
              unit = "V",
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
              rule = "At the load at the peak, with loads of constant power.")
          Double volts,
      @Result(
              key = "upstream",
              heading = "Upstream breaker",
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
                Source.GENERATORS
              },
              rule = "The smallest breaker from its place to the source.")
          Double upstream,
      @Result(
              key = "shared",
              heading = "On this breaker",
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
                Source.GENERATORS
              },
              rule = "Peak of all that hangs on its place.")
          Double shared) {}

  /** Beside a type of device. */
  @Table(key = "equipment", heading = "Equipment", rows = 80)
  public record EquipmentResult(
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
                Source.GENERATORS
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
                Source.GENERATORS
              },
              rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "atOnce",
              heading = "At once",
              unit = "pcs",
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
              rule = "The most that are in use at one time.")
          Double atOnce,
      @Result(
              key = "toHire",
              heading = "To hire",
              unit = "pcs",
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
              rule = "At once, less stock.")
          Double toHire) {}

  /** Beside a generator. */
  @Table(key = "generators", heading = "Generator", rows = 12)
  public record GeneratorResult(
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
                Source.SIZES
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
                Source.SIZES
              },
              rule = "What is wrong, worst first.")
          List<Finding> reasons,
      @Result(
              key = "airUsed",
              heading = "Air",
              unit = ProjectTables.TEMPERATURE,
              from = {Source.PROJECT, Source.DAYS, Source.GENERATORS},
              rule = "The hotter of intake and day.")
          Double airUsed,
      @Result(
              key = "derating",
              heading = "Derating",
              from = {Source.PROJECT, Source.DAYS, Source.GENERATORS},
              rule = "GENSET.DERATE of altitude and air.")
          Double derating,
      @Result(
              key = "load",
              heading = "Peak load",
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
              rule = "Legs times the one that carries most, running.")
          Double load,
      @Result(
              key = "starting",
              heading = "With largest start",
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
              rule = "Peak load when the largest start comes on top.")
          Double starting,
      @Result(
              key = "needed",
              heading = "Required size",
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
              rule = "GENSET.KVA with headroom, start and derating.")
          Double needed,
      @Result(
              key = "proposed",
              heading = "Proposed size",
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
                Source.GENERATORS,
                Source.SIZES
              },
              rule = "Smallest on offer that is enough.")
          Double proposed,
      @Result(
              key = "left",
              heading = "After derating",
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
                Source.GENERATORS,
                Source.SIZES
              },
              rule = "Size times derating.")
          Double left,
      @Result(
              key = "share",
              heading = "Peak load",
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
              rule = "Of what it has after derating.")
          Double share,
      @Result(
              key = "hours",
              heading = "Running",
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
              unit = ProjectTables.VOLUME,
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
              rule = "GENSET.FUEL of each quarter hour.")
          Double fuel,
      @Result(
              key = "cost",
              heading = "Fuel cost",
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
              rule = "Fuel times price.")
          Double cost,
      @Result(
              key = "co2",
              heading = "CO2",
              unit = "kg",
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
              rule = "Of the fuel.")
          Double co2,
      @Result(
              key = "refuelOn",
              heading = "Refuel by, day",
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
              rule = "Day on which the usable tank is empty from the first start on.")
          LocalDate refuelOn,
      @Result(
              key = "refuelAt",
              heading = "Refuel by",
              unit = ProjectTables.CLOCK,
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
              rule = "Time of that day.")
          Double refuelAt) {}

  /** Beside a reading. */
  @Table(key = "readings", heading = "Clamp-meter readings", rows = 40)
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
