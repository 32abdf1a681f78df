package org.setpower.plan.quote;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.ItemNames;
import org.setpower.plan.quote.QuoteInputs.Stock;

/** The stock by item; an item in two rows, or in one that cannot be read, is not known. */
final class PriceList {
  private final Gate<InputRow<Stock>> gate;
  private final Map<String, InputRow<Stock>> known = new HashMap<>();
  private final Set<String> unclear = new HashSet<>();
  private final ItemNames names;

  PriceList(InputRows<Stock> rows) {
    names = new ItemNames(rows.filled().map(r -> named(r.value())).toList());
    gate =
        new Gate<>(
            rows.filled()
                .map(
                    r ->
                        new Gate.Candidate<>(
                            r.number(),
                            r,
                            Identity.of(r.value().item()),
                            r.value().item(),
                            findings(r, names),
                            false))
                .toList(),
            List.of());
    Gate.Paper<InputRow<Stock>> paper = gate.paper(r -> true);
    paper.fit().forEach(j -> known.put(Identity.of(j.item().value().item()), j.item()));
    paper.withheld().forEach(j -> unclear.add(Identity.of(j.item().value().item())));
  }

  private static ItemNames.Item named(Stock stock) {
    return new ItemNames.Item(stock.item(), stock.also());
  }

  private static List<Finding> findings(InputRow<Stock> row, ItemNames names) {
    List<Finding> findings = new ArrayList<>(row.findings());
    List<String> unclear = names.unclear(named(row.value()));
    if (!unclear.isEmpty()) {
      findings.add(Finding.of(QuoteFinding.ALSO_UNCLEAR, String.join("; ", unclear)));
    }
    return findings;
  }

  Gate<InputRow<Stock>> gate() {
    return gate;
  }

  /** What an item is known by, whichever of its names is typed. */
  String identity(String item) {
    return Identity.of(names.of(item));
  }

  Optional<Stock> of(String item) {
    return Optional.ofNullable(known.get(identity(item))).map(InputRow::value);
  }

  boolean isUnclear(String item) {
    return unclear.contains(identity(item));
  }
}
