package org.setpower.registry.groups;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;

/** The groups of functions. A group is loaded when one of its functions is first asked for. */
public enum FunctionRegistry {
  CABLE(() -> CableFunctions.GROUP),
  LOAD(() -> LoadFunctions.GROUP),
  PHASE(() -> PhaseFunctions.GROUP),
  PACK(() -> PackFunctions.GROUP),
  BANK(() -> BankFunctions.GROUP),
  CHARGE(() -> ChargeFunctions.GROUP),
  FLIGHT(() -> FlightFunctions.GROUP),
  GENSET(() -> GensetFunctions.GROUP),
  HIRE(() -> HireFunctions.GROUP),
  FLEET(() -> FleetFunctions.GROUP),
  PLAN(() -> PlanFunctions.GROUP),
  SHEET(() -> SheetFunctions.GROUP);

  private final Supplier<FunctionGroup> group;

  FunctionRegistry(Supplier<FunctionGroup> group) {
    this.group = group;
  }

  /** The group; its class is loaded by the first call. */
  public FunctionGroup group() {
    return group.get();
  }

  /** Every function, group by group. */
  public static List<FunctionSpec> all() {
    List<FunctionSpec> all = new ArrayList<>();
    for (FunctionRegistry entry : values()) {
      all.addAll(entry.group().functions());
    }
    return List.copyOf(all);
  }

  /** The function with this name in any case, as users type it; loads its group only. */
  public static Optional<FunctionSpec> find(String name) {
    String wanted = name.strip().toUpperCase(Locale.ROOT);
    for (FunctionRegistry entry : values()) {
      if (wanted.startsWith(entry.name() + ".")) {
        return entry.group().functions().stream().filter(f -> f.name().equals(wanted)).findFirst();
      }
    }
    return Optional.empty();
  }
}
