package org.setpower.plan.lighting.input;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.lighting.input.BatteryTables.BatteryCharger;
import org.setpower.plan.lighting.input.BatteryTables.BatteryLoad;
import org.setpower.plan.lighting.input.BatteryTables.BatteryType;
import org.setpower.plan.lighting.input.CableTables.CableStock;
import org.setpower.plan.lighting.input.CableTables.Comparison;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.LoadTables.Reading;
import org.setpower.plan.lighting.input.ProjectTables.LoadGroup;
import org.setpower.plan.lighting.input.ProjectTables.Project;
import org.setpower.plan.lighting.input.ProjectTables.ShootDay;
import org.setpower.plan.lighting.input.ProjectTables.SizeOnOffer;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;

/** The tables to fill of a lighting power plan. */
public record LightingInputs(
    InputRows<Project> project,
    InputRows<ShootDay> days,
    InputRows<LoadGroup> groups,
    InputRows<SizeOnOffer> sizes,
    InputRows<Supply> supplies,
    InputRows<OutletGroup> outlets,
    InputRows<Run> runs,
    InputRows<Load> loads,
    InputRows<Equipment> equipment,
    InputRows<Generator> generators,
    InputRows<CableStock> stock,
    InputRows<Reading> readings,
    InputRows<BatteryType> batteryTypes,
    InputRows<BatteryLoad> batteryLoads,
    InputRows<BatteryCharger> batteryChargers,
    InputRows<Comparison> comparison) {
  private static final int LARGE = 100_000;

  /** In the order of the function's arguments. */
  public static final List<InputTable<?>> TABLES =
      List.of(
          ProjectTables.PROJECT,
          ProjectTables.DAYS,
          ProjectTables.GROUPS,
          ProjectTables.SIZES,
          SupplyTables.SUPPLIES,
          SupplyTables.OUTLETS,
          CableTables.RUNS,
          LoadTables.LOADS,
          LoadTables.EQUIPMENT,
          SupplyTables.GENERATORS,
          CableTables.STOCK,
          LoadTables.READINGS,
          BatteryTables.TYPES,
          BatteryTables.LOADS,
          BatteryTables.CHARGERS,
          CableTables.COMPARISON);

  /** Reads the ranges, in the order of {@link #TABLES}. */
  public static LightingInputs read(List<?> ranges) {
    return new LightingInputs(
        ProjectTables.PROJECT.read(ranges.get(0)),
        ProjectTables.DAYS.read(ranges.get(1)),
        ProjectTables.GROUPS.read(ranges.get(2)),
        ProjectTables.SIZES.read(ranges.get(3)),
        SupplyTables.SUPPLIES.read(ranges.get(4)),
        SupplyTables.OUTLETS.read(ranges.get(5)),
        CableTables.RUNS.read(ranges.get(6)),
        LoadTables.LOADS.read(ranges.get(7)),
        LoadTables.EQUIPMENT.read(ranges.get(8)),
        SupplyTables.GENERATORS.read(ranges.get(9)),
        CableTables.STOCK.read(ranges.get(10)),
        LoadTables.READINGS.read(ranges.get(11)),
        BatteryTables.TYPES.read(ranges.get(12)),
        BatteryTables.LOADS.read(ranges.get(13)),
        BatteryTables.CHARGERS.read(ranges.get(14)),
        CableTables.COMPARISON.read(ranges.get(15)));
  }

  /** All tables, in the order of {@link #TABLES}. */
  public List<InputRows<?>> all() {
    return List.of(
        project,
        days,
        groups,
        sizes,
        supplies,
        outlets,
        runs,
        loads,
        equipment,
        generators,
        stock,
        readings,
        batteryTypes,
        batteryLoads,
        batteryChargers,
        comparison);
  }

  /**
   * Filled rows by what they hold, so that the order of typing changes no last digit of a sum; by
   * cells without a unit of choice first, so that the same plan in other units has the same order.
   */
  public static <T extends Record> List<InputRow<T>> sorted(InputRows<T> rows) {
    TreeMap<String, InputRow<T>> sorted = new TreeMap<>();
    Map<Boolean, List<InputColumn>> columns =
        rows.table().columns().stream()
            .collect(Collectors.partitioningBy(c -> c.unit().contains("|")));
    rows.filled()
        .forEach(
            r -> {
              StringBuilder key = new StringBuilder(200);
              append(key, columns.get(false), r);
              append(key, columns.get(true), r);
              // 100,000 and the number: as many digits in each row
              key.append('|').append(LARGE + r.number());
              sorted.put(key.toString(), r);
            });
    return List.copyOf(sorted.values());
  }

  private static void append(StringBuilder key, List<InputColumn> columns, InputRow<?> row) {
    key.append('{');
    for (InputColumn column : columns) {
      Object cell = row.cells().get(column.key());
      if (cell != null) {
        key.append(column.key()).append('=').append(cell).append(", ");
      }
    }
    key.append('}');
  }
}
