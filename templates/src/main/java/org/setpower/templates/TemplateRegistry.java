package org.setpower.templates;

import java.util.List;
import org.setpower.templates.battery.BatteryPlan;
import org.setpower.templates.budget.PowerBudget;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.lighting.LightingPowerPlan;
import org.setpower.templates.quote.RentalQuote;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.templates.travel.BatteryTravelList;

/** All files that are shipped. */
public final class TemplateRegistry {
  private TemplateRegistry() {}

  /** The workbooks in the order in which they are offered. */
  public static List<PlanTemplate> plans() {
    return List.of(
        new LightingPowerPlan(),
        new BatteryPlan(),
        new PowerBudget(),
        new RentalQuote(),
        new BatteryRegister(),
        new BatteryTravelList());
  }
}
