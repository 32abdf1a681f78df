package org.setpower.plan.transfer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.batteryday.BatteryDayInputs.Charger;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.BatteryDayInputs.PowerDraw;
import org.setpower.plan.batteryday.BatteryDayInputs.Stock;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.transfer.PlanToQuote.PlanItem;

/** What a battery plan has for a quote: batteries, chargers, and the devices on them. */
final class BatteryRows {
  private final TransferSource plan;
  private final TransferOptions options;
  private final List<PlanItem> items = new ArrayList<>();
  private final List<String> withheld = new ArrayList<>();

  private BatteryRows(TransferSource plan, TransferOptions options) {
    this.plan = plan;
    this.options = options;
  }

  static List<TransferBatch> quote(TransferSource plan, TransferOptions options) {
    BatteryRows rows = new BatteryRows(plan, options);
    rows.batteries();
    rows.chargers();
    rows.devices();
    return List.of(PlanToQuote.batch(rows.items, options, rows.withheld));
  }

  /** The whole list is what the plan has decided to hire; what is short is for the user to add. */
  private void batteries() {
    Map<String, Double> counted = new HashMap<>();
    plan.typed("stock")
        .forEach(
            r -> {
              Stock stock = (Stock) r.value();
              if (isRead(r, stock.type())) {
                double hired = stock.hired() == null ? 0 : stock.hired();
                // what is short is that of the type, in each of its rows
                boolean isFirst = counted.put(Identity.of(stock.type()), hired) == null;
                Object missing = plan.beside(r, "stock").get("shortOf");
                double shortOf = isFirst && missing instanceof Integer pieces ? pieces : 0;
                add(stock.type(), hired, shortOf);
              }
            });
  }

  /** Chargers whose names differ only in a number at the end are pieces of one item. */
  private void chargers() {
    plan.typed("chargers")
        .forEach(
            r -> {
              String name = ((Charger) r.value()).charger();
              if (isRead(r, name)) {
                add(name.replaceFirst("(?<=\\S)\\s+\\d+$", ""), 1, 1);
              }
            });
  }

  /** A position with a power is a device by its own name; the others stand in Devices. */
  private void devices() {
    Map<String, Position> positions = new HashMap<>();
    plan.typed("positions")
        .forEach(
            r -> {
              Position position = (Position) r.value();
              if (isRead(r, position.position())) {
                positions.putIfAbsent(Identity.of(position.position()), position);
                if (position.power() != null) {
                  device(position.position(), position, 1);
                }
              }
            });
    plan.typed("devices")
        .forEach(
            r -> {
              PowerDraw device = (PowerDraw) r.value();
              Position position = positions.get(Identity.of(device.position()));
              String name = device.device() == null ? device.position() : device.device();
              if (isRead(r, position == null ? null : name)) {
                device(name, position, pieces(device.quantity()));
              }
            });
  }

  private static double pieces(Double quantity) {
    return quantity == null ? 1 : quantity;
  }

  private void device(String name, Position position, double atEach) {
    double pieces = atEach * pieces(position.quantity());
    // a battery plan does not know whose they are, so not whether they are short
    items.add(new PlanItem(name, position.department(), pieces, 0, null, null, true));
  }

  private boolean isRead(InputRow<?> row, String name) {
    boolean isRead = name != null && Finding.verdict(row.findings()) != Verdict.STOP;
    if (!isRead) {
      withheld.add(name == null ? "#" + row.number() : name);
    }
    return isRead;
  }

  private void add(String item, double required, double missing) {
    items.add(new PlanItem(item, options.word("batteries"), required, missing, null, null));
  }
}
