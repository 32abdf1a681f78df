package org.setpower.plan.quote;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.RandomTables;
import org.setpower.plan.common.Ranges;

/** Quotes to begin tests from: the invented rental desk of the demo. */
final class QuoteSamples {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private QuoteSamples() {}

  /** A date as a cell holds it. */
  static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** House, client and order in full; no item. */
  static Ranges empty() {
    return Ranges.of(QuotePlan.MODEL)
        .row("house", "name", "rental desk", "address", "quay 1", "taxNumber", "T1")
        .set("house", 1, "contact", "desk", "bank", "account 1", "payment", "within 14 days")
        .set("house", 1, "daysPerWeek", 3, "excess", 150, "waivedLoss", "in full")
        .row("client", "name", "production", "billing", "salt works 1")
        .row("order", "number", "Q1", "date", day("2027-01-20"))
        .set("order", 1, "validUntil", day("2027-01-27"), "currency", "EUR", "tax", 0.2)
        .set("order", 1, "out", day("2027-02-01"), "back", day("2027-02-16"), "waiver", 0.08);
  }

  /** The worked example of 1 to 16 February: three-day week, two rates, discount, waiver. */
  static Ranges example() {
    Ranges ranges = empty().set("order", 1, "discount", 0.075, "downPayment", 0.3);
    stock(ranges, "panel", 20);
    stock(ranges, "battery", 20);
    stock(ranges, "stand", 20);
    ranges
        .row("items", "item", "panel", "section", "lighting", "qty", 3, "weekRate", 190)
        .set("items", 1, "secondWeekRate", 140, "rate", 63.35, "discount", 0.1)
        .row("items", "item", "battery", "section", "power", "qty", 10, "rate", 8.15)
        .set("items", 2, "agreedDays", 8)
        .row("items", "item", "stand", "section", "lighting", "qty", 1, "rate", 45.05)
        .set("items", 3, "agreedDays", 8, "discount", 0.3333, "tax", 0.1)
        .row("items", "item", "gel", "qty", 1, "type", "sold", "rate", 86.45)
        .row("items", "item", "delivery", "qty", 1, "type", "service", "rate", 120);
    return ranges;
  }

  /** Adds an item of stock. */
  static Ranges stock(Ranges ranges, String item, int owned) {
    return ranges.row("stock", "item", item, "owned", owned, "value", 500, "weight", 2.5);
  }

  /** A quote in which all rules of the house, sub-hire, stock, returns and terms count. */
  static Ranges full() {
    Ranges ranges = example();
    ranges
        .set("house", 1, "currency", "EUR", "discountOn", "rows without a discount")
        .set("house", 1, "subHireDiscounted", "no", "waiverOn", "hire before discount")
        .set("house", 1, "waiverTax", 0.2, "taxPer", "per line", "minDays", 2, "minAmount", 5000)
        .set("house", 1, "late", "every day", "turnaround", 2, "weekend", "one day")
        .set("client", 1, "contact", "line producer", "delivery", "quay", "purchaseOrder", "P7")
        .set("client", 1, "taxNumber", "T2", "site", "gaffer, telephone 2")
        .set("order", 1, "revision", "2", "replaces", "Q1 revision 1", "agreedDays", 6)
        .set("order", 1, "sentRevision", "Q1 / 2", "sentTotal", 100, "sentKey", 1)
        .set("order", 1, "statedOn", day("2027-02-20"))
        .set("order", 1, "security", 1000, "insuredUntil", day("2027-02-10"), "taxName", "tax")
        .row("items", "item", "haze machine", "section", "lighting", "qty", 1, "rate", 45)
        .set("items", 6, "out", day("2027-02-02"), "back", day("2027-02-05"))
        .set("items", 6, "subFrom", "another house", "subRate", 28, "subDays", 3)
        .set("items", 6, "insteadOf", "smoke machine", "tax", 0, "taxReason", "exempt")
        .row("items", "item", "panel", "qty", 18, "basis", "week")
        .row("items", "item", "crane", "qty", 1, "basis", "on request")
        .set("stock", 1, "outOfService", 1, "dayRate", 55, "weekRate", 165)
        .set(
            "stock",
            1,
            "secondWeekRate",
            120,
            "caution",
            "Do not cover the fan.",
            "also",
            "battery")
        .row("booked", "item", "battery", "qty", 15, "from", day("2027-02-15"))
        .set("booked", 1, "to", day("2027-02-20"))
        .row("booked", "item", "panel", "qty", 10, "from", day("2027-02-18"))
        .set("booked", 2, "to", day("2027-02-20"))
        .row("returns", "line", 1, "item", "panel", "qty", 2, "date", day("2027-02-18"))
        .row("returns", "line", 2, "item", "battery", "qty", 9, "date", day("2027-02-16"))
        .set("returns", 2, "state", "lost")
        .row("returns", "line", 2, "item", "battery", "qty", 1, "date", day("2027-02-15"))
        .set("returns", 3, "state", "damaged")
        .set("stock", 1, "origin", "FR")
        .row("picked", "line", 1, "item", "panel", "qty", 2, "serials", "P1, P2")
        .set("picked", 1, "carnet", "yes")
        .row("picked", "line", 3, "item", "stand", "carnet", "yes")
        .row("terms", "paragraph", "Late returns are charged by the same rule.");
    return ranges;
  }

