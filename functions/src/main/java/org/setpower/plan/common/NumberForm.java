package org.setpower.plan.common;

/** How a column of numbers is shown; what may be typed does not depend on it. */
public enum NumberForm {
  /** As many decimals as the number has. */
  EXACT,
  WHOLE,
  ONE_DECIMAL,
  TWO_DECIMALS,
  THREE_DECIMALS,
  /** Hours, shown as hours and full minutes. */
  DURATION,
  /** The same, a begun minute as a full one. */
  DURATION_UP,
  /** A share of the whole, shown in per cent. */
  SHARE,
  /** The same with the hundredths that a price list has. */
  FINE_SHARE,
  /** In a currency, with as many decimals as that has. */
  MONEY,
  /** A date without its year. */
  DAY
}
