package org.setpower.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/** CO2 from fuel burnt on the spot and from the public grid. */
public final class Emissions {
  private Emissions() {}

  /** kg CO2 from burning litres of a fuel. Source: the row of the table. */
  public static double ofFuel(double litres, Fuel fuel) {
    return litres * Tables.FUELS.get(fuel).number("kg_per_litre");
  }

  /** The source of the factor of a fuel. */
  public static String sourceOf(Fuel fuel) {
    return source(Tables.FUELS.get(fuel));
  }

  /**
   * The mean of a country's grid.
   *
   * @param kgPerKwh kg CO2e
   */
  public record Grid(String country, String iso, int year, double kgPerKwh, String source) {}

  /**
   * The factor of a country's public grid.
   *
   * @param country its English name or its two letters (ISO 3166-1)
   * @param year {@code null} for the newest held
   */
  public static Grid grid(String country, Integer year) {
    String wanted = country.strip().toUpperCase(Locale.ROOT);
    List<Grid> years = Tables.BY_NAME.getOrDefault(wanted, List.of());
    if (years.isEmpty()) {
      throw new EvaluationException(
          BaseErrorCode.UNKNOWN_WORD, "country", TextEnum.shortened(country), Tables.COUNTRIES);
    }
    return years.stream()
        .filter(g -> year == null || g.year == year)
        .max(Comparator.comparingInt(Grid::year))
        .orElseThrow(
            () ->
                new EvaluationException(
                    SupplyErrorCode.NO_GRID_YEAR,
                    String.valueOf(year),
                    years.get(0).country,
                    years.stream()
                        .map(g -> String.valueOf(g.year))
                        .collect(Collectors.joining(", "))));
  }

  private static String source(ReferenceTable.Row row) {
    return row.source() + (row.basis().equals("memory") ? " (from memory: check)" : "");
  }

  /** The tables, read once. */
  private static final class Tables {
    static final Map<Fuel, ReferenceTable.Row> FUELS = fuels();
    static final List<Grid> GRIDS =
        ReferenceTable.read(Emissions.class, "grid_co2.csv").stream()
            .map(
                row ->
                    new Grid(
                        row.text("country"),
                        row.text("iso"),
                        (int) row.number("year"),
                        row.number("kg_per_kwh"),
                        source(row)))
            .toList();
    static final Map<String, List<Grid>> BY_NAME = byName();
    static final String COUNTRIES =
        GRIDS.stream().map(Grid::iso).distinct().sorted().collect(Collectors.joining(", "));

    /** The years of a country, under its letters and under its name. */
    private static Map<String, List<Grid>> byName() {
      Map<String, List<Grid>> all = new HashMap<>();
      for (Grid grid : GRIDS) {
        all.computeIfAbsent(grid.iso, k -> new ArrayList<>()).add(grid);
        all.computeIfAbsent(grid.country.toUpperCase(Locale.ROOT), k -> new ArrayList<>())
            .add(grid);
      }
      return all;
    }

    private static Map<Fuel, ReferenceTable.Row> fuels() {
      TextEnum.Lookup<Fuel> words = new TextEnum.Lookup<>(Fuel.class);
      Map<Fuel, ReferenceTable.Row> fuels = new EnumMap<>(Fuel.class);
      for (ReferenceTable.Row row : ReferenceTable.read(Emissions.class, "fuel_co2.csv")) {
        fuels.put(words.read("fuel", row.text("fuel")), row);
      }
      return fuels;
    }
  }
}
