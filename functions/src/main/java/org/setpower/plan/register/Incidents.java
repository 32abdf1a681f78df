package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.register.Condition.Consequence;
import org.setpower.plan.register.RegisterInputs.Battery;
import org.setpower.plan.register.RegisterInputs.Incident;
import org.setpower.plan.register.SerialRange.Match;

/**
 * Damage and recalls: which batteries a row is about, and whether a battery is released from it.
 *
 * <p>A battery is released when the row was closed by a technician who did not report it, with date
 * and reason, and the battery has an inspection and a compared test, both later than the day of the
 * incident; unless only contacts or a label were worn, the test has all cell voltages. A recall
 * needs the maker's written reference too. Swollen, leaking, hot and burnt batteries are never
 * released.
 */
final class Incidents {
  private static final Pattern TECHNICIAN = Pattern.compile("TECHNICIAN[^A-Z]*[A-Z]?");

  private static final int NAMED = 5;

  /** Fewer cell voltages show no imbalance, so they release nothing. */
  private static final int FEWEST_CELLS = 2;

  private final Settings settings;
  private final BenchTests bench;
  private final Map<String, Integer> cells;
  private final List<Case> cases;

  /** How many rows have each number that is one. */
  private final NavigableMap<Integer, Integer> numbers = new TreeMap<>();

  /** A row of Incidents with the range of serials that it names. */
  private record Case(
      InputRow<Incident> row,
      String first,
      String last,
      String type,
      SerialRange range,
      boolean disagrees) {
    Incident incident() {
      return row.value();
    }

    boolean namesRange() {
      return row.cells().containsKey("lastSerial");
    }

    /** Whether somebody filled in the day of its closing. */
    boolean isClosing() {
      return row.cells().containsKey("closed");
    }

    /** Whether neither a serial nor a type is typed. */
    boolean namesNothing() {
      return first.isEmpty() && last.isEmpty() && type.isEmpty();
    }

    /** Whether it names serials. */
    boolean namesSerials() {
      return !first.isEmpty() || namesRange();
    }

    boolean isOtherType(String batteryType) {
      return !type.isEmpty() && !batteryType.isEmpty() && !type.equals(batteryType);
    }

    Match match(String serial, String batteryType) {
      if (namesNothing()) {
        return Match.NO;
      }
      boolean otherType = isOtherType(batteryType);
      if (!namesSerials()) {
        return otherType ? Match.NO : batteryType.isEmpty() ? Match.BY_HAND : Match.YES;
      }
      Match match = matchSerial(serial);
      if (!otherType || match == Match.NO) {
        return match;
      }
      if (!disagrees) {
        return Match.NO;
      }
      return match == Match.YES ? Match.DISAGREES : range == null ? Match.NO : match;
    }

    /** Whether it means a serial, whatever its type. */
    Match matchSerial(String serial) {
      if (!namesRange()) {
        return !serial.isEmpty() && isFirst(serial) ? Match.YES : Match.NO;
      }
      if (!serial.isEmpty() && (serial.equals(first) || serial.equals(last))) {
        return Match.YES;
      }
      return range == null ? Match.BY_HAND : range.match(serial);
    }

    /** A serial that came as a number may have lost the zeros before it. */
    private boolean isFirst(String serial) {
      return serial.equals(first)
          || row.cells().get("serial") instanceof Number
              && SerialRange.withoutZeros(serial).equals(first);
    }

    /** What it calls for; a word that is not known calls for quarantine. */
    Consequence consequence() {
      Condition happened = incident().happened();
      return happened == null || happened == Condition.FINE
          ? Consequence.QUARANTINE
          : happened.consequence();
    }

    /** Whether cells may be damaged, so that a test without their voltages proves nothing. */
    boolean concernsCells() {
      return consequence() != Consequence.SERVICE
          || incident().happened() == Condition.NOT_CHARGING;
    }
  }

  /**
   * @param batteries all rows of Batteries
   * @param cells most cell voltages in a test of each type
   */
  Incidents(
      Settings settings,
      InputRows<Incident> rows,
      BenchTests bench,
      List<InputRow<Battery>> batteries,
      Map<String, Integer> cells) {
    this.settings = settings;
    this.bench = bench;
    this.cells = cells;
    cases = rows.filled().map(r -> read(r, batteries)).toList();
    cases.forEach(c -> number(c).ifPresent(n -> numbers.merge(n, 1, Integer::sum)));
  }

  private static Case read(InputRow<Incident> row, List<InputRow<Battery>> batteries) {
    String first = Identity.of(row.value().serial());
    String last = Identity.of(row.value().lastSerial());
    Case read =
        new Case(
            row,
            first,
            last,
            Identity.of(row.value().type()),
            first.isEmpty() || last.isEmpty() ? null : SerialRange.between(first, last),
            false);
    return disagrees(read, batteries)
        ? new Case(row, first, last, read.type(), read.range(), true)
        : read;
  }

