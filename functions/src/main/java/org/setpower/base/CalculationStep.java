package org.setpower.base;

/**
 * One step of the calculation of a number.
 *
 * @param symbol the letter in the formula, "R"
 * @param name what it is, "resistance of one conductor"
 * @param value a number or a text
 * @param unit its unit
 * @param source where the figure or the formula comes from; empty if it was typed in
 */
public record CalculationStep(String symbol, String name, Object value, Unit unit, String source) {}
