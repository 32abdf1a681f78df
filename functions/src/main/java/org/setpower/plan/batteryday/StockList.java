package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.setpower.base.TextEnum;
import org.setpower.plan.batteryday.BatteryDayInputs.Stock;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.batteryday.typed.BatteryNumbers;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Severity;

/** The numbered batteries, and which of them are there on a date. */
final class StockList {
  private final TypeList types;
  private final LocalDate date;
  private final Map<Integer, Integer> firstOf = new HashMap<>();
  private final Map<Integer, List<Finding>> findings = new HashMap<>();
  private final Map<Integer, StockBattery> batteries = new TreeMap<>();
  private final Map<Integer, InputRow<Stock>> rows = new LinkedHashMap<>();
  private final Map<Integer, Integer> addedAbove = new HashMap<>();
  private final Map<Integer, Double> entered;

  /** Whether numbers are typed on Today, so that the batteries are marked with them. */
  private final boolean areMarked;

  private final Set<Integer> putIn = new HashSet<>();

  /**
   * A battery.
   *
   * @param type null where its row is not clear
   * @param row of Battery stock
   */
  record StockBattery(int number, TypeFacts type, int row, BatteryUse use, List<Finding> findings) {
    /** Whether the gate lets it into the plan. */
    boolean isPlanned() {
      return use == BatteryUse.PLANNED;
    }
  }

  /**
   * The batteries on a date.
   *
   * @param gone what was found at call, by number; wins over the row
   * @param entered hour from which a battery is there that is entered on Today, by number: such a
   *     reserve is put in
   */
  StockList(
      BatteryDayInputs inputs,
      TypeList types,
      LocalDate date,
      Map<Integer, BatteryAbsence> gone,
      Map<Integer, Double> entered) {
    this.entered = entered;
    this.types = types;
    this.date = date;
    areMarked =
        inputs.atCall().filled().findAny().isPresent()
            || inputs.atNow().filled().findAny().isPresent();
    Set<Integer> twice = new HashSet<>();
    Map<Integer, Integer> rowOf = new TreeMap<>();
    int next = 1;
    int added = 0;
    for (InputRow<Stock> row : inputs.stock().rows()) {
      if (!row.isBlank()) {
        rows.put(row.number(), row);
        findings.put(row.number(), new ArrayList<>(row.findings()));
        int first = row.value().first() == null ? next : (int) Math.floor(row.value().first());
        int pieces = pieces(row);
        for (int number = first; number < first + pieces; number++) {
          if (rowOf.put(number, row.number()) != null) {
            twice.add(number);
          }
        }
        next = first + pieces;
        firstOf.put(row.number(), first);
        added = row.value().first() == null ? added : 0;
        addedAbove.put(row.number(), added);
        added += hiredToOwned(row);
      }
    }
    rows.values().forEach(r -> judge(r, rowOf, date));
    twice.forEach(
        n ->
            add(rowOf.get(n), Finding.of(BatteryDayFinding.NUMBER_TWICE, BatteryNumbers.shown(n))));
    rowOf.forEach((number, row) -> batteries.put(number, battery(number, row, date, gone)));
    rows.keySet().forEach(this::keepReserve);
  }

  private void add(int row, Finding finding) {
    if (!findings.get(row).contains(finding)) {
      findings.get(row).add(finding);
    }
  }

  private static int pieces(InputRow<Stock> row) {
    return (int)
        (Math.floor(DaySettings.or(row.value().owned(), 0))
            + Math.floor(DaySettings.or(row.value().hired(), 0)));
  }

  private void judge(InputRow<Stock> row, Map<Integer, Integer> rowOf, LocalDate date) {
    Stock stock = row.value();
    for (String key : List.of("owned", "hired", "reserve", "first")) {
      Double typed =
          switch (key) {
            case "owned" -> stock.owned();
            case "hired" -> stock.hired();
            case "reserve" -> stock.reserve();
            default -> stock.first();
          };
      if (typed != null && typed != Math.rint(typed)) {
        add(
            row.number(),
            Finding.of(BatteryDayFinding.NOT_WHOLE, BatteryDayInputs.STOCK.column(key), typed));
      }
    }
    if (stock.type() != null && types.find(stock.type()) == null) {
      add(row.number(), types.refused(stock.type()));
    }
    if (pieces(row) == 0) {
      add(row.number(), Finding.of(BatteryDayFinding.STOCK_NONE));
    }
    judgeFirst(row);
    judgeNumbers(row, stock.lent(), rowOf);
    judgeNumbers(row, stock.out(), rowOf);
    judgeLoan(row, date);
    if (stock.inHandFrom() != null && stock.inHandOn() == null) {
      add(row.number(), Finding.of(BatteryDayFinding.IN_HAND_HALF));
    }
  }

