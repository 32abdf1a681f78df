package org.setpower.plan.quote;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.quote.QuoteInputs.Booking;

/** How many pieces of each item are out by date: rows of the quote and bookings elsewhere. */
final class StockCalendar {
  private final long turnaround;
  private final PriceList list;
  private final Map<String, List<Use>> uses = new HashMap<>();
  private final Map<Integer, List<Finding>> bookingFindings = new HashMap<>();
  private final Set<String> unclear = new HashSet<>();

  /** Pieces that are not on the shelf, last day included. */
  private record Use(LocalDate from, LocalDate to, double qty) {}

  /**
   * The most pieces out at a time.
   *
   * @param day the first on which so many are out
   */
  record Peak(double qty, LocalDate day) {}

  StockCalendar(
      QuoteRules rules, PriceList list, Collection<QuoteLine> lines, InputRows<Booking> booked) {
    this.list = list;
    turnaround = rules.turnaround();
    for (QuoteLine line : lines) {
      if (occupies(line)) {
        add(line.item().item(), line.out(), line.back(), line.item().qty());
      }
    }
    booked.filled().forEach(this::read);
  }

  /** Whether a row takes pieces from the shelf on known days. */
  static boolean occupies(QuoteLine line) {
    return line.isHired()
        && !line.isDropped()
        && !line.isSubHired()
        && line.item().item() != null
        && line.item().qty() != null
        && line.out() != null
        && line.back() != null
        && !line.back().isBefore(line.out());
  }

  private void add(String item, LocalDate from, LocalDate to, double qty) {
    uses.computeIfAbsent(list.identity(item), k -> new ArrayList<>())
        .add(new Use(from, to.plusDays(turnaround), qty));
  }

  private void read(InputRow<Booking> row) {
    Booking booking = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    if (booking.from() != null && booking.to() != null && booking.to().isBefore(booking.from())) {
      findings.add(Finding.of(QuoteFinding.BOOKED_DATES, booking.to(), booking.from()));
    }
    if (findings.isEmpty()) {
      add(booking.item(), booking.from(), booking.to(), booking.qty());
    } else {
      unclear.add(list.identity(booking.item()));
    }
    bookingFindings.put(row.number(), findings);
  }

  List<Finding> bookingFindings(int row) {
    return bookingFindings.get(row);
  }

  /** Whether a booking of the item cannot be read. */
  boolean isUnclear(String item) {
    return unclear.contains(list.identity(item));
  }

  /** The peak while a row is out; it is reached on a day on which something goes out. */
  Optional<Peak> peak(QuoteLine line) {
    if (!occupies(line)) {
      return Optional.empty();
    }
    LocalDate last = line.back().plusDays(turnaround);
    List<Use> of = uses.getOrDefault(line.identity(), List.of());
    Peak peak = new Peak(out(of, line.out()), line.out());
    for (Use use : of) {
      boolean within = use.from.isAfter(line.out()) && !use.from.isAfter(last);
      double qty = within ? out(of, use.from) : 0;
      boolean first = qty == peak.qty && use.from.isBefore(peak.day);
      if (within && (qty > peak.qty || first)) {
        peak = new Peak(qty, use.from);
      }
    }
    return Optional.of(peak);
  }

  private static double out(List<Use> uses, LocalDate day) {
    return uses.stream()
        .filter(u -> !u.from.isAfter(day) && !u.to.isBefore(day))
        .mapToDouble(Use::qty)
        .sum();
  }
}