  /** The example after an export of other content with the same total. */
  static Ranges sent() {
    return example().set("order", 1, "sentRevision", "Q1 / –", "sentTotal", 2741.96, "sentKey", 1);
  }

  /** Slips of the keys: a rate with a nought too many, a return a year late. */
  static Ranges slips() {
    return example()
        .set("stock", 2, "dayRate", 8.15)
        .set("items", 2, "rate", 81.5)
        .set("items", 3, "rate", 0)
        .set("order", 1, "date", day("2027-02-03"))
        .row("returns", "line", 2, "item", "battery", "qty", 10, "date", day("2028-02-16"));
  }

  /** A quote whose hire has the year before, and months of it. */
  static Ranges backdated() {
    return example().set("order", 1, "out", day("2026-02-01"), "back", day("2026-06-16"));
  }

  /** Days by type: 28 January to 9 February of the invented production. */
  static Ranges byDayType() {
    Ranges ranges =
        empty()
            .set("house", 1, "counted", "by type of day", "currency", "GBP")
            .set("order", 1, "out", day("2027-01-28"), "back", day("2027-02-09"))
            .set("order", 1, "exchange", 1.17);
    String[][] days = {
      {"2027-01-28", "prep"},
      {"2027-01-29", "travel"},
      {"2027-01-30", "rig"},
      {"2027-01-31", "off"},
      {"2027-02-01", "shoot"},
      {"2027-02-02", "shoot"},
      {"2027-02-03", "shoot"},
      {"2027-02-04", "night"},
      {"2027-02-05", "shoot"},
      {"2027-02-05", "move"},
      {"2027-02-06", "shoot"},
      {"2027-02-07", "hold"},
      {"2027-02-08", "wrap"},
      {"2027-02-09", "travel"}
    };
    for (String[] day : days) {
      ranges.row("schedule", "date", day(day[0]), "dayType", day[1]);
    }
    for (String type : List.of("prep", "rig", "off", "move", "hold", "wrap")) {
      ranges.row("shares", "dayType", type, "share", 0);
    }
    ranges
        .row("shares", "dayType", "shoot", "share", 1)
        .row("shares", "dayType", "night", "share", 1)
        .row("shares", "dayType", "travel", "share", 0.5);
    ranges.row("items", "item", "camera A", "qty", 1);
    stock(ranges, "camera A", 1).set("stock", 1, "dayRate", 310, "weekRate", 900);
    ranges.row("returns", "line", 1, "item", "camera A", "qty", 1, "date", day("2027-02-11"));
    return ranges;
  }

  /** One of every fault that is not met by chance. */
  static Ranges faults() {
    Ranges ranges = empty();
    ranges
        .set("order", 1, "tax", 0, "validUntil", day("2027-01-02"), "waiver", "")
        .set("house", 1, "currency", "GBP", "bank", "")
        .row("items", "item", "panel", "qty", 1)
        .row("items", "item", "stand", "qty", 1, "secondWeekRate", 9, "rate", 2, "subFrom", "x")
        .row("items", "item", "nothing", "qty", 2.5)
        .row("items", "item", "nothing", "qty", 2, "basis", "week")
        .row("items", "item", "clamp", "qty", 2, "rate", 1, "out", day("2027-03-01"))
        .row("items", "item", "clamp", "qty", 2, "rate", 1, "back", day("2047-03-01"))
        .row("items", "item", "tube", "qty", 2, "rate", 1, "subFrom", "x", "subRate", 3)
        .row("items", "item", "box", "qty", 2, "rate", 1)
        .row("items", "item", "lens", "qty", 2, "rate", 1, "tax", 0.02)
        .row("stock", "item", "panel", "dayRate", 5)
        .row("stock", "item", "stand", "dayRate", 5, "owned", 3)
        .row("stock", "item", "box", "dayRate", 5, "owned", "three")
        .row("booked", "item", "lens", "qty", 1, "from", day("2027-02-15"))
        .set("booked", 1, "to", day("2027-02-10"))
        .row("schedule", "date", day("2027-02-01"), "dayType", "rest")
        .row("picked", "line", 99, "item", "panel")
        .row("picked", "line", 1, "item", "panel")
        .row("picked", "line", 1, "item", "panel")
        .row("returns", "line", 99, "item", "panel", "qty", 1, "date", day("2027-02-16"))
        .row("returns", "line", 2, "item", "panel", "qty", 1, "date", day("2027-02-16"))
        .row("returns", "line", 2, "item", "stand", "qty", 4, "date", day("2027-02-16"))
        .row("returns", "line", 7, "item", "tube", "qty", 1, "date", day("2027-01-16"))
        .row("returns", "line", 9, "item", "lens", "qty", 1, "date", day("2027-02-18"))
        .set("returns", 5, "state", "lost")
        .row("returns", "line", 1, "item", "panel", "qty", 1, "date", day("2027-02-16"));
    return ranges;
  }

