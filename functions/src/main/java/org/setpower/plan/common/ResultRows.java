package org.setpower.plan.common;

import java.util.List;

/**
 * A table of results with its rows.
 *
 * @param rows in the order of the sheet; null for a row that stays blank
 */
public record ResultRows<R extends Record>(ResultTable<R> table, List<R> rows) {}
