package org.setpower.plan.travel.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;
import org.setpower.flight.FlightClass;
import org.setpower.flight.RuleBook;
import org.setpower.plan.common.Phrase;

/**
 * The limits of one edition for batteries that travel with their owner. A count of {@link #NONE} is
 * no limit.
 *
 * @param validTo last day on which it answers
 * @param read whether its text was read; if not, its limits are those of the edition before
 * @param smallWattHours up to here without an answer of the carrier, the figure included
 * @param largeWattHours up to here with an answer, the figure included
 * @param spares all spares a person
 * @param over spares over the small limit a person
 * @param banksAreSpares whether power banks count with the spares, over the small limit too
 * @param banks power banks a person
 * @param devices batteries in equipment a person
 * @param nickel class of spare nickel and dry batteries
 * @param nickelAreSpares whether these count with the spares
 * @param leadVolts highest voltage of a sealed lead battery
 * @param leadWattHours highest energy of a sealed lead battery
 * @param leadSpares spare sealed lead batteries a person
 * @param metalGrams lithium up to here without an answer
 * @param metalOverGrams lithium up to here with an answer
 * @param more limits above which the carrier may approve more
 * @param confirm limits that are from memory
 */
public record CabinEdition(
    RuleBook rules,
    LocalDate validFrom,
    LocalDate validTo,
    String name,
    boolean read,
    double smallWattHours,
    double largeWattHours,
    int spares,
    int over,
    boolean banksAreSpares,
    int banks,
    int devices,
    FlightClass nickel,
    boolean nickelAreSpares,
    double leadVolts,
    double leadWattHours,
    int leadSpares,
    double metalGrams,
    double metalOverGrams,
    Set<String> more,
    Set<String> confirm,
    String source,
    String basis) {
  /** Its name in the reader's language. */
  public Phrase title() {
    return Phrase.of(name);
  }

  /** A count without a limit. */
  public static final int NONE = Integer.MAX_VALUE;

  private static final class Held {
    static final List<CabinEdition> ALL =
        read(ReferenceTable.read(CabinEdition.class, "editions.csv"));
  }

  private static final TextEnum.Lookup<RuleBook> BOOKS = new TextEnum.Lookup<>(RuleBook.class);
  private static final TextEnum.Lookup<FlightClass> CLASSES =
      new TextEnum.Lookup<>(FlightClass.class);

  private static List<CabinEdition> read(List<ReferenceTable.Row> rows) {
    List<CabinEdition> all = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      ReferenceTable.Row row = rows.get(i);
      boolean follows = i > 0 && rows.get(i - 1).text("rules").equals(row.text("rules"));
      all.add(of(row, follows ? all.get(i - 1) : null, validTo(rows, i)));
    }
    return List.copyOf(all);
  }

  /** The last day: as typed, or the day before the next row. */
  private static LocalDate validTo(List<ReferenceTable.Row> rows, int i) {
    return rows.get(i).blank("valid_to")
        ? LocalDate.parse(rows.get(i + 1).text("valid_from")).minusDays(1)
        : LocalDate.parse(rows.get(i).text("valid_to"));
  }

  private static CabinEdition of(ReferenceTable.Row row, CabinEdition before, LocalDate validTo) {
    Cells cells = new Cells(row);
    return new CabinEdition(
        BOOKS.read("rules", row.text("rules")),
        LocalDate.parse(row.text("valid_from")),
        validTo,
        row.text("name"),
        row.text("read").equals("yes"),
        cells.number("small_wh", before == null ? Double.NaN : before.smallWattHours),
        cells.number("large_wh", before == null ? Double.NaN : before.largeWattHours),
        cells.count("spares", before == null ? 0 : before.spares),
        cells.count("over", before == null ? 0 : before.over),
        cells.yes("banks_are_spares", before != null && before.banksAreSpares),
        cells.count("banks", before == null ? 0 : before.banks),
        cells.count("devices", before == null ? 0 : before.devices),
        row.blank("nickel") && before != null
            ? before.nickel
            : CLASSES.read("nickel", row.text("nickel")),
        cells.yes("nickel_are_spares", before != null && before.nickelAreSpares),
        cells.number("lead_v", before == null ? Double.NaN : before.leadVolts),
        cells.number("lead_wh", before == null ? Double.NaN : before.leadWattHours),
        cells.count("lead_spares", before == null ? 0 : before.leadSpares),
        cells.number("metal_g", before == null ? Double.NaN : before.metalGrams),
        cells.number("metal_over_g", before == null ? Double.NaN : before.metalOverGrams),
        row.blank("more") && before != null ? before.more : Set.of(row.text("more").split(" ")),
        Set.of(row.text("confirm").split(" ")),
        row.source(),
        row.basis());
  }

  /** Cells of a row; a blank one is as before. */
  private record Cells(ReferenceTable.Row row) {
    double number(String column, double before) {
      return row.blank(column) ? before : row.number(column);
    }

    int count(String column, int before) {
      if (row.blank(column)) {
        return before;
      }
      return row.text(column).equals("none") ? NONE : (int) row.number(column);
    }

    boolean yes(String column, boolean before) {
      return row.blank(column) ? before : row.text(column).equals("yes");
    }
  }

  /** Every edition held, in the order of the table. */
  public static List<CabinEdition> all() {
    return Held.ALL;
  }

  /**
   * The edition by which a day is judged: the one of that day, after the last the newest, before
   * the first the oldest. Whether it may be relied on, {@link #answersFor} says.
   */
  public static CabinEdition on(RuleBook rules, LocalDate day) {
    CabinEdition found = null;
    for (CabinEdition edition : Held.ALL) {
      if (edition.rules == rules && (found == null || !edition.validFrom.isAfter(day))) {
        found = edition;
      }
    }
    return found;
  }

  /** The stricter of two at each limit; it answers where both do. */
  public CabinEdition stricter(CabinEdition other) {
    Set<String> both = new TreeSet<>(confirm);
    both.addAll(other.confirm);
    if (banksAreSpares || other.banksAreSpares) {
      both.remove("banks_apart"); // they are counted together here
    }
    return new CabinEdition(
        rules,
        validFrom.isAfter(other.validFrom) ? validFrom : other.validFrom,
        validTo.isBefore(other.validTo) ? validTo : other.validTo,
        name + "; " + other.name,
        read && other.read,
        Math.min(smallWattHours, other.smallWattHours),
        Math.min(largeWattHours, other.largeWattHours),
        Math.min(spares, other.spares),
        Math.min(over, other.over),
        banksAreSpares || other.banksAreSpares,
        Math.min(banks, other.banks),
        Math.min(devices, other.devices),
        nickel.and(other.nickel),
        nickelAreSpares || other.nickelAreSpares,
        Math.min(leadVolts, other.leadVolts),
        Math.min(leadWattHours, other.leadWattHours),
        Math.min(leadSpares, other.leadSpares),
        Math.min(metalGrams, other.metalGrams),
        Math.min(metalOverGrams, other.metalOverGrams),
        Stream.of("spares", "devices")
            .filter(l -> leaves(l) && other.leaves(l))
            .collect(Collectors.toSet()),
        Set.copyOf(both),
        source + "; " + other.source,
        basis.equals(other.basis) ? basis : "memory");
  }

  /** The newest edition of its rules that was read. */
  public CabinEdition lastRead() {
    CabinEdition last = this;
    for (CabinEdition edition : Held.ALL) {
      if (edition.rules == rules && edition.read) {
        last = edition;
      }
    }
    return last;
  }

  /** Whether it was read and answers for the day. */
  public boolean answersFor(LocalDate day) {
    return read && !day.isBefore(validFrom) && !day.isAfter(validTo);
  }

  /** Whether it leaves it to the carrier to approve more than a limit, or has none. */
  public boolean leaves(String limit) {
    return more.contains(limit)
        || limit.equals("spares") && spares == NONE
        || limit.equals("devices") && devices == NONE;
  }

  /** Whether a limit prints "confirm". */
  public boolean isToConfirm(String limit) {
    return confirm.contains(limit) || confirm.contains("all");
  }
}
