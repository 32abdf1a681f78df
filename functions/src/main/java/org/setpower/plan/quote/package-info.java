/**
 * The rental quote: charged days, rates by day and week, discounts, waiver, tax by rate, the
 * client's page, stock on its dates, returns. Money in decimals, half up, to the minor unit of the
 * currency.
 *
 * <p>Sources: trade practice of rental houses (no standard exists). The rates and reasons of tax
 * are typed, never known. Leaves out: the law of tax and of hire.
 */
package org.setpower.plan.quote;