  /** Whether the numbers of a row change, or have, when batteries come in above it. */
  private void judgeFirst(InputRow<Stock> row) {
    Stock stock = row.value();
    boolean top = rows.keySet().iterator().next() == row.number();
    if (top || stock.first() != null || row.unreadable().contains("first") || pieces(row) == 0) {
      return;
    }
    int first = firstOf.get(row.number());
    int added = addedAbove.get(row.number());
    if (added > 0) {
      add(
          row.number(),
          Finding.of(
              BatteryDayFinding.NUMBERS_MOVED,
              (double) added,
              BatteryNumbers.shown(first - added),
              BatteryNumbers.shown(first),
              (double) first));
    } else if (areMarked || stock.lent() != null || stock.out() != null) {
      add(
          row.number(),
          Finding.of(BatteryDayFinding.NUMBERS_MOVE, BatteryNumbers.shown(first), (double) first));
    }
  }

  /** Hired batteries of a row that has own ones: they came in later. */
  private static int hiredToOwned(InputRow<Stock> row) {
    boolean isMixed = DaySettings.or(row.value().owned(), 0) >= 1;
    return isMixed ? (int) Math.floor(DaySettings.or(row.value().hired(), 0)) : 0;
  }

  private void judgeNumbers(InputRow<Stock> row, String typed, Map<Integer, Integer> rowOf) {
    if (typed == null) {
      return;
    }
    Set<Integer> numbers = BatteryNumbers.all(typed);
    if (numbers == null) {
      add(
          row.number(),
          Finding.of(BatteryDayFinding.NUMBERS_UNREADABLE, TextEnum.shortened(typed)));
      return;
    }
    for (int number : numbers) {
      if (rowOf.getOrDefault(number, 0) != row.number()) {
        add(
            row.number(),
            Finding.of(BatteryDayFinding.NUMBER_NOT_HERE, BatteryNumbers.shown(number)));
        return;
      }
    }
  }

  private void judgeLoan(InputRow<Stock> row, LocalDate date) {
    Stock stock = row.value();
    if (stock.lent() != null && stock.lentTo() == null) {
      add(row.number(), Finding.of(BatteryDayFinding.LENT_TO_BLANK));
    }
    boolean crossed =
        stock.lentFrom() != null
            && stock.backOn() != null
            && stock.backOn().isBefore(stock.lentFrom());
    if (crossed) {
      add(row.number(), Finding.of(BatteryDayFinding.LENT_DATES));
    } else if (stock.lent() != null
        && date != null
        && stock.backOn() != null
        && stock.backOn().isBefore(date)) {
      add(
          row.number(),
          Finding.of(
              BatteryDayFinding.LENT_OVERDUE,
              stock.backOn(),
              stock.lentTo() == null ? "—" : stock.lentTo()));
    }
  }

  private static Set<Integer> numbers(String typed) {
    Set<Integer> numbers = typed == null ? null : BatteryNumbers.all(typed);
    return numbers == null ? Set.of() : numbers;
  }

  private StockBattery battery(
      int number, int row, LocalDate date, Map<Integer, BatteryAbsence> gone) {
    Stock stock = rows.get(row).value();
    List<Finding> own = new ArrayList<>();
    BatteryUse use = BatteryUse.PLANNED;
    boolean unclear =
        findings.get(row).stream().anyMatch(f -> f.severity().compareTo(Severity.STOP) >= 0);
    if (unclear) {
      own.add(Finding.of(BatteryDayFinding.BATTERY_ROW));
      use = BatteryUse.UNCLEAR;
    }
    BatteryAbsence absence = gone.get(number);
    if (absence == BatteryAbsence.LENT
        || numbers(stock.lent()).contains(number) && isLent(row, date)) {
      own.add(Finding.of(BatteryDayFinding.BATTERY_LENT));
      use = unclear ? use : BatteryUse.LENT;
    }
    boolean later =
        date != null
            && stock.inHandOn() != null
            && date.isBefore(stock.inHandOn())
            && isHired(number, row);
    if (later) {
      own.add(Finding.of(BatteryDayFinding.BATTERY_COMES, stock.inHandOn()));
      use = use == BatteryUse.PLANNED ? BatteryUse.COMES : use;
    }
    if (absence == BatteryAbsence.QUARANTINE || numbers(stock.out()).contains(number)) {
      own.add(Finding.of(BatteryDayFinding.BATTERY_QUARANTINE));
      use = BatteryUse.QUARANTINE;
    }
    return new StockBattery(number, types.find(stock.type()), row, use, own);
  }

