package org.setpower.plan.transfer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.setpower.plan.batteryday.BatteryDayPlan;
import org.setpower.plan.budget.BudgetPlan;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.lighting.LightingModel;
import org.setpower.plan.quote.QuotePlan;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.plan.travel.TravelPlan;

/** From which plan into which rows can be brought. */
public enum TransferWay {
  LIGHTING_TO_QUOTE(LightingModel.MODEL, QuotePlan.MODEL, LightingRows::quote),
  BATTERIES_TO_QUOTE(BatteryDayPlan.MODEL, QuotePlan.MODEL, BatteryRows::quote),
  LIGHTING_TO_BUDGET(LightingModel.MODEL, BudgetPlan.MODEL, LightingRows::budget),
  QUOTE_TO_BUDGET(QuotePlan.MODEL, BudgetPlan.MODEL, QuoteToBudget::batches),
  REGISTER_TO_BATTERIES(RegisterPlan.MODEL, BatteryDayPlan.MODEL, RegisterRows::stock),
  REGISTER_TO_TRAVEL(RegisterPlan.MODEL, TravelPlan.MODEL, RegisterRows::travel);

  private final PlanModel from;
  private final PlanModel into;
  private final BiFunction<TransferSource, TransferOptions, List<TransferBatch>> rows;

  TransferWay(
      PlanModel from,
      PlanModel into,
      BiFunction<TransferSource, TransferOptions, List<TransferBatch>> rows) {
    this.from = from;
    this.into = into;
    this.rows = rows;
  }

  /** The way between two plans; empty where there is none. */
  public static Optional<TransferWay> between(PlanModel from, PlanModel into) {
    return Arrays.stream(values()).filter(w -> w.from == from && w.into == into).findFirst();
  }

  /** All ways into a plan. */
  public static List<TransferWay> into(PlanModel plan) {
    return Arrays.stream(values()).filter(w -> w.into == plan).toList();
  }

  /** The plan that is read. */
  public PlanModel from() {
    return from;
  }

  /** The plan that is written to. */
  public PlanModel into() {
    return into;
  }

  /** Whether it may be restricted to what is short. */
  public boolean hasStock() {
    return into == QuotePlan.MODEL;
  }

  /** Whether its rows have days of use. */
  public boolean hasDays() {
    return this == LIGHTING_TO_QUOTE;
  }

  /** What the source has for the plan. */
  public List<TransferBatch> batches(TransferSource source, TransferOptions options) {
    return rows.apply(source, options);
  }
}
