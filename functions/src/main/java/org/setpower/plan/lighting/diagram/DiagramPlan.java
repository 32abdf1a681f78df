package org.setpower.plan.lighting.diagram;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.MeasureSystem;

/**
 * What the diagram shows of a calculated plan.
 *
 * @param day the day shown; null for all days
 * @param stops stops of Project, which hold for every row
 * @param roots sources first, then what no source feeds
 * @param loose rows that belong to no place of the tree
 * @param places how many sources, distros and rows of Outlets have which verdict
 * @param runs how many cable runs have which verdict
 * @param loads how many rows of Loads have which verdict
 * @param singles whether there are sets of single-core cables
 */
public record DiagramPlan(
    MeasureSystem units,
    LocalDate day,
    List<Finding> stops,
    List<DiagramNode> roots,
    List<DiagramLoad> loose,
    Map<Verdict, Integer> places,
    Map<Verdict, Integer> runs,
    Map<Verdict, Integer> loads,
    boolean singles) {
  public DiagramPlan {
    stops = List.copyOf(stops);
    roots = List.copyOf(roots);
    loose = List.copyOf(loose);
    places = Map.copyOf(places);
    runs = Map.copyOf(runs);
    loads = Map.copyOf(loads);
  }
}
