/** The tables of results of a lighting power plan. */
package org.setpower.plan.lighting.result;
