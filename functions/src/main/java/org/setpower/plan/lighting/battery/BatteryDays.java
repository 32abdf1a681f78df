package org.setpower.plan.lighting.battery;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.setpower.plan.batteryday.BatteryDayFinding;
import org.setpower.plan.batteryday.BatteryDayPlan;
import org.setpower.plan.batteryday.BatteryDayResults;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.lighting.input.BatteryTables;
import org.setpower.plan.lighting.input.BatteryTables.BatteryCharger;
import org.setpower.plan.lighting.input.BatteryTables.BatteryLoad;
import org.setpower.plan.lighting.input.BatteryTables.BatteryType;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.ProjectTables.LoadGroup;
import org.setpower.plan.lighting.input.ProjectTables.ShootDay;
import org.setpower.plan.lighting.load.DayClock;
import org.setpower.plan.lighting.load.PlannedLoad;

/**
 * Runs each day with lights on batteries by the model of the battery plan: types, lights and
 * chargers become its rows, and what it finds wrong comes back to the rows here. A battery begins a
 * day as the night before left it. A charger takes place, hours and watts from its rows of Loads,
 * so that what it draws counts in the distribution too.
 */
public final class BatteryDays {
  /** Days that one plan is run for; a change elsewhere asks for the same ones again. */
  private static final int MOST_KEPT = 64;

  /** A box to tick on paper. */
  private static final String TICK = "☐";

  private static final double LAST_MINUTE = 1439 / 1440.0;