  /** Whether batteries with the serials that a row names are there, but none of its type. */
  private static boolean disagrees(Case c, List<InputRow<Battery>> batteries) {
    if (c.type().isEmpty() || !c.namesSerials()) {
      return false;
    }
    List<String> types =
        batteries.stream()
            .filter(b -> c.matchSerial(Identity.of(b.value().serial())) == Match.YES)
            .map(b -> Identity.of(b.value().type()))
            .toList();
    return !types.isEmpty() && types.stream().allMatch(c::isOtherType);
  }

  private static Optional<Integer> number(Case c) {
    Double typed = c.incident().number();
    return typed == null || typed != Math.rint(typed)
        ? Optional.empty()
        : Optional.of(typed.intValue());
  }

  private double nextNumber() {
    return numbers.isEmpty() ? 1 : numbers.lastKey() + 1;
  }

  /** Numbers from 1 to the highest that no row has: rows that were cleared, or skipped numbers. */
  int missing() {
    return numbers.isEmpty() ? 0 : numbers.lastKey() - numbers.size();
  }

  /** What is wrong with the number of a row. */
  private List<Finding> numbering(Case c) {
    Optional<Integer> number = number(c);
    if (number.isEmpty()) {
      return List.of(Finding.of(RegisterFinding.INCIDENT_NUMBER, nextNumber()));
    }
    List<Finding> findings = new ArrayList<>();
    double rows = numbers.get(number.get());
    if (rows > 1) {
      double typed = number.get();
      findings.add(Finding.of(RegisterFinding.INCIDENT_NUMBER_TWICE, typed, rows, nextNumber()));
    }
    Integer before = numbers.lowerKey(number.get());
    int first = before == null ? 1 : before + 1;
    if (first < number.get()) {
      String missing =
          IntStream.range(first, number.get())
              .limit(NAMED)
              .mapToObj(String::valueOf)
              .collect(Collectors.joining(", "));
      findings.add(
          Finding.of(
              RegisterFinding.INCIDENT_MISSING,
              missing + (number.get() - first > NAMED ? ", …" : "")));
    }
    return findings;
  }

  /** What the rows say of a battery: adds a finding and the state for each that is open. */
  void judge(InputRow<Battery> battery, BatteryJudge judge) {
    String serial = Identity.of(battery.value().serial());
    String type = Identity.of(battery.value().type());
    Condition condition = battery.value().condition();
    boolean noted = false;
    Case closed = null;
    for (Case c : cases) {
      Match match = c.match(serial, type);
      if (match == Match.BY_HAND) {
        judge.add(
            Status.UNCLEAR,
            Finding.of(RegisterFinding.RECALL_BY_HAND, named(c.incident().serial())));
      }
      if (match == Match.DISAGREES) {
        noted |= c.incident().happened() == condition;
        judge.add(
            Status.QUARANTINE,
            Finding.of(
                RegisterFinding.INCIDENT_OTHER_TYPE,
                c.incident().happened() == null ? "–" : c.incident().happened().word(),
                named(c.incident().date()),
                c.incident().type()));
      }
      if (match == Match.YES) {
        boolean same = c.incident().happened() == condition;
        List<Finding> missing = missing(c, battery);
        if (!missing.isEmpty()) {
          noted |= same;
          open(c, missing, same, judge);
        } else if (same && (closed == null || isLater(c, closed))) {
          closed = c;
        }
      }
    }
    if (!noted && condition != null && condition != Condition.FINE) {
      judge.add(
          Status.KEEP,
          closed == null
              ? Finding.of(RegisterFinding.ENTER_INCIDENT, condition.word(), nextNumber())
              : Finding.of(
                  RegisterFinding.CONDITION_CLOSED,
                  condition.word(),
                  closed.incident().date(),
                  nextNumber()));
    }
  }

  private static boolean isLater(Case one, Case other) {
    return one.incident().date().isAfter(other.incident().date());
  }

