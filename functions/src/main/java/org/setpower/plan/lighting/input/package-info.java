/** The tables to fill of a lighting power plan, their words, and what can be wrong with them. */
package org.setpower.plan.lighting.input;
