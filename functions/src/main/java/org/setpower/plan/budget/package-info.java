/**
 * The power budget as a cost report: planned, approved budget, ordered, cost to date, estimate to
 * complete, estimated final cost and variance, all in one tax basis; crew pay with overtime,
 * fringes and per diem; totals, scenarios, cash by week. Money in decimals, half up, to the minor
 * unit of the currency.
 *
 * <p>Sources: common practice of production accounting. Rates of tax, exchange, overtime and
 * fringes are typed, never known. Leaves out: labour law, tax law.
 */
package org.setpower.plan.budget;