  /**
   * Adds what an open incident calls for.
   *
   * @param same whether the condition of the battery says so already
   */
  private static void open(Case c, List<Finding> missing, boolean same, BatteryJudge judge) {
    Condition happened = c.incident().happened();
    if (happened == null || happened == Condition.FINE || c.row().isUnreadable()) {
      judge.add(
          Status.QUARANTINE,
          Finding.of(RegisterFinding.INCIDENT_UNCLEAR, (double) c.row().number()));
      return;
    }
    Object day = named(c.incident().date());
    if (same && (!c.isClosing() || c.consequence() == Consequence.RETIRE_ONLY)) {
      return;
    }
    if (c.consequence() == Consequence.RETIRE_ONLY) {
      judge.add(
          Status.QUARANTINE,
          Finding.of(RegisterFinding.INCIDENT_RETIRE_ONLY, happened.word(), day));
    } else if (c.consequence() == Consequence.SERVICE) {
      judge.add(Status.SERVICE, Finding.of(RegisterFinding.INCIDENT_SERVICE, happened.word(), day));
    } else if (c.isClosing()) {
      Finding first = missing.stream().min(Finding.WORST_FIRST).orElseThrow();
      judge.add(
          Status.QUARANTINE,
          Finding.of(RegisterFinding.INCIDENT_NOT_CLOSED, happened.word(), day, first));
    } else {
      judge.add(Status.QUARANTINE, Finding.of(RegisterFinding.INCIDENT_OPEN, happened.word(), day));
    }
  }

  /**
   * Whether a battery was released after a day from an incident of cell voltage or of anything else
   * that puts it in quarantine.
   */
  boolean isReleasedSince(InputRow<Battery> battery, LocalDate day) {
    String serial = Identity.of(battery.value().serial());
    String type = Identity.of(battery.value().type());
    return cases.stream()
        .filter(c -> c.match(serial, type) == Match.YES)
        .filter(c -> c.consequence() == Consequence.QUARANTINE)
        .filter(c -> c.incident().date() != null && !c.incident().date().isBefore(day))
        .anyMatch(c -> missing(c, battery).isEmpty());
  }

  /**
   * The day of the last incident of a battery that its cells may have suffered from; null without
   * one. What was measured before it says nothing of the battery now.
   */
  LocalDate lastOfCells(InputRow<Battery> battery) {
    String serial = Identity.of(battery.value().serial());
    String type = Identity.of(battery.value().type());
    return cases.stream()
        .filter(c -> c.concernsCells() && c.incident().date() != null)
        .filter(c -> c.match(serial, type) == Match.YES)
        .map(c -> c.incident().date())
        .max(LocalDate::compareTo)
        .orElse(null);
  }

  /** What is missing for the release of a battery. */
  private List<Finding> missing(Case c, InputRow<Battery> battery) {
    List<Finding> missing = new ArrayList<>(missing(c));
    LocalDate day = c.incident().date();
    Battery b = battery.value();
    if (day == null) {
      return missing;
    }
    boolean inspected =
        b.inspected() != null
            && b.inspectedBy() != null
            && b.inspected().isAfter(day)
            && !b.inspected().isAfter(settings.asOf());
    if (!inspected) {
      missing.add(Finding.of(RegisterFinding.CLOSING_INSPECTION, named(b.serial())));
    } else if (maybeSame(b.inspectedBy(), c.incident().reportedBy())) {
      missing.add(
          Finding.of(RegisterFinding.CLOSING_INSPECTOR, named(b.serial()), b.inspectedBy()));
    }
    LocalDate closed = c.incident().closed();
    String serial = Identity.of(b.serial());
    OptionalInt measured =
        closed == null ? OptionalInt.empty() : bench.cellsBetween(serial, day, closed);
    if (bench.cellsBetween(serial, day, settings.asOf()).isEmpty()) {
      missing.add(Finding.of(RegisterFinding.CLOSING_TEST, named(b.serial())));
    } else if (measured.isEmpty()) {
      missing.add(Finding.of(RegisterFinding.CLOSING_TEST_LATER, named(b.serial()), named(closed)));
    } else if (c.concernsCells()) {
      int all = Math.max(FEWEST_CELLS, cells.getOrDefault(Identity.of(b.type()), 0));
      if (measured.getAsInt() < all) {
        missing.add(
            Finding.of(
                RegisterFinding.CLOSING_CELLS,
                named(b.serial()),
                (double) measured.getAsInt(),
                (double) all));
      }
    }
    return missing;
  }

  /**
   * Whether two roles may be one person: technician 2 and technician 02 are, and technician alone
   * may be any of them.
   */
  private static boolean maybeSame(String one, String other) {
    String a = role(one);
    String b = role(other);
    String shorter = a.length() < b.length() ? a : b;
    return a.equals(b)
        || shorter.matches("\\p{L}+") && (a.startsWith(shorter) && b.startsWith(shorter));
  }

  private static String role(String typed) {
    return Identity.of(typed)
        .replaceAll("[^\\p{L}\\p{N}]", "")
        .replaceAll("^TECHNICIANN[OR](?=\\d)", "TECHNICIAN")
        .replaceAll("(?<!\\d)0+(?=\\d)", "");
  }

