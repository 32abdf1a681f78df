package org.setpower.plan.lighting.distro;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.ReferenceTable;
import org.setpower.plan.lighting.input.MeasureSystem;

/**
 * A usual distro.
 *
 * @param name what it makes of what, such as 63 A to 6 × 16 A
 * @param supply cells of its row of Sources and distros
 * @param outlets cells of its rows of Outlets
 * @param run cells of its usual cable
 */
public record DistroKind(
    MeasureSystem units,
    String name,
    Map<String, Object> supply,
    List<Map<String, Object>> outlets,
    Map<String, Object> run) {
  private static final List<DistroKind> ALL = read();

  private static List<DistroKind> read() {
    Map<String, DistroKind> kinds = new LinkedHashMap<>();
    for (ReferenceTable.Row row : ReferenceTable.read(DistroKind.class, "distros.csv")) {
      MeasureSystem units =
          "US".equals(row.text("units")) ? MeasureSystem.US : MeasureSystem.METRIC;
      String name = row.text("kind");
      DistroKind kind = kinds.get(units + name);
      if (kind == null) {
        Map<String, Object> supply = new LinkedHashMap<>(Map.of("type", "distro"));
        if (!row.text("main").isEmpty()) {
          supply.put("breaker", row.number("main"));
        }
        Map<String, Object> run = new LinkedHashMap<>();
        put(run, "size", row.text("cable"));
        put(run, "type", row.text("type"));
        put(run, "cores", row.text("cores"));
        put(run, "temperatureClass", row.text("class"));
        kind = new DistroKind(units, name, supply, new ArrayList<>(), run);
        kinds.put(units + name, kind);
      }
      Map<String, Object> group = new LinkedHashMap<>();
      for (String key : List.of("numbers", "connector", "legs", "breaker", "curve", "rcd")) {
        put(group, key, row.text(key));
      }
      if ("300".equals(group.get("rcd"))) {
        group.put("rcdType", "S");
      }
      if (!row.text("sharing").isEmpty()) {
        group.put("sharing", row.number("sharing"));
      }
      kind.outlets.add(group);
    }
    return List.copyOf(kinds.values());
  }

  private static void put(Map<String, Object> cells, String key, String text) {
    if (!text.isEmpty()) {
      cells.put(key, text);
    }
  }

  /** Amps of its feed, as its name has them first. */
  double feed() {
    return supply.get("breaker") instanceof Double main
        ? main
        : Double.parseDouble(name.replaceFirst("\\D.*", ""));
  }

  /** The usual ones where these units are used. */
  public static List<DistroKind> of(MeasureSystem units) {
    return ALL.stream().filter(k -> k.units == units).toList();
  }
}
