package org.setpower.plan.common;

import java.util.List;
import org.setpower.plan.finding.FindingKey;

/** A sheet's model, as the function of the sheet and the generic tests see it. */
public interface PlanModel {
  /** Name of the plan's function without its group, such as {@code register}. */
  String name();

  /** What it calculates, as a noun: {@code battery register}. */
  default String title() {
    return name() + " plan";
  }

  /** Tables to fill, in the order of the function's arguments. */
  List<InputTable<?>> inputs();

  /** Tables of results. */
  List<ResultTable<?>> results();

  /** All keys of this plan's own findings. */
  List<FindingKey> findings();

  /** The patterns of all its {@link Phrase}s, and further words such as those of a drawing. */
  default List<String> phrases() {
    return List.of();
  }

  /**
   * Calculates the plan. Never throws for what is typed.
   *
   * @param ranges one for each of {@link #inputs()}, as {@link InputTable#read} takes it
   */
  PlanResult calculate(List<?> ranges);
}