  /** What is missing for closing the row, whatever the battery. */
  private List<Finding> missing(Case c) {
    Incident i = c.incident();
    List<Finding> missing = new ArrayList<>(c.row().findings());
    if (i.happened() == Condition.FINE) {
      missing.add(Finding.of(RegisterFinding.INCIDENT_FINE));
    }
    if (c.consequence() == Consequence.RETIRE_ONLY) {
      missing.add(Finding.of(RegisterFinding.CLOSING_NEVER, i.happened().word()));
    }
    if (i.closed() == null || i.date() == null) {
      missing.add(Finding.of(RegisterFinding.CLOSING_DATE));
    } else if (!i.closed().isAfter(i.date())) {
      missing.add(Finding.of(RegisterFinding.CLOSING_BEFORE, i.closed(), i.date()));
    } else if (i.closed().isAfter(settings.asOf())) {
      missing.add(Finding.of(RegisterFinding.CLOSING_LATER, i.closed()));
    }
    if (!TECHNICIAN.matcher(Identity.of(i.closedBy())).matches()) {
      missing.add(Finding.of(RegisterFinding.CLOSING_ROLE, named(i.closedBy())));
    }
    if (i.reportedBy() == null) {
      missing.add(Finding.of(RegisterFinding.CLOSING_UNREPORTED));
    } else if (maybeSame(i.reportedBy(), i.closedBy())) {
      missing.add(Finding.of(RegisterFinding.CLOSING_REPORTER, named(i.closedBy())));
    }
    if (i.reason() == null) {
      missing.add(Finding.of(RegisterFinding.CLOSING_REASON));
    }
    if (i.happened() == Condition.RECALLED && i.reference() == null) {
      missing.add(Finding.of(RegisterFinding.CLOSING_REFERENCE));
    }
    return missing;
  }

  /**
   * The results of the rows, by row number.
   *
   * @param batteries all rows of Batteries
   * @param types identities of all types
   */
  Map<Integer, RegisterResults.IncidentResult> results(
      List<InputRow<Battery>> batteries, Set<String> types) {
    Map<Integer, RegisterResults.IncidentResult> results = new LinkedHashMap<>();
    for (Case c : cases) {
      Map<Match, List<InputRow<Battery>>> matches =
          batteries.stream()
              .collect(
                  Collectors.groupingBy(
                      b ->
                          c.match(Identity.of(b.value().serial()), Identity.of(b.value().type()))));
      List<InputRow<Battery>> about = matches.getOrDefault(Match.YES, List.of());
      List<InputRow<Battery>> open =
          about.stream()
              .filter(b -> !BatteryJudge.isGone(b.value(), settings))
              .filter(b -> !missing(c, b).isEmpty())
              .toList();
      List<Finding> findings = new ArrayList<>(c.row().findings());
      findings.addAll(numbering(c));
      findings.addAll(unclear(c, matches, types, settings.asOf()));
      if (c.isClosing()) {
        findings.addAll(missing(c));
        open.forEach(b -> findings.addAll(missing(c, b)));
      } else if (!open.isEmpty()) {
        findings.add(Finding.of(RegisterFinding.INCIDENT_ROW_OPEN, (double) open.size()));
      }
      List<Finding> sorted = findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
      results.put(
          c.row().number(),
          new RegisterResults.IncidentResult(
              Finding.verdict(sorted), sorted, about.size(), open.size()));
    }
    return results;
  }

  private static List<Finding> unclear(
      Case c, Map<Match, List<InputRow<Battery>>> matches, Set<String> types, LocalDate today) {
    List<Finding> findings = new ArrayList<>();
    Incident i = c.incident();
    int byHand = matches.getOrDefault(Match.BY_HAND, List.of()).size();
    boolean nobody = !matches.containsKey(Match.YES) && byHand == 0;
    boolean isRange = c.range() != null && c.namesRange();
    if (c.namesNothing()) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_NOWHERE));
    }
    if (!c.type().isEmpty() && !types.contains(c.type())) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_TYPE, i.type()));
    }
    if (c.namesRange() && c.range() == null) {
      findings.add(
          Finding.of(RegisterFinding.INCIDENT_RANGE, named(i.serial()), named(i.lastSerial())));
    } else if (c.disagrees()) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_DISAGREES, i.type()));
    } else if (nobody && !c.first().isEmpty() && !c.namesRange()) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_SERIAL, i.serial()));
    } else if (nobody && (isRange || types.contains(c.type()))) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_NOBODY));
    }
    if (isRange && c.range().isTurned()) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_TURNED, i.serial(), i.lastSerial()));
    }
    if (byHand > 0) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_BY_HAND, (double) byHand));
    }
    if (i.happened() == Condition.FINE) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_FINE));
    }
    if (i.date() != null && i.date().isAfter(today)) {
      findings.add(Finding.of(RegisterFinding.INCIDENT_LATER, i.date()));
    }
    return findings;
  }

  /** A value for a sentence: a dash where there is none. */
  static Object named(Object value) {
    return value == null ? "–" : value;
  }
}
