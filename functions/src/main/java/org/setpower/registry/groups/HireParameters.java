package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.SINGLE;

import java.time.LocalDate;
import java.util.Currency;
import org.setpower.base.Unit;
import org.setpower.hire.Money;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Parameter;

/** The parameters of HIRE: prices. */
final class HireParameters {
  private HireParameters() {}

  static final Parameter<LocalDate> OUT_DATE = Parameters.date("out_date", "Day it goes out");

  static final Parameter<LocalDate> BACK_DATE = Parameters.date("back_date", "Day it comes back");

  static final Parameter<Double> MIN_DAYS =
      Parameters.notNegative("min_days", "Min. days charged", Unit.DAY).orElse(0.0);

  static final Parameter<Double> DAY_RATE =
      Parameters.notNegative("day_rate", "Price of one piece for a day", Unit.MONEY);

  static final Parameter<Currency> CURRENCY =
      Parameter.of(
          "currency",
          "Currency, three letters of ISO 4217",
          Unit.NONE,
          SINGLE,
          (n, raw) -> Money.currency(n, ArgumentParsers.asText(n, raw)));
}
