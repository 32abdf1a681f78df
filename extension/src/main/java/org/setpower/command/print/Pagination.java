package org.setpower.command.print;

import java.util.ArrayList;
import java.util.List;

/**
 * What of a sheet stands on which pages: stretches of rows that show something, one below another,
 * are kept whole where a page can hold them, and blank rows stand at no end of a page.
 */
final class Pagination {
  /** More blank rows than this, or more than this share of a page, end a page. */
  private static final int FEW_ROWS = 15;

  private static final double FEW = 0.35;

  /** Where less of a page is left, a stretch that is longer than a page begins on the next. */
  private static final double LITTLE = 0.4;

  /**
   * Rows that show something.
   *
   * @param first its first row
   * @param last its last row
   * @param blank how many blank rows are above it; hidden ones do not count
   * @param gap their height
   * @param height its own
   * @param begins whether somebody has said that a page begins here
   * @param headed whether it has the rows that are printed again on each page
   */
  record Stretch(
      int first, int last, int blank, double gap, double height, boolean begins, boolean headed) {}

  /** Rows that are printed together, from a new page on. */
  record Part(int first, int last) {}

  private Pagination() {}

  /**
   * Divides stretches, from the top of a sheet to its end, among pages of this height.
   *
   * @param head the height of the rows that are printed again at the top of each later page
   */
  static List<Part> of(List<Stretch> stretches, double page, double head) {
    List<Part> parts = new ArrayList<>();
    int first = stretches.get(0).first();
    double used = 0;
    Stretch before = null;
    for (Stretch next : stretches) {
      if (before != null && breaks(next, used, page)) {
        parts.add(new Part(first, before.last()));
        first = next.first();
        used = head + next.height();
      } else {
        used += (before == null ? 0 : next.gap()) + next.height();
      }
      used -= page * Math.floor(used / page);
      before = next;
    }
    parts.add(new Part(first, stretches.get(stretches.size() - 1).last()));
    return parts;
  }

  private static boolean breaks(Stretch next, double used, double page) {
    boolean blank = next.blank() > FEW_ROWS || next.gap() > FEW * page;
    boolean fits = used + next.gap() + next.height() <= page;
    boolean mayRunOn = (next.height() > page || next.headed()) && used < page * (1 - LITTLE);
    return next.begins() || blank || !fits && !mayRunOn;
  }
}