  /** The highest numbers of a row are its hired ones. */
  private boolean isHired(int number, int row) {
    int owned = (int) Math.floor(DaySettings.or(rows.get(row).value().owned(), 0));
    return number >= firstOf.get(row) + owned;
  }

  /** The hour of the date from which a battery is there; minus infinity: at call. */
  double arrival(StockBattery battery, DaySettings settings) {
    Stock stock = rows.get(battery.row()).value();
    boolean today =
        date != null
            && date.equals(stock.inHandOn())
            && stock.inHandFrom() != null
            && isHired(battery.number(), battery.row());
    double delivered = today ? settings.hour(stock.inHandFrom()) : Double.NEGATIVE_INFINITY;
    return isPutIn(battery.number())
        ? Math.max(delivered, entered.get(battery.number()))
        : delivered;
  }

  /** A loan that has no dates holds on every date. */
  private boolean isLent(int row, LocalDate date) {
    Stock stock = rows.get(row).value();
    boolean begun = date == null || stock.lentFrom() == null || !date.isBefore(stock.lentFrom());
    boolean over = date != null && stock.backOn() != null && date.isAfter(stock.backOn());
    return begun && !over;
  }

  /** The highest numbers that are there are kept as reserve. */
  private void keepReserve(int row) {
    int reserve = (int) Math.ceil(DaySettings.or(rows.get(row).value().reserve(), 0));
    List<Integer> there = new ArrayList<>();
    batteries.values().stream()
        .filter(b -> b.row() == row && b.isPlanned())
        .forEach(b -> there.add(0, b.number()));
    if (reserve > there.size()) {
      add(
          row,
          Finding.of(BatteryDayFinding.RESERVE_TOO_LARGE, (double) reserve, (double) there.size()));
    }
    for (int number : there.subList(0, Math.min(reserve, there.size()))) {
      if (entered.containsKey(number)) {
        putIn.add(number);
      } else {
        reserve(number);
      }
    }
  }

  /** Whether it is a reserve that is put in. */
  boolean isPutIn(int number) {
    return putIn.contains(number);
  }

  private void reserve(int number) {
    StockBattery battery = batteries.get(number);
    batteries.put(
        number,
        new StockBattery(
            number,
            battery.type(),
            battery.row(),
            BatteryUse.RESERVE,
            List.of(Finding.of(BatteryDayFinding.BATTERY_RESERVE))));
  }

  /** All batteries by number. */
  Map<Integer, StockBattery> batteries() {
    return batteries;
  }

  /** The gate of the batteries: what it withholds is neither used nor charged. */
  Gate<StockBattery> gate() {
    return gate(batteries.values());
  }

  private static Gate<StockBattery> gate(Collection<StockBattery> all) {
    return new Gate<>(
        all.stream()
            .map(
                b ->
                    new Gate.Candidate<>(
                        b.number(), b, BatteryNumbers.shown(b.number()), b.findings(), false))
            .toList(),
        List.of());
  }

  /** The gate of the batteries after more of them are gone: what it withholds is not fit. */
  Gate<StockBattery> gateWithout(Map<Integer, BatteryAbsence> gone) {
    return gate(
        batteries.values().stream()
            .map(b -> gone.containsKey(b.number()) ? without(b, gone.get(b.number())) : b)
            .toList());
  }

  private static StockBattery without(StockBattery battery, BatteryAbsence absence) {
    boolean lent = absence == BatteryAbsence.LENT;
    List<Finding> own = new ArrayList<>(battery.findings());
    own.removeIf(f -> f.key() == BatteryDayFinding.BATTERY_RESERVE);
    own.add(
        Finding.of(lent ? BatteryDayFinding.BATTERY_LENT : BatteryDayFinding.BATTERY_QUARANTINE));
    boolean worse =
        battery.use() == BatteryUse.QUARANTINE || battery.use() == BatteryUse.UNCLEAR && lent;
    BatteryUse use = lent ? BatteryUse.LENT : BatteryUse.QUARANTINE;
    return new StockBattery(
        battery.number(), battery.type(), battery.row(), worse ? battery.use() : use, own);
  }

  /** The batteries of a row. */
  List<StockBattery> ofRow(int row) {
    return batteries.values().stream().filter(b -> b.row() == row).toList();
  }

  /** What is wrong with a row of Battery stock. */
  List<Finding> findings(int row) {
    return findings.get(row);
  }

  InputRow<Stock> row(int number) {
    return rows.get(number);
  }

  /** The types that can be planned with, by row of Battery types. */
  Set<Integer> plannedTypes() {
    Set<Integer> planned = new TreeSet<>();
    batteries.values().stream()
        .filter(StockBattery::isPlanned)
        .forEach(b -> planned.add(b.type().row()));
    return planned;
  }
}
