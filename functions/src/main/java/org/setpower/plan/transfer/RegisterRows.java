package org.setpower.plan.transfer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.pack.Chemistry;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.register.Condition;
import org.setpower.plan.register.RegisterInputs.Battery;
import org.setpower.plan.register.RegisterInputs.BatteryType;
import org.setpower.plan.register.Status;
import org.setpower.plan.travel.TravelChemistry;

/** What a battery register has for others: how many may go out, and the state of each serial. */
final class RegisterRows {
  private final TransferSource register;

  private RegisterRows(TransferSource register) {
    this.register = register;
  }

  /** By type, those that may go out and are in. */
  static List<TransferBatch> stock(TransferSource register, TransferOptions options) {
    return List.of(new RegisterRows(register).stock());
  }

  /** By serial, whatever its state: the travel list stops what may not travel. */
  static List<TransferBatch> travel(TransferSource register, TransferOptions options) {
    return List.of(new RegisterRows(register).travel());
  }

  private TransferBatch stock() {
    Map<String, String> names = new LinkedHashMap<>();
    Map<String, Integer> fit = new HashMap<>();
    List<String> withheld = new ArrayList<>();
    register
        .typed("batteries")
        .forEach(
            r -> {
              Battery battery = (Battery) r.value();
              String key = Identity.of(battery.type());
              boolean isGone = battery.retired() != null || battery.condition() == Condition.LOST;
              boolean isThere = isFit(r) && battery.outTo() == null && !isGone;
              if (!key.isEmpty()) {
                names.putIfAbsent(key, battery.type());
                fit.merge(key, isThere ? 1 : 0, Integer::sum);
              }
              if (!isThere && !isGone) {
                withheld.add(battery.serial() == null ? "?" : battery.serial());
              }
            });
    List<TransferRow> rows = new ArrayList<>();
    names.forEach(
        (key, name) -> {
          Map<String, Object> cells = new LinkedHashMap<>();
          cells.put("type", name);
          cells.put("owned", (double) fit.get(key));
          rows.add(new TransferRow(key, cells));
        });
    return new TransferBatch(TransferTarget.BATTERY_STOCK, rows, withheld);
  }

  private boolean isFit(InputRow<?> row) {
    return Boolean.TRUE.equals(register.beside(row, "batteries").get("fit"));
  }

  private TransferBatch travel() {
    Map<String, TravelChemistry> chemistries = chemistries();
    Set<String> seen = new HashSet<>();
    List<TransferRow> rows = new ArrayList<>();
    List<String> withheld = new ArrayList<>();
    register
        .typed("batteries")
        .forEach(
            r -> {
              Battery battery = (Battery) r.value();
              String key = Identity.of(battery.serial());
              if (key.isEmpty()) {
                withheld.add("?");
              } else if (battery.condition() == Condition.LOST) {
                withheld.add(battery.serial());
              } else if (seen.add(key)) {
                TravelChemistry chemistry = chemistries.get(Identity.of(battery.type()));
                String group = isFit(r) ? "" : TransferRow.UNFIT;
                rows.add(new TransferRow(key, group, cells(r, battery, chemistry)));
              }
            });
    return new TransferBatch(TransferTarget.TRAVEL_BATTERIES, rows, withheld);
  }

  private Map<String, Object> cells(InputRow<?> row, Battery battery, TravelChemistry chemistry) {
    Map<String, Object> cells = new LinkedHashMap<>();
    cells.put("battery", battery.serial());
    put(cells, "type", battery.type());
    put(cells, "energy", battery.energy());
    cells.put("quantity", 1.0);
    put(cells, "chemistry", chemistry == null ? null : chemistry.word());
    put(cells, "condition", battery.condition() == null ? null : battery.condition().word());
    Object status = register.beside(row, "batteries").get("status");
    // a state that is not known is no state that may travel
    cells.put("register", status instanceof Status known ? known.word() : Status.UNCLEAR.word());
    put(cells, "un383", battery.un383() == null ? null : battery.un383() ? "yes" : "no");
    return cells;
  }

  private static void put(Map<String, Object> cells, String key, Object value) {
    if (value != null) {
      cells.put(key, value);
    }
  }

  private Map<String, TravelChemistry> chemistries() {
    Map<String, TravelChemistry> chemistries = new HashMap<>();
    register
        .typed("types")
        .map(r -> (BatteryType) r.value())
        .filter(t -> t.chemistry() != null)
        .forEach(t -> chemistries.putIfAbsent(Identity.of(t.type()), of(t.chemistry())));
    return chemistries;
  }

  /** A lead battery of which nobody says that it is sealed counts as one that spills. */
  private static TravelChemistry of(Chemistry chemistry) {
    return switch (chemistry) {
      case LI_ION, NCA -> TravelChemistry.LI_ION;
      case LFP -> TravelChemistry.LFP;
      case NIMH -> TravelChemistry.NICKEL;
      case LEAD -> TravelChemistry.LEAD_WET;
    };
  }
}
