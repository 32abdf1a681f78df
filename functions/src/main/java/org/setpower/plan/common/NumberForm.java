package org.setpower.plan.common;

/** How a column of numbers is shown; what may be typed does not depend on it. */
public enum NumberForm {
  WHOLE,
  ONE_DECIMAL,
  TWO_DECIMALS,
  THREE_DECIMALS,
  /** A share of the whole, shown in per cent. */
  SHARE
}