  /** A quote in a currency that does not exist, with a day outside the schedule. */
  static Ranges unknownRules() {
    return byDayType()
        .set("order", 1, "currency", "EURO")
        .row("items", "item", "camera A", "qty", 1, "out", day("2027-02-09"), "rate", 1);
  }

  /** Damage and loss under a waiver, a sub-hired piece that is late, rows that are not ordered. */
  static Ranges waived() {
    Ranges ranges = example().set("house", 1, "waivedLoss", "");
    ranges
        .set("items", 2, "subFrom", "another house", "subRate", 3, "subDays", 8)
        .set("items", 2, "netPrice", "yes")
        .row("items", "item", "panel", "qty", 2, "rate", 50, "order", "option")
        .row("items", "item", "stand", "qty", 2, "rate", 50, "order", "dropped")
        .row("returns", "line", 1, "item", "panel", "qty", 1, "date", day("2027-02-16"))
        .set("returns", 1, "state", "damaged", "charge", 400)
        .row("returns", "line", 2, "item", "battery", "qty", 1, "date", day("2027-02-18"))
        .row("returns", "line", 3, "item", "stand", "qty", 1, "date", day("2027-02-16"))
        .set("returns", 3, "state", "lost");
    return ranges;
  }

  /** As before without an excess, everything given away. */
  static Ranges waivedWithoutExcess() {
    return waived().set("house", 1, "excess", "").set("order", 1, "discount", 1);
  }

  /** No day of the schedule is in the hire. */
  static Ranges notScheduled() {
    return byDayType().set("items", 1, "out", day("2027-03-01"), "back", day("2027-03-02"));
  }

  /** A valid random quote whose rows meet. */
  static Ranges random(int seed, int rows) {
    return new RandomTables(QuotePlan.MODEL, QuoteSamples::values, new Random(seed)).valid(rows);
  }

  /** Cells that make rows of random tables meet, and quotes that may be issued likely. */
  static List<Object> values(InputColumn column) {
    return switch (column.key()) {
      case "item" -> List.of("panel", "panel", "battery", "stand", "Panel ", "lamp");
      case "section" -> List.of("lighting", "power", "lighting");
      case "qty" -> List.of(1.0, 2.0, 3.0, 10.0);
      case "currency" -> List.of("EUR", "EUR", "EUR", "eur", "JPY", "KWD");
      case "exchange" -> List.of(1.17, 0.5, 130.0);
      case "out" -> List.of(46_420.0, 46_420.0, 46_421.0, 46_425.0);
      case "back" -> List.of(46_426.0, 46_427.0, 46_436.0, 46_450.0);
      case "from" -> List.of(46_415.0, 46_422.0);
      case "to" -> List.of(46_422.0, 46_423.0, 46_440.0);
      case "date" ->
          "schedule".equals(column.table())
              ? List.of(46_420.0, 46_421.0, 46_422.0, 46_425.0, 46_426.0)
              : List.of(46_400.0, 46_426.0, 46_430.0, 46_455.0);
      case "dayType" -> List.of("shoot", "shoot", "travel", "prep");
      case "counted" -> List.of("by dates", "by dates", "by dates", "by type of day");
      case "tax", "waiverTax" -> List.of(0.0, 0.055, 0.1, 0.2, 0.19, 0.25);
      case "taxReason" -> List.of("exempt", "reverse charge");
      case "discount" -> List.of(0.0, 0.1, 0.075, 0.3333);
      case "waiver" -> List.of(0.0, 0.08, 0.12);
      case "basis" -> List.of("", "", "day", "day", "week", "once", "on request");
      case "rate", "dayRate" -> List.of(63.35, 8.15, 45.05, 0.335, 310.0);
      case "weekRate" -> List.of(190.0, 20.45, 1000.0);
      case "secondWeekRate" -> List.of(140.0, 15.0);
      case "subRate" -> List.of(28.0, 72.25, 900.0);
      case "agreedDays", "subDays" -> List.of(1.5, 3.0, 6.0, 8.0, 20.0);
      case "minDays" -> List.of(1.0, 2.0, 5.0);
      case "minAmount" -> List.of(100.0, 5000.0);
      case "turnaround" -> List.of(0.0, 1.0, 4.0);
      case "line" -> List.of(1.0, 1.0, 2.0, 3.0, 4.0, 77.0);
      case "owned" -> List.of(0.0, 5.0, 12.0);
      case "outOfService" -> List.of(0.0, 1.0);
      case "insuredUntil" -> List.of(46_425.0, 46_500.0);
      case "sentRevision" -> List.of("Q1 / 2", "");
      case "validUntil" -> List.of(46_300.0, 46_410.0, 46_440.0);
      default -> List.of();
    };
  }
}
