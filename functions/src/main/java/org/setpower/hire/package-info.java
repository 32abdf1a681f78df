/**
 * Hire money: which days are charged, fees, rounding, tax, owning against hiring.
 *
 * <p>Sources: trade practice of rental houses (no standard exists), ISO 4217 for the minor units of
 * currencies. Money is computed in decimals, never in binary. Leaves out: exchange rates, cash
 * rounding, the tax rates of countries (they are typed), and the tax law that applies.
 */
package org.setpower.hire;