  private static final Map<List<Object>, PlanResult> KEPT =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, PlanResult> eldest) {
          return size() > MOST_KEPT;
        }
      };

  private final LightingInputs inputs;
  private final MeasureSystem units;
  private final LocalDate shown;
  private final List<Finding> stops;
  private final List<PlannedLoad> charging;
  private final Map<Integer, List<Finding>> typeFindings = new HashMap<>();
  private final Map<Integer, List<Finding>> loadFindings = new HashMap<>();
  private final Map<Integer, List<Finding>> chargerFindings = new HashMap<>();
  private final Map<Integer, DayFindings> dayTypes = new TreeMap<>();
  private final Map<Integer, DayFindings> dayLoads = new TreeMap<>();
  private final Map<Integer, DayFindings> dayChargers = new TreeMap<>();
  private final Set<Integer> clearLoads = new HashSet<>();
  private final Set<Integer> clearChargers = new HashSet<>();
  private final Map<Integer, String> names = new TreeMap<>();
  private final Map<Integer, Double> watts = new HashMap<>();
  private final Map<LocalDate, Day> days = new TreeMap<>();

  /** One row of the battery plan's tables. */
  private record Row(Map<String, Object> cells) {
    static Row of(Object... keysAndCells) {
      Map<String, Object> cells = new LinkedHashMap<>();
      for (int i = 0; i < keysAndCells.length; i += 2) {
        if (keysAndCells[i + 1] != null) {
          cells.put((String) keysAndCells[i], keysAndCells[i + 1]);
        }
      }
      return new Row(cells);
    }
  }

  /**
   * A day that was run.
   *
   * @param chargers row of Chargers by the row of the battery plan
   * @param power watts of the rows of Loads by row of Chargers
   */
  private record Day(
      PlanResult result, List<Integer> loads, List<Integer> chargers, Map<Integer, Double> power) {
    <R> List<R> rows(String table, Class<R> type) {
      ResultTable<?> declared =
          BatteryDayPlan.MODEL.results().stream()
              .filter(t -> t.key().equals(table))
              .findFirst()
              .orElseThrow();
      return result.rows(declared).stream().map(type::cast).toList();
    }
  }

  /**
   * Runs the days.
   *
   * @param fit rows of Loads that may be plugged in
   */
  public BatteryDays(LightingInputs inputs, LightingSettings settings, List<PlannedLoad> fit) {
    this.inputs = inputs;
    units = settings.units();
    shown = settings.dayShown();
    stops = settings.stops();
    charging = fit;
    inputs.batteryTypes().filled().forEach(r -> typeFindings.put(r.number(), own(r)));
    inputs.batteryChargers().filled().forEach(this::judgeCharger);
    Map<String, Double> equipment = new HashMap<>();
    for (InputRow<Equipment> row : LightingInputs.sorted(inputs.equipment())) {
      if (row.value().watts() != null && row.unreadable().isEmpty()) {
        equipment.putIfAbsent(Identity.of(row.value().item()), row.value().watts());
      }
    }
    inputs.batteryLoads().filled().forEach(r -> judgeLoad(r, equipment));
    run();
    name(dayTypes, typeFindings);
    name(dayLoads, loadFindings);
    name(dayChargers, chargerFindings);
  }

  private static List<Finding> own(InputRow<?> row) {
    return new ArrayList<>(row.findings());
  }

  private void judgeCharger(InputRow<BatteryCharger> row) {
    List<Finding> findings = own(row);
    String charger = row.value().charger();
    boolean plugged =
        charging.stream()
            .anyMatch(l -> Identity.of(l.row().value().item()).equals(Identity.of(charger)));
    if (charger != null && !plugged) {
      findings.add(Finding.of(LightingFinding.CHARGER_UNPLUGGED, charger));
    }
    chargerFindings.put(row.number(), findings);
  }

  private void judgeLoad(InputRow<BatteryLoad> row, Map<String, Double> equipment) {
    List<Finding> findings = own(row);
    BatteryLoad load = row.value();
    if (load.item() != null) {
      Double power =
          load.watts() == null && !row.unreadable().contains("watts")
              ? equipment.get(Identity.of(load.item()))
              : load.watts();
      if (power == null && !row.unreadable().contains("watts")) {
        findings.add(Finding.of(LightingFinding.BATTERY_WATTS, load.item()));
      } else {
        watts.put(row.number(), power);
      }
      boolean again = names.containsValue(load.item());
      names.put(row.number(), again ? load.item() + " #" + row.number() : load.item());
    }
    loadFindings.put(row.number(), findings);
  }

  private Set<LocalDate> dates() {
    return inputs
        .days()
        .filled()
        .map(r -> r.value().date())
        .filter(Objects::nonNull)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private void run() {
    if (!stops.isEmpty()) {
      loadFindings.values().forEach(f -> add(f, stops));
      return;
    }
    Set<LocalDate> dates = dates();
    if (dates.isEmpty()) {
      loadFindings.values().forEach(f -> f.add(Finding.of(BatteryDayFinding.NO_DAY)));
      return;
    }
    // what a day finds wrong does not take the rows out of the next
    loadFindings.forEach((row, own) -> addIf(clearLoads, row, own));
    chargerFindings.forEach((row, own) -> addIf(clearChargers, row, own));
    Map<String, Double> charges = new TreeMap<>();
    LocalDate last = Collections.max(dates);
    for (LocalDate date : dates) {
      List<InputRow<BatteryLoad>> on =
          inputs.batteryLoads().filled().filter(r -> isOn(r, date)).toList();
      if (!on.isEmpty()) {
        Day day = day(date, on, charges);
        days.put(date, day);
        collect(date, day, date.equals(last));
        if (changes().size() > BatteryResults.CHANGE_ROW.rows()) {
          add(
              loadFindings.get(on.get(0).number()),
              List.of(Finding.of(BatteryDayFinding.TOO_MANY_CHANGES)));
          return;
        }
        for (var battery : day.rows("batteries", BatteryDayResults.BatteryResult.class)) {
          if (battery.next() != null) {
            charges.put(battery.number(), battery.next());
          }
        }
      }
    }
  }

  private static void addIf(Set<Integer> clear, int row, List<Finding> own) {
    if (own.stream().allMatch(f -> f.severity() == Severity.CHECK)) {
      clear.add(row);
    }
  }

  private boolean isOn(InputRow<BatteryLoad> row, LocalDate date) {
    BatteryLoad load = row.value();
    return clearLoads.contains(row.number())
        && (load.fromDay() == null || !date.isBefore(load.fromDay()))
        && (load.toDay() == null || !date.isAfter(load.toDay()))
        && !isOff(load.group());
  }

  private boolean isOff(String group) {
    return group != null
        && inputs
            .groups()
            .filled()
            .map(InputRow::value)
            .filter(g -> Boolean.FALSE.equals(g.on()))
            .map(LoadGroup::group)
            .anyMatch(g -> Identity.of(g).equals(Identity.of(group)));
  }

  private Day day(LocalDate date, List<InputRow<BatteryLoad>> on, Map<String, Double> charges) {
    Map<String, List<Row>> tables = new HashMap<>();
    tables.put(
        "project",
        List.of(
            Row.of(
                "units",
                "metric",
                "day",
                InputColumn.serial(date),
                "today",
                InputColumn.serial(date),
                "dayBegins",
                clock(morning(date)))));
    tables.put("days", inputs.days().filled().map(this::dayRow).toList());
    List<Row> types = new ArrayList<>();
    List<Row> stock = new ArrayList<>();
    for (InputRow<BatteryType> row : inputs.batteryTypes().rows()) {
      Map<String, Object> cells = new LinkedHashMap<>(row.cells());
      Object owned = cells.remove("owned");
      types.add(new Row(cells));
      if (!row.isBlank() && row.value().type() != null && owned != null) {
        stock.add(Row.of("type", row.value().type(), "owned", row.value().owned()));
      } else {
        stock.add(Row.of());
      }
    }
    tables.put("types", types);
    tables.put("stock", stock);
    tables.put("positions", on.stream().map(this::position).toList());
    tables.put("devices", on.stream().map(this::device).toList());
    tables.put(
        "atCall",
        charges.entrySet().stream()
            .map(e -> Row.of("number", e.getKey(), "charge", e.getValue()))
            .toList());
    List<Row> supplies = new ArrayList<>();
    List<Row> chargers = new ArrayList<>();
    List<Integer> chargerRows = new ArrayList<>();
    Map<Integer, Double> power = new HashMap<>();
    for (InputRow<BatteryCharger> row : inputs.batteryChargers().filled().toList()) {
      if (clearChargers.contains(row.number())) {
        for (PlannedLoad load : pluggedOn(date, row.value())) {
          String name = row.value().charger() + " " + load.row().value().place();
          double all = load.watts() * load.quantity();
          boolean again = supplies.stream().anyMatch(s -> name.equals(s.cells.get("supply")));
          String supply = again ? name + " #" + load.row().number() : name;
          supplies.add(Row.of("supply", supply, "watts", all));
          for (int i = 1; i <= load.quantity(); i++) {
            String own = load.quantity() > 1 ? supply + " " + i : supply;
            chargers.add(charger(own, supply, row.value(), load, date));
            chargerRows.add(row.number());
          }
          power.merge(row.number(), all, Double::sum);
        }
      }
    }
    tables.put("supplies", supplies);
    tables.put("chargers", chargers);
    return new Day(
        calculated(ranges(tables)), on.stream().map(InputRow::number).toList(), chargerRows, power);
  }

  /** Times of a day before this one belong to its next morning; no call of any day does. */
  private Double morning(LocalDate date) {
    DayClock clock = null;
    double earliest = 1;
    for (InputRow<ShootDay> row : inputs.days().filled().toList()) {
      DayClock own = DayClock.of(row.value().call(), row.value().wrap());
      earliest = Math.min(earliest, own.call());
      if (date.equals(row.value().date())) {
        clock = clock == null ? own : clock.and(own);
      }
    }
    return Math.min(earliest, clock.morning());
  }

  private Row dayRow(InputRow<ShootDay> row) {
    ShootDay day = row.value();
    return Row.of(
        "date",
        day.date() == null ? null : InputColumn.serial(day.date()),
        "call",
        day.call() == null ? (Object) 0.0 : day.call(),
        "wrap",
        clock(day.wrap() == null ? (Double) 1.0 : day.wrap()),
        "min",
        day.coldest() == null ? null : units.toCelsius(day.coldest()),
        "max", // without its hours the coldest holds all day, but leads are rated in the warmest
        day.warmest() == null || day.coldest() == null ? null : units.toCelsius(day.warmest()),
        "atCall",
        "full");
  }

  private Row position(InputRow<BatteryLoad> row) {
    BatteryLoad load = row.value();
    return Row.of(
        "position",
        names.get(row.number()),
        "volts",
        load.volts(),
        "type",
        load.battery(),
        "measured",
        load.measured() == null ? null : InputColumn.share(load.measured()),
        "quantity",
        load.quantity() == null ? null : Math.ceil(load.quantity()));
  }

  private Row device(InputRow<BatteryLoad> row) {
    BatteryLoad load = row.value();
    return Row.of(
        "position",
        names.get(row.number()),
        "watts",
        watts.get(row.number()),
        "minVolts",
        load.minVolts(),
        "maxVolts",
        load.maxVolts(),
        "converter",
        load.converter(),
        "from",
        clock(load.from()),
        "to",
        clock(load.to()));
  }

  private List<PlannedLoad> pluggedOn(LocalDate date, BatteryCharger charger) {
    return charging.stream()
        .filter(l -> Identity.of(l.row().value().item()).equals(Identity.of(charger.charger())))
        .filter(
            l ->
                (l.row().value().fromDay() == null || !date.isBefore(l.row().value().fromDay()))
                    && (l.row().value().toDay() == null || !date.isAfter(l.row().value().toDay())))
        .toList();
  }

  private Row charger(
      String name, String supply, BatteryCharger kind, PlannedLoad load, LocalDate date) {
    Double from = load.row().value().from();
    Double to = load.row().value().to();
    List<ShootDay> windows =
        inputs.days().filled().map(InputRow::value).filter(d -> date.equals(d.date())).toList();
    double call =
        windows.stream().mapToDouble(d -> d.call() == null ? 0 : d.call()).min().orElse(0);
    ShootDay last = windows.get(windows.size() - 1);
    double wrap = last.wrap() == null ? 1 : last.wrap();
    boolean always = from == null && to == null && call == 0 && wrap == 1;
    return Row.of(
        "charger",
        name,
        "supply",
        supply,
        "channels",
        kind.channels(),
        "amps",
        kind.amps(),
        "volts",
        kind.volts(),
        "types",
        kind.types(),
        "atOnce",
        kind.atOnce(),
        "efficiency",
        kind.efficiency(),
        "powerFrom",
        always ? null : clock(from == null ? (Double) call : from),
        "powerTo",
        always ? null : clock(to == null ? (Double) wrap : to),
        "roundTrip",
        kind.roundTrip(),
        "air",
        kind.air() == null ? null : units.toCelsius(kind.air()),
        "warmUp",
        kind.warmUp());
  }

  /** A time as the battery plan reads it, which knows no 24:00. */
  private static Double clock(Double time) {
    return time == null ? null : (Double) Math.min(time, LAST_MINUTE);
  }

  private static List<Object> ranges(Map<String, List<Row>> tables) {
    List<Object> ranges = new ArrayList<>();
    for (InputTable<?> table : BatteryDayPlan.MODEL.inputs()) {
      List<Row> rows = tables.getOrDefault(table.key(), List.of());
      List<List<Object>> range = new ArrayList<>();
      List<InputColumn> columns = table.columns();
      if (table.isUpright()) {
        columns.forEach(
            c -> range.add(List.of(c.key(), rows.get(0).cells.getOrDefault(c.key(), ""))));
        range.add(List.of(InputTable.END, ""));
      } else {
        range.add(columns.stream().map(c -> (Object) c.key()).toList());
        for (Row row : rows) {
          range.add(columns.stream().map(c -> row.cells.getOrDefault(c.key(), "")).toList());
        }
        List<Object> end = new ArrayList<>(List.of(InputTable.END));
        columns.stream().skip(1).forEach(c -> end.add(""));
        range.add(end);
      }
      ranges.add(range);
    }
    return ranges;
  }

  private static PlanResult calculated(List<Object> ranges) {
    synchronized (KEPT) {
      return KEPT.computeIfAbsent(
          ranges,
          all ->
              BatteryDayPlan.of(
                  all.stream()
                      .map(
                          t ->
                              (Object)
                                  ((List<?>) t)
                                      .stream()
                                          .map(r -> ((List<?>) r).toArray())
                                          .toArray(Object[][]::new))
                      .toList()));
    }
  }

  /** What days find wrong with a row: in order, each with its days. */
  private static final class DayFindings {
    private final Map<Finding, Set<LocalDate>> findings = new LinkedHashMap<>();
    private final Set<LocalDate> ran = new TreeSet<>();

    void add(LocalDate date, List<Finding> more) {
      ran.add(date);
      more.forEach(f -> findings.computeIfAbsent(f, k -> new TreeSet<>()).add(date));
    }

    /** Without dates where it is so on all days on which the row is used. */
    List<Finding> named() {
      return findings.entrySet().stream()
          .map(e -> e.getValue().equals(ran) ? e.getKey() : named(e.getKey(), e.getValue()))
          .toList();
    }

    private static Finding named(Finding finding, Set<LocalDate> dates) {
      Phrase on =
          dates.stream()
              .map(d -> Phrase.of("{0}", MonthDay.from(d)))
              .reduce((one, other) -> Phrase.of("{0}, {1}", one, other))
              .orElseThrow();
      LightingFinding key =
          switch (finding.severity()) {
            case DANGER -> LightingFinding.BATTERY_NIGHT_DANGER;
            case CHECK -> LightingFinding.BATTERY_NIGHT_CHECK;
            default -> LightingFinding.BATTERY_NIGHT_STOP;
          };
      return Finding.of(key, on, finding);
    }
  }

  private static void add(
      Map<Integer, DayFindings> all, int row, LocalDate date, List<Finding> more) {
    all.computeIfAbsent(row, k -> new DayFindings()).add(date, more);
  }

  private static void name(Map<Integer, DayFindings> ofDays, Map<Integer, List<Finding>> rows) {
    ofDays.forEach((row, found) -> add(rows.get(row), found.named()));
  }

  /** Hands what a day finds wrong to the rows of its own tables. */
  private void collect(LocalDate date, Day day, boolean last) {
    List<Finding> ofDay = new ArrayList<>();
    day.rows("project", BatteryDayResults.ProjectResult.class).stream()
        .flatMap(r -> r.reasons().stream())
        // after the last day there is no next call
        .filter(f -> !last || f.key() != BatteryDayFinding.NOT_READY)
        .forEach(ofDay::add);
    day.rows("days", BatteryDayResults.DayResult.class).stream()
        .filter(r -> r != null && Boolean.TRUE.equals(r.shown()))
        .flatMap(r -> r.reasons().stream())
        .filter(f -> f.key() != BatteryDayFinding.MAX_UNUSED) // its hours cannot be typed here
        .forEach(ofDay::add);
    List<BatteryDayResults.PositionResult> positions =
        day.rows("positions", BatteryDayResults.PositionResult.class);
    List<BatteryDayResults.DeviceResult> devices =
        day.rows("devices", BatteryDayResults.DeviceResult.class);
    for (int i = 0; i < day.loads.size(); i++) {
      int row = day.loads.get(i);
      List<Finding> findings =
          new ArrayList<>(
              positions.get(i).reasons().stream()
                  .filter(f -> f.key() != BatteryDayFinding.DEVICE_STOPS) // which is this row too
                  .toList());
      findings.addAll(devices.get(i).reasons());
      findings.addAll(ofDay);
      add(dayLoads, row, date, findings);
    }
    var types = day.rows("types", BatteryDayResults.TypeResult.class);
    var stock = day.rows("stock", BatteryDayResults.StockResult.class);
    for (int row : typeFindings.keySet()) {
      List<Finding> findings = new ArrayList<>();
      if (types.size() >= row && types.get(row - 1) != null) {
        findings.addAll(ofType(row, types.get(row - 1).reasons()));
      }
      if (stock.size() >= row && stock.get(row - 1) != null) {
        // its type is this row, which says itself what is not clear
        stock.get(row - 1).reasons().stream()
            .filter(f -> f.key() instanceof BatteryDayFinding)
            .filter(f -> f.key() != BatteryDayFinding.TYPE_UNCLEAR)
            .forEach(findings::add);
      }
      add(dayTypes, row, date, findings);
    }
    var chargers = day.rows("chargers", BatteryDayResults.ChargerResult.class);
    for (int i = 0; i < day.chargers.size(); i++) {
      // the rows of Loads say where each is, so none is meant twice
      add(
          dayChargers,
          day.chargers.get(i),
          date,
          chargers.get(i).reasons().stream()
              .filter(f -> f.key() != BatteryDayFinding.CHARGER_MOVED)
              .toList());
    }
  }

  /**
   * What the battery plan finds wrong with a type, without what the row already says here; a cell
   * whose blank is not clear is the one of the row here.
   */
  private List<Finding> ofType(int row, List<Finding> findings) {
    List<Finding> all = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.key() == CommonFinding.BLANK_CELL
          && finding.arguments().get(0) instanceof InputColumn column) {
        Finding blank =
            Finding.of(CommonFinding.BLANK_CELL, BatteryTables.TYPES.column(column.key()));
        if (!typeFindings.get(row).contains(blank)) {
          all.add(blank);
        }
      } else if (finding.key() instanceof BatteryDayFinding) {
        all.add(finding);
      }
    }
    return all;
  }

  private static void add(List<Finding> all, List<Finding> more) {
    more.stream().filter(f -> !all.contains(f)).forEach(all::add);
  }

  /** Findings of a row, its unreadable cells included, worst first. */
  private static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  /** The days that figures are of: the one shown, or all. */
  private List<Day> figures() {
    return days.entrySet().stream()
        .filter(e -> shown == null || shown.equals(e.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** What is wrong with a row of Battery types. */
  public List<Finding> ofType(InputRow<BatteryType> row) {
    List<Finding> findings = new ArrayList<>(typeFindings.get(row.number()));
    String type = Identity.of(row.value().type());
    long same =
        inputs
            .batteryTypes()
            .filled()
            .filter(r -> Identity.of(r.value().type()).equals(type))
            .count();
    if (same > 1 && !type.isEmpty()) {
      findings.add(Finding.of(CommonFinding.DOUBLE_IDENTITY, type, (int) same));
    }
    return sorted(findings);
  }

  /** What is wrong with a row of Lights on batteries. */
  public List<Finding> ofLoad(InputRow<BatteryLoad> row) {
    return sorted(loadFindings.get(row.number()));
  }

  /** What is wrong with a row of Chargers. */
  public List<Finding> ofCharger(InputRow<BatteryCharger> row) {
    return sorted(chargerFindings.get(row.number()));
  }

  /**
   * Batteries of a type for the order.
   *
   * @param stock NaN where it is blank
   */
  public record Order(String type, int pieces, double stock) {}

  /** What the night needs that needs most, of each type. */
  public List<Order> orders() {
    List<Order> orders = new ArrayList<>();
    for (InputRow<BatteryType> row : LightingInputs.sorted(inputs.batteryTypes())) {
      Integer fewest = null;
      for (Day day : days.values()) {
        var stock = day.rows("stock", BatteryDayResults.StockResult.class);
        var type = stock.size() < row.number() ? null : stock.get(row.number() - 1);
        fewest = most(fewest, type == null ? null : type.fewest());
      }
      fewest = most(fewest, uncharged(row));
      if (fewest != null && fewest > 0 && row.value().type() != null) {
        Double owned = row.value().owned();
        orders.add(new Order(row.value().type(), fewest, owned == null ? Double.NaN : owned));
      }
    }
    return orders;
  }

  /**
   * Batteries of a type that last all days, the nights without a charger, where lights on it go
   * dark though each day alone has enough: one is not charged by the next call. Else null.
   */
  private Integer uncharged(InputRow<BatteryType> row) {
    if (!isDark(row.value().type())) {
      return null;
    }
    int sum = 0;
    for (Day day : days.values()) {
      var stock = day.rows("stock", BatteryDayResults.StockResult.class);
      var type = stock.size() < row.number() ? null : stock.get(row.number() - 1);
      Integer one = type == null ? null : most(type.fewest(), type.uncharged());
      Integer fewest = type == null ? null : type.fewest();
      if (fewest != null && fewest > LightingSettings.or(row.value().owned(), 0.0)) {
        return null; // that day alone is short, and says so
      }
      sum += one == null ? 0 : one;
    }
    return sum;
  }

  private boolean isDark(String type) {
    for (Day day : days.values()) {
      var positions = day.rows("positions", BatteryDayResults.PositionResult.class);
      for (InputRow<BatteryLoad> load : inputs.batteryLoads().filled().toList()) {
        int place = day.loads.indexOf(load.number());
        if (place >= 0
            && Identity.of(load.value().battery()).equals(Identity.of(type))
            && positions.get(place).dark() != null
            && positions.get(place).dark() > 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Lights of an item on batteries on the day that has most. */
  public double lights(String item) {
    double most = 0;
    for (LocalDate date : dates()) {
      most =
          Math.max(
              most,
              inputs
                  .batteryLoads()
                  .filled()
                  .filter(r -> Identity.of(r.value().item()).equals(Identity.of(item)))
                  .filter(r -> isOn(r, date))
                  .mapToDouble(r -> Math.ceil(LightingSettings.or(r.value().quantity(), 1.0)))
                  .sum());
    }
    return most;
  }

  /** Beside a row of Battery types. */
  public BatteryResults.TypeResult type(InputRow<BatteryType> row) {
    List<Finding> findings = ofType(row);
    Integer fewest = null;
    Integer uncharged = null;
    Integer shortOf = null;
    for (Day day : figures()) {
      var stock = day.rows("stock", BatteryDayResults.StockResult.class);
      var type = stock.size() < row.number() ? null : stock.get(row.number() - 1);
      fewest = most(fewest, type == null ? null : type.fewest());
      uncharged = most(uncharged, type == null ? null : type.uncharged());
      shortOf = most(shortOf, type == null ? null : type.shortOf());
    }
    Integer all = uncharged(row);
    if (all != null) {
      shortOf = most(shortOf, (int) Math.ceil(all - LightingSettings.or(row.value().owned(), 0.0)));
    }
    return new BatteryResults.TypeResult(
        Finding.verdict(findings), findings, fewest, uncharged, shortOf);
  }

  private static Integer most(Integer one, Integer other) {
    return one == null || other != null && other > one ? other : one;
  }

  /** Beside a row of Lights on batteries. */
  public BatteryResults.LoadResult load(InputRow<BatteryLoad> row) {
    List<Finding> findings = ofLoad(row);
    Double runtime = null;
    Integer changes = null;
    Double dark = null;
    for (Day day : figures()) {
      int place = day.loads.indexOf(row.number());
      if (place >= 0) {
        var position = day.rows("positions", BatteryDayResults.PositionResult.class).get(place);
        Double lasts = position.runtime();
        runtime = runtime == null || lasts != null && lasts < runtime ? lasts : runtime;
        changes = most(changes, position.changes());
        dark =
            dark == null || position.dark() != null && position.dark() > dark
                ? position.dark()
                : dark;
      }
    }
    return new BatteryResults.LoadResult(
        Finding.verdict(findings), findings, runtime, changes, dark);
  }

  /** Beside a row of Chargers. */
  public BatteryResults.ChargerResult charger(InputRow<BatteryCharger> row) {
    List<Finding> findings = ofCharger(row);
    Double power = null;
    Integer charges = null;
    for (Day day : figures()) {
      int sum = 0;
      var chargers = day.rows("chargers", BatteryDayResults.ChargerResult.class);
      for (int i = 0; i < day.chargers.size(); i++) {
        Integer own = chargers.get(i).charges();
        sum += day.chargers.get(i) == row.number() && own != null ? own : 0;
      }
      Double there = day.power.get(row.number());
      if (there != null) {
        power = power == null ? there : Math.max(power, there);
        charges = most(charges, sum);
      }
    }
    return new BatteryResults.ChargerResult(Finding.verdict(findings), findings, power, charges);
  }

  /** The changes of the days that figures are of; too many are a stop, and none is shown. */
  public List<BatteryResults.ChangeRow> changeRows() {
    List<BatteryResults.ChangeRow> rows = changes();
    return rows.size() > BatteryResults.CHANGE_ROW.rows() ? List.of() : rows;
  }

  private List<BatteryResults.ChangeRow> changes() {
    List<BatteryResults.ChangeRow> rows = new ArrayList<>();
    days.forEach(
        (date, day) -> {
          if (shown == null || shown.equals(date)) {
            changes(rows, date, day);
          }
        });
    return rows;
  }

  /** A time before that of the first row is that of the next morning. */
  private static void changes(List<BatteryResults.ChangeRow> rows, LocalDate date, Day day) {
    LocalTime first = null;
    for (var card : day.rows("card", BatteryDayResults.CardRow.class)) {
      first = first == null ? card.by() : first;
      if (!card.isEnd()) {
        boolean isMorning = card.by() != null && card.by().isBefore(first);
        rows.add(
            new BatteryResults.ChangeRow(
                isMorning ? date.plusDays(1) : date,
                card.by(),
                card.position(),
                card.piece(),
                card.what(),
                card.on(),
                card.off(),
                card.to(),
                TICK));
      }
    }
  }
}
