package org.setpower.plan.lighting.network;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.plan.finding.Identity;

/** Numbers of outlets as a cell holds them: 4, 1–6, 1…6, or a list of such. */
final class OutletNumbers {
  private static final int HIGHEST = 999;
  private static final int MOST = 96;
  private static final Pattern RANGE =
      Pattern.compile("(\\d{1,3})(?:(?:\\.{2,3}|-|TO)(\\d{1,3}))?");

  private OutletNumbers() {}

  /** The numbers in rising order as typed; empty where they cannot be read. */
  static List<Integer> parse(String text) {
    List<Integer> numbers = new ArrayList<>();
    for (String part : Identity.of(text).split("[,;+]", -1)) {
      Matcher range = RANGE.matcher(part);
      if (!range.matches()) {
        return List.of();
      }
      int from = Integer.parseInt(range.group(1));
      int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
      if (from < 1 || to < from || to > HIGHEST || numbers.size() + to - from + 1 > MOST) {
        return List.of();
      }
      for (int n = from; n <= to; n++) {
        if (numbers.contains(n)) {
          return List.of();
        }
        numbers.add(n);
      }
    }
    return numbers;
  }
}
