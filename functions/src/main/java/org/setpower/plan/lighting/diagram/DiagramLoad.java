package org.setpower.plan.lighting.diagram;

import java.util.List;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.InrushClass;

/**
 * What of a row stands at one place.
 *
 * @param table key of its table: loads, or outlets that have no place
 * @param row its number, from 1
 * @param quantity pieces at this place; NaN where there is no count
 * @param kind null where it is not known
 * @param lamp whether it is a light as far as its row says
 * @param off whether its group is not counted
 * @param see what feeds it and is a stop, for which it is one; empty where its own stops tell
 */
public record DiagramLoad(
    String table,
    int row,
    String item,
    double quantity,
    InrushClass kind,
    boolean lamp,
    boolean off,
    Verdict verdict,
    List<Finding> stops,
    String see) {
  public DiagramLoad {
    stops = List.copyOf(stops);
  }
}
