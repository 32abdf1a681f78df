package org.setpower.hire;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setpower.base.EvaluationException;

/** The days of a hire that are charged. */
public final class HireDays {
  /** A hire longer than ten years is a slip of the pen. */
  public static final int MOST_DAYS = 3660;

  private HireDays() {}

  /** Calendar days from the day out to the day back; both count. */
  public static int calendar(LocalDate out, LocalDate back) {
    if (back.isBefore(out)) {
      throw new EvaluationException(HireErrorCode.BACK_BEFORE_OUT, out, back);
    }
    long days = ChronoUnit.DAYS.between(out, back) + 1;
    if (days > MOST_DAYS) {
      throw new EvaluationException(HireErrorCode.TOO_LONG, out, back, MOST_DAYS);
    }
    return (int) days;
  }

  /**
   * Charged days: of every seven days from the day out on, and of what is left over, at most {@code
   * daysPerWeek}; in all no fewer than {@code least}.
   *
   * @param daysPerWeek days charged for a week, above 0 and up to 7; three is common
   * @param least fewest days charged
   */
  public static double charged(
      LocalDate out, LocalDate back, double daysPerWeek, double least, Weekend weekend) {
    int days = calendar(out, back);
    double charged = 0;
    int inWeek = 0;
    for (int i = 0; i < days; i++) {
      if (weekend.counts(out.plusDays(i), out, back)) {
        inWeek++;
      }
      if (i % 7 == 6 || i == days - 1) {
        charged += Math.min(inWeek, daysPerWeek);
        inWeek = 0;
      }
    }
    return Math.max(charged, least);
  }

  /**
   * One row of a schedule.
   *
   * @param row its place, for refusals
   */
  public record Day(int row, LocalDate date, String kind) {}

  /**
   * Charged days by kind of day: each date counts once, with the highest share of its kinds.
   *
   * @param shares the share of a day that a kind is charged
   * @param out first day that counts; {@code null} for the first of the schedule
   * @param back last day that counts; {@code null} for the last
   * @param least fewest days charged
   * @throws EvaluationException for a kind without a share
   */
  public static double byKind(
      List<Day> days, Map<String, Double> shares, LocalDate out, LocalDate back, double least) {
    if (out != null && back != null) {
      calendar(out, back);
    }
    Map<LocalDate, Double> charged = new HashMap<>();
    for (Day day : days) {
      Double share = shares.get(plain(day.kind));
      if (share == null) {
        throw new EvaluationException(HireErrorCode.UNKNOWN_KIND, day.row, day.kind);
      }
      boolean inside =
          (out == null || !day.date.isBefore(out)) && (back == null || !day.date.isAfter(back));
      if (inside) {
        charged.merge(day.date, share, Math::max);
      }
    }
    return Math.max(charged.values().stream().mapToDouble(Double::doubleValue).sum(), least);
  }

  /** A kind of day as it is compared: case and outer spaces do not matter. */
  public static String plain(String kind) {
    return kind.strip().toLowerCase(Locale.ROOT);
  }
}
