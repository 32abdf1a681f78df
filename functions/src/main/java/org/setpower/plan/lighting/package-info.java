/**
 * The lighting power plan: a distribution as it is on set, calculated at once.
 *
 * <ul>
 *   <li>{@code input} has the tables to fill, {@code result} the tables of results.
 *   <li>{@code network} is the tree of sources, breakers, outlets and cable runs.
 *   <li>{@code load} knows when loads are on and what flows.
 *   <li>{@code protection} judges breakers, RCDs, cables and voltage, {@code generator} generators.
 *   <li>{@code paper} makes order list and load balance, {@code diagram} the single-line diagram.
 * </ul>
 */
package org.setpower.plan.lighting;
