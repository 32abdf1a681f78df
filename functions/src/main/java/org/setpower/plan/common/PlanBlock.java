package org.setpower.plan.common;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.text.MessageCatalog;

/**
 * Carries a plan across: ranges of a sheet in, the block of the sheet out. It answers whatever is
 * typed; what cannot be trusted makes every row a stop.
 */
public final class PlanBlock {
  /** Rows of a range: a whole column has a million. */
  private static final int MOST_ROWS = 20_000;

  private PlanBlock() {}

  /**
   * The block.
   *
   * @param answer the range that {@link Answer} reads
   * @param ranges one a table, as {@link InputTable#read} takes it; dates in them are changed
   * @param days from our day zero to that of the document
   */
  public static Object[][] of(PlanModel model, Object answer, List<?> ranges, long days) {
    Optional<Answer> asked = Answer.read(answer);
    if (asked.isEmpty()) {
      Finding unread = Finding.of(CommonFinding.WRONG_ANSWER, "#");
      String sentence = Messages.in(MessageCatalog.ENGLISH).sentence(unread, Locale.ENGLISH);
      return new Object[][] {{Verdict.STOP.code(), sentence}};
    }
    List<Finding> stops = new ArrayList<>();
    String layout = InputTable.layoutHash(model.inputs());
    if (!asked.get().layout().equals(layout)) {
      stops.add(Finding.of(CommonFinding.OTHER_LAYOUT, asked.get().layout(), layout));
    }
    Locale locale = Locale.forLanguageTag(asked.get().language());
    Object[][] block = matrix(model, calculated(model, ranges, days), asked.get(), stops, locale);
    shiftResults(model, asked.get(), block, -days);
    return block;
  }

  private static Object[][] matrix(
      PlanModel model, PlanResult result, Answer answer, List<Finding> stops, Locale locale) {
    Messages messages = Messages.in(answer.language());
    try {
      return result.matrix(answer, stops, messages, locale);
    } catch (RuntimeException | StackOverflowError e) {
      return PlanResult.failed(model, e).matrix(answer, messages, locale);
    }
  }

  /**
   * The calculated plan, or one in which every row stops. Its ranges are those of {@link
   * PlanModel#inputs()}; one that is missing or far too long counts as unreadable.
   */
  public static PlanResult calculated(PlanModel model, List<?> ranges, long days) {
    List<Object> read = read(model, ranges, days);
    try {
      return model.calculate(read);
    } catch (RuntimeException | StackOverflowError e) {
      // a fault of ours must not leave yesterday's verdicts in the sheet
      return PlanResult.failed(model, e);
    }
  }

  /** The ranges as {@link PlanModel#calculate} takes them: all there, in our own dates. */
  public static List<Object> read(PlanModel model, List<?> ranges, long days) {
    List<Object> read = new ArrayList<>();
    for (int i = 0; i < model.inputs().size(); i++) {
      Object range = i < ranges.size() ? ranges.get(i) : null;
      boolean isRange = range instanceof Object[][] cells && cells.length <= MOST_ROWS;
      if (isRange && days != 0) {
        shift(model.inputs().get(i), (Object[][]) range, days);
      }
      read.add(isRange ? range : "#");
    }
    return read;
  }

  private static void shift(InputTable<?> table, Object[][] range, long days) {
    List<String> dates =
        table.columns().stream()
            .filter(c -> c.type() == LocalDate.class)
            .map(InputColumn::key)
            .toList();
    if (table.isUpright()) {
      for (Object[] row : range) {
        if (row != null && row.length > 1 && dates.contains(InputColumn.trimmed(row[0]))) {
          row[1] = shifted(row[1], days);
        }
      }
      return;
    }
    for (int c = 0; range[0] != null && c < range[0].length; c++) {
      if (dates.contains(InputColumn.trimmed(range[0][c]))) {
        for (Object[] row : range) {
          if (row != null && c < row.length) {
            row[c] = shifted(row[c], days);
          }
        }
      }
    }
  }

  private static void shiftResults(PlanModel model, Answer answer, Object[][] block, long days) {
    if (days == 0) {
      return;
    }
    List<String> dates =
        model.results().stream()
            .flatMap(t -> t.columns().stream())
            .filter(c -> c.type() == LocalDate.class)
            .map(ResultColumn::path)
            .toList();
    for (Answer.Band band : answer.bands()) {
      int first = 1 + band.top();
      for (int c = 0; c < band.keys().size(); c++) {
        if (dates.contains(band.keys().get(c))) {
          int place = band.left() + c;
          Arrays.stream(block, first, first + band.rows())
              .forEach(row -> row[place] = shifted(row[place], days));
        }
      }
    }
  }

  private static Object shifted(Object cell, long days) {
    return cell instanceof Double day ? (Object) (day + days) : cell;
  }
}
