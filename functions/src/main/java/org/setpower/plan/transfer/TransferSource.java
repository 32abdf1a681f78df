package org.setpower.plan.transfer;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.finding.Verdict;

/** A file of a plan that is read: what is typed, and what its plan makes of it. */
public final class TransferSource {
  private final PlanModel model;
  private final List<InputRows<?>> typed;
  private final PlanResult result;

  private TransferSource(PlanModel model, List<InputRows<?>> typed, PlanResult result) {
    this.model = model;
    this.typed = typed;
    this.result = result;
  }

  /**
   * Reads and calculates.
   *
   * @param ranges as {@link PlanModel#calculate} takes them
   */
  public static TransferSource of(PlanModel model, List<?> ranges) {
    List<InputRows<?>> typed = new java.util.ArrayList<>();
    for (int i = 0; i < model.inputs().size(); i++) {
      typed.add(model.inputs().get(i).read(ranges.get(i)));
    }
    return new TransferSource(model, typed, model.calculate(ranges));
  }

  public PlanModel model() {
    return model;
  }

  public PlanResult result() {
    return result;
  }

  /** The filled rows of a table to fill. */
  public Stream<InputRow<?>> typed(String table) {
    return typed.stream()
        .filter(t -> t.table().key().equals(table))
        .flatMap(InputRows::filled)
        .map(r -> (InputRow<?>) r);
  }

  /** The rows of a table of results by column key; an empty one for a blank row. */
  List<Map<String, Object>> results(String table) {
    return result.cells(table);
  }

  /** What is beside a row of a table to fill. */
  Map<String, Object> beside(InputRow<?> row, String table) {
    List<Map<String, Object>> rows = results(table);
    return row.number() <= rows.size() ? rows.get(row.number() - 1) : Map.of();
  }

  /** Whether the row beside is no stop. */
  boolean isFit(InputRow<?> row, String table) {
    Object verdict = beside(row, table).get("verdict");
    return verdict != null && verdict != Verdict.STOP;
  }

  /** How many open issues are a stop. */
  public long stops() {
    return results(IssueRow.KEY).stream().filter(r -> r.get("verdict") == Verdict.STOP).count();
  }
}
