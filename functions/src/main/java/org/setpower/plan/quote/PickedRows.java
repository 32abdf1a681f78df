package org.setpower.plan.quote;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.quote.QuoteInputs.Pick;
import org.setpower.plan.quote.terms.LineType;

/** What was picked for each row of the quote: pieces, serials, whether it goes on the carnet. */
final class PickedRows {
  private final Map<Integer, List<Finding>> findings = new HashMap<>();
  private final Map<Integer, Pick> byLine = new HashMap<>();
  private final Set<Integer> contradicted = new HashSet<>();

  PickedRows(Map<Integer, QuoteLine> lines, InputRows<Pick> rows) {
    Set<Integer> seen = new HashSet<>();
    Set<Integer> twice = new HashSet<>();
    rows.filled()
        .filter(r -> r.value().line() != null && !seen.add(number(r.value())))
        .forEach(r -> twice.add(number(r.value())));
    rows.filled()
        .forEach(
            r -> {
              findings.put(r.number(), judge(r, lines, twice));
              boolean stops = !QuoteRules.stops(findings.get(r.number())).isEmpty();
              if (stops && r.value().line() != null) {
                contradicted.add(number(r.value()));
              }
            });
  }

  private static int number(Pick pick) {
    return (int) Math.rint(pick.line());
  }

  private List<Finding> judge(
      InputRow<Pick> row, Map<Integer, QuoteLine> lines, Set<Integer> twice) {
    List<Finding> wrong = new ArrayList<>(row.findings());
    Pick pick = row.value();
    if (pick.line() == null) {
      return wrong;
    }
    QuoteLine line = lines.get(number(pick));
    if (line == null || pick.line() != Math.rint(pick.line())) {
      wrong.add(Finding.of(QuoteFinding.PICK_LINE, pick.line()));
    } else if (!line.isOrdered()) {
      wrong.add(Finding.of(QuoteFinding.PICK_NOT_ORDERED, pick.line()));
    } else if (twice.contains(number(pick))) {
      wrong.add(Finding.of(QuoteFinding.PICK_TWICE, pick.line()));
    } else if (pick.item() != null && !line.isCalled(pick.item())) {
      String item = line.item().item() == null ? "—" : line.item().item();
      wrong.add(Finding.of(QuoteFinding.RETURN_ITEM, pick.line(), item));
    } else if (wrong.isEmpty()) {
      byLine.put(number(pick), pick);
      boolean other = pick.qty() != null && !pick.qty().equals(line.item().qty());
      if (other && line.item().qty() != null) {
        wrong.add(Finding.of(QuoteFinding.PICKED_OTHER, pick.qty(), line.item().qty()));
      }
      judgeSame(wrong, lines, line, pick);
      judgeSerials(wrong, line, pick);
      boolean known = line.stock().map(s -> s.origin() != null).orElse(false);
      if (isOnCarnet(pick) && !known) {
        wrong.add(Finding.of(QuoteFinding.NO_ORIGIN));
      }
    }
    return wrong;
  }

  /** Of several rows with the item the quantity may show which is meant; else the number alone. */
  private static void judgeSame(
      List<Finding> wrong, Map<Integer, QuoteLine> lines, QuoteLine line, Pick pick) {
    boolean isShown =
        pick.qty() != null
            && pick.qty().equals(line.item().qty())
            && lines.values().stream()
                .filter(l -> l != line && isSame(l, line))
                .noneMatch(l -> pick.qty().equals(l.item().qty()));
    if (!isShown) {
      others(lines, line)
          .ifPresent(o -> wrong.add(Finding.of(QuoteFinding.PICK_SAME_ITEM, pick.line(), o)));
    }
  }

  static boolean isSame(QuoteLine one, QuoteLine other) {
    return one.identity().equals(other.identity());
  }

  /** The numbers of the other ordered rows with the item of a row; empty without one. */
  static Optional<String> others(Map<Integer, QuoteLine> lines, QuoteLine line) {
    String numbers =
        lines.values().stream()
            .filter(l -> l != line && l.isOrdered() && isSame(l, line))
            .map(l -> String.valueOf(l.row().number()))
            .collect(Collectors.joining(", "));
    return numbers.isEmpty() ? Optional.empty() : Optional.of(numbers);
  }

  private static void judgeSerials(List<Finding> wrong, QuoteLine line, Pick pick) {
    Double pieces = pick.qty() == null ? line.item().qty() : pick.qty();
    Optional<Integer> serials = Optional.ofNullable(pick.serials()).flatMap(Serials::count);
    if (pieces != null && serials.isPresent() && serials.get() != pieces.doubleValue()) {
      wrong.add(Finding.of(QuoteFinding.PICK_SERIALS, serials.get().doubleValue(), pieces));
    }
  }

  /** The rows of Picking that are a stop. */
  List<Integer> stopped() {
    return findings.entrySet().stream()
        .filter(e -> !QuoteRules.stops(e.getValue()).isEmpty())
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }

  private static boolean isOnCarnet(Pick pick) {
    return Boolean.TRUE.equals(pick.carnet());
  }

  List<Finding> findings(int row) {
    return findings.get(row);
  }

  /** Whether the picking is begun and a row that goes out with the kit is not on it. */
  boolean isLeftOut(QuoteLine line) {
    return !findings.isEmpty()
        && line.isOrdered()
        && line.type() != LineType.SERVICE
        && !byLine.containsKey(line.row().number())
        && !contradicted.contains(line.row().number());
  }

  Optional<String> serials(QuoteLine line) {
    return Optional.ofNullable(byLine.get(line.row().number())).map(Pick::serials);
  }

  /**
   * How many pieces go out: those picked, else those ordered; null where the picking contradicts
   * itself.
   */
  Double pieces(QuoteLine line) {
    Pick pick = byLine.get(line.row().number());
    if (contradicted.contains(line.row().number())) {
      return null;
    }
    return pick == null || pick.qty() == null ? line.item().qty() : pick.qty();
  }

  boolean isOnCarnet(QuoteLine line) {
    return Optional.ofNullable(byLine.get(line.row().number()))
        .map(PickedRows::isOnCarnet)
        .orElse(false);
  }
}
