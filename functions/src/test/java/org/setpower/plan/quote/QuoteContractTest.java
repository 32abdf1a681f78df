package org.setpower.plan.quote;

import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanContract;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.Ranges;

/** The quote keeps what every plan keeps. */
public class QuoteContractTest extends PlanContract {
  @Override
  protected PlanModel model() {
    return QuotePlan.MODEL;
  }

  /** Rows of the quote and terms keep their order on the client's page. */
  @Override
  protected Set<String> unordered() {
    return Set.of("stock", "booked", "schedule", "shares", "returns");
  }

  @Override
  protected List<Ranges> samples() {
    return List.of(
        QuoteSamples.full(),
        QuoteSamples.sent(),
        QuoteSamples.slips(),
        QuoteSamples.byDayType(),
        QuoteSamples.faults(),
        QuoteSamples.unknownRules(),
        QuoteSamples.notScheduled(),
        QuoteSamples.waived(),
        QuoteSamples.backdated(),
        QuoteSamples.waivedWithoutExcess(),
        QuoteSamples.empty());
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return QuoteSamples.values(column);
  }
}
